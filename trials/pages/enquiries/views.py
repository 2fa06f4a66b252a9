from django.http import Http404
from django.shortcuts import redirect, render
from django.utils import timezone
from django.views.decorators.http import require_POST

from trials import access
from trials.models import Candidate, Criterion
from trials.operations import enquiries as operations
from trials.pages.bases.forms import ShareForm
from trials.pages.parts import needs, told_at
from trials.queries.enquiries import enquiry_sheet, find_enquiries, load_enquiry
from trials.queries.history import what_changed

from .forms import EnquiryForm, FilterForm, LimitFormSet


def _enquiry(request, number):
    found = load_enquiry(request.user, number)
    if found is None:
        raise Http404
    return found


def enquiries(request):
    asked = FilterForm(request.GET or None)
    words, answered = (asked.cleaned_data["q"], asked.cleaned_data["answered"]) if asked.is_valid() else ("", False)
    found = find_enquiries(request.user, today=timezone.localdate(), words=words, answered=answered)
    context = {"filter": asked, "found": found, "may_write": access.may_write(request.user)}
    return render(request, "enquiries/list.html", context)


def enquiry(request, number):
    found = _enquiry(request, number)
    context = {
        "enquiry": found,
        "sheet": enquiry_sheet(request.user, found, today=timezone.localdate()),
        "events": what_changed(found, parts=("limits", "shares")),
        "today": timezone.localdate(),
        "may_write": access.may_write(request.user),
        "may_restrict": access.may_restrict(request.user, found),
    }
    return render(request, "enquiries/enquiry.html", context)


@needs(access.may_write)
def enquiry_new(request):
    start = {"received": timezone.localdate(), "base": request.GET.get("base")}
    form, limits = _forms(request, initial=start)
    if request.method == "POST" and _both_valid(form, limits):
        with told_at(form):
            made = operations.add_enquiry(
                actor=request.user, now=timezone.now(), limits=limits.entries(), **form.cleaned_data
            )
            return redirect("enquiry", made.number)
    return _typing(request, form, limits, "A new enquiry")


@needs(access.may_write)
def enquiry_change(request, number):
    found = _enquiry(request, number)
    form, limits = _forms(request, instance=found)
    if request.method == "POST" and _both_valid(form, limits):
        with told_at(form):
            operations.change_enquiry(actor=request.user, enquiry=found, limits=limits.entries(), **form.changed())
            return redirect("enquiry", number)
    return _typing(request, form, limits, f"Change enquiry {number}", found)


@needs(access.may_write)
def enquiry_share(request, number):
    found = _enquiry(request, number)
    form = ShareForm(request.POST or None, initial={"people": found.shares.values_list("person", flat=True)})
    form.fields["people"].label = "Who may see it beside who keeps it"
    if request.method == "POST" and form.is_valid():
        with told_at(form):
            operations.share_enquiry(actor=request.user, enquiry=found, people=list(form.cleaned_data["people"]))
            return redirect("enquiry", number)
    return _typing(request, form, None, f"Who may see enquiry {number}", found)


@require_POST
@needs(access.may_write)
def enquiry_close(request, number):
    """Answered today, or opened again."""
    found = _enquiry(request, number)
    on = None if found.closed else timezone.localdate()
    operations.close_enquiry(actor=request.user, enquiry=found, on=on)
    return redirect("enquiry", number)


def _forms(request, *, instance=None, initial=None):
    typed = request.POST or None
    candidates = Candidate.objects.select_related("material").order_by("material__code", "pk")
    bases = access.bases(request.user).order_by("code", "pk")
    form = EnquiryForm(typed, instance=instance, initial=initial, bases=bases, candidates=candidates)
    criteria = {one.key: one for one in Criterion.objects.filter(current=True).order_by("position", "pk")}
    standing = []
    if instance:
        rows = instance.limits.select_related("criterion").order_by("force", "criterion__position", "pk")
        standing = [{"criterion": r.criterion.key, "limit": r.limit, "force": r.force} for r in rows]
        # A limit keeps the version of its criterion; the scale that it was set on stays to be chosen.
        criteria |= {row.criterion.key: row.criterion for row in rows}
    return form, LimitFormSet(typed, prefix="limits", initial=standing, form_kwargs={"criteria": criteria})


def _both_valid(form, limits) -> bool:
    checked = [form.is_valid(), limits.is_valid()]  # both, so that all errors show at once
    return all(checked)


def _typing(request, form, limits, heading, found=None):
    context = {"form": form, "formset": limits, "heading": heading, "enquiry": found}
    return render(request, "enquiries/form.html", context)
