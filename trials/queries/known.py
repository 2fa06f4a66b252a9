"""What the record knows of a base or of one cup, under the names that a sum asks by."""

from decimal import Decimal
from math import inf

from trials.models import Revision, Trial
from trials.models.series import Basis
from trials.models.trials import WetQuantity, Where, WorkingKind
from trials.science import dosage, stoichiometry

from .air import air_free
from .bases import mix_of
from .masses import Reckoning, as_grams, cup_masses
from .recipes import ComponentFigures, components_of

Known = dict[str, object]


def of_revision(revision: Revision) -> Known:
    """Figures of the mix and its components; parts stand for grams. Expects what ``load_revision`` fetched."""
    components = components_of(revision)
    mix = mix_of(revision, components)
    chemistry = revision.base.chemistry
    return _told(
        {
            **{f"parts_{c.letter.lower()}": c.parts for c in components},
            **{f"{c.letter.lower()}_g": c.parts for c in components},
            **{f"{c.letter.lower()}_solids_pct": c.binder_solids_pct for c in components},
            **_equivalents(components, chemistry),
            "chemistry": chemistry if chemistry in stoichiometry.CHEMISTRIES else None,
            "water_pct": next((c.water_pct for c in components if c.letter == "A"), None),
            "mix_g_ml": mix.density_g_ml,
            "air_free_g_ml": mix.density_g_ml,
            "volume_solids_pct": mix.volume_solids_pct,
            "viscosity_mpa_s": revision.viscosity_mpa_s,
            "yield_pa": revision.yield_pa,
            "known_min": revision.pot_life_min,
            "film_um": revision.base.film_um,
            "dry_film_um": revision.base.film_um,
        }
    )


def of_trial(trial: Trial, revision: Revision | None) -> Known:
    """What was planned, weighed, stirred and read in this cup, over what is known of its base, where that is seen."""
    mass_g = trial.batch_mass_g or trial.series.batch_mass_g
    masses = cup_masses(components_of(revision), mass_g) if revision else {}
    film_um = trial.series.film_um
    own = {
        **{f"{letter.lower()}_g": as_grams(mass.mass_g) for letter, mass in masses.items()},
        **_dose(trial, float(mass_g)),
        **_stirring(trial),
        **_air(trial),
        "film_um": film_um,
        "dry_film_um": film_um,
    }
    return (of_revision(revision) if revision else {}) | _told(own)


def _told(values: Known) -> Known:
    """What is known, as it would be typed: numbers without the tail of a binary fraction."""
    return {name: _typed(value) for name, value in values.items() if value not in (None, "", inf)}


def _typed(value) -> str:
    if isinstance(value, Decimal):
        return format(value, "f")
    return f"{value:.6g}" if isinstance(value, float) else str(value)


def _equivalents(components: tuple[ComponentFigures, ...], chemistry: str) -> Known:
    """Of A as resin and B as hardener; of neither where the groups are not parted so cleanly."""
    if chemistry not in stoichiometry.CHEMISTRIES or len(components) != 2:
        return {}
    sides = [_by_side(component, chemistry) for component in components]
    if [set(side) for side in sides] != [{"resin"}, {"hardener"}]:
        return {}
    resin, hardener = sides[0]["resin"], sides[1]["hardener"]
    return {"resin_equivalent_g": 100 / resin, "hardener_equivalent_g": 100 / hardener}


def _by_side(component: ComponentFigures, chemistry: str) -> dict[str, float]:
    """Moles in 100 g; water is told apart, as its own figure."""
    moles: dict[str, float] = {}
    for group, amount in component.equivalents.items():
        where = stoichiometry.side(group, chemistry)
        if where and group != "water" and amount:
            moles[where] = moles.get(where, 0.0) + amount
    return moles


def _dose(trial: Trial, mass_g: float) -> Known:
    """Of the first additive; its grams as weighed, else as planned."""
    dose = trial.dosages.select_related("candidate__material").order_by("pk").first()
    if dose is None:
        return {}
    material = dose.candidate.material
    grams = dose.planned_g if dose.weighed_g is None else dose.weighed_g
    group = material.groups.order_by("pk").first()
    return {
        "dosage_pct": dose.dosage_pct,
        "from_pct": dose.dosage_pct,
        "basis": dose.basis,
        "component": dose.basis_component if dose.basis == Basis.COMPONENT else None,
        "counting": Reckoning.of(dose).counting,
        "supplied": dose.supplied,
        "active_pct": material.active_pct,
        "additive_g": grams,
        "total_pct": dosage.dosage_pct(float(grams), mass_g),
        "price_per_kg": material.price_per_kg,
        "additive_group": group.group if group else None,
        "additive_equivalent_g": group.equivalent_g if group else None,
    }


def _stirring(trial: Trial) -> Known:
    """Of the working that dispersed the additive."""
    rows = trial.workings.filter(kind=WorkingKind.DISPERSE, rpm__isnull=False)
    found = rows.order_by("-position", "-pk").first()
    return {} if found is None else {name: getattr(found, name) for name in ("blade_mm", "vessel_mm", "rpm")}


def _air(trial: Trial) -> Known:
    """The first density of the mix, else of A, beside the density free of air that the cup's page takes."""
    rows = trial.wet_readings.filter(quantity=WetQuantity.DENSITY, value__isnull=False)
    for where in (Where.MIX, Where.A):
        reading = rows.filter(where=where).order_by("minutes", "pk").first()
        if reading is not None:
            batch = trial.common_batch or trial.series.common_batch
            free = air_free(trial.series, list(trial.series.trials.order_by("position", "pk")), where, batch)
            return {"density_g_ml": reading.value, "air_free_g_ml": free.density_g_ml if free else None}
    return {}
