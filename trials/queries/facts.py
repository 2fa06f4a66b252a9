"""What a raw material says of itself on a line: its own figures, those of the lot's certificate, or the held copy."""

from dataclasses import asdict, dataclass, field
from math import inf

from trials.models import Line
from trials.models.materials import Function

SOLID_PARTICLES = frozenset({Function.PIGMENT, Function.FILLER})
BINDERS = frozenset({Function.BINDER, Function.DILUENT, Function.HARDENER, Function.PLASTICISER})


@dataclass(frozen=True, slots=True)
class Facts:
    """Figures of a raw material as floats; None where nobody entered one. ``groups`` are g/eq by group."""

    code: str
    name: str
    function: str
    density_g_ml: float | None = None
    non_volatile_pct: float | None = None
    voc_pct: float | None = None
    water_pct: float | None = None
    diisocyanate_pct: float | None = None
    price_per_kg: float | None = None
    groups: dict[str, float] = field(default_factory=dict)
    hazards: tuple[str, ...] = ()

    def equivalents(self, mass_g: float) -> dict[str, float]:
        """Moles of each reactive group in so many grams."""
        return {group: mass_g / equivalent for group, equivalent in self.groups.items() if equivalent != inf}


def facts_of(line: Line) -> Facts:
    """The copy that a frozen line holds, else what material and lot say now."""
    if line.held is not None:
        return Facts(**{**line.held, "hazards": tuple(line.held["hazards"])})
    material, lot = line.material, line.lot
    groups = {group.group: float(group.equivalent_g) for group in material.groups.all()}
    if lot and lot.equivalent_g and len(groups) == 1:
        groups = {group: float(lot.equivalent_g) for group in groups}
    return Facts(
        code=material.code,
        name=material.name,
        function=material.function,
        density_g_ml=_first(lot and lot.density_g_ml, material.density_g_ml),
        non_volatile_pct=_first(lot and lot.non_volatile_pct, material.non_volatile_pct),
        voc_pct=_first(material.voc_pct),
        water_pct=_first(lot and lot.water_pct),
        diisocyanate_pct=_first(material.diisocyanate_pct),
        price_per_kg=_first(material.price_per_kg),
        groups=groups,
        hazards=tuple(material.hazards),
    )


def held(line: Line) -> dict:
    """What a line keeps when its revision freezes."""
    return asdict(facts_of(line))


def _first(*values) -> float | None:
    return next((float(value) for value in values if value is not None), None)
