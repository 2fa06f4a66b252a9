"""Silicone that a cup may have left on the equipment for the next, silicone-free one."""

from collections.abc import Iterable

from trials.models import Trial
from trials.models.trials import Part

from .marks import Mark


def after_silicone(trials: Iterable[Trial]) -> tuple[dict[int, list[Mark]], list[str]]:
    """Silicone-free cups on equipment after silicone: marks where it was not cleaned, codes where that is open.

    The order is told by the times of making. A clean check is made to find out just this, and is left out.
    """
    dated = sorted((trial for trial in trials if trial.made_at), key=lambda trial: (trial.made_at, trial.position))
    last: dict[int, Trial] = {}
    marks: dict[int, list[Mark]] = {}
    unknown: list[str] = []
    for trial in dated:
        silicone = any(dose.candidate.silicone for dose in trial.dosages.all())
        for equipment in {one.equipment for one in trial.workings.all() if one.equipment}:
            if not silicone and trial.part != Part.CLEAN:
                mark = _left_over(trial, equipment, last.get(equipment.pk))
                if mark:
                    marks.setdefault(trial.pk, []).append(mark)
                elif _unknown(trial, equipment, last.get(equipment.pk)) and trial.code not in unknown:
                    unknown.append(trial.code)
            if silicone:
                last[equipment.pk] = trial
    return marks, unknown


def _left_over(trial: Trial, equipment, before: Trial | None) -> Mark | None:
    used = before.made_at if before else equipment.last_silicone
    cleaned = equipment.last_cleaned
    if used is None or used > trial.made_at or (cleaned and cleaned >= used):
        return None
    which = f"for {before.code}" if before else f"on {used.day} {used:%b %Y}"
    return Mark(f"{equipment.name} had silicone in it {which} and no cleaning is noted since", heavy=True)


def _unknown(trial: Trial, equipment, before: Trial | None) -> bool:
    """Equipment keeps its last cleaning only: where that is later than the cup, there may have been one before."""
    return bool(before and equipment.last_cleaned and equipment.last_cleaned > trial.made_at)
