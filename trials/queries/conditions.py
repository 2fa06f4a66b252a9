"""Fresh or stored, thin or thick: panels that may be compared with each other, and nothing else."""

from collections.abc import Iterable
from dataclasses import dataclass

from trials.models import Panel, Trial
from trials.models.panels import Coat
from trials.models.trials import Part

FRESH = "fresh"
FILM_TOLERANCE = 0.10


@dataclass(frozen=True, slots=True)
class Condition:
    """``panels`` are keys. ``film_um`` is given where the series was applied at several thicknesses."""

    key: str
    stored: bool
    film_um: float | None
    panels: frozenset[int]

    @property
    def fresh(self) -> bool:
        return not self.stored


def film_um(panel: Panel) -> float | None:
    """Wet film of the coat under test: everything but the primer and a second coat on top. None where not noted."""
    under = [layer.wet_um for layer in panel.layers.all() if layer.coat not in (Coat.PRIMER, Coat.SECOND)]
    known = [float(wet) for wet in under if wet is not None]
    return sum(known) if known else None


def storage(panel: Panel) -> str:
    tin = panel.stored_tin
    if tin is None:
        return FRESH
    return f"stored {tin.days} d" + (f" at {tin.temperature_c:f} °C" if tin.temperature_c is not None else "")


def conditions(trials: Iterable[Trial]) -> tuple[Condition, ...]:
    """Fresh first, then by storage and film; a thickness counts as one of its own where a blank has it."""
    placed = [(trial, panel) for trial in trials for panel in trial.panels.all()]
    found = []
    for name in sorted({storage(panel) for _, panel in placed}, key=lambda name: (name != FRESH, name)):
        here = [(trial, panel) for trial, panel in placed if storage(panel) == name]
        films = _films(here)
        if len(films) < 2:
            found.append(Condition(name, name != FRESH, None, frozenset(panel.pk for _, panel in here)))
            continue
        for film in films:
            panels = frozenset(panel.pk for _, panel in here if alike(film_um(panel), film))
            found.append(Condition(f"{name}, {film:g} µm", name != FRESH, film, panels))
    return tuple(found) or (Condition(FRESH, False, None, frozenset()),)


def alike(film: float | None, other: float) -> bool:
    return film is not None and abs(film - other) <= FILM_TOLERANCE * other


def _films(placed) -> list[float]:
    """The thicknesses at which there is a blank, each once."""
    films: list[float] = []
    for trial, panel in placed:
        film = film_um(panel)
        if trial.part == Part.BLANK and film is not None and not any(alike(film, one) for one in films):
            films.append(film)
    return sorted(films)
