"""What the notebook knows of a base: the figures of its mix, each with its definition, and what can't be right."""

from dataclasses import dataclass
from datetime import date

from trials.access import bases
from trials.models import Revision
from trials.science import composition, hazards, stoichiometry

from .recipes import ComponentFigures, components_of, mass_mean, solids_volumes, with_recipe


@dataclass(frozen=True, slots=True)
class Fact:
    """A figure with its unit, and the definition or source that it depends on."""

    label: str
    value: float | None
    unit: str = ""
    source: str = ""
    places: int = 2

    @property
    def text(self) -> str:
        """The figure at the places that it is worth."""
        return "" if self.value is None else f"{self.value:.{self.places}f}"


@dataclass(frozen=True, slots=True)
class Index:
    """Equivalents of one side over the other, with the band that is usual for the chemistry."""

    value: float
    with_water: float
    band: stoichiometry.Band
    inert: tuple[str, ...]

    @property
    def place(self) -> str:
        band = self.band
        if self.value < band.low:
            return "below its band"
        if self.value > band.high:
            return "above its band"
        usual = band.usual_low <= self.value <= band.usual_high
        return "usual" if usual else "within its band, outside what is usual"


@dataclass(frozen=True, slots=True)
class Water:
    """What water in 100 g of the mix does: how it shifts the demand for hardener, and the gas it sets free."""

    water_g: float
    shift_pct: float
    carbon_dioxide_ml: float
    assumed: bool


@dataclass(frozen=True, slots=True)
class Mix:
    """The mix at its ratio; masses are per 100 g of it. None where a figure that is needed is missing."""

    shares_pct: dict[str, float]
    density_g_ml: float | None
    recipe_density_g_ml: float | None
    density_source: str
    non_volatile_pct: float | None
    volume_solids_pct: float | None
    pigment_volume_pct: float | None
    voc_g_l: float | None
    volume_ratio: float | None
    price_per_kg: float | None
    index: Index | None
    water: Water | None
    equivalents: dict[str, float]


@dataclass(frozen=True, slots=True)
class Caution:
    """Statements and label of what is weighed for one component."""

    letter: str
    label: hazards.Label
    statements: tuple[tuple[str, str], ...]
    materials: tuple[str, ...]
    training: bool


@dataclass(frozen=True, slots=True)
class BaseSheet:
    revision: Revision
    components: tuple[ComponentFigures, ...]
    mix: Mix
    cautions: tuple[Caution, ...]


def base_list(person):
    """Bases that the person may see, by code."""
    return bases(person).select_related("owner").order_by("code", "pk")


def load_revision(person, code: str, number: int | None = None) -> Revision | None:
    """The numbered, else the newest revision of a base that the person may see, with its recipe; None if none."""
    found = with_recipe(Revision.objects.filter(base__in=bases(person), base__code=code))
    if number is not None:
        found = found.filter(number=number)
    return found.order_by("-number", "-pk").first()


def base_sheet(revision: Revision) -> BaseSheet:
    """Everything that the page of a base shows; expects what ``load_revision`` fetched."""
    components = components_of(revision)
    return BaseSheet(
        revision=revision,
        components=components,
        mix=mix_of(revision, components),
        cautions=tuple(_caution(component) for component in components if component.lines),
    )


def mix_of(revision: Revision, components: tuple[ComponentFigures, ...]) -> Mix:
    total = sum(component.parts for component in components)
    shares = {component.letter: 100 * component.parts / total for component in components} if total else {}
    weighed = [
        (shares[component.letter] * line.share_pct / 100, line.facts)
        for component in components
        for line in component.lines
    ]
    all_known = bool(components) and all(component.known for component in components)
    recipe_density = _over(composition.mixture_density_g_ml, components, shares, "density_g_ml")
    measured = None if revision.air_free_density_g_ml is None else float(revision.air_free_density_g_ml)
    equivalents = _mix_equivalents(components, shares) if all_known else {}
    index = _index(revision.base.chemistry, equivalents)
    return Mix(
        shares_pct=shares,
        density_g_ml=measured if measured is not None else recipe_density,
        recipe_density_g_ml=recipe_density,
        density_source=_mix_density_source(revision, measured, recipe_density),
        non_volatile_pct=_over(composition.mixture_non_volatile_pct, components, shares, "non_volatile_pct"),
        volume_solids_pct=_volume_solids(weighed) if all_known else None,
        pigment_volume_pct=_pigment_volume(weighed) if all_known else None,
        voc_g_l=_voc(weighed) if all_known else None,
        volume_ratio=_volume_ratio(components),
        price_per_kg=_price(components, shares),
        index=index,
        water=_water(components, shares, equivalents, revision.base.chemistry) if index else None,
        equivalents=equivalents,
    )


