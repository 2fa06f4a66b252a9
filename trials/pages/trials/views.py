"""The page of a cup, and what is logged at the bench."""

from django.http import Http404
from django.shortcuts import redirect, render
from django.utils import timezone

from trials import access
from trials.operations.bench import CupReadings, CupWorkings, MadeEntry, mark_made, weigh, work
from trials.operations.wet import read_wet
from trials.pages.parts import needs, told_at
from trials.queries.findings import findings_of
from trials.queries.history import what_changed
from trials.queries.signatures import signing_of
from trials.queries.trials import cup_after, load_trial, signed_record, trial_sheet
from trials.queries.weighed import weighed_cups
from trials.queries.worked import asked_for

from .applied_forms import MadeForm
from .weighing_lines import WeighForm, WeighingLines
from .wet_lines import WetLines
from .working_lines import WorkForm, WorkingLines
from .writing import CupForm, writing

PARTS = (
    "dosages",
    "weighings",
    "workings",
    "wet_readings",
    "panels",
    "stored_tins",
    "retains",
    "failures",
    "findings",
)


def found(request, code):
    """The cup of that code that the person may see, else 404."""
    trial = load_trial(request.user, code)
    if trial is None:
        raise Http404
    return trial


def trial(request, code):
    record = found(request, code)
    context = {
        "sheet": trial_sheet(record),
        "trial": record,
        "series": record.series,
        "signing": signing_of(record),
        "findings": findings_of(record),
        "events": what_changed(record, parts=PARTS),
        "may_write": access.may_write(request.user),
    }
    return render(request, "trials/trial.html", context)


@needs(access.may_write)
def trial_weighings(request, code):
    record = found(request, code)
    signed, cup = signed_record(record), weighed_cups([record])[record.pk]
    form = WeighForm(request.POST or None, trial=record, signed=signed)
    lines = WeighingLines(request.POST or None, record, cup)
    if request.method == "POST" and form.is_valid() & lines.is_valid():
        with told_at(form), writing(request, signed, form):
            entry = CupReadings(record, lines.entries(), form.seen)
            weigh(actor=request.user, now=timezone.now(), entries=[entry])
            return _go_on(request, record)
    return _typing(request, record, form, lines.formset, "balance readings", more="One more reading")


@needs(access.may_write)
def trial_workings(request, code):
    record = found(request, code)
    signed = signed_record(record)
    form = WorkForm(request.POST or None, trial=record, signed=signed, initial={"mixed_at": record.mixed_at})
    lines = WorkingLines(request.POST or None, record)
    if request.method == "POST" and form.is_valid() & lines.is_valid():
        with told_at(form), writing(request, signed, form):
            entry = CupWorkings(record, lines.entries(), form.cleaned_data["mixed_at"], form.seen)
            work(actor=request.user, now=timezone.now(), entries=[entry])
            return _go_on(request, record)
    notes = list(asked_for(record))
    if lines.taken_from:
        notes.append(f"Taken from {lines.taken_from}, not kept yet: change what was different.")
    return _typing(request, record, form, lines.formset, "workings", notes=notes, more="One more working")


@needs(access.may_write)
def trial_wet(request, code):
    record = found(request, code)
    signed = signed_record(record)
    form = CupForm(request.POST or None, trial=record, signed=signed)
    lines = WetLines(request.POST or None, record)
    if request.method == "POST" and form.is_valid() & lines.is_valid():
        with told_at(form), writing(request, signed, form):
            new, corrections = lines.entries(), lines.corrections()
            read_wet(actor=request.user, now=timezone.now(), entries=new, corrections=corrections)
            return _go_on(request, record)
    return _typing(request, record, form, lines.formset, "wet readings", more="One more reading")


@needs(access.may_write)
def trial_made(request, code):
    record = found(request, code)
    signed = signed_record(record)
    form = MadeForm(request.POST or None, trial=record, signed=signed)
    if request.method == "POST" and form.is_valid():
        with told_at(form), writing(request, signed, form):
            mark_made(actor=request.user, now=timezone.now(), entries=_made(record, form.cleaned_data))
            return _go_on(request, record)
    return _typing(request, record, form, None, "when and in which air")


def _made(record, typed) -> list[MadeEntry]:
    """The cup itself, and along with it others of the same session; a remark is of one cup alone."""
    same = {name: typed[name] for name in ("made_at", "mixed_at", "air_c", "humidity_pct")}
    own = MadeEntry(record, **same, remark=typed["remark"])
    return [own, *(MadeEntry(other, **same) for other in typed["cups"])]


def _typing(request, record, form, formset, what, *, notes=(), more=""):
    context = {
        "trial": record,
        "form": form,
        "formset": formset,
        "what": what,
        "heading": f"{record.code}: {what}",
        "notes": notes,
        "more": more,
        "next_cup": cup_after(record),
    }
    return render(request, "trials/typing.html", context)


def _go_on(request, record):
    """To the page of the cup, or with the same sheet to the next one."""
    after = cup_after(record) if request.POST.get("then") == "next" else ""
    return redirect(request.resolver_match.url_name, after) if after else redirect("trial", record.code)
