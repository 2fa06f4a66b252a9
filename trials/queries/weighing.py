"""The weighing sheet: what goes into each cup, in the order of working, and how well it can be weighed."""

from dataclasses import dataclass
from decimal import Decimal
from math import inf

from trials.models import Balance, Dosage, Revision, Series, Trial
from trials.models.series import Ratio
from trials.science import dosage as arithmetic

from .masses import Reckoning, cup_masses
from .recipes import ComponentFigures, components_of, with_recipe
from .series import WorkingRow, workings_of
from .shift import Added, NoShift, Shift, shift_of
from .weighed import weighed_cups

# More than that of a dose lost in the last digit of the balance is worth a better way to weigh it.
ROUNDING_PCT = 5.0


@dataclass(frozen=True, slots=True)
class Portion:
    """Grams of one thing to weigh. ``display_g``: what the balance shows if all goes into one cup without a reset."""

    what: str
    letter: str
    expected_g: float
    display_g: float | None
    places: int
    dosage: Dosage | None = None
    as_sold_g: float | None = None
    corrected_g: float | None = None
    rounding_pct: float | None = None
    note: str = ""
    advice: str = ""

    @property
    def coarse(self) -> bool:
        return self.rounding_pct is not None and self.rounding_pct > ROUNDING_PCT


@dataclass(frozen=True, slots=True)
class CupSheet:
    trial: Trial
    what: str
    portions: tuple[Portion, ...]
    shift: Shift | NoShift

    @property
    def known_shift(self) -> Shift | None:
        return self.shift if isinstance(self.shift, Shift) else None

    @property
    def shift_said(self) -> str:
        """With its sign; a shift that rounds to nothing has none."""
        pct = round(self.known_shift.pct, 2) if self.known_shift else 0.0
        return f"{pct:+.2f}".replace("-", "\u2212") if pct else "0.00"


@dataclass(frozen=True, slots=True)
class WeighingSheet:
    """``columns`` are the things to weigh in their order: (head, letter, whether it is the additive)."""

    series: Series
    revision: Revision
    components: tuple[ComponentFigures, ...]
    reckoning: Reckoning
    balance: Balance | None
    columns: tuple[tuple[str, str, bool], ...]
    cups: tuple[CupSheet, ...]
    workings: tuple[WorkingRow, ...]
    total_g: dict[str, float]

    @property
    def offers_correction(self) -> bool:
        offered = any(cup.known_shift and cup.known_shift.offer for cup in self.cups)
        return offered and self.series.ratio == Ratio.SOLD

    def rows(self):
        """Each cup with its portions under the columns."""
        for cup in self.cups:
            yield cup, [_under(cup, letter, additive) for _, letter, additive in self.columns]


def balances():
    """Those in use, the finest first."""
    return Balance.objects.filter(retired=False).order_by("step_g", "name", "pk")


def weighing_sheet(series: Series, balance: Balance | None) -> WeighingSheet:
    """Expects what ``load_series`` fetched."""
    revision = with_recipe(Revision.objects.filter(pk=series.revision_id)).get()
    components = components_of(revision)
    trials = list(
        series.trials.select_related("common_batch", "topped_up_from")
        .prefetch_related("dosages__candidate__material__groups", "dosages__lot")
        .order_by("position", "pk")
    )
    tops = weighed_cups([trial for trial in trials if trial.topped_up_from_id])
    cups = tuple(_cup(series, trial, components, balance, tops.get(trial.pk)) for trial in trials)
    return WeighingSheet(
        series=series,
        revision=revision,
        components=components,
        reckoning=Reckoning.of(series),
        balance=balance,
        columns=_columns(components, trials),
        cups=cups,
        workings=workings_of(trials[0]) if trials else (),
        total_g=_totals(cups),
    )


def _columns(components, trials) -> tuple[tuple[str, str, bool], ...]:
    into = {dose.into for trial in trials for dose in trial.dosages.all()}
    found = []
    for component in components:
        found.append((f"Component {component.letter}", component.letter, False))
        if component.letter in into:
            found.append((f"Additive into {component.letter}", component.letter, True))
    return tuple(found)


def _cup(series: Series, trial: Trial, components, balance, top) -> CupSheet:
    mass_g = float(trial.batch_mass_g or series.batch_mass_g)
    doses = sorted(trial.dosages.all(), key=lambda dose: dose.pk)
    as_sold = _as_sold(components, mass_g, doses)
    shift = shift_of(
        series.revision.base.chemistry, components, as_sold, tuple(map(_added, doses)), _water(trial, components)
    )
    portions = []
    for component in components:
        portions.append(_component(series, component.letter, as_sold[component.letter], shift, top))
        portions += [_additive(dose, mass_g, balance, top) for dose in doses if dose.into == component.letter]
    return CupSheet(trial, _said(trial, doses), _displayed(portions, doses, top), shift)