def mix_facts(mix: Mix, currency: str) -> tuple[Fact, ...]:
    """The figures of the mix in the order of the page, with their definitions."""
    litre = None if None in (mix.price_per_kg, mix.density_g_ml) else mix.price_per_kg * mix.density_g_ml
    ratio_source = "A to B by volume, from the densities of the components"
    return (
        Fact("Density, free of air", mix.density_g_ml, "g/mL", mix.density_source, _density_places(mix)),
        Fact("Non-volatile content", mix.non_volatile_pct, "% by mass", "mean of the components by mass", 1),
        Fact(
            "Volume solids", mix.volume_solids_pct, "% by volume", "non-volatile share at each line's own density", 1
        ),
        Fact(
            "Pigment volume concentration",
            mix.pigment_volume_pct,
            "% by volume",
            "pigments and fillers over everything that stays in the film",
            1,
        ),
        Fact(
            "VOC, ready to use",
            mix.voc_g_l,
            "g/L",
            "volatile organics up to 250 °C boiling point over the volume of the mix; neither water nor exempt"
            " compounds subtracted",
            0,
        ),
        Fact("Mixing ratio by volume", mix.volume_ratio, ": 1", ratio_source),
        Fact("Cost of the mix", mix.price_per_kg, f"{currency}/kg", "raw materials only"),
        Fact("Cost of the mix", litre, f"{currency}/L", "raw materials only, at the density above"),
    )


def _density_places(mix: Mix) -> int:
    """Three, or as many as were measured: half a unit of the third is worth 0.03 % of air."""
    if not mix.density_source.startswith("measured"):
        return 3
    return max(3, len(f"{mix.density_g_ml:.6g}".partition(".")[2]))


def _column(components, name):
    values = [getattr(component, name) for component in components]
    return None if not values or any(value is None for value in values) else values


def _over(figure, components, shares, name):
    values = _column(components, name)
    return None if values is None else figure([shares[component.letter] for component in components], values)


def _mix_density_source(revision, measured, recipe) -> str:
    if measured is not None:
        return f"measured: {revision.air_free_method or 'method not noted'}"
    return "from the components, volumes added up: not measured" if recipe is not None else "not known"


def _volume_solids(weighed) -> float | None:
    figures = [(m, f.density_g_ml, f.non_volatile_pct) for m, f in weighed]
    if any(None in figure for figure in figures):
        return None
    return composition.volume_solids_pct(*zip(*figures, strict=True))


def _pigment_volume(weighed) -> float | None:
    volumes = solids_volumes(weighed)
    if volumes is None or sum(volumes) == 0:
        return None
    return composition.pigment_volume_concentration_pct(*volumes)


def _voc(weighed) -> float | None:
    figures = [(m, f.density_g_ml, f.voc_pct) for m, f in weighed]
    if any(None in figure for figure in figures):
        return None
    return composition.mixture_voc_g_l(*zip(*figures, strict=True))


def _volume_ratio(components) -> float | None:
    if len(components) != 2 or _column(components, "density_g_ml") is None:
        return None
    a, b = components
    return composition.volume_ratio(a.parts, a.density_g_ml, b.parts, b.density_g_ml)


def _price(components, shares) -> float | None:
    prices = _column(components, "price_per_kg")
    if prices is None:
        return None
    return mass_mean([shares[component.letter] for component in components], prices)


def _mix_equivalents(components, shares) -> dict[str, float]:
    moles: dict[str, float] = {}
    for component in components:
        for group, amount in component.equivalents.items():
            moles[group] = moles.get(group, 0.0) + amount * shares[component.letter] / 100
    return moles


def _index(chemistry: str, equivalents: dict[str, float]) -> Index | None:
    if chemistry not in stoichiometry.CHEMISTRIES or not equivalents:
        return None
    try:
        balance = stoichiometry.balance(equivalents, chemistry)
    except ValueError:  # no group of the resin: told as what can't be right
        return None
    band = stoichiometry.index_band(chemistry)
    return Index(balance.index, balance.index_with_water, band, balance.inert)


ASSUMED_WATER_G = 0.05


def _water(components, shares, equivalents, chemistry) -> Water | None:
    """What the water of 100 g of mix does; 0.05 g is assumed where nobody has measured any."""
    if not stoichiometry.reacts("water", chemistry):
        return None
    known = [c.water_pct * shares[c.letter] / 100 for c in components if c.water_pct is not None]
    water_g = sum(known) if known else ASSUMED_WATER_G
    resin = sum(moles for group, moles in equivalents.items() if stoichiometry.side(group, chemistry) == "resin")
    more = water_g / stoichiometry.water_equivalent_g
    return Water(
        water_g=water_g,
        shift_pct=stoichiometry.shift_pct(resin, resin + more),
        carbon_dioxide_ml=stoichiometry.carbon_dioxide_ml(water_g),
        assumed=not known,
    )


def _caution(component: ComponentFigures) -> Caution:
    codes = sorted({code for line in component.lines for code in line.facts.hazards})
    shares = {
        line.facts.code: line.share_pct * line.facts.diisocyanate_pct / 100
        for line in component.lines
        if line.facts.diisocyanate_pct
    }
    return Caution(
        letter=component.letter,
        label=hazards.label(codes),
        statements=tuple((code, hazards.statement(code).wording) for code in codes),
        materials=tuple(line.facts.code for line in component.lines if line.facts.hazards),
        training=hazards.diisocyanate_training_needed(shares),
    )


def lots_expired(components: tuple[ComponentFigures, ...], today: date) -> list[str]:
    return [
        f"{line.facts.code} lot {line.lot}"
        for component in components
        for line in component.lines
        if line.lot_expires and line.lot_expires < today
    ]
