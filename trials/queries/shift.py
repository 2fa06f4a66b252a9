"""How far an additive's own reactive groups, and water, move the demand for hardener in one cup."""

from dataclasses import dataclass

from trials.science import stoichiometry

from .recipes import ComponentFigures

CORRECT_ABOVE_PCT = 2.0
ASSUMED_WATER_PCT = 0.05


@dataclass(frozen=True, slots=True)
class Added:
    """So many grams of an additive as supplied: its groups in g/eq, and the water that its lot is known to hold."""

    code: str
    mass_g: float
    groups: dict[str, float]
    water_pct: float | None = None


@dataclass(frozen=True, slots=True)
class Shift:
    """Demand for hardener against the cup as sold, in per cent of it; its two causes add up to ``pct``.

    ``letter`` is the component that carries the hardener. ``water_known`` is False where nobody measured any: then
    it is not counted, and ``assumed_pct`` says what 0.05 % in the mix would do. ``inert`` names groups of the
    additive that take no part here.
    """

    letter: str
    pct: float
    additive_pct: float
    water_pct: float
    water_known: bool
    water_counts: bool
    assumed_pct: float
    inert: tuple[str, ...] = ()

    @property
    def offer(self) -> bool:
        """Whether a corrected ratio is worth offering. The hardener of a cup can be corrected where it is not A."""
        return abs(self.pct) > CORRECT_ABOVE_PCT and self.letter != "A"

    def corrected_g(self, as_sold_g: float) -> float:
        return as_sold_g * (1 + self.pct / 100)


@dataclass(frozen=True, slots=True)
class NoShift:
    """Why the shift can't be told."""

    reason: str


def shift_of(
    chemistry: str,
    components: tuple[ComponentFigures, ...],
    mass_g: dict[str, float],
    added: tuple[Added, ...],
    water_pct: dict[str, float | None],
) -> Shift | NoShift:
    """Shift of one cup.

    Parameters
    ----------
    mass_g
        Grams of each component, at the ratio as sold.
    water_pct
        Water of each component as measured (its common batch's before its own); None: not known.
    """
    unknown = [component.letter for component in components if not component.known]
    if chemistry not in stoichiometry.CHEMISTRIES:
        return NoShift("which groups react in this binder is not known here")
    if unknown:
        return NoShift(f"the equivalents of component {' and '.join(unknown)} are not known")
    resin, hardener = _sides(chemistry, components, mass_g)
    if not resin or not sum(hardener.values()):
        return NoShift("one side of the base has no reactive group")
    total = sum(hardener.values())
    own_resin, own_hardener, inert = _own(chemistry, added)
    counts = stoichiometry.reacts("water", chemistry)
    water_g = _water_g(mass_g, added, water_pct)
    by_additive = stoichiometry.shift_pct(total, max(0.0, total * (1 + own_resin / resin) - own_hardener))

    def by_water(grams: float) -> float:
        more = grams / stoichiometry.water_equivalent_g if counts else 0.0
        return stoichiometry.shift_pct(total, total * (1 + more / resin))

    of_water = by_water(water_g or 0.0)
    return Shift(
        letter=max(hardener, key=hardener.get),
        pct=by_additive + of_water,
        additive_pct=by_additive,
        water_pct=of_water,
        water_known=water_g is not None,
        water_counts=counts,
        assumed_pct=by_water(sum(mass_g.values()) * ASSUMED_WATER_PCT / 100),
        inert=inert,
    )


def _sides(chemistry, components, mass_g) -> tuple[float, dict[str, float]]:
    """Equivalents of the resin in all components, and of the hardener in each."""
    resin, hardener = 0.0, {}
    for component in components:
        hardener[component.letter] = 0.0
        for group, per_100_g in component.equivalents.items():
            moles = per_100_g * mass_g[component.letter] / 100
            where = stoichiometry.side(group, chemistry)
            if where == "hardener":
                hardener[component.letter] += moles
            elif where == "resin" and group != "water":
                resin += moles
    return resin, hardener


def _own(chemistry, added) -> tuple[float, float, tuple[str, ...]]:
    """Equivalents that the additives bring to either side, and what of them is inert."""
    resin = hardener = 0.0
    inert = []
    for one in added:
        for group, equivalent_g in one.groups.items():
            where = stoichiometry.side(group, chemistry)
            if where is None:
                inert.append(f"{one.code}: {group}")
            elif where == "hardener":
                hardener += one.mass_g / equivalent_g
            else:
                resin += one.mass_g / equivalent_g
    return resin, hardener, tuple(dict.fromkeys(inert))


def _water_g(mass_g, added, water_pct) -> float | None:
    """Grams of water that are known of; None where nobody measured any."""
    known = [mass_g[letter] * pct / 100 for letter, pct in water_pct.items() if pct is not None]
    known += [one.mass_g * one.water_pct / 100 for one in added if one.water_pct is not None]
    return sum(known) if known else None
