"""The numbers behind each figure: columns declared once, for the page and for the comma-separated file alike."""

import csv
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import date
from io import StringIO

from django.urls import reverse

from trials.pages.judging.table import safe
from trials.queries.blanks import BlankChart, BlankPoint
from trials.queries.drift import Drift, Point
from trials.queries.failures import FailureCounts
from trials.queries.measures import Measure


@dataclass(frozen=True, slots=True)
class Column:
    """``places`` for columns of figures; ``address`` where the value leads; ``shown``: what the page has for it."""

    head: str
    value: Callable
    unit: str = ""
    places: int | None = None
    address: Callable | None = None
    shown: Callable | None = None

    @property
    def number(self) -> bool:
        return self.places is not None


@dataclass(frozen=True, slots=True)
class Cell:
    value: object
    places: int | None
    address: str

    @property
    def number(self) -> bool:
        return self.places is not None

    @property
    def short(self) -> bool:
        """A day or a code, which is not broken over two lines."""
        return isinstance(self.value, date) or " " not in self.text

    @property
    def text(self) -> str:
        if isinstance(self.value, date):
            return f"{self.value.day} {self.value:%b %Y}"
        return "" if self.value is None else str(self.value)


@dataclass(frozen=True, slots=True)
class Table:
    columns: tuple[Column, ...]
    records: Sequence

    @property
    def rows(self) -> list[list[Cell]]:
        return [
            [Cell((c.shown or c.value)(one), c.places, c.address(one) if c.address else "") for c in self.columns]
            for one in self.records
        ]

    def csv(self) -> str:
        """Comma-separated text with a byte order mark, so that spreadsheets read the units."""
        out = StringIO()
        writer = csv.writer(out, lineterminator="\r\n")
        writer.writerow([f"{c.head}, {c.unit}" if c.unit else c.head for c in self.columns])
        writer.writerows([safe(c.value(one)) for c in self.columns] for one in self.records)
        return "\ufeff" + out.getvalue()


def places_of(measure: Measure | None) -> int:
    """Counts and grades are worth one place behind the point, other quantities two."""
    return 1 if measure is None or measure.graded or measure.counted else 2


def drift_table(found: Drift) -> Table:
    unit, places = found.measure.unit if found.measure else "", places_of(found.measure)
    return Table(
        (
            Column("On", lambda point: point.on),
            Column("Series", lambda point: point.series.number, address=_series),
            Column("Base", lambda point: point.base),
            Column("Dosage", lambda point: point.dosage),
            Column("Lot", lambda point: point.lot),
            Column("Panels", lambda point: point.condition),
            Column("Blank", lambda point: point.contrast and point.contrast.control_middle, unit, places=places),
            Column("Treated", lambda point: point.middle, unit, places=places),
            Column("Difference", lambda point: point.contrast and point.contrast.estimate, unit, places=places),
            Column("95 % from", lambda point: point.contrast and point.contrast.low, places=places),
            Column("to", lambda point: point.contrast and point.contrast.high, places=places),
            Column("p", lambda point: point.contrast and point.contrast.p, places=3, shown=_p_said),
            Column("Cups", lambda point: len(point.values), places=0),
            Column("Blanks", lambda point: point.contrast and point.contrast.n_control, places=0),
            Column("In the mean", lambda point: "yes" if point.pooled else "no"),
            Column("Note", _note),
        ),
        found.points,
    )


def blank_table(found: BlankChart) -> Table:
    unit, places = found.measure.unit if found.measure else "", places_of(found.measure)
    return Table(
        (
            Column("On", lambda point: point.on),
            Column("Series", lambda point: point.series.number, address=_series),
            Column("Revision", lambda point: point.revision, places=0),
            Column("Common batch", lambda point: point.batch),
            Column("Resin lot", lambda point: point.resin),
            Column("All lots of the batch", lambda point: point.lots),
            Column("Cups", lambda point: ", ".join(point.cups)),
            Column("Blank", lambda point: point.value, unit, places=places),
            Column("Asks for a cause", lambda point: "; ".join(point.signals)),
        ),
        found.points,
    )


def failure_table(found: FailureCounts) -> Table:
    def of(place: int) -> Callable:
        return lambda kind: kind.counts[place]

    return Table(
        (
            Column("How it failed", lambda kind: kind.label),
            *(Column(quarter.name, of(place), places=0) for place, quarter in enumerate(found.quarters)),
            Column("Together", lambda kind: kind.total, places=0),
        ),
        found.kinds,
    )


def _series(point: Point | BlankPoint) -> str:
    return reverse("series", args=[point.series.number])


def _note(point: Point) -> str:
    return point.contrast.note if point.contrast else point.lone


def _p_said(point: Point) -> str:
    return point.contrast.p_said if point.contrast else ""
