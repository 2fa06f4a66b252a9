from django.http import Http404, HttpResponse
from django.shortcuts import get_object_or_404, redirect, render

from trials import access
from trials.operations import judging as operations
from trials.pages.parts import needs, told_at, writing
from trials.queries.history import what_changed
from trials.queries.judging import judgement
from trials.queries.signatures import signing_of

from .context import comparison
from .forms import Failures, GroupForm, SeriesForm, TrialForm, failures_of, prefilled
from .table import comparison_csv


def _compared(request, number) -> dict:
    series = get_object_or_404(access.series(request.user), number=number)
    return comparison(request.user, series.pk, request.GET)


@needs(access.may_write)
def series_judge(request, number):
    context = _compared(request, number)
    judged, posted = context["judged"], request.POST or None
    form = SeriesForm(posted, judged=judged)
    groups = [GroupForm(posted, line=line) for line in judged.lines if line.suggestion]
    if posted and all([form.is_valid(), *(group.is_valid() for group in groups)]):
        entries = [entry for group in groups for entry in group.entries()]
        with told_at(form), writing(request, judged.series):
            operations.conclude_series(actor=request.user, series=judged.series, trials=entries, **form.cleaned_data)
        if not form.errors:
            return redirect("series", number)
    context |= {"form": form, "groups": groups, "problems": _problems(groups), "prefilled": prefilled(judged)}
    return render(request, "judging/series.html", context | {"series": judged.series})


@needs(access.may_write)
def trial_judge(request, code):
    trial = get_object_or_404(access.trials(request.user).select_related("series"), code=code)
    judged, posted = judgement(trial.series_id, request.user), request.POST or None
    form = TrialForm(posted, trial=trial)
    failures = Failures(posted, prefix="failures", initial=failures_of(trial))
    if posted and all([form.is_valid(), failures.is_valid()]):
        signed = trial.series if signing_of(trial.series).performed else trial
        with told_at(form), writing(request, signed):
            operations.conclude_trial(
                actor=request.user, trial=trial, failures=failures.entries(), **form.cleaned_data
            )
        if not form.errors:
            return redirect("series", trial.series.number)
    line = next(line for line in judged.lines if any(cup.pk == trial.pk for cup in line.group.cups))
    context = {"form": form, "formset": failures, "trial": trial, "series": trial.series, "line": line}
    return render(request, "judging/trial.html", context | {"events": what_changed(trial, parts=("failures",))})


def series_comparison_csv(request, number):
    found = _compared(request, number)
    if not found:
        raise Http404
    answer = HttpResponse(comparison_csv(found["judged"]), content_type="text/csv; charset=utf-8")
    answer["Content-Disposition"] = f'attachment; filename="series-{number}-comparison.csv"'
    return answer


def _problems(groups) -> list[tuple[str, str]]:
    """Errors of the rows, each with the id of its input."""
    return [
        (f"{group.line.group.label}: {error}", group[name].id_for_label)
        for group in groups
        for name, errors in group.errors.items()
        for error in errors
    ]
