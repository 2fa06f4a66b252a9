"""Equivalents and index of two-component systems.

An equivalent weight is the mass in grams that carries one mole of reactive groups; an inert part has the
equivalent ``inf``: it adds mass and no groups. Rounded constants are used, as on every data sheet: 4200 for
isocyanate content (42.0168 g/mol exactly, 0.04 % less than 4201.68) and 56100 for values in mg KOH (56.1056
g/mol).
"""

import math
from collections.abc import Sequence

from trials.science._refuse import (
    answer,
    celsius,
    finite,
    not_negative,
    numbers,
    percent,
    positive,
    same_length,
    total,
)
from trials.science.chemistry import (
    CHEMISTRIES,
    GROUPS,
    Balance,
    Band,
    balance,
    index_band,
    reacts,
    side,
)

__all__ = [
    "CHEMISTRIES",
    "GROUPS",
    "Balance",
    "Band",
    "balance",
    "carbon_dioxide_ml",
    "epoxide_mol_kg",
    "epoxide_pct",
    "equivalent_from_amine_value",
    "equivalent_from_hydroxyl_value",
    "equivalent_from_nco_pct",
    "equivalent_of_blend",
    "hardener_g",
    "index",
    "index_band",
    "oxirane_oxygen_pct",
    "reacts",
    "shift_pct",
    "side",
    "water_equivalent_g",
]

NCO_CONSTANT = 4200.0
KOH_CONSTANT_MG = 56_100.0
EPOXIDE_G_MOL = 43.045
OXYGEN_G_MOL = 15.999
GAS_J_MOL_K = 8.314462618
ATMOSPHERE_PA = 101_325.0

water_equivalent_g = 9.008
"""Grams of water that use up one mole of isocyanate: one molecule takes two groups."""


def equivalent_from_nco_pct(nco_pct: float) -> float:
    """Isocyanate equivalent weight, 4200 / % NCO.

    Parameters
    ----------
    nco_pct : float
        Isocyanate content, per cent by mass, above 0 up to 100.

    Returns
    -------
    float
        g per mole of NCO.

    Raises
    ------
    ValueError
        Where the content is impossible.

    Notes
    -----
    turiya.nl, "Guide to urethane calculations". Some guides use 4202; the exact value is 4201.68.

    Examples
    --------
    >>> round(equivalent_from_nco_pct(31.0), 2)
    135.48
    """
    content = positive("nco_pct", percent("nco_pct", nco_pct))
    return answer(NCO_CONSTANT / content, nco_pct=nco_pct)


def equivalent_from_hydroxyl_value(mg_koh_g: float) -> float:
    """Hydroxyl equivalent weight, 56100 / hydroxyl value.

    Parameters
    ----------
    mg_koh_g : float
        Hydroxyl value in mg KOH/g, above 0.

    Returns
    -------
    float
        g per mole of OH.

    Raises
    ------
    ValueError
        Where the value is impossible.

    Notes
    -----
    turiya.nl, "Guide to urethane calculations".

    Examples
    --------
    >>> round(equivalent_from_hydroxyl_value(1810.0), 1)
    31.0
    """
    return answer(KOH_CONSTANT_MG / positive("mg_koh_g", mg_koh_g), mg_koh_g=mg_koh_g)


def equivalent_from_amine_value(mg_koh_g: float, *, hydrogens_per_nitrogen: float) -> float:
    """Amine hydrogen equivalent weight from an amine value.

    An amine value counts nitrogen. Epoxide reacts with each hydrogen: 2 on a primary, 1 on a secondary amine.
    Isocyanate at room temperature reacts once per nitrogen: 1 there, also for an aspartate.

    Parameters
    ----------
    mg_koh_g : float
        Amine value in mg KOH/g, above 0.
    hydrogens_per_nitrogen : float
        Reacting hydrogens on one titrated nitrogen, above 0 up to 2; a mean for blends.

    Returns
    -------
    float
        g per mole of reacting hydrogen.

    Raises
    ------
    ValueError
        Where a number is impossible; a tertiary amine (0) has no equivalent.

    Notes
    -----
    56100 / value is grams per nitrogen (definition of the value), divided by the hydrogens.

    Examples
    --------
    >>> round(equivalent_from_amine_value(658.9, hydrogens_per_nitrogen=2), 2)
    42.57
    """
    hydrogens = positive("hydrogens_per_nitrogen", hydrogens_per_nitrogen)
    if hydrogens > 2.0:
        raise ValueError(f"hydrogens_per_nitrogen must be at most 2; got {hydrogens_per_nitrogen}")
    per_nitrogen = KOH_CONSTANT_MG / positive("mg_koh_g", mg_koh_g)
    return answer(per_nitrogen / hydrogens, mg_koh_g=mg_koh_g, hydrogens_per_nitrogen=hydrogens_per_nitrogen)


