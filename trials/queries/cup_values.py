"""Every cup's value by every measure, fresh and stored apart, at the age at which the cups can be compared."""

from collections import defaultdict
from collections.abc import Iterable
from dataclasses import dataclass
from statistics import mean

from django.db.models import Q

from trials.models import Criterion, Rating, Series, Trial
from trials.models.trials import Part

from .air import air_contents
from .conditions import FRESH, Condition, conditions
from .measures import Measure, in_order, measure_of
from .reductions import SAME_AGE, YOUNGEST_CURED_H, reductions


@dataclass(frozen=True, slots=True)
class Value:
    """One cup by one measure; ``age_h`` and ``panels`` are None and 0 for what is read wet."""

    value: float
    age_h: float | None = None
    panels: int = 0
    readers: int = 1
    blind: bool = False


@dataclass(frozen=True, slots=True)
class Counted:
    """What was counted on how much area, of one cup; area is None where a panel's is not noted."""

    number: int
    area_dm2: float | None


@dataclass(frozen=True, slots=True)
class Column:
    """The values of all cups by one measure under one condition. ``age_h`` is the age that was chosen."""

    measure: Measure
    condition: Condition
    age_h: float | None
    values: dict[int, Value]
    counted: dict[int, Counted]
    remarks: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class CupValues:
    """Air contents, then criteria in their order. ``too_early``: cups read before 20 h alone, with that age."""

    columns: tuple[Column, ...]
    too_early: dict[int, float]


@dataclass(frozen=True, slots=True)
class _Reading:
    trial: int
    panel: int
    criterion: int
    key: str
    age_h: float
    value: float
    area_dm2: float | None


def cup_values(series: Series, trials: Iterable[Trial], *, age_h: float | None = None) -> CupValues:
    """Only what was read at all; ``age_h`` overrides the age chosen. A number of queries that no cup adds to."""
    trials = list(trials)
    readings = _readings(trials)
    measures = _measures(series, {reading.criterion for reading in readings})
    rated = []
    for condition in conditions(trials):
        here = [reading for reading in readings if reading.panel in condition.panels]
        rated += _rated_columns(trials, condition, here, measures, age_h)
    places = {measure.key: place for place, measure in enumerate(measures)}
    rated.sort(key=lambda column: places[column.measure.key])  # stable: the conditions of one criterion stay together
    return CupValues((*_wet_columns(series, trials), *rated), _too_early(readings))


def _too_early(readings: Iterable[_Reading]) -> dict[int, float]:
    latest: dict[int, float] = {}
    for reading in readings:
        latest[reading.trial] = max(latest.get(reading.trial, 0.0), reading.age_h)
    return {trial: age for trial, age in latest.items() if age < YOUNGEST_CURED_H}


def chosen_age(readings: Iterable[_Reading], blanks: set[int]) -> float | None:
    """The cured age at which most blanks, then most cups, were read; the latest of those."""
    ages = sorted({reading.age_h for reading in readings if reading.age_h >= YOUNGEST_CURED_H})
    if not ages:
        return None

    def reached(age: float) -> tuple[int, int, float]:
        cups = {one.trial for one in readings if age / SAME_AGE <= one.age_h <= age * SAME_AGE}
        return len(cups & blanks), len(cups), age

    return max(ages, key=reached)


def _wet_columns(series: Series, trials: list[Trial]) -> list[Column]:
    fresh = Condition(FRESH, stored=False, film_um=None, panels=frozenset())
    return [
        Column(
            measure=content.measure,
            condition=fresh,
            age_h=None,
            values={trial: Value(value) for trial, value in content.values.items()},
            counted={},
            remarks=(*content.problems, *([content.unequal] if content.unequal else [])),
        )
        for content in air_contents(series, trials)
    ]


def _measures(series: Series, rated: set[int]) -> list[Measure]:
    """Of everything rated, and of what the series is to be judged by even where it is not read yet."""
    wanted = Criterion.objects.filter(Q(pk__in=rated) | Q(pk__in=series.criteria.values("criterion")))
    by_key: dict[str, Criterion] = {}
    # A version that was rated goes before one that was only planned; the newest of those rated is the one reduced.
    for criterion in sorted(wanted.prefetch_related("steps"), key=lambda one: (one.pk in rated, one.version, one.pk)):
        by_key[criterion.key] = criterion
    return [measure_of(criterion) for criterion in in_order(by_key.values())]


def _rated_columns(trials, condition: Condition, readings, measures, age_h) -> list[Column]:
    blanks = {trial.pk for trial in trials if trial.part == Part.BLANK}
    by_key = defaultdict(list)
    for reading in readings:
        by_key[reading.key].append(reading)
    ages = {key: age_h if age_h is not None else chosen_age(rows, blanks) for key, rows in by_key.items()}
    reduced = {
        age: reductions(trials, age_h=age, stored=condition.stored, panels=Q(pk__in=condition.panels))
        for age in sorted({age for age in ages.values() if age is not None})
    }
    found = []
    for measure in measures:
        age = ages.get(measure.key)
        cups = {trial: by_criterion.get(measure.key) for trial, by_criterion in reduced.get(age, {}).items()}
        values = {
            trial: Value(one.value, one.age_h, one.panels, one.readers, one.blind)
            for trial, one in cups.items()
            if one
        }
        if values:
            counted = _counted(by_key[measure.key], age) if measure.counted else {}
            found.append(Column(measure, condition, age, values, counted))
    return found


def _counted(readings: list[_Reading], age_h: float) -> dict[int, Counted]:
    """Number and area of each cup: the mean of the readers of a panel, summed over its panels."""
    panels: dict[tuple[int, int], list[_Reading]] = defaultdict(list)
    for one in readings:
        if age_h / SAME_AGE <= one.age_h <= age_h * SAME_AGE:
            panels[one.trial, one.panel].append(one)
    found: dict[int, Counted] = {}
    for (trial, _), rows in panels.items():
        area, before = rows[0].area_dm2, found.get(trial, Counted(0, 0.0))
        if area is None or before.area_dm2 is None:
            found[trial] = Counted(0, None)
            continue
        number = round(mean(row.value for row in rows) * area)
        found[trial] = Counted(before.number + number, before.area_dm2 + area)
    return found


def _readings(trials: list[Trial]) -> list[_Reading]:
    rows = Rating.objects.filter(panel__trial__in=trials, value__isnull=False).order_by("age_h", "pk")
    names = ("panel__trial", "panel", "criterion", "criterion__key", "age_h", "value", "panel__area_dm2")
    return [
        _Reading(trial, panel, criterion, key, float(age), float(value), None if area is None else float(area))
        for trial, panel, criterion, key, age, value, area in rows.values_list(*names)
    ]
