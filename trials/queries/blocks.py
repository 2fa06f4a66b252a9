"""Cups that may be compared: one common batch, one day, one climate, one way of stirring.

What is not known on either side sets no cup apart; it can't be checked, which is said elsewhere.
"""

from collections.abc import Iterable
from dataclasses import dataclass, field
from datetime import date

from django.utils import timezone

from trials.models import Trial, Working
from trials.models.series import Outcome
from trials.models.trials import Part, WorkingKind
from trials.science import shear

# Common practice, no source: what two cups may differ by and still be stirred alike, or stand in the same air.
SAME_WORKING = 0.10
SAME_AIR_C = 3.0
SAME_HUMIDITY_PCT = 15.0

SAME_REST_MIN = 5.0

STIRRING = (WorkingKind.DISPERSE, WorkingKind.AERATE, WorkingKind.MIX)
# One blank more, made last to prove the equipment clean: it is compared with the blanks, it is not one of them.
CONTROL = (Part.BLANK,)


@dataclass(frozen=True, slots=True)
class Stirring:
    """All pieces of one kind together: the highest speed and the sum of minutes; None where not noted."""

    tip_speed_m_s: float | None
    rpm: float | None
    minutes: float | None

    def __str__(self):
        speed = None
        if self.tip_speed_m_s is not None:
            speed = f"{self.tip_speed_m_s:.2g} m/s"
        elif self.rpm is not None:
            speed = f"{self.rpm:g} rpm"
        minutes = None if self.minutes is None else f"{self.minutes:g} min"
        return ", ".join(part for part in (speed, minutes) if part) or "not noted"


@dataclass(frozen=True, slots=True)
class Circumstances:
    """Under which one cup was made."""

    batch: str
    day: date | None
    air_c: float | None
    humidity_pct: float | None
    stirring: dict[str, Stirring]
    rest_min: float | None

    def differences(self, blank: "Circumstances", *, stirring: bool = True) -> tuple[str, ...]:
        """In short sentences, each with its figures; empty where the two may be compared."""
        found = []
        if self.batch != blank.batch:
            found.append(f"other common batch: {self.batch or 'none'}, blank {blank.batch or 'none'}")
        if self.day and blank.day and self.day != blank.day:
            found.append(f"other day: {_said(self.day)}, blank {_said(blank.day)}")
        found += _off("air", self.air_c, blank.air_c, SAME_AIR_C, "°C")
        found += _off("humidity", self.humidity_pct, blank.humidity_pct, SAME_HUMIDITY_PCT, "% RH")
        return (*found, *(self._stirred_otherwise(blank) if stirring else ()))

    def _stirred_otherwise(self, blank: "Circumstances") -> list[str]:
        if not self.stirring or not blank.stirring:
            return []
        found = self._rested_otherwise(blank)
        for kind in STIRRING:
            mine, theirs = self.stirring.get(kind), blank.stirring.get(kind)
            if (mine is None) != (theirs is None) or (mine and theirs and _unlike(mine, theirs)):
                label = WorkingKind(kind).label
                found.append(
                    f"blank stirred differently ({label}): {mine or 'not at all'}, blank {theirs or 'not at all'}"
                )
        return found

    def _rested_otherwise(self, blank: "Circumstances") -> list[str]:
        """Air leaves by itself while a cup stands."""
        mine, theirs = self.rest_min, blank.rest_min
        if (
            mine is None
            or theirs is None
            or abs(mine - theirs) <= max(SAME_REST_MIN, SAME_WORKING * max(mine, theirs))
        ):
            return []
        return [f"blank rested differently: {mine:g} min, blank {theirs:g} min"]


@dataclass(frozen=True, slots=True)
class Block:
    """Blanks made alike and the cups made as they were. ``label`` tells blocks of one series apart."""

    number: int
    label: str
    blanks: tuple[int, ...]
    like: Circumstances | None


@dataclass(frozen=True, slots=True)
class Place:
    """The block that a cup belongs to, or stands nearest to: then ``reasons`` say what sets it apart."""

    block: Block
    reasons: tuple[str, ...] = field(default=())


def circumstances(trial: Trial) -> Circumstances:
    """Expects workings with equipment, panels, the common batch and the series' own one fetched."""
    batch = trial.common_batch or trial.series.common_batch
    made = trial.made_at or trial.mixed_at
    return Circumstances(
        batch=batch.number if batch else "",
        day=timezone.localdate(made) if made else None,
        air_c=_noted(trial, "air_c"),
        humidity_pct=_noted(trial, "humidity_pct"),
        stirring=stirring(trial.workings.all()),
        rest_min=_rest_min(trial.workings.all()),
    )


