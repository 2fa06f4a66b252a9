"""From lines to the figures of a component and of the mix, each with where it comes from."""

from dataclasses import dataclass

from trials.models import Component, Revision
from trials.science import composition
from trials.science.dosage import ComponentMass

from .facts import BINDERS, SOLID_PARTICLES, Facts, facts_of


@dataclass(frozen=True, slots=True)
class LineFigures:
    """One line of a component; ``share_pct`` of the component by mass."""

    facts: Facts
    lot: str
    lot_expires: object
    parts: float
    written: str
    share_pct: float
    stage: str


@dataclass(frozen=True, slots=True)
class ComponentFigures:
    """A component: its lines, and per 100 g what they amount to. None where a figure that is needed is missing."""

    letter: str
    name: str
    parts: float
    black_box: bool
    lines: tuple[LineFigures, ...]
    density_g_ml: float | None
    density_source: str
    recipe_density_g_ml: float | None
    non_volatile_pct: float | None
    binder_solids_pct: float | None
    water_pct: float | None
    viscosity_mpa_s: float | None
    price_per_kg: float | None
    batch: str
    equivalents: dict[str, float]

    @property
    def known(self) -> bool:
        """Whether the recipe is known, so that equivalents can be counted."""
        return not self.black_box

    def mass(self, mass_g: float) -> ComponentMass:
        """So many grams of this component, as the dosage arithmetic takes it."""
        solids = None if self.binder_solids_pct is None else mass_g * self.binder_solids_pct / 100
        return ComponentMass(mass_g, solids)


def component_figures(component: Component) -> ComponentFigures:
    lines = _lines(component)
    parts = [line.parts for line in lines]
    recipe_density = _complete(composition.mixture_density_g_ml, parts, _column(lines, "density_g_ml"))
    measured = _float(component.density_g_ml)
    non_volatile = _complete(composition.mixture_non_volatile_pct, parts, _column(lines, "non_volatile_pct"))
    return ComponentFigures(
        letter=component.letter,
        name=component.name,
        parts=float(component.parts),
        black_box=not lines,
        lines=tuple(lines),
        density_g_ml=measured if measured is not None else recipe_density,
        density_source=_density_source(measured, recipe_density, black_box=not lines),
        recipe_density_g_ml=recipe_density,
        non_volatile_pct=non_volatile if lines else _float(component.non_volatile_pct),
        binder_solids_pct=_binder_solids(lines),
        water_pct=_water(component, lines),
        viscosity_mpa_s=_float(component.viscosity_mpa_s),
        price_per_kg=_complete(mass_mean, parts, _column(lines, "price_per_kg")),
        batch=component.batch,
        equivalents=_equivalents(lines),
    )


def components_of(revision: Revision) -> tuple[ComponentFigures, ...]:
    """The components in the order of their letters; expects what ``with_recipe`` fetched."""
    found = sorted(revision.components.all(), key=lambda component: component.letter)
    return tuple(component_figures(component) for component in found)


def with_recipe(revisions):
    """Fetch components, lines, materials, groups and lots of these revisions in a fixed number of queries."""
    return revisions.select_related("base").prefetch_related(
        "components__lines__material__groups", "components__lines__lot"
    )


def _lines(component: Component) -> list[LineFigures]:
    rows = sorted(component.lines.all(), key=lambda line: (line.position, line.pk))
    total = sum(float(row.parts) for row in rows)
    return [
        LineFigures(
            facts=facts_of(row),
            lot=row.lot.number if row.lot else "",
            lot_expires=row.lot.expires if row.lot else None,
            parts=float(row.parts),
            written=format(row.parts, "f"),
            share_pct=100 * float(row.parts) / total,
            stage=row.stage,
        )
        for row in rows
    ]


def _column(lines, name: str) -> list[float | None]:
    return [getattr(line.facts, name) for line in lines]


def _complete(figure, parts, column):
    """The figure, or None where there is no line or a line lacks its value."""
    if not parts or any(value is None for value in column):
        return None
    return figure(parts, column)


def mass_mean(parts, values) -> float:
    """Mean weighed by mass, as a price is."""
    return sum(p * v for p, v in zip(parts, values, strict=True)) / sum(parts)


def _density_source(measured, recipe, *, black_box: bool) -> str:
    if measured is not None:
        return "as stated or measured" if black_box else "measured; the recipe's stands beside it"
    return "from the recipe, volumes added up" if recipe is not None else "not known"


def _binder_solids(lines) -> float | None:
    binders = [line for line in lines if line.facts.function in BINDERS]
    if not binders or any(line.facts.non_volatile_pct is None for line in binders):
        return None
    return sum(line.share_pct * line.facts.non_volatile_pct / 100 for line in binders)


def _water(component, lines) -> float | None:
    """Measured in the component, else what its lots are known to bring."""
    if component.water_pct is not None:
        return float(component.water_pct)
    known = [line.share_pct * line.facts.water_pct / 100 for line in lines if line.facts.water_pct is not None]
    return sum(known) if known else None


def _equivalents(lines) -> dict[str, float]:
    """Moles of each group in 100 g of the component."""
    moles: dict[str, float] = {}
    for line in lines:
        for group, amount in line.facts.equivalents(line.share_pct).items():
            moles[group] = moles.get(group, 0.0) + amount
    return moles


def solids_volumes(lines_with_mass) -> tuple[float, float] | None:
    """Millilitres of particles and of everything else that stays in the film; None where a figure is missing."""
    particles = rest = 0.0
    for mass_g, facts in lines_with_mass:
        if facts.density_g_ml is None or facts.non_volatile_pct is None:
            return None
        volume = mass_g * facts.non_volatile_pct / 100 / facts.density_g_ml
        if facts.function in SOLID_PARTICLES:
            particles += volume
        else:
            rest += volume
    return particles, rest


def _float(value) -> float | None:
    return None if value is None else float(value)
