"""What was done to a cup, with the shear it amounts to, beside what its additives ask for."""

from collections.abc import Iterable
from dataclasses import dataclass

from trials.models import Trial, Working
from trials.models.trials import WorkingKind
from trials.science.shear import USUAL_BLADE_RATIO, blade_ratio, usual_blade

from .blocks import stirring, tip_speed_m_s


@dataclass(frozen=True, slots=True)
class Worked:
    """One working; ``remarks`` say what is unusual of it."""

    working: Working
    tip_speed_m_s: float | None
    remarks: tuple[str, ...]


def worked(workings: Iterable[Working]) -> tuple[Worked, ...]:
    """Expects equipment fetched."""
    rows = sorted(workings, key=lambda row: (row.position, row.pk))
    return tuple(Worked(row, tip_speed_m_s(row), _remarks(row)) for row in rows)


def asked_for(trial: Trial) -> tuple[str, ...]:
    """What each additive of a cup asks for, and what it got. Expects dosages with candidate and material."""
    got = stirring(trial.workings.all()).get(WorkingKind.DISPERSE)
    found = []
    for dose in sorted(trial.dosages.all(), key=lambda dose: dose.pk):
        candidate = dose.candidate
        asked = [
            f"{candidate.tip_speed_m_s:f} m/s" if candidate.tip_speed_m_s is not None else "",
            f"{candidate.minutes:f} min" if candidate.minutes is not None else "",
        ]
        if any(asked):
            asks = " for ".join(filter(None, asked))
            found.append(f"{candidate.material.code} asks for {asks}: got {got or 'no dispersing'}.")
    return tuple(found)


def _blade(row: Working) -> float | None:
    blade = row.blade_mm or (row.equipment.blade_mm if row.equipment else None)
    return None if blade is None else float(blade)


def _remarks(row: Working) -> tuple[str, ...]:
    blade, vessel = _blade(row), row.vessel_mm
    if blade is None or vessel is None:
        return ()
    vessel = float(vessel)
    if blade >= vessel:
        return (f"a blade of {blade:g} mm does not fit a vessel of {vessel:g} mm",)
    if usual_blade(blade, vessel):
        return ()
    low, high = USUAL_BLADE_RATIO
    ratio = blade_ratio(blade, vessel)
    return (f"blade {ratio:.2f} of the vessel, usual are {low:.2f} to {high:.2f}",)
