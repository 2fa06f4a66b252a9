"""What is watched over time in the series that the person may see: what to choose from, and a value for each cup."""

from dataclasses import dataclass

from django.db.models import Count, Prefetch, Q, QuerySet

from trials import access
from trials.models import Candidate, CommonBatchLot, Criterion, Dosage, Panel, Series, Trial, Working
from trials.models.trials import Where

from .air import air_contents
from .conditions import FRESH, Condition, conditions
from .cup_values import Column, Value
from .measures import measure_of
from .reductions import reductions

# More than these are not drawn: the newest are, and it is said.
MOST_SERIES = 200
AIR = {"air-mix": ("Air content of the mix", Where.MIX), "air-a": ("Air content of component A", Where.A)}
UNREAD = Condition(FRESH, stored=False, film_um=None, panels=frozenset())


@dataclass(frozen=True, slots=True)
class Choice:
    """``series`` counts those that the person may see."""

    code: str
    name: str
    series: int


@dataclass(frozen=True, slots=True)
class Loaded:
    """Series in order of time; ``more``: older ones were left out."""

    series: tuple[Series, ...]
    more: bool

    @property
    def trials(self) -> list[Trial]:
        return [trial for one in self.series for trial in one.trials.all()]


def tried_candidates(person) -> tuple[Choice, ...]:
    """Additives of the series that the person may see, the most tried first."""
    count = Count("dosages__trial__series", filter=Q(dosages__trial__series__in=access.series(person)), distinct=True)
    found = Candidate.objects.annotate(series=count).filter(series__gt=0).order_by("-series", "material__code", "pk")
    return tuple(Choice(*row) for row in found.values_list("material__code", "material__name", "series"))


def bases_in_use(person) -> tuple[Choice, ...]:
    """Bases that the person may see with series that they may see, the most tested first."""
    count = Count("revisions__series", filter=Q(revisions__series__in=access.series(person)), distinct=True)
    found = access.bases(person).annotate(series=count).filter(series__gt=0).order_by("-series", "code", "pk")
    return tuple(Choice(*row) for row in found.values_list("code", "name", "series"))


def watched() -> tuple[tuple[str, str], ...]:
    """What can be watched, by key: air contents, then the criteria in use."""
    criteria = Criterion.objects.filter(current=True).order_by("position", "pk").values_list("key", "name")
    return (*((key, name) for key, (name, _) in AIR.items()), *criteria)


def load(found: QuerySet[Series]) -> Loaded:
    """The newest of these series with all that comparing their cups asks for, in a fixed number of queries."""
    lots = Prefetch("lots", CommonBatchLot.objects.select_related("lot__material").order_by("pk"))
    newest = list(
        found.select_related("revision__base", "common_batch")
        .prefetch_related(
            "revision__components__lines__material__groups",
            "revision__components__lines__lot",
            "common_batch__wet_readings",
            Prefetch("common_batch__lots", lots.queryset),
            Prefetch("trials", Trial.objects.select_related("common_batch").order_by("position", "pk")),
            "trials__common_batch__wet_readings",
            Prefetch("trials__common_batch__lots", lots.queryset),
            Prefetch("trials__dosages", Dosage.objects.select_related("candidate__material", "lot")),
            Prefetch("trials__workings", Working.objects.select_related("equipment")),
            "trials__wet_readings",
            Prefetch("trials__panels", Panel.objects.select_related("stored_tin")),
            "trials__panels__layers",
            "trials__topped_up_from",
        )
        .order_by("-planned_at", "-pk")[: MOST_SERIES + 1]
    )
    return Loaded(tuple(reversed(newest[:MOST_SERIES])), more=len(newest) > MOST_SERIES)


def columns(loaded: Loaded, key: str, *, age_h: float | None) -> dict[int, Column]:
    """The values of all cups by one measure, by series; fresh panels only, of the film that the series is meant for.

    A series in which nothing of it was read has no column.
    """
    if key in AIR:
        return {one.pk: column for one in loaded.series if (column := _air(one, key))}
    criterion = Criterion.objects.filter(key=key, current=True).prefetch_related("steps").first()
    if criterion is None:
        return {}
    measure = measure_of(criterion)
    meant = {one.pk: _meant(one, one.trials.all()) for one in loaded.series}
    panels = frozenset().union(*(condition.panels for condition in meant.values()))
    reduced = reductions(loaded.trials, age_h=age_h, panels=Q(pk__in=panels))
    return {
        one.pk: Column(measure, meant[one.pk], age_h, values, counted={})
        for one in loaded.series
        if (values := _values(one, reduced, key))
    }


def _air(series: Series, key: str) -> Column | None:
    trials = list(series.trials.all())
    content = next((one for one in air_contents(series, trials) if one.measure.key == key), None)
    if content is None or not content.values:
        return None
    values = {trial: Value(value) for trial, value in content.values.items()}
    return Column(content.measure, UNREAD, None, values, counted={}, remarks=content.problems)


def _meant(series: Series, trials) -> Condition:
    """Of several films the one nearest to what the series was planned for, else the one with most panels."""
    fresh = [condition for condition in conditions(trials) if condition.fresh]
    wanted = series.film_um
    if wanted is not None and all(condition.film_um is not None for condition in fresh):
        return min(fresh, key=lambda one: abs(one.film_um - float(wanted)), default=UNREAD)
    return max(fresh, key=lambda one: len(one.panels), default=UNREAD)


def _values(series: Series, reduced, key: str) -> dict[int, Value]:
    found = {trial.pk: reduced[trial.pk].get(key) for trial in series.trials.all()}
    return {
        trial: Value(one.value, one.age_h, one.panels, one.readers, one.blind) for trial, one in found.items() if one
    }
