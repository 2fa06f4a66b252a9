"""Cups of a series grouped as they are judged: one part, one dosage, one stage, one block."""

from collections.abc import Iterable
from dataclasses import dataclass

from trials.models import Trial
from trials.models.series import Outcome
from trials.models.trials import Part

from .blocks import Block, Place

REFERENCES = (Part.BLANK, Part.CLEAN, Part.VACUUM, Part.INCUMBENT)
_ORDER = (Part.BLANK, Part.CLEAN, Part.VACUUM, Part.INCUMBENT, Part.TREATED)


@dataclass(frozen=True, slots=True)
class Dosed:
    """One additive in a cup; ``candidate`` is its key, ``code`` names a stage other than the series own."""

    candidate: int
    code: str
    pct: float
    written: str
    basis: str
    stage: str


@dataclass(frozen=True, slots=True)
class Cup:
    """One trial in its group. ``apart`` says why it is shown but not counted; empty where it is."""

    trial: Trial
    apart: tuple[str, ...]

    @property
    def counts(self) -> bool:
        return not self.apart

    @property
    def pk(self) -> int:
        return self.trial.pk


@dataclass(frozen=True, slots=True)
class Group:
    """``key`` names the group within its series, for forms; it changes only with what is in the cups."""

    key: str
    part: str
    doses: tuple[Dosed, ...]
    block: Block
    cups: tuple[Cup, ...]

    @property
    def name(self) -> str:
        """What is in it: the candidates' codes, or the word for the reference."""
        codes = " + ".join(dose.code for dose in self.doses)
        if self.part == Part.TREATED:
            return codes or "treated, no dosage noted"
        return f"{self.part} {codes}".strip()

    @property
    def label(self) -> str:
        doses = " + ".join(f"{dose.code} {dose.written} %" for dose in self.doses)
        if self.part == Part.TREATED:
            return doses or self.name
        return f"{self.part} {doses}".strip()

    @property
    def dosage_pct(self) -> float:
        """All additives together; 0 in references without one."""
        return sum(dose.pct for dose in self.doses)

    @property
    def counted(self) -> tuple[Cup, ...]:
        return tuple(cup for cup in self.cups if cup.counts)

    @property
    def apart(self) -> tuple[Cup, ...]:
        return tuple(cup for cup in self.cups if not cup.counts)

    @property
    def codes(self) -> str:
        return ", ".join(cup.trial.code for cup in self.cups)

    @property
    def reference(self) -> bool:
        return self.part in REFERENCES

    @property
    def treated(self) -> bool:
        return self.part == Part.TREATED


def groups(trials: Iterable[Trial], places: dict[int, Place]) -> tuple[Group, ...]:
    """References first, then candidate by candidate with the dosage rising. Expects dosages with candidates."""
    gathered: dict[tuple, list[Trial]] = {}
    for trial in trials:
        gathered.setdefault((places[trial.pk].block.number, trial.part, doses(trial)), []).append(trial)
    made = [
        Group(
            key=_key(block, part, dosed),
            part=part,
            doses=dosed,
            block=places[members[0].pk].block,
            cups=tuple(Cup(trial, _apart(trial, places[trial.pk])) for trial in members),
        )
        for (block, part, dosed), members in gathered.items()
    ]
    return tuple(sorted(made, key=_place))


def doses(trial: Trial) -> tuple[Dosed, ...]:
    return tuple(
        Dosed(
            candidate=dose.candidate_id,
            code=dose.candidate.material.code + ("" if dose.stage == trial.series.stage else f" at {dose.stage}"),
            pct=float(dose.dosage_pct),
            written=format(dose.dosage_pct.normalize(), "f"),
            basis=_basis(dose),
            stage=dose.stage,
        )
        for dose in sorted(trial.dosages.all(), key=lambda dose: (dose.candidate.material.code, dose.stage, dose.pk))
    )


def _basis(dose) -> str:
    basis = f"component {dose.basis_component}" if dose.basis_component else dose.basis
    return f"on {basis}, {dose.counting}, {dose.supplied}"


def _apart(trial: Trial, place: Place) -> tuple[str, ...]:
    if trial.outcome == Outcome.UNFAIR:
        return (f"judged not a fair test: {trial.unfair_because.rstrip('. ')}",)
    if trial.topped_up_from_id is None:
        return place.reasons
    return (f"topped up from {trial.topped_up_from.code}: not independent, left out of n",)


def _key(block: int, part: str, dosed: tuple[Dosed, ...]) -> str:
    parts = [part.partition(" ")[0], *(f"{dose.code}-{dose.written}-{dose.stage[0]}" for dose in dosed), f"b{block}"]
    return "_".join(parts).replace(".", "p").replace(" ", "")


def _place(group: Group) -> tuple:
    codes = tuple(dose.code for dose in group.doses)
    return group.block.number, _ORDER.index(group.part), codes, group.dosage_pct, group.key
