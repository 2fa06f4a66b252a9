"""What can't be right in a base, said plainly; and what is only unusual or not known."""

from dataclasses import dataclass
from datetime import date

from trials.models.bases import HasAdditive
from trials.models.materials import Function
from trials.science import ranges, stoichiometry

from .bases import BaseSheet, lots_expired


@dataclass(frozen=True, slots=True)
class Remark:
    """``kind`` is "wrong" (can't be right), "warning" (unusual: look) or "note" (not known, or worth knowing)."""

    kind: str
    text: str


def remarks(sheet: BaseSheet, today: date) -> tuple[Remark, ...]:
    """What to say of a base, the worst first."""
    found = [
        *_components(sheet),
        *_materials(sheet),
        *_index(sheet),
        *_density(sheet),
        *_water(sheet),
        *_additive(sheet),
        *(Remark("warning", f"{lot} is past its date.") for lot in lots_expired(sheet.components, today)),
    ]
    order = ("wrong", "warning", "note")
    return tuple(sorted(found, key=lambda remark: order.index(remark.kind)))


def _components(sheet):
    letters = {component.letter for component in sheet.components}
    if not letters:
        yield Remark("wrong", "There is no component yet: nothing can be mixed.")
    elif "A" not in letters:
        yield Remark("wrong", "There is no component A.")
    elif len(letters) == 1:
        yield Remark("note", "Only one component: right for a one-pack system, else B is missing.")
    for component in sheet.components:
        if component.density_g_ml is None:
            lacking = ", ".join(line.facts.code for line in component.lines if line.facts.density_g_ml is None)
            reason = f" {lacking} has none." if lacking else ""
            yield Remark("note", f"The density of {component.letter} is not known.{reason}")
        elif component.recipe_density_g_ml is not None:
            yield from _against_recipe(
                component.letter, component.density_g_ml, component.recipe_density_g_ml, component.density_source
            )


def _against_recipe(what: str, measured: float, recipe: float, source: str):
    if not source.startswith("measured"):
        return
    off_pct = 100 * (measured / recipe - 1)
    figures = f"{what}: measured {measured:.3f} g/mL, the recipe gives {recipe:.3f}"
    if off_pct > 1:
        yield Remark(
            "wrong", f"{figures}, {off_pct:.1f} % less. Air can only make it lighter: a line or a density is wrong."
        )
    elif off_pct < -2:
        yield Remark(
            "warning", f"{figures}, {-off_pct:.1f} % more. Air in the sample, or a line or a density is wrong."
        )


def _materials(sheet):
    seen = set()
    for component in sheet.components:
        for line in component.lines:
            facts = line.facts
            if facts.code in seen:
                continue
            seen.add(facts.code)
            yield from _one_material(facts)


def _one_material(facts):
    solids, voc = facts.non_volatile_pct, facts.voc_pct
    if solids is not None and voc is not None and solids + voc > 100.5:
        yield Remark(
            "wrong",
            f"{facts.code}: {solids:g} % stays and {voc:g} % is volatile, together more than 100 %.",
        )
    density = ranges.DENSITY_OF_FUNCTION_G_ML[facts.function]
    if facts.density_g_ml is not None and not density.holds(facts.density_g_ml):
        yield Remark(
            "warning",
            f"{facts.code}: density {facts.density_g_ml:g} g/mL is unusual for a {facts.function}"
            f" ({density.low:g} to {density.high:g}).",
        )
    for group, equivalent in facts.groups.items():
        usual = ranges.EQUIVALENT_OF_GROUP_G[group]
        if not usual.holds(equivalent):
            yield Remark(
                "warning",
                f"{facts.code}: {equivalent:g} g/eq is unusual for {group} ({usual.low:g} to {usual.high:g}).",
            )


def _index(sheet):
    chemistry, index = sheet.revision.base.chemistry, sheet.mix.index
    if any(component.black_box for component in sheet.components):
        yield Remark("note", "A black box: equivalents, index and VOC are not known, nor what an additive shifts.")
        return
    if chemistry not in stoichiometry.CHEMISTRIES or len(sheet.components) < 2:
        return
    if index is None or index.value == 0:
        band = stoichiometry.index_band(chemistry)
        yield Remark("wrong", f"The index ({band.over}) cannot be formed: one side has no reactive group.")
        return
    for group in index.inert:
        yield Remark("note", f"{group.capitalize()} finds no partner here: it counts as mass only.")
    band = index.band
    said = f"The index ({band.over}) is {index.value:.3f}"
    limits = f"{band.low:.2f} to {band.high:.2f}"
    if not band.low * 0.8 <= index.value <= band.high * 1.25:
        yield Remark(
            "wrong", f"{said}; such systems stand at {limits}. Look at the mixing parts and the equivalents."
        )
    elif index.value < band.low or index.value > band.high:
        yield Remark("warning", f"{said}, outside {limits}.")
    elif not band.usual_low <= index.value <= band.usual_high:
        yield Remark("note", f"{said}; usual is {band.usual_low:.2f} to {band.usual_high:.2f}.")


def _density(sheet):
    mix, revision = sheet.mix, sheet.revision
    if mix.density_g_ml is None:
        yield Remark("note", "Without the density of the mix no air content can be worked out.")
    elif revision.air_free_density_g_ml is None:
        yield Remark(
            "note",
            "The air-free density is not measured. From the recipe it is uncertain by as much as the effect of an"
            " additive: measure it on a degassed sample or under pressure (ISO 2811-4).",
        )
    elif mix.recipe_density_g_ml is not None:
        yield from _against_recipe("Mix", mix.density_g_ml, mix.recipe_density_g_ml, mix.density_source)


def _water(sheet):
    water = sheet.mix.water
    if water is None:
        return
    start = "0.05 g of water (assumed: none is measured)" if water.assumed else f"{water.water_g:.3f} g of water"
    text = (
        f"{start} in 100 g of mix takes {water.shift_pct:.1f} % more hardener and can set free"
        f" {water.carbon_dioxide_ml:.0f} mL of carbon dioxide at 23 °C. No defoamer cures that."
    )
    yield Remark("warning" if not water.assumed and water.shift_pct > 1 else "note", text)


def _additive(sheet):
    base = sheet.revision.base
    inside = [
        line.facts.code
        for component in sheet.components
        for line in component.lines
        if line.facts.function == Function.DEFOAMER
    ]
    if inside and base.additive == HasAdditive.NO:
        yield Remark("wrong", f"The base is said to hold no defoamer, but {', '.join(inside)} is on its lines.")
    elif base.additive != HasAdditive.NO:
        yield Remark(
            "warning",
            "The blank of this base is not without additive:"
            f" {base.additive_note or 'it may hold a defoamer, nobody knows which'}.",
        )
