"""What was applied, stored and kept of a cup, and the cup that is made from it by adding more."""

from django.http import Http404
from django.shortcuts import get_object_or_404, redirect, render
from django.urls import reverse
from django.utils import timezone

from trials import access
from trials.models import Panel, Retain, StoredTin, Trial
from trials.operations.cups import add_cup
from trials.operations.panels import (
    OpenedEntry,
    PanelEntry,
    RetainEntry,
    TinEntry,
    apply_panels,
    change_retain,
    open_tins,
    retain,
    store_tins,
)
from trials.pages.parts import needs, told_at
from trials.queries.trials import signed_record

from .applied_forms import (
    KeptForm,
    LayerLines,
    OpenedForm,
    PanelsForm,
    RetainForm,
    TinsForm,
    TopUpForm,
    layers_of,
    tin_said,
)
from .views import found
from .writing import writing


@needs(access.may_write)
def trial_panels(request, code):
    record = found(request, code)
    signed, like = signed_record(record), _panel_before(record)
    form = PanelsForm(request.POST or None, trial=record, signed=signed, like=like)
    lines = LayerLines(request.POST or None, _layers_meant(record, like))
    if request.method == "POST" and form.is_valid() & lines.is_valid():
        with told_at(form), writing(request, signed, form):
            entries = _panels(form, lines.entries())
            apply_panels(actor=request.user, now=timezone.now(), entries=entries)
            return redirect(f"{reverse('trial', args=[code])}#panels")
    note = f"Taken from panel {like.code}, the last of this series: change what was different." if like else ""
    context = {"formset": lines.formset, "notes": [note] if note else [], "more": "One more layer"}
    return _typing(request, record, form, "panels", **context)


def _panels(form, layers) -> list[PanelEntry]:
    typed = {name: form.cleaned_data[name] for name in form.figures}
    return [
        PanelEntry(trial, layers, stored_tin=form.cleaned_data["stored_tin"], **typed)
        for trial in form.trials()
        for _ in range(form.cleaned_data["count"])
    ]


def _panel_before(record: Trial) -> Panel | None:
    """The last panel of the series: the next one is mostly built up like it."""
    panels = Panel.objects.filter(trial__series=record.series_id).order_by("-pk")
    return panels.filter(trial=record).first() or panels.first()


def _layers_meant(record: Trial, like: Panel | None) -> list[dict]:
    if like is not None:
        return layers_of(like)
    return [{"coat": "body coat", "wet_um": record.series.film_um, "method": "poured"}]


@needs(access.may_write)
def trial_tins(request, code):
    record = found(request, code)
    form = TinsForm(request.POST or None, trial=record)
    if request.method == "POST" and form.is_valid():
        with told_at(form):
            typed = {name: form.cleaned_data[name] for name in ("days", "temperature_c", "stored_at")}
            entries = [TinEntry(trial, **typed) for trial in form.trials()]
            store_tins(actor=request.user, now=timezone.now(), entries=entries)
            return redirect("trial", code)
    notes = ["Store a full, closed tin of a blank too, or there is nothing to compare with."]
    return _typing(request, record, form, "tins into storage", notes=notes)


@needs(access.may_write)
def trial_tin(request, pk):
    visible = StoredTin.objects.filter(trial__in=access.trials(request.user))
    tin = get_object_or_404(visible.select_related("trial__series"), pk=pk)
    start = {"opened_at": tin.opened_at or timezone.now(), "appearance": tin.appearance}
    form = OpenedForm(request.POST or None, initial=start)
    if request.method == "POST" and form.is_valid():
        with told_at(form):
            open_tins(actor=request.user, entries=[OpenedEntry(tin, **form.cleaned_data)])
            return redirect("trial", tin.trial.code)
    notes = ["A tin of moist isocyanate can be under pressure: open it slowly, behind a shield, with glasses on."]
    return _typing(request, tin.trial, form, f"the tin {tin_said(tin)}", notes=notes)


@needs(access.may_write)
def trial_retains(request, code):
    record = found(request, code)
    form = RetainForm(request.POST or None, trial=record)
    if request.method == "POST" and form.is_valid():
        with told_at(form):
            retain(actor=request.user, entries=[RetainEntry(record, **form.cleaned_data)])
            return redirect("trial", code)
    return _typing(request, record, form, "what is kept")


@needs(access.may_write)
def trial_retain(request, pk):
    visible = Retain.objects.filter(trial__in=access.trials(request.user))
    kept = get_object_or_404(visible.select_related("trial__series", "panel"), pk=pk)
    form = KeptForm(request.POST or None, instance=kept)
    if request.method == "POST" and form.is_valid():
        with told_at(form):
            change_retain(actor=request.user, record=kept, **form.changed())
            return redirect("trial", kept.trial.code)
    return _typing(request, kept.trial, form, f"kept in {kept.place}")


@needs(access.may_write)
def trial_top_up(request, code):
    record = found(request, code)
    if not record.dosages.exists():
        raise Http404
    form = TopUpForm(request.POST or None, initial={"left_g": record.batch_mass_g})
    if request.method == "POST" and form.is_valid():
        with told_at(form):
            made = add_cup(
                actor=request.user,
                now=timezone.now(),
                series=record.series,
                like=record,
                dosage_pct=form.cleaned_data["dosage_pct"],
                batch_mass_g=form.cleaned_data["left_g"],
                topped_up=True,
            )
            return redirect("trial", made.code)
    notes = [
        "A cup that is topped up is not independent of the one before: its panels are shown, and not counted as one"
        " cup more. Its next page says how many grams to add."
    ]
    return _typing(request, record, form, "add more to this cup", notes=notes, action="Make it a cup of its own")


def _typing(request, record, form, what, **more):
    context = {"trial": record, "form": form, "what": what, "heading": f"{record.code}: {what}", **more}
    return render(request, "trials/typing.html", context)
