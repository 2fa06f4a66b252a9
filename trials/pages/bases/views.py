from django.conf import settings
from django.http import Http404
from django.shortcuts import get_object_or_404, redirect, render
from django.utils import timezone
from django.views.decorators.http import require_POST

from trials import access
from trials.operations import bases as operations
from trials.operations.acting import Refused
from trials.pages.parts import needs, told_at
from trials.queries.base_doubts import remarks
from trials.queries.bases import base_list, base_sheet, load_revision, mix_facts
from trials.queries.comparing import compare
from trials.queries.history import what_changed

from .forms import BaseForm, CopyBaseForm, CopyRevisionForm, MeasuredForm, ShareForm
from .recipe import RecipeForm


def _revision(request, code, number=None):
    revision = load_revision(request.user, code, number)
    if revision is None:
        raise Http404
    return revision


def _base(request, code):
    return get_object_or_404(access.bases(request.user), code=code)


def bases(request):
    return render(
        request,
        "bases/list.html",
        {"bases": base_list(request.user), "may_write": access.may_write(request.user)},
    )


def base(request, code, number=None):
    revision = _revision(request, code, number)
    sheet = base_sheet(revision)
    return render(
        request,
        "bases/base.html",
        {
            "sheet": sheet,
            "revision": revision,
            "base": revision.base,
            "facts": mix_facts(sheet.mix, settings.CURRENCY),
            "remarks": remarks(sheet, timezone.localdate()),
            "revisions": revision.base.revisions.order_by("-number", "-pk"),
            "events": what_changed(revision.base, revision),
            "may_write": access.may_write(request.user),
            "may_restrict": access.may_restrict(request.user, revision.base),
        },
    )


@needs(access.may_write)
def base_new(request):
    form = BaseForm(request.POST or None)
    if request.method == "POST" and form.is_valid():
        with told_at(form):
            revision = operations.add_base(actor=request.user, now=timezone.now(), **form.cleaned_data)
            return redirect("base_recipe", revision.base.code, revision.number)
    return render(
        request, "bases/form.html", {"form": form, "heading": "A new base", "action": "Go on to its components"}
    )


@needs(access.may_write)
def base_change(request, code):
    found = _base(request, code)
    form = BaseForm(request.POST or None, instance=found)
    if request.method == "POST" and form.is_valid():
        with told_at(form):
            operations.change_base(actor=request.user, base=_base(request, code), **form.cleaned_data)
            return redirect("base", form.cleaned_data["code"])
    return render(request, "bases/form.html", {"form": form, "heading": f"Change {code}", "back": code})


@needs(access.may_write)
def base_share(request, code):
    found = _base(request, code)
    form = ShareForm(request.POST or None, initial={"people": found.shares.values_list("person", flat=True)})
    if request.method == "POST" and form.is_valid():
        with told_at(form):
            operations.share_base(actor=request.user, base=found, people=list(form.cleaned_data["people"]))
            return redirect("base", code)
    return render(request, "bases/form.html", {"form": form, "heading": f"Who may see {code}", "back": code})


@needs(access.may_write)
def base_recipe(request, code, number):
    revision = _revision(request, code, number)
    recipe = RecipeForm(request.POST or None, revision)
    if request.method == "POST" and recipe.is_valid():
        try:
            operations.write_recipe(actor=request.user, revision=revision, components=recipe.components())
            return redirect("base_revision", code, number)
        except Refused as refusal:
            recipe.refusal = refusal.message
    context = {"recipe": recipe, "revision": revision, "base": revision.base, "problems": recipe.problems()}
    return render(request, "bases/recipe.html", context)


@needs(access.may_write)
def base_measured(request, code, number):
    revision = _revision(request, code, number)
    form = MeasuredForm(request.POST or None, instance=revision)
    if request.method == "POST" and form.is_valid():
        with told_at(form):
            operations.measure_revision(
                actor=request.user, revision=_revision(request, code, number), **form.cleaned_data
            )
            return redirect("base_revision", code, number)
    heading = f"{code} revision {number}: measured on the mix"
    return render(request, "bases/form.html", {"form": form, "heading": heading, "back": code})


@needs(access.may_write)
def base_next(request, code, number):
    revision = _revision(request, code, number)
    form = CopyRevisionForm(request.POST or None)
    if request.method == "POST" and form.is_valid():
        with told_at(form):
            made = operations.copy_revision(
                actor=request.user, now=timezone.now(), revision=revision, **form.cleaned_data
            )
            return redirect("base_recipe", code, made.number)
    heading = f"A new revision of {code}, from revision {number}"
    return render(request, "bases/form.html", {"form": form, "heading": heading, "back": code, "action": "Copy"})


@needs(access.may_write)
def base_copy(request, code, number):
    revision = _revision(request, code, number)
    form = CopyBaseForm(request.POST or None)
    if request.method == "POST" and form.is_valid():
        with told_at(form):
            made = operations.copy_base(
                actor=request.user, now=timezone.now(), revision=revision, **form.cleaned_data
            )
            return redirect("base_recipe", made.base.code, made.number)
    heading = f"A new base, copied from {code} revision {number}"
    return render(request, "bases/form.html", {"form": form, "heading": heading, "back": code, "action": "Copy"})


@require_POST
@needs(access.may_write)
def base_freeze(request, code, number):
    revision = _revision(request, code, number)
    operations.freeze_revision(actor=request.user, now=timezone.now(), revision=revision)
    return redirect("base_revision", code, number)


def base_compare(request, code):
    numbers = list(_base(request, code).revisions.order_by("number").values_list("number", flat=True))
    left, right = _chosen(request, numbers)
    pair = [base_sheet(_revision(request, code, number)) for number in (left, right)]
    return render(
        request,
        "bases/compare.html",
        {
            "base": pair[0].revision.base,
            "numbers": numbers,
            "pair": pair,
            "comparison": compare(*pair, settings.CURRENCY),
        },
    )


def _chosen(request, numbers):
    """The two revisions asked for, else the newest two; a number that is none of them is a 404."""
    try:
        left = int(request.GET.get("left") or numbers[-2 if len(numbers) > 1 else -1])
        right = int(request.GET.get("right") or numbers[-1])
    except (ValueError, IndexError):
        raise Http404 from None
    if not {left, right} <= set(numbers):
        raise Http404
    return left, right
