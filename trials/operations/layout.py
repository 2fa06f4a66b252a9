"""From what was decided on a series to its cups: in the order of working, each with its dosages and workings."""

from dataclasses import dataclass, field
from decimal import Decimal

from trials.models import Candidate, Dosage, Equipment, Lot, Series, Trial, Working
from trials.models.trials import WITHOUT_ADDITIVE, Part, WorkingKind
from trials.queries.masses import Reckoning, additive_g, as_grams, cup_masses
from trials.queries.recipes import ComponentFigures
from trials.science.design import Cup, run_order

from .acting import Refused


@dataclass(frozen=True, slots=True)
class DoseEntry:
    """A second additive that every cup of a candidate gets."""

    candidate: Candidate
    dosage_pct: Decimal
    lot: Lot | None = None
    stage: str | None = None


@dataclass(frozen=True, slots=True)
class CandidateEntry:
    """A candidate (or the incumbent) with its ladder of dosages; stage and lot as the series unless given."""

    candidate: Candidate
    dosages_pct: tuple[Decimal, ...]
    lot: Lot | None = None
    stage: str | None = None
    beside: tuple[DoseEntry, ...] = ()


@dataclass(frozen=True, slots=True)
class WorkingEntry:
    """One piece of shear or rest that every cup gets."""

    kind: str
    equipment: Equipment | None = None
    blade_mm: Decimal | None = None
    vessel_mm: Decimal | None = None
    rpm: Decimal | None = None
    minutes: Decimal | None = None
    temperature_c: Decimal | None = None
    vacuum_mbar: Decimal | None = None
    remark: str = ""


DEGASSED = WorkingEntry(WorkingKind.REST, remark="degassed under vacuum")


@dataclass(frozen=True, slots=True)
class PlannedCup:
    part: str
    doses: tuple[DoseEntry, ...] = ()
    workings: tuple[WorkingEntry, ...] = ()


@dataclass(frozen=True, slots=True)
class References:
    """What every series has beside its candidates."""

    blanks: int = 2
    clean_check: bool = True
    incumbent: CandidateEntry | None = None
    vacuum: WorkingEntry | None = None


@dataclass(frozen=True, slots=True)
class Rows:
    """Records of the cups, not saved yet; dosages and workings hang on the trials in memory."""

    trials: list[Trial] = field(default_factory=list)
    dosages: list[Dosage] = field(default_factory=list)
    workings: list[Working] = field(default_factory=list)

    def save(self) -> None:
        """All cups in three statements."""
        Trial.objects.bulk_create(self.trials)
        Dosage.objects.bulk_create(self.dosages)
        Working.objects.bulk_create(self.workings)


def cups(
    candidates: tuple[CandidateEntry, ...],
    references: References,
    *,
    replicates: int,
    workings: tuple[WorkingEntry, ...],
) -> list[PlannedCup]:
    """Every cup of a series; the references get the same workings as the treated cups."""
    made = [PlannedCup(Part.BLANK, workings=workings)] * references.blanks
    if references.vacuum:
        made.append(PlannedCup(Part.VACUUM, workings=(*workings, references.vacuum)))
    entries = [(Part.TREATED, entry) for entry in candidates]
    if references.incumbent:
        entries.insert(0, (Part.INCUMBENT, references.incumbent))
    for part, entry in entries:
        for dosage_pct in entry.dosages_pct:
            own = DoseEntry(entry.candidate, dosage_pct, entry.lot, entry.stage)
            made += [PlannedCup(part, (own, *entry.beside), workings)] * replicates
    if references.clean_check:
        made.append(PlannedCup(Part.CLEAN, workings=workings))
    return made


def in_order(planned: list[PlannedCup], *, seed: int, rule: str) -> list[PlannedCup]:
    """The order of working, drawn by lot where the rule leaves it open."""
    drawn = run_order([_placed(str(number), cup) for number, cup in enumerate(planned)], seed, rule=rule)
    return [planned[int(cup.code)] for cup in drawn]


def rows(
    series: Series,
    planned: list[PlannedCup],
    components: tuple[ComponentFigures, ...],
    *,
    counts_in_ratio: bool = False,
) -> Rows:
    """The records of these cups; a cup's number is its place in the order of working."""
    made = Rows()
    reckoning, masses = Reckoning.of(series), cup_masses(components, series.batch_mass_g)
    for number, cup in enumerate(planned, 1):
        trial = Trial(
            series=series,
            number=number,
            code=f"{series.number}-{number}",
            position=number,
            part=cup.part,
            common_batch=series.common_batch,
            batch_mass_g=series.batch_mass_g,
        )
        made.trials.append(trial)
        made.dosages.extend(_dosage(trial, dose, reckoning, masses, counts_in_ratio) for dose in cup.doses)
        made.workings.extend(working(trial, place, entry) for place, entry in enumerate(cup.workings, 1))
    return made


def planned_g(dosage_pct, reckoning: Reckoning, masses, candidate: Candidate) -> Decimal:
    """Grams to weigh; an impossible dosage is refused at its field."""
    try:
        return as_grams(additive_g(dosage_pct, reckoning, masses, candidate.material))
    except ValueError as error:
        raise Refused(f"{candidate.material.code}: {error}", field="dosages_pct") from error


def working(trial: Trial, position: int, entry: WorkingEntry) -> Working:
    names = ("kind", "equipment", "blade_mm", "vessel_mm", "rpm", "minutes", "temperature_c", "vacuum_mbar", "remark")
    return Working(trial=trial, position=position, **{name: getattr(entry, name) for name in names})


def _dosage(trial, dose: DoseEntry, reckoning: Reckoning, masses, counts_in_ratio: bool) -> Dosage:
    series = trial.series
    return Dosage(
        trial=trial,
        candidate=dose.candidate,
        lot=dose.lot,
        dosage_pct=dose.dosage_pct,
        basis=reckoning.basis,
        basis_component=reckoning.basis_component,
        counting=reckoning.counting,
        supplied=reckoning.supplied,
        stage=dose.stage or series.stage,
        into=series.into,
        counts_in_ratio=counts_in_ratio,
        planned_g=planned_g(dose.dosage_pct, reckoning, masses, dose.candidate),
    )


def _placed(code: str, cup: PlannedCup) -> Cup:
    if cup.part in WITHOUT_ADDITIVE or not cup.doses:
        return Cup(code, str(cup.part))
    own = cup.doses[0]  # what stands beside it is the same in every cup of the candidate
    silicone = any(dose.candidate.silicone for dose in cup.doses)
    return Cup(code, str(cup.part), float(own.dosage_pct), silicone)
