"""Air content of a cup from its density, against a density free of air, saying where that one comes from."""

from collections.abc import Iterable
from dataclasses import dataclass
from statistics import mean

from trials.models import CommonBatch, Series, Trial, WetReading
from trials.models.criteria import Better, Concern
from trials.models.trials import WetQuantity, Where
from trials.science import air

from .bases import mix_of
from .measures import Measure
from .recipes import components_of

SAME_MINUTES = 5.0


@dataclass(frozen=True, slots=True)
class AirFree:
    """A density free of air in g/mL, and where it comes from."""

    density_g_ml: float
    source: str

    @property
    def said(self) -> str:
        """Measured to the fourth place: half a unit of the third is worth 0.03 % of air."""
        measured = self.source.startswith(("measured", "mean"))
        return f"{self.density_g_ml:.{5 if measured else 4}g} g/mL"


@dataclass(frozen=True, slots=True)
class AirContent:
    """One measure with its values by trial; ``problems`` are cups whose density can't be right."""

    measure: Measure
    values: dict[int, float]
    minutes: dict[int, float | None]
    problems: tuple[str, ...]

    @property
    def unequal(self) -> str:
        """Said where cups were read at different minutes: air leaves while they wait."""
        known = [minutes for minutes in self.minutes.values() if minutes is not None]
        if not known or max(known) - min(known) <= SAME_MINUTES:
            return ""
        return f"densities were read from {min(known):g} to {max(known):g} min after stirring"


def air_contents(series: Series, trials: Iterable[Trial]) -> tuple[AirContent, ...]:
    """Of component A and of the mix, by the first density of each cup, where densities were read at all.

    Expects wet readings of cups and common batches, and the recipe of the revision, prefetched.
    """
    trials = list(trials)
    found = (_content(series, trials, where) for where in (Where.A, Where.MIX))
    return tuple(content for content in found if content)


def _content(series: Series, trials: list[Trial], where: str) -> AirContent | None:
    firsts = {trial.pk: reading for trial in trials if (reading := _first(trial.wet_readings.all(), where))}
    if not firsts:
        return None
    batches = {trial.pk: trial.common_batch or series.common_batch for trial in trials if trial.pk in firsts}
    free = {batch: air_free(series, trials, where, batch) for batch in batches.values()}
    values, problems = {}, []
    for trial in trials:
        against = free[batches[trial.pk]] if trial.pk in firsts else None
        if against is None:
            continue
        try:
            values[trial.pk] = air.air_pct(float(firsts[trial.pk].value), against.density_g_ml)
        except ValueError as error:
            problems.append(f"{trial.code}: {error}")
    sources = [f"{one.said}, {one.source}" for one in free.values() if one]
    if not sources:
        problems.append(f"The density of {_of(where)} free of air is not known: no air content.")
    minutes = {key: None if one.minutes is None else float(one.minutes) for key, one in firsts.items()}
    return AirContent(_measure(where, sources), values, minutes, tuple(problems))


def air_free(series: Series, trials: list[Trial], where: str, batch: CommonBatch | None) -> AirFree | None:
    """Measured on the batch, the revision or degassed cups; else from the recipe."""
    if where == Where.A:
        return _measured_on(batch) or _of_component(series)
    revision = series.revision
    if revision.air_free_density_g_ml is not None:
        how = revision.air_free_method or "method not noted"
        return AirFree(float(revision.air_free_density_g_ml), f"measured on the revision: {how}")
    degassed = [
        reading for trial in trials for reading in _known(trial.wet_readings.all(), WetQuantity.AIR_FREE, where)
    ]
    if degassed:
        density = mean(float(reading.value) for reading in degassed)
        return AirFree(density, f"mean of {len(degassed)} degassed samples of this series")
    mix = mix_of(revision, components_of(revision))
    return None if mix.density_g_ml is None else AirFree(mix.density_g_ml, _unmeasured(mix.density_source))


def _measured_on(batch: CommonBatch | None) -> AirFree | None:
    if batch is None:
        return None
    readings = _known(batch.wet_readings.all(), WetQuantity.AIR_FREE, Where.A)
    if readings:
        density = mean(float(reading.value) for reading in readings)
        return AirFree(density, f"measured on common batch {batch.number}")
    if batch.density_g_ml is not None:
        return AirFree(float(batch.density_g_ml), f"measured on common batch {batch.number}")
    return None


def _of_component(series: Series) -> AirFree | None:
    component = next((one for one in components_of(series.revision) if one.letter == Where.A), None)
    if component is None or component.density_g_ml is None:
        return None
    return AirFree(component.density_g_ml, _unmeasured(component.density_source))


def _unmeasured(source: str) -> str:
    if source.startswith("measured"):
        return source
    return f"{source}: uncertain by as much as the effect, the same for every cup"


def _measure(where: str, sources: list[str]) -> Measure:
    against = "; ".join(dict.fromkeys(sources))
    return Measure(
        key=f"air-{where.lower()}",
        name=f"Air content of {_of(where)}",
        unit="% by volume",
        better=Better.LOWER,
        concern=Concern.EFFICIENCY,
        low=-0.5,
        high=100.0,
        note=f"first density of each cup against {against}" if against else "",
    )


def _of(where: str) -> str:
    return "the mix" if where == Where.MIX else f"component {where}"


def _known(readings: Iterable[WetReading], quantity: str, where: str) -> list[WetReading]:
    return [one for one in readings if one.quantity == quantity and one.where == where and one.value is not None]


def _first(readings: Iterable[WetReading], where: str) -> WetReading | None:
    known = _known(readings, WetQuantity.DENSITY, where)
    return min(known, key=lambda one: (one.minutes is None, one.minutes or 0, one.pk), default=None)