def equivalent_of_blend(mass_g: Sequence[float], equivalent_g: Sequence[float]) -> float:
    """Equivalent weight of a blend, Σm / Σ(m/E); inert parts count in the mass only.

    Parameters
    ----------
    mass_g : sequence of float, n parts
        Grams, 0 or more, not all 0.
    equivalent_g : sequence of float, n parts
        g/mol, above 0; ``inf`` for an inert part.

    Returns
    -------
    float
        g/mol; ``inf`` where nothing in the blend reacts.

    Raises
    ------
    ValueError
        Where a number is impossible or the columns differ in length.

    Notes
    -----
    turiya.nl, "Guide to epoxy calculations".

    Examples
    --------
    >>> import math
    >>> round(equivalent_of_blend([80.0, 10.0, 10.0], [189.0, 183.0, math.inf]), 3)
    209.238
    """
    mass = numbers("mass_g", mass_g, not_negative)
    equivalents = numbers("equivalent_g", equivalent_g, _positive_or_inert)
    same_length(mass_g=mass, equivalent_g=equivalents)
    whole = total("mass_g", mass)
    moles = answer(sum(m / e for m, e in zip(mass, equivalents, strict=True)), equivalent_g=equivalent_g)
    return answer(whole / moles, mass_g=mass_g, equivalent_g=equivalent_g) if moles > 0.0 else math.inf


def hardener_g(
    resin_g: float, resin_equivalent_g: float, hardener_equivalent_g: float, *, index: float = 1.0
) -> float:
    """Grams of hardener for a mass of resin at an index.

    Parameters
    ----------
    resin_g : float
        Grams of resin component, all of it, 0 or more.
    resin_equivalent_g, hardener_equivalent_g : float
        g/mol of each component as weighed, above 0.
    index : float
        Hardener equivalents over resin equivalents, above 0.

    Returns
    -------
    float
        Grams.

    Raises
    ------
    ValueError
        Where a number is impossible; an inert component (``inf``) cannot reach an index.

    Notes
    -----
    With 100 g of resin this is the "parts per hundred resin" 100·AHEW/EEW of turiya.nl, "Guide to epoxy
    calculations".

    Examples
    --------
    >>> round(hardener_g(100.0, 209.0, 43.0), 1)
    20.6
    """
    equivalents = not_negative("resin_g", resin_g) / positive("resin_equivalent_g", resin_equivalent_g)
    wanted = equivalents * positive("index", index)
    grams = wanted * positive("hardener_equivalent_g", hardener_equivalent_g)
    return answer(grams, resin_g=resin_g, resin_equivalent_g=resin_equivalent_g, index=index)


def index(resin_g: float, resin_equivalent_g: float, hardener_g: float, hardener_equivalent_g: float) -> float:
    """Hardener equivalents over resin equivalents in what was weighed.

    Parameters
    ----------
    resin_g, hardener_g : float
        Grams; resin above 0, hardener 0 or more.
    resin_equivalent_g, hardener_equivalent_g : float
        g/mol of each component as weighed, above 0.

    Returns
    -------
    float
        1 where the groups balance.

    Raises
    ------
    ValueError
        Where a number is impossible.

    Notes
    -----
    ASTM D7997 defines the index as this ratio for isocyanates. `index_band` says which groups stand over
    which.

    Examples
    --------
    >>> round(index(100.0, 190.0, 22.41, 42.574), 3)
    1.0
    """
    hardener = not_negative("hardener_g", hardener_g) / positive("hardener_equivalent_g", hardener_equivalent_g)
    ratio = hardener / positive("resin_g", resin_g) * positive("resin_equivalent_g", resin_equivalent_g)
    return answer(ratio, resin_g=resin_g, hardener_g=hardener_g, resin_equivalent_g=resin_equivalent_g)


