"""What an additive does from series to series and lot to lot: each time against the blanks made beside it."""

from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from datetime import date

from django.utils import timezone

from trials import access
from trials.models import Series
from trials.models.trials import Part
from trials.science.evidence import Pooled, pool

from .blocks import places
from .contrasts import LEVEL, TOGETHER, Cell, Contrast, cells
from .cup_values import Column
from .groups import Group, groups
from .measures import Measure
from .trends import columns, load

NO_LOT = "lot not noted"
EVERY_DOSAGE = "all"


@dataclass(frozen=True, slots=True)
class Point:
    """One dosage in one series. ``contrast`` is None where no blank stands beside it, and ``lone`` says why.

    ``variance`` is that of the difference, in squared units; ``pooled`` says that it counts in the mean over series.
    """

    series: Series
    on: date
    base: str
    dosage: str
    pct: float
    lot: str
    condition: str
    values: tuple[float, ...]
    middle: float | None
    contrast: Contrast | None
    variance: float | None
    lone: str
    pooled: bool = False


@dataclass(frozen=True, slots=True)
class Drift:
    """``dosages``: those tried, the most frequent first; ``beside``: groups left out that held a second additive."""

    measure: Measure | None
    points: tuple[Point, ...]
    dosages: tuple[str, ...]
    dosage: str
    pooled: Pooled | None
    unpooled: str
    beside: int
    more: bool

    @property
    def between_pct(self) -> float | None:
        """Share of the spread of these series that is more than cups within a series differ by."""
        return None if self.pooled is None or self.pooled.i2 is None else 100 * self.pooled.i2


def candidate_drift(
    person, code: str, key: str, *, base: str = "", dosage: str = "", age_h: float | None = None
) -> Drift:
    """The differences of one additive by one measure, in order of time; a number of queries that no series adds to.

    Parameters
    ----------
    dosage
        One of ``dosages`` of the answer, or ``EVERY_DOSAGE``; what is not among them stands for the most frequent.
        Only one dosage is pooled: dosages of a series share their blanks.
    """
    found = access.series(person).filter(trials__dosages__candidate__material__code=code)
    if base:
        found = found.filter(revision__base__code=base)
    loaded = load(access.series(person).filter(pk__in=found.values("pk")))
    read = columns(loaded, key, age_h=age_h)
    points, beside = [], 0
    for series in loaded.series:
        if series.pk in read:
            made, left_out = _points(series, read[series.pk], code)
            points += made
            beside += left_out
    dosages = tuple(name for name, _ in Counter(point.dosage for point in points).most_common())
    chosen = dosage if dosage in (*dosages, EVERY_DOSAGE) else next(iter(dosages), EVERY_DOSAGE)
    shown = tuple(point for point in points if chosen in (EVERY_DOSAGE, point.dosage))
    measure = next((column.measure for column in read.values()), None)
    shown, pooled, unpooled = _pooled(shown, measure, chosen)
    return Drift(measure, shown, dosages, chosen, pooled, unpooled, beside, loaded.more)


def _points(series: Series, column: Column, code: str) -> tuple[list[Point], int]:
    trials = list(series.trials.all())
    made = groups(trials, places(trials))
    compared = cells(column, made, incumbents={})
    mine = [cell for cell in compared if cell.group.part in TOGETHER and _holds(cell.group, code)]
    alone = [cell for cell in mine if len(cell.group.doses) == 1]
    return [_point(series, column, cell, compared) for cell in alone], len(mine) - len(alone)


def _holds(group: Group, code: str) -> bool:
    return any(dose.candidate.material.code == code for cup in group.cups for dose in cup.trial.dosages.all())


def _point(series: Series, column: Column, cell: Cell, compared: Sequence[Cell]) -> Point:
    dose, cups = cell.group.doses[0], cell.group.cups
    lots = {dosage.lot.number if dosage.lot else NO_LOT for cup in cups for dosage in cup.trial.dosages.all()}
    made = [cup.trial.made_at for cup in cups if cup.trial.made_at]
    return Point(
        series=series,
        on=timezone.localdate(min(made, default=series.planned_at)),
        base=series.revision.base.code,
        dosage=f"{dose.written} % {dose.basis}, {dose.stage}",
        pct=dose.pct,
        lot=" and ".join(sorted(lots)),
        condition=column.condition.key,
        values=cell.counted,
        middle=cell.middle,
        contrast=cell.blank,
        variance=_variance(cell, compared),
        lone=cell.lone,
    )


def _variance(cell: Cell, compared: Sequence[Cell]) -> float | None:
    """Squared standard error of the difference, from the spread of all groups that were compared with it.

    None for grades, and where there is no spread to judge by.
    """
    if cell.blank is None or cell.blank.low is None:
        return None
    number = cell.group.block.number
    within = [
        one.counted
        for one in compared
        if one.group.block.number == number and one.group.part in (*TOGETHER, Part.BLANK) and one.n
    ]
    squares = sum((value - sum(group) / len(group)) ** 2 for group in within for value in group)
    df = sum(len(group) for group in within) - len(within)
    return squares / df * (1 / cell.blank.n + 1 / cell.blank.n_control)


def _pooled(points: tuple[Point, ...], measure: Measure | None, chosen: str):
    """The points with those marked that count, their mean over series, and why there is none."""
    if measure is None or not points:
        return points, None, ""
    if measure.graded:
        return points, None, "Grades are ranked, not averaged: there is no mean over series."
    if chosen == EVERY_DOSAGE:
        return points, None, "Choose one dosage for a mean over series: dosages of one series share their blanks."
    counted = list(_one_a_series(points))
    if not counted:
        return points, None, "No series has a spread to judge by: there is no mean over series."
    found = pool([point.contrast.estimate for point in counted], [point.variance for point in counted], level=LEVEL)
    marked = tuple(replace(point, pooled=any(point is one for one in counted)) for point in points)
    return marked, found, ""


def _one_a_series(points: Sequence[Point]) -> Iterator[Point]:
    """Of each series the comparison with most cups: several blocks of one series are not several series."""
    best: dict[int, Point] = {}
    for point in points:
        standing = best.get(point.series.pk)
        if point.variance is not None and (standing is None or _cups(point) > _cups(standing)):
            best[point.series.pk] = point
    yield from best.values()


def _cups(point: Point) -> int:
    return point.contrast.n + point.contrast.n_control
