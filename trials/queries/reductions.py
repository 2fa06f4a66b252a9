"""One value per cup: the ratings of its panels and readers reduced before anything is compared.

The cup is the unit of analysis. Quantities give their mean, steps their median; ages stay apart, and so do panels
made from a stored tin.
"""

from collections import defaultdict
from collections.abc import Iterable
from dataclasses import dataclass
from statistics import mean, median

from django.db.models import Q

from trials.models import Panel, Rating, Trial
from trials.models.criteria import Scale

YOUNGEST_CURED_H = 20
# Nobody reads at 24 h sharp: readings within a quarter of an age are readings of that age.
SAME_AGE = 1.25


@dataclass(frozen=True, slots=True)
class Reduced:
    """What the ratings of one cup amount to by one criterion, at about one age.

    ``low``, ``high`` and ``better`` are those of the scale that was used (``high`` is None where it is open).
    """

    key: str
    value: float
    age_h: float
    ratings: int
    panels: int
    readers: int
    blind: bool
    steps: bool
    low: float
    high: float | None
    better: str


@dataclass(frozen=True, slots=True)
class _Row:
    trial: int
    panel: int
    person: int
    instrument: str
    age_h: float
    value: float
    blind: bool
    key: str
    version: int
    scale: str
    low: float
    high: float | None
    better: str


_COLUMNS = (
    "panel__trial", "panel", "person", "instrument", "age_h", "value", "blind",
    "criterion__key", "criterion__version", "criterion__scale", "criterion__low", "criterion__high",
    "criterion__better",
)  # fmt: skip


def reductions(
    trials: Iterable[Trial | int],
    *,
    age_h: float | None = None,
    stored: bool = False,
    panels: Q | None = None,
) -> dict[int, dict[str, Reduced]]:
    """Every cup's values by key of the criterion, in one query.

    Parameters
    ----------
    trials
        Trials or their keys; each has an entry in the answer, an empty one where nothing is read.
    age_h
        The age wanted; readings within a quarter of it count. Without it the latest age of 20 h or more, cup by
        cup and criterion by criterion: name an age where cups are compared.
    stored
        Panels from stored tins instead of fresh ones.
    panels
        A condition on panels, for a build-up or a storage of its own: ``Q(stored_tin__days=28)``.

    Notes
    -----
    Readings that are a word have no value and are left out. Where a criterion was rated on two versions of its
    scale, the newer one counts.
    """
    keys = [trial if isinstance(trial, int) else trial.pk for trial in trials]
    found = Rating.objects.filter(panel__trial__in=keys, panel__stored_tin__isnull=not stored, value__isnull=False)
    if panels is not None:
        found = found.filter(panel__in=Panel.objects.filter(panels))
    if age_h is None:
        found = found.filter(age_h__gte=YOUNGEST_CURED_H)
    groups: dict[tuple[int, str], list[_Row]] = defaultdict(list)
    for values in found.order_by("age_h", "pk").values_list(*_COLUMNS):
        row = _row(values)
        groups[row.trial, row.key].append(row)
    answer: dict[int, dict[str, Reduced]] = {key: {} for key in keys}
    for (trial, key), rows in groups.items():
        reduced = reduce_rows(rows, age_h)
        if reduced is not None:
            answer[trial][key] = reduced
    return answer


def reduced_values(
    trials: Iterable[Trial | int],
    *,
    age_h: float | None = None,
    stored: bool = False,
    panels: Q | None = None,
) -> dict[int, dict[str, float]]:
    """As ``reductions``, the values alone: by trial and key of the criterion."""
    found = reductions(trials, age_h=age_h, stored=stored, panels=panels)
    return {trial: {key: one.value for key, one in by_key.items()} for trial, by_key in found.items()}


def reduce_rows(rows: list[_Row], age_h: float | None) -> Reduced | None:
    """Reduce the ratings of one cup by one criterion; None where none is of the age."""
    newest = max(row.version for row in rows)
    rows = [row for row in rows if row.version == newest]
    wanted = max(row.age_h for row in rows) if age_h is None else float(age_h)
    rows = _once_a_reader([row for row in rows if wanted / SAME_AGE <= row.age_h <= SAME_AGE * wanted], wanted)
    if not rows:
        return None
    steps = rows[0].scale == Scale.STEPS
    values = [row.value for row in rows]
    return Reduced(
        key=rows[0].key,
        value=median(values) if steps else mean(values),
        age_h=median([row.age_h for row in rows]),
        ratings=len(rows),
        panels=len({row.panel for row in rows}),
        readers=len({(row.person, row.instrument) for row in rows}),
        blind=all(row.blind for row in rows),
        steps=steps,
        low=rows[0].low,
        high=rows[0].high,
        better=rows[0].better,
    )


def _once_a_reader(rows: list[_Row], wanted: float) -> list[_Row]:
    """The reading nearest to the age, of each reader on each panel: who reads twice does not count twice."""
    nearest: dict[tuple, _Row] = {}
    for row in rows:
        reader = (row.panel, row.person, row.instrument)
        if reader not in nearest or abs(row.age_h - wanted) <= abs(nearest[reader].age_h - wanted):
            nearest[reader] = row
    return list(nearest.values())


def _row(values: tuple) -> _Row:
    trial, panel, person, instrument, age_h, value, blind, key, version, scale, low, high, better = values
    return _Row(
        trial, panel, person, instrument, float(age_h), float(value), blind, key, version, scale,
        float(low), None if high is None else float(high), better,
    )  # fmt: skip