def stirring(workings: Iterable[Working]) -> dict[str, Stirring]:
    """What a cup got of each kind of stirring."""
    found = {}
    for kind in STIRRING:
        pieces = [one for one in workings if one.kind == kind]
        if pieces:
            minutes = [float(one.minutes) for one in pieces if one.minutes is not None]
            rpm = [float(one.rpm) for one in pieces if one.rpm is not None]
            tips = [tip for one in pieces if (tip := tip_speed_m_s(one)) is not None]
            found[kind] = Stirring(max(tips, default=None), max(rpm, default=None), sum(minutes) if minutes else None)
    return found


def _rest_min(workings: Iterable[Working]) -> float | None:
    """All rests together; None where one of them has no minutes noted, or nothing is noted at all."""
    workings = list(workings)
    minutes = [one.minutes for one in workings if one.kind == WorkingKind.REST]
    if not workings or None in minutes:
        return None
    return float(sum(minutes))


def tip_speed_m_s(working: Working) -> float | None:
    blade = working.blade_mm or (working.equipment.blade_mm if working.equipment else None)
    if blade is None or working.rpm is None:
        return None
    return shear.tip_speed_m_s(float(blade), float(working.rpm))


def places(trials: Iterable[Trial]) -> dict[int, Place]:
    """Every cup in its block. Blanks made alike share one; a series without blanks has one that holds none."""
    trials = list(trials)
    made = {trial.pk: circumstances(trial) for trial in trials}
    blanks = [trial for trial in trials if trial.part in CONTROL and trial.outcome != Outcome.UNFAIR]
    blocks = _blocks(blanks, made)
    return {trial.pk: _place(trial, made[trial.pk], blocks) for trial in trials}


def _blocks(blanks: list[Trial], made: dict[int, Circumstances]) -> list[Block]:
    gathered: list[list[Trial]] = []
    for blank in blanks:
        home = next((one for one in gathered if not made[blank.pk].differences(made[one[0].pk])), None)
        if home is None:
            gathered.append([blank])
        else:
            home.append(blank)
    if not gathered:
        return [Block(1, "", (), None)]
    return [
        Block(number, _label(made[group[0].pk]), tuple(blank.pk for blank in group), made[group[0].pk])
        for number, group in enumerate(gathered, 1)
    ]


def _place(trial: Trial, made: Circumstances, blocks: list[Block]) -> Place:
    # What is degassed is meant to be handled otherwise.
    compared = trial.part != Part.VACUUM
    found = [(block, made.differences(block.like, stirring=compared) if block.like else ()) for block in blocks]
    return Place(*min(found, key=lambda one: (len(one[1]), one[0].number)))


def _label(made: Circumstances) -> str:
    parts = [f"batch {made.batch}" if made.batch else "", _said(made.day) if made.day else ""]
    return ", ".join(part for part in parts if part) or "no batch noted"


def _said(day: date) -> str:
    return f"{day.day} {day:%b %Y}"


def _off(what: str, mine: float | None, theirs: float | None, most: float, unit: str) -> list[str]:
    if mine is None or theirs is None or abs(mine - theirs) <= most:
        return []
    return [f"other climate: {what} {mine:g} {unit}, blank {theirs:g} {unit}"]


def _unlike(mine: Stirring, theirs: Stirring) -> bool:
    speeds = (mine.tip_speed_m_s, theirs.tip_speed_m_s)
    if None in speeds:
        speeds = (mine.rpm, theirs.rpm)
    return any(_apart(*pair) for pair in (speeds, (mine.minutes, theirs.minutes)))


def _apart(one: float | None, other: float | None) -> bool:
    if one is None or other is None:
        return False
    return abs(one - other) > SAME_WORKING * max(abs(one), abs(other))


def _noted(trial: Trial, name: str) -> float | None:
    """Of the cup, else of the first fresh panel made from it."""
    panels = [panel for panel in trial.panels.all() if panel.stored_tin_id is None]
    values = (getattr(record, name) for record in (trial, *sorted(panels, key=lambda panel: panel.pk)))
    return next((float(value) for value in values if value is not None), None)
