from django.http import Http404
from django.shortcuts import redirect, render
from django.utils import timezone

from trials import access
from trials.models import Candidate
from trials.models.trials import Part
from trials.operations import series as operations
from trials.operations.acting import Refused
from trials.pages.bases.forms import ShareForm
from trials.pages.judging.context import comparison
from trials.pages.parts import needs, told_at
from trials.queries.history import what_changed
from trials.queries.series import find_series, load_series, series_sheet
from trials.queries.series_doubts import series_doubts
from trials.queries.signatures import signing_of

from .forms import ChangeForm, CupForm, FilterForm
from .plan import Plan, start_of
from .rows import criterion_rows


def found_series(request, number):
    """The series of this number, or 404 where the person may not see it."""
    found = load_series(request.user, number)
    if found is None:
        raise Http404
    return found


def series_list(request):
    asked = FilterForm(request.GET or None)
    wanted = asked.cleaned_data if asked.is_valid() else {"q": "", "round": "", "outcome": ""}
    found = find_series(request.user, words=wanted["q"], round=wanted["round"], outcome=wanted["outcome"])
    context = {"filter": asked, "found": found, "may_write": access.may_write(request.user)}
    return render(request, "series/list.html", context)


def series(request, number):
    found = found_series(request, number)
    sheet = series_sheet(request.user, found)
    may_write = access.may_write(request.user)
    context = {
        "series": found,
        "sheet": sheet,
        "remarks": series_doubts(found),
        "criteria": found.criteria.select_related("criterion").order_by("criterion__position", "pk"),
        "signing": signing_of(found),
        "events": what_changed(found, parts=("criteria", "shares", "trials")),
        "cup_form": cup_form(found) if may_write and sheet.cups else None,
        "may_write": may_write,
        "may_restrict": access.may_restrict(request.user, found),
    }
    return render(request, "series/series.html", context | comparison(request.user, found.pk, request.GET))


@needs(access.may_write)
def series_new(request):
    posted = request.method == "POST"
    plan = Plan(request.user, request.POST if posted else None, {} if posted else start_of(request.user, request.GET))
    if posted and plan.is_valid():
        try:
            made = operations.plan_series(actor=request.user, now=timezone.now(), **plan.values())
            return redirect("series", made.number)
        except Refused as refusal:
            plan.refused(refusal)
    context = {"plan": plan, "problems": plan.problems() if posted else [], "candidates": offered()}
    return render(request, "series/plan.html", context)


@needs(access.may_write)
def series_change(request, number):
    found = found_series(request, number)
    form = ChangeForm(request.POST or None, instance=found, person=request.user)
    judged = list(found.criteria.select_related("criterion").order_by("criterion__position", "pk"))
    start = [(row.criterion.key, row.weight) for row in judged]
    criteria = criterion_rows(request.POST or None, initial=start, kept=[row.criterion for row in judged])
    if request.method == "POST" and all([form.is_valid(), criteria.is_valid()]):
        with told_at(form):
            values = {**form.changed(), **criteria.chosen()}
            operations.change_series(actor=request.user, series=found, **values)
            return redirect("series", number)
    context = {"form": form, "formset": criteria, "heading": f"Change series {number}", "series": found}
    return render(request, "series/form.html", context)


@needs(access.may_write)
def series_share(request, number):
    found = found_series(request, number)
    form = ShareForm(request.POST or None, initial={"people": found.shares.values_list("person", flat=True)})
    form.fields["people"].label = "Who may see it beside who keeps it"
    if request.method == "POST" and form.is_valid():
        with told_at(form):
            operations.share_series(actor=request.user, series=found, people=list(form.cleaned_data["people"]))
            return redirect("series", number)
    context = {"form": form, "heading": f"Who may see series {number}", "series": found}
    return render(request, "series/form.html", context)


def cups_of(found):
    """Its cups with their dosages, in the order of working."""
    cups = found.trials.prefetch_related("dosages__candidate__material")
    return list(cups.order_by("position", "pk"))


def cup_form(found, like: str = "") -> CupForm:
    """One more cup, like the last treated one unless another is named: that is the one most often done again."""
    cups = cups_of(found)
    treated = [cup for cup in cups if cup.part == Part.TREATED] or cups
    return CupForm(cups=cups, initial={"like": like or (treated[-1].code if treated else None)})


def offered():
    """Candidates that can be chosen, by code."""
    wanted = Candidate.objects.filter(material__withdrawn=False).select_related("material")
    return wanted.order_by("material__code", "pk")