def _as_sold(components, mass_g: float, doses) -> dict[str, float]:
    """Grams of each component at the ratio as sold; additive that counts stands for part of its component."""
    found = {letter: mass.mass_g for letter, mass in cup_masses(components, mass_g).items()}
    counting = [dose for dose in doses if dose.counts_in_ratio]
    parts = {component.letter: component.parts for component in components}
    into_a = sum(float(dose.planned_g) for dose in counting if dose.into == "A")
    if into_a and "A" in found:
        for letter in found.keys() - {"A"}:
            found[letter] = arithmetic.partner_g(
                found["A"], parts["A"], parts[letter], additive_g=into_a, additive_counts=True
            )
    for dose in counting:
        if dose.into != "A":
            found[dose.into] = max(0.0, found[dose.into] - float(dose.planned_g))
    return found


def _added(dose: Dosage) -> Added:
    material, lot = dose.candidate.material, dose.lot
    groups = {row.group: float(row.equivalent_g) for row in material.groups.all()}
    if lot and lot.equivalent_g and len(groups) == 1:
        groups = dict.fromkeys(groups, float(lot.equivalent_g))
    reacting = {group: equivalent for group, equivalent in groups.items() if equivalent != inf}
    water = float(lot.water_pct) if lot and lot.water_pct is not None else None
    return Added(material.code, float(dose.planned_g), reacting, water)


def _water(trial: Trial, components) -> dict[str, float | None]:
    """Water of each component: of the common batch where it was measured, else of the recipe."""
    found = {component.letter: component.water_pct for component in components}
    batch = trial.common_batch
    if batch and batch.water_pct is not None:
        found[batch.letter] = float(batch.water_pct)
    return found


def _component(series: Series, letter: str, as_sold: float, shift, top) -> Portion:
    name = f"Component {letter}"
    if top:
        held = next((portion.used_g for portion in top.portions if portion.letter == letter), as_sold)
        return Portion(name, letter, held, None, 2, note="in it already")
    corrected = None
    if isinstance(shift, Shift) and shift.letter == letter != "A":
        corrected = shift.corrected_g(as_sold)
    used = corrected if corrected is not None and series.ratio == Ratio.CORRECTED else as_sold
    return Portion(name, letter, used, None, 2, as_sold_g=as_sold, corrected_g=corrected)


def _additive(dose: Dosage, mass_g: float, balance: Balance | None, top) -> Portion:
    grams, note = float(dose.planned_g), ""
    if top:
        to_add = next((one.to_add_g for one in top.doses if one.dosage.pk == dose.pk), None)
        note = "to add" if to_add is not None else "all it shall hold: weigh the cup before to know what to add"
        grams = grams if to_add is None else to_add
    rounding = arithmetic.half_step_pct(grams, float(balance.step_g)) if balance and grams > 0 else None
    return Portion(
        what=dose.candidate.material.code,
        letter=dose.into,
        expected_g=grams,
        display_g=None,
        places=_places(balance),
        dosage=dose,
        rounding_pct=rounding,
        note=note,
        advice=_advice(dose, mass_g, rounding),
    )


def _advice(dose: Dosage, mass_g: float, rounding: float | None) -> str:
    """What would let a dose be weighed better; a dilution only where the candidate may be diluted."""
    if rounding is None or rounding <= ROUNDING_PCT:
        return ""
    ways = [f"a cup of {mass_g * rounding / ROUNDING_PCT:.0f} g or more", "a finer balance"]
    if dose.candidate.diluted_in:
        ways.append(f"a dilution in {dose.candidate.diluted_in}")
    said = f"{dose.candidate.material.code} at {format(dose.dosage_pct, 'f')} %"
    return f"{said}: half a step of this balance is {rounding:.1f} % of the dose. Take {' or '.join(ways)}."


def _places(balance: Balance | None) -> int:
    if balance is None:
        return 3
    return max(0, -Decimal(balance.step_g).normalize().as_tuple().exponent)


def _displayed(portions: list[Portion], doses, top) -> tuple[Portion, ...]:
    """With the display of a balance that is set to zero once, where all goes into one cup one after the other."""
    if top or any(dose.into != "A" for dose in doses):
        return tuple(portions)
    shown, sum_g = [], 0.0
    for portion in portions:
        sum_g += portion.expected_g
        names = {name: getattr(portion, name) for name in Portion.__slots__}
        shown.append(Portion(**{**names, "display_g": sum_g}))
    return tuple(shown)


def _said(trial: Trial, doses) -> str:
    if not doses:
        return trial.get_part_display()
    said = " + ".join(f"{dose.candidate.material.code} {format(dose.dosage_pct, 'f')}\u00a0%" for dose in doses)
    return said if trial.part == "treated" else f"{trial.get_part_display()}: {said}"


def _under(cup: CupSheet, letter: str, additive: bool) -> list[Portion]:
    return [one for one in cup.portions if one.letter == letter and (one.dosage is not None) == additive]


def _totals(cups: tuple[CupSheet, ...]) -> dict[str, float]:
    """What all cups together take, so that the common batch is large enough."""
    found: dict[str, float] = {}
    for cup in cups:
        if cup.trial.topped_up_from_id:
            continue
        for portion in cup.portions:
            found[portion.what] = found.get(portion.what, 0.0) + portion.expected_g
    return found
