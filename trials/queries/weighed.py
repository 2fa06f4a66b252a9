"""From balance readings to what is in a cup, and to the dosage that it really got."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from decimal import Decimal

from trials.models import Dosage, Revision, Trial, Weighing
from trials.science import dosage as arithmetic
from trials.science.dosage import ComponentMass

from .masses import Reckoning, active_pct, as_grams, basis_mass_g, cup_masses
from .recipes import ComponentFigures, components_of, with_recipe


@dataclass(frozen=True, slots=True)
class Portion:
    """One component in a cup. ``source`` says where the grams come from that the dosage is counted on."""

    letter: str
    planned_g: float
    weighed_g: Decimal | None
    used_g: float
    source: str


@dataclass(frozen=True, slots=True)
class Dose:
    """One dosage as decided and as weighed, both in grams and per cent of the same basis.

    ``weighed_g`` is all that the cup holds; in a topped-up cup ``carried_g`` of it came along and ``to_add_g`` is
    what the balance has to show. ``real_pct`` is None where it can't be told, and ``why_not`` says why.
    """

    dosage: Dosage
    reckoning: Reckoning
    weighed_g: Decimal | None
    carried_g: Decimal | None
    to_add_g: float | None
    real_pct: float | None
    why_not: str = ""

    @property
    def off_pct(self) -> float | None:
        """How far the real dosage is from the one decided, per cent of the latter."""
        if self.real_pct is None or not self.dosage.dosage_pct:
            return None
        decided = float(self.dosage.dosage_pct)
        return 100 * (self.real_pct - decided) / decided


@dataclass(frozen=True, slots=True)
class WeighedCup:
    portions: tuple[Portion, ...] = ()
    doses: tuple[Dose, ...] = ()
    words: tuple[str, ...] = field(default=())

    @property
    def counted_on(self) -> str:
        return "; ".join(f"{portion.letter} {portion.source}" for portion in self.portions)


def nets(readings: Iterable) -> list[Decimal | None]:
    """Grams of each reading: a cumulative one less the reading before it, the others as they stand.

    None where it is a word, or goes on from one.

    Raises
    ------
    ValueError
        Where a cumulative reading is below the one before it, naming both.
    """
    found: list[Decimal | None] = []
    before: Decimal | None = Decimal(0)
    for number, reading in enumerate(readings, 1):
        grams = reading.reading_g
        if grams is not None and reading.cumulative:
            if before is not None and grams < before:
                raise ValueError(
                    f"reading {number}: {grams} g is below the reading before it, {before} g, and one that goes on"
                    " cannot fall: say that the balance was set to zero in between, or correct it"
                )
            grams = None if before is None else grams - before
        found.append(grams)
        before = reading.reading_g
    return found


def grams_of(readings: Sequence, wanted) -> Decimal | None:
    """Sum of the readings that ``wanted`` picks; None where there is none, or the last of them has no figure."""
    picked = [grams for reading, grams in zip(readings, nets(readings), strict=True) if wanted(reading)]
    if not picked or picked[-1] is None:
        return None
    return sum((grams for grams in picked if grams is not None), Decimal(0))


def carried_g(before: Dosage | None, cup: Trial, parent: Trial) -> Decimal | None:
    """Additive that a topped-up cup brings along in what was left of the cup it was made from; 0 from a blank."""
    if before is None:
        return Decimal(0)
    if before.weighed_g is None or not parent.batch_mass_g:
        return None
    left = cup.batch_mass_g or parent.batch_mass_g
    if left == parent.batch_mass_g:
        return before.weighed_g
    return as_grams(float(before.weighed_g) * float(left) / float(parent.batch_mass_g))


def weighed_cups(trials: Iterable[Trial]) -> dict[int, WeighedCup]:
    """Every cup as weighed, in a fixed number of queries."""
    trials = list(trials)
    if not trials:
        return {}
    cups = Cups.of(trials)
    return {trial.pk: cups.weighed(trial.pk) for trial in trials}


class Cups:
    """The cups of some series with what they are reckoned from, loaded at once."""

    def __init__(self, trials: dict[int, Trial], recipes: dict[int, tuple[ComponentFigures, ...]]):
        self.trials = trials
        self.recipes = recipes

    @classmethod
    def of(cls, trials: Sequence[Trial]) -> "Cups":
        # The whole series: a topped-up cup is reckoned from the cups that it came from.
        series = {trial.series_id for trial in trials}
        found = (
            Trial.objects.filter(series__in=series)
            .select_related("series")
            .prefetch_related("weighings", "dosages__candidate__material", "dosages__lot")
        )
        by_key = {trial.pk: trial for trial in found}
        revisions = {trial.series.revision_id for trial in by_key.values()}
        recipes = with_recipe(Revision.objects.filter(pk__in=revisions))
        return cls(by_key, {revision.pk: components_of(revision) for revision in recipes})

    def components(self, trial: Trial) -> tuple[ComponentFigures, ...]:
        return self.recipes[trial.series.revision_id]

    def weighed(self, key: int) -> WeighedCup:
        trial = self.trials[key]
        readings = _in_order(trial.weighings.all())
        portions = self.portions(trial)
        doses = tuple(self._dose(trial, dose, portions, readings) for dose in _dosages(trial))
        words = tuple(f"{_name(trial, reading)}: {reading.word}" for reading in readings if reading.word)
        return WeighedCup(portions, doses, words)

    def portions(self, trial: Trial) -> tuple[Portion, ...]:
        """What is in the cup of each component: weighed, carried over, or at its ratio to what was weighed."""
        readings = _in_order(trial.weighings.all())
        components = self.components(trial)
        planned = cup_masses(components, _mix_g(trial))
        weighed = {c.letter: grams_of(readings, _component(c.letter)) for c in components}
        carried = self._carried(trial)
        scale = _scale(components, planned, {**carried, **{k: float(v) for k, v in weighed.items() if v}})
        return tuple(
            _portion(c.letter, planned[c.letter].mass_g, weighed[c.letter], carried.get(c.letter), scale)
            for c in components
        )

    def masses(self, trial: Trial, portions: tuple[Portion, ...]) -> dict[str, ComponentMass]:
        by_letter = {component.letter: component for component in self.components(trial)}
        return {portion.letter: by_letter[portion.letter].mass(portion.used_g) for portion in portions}

    def _carried(self, trial: Trial) -> dict[str, float]:
        parent = self.trials.get(trial.topped_up_from_id)
        if parent is None:
            return {}
        left = float(_mix_g(trial)) / float(_mix_g(parent))
        return {portion.letter: portion.used_g * left for portion in self.portions(parent)}

    def _dose(self, trial, dose: Dosage, portions, readings) -> Dose:
        reckoning = Reckoning.of(dose)
        parent = self.trials.get(trial.topped_up_from_id)
        before = carried_g(_same_additive(parent, dose), trial, parent) if parent else None
        real_pct, why_not = None, ""
        try:
            masses = self.masses(trial, portions)
            active = active_pct(reckoning, dose.candidate.material)
            basis = basis_mass_g(reckoning, masses)
            to_add = _to_add(dose, reckoning, masses, before) if parent else None
            if dose.weighed_g is None:
                why_not = _why_not(dose, readings)
            else:
                real_pct = arithmetic.dosage_pct(
                    float(dose.weighed_g), basis, counting=reckoning.counting, active_pct=active
                )
        except ValueError as error:
            to_add, why_not = None, str(error)
        return Dose(dose, reckoning, dose.weighed_g, before, to_add, real_pct, why_not)


def _to_add(dose, reckoning, masses, before: Decimal | None) -> float | None:
    """Grams that lift the cup from what it holds to what is decided."""
    if before is None:
        return None
    material = dose.candidate.material
    basis, active = basis_mass_g(reckoning, masses), active_pct(reckoning, material)
    held = arithmetic.dosage_pct(float(before), basis, counting=reckoning.counting, active_pct=active)
    if held > float(dose.dosage_pct):
        return 0.0
    return arithmetic.top_up_g(held, float(dose.dosage_pct), basis, counting=reckoning.counting, active_pct=active)


def _why_not(dose: Dosage, readings) -> str:
    word = next((reading.word for reading in reversed(readings) if reading.dosage_id == dose.pk), "")
    return f"{dose.candidate.material.code}: {word}" if word else "not weighed yet"


def _same_additive(trial: Trial, dose: Dosage) -> Dosage | None:
    return next((other for other in _dosages(trial) if other.candidate_id == dose.candidate_id), None)


def _portion(letter, planned_g, weighed: Decimal | None, carried: float | None, scale: float | None) -> Portion:
    if weighed is not None:
        return Portion(letter, planned_g, weighed, float(weighed), "as weighed")
    if carried is not None:
        return Portion(letter, planned_g, None, carried, "from the cup it was made from")
    if scale is not None:
        return Portion(letter, planned_g, None, planned_g * scale, "at its ratio")
    return Portion(letter, planned_g, None, planned_g, "as planned")


def _scale(components, planned, known: dict[str, float]) -> float | None:
    """How much larger the cup is than planned, by the components that are known."""
    letters = [component.letter for component in components if known.get(component.letter)]
    if not letters:
        return None
    return sum(known[letter] for letter in letters) / sum(planned[letter].mass_g for letter in letters)


def _component(letter: str):
    return lambda reading: reading.letter == letter


def _mix_g(trial: Trial) -> Decimal:
    return trial.batch_mass_g or trial.series.batch_mass_g


def _in_order(weighings: Iterable[Weighing]) -> list[Weighing]:
    return sorted(weighings, key=lambda reading: (reading.position, reading.pk))


def _dosages(trial: Trial) -> list[Dosage]:
    return sorted(trial.dosages.all(), key=lambda dose: dose.pk)


def _name(trial: Trial, reading: Weighing) -> str:
    if reading.letter:
        return f"Component {reading.letter}"
    return next(dose.candidate.material.code for dose in _dosages(trial) if dose.pk == reading.dosage_id)
