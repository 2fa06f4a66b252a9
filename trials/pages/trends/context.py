"""Each part of the page: what was asked, what was found, its figure and its table."""

from django.http import Http404, QueryDict
from django.urls import reverse
from django.utils.safestring import mark_safe

from trials.figures.drift import Band, Level, Seen, over_time
from trials.figures.failures import count_bar
from trials.queries.blanks import BlankChart, blank_chart
from trials.queries.drift import EVERY_DOSAGE, NO_LOT, Drift, Point, candidate_drift
from trials.queries.failures import FailureCounts, failures_by_quarter
from trials.queries.measures import Measure
from trials.queries.trends import bases_in_use, tried_candidates, watched
from trials.templatetags.numbers import as_text

from .forms import BaseForm, CandidateForm, DosageForm
from .tables import blank_table, drift_table, failure_table, places_of

PARTS = {
    "additive": "An additive against its blanks",
    "base": "The blank of a base",
    "failures": "Failures by kind",
}


def part_of(person, asked: QueryDict) -> dict:
    """The part that the address names, else the first; one that is not known is a 404."""
    show = asked.get("show") or next(iter(PARTS))
    if show not in PARTS:
        raise Http404
    return {"show": show, "parts": PARTS.items(), **_BUILT[show](person, asked, show)}


def _additive(person, asked: QueryDict, show: str) -> dict:
    form = CandidateForm(
        asked, show=show, choices=tried_candidates(person), watched=watched(), bases=bases_in_use(person)
    )
    if not form.is_valid():
        return {"form": form}
    found = candidate_drift(person, dosage=asked.get("dosage", ""), **form.asked())
    dosages = DosageForm(dosages=found.dosages, chosen=found.dosage)
    figure = drift_figure(found) if any(point.contrast for point in found.points) else None
    return {
        "form": form,
        "dosages": dosages,
        "found": found,
        "figure": figure,
        "table": drift_table(found),
        "digits": places_of(found.measure),
    }


def _base(person, asked: QueryDict, show: str) -> dict:
    form = BaseForm(asked, show=show, choices=bases_in_use(person), watched=watched())
    if not form.is_valid():
        return {"form": form}
    found = blank_chart(person, **form.asked())
    figure = blank_figure(found) if found.points else None
    return {
        "form": form,
        "found": found,
        "figure": figure,
        "table": blank_table(found),
        "digits": places_of(found.measure),
    }


def _failures(person, asked: QueryDict, show: str) -> dict:
    found = failures_by_quarter(person)
    return {"found": found, "table": failure_table(found), "bars": _bars(found)}


_BUILT = {"additive": _additive, "base": _base, "failures": _failures}


def drift_figure(found: Drift) -> dict:
    """Differences by lot about no difference, with the mean over series and where the next one is expected."""
    counted = any(point.pooled for point in found.points)
    seen = [
        Seen(
            on=point.on,
            value=point.contrast.estimate,
            low=point.contrast.low,
            high=point.contrast.high,
            lot=point.lot if point.lot == NO_LOT else f"lot {point.lot}",
            said=_said(point, found),
            hollow=counted and not point.pooled,
        )
        for point in found.points
        if point.contrast
    ]
    levels, band, mean = [Level(0.0, "blank")], None, found.pooled
    if mean:
        levels.append(Level(mean.estimate, f"mean of {mean.k} series", firm=False))
        if mean.prediction_low is not None:
            band = Band(mean.prediction_low, mean.prediction_high)
    return over_time(seen, y_title=f"Difference from blank, {_unit(found.measure)}", levels=levels, band=band)


def blank_figure(found: BlankChart) -> dict:
    """Blanks by lot of resin, in order of time, between their limits."""
    seen = [
        Seen(
            on=point.on,
            value=point.value,
            lot=point.resin,
            said=f"series {point.series.number}, {point.batch}, {point.resin}: {as_text(point.value)}",
            ringed=bool(point.signals),
        )
        for point in found.points
    ]
    chart = found.chart
    levels = []
    if chart:
        levels = [
            Level(chart.centre, "centre"),
            Level(chart.upper, "upper limit", firm=False),
            Level(chart.lower, "lower limit", firm=False),
        ]
    return over_time(seen, y_title=f"Blank, {_unit(found.measure)}", levels=levels, joined=True)


def _unit(measure: Measure) -> str:
    return "in grades" if measure.graded else measure.unit


def _said(point: Point, found: Drift) -> str:
    one = point.contrast
    reach = "" if one.low is None or one.high is None else f" ({as_text(one.low)} to {as_text(one.high)})"
    dosage = f"{point.dosage}, " if found.dosage == EVERY_DOSAGE else ""
    return f"series {point.series.number}, {point.base}, {dosage}{point.lot}: {as_text(one.estimate)}{reach}"


def _bars(found: FailureCounts) -> list[dict]:
    """Each kind with its counts as figures and bars, each leading to the trials behind it."""
    return [
        {
            "kind": kind,
            "cells": [
                {
                    "count": count,
                    "bar": mark_safe(count_bar(count, found.most)),  # noqa: S308 - made of two numbers
                    "address": _trials(kind.mode, quarter),
                }
                for count, quarter in zip(kind.counts, found.quarters, strict=True)
            ],
        }
        for kind in found.kinds
    ]


def _trials(mode: str, quarter) -> str:
    return reverse(
        "find", query={"failure": mode, "since": quarter.begin.isoformat(), "until": quarter.end.isoformat()}
    )
