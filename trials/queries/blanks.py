"""The blank of a base from series to series: is it what it has always been, and what changed where it is not."""

from collections import defaultdict
from dataclasses import dataclass, replace
from datetime import date

from django.utils import timezone

from trials import access
from trials.models import CommonBatch, Series, Trial
from trials.models.materials import Function
from trials.models.trials import Part
from trials.science.control_chart import Chart, individuals

from .blocks import places
from .contrasts import middle
from .cup_values import Column
from .measures import Measure
from .trends import columns, load

NO_BATCH, NO_LOT = "no common batch noted", "resin lot not noted"


@dataclass(frozen=True, slots=True)
class BlankPoint:
    """Blanks of one series that were made alike; ``resin`` names the lots of binder, ``lots`` all of their batch."""

    series: Series
    on: date
    revision: int
    batch: str
    resin: str
    lots: str
    cups: tuple[str, ...]
    value: float
    signals: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class BlankChart:
    """``chart`` is None below two points."""

    measure: Measure | None
    points: tuple[BlankPoint, ...]
    chart: Chart | None
    more: bool


def blank_chart(person, code: str, key: str, *, age_h: float | None = None) -> BlankChart:
    """One value for each set of blanks made alike: cups of one batch are not values of their own."""
    found = access.series(person).filter(revision__base__in=access.bases(person).filter(code=code))
    loaded = load(found)
    read = columns(loaded, key, age_h=age_h)
    points = [point for series in loaded.series if series.pk in read for point in _points(series, read[series.pk])]
    points.sort(key=lambda point: point.on)  # stable: the series of one day stay in their order
    chart = individuals([point.value for point in points]) if len(points) > 1 else None
    measure = next((column.measure for column in read.values()), None)
    return BlankChart(measure, tuple(_signalled(points, chart)), chart, loaded.more)


def _points(series: Series, column: Column) -> list[BlankPoint]:
    trials = list(series.trials.all())
    where = places(trials)
    alike: dict[int, list[Trial]] = defaultdict(list)
    for trial in trials:
        place = where[trial.pk]
        if trial.part == Part.BLANK and trial.pk in column.values and trial.topped_up_from_id is None:
            alike[place.block.number].append(trial)
    return [_point(series, column, blanks) for blanks in alike.values()]


def _point(series: Series, column: Column, blanks: list[Trial]) -> BlankPoint:
    batch = blanks[0].common_batch or series.common_batch
    made = [trial.made_at for trial in blanks if trial.made_at]
    return BlankPoint(
        series=series,
        on=timezone.localdate(min(made, default=series.planned_at)),
        revision=series.revision.number,
        batch=batch.number if batch else NO_BATCH,
        resin=_lots(batch, binder=True) or NO_LOT,
        lots=_lots(batch, binder=False),
        cups=tuple(trial.code for trial in blanks),
        value=middle(column.measure, [column.values[trial.pk].value for trial in blanks]),
    )


def _lots(batch: CommonBatch | None, *, binder: bool) -> str:
    found = [row.lot for row in batch.lots.all()] if batch else []
    kept = [lot for lot in found if not binder or lot.material.function == Function.BINDER]
    return ", ".join(sorted(f"{lot.material.code} {lot.number}" for lot in kept))


def _signalled(points: list[BlankPoint], chart: Chart | None) -> list[BlankPoint]:
    rules = defaultdict(list)
    for signal in chart.signals if chart else ():
        rules[signal.index].append(signal.rule)
    return [replace(point, signals=tuple(rules[place])) for place, point in enumerate(points)]