def shift_pct(hardener_before_g: float, hardener_after_g: float) -> float:
    """How far the demand for hardener moves with an additive or with water in the batch.

    Parameters
    ----------
    hardener_before_g, hardener_after_g : float
        Grams of hardener for the same batch without and with it; before above 0, after 0 or more.

    Returns
    -------
    float
        Per cent of the demand before; positive where more is needed.

    Raises
    ------
    ValueError
        Where a number is impossible.

    Notes
    -----
    Plain arithmetic.

    Examples
    --------
    >>> round(shift_pct(54.6850, 55.7493), 2)
    1.95
    """
    after = not_negative("hardener_after_g", hardener_after_g)
    ratio = after / positive("hardener_before_g", hardener_before_g)
    return answer((ratio - 1.0) * 100.0, hardener_before_g=hardener_before_g, hardener_after_g=hardener_after_g)


def epoxide_mol_kg(equivalent_g: float) -> float:
    """Epoxide content in mol/kg from the equivalent weight in g/mol, above 0.

    Raises
    ------
    ValueError
        Where the equivalent is impossible.

    Notes
    -----
    Definition of the equivalent weight.

    Examples
    --------
    >>> round(epoxide_mol_kg(190.0), 4)
    5.2632
    """
    return answer(1000.0 / positive("equivalent_g", equivalent_g), equivalent_g=equivalent_g)


def epoxide_pct(equivalent_g: float) -> float:
    """Epoxide content in per cent by mass, counted as C2H3O (43.045 g/mol), from g/mol above 0.

    Raises
    ------
    ValueError
        Where the equivalent is below the mass of the group itself.

    Notes
    -----
    Definition; older data sheets print it.

    Examples
    --------
    >>> round(epoxide_pct(190.0), 3)
    22.655
    """
    return _group_pct(EPOXIDE_G_MOL, equivalent_g)


def oxirane_oxygen_pct(equivalent_g: float) -> float:
    """Epoxide content in per cent by mass, counted as its oxygen alone, from g/mol above 0.

    Raises
    ------
    ValueError
        Where the equivalent is below the mass of the group itself.

    Notes
    -----
    Definition; used for epoxidised oils.

    Examples
    --------
    >>> round(oxirane_oxygen_pct(190.0), 2)
    8.42
    """
    return _group_pct(OXYGEN_G_MOL, equivalent_g)


def carbon_dioxide_ml(water_g: float, *, temperature_c: float = 23.0) -> float:
    """Gas that water sets free from isocyanate, one mole for each mole of water.

    No defoamer cures this foam, and a closed container of moist isocyanate can burst.

    Parameters
    ----------
    water_g : float
        Grams of water that react, 0 or more.
    temperature_c : float
        °C, above −273.15.

    Returns
    -------
    float
        mL at 101.325 kPa, if all of it leaves the liquid.

    Raises
    ------
    ValueError
        Where a number is impossible.

    Notes
    -----
    Ideal gas with the CODATA gas constant.

    Examples
    --------
    >>> round(carbon_dioxide_ml(0.05), 1)
    67.4
    """
    kelvin = celsius("temperature_c", temperature_c) + 273.15
    moles = not_negative("water_g", water_g) / (2.0 * water_equivalent_g)
    millilitres = moles * GAS_J_MOL_K * kelvin / ATMOSPHERE_PA * 1e6
    return answer(millilitres, water_g=water_g, temperature_c=temperature_c)


def _positive_or_inert(name: str, value: object) -> float:
    return positive(name, value, may_be_inf=True)


def _group_pct(group_g_mol: float, equivalent_g: float) -> float:
    equivalent = finite("equivalent_g", equivalent_g)
    if equivalent < EPOXIDE_G_MOL:
        raise ValueError(f"equivalent_g must be at least {EPOXIDE_G_MOL}, the group alone; got {equivalent_g}")
    return group_g_mol / equivalent * 100.0
