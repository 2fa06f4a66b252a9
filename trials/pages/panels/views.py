"""The page of a panel, blind until one has read it, and the tables in which panels are rated."""

from django.http import Http404
from django.shortcuts import get_object_or_404, redirect, render
from django.urls import reverse
from django.utils import timezone
from django.views.decorators.http import require_POST

from trials import access
from trials.models import Rating
from trials.operations.panels import change_panel
from trials.operations.reading import rate, take_back
from trials.pages.parts import needs, told_at
from trials.pages.trials.applied_forms import LayerLines, PanelForm, layers_of
from trials.pages.trials.writing import writing
from trials.queries.history import what_changed
from trials.queries.panels import age_h, criteria_of, load_panel, panel_sheet, standing, with_build_up
from trials.queries.trials import load_trial, signed_record

from .rating_forms import RatingForm, asked_age


def found(request, code):
    """The panel of that code that the person may see, else 404."""
    record = load_panel(request.user, code)
    if record is None:
        raise Http404
    return record


def panel(request, code):
    record = found(request, code)
    sheet = panel_sheet(request.user, record)
    # What others read would show in the history too.
    told = ("layers", "photos", *(["ratings"] if sheet.mine else []))
    context = {
        "sheet": sheet,
        "panel": record,
        "trial": record.trial,
        "events": what_changed(record, parts=told),
        "may_write": access.may_write(request.user),
    }
    return render(request, "panels/panel.html", context)


@needs(access.may_write)
def panel_change(request, code):
    record = found(request, code)
    signed = signed_record(record.trial)
    names = list(PanelForm.base_fields)
    start = {name: getattr(record, name) for name in names}
    form = PanelForm(request.POST or None, trial=record.trial, signed=signed, initial=start)
    lines = LayerLines(request.POST or None, layers_of(record))
    if request.method == "POST" and form.is_valid() & lines.is_valid():
        with told_at(form), writing(request, signed, form):
            change_panel(actor=request.user, panel=record, layers=lines.entries(), **form.figures())
            return redirect("panel", record.code)
    context = {"form": form, "formset": lines.formset, "heading": f"Panel {record.code}: put right", "panel": record}
    return render(request, "panels/typing.html", {**context, "more": "One more layer"})


@needs(access.may_write)
def panel_rate(request, code):
    record = found(request, code)
    back = reverse("panel", args=[record.code])
    return _rating(request, [record], record.trial, back, f"Panel {record.code}", may_be_blind=True)


@needs(access.may_write)
def trial_rate(request, code):
    trial = load_trial(request.user, code)
    if trial is None:
        raise Http404
    panels = list(with_build_up(trial.panels.all()).order_by("code", "pk"))
    return _rating(request, panels, trial, reverse("trial", args=[code]), f"Panels of {code}", may_be_blind=False)


@needs(access.may_write)
def series_rate(request, number):
    series = get_object_or_404(access.series(request.user), number=number)
    # By code: the order of the cups would tell which is which.
    panels = list(with_build_up(access.panels(request.user).filter(trial__series=series)).order_by("code", "pk"))
    trial = panels[0].trial if panels else None
    back = reverse("series", args=[number])
    return _rating(request, panels, trial, back, f"Panels of series {number}", may_be_blind=True, series=series)


def _rating(request, panels, trial, back, heading, *, may_be_blind, series=None):
    """One person's table; at most one write for all of it."""
    signed = signed_record(trial) if trial else None
    age = asked_age(request.GET.get("age", ""), age_h(panels[0], timezone.now()) if panels else None)
    form = RatingForm(
        request.POST or None,
        panels=panels,
        criteria=criteria_of(series or trial.series),
        standing=standing(request.user, panels, age=age),
        may_be_blind=may_be_blind,
        signed=signed,
        initial={"age_h": age, "blind": may_be_blind},
    )
    if request.method == "POST" and form.is_valid():
        with told_at(form), writing(request, signed, form):
            rate(actor=request.user, now=timezone.now(), ratings=form.entries())
            return redirect(back)
    context = {"form": form, "heading": heading, "back": back, "now": timezone.now(), "blind": may_be_blind}
    return render(request, "panels/rate.html", context)


@require_POST
@needs(access.may_write)
def rating_back(request, pk):
    visible = Rating.objects.filter(panel__in=access.panels(request.user), person=request.user)
    record = get_object_or_404(visible.select_related("panel", "person"), pk=pk)
    take_back(actor=request.user, rating=record)
    return redirect("panel", record.panel.code)
