"""What a recipe amounts to: density, solids, volatile matter, film and cost.

Columns of a recipe are sequences of equal length, one entry per line. Volumes add up ideally, so a mixture's
density is total mass over total volume and never the mass-weighted mean of the densities. Which volatile
matter counts (boiling limit, water and exempt compounds, the test method) is a definition that belongs
beside the number.
"""

from collections.abc import Sequence
from dataclasses import dataclass

from trials.science._refuse import answer, not_negative, numbers, percent, positive, same_length, total


@dataclass(frozen=True, slots=True)
class CostInUse:
    """Cost of the additive alone, in the currency of its price."""

    per_100_kg: float
    per_m2: float


def mixture_density_g_ml(mass_g: Sequence[float], density_g_ml: Sequence[float]) -> float:
    """Air-free density of a mixture, Σm / Σ(m/ρ).

    Parameters
    ----------
    mass_g : sequence of float, n lines
        Grams, 0 or more, not all 0.
    density_g_ml : sequence of float, n lines
        g/mL, above 0.

    Returns
    -------
    float
        g/mL.

    Raises
    ------
    ValueError
        Where a number is impossible or the columns differ in length.

    Notes
    -----
    Ideal additivity of volumes, the usual convention of paint calculation; solvents may contract by a per
    cent.

    Examples
    --------
    >>> round(mixture_density_g_ml([100.0, 100.0], [1.0, 4.0]), 3)
    1.6
    """
    mass, volume = _mass_and_volume(mass_g, density_g_ml)
    return answer(sum(mass) / sum(volume), mass_g=mass_g, density_g_ml=density_g_ml)


def mixture_non_volatile_pct(mass_g: Sequence[float], non_volatile_pct: Sequence[float]) -> float:
    """Non-volatile content of a mixture by mass.

    Parameters
    ----------
    mass_g : sequence of float, n lines
        Grams, 0 or more, not all 0.
    non_volatile_pct : sequence of float, n lines
        Per cent by mass, 0 to 100.

    Returns
    -------
    float
        Per cent by mass.

    Raises
    ------
    ValueError
        Where a number is impossible or the columns differ in length.

    Notes
    -----
    Plain arithmetic. A measured value (ISO 3251, title from memory) may differ, as reactive diluents
    evaporate.

    Examples
    --------
    >>> mixture_non_volatile_pct([90.0, 10.0], [100.0, 0.0])
    90.0
    """
    mass = _masses(mass_g)
    solid = _percents("non_volatile_pct", non_volatile_pct, mass_g=mass)
    return _mean(mass, solid, mass_g=mass_g)


def volume_solids_pct(
    mass_g: Sequence[float], density_g_ml: Sequence[float], non_volatile_pct: Sequence[float]
) -> float:
    """Volume that stays in the film, of the wet volume.

    A line's non-volatile share is taken at the line's own density.

    Parameters
    ----------
    mass_g : sequence of float, n lines
        Grams, 0 or more, not all 0.
    density_g_ml : sequence of float, n lines
        g/mL, above 0.
    non_volatile_pct : sequence of float, n lines
        Per cent by mass, 0 to 100.

    Returns
    -------
    float
        Per cent by volume.

    Raises
    ------
    ValueError
        Where a number is impossible or the columns differ in length.

    Notes
    -----
    Ideal additivity of volumes; ISO 3233 measures it (title from memory).

    Examples
    --------
    >>> volume_solids_pct([100.0, 50.0], [2.0, 1.0], [100.0, 0.0])
    50.0
    """
    _, volume = _mass_and_volume(mass_g, density_g_ml)
    solid = _percents("non_volatile_pct", non_volatile_pct, mass_g=volume)
    return _mean(volume, solid, mass_g=mass_g, density_g_ml=density_g_ml)


def mixture_voc_g_l(mass_g: Sequence[float], density_g_ml: Sequence[float], voc_pct: Sequence[float]) -> float:
    """Volatile organic compounds of the mix ready to use, nothing subtracted.

    Parameters
    ----------
    mass_g : sequence of float, n lines
        Grams, 0 or more, not all 0.
    density_g_ml : sequence of float, n lines
        g/mL, above 0.
    voc_pct : sequence of float, n lines
        Per cent by mass that counts as volatile organic under the definition shown beside the number, 0 to
        100.

    Returns
    -------
    float
        g/L.

    Raises
    ------
    ValueError
        Where a number is impossible or the columns differ in length.

    Notes
    -----
    Mass of volatile organics over the volume of the mix. Directive 2004/42/EC refers its limits to the mix
    ready to use, without subtracting water or exempt compounds.

    Examples
    --------
    >>> mixture_voc_g_l([100.0, 50.0], [2.0, 1.0], [0.0, 100.0])
    500.0
    """
    mass, volume = _mass_and_volume(mass_g, density_g_ml)
    voc = _percents("voc_pct", voc_pct, mass_g=mass)
    volatile = sum(m * v for m, v in zip(mass, voc, strict=True))
    # grams·per cent over millilitres: 10 turns g/mL·% into g/L
    return answer(volatile / sum(volume) * 10.0, mass_g=mass_g, density_g_ml=density_g_ml)


def voc_by_difference_g_l(non_volatile_pct: float, water_pct: float, density_g_ml: float) -> float:
    """Volatile organic compounds as what is neither non-volatile nor water.

    Parameters
    ----------
    non_volatile_pct, water_pct : float
        Per cent by mass, 0 to 100, together at most 100.
    density_g_ml : float
        g/mL, above 0.

    Returns
    -------
    float
        g/L.

    Raises
    ------
    ValueError
        Where a number is impossible or the two shares exceed 100 per cent.

    Notes
    -----
    Difference method of ISO 11890-1, from memory: (100 − NV − w)·ρ·10.

    Examples
    --------
    >>> round(voc_by_difference_g_l(94.0, 0.5, 1.40), 6)
    77.0
    """
    solid = percent("non_volatile_pct", non_volatile_pct)
    water = percent("water_pct", water_pct)
    if solid + water > 100.0:
        raise ValueError(f"water_pct and non_volatile_pct ({non_volatile_pct}) must not exceed 100; got {water_pct}")
    voc = (100.0 - solid - water) * positive("density_g_ml", density_g_ml) * 10.0
    return answer(voc, density_g_ml=density_g_ml)


def voc_less_water_kg_l(
    voc_kg_l: float,
    water_kg_l: float,
    *,
    water_density: float = 0.995,
    exempt_kg_l: float = 0.0,
    exempt_density: float = 1.0,
) -> float:
    """Volatile organic compounds per litre of coating less water and exempt compounds.

    Parameters
    ----------
    voc_kg_l, water_kg_l, exempt_kg_l : float
        Kilograms in one litre of coating, 0 or more.
    water_density, exempt_density : float
        kg/L, above 0; 0.995 is the figure of the regulation.

    Returns
    -------
    float
        kg/L.

    Raises
    ------
    ValueError
        Where a number is impossible, or water and exempt compounds fill the whole litre.

    Notes
    -----
    A / (1 − B/ρ_w − C/D): Code of Maryland Regulations, COMAR 26.11.19.02.

    Examples
    --------
    >>> round(voc_less_water_kg_l(0.10, 0.40, exempt_kg_l=0.05, exempt_density=0.79), 5)
    0.18702
    """
    voc = not_negative("voc_kg_l", voc_kg_l)
    water = not_negative("water_kg_l", water_kg_l) / positive("water_density", water_density)
    exempt = not_negative("exempt_kg_l", exempt_kg_l) / positive("exempt_density", exempt_density)
    if water + exempt >= 1.0:
        raise ValueError(f"water_kg_l and exempt_kg_l ({exempt_kg_l}) must leave room in the litre; got {water_kg_l}")
    return answer(voc / (1.0 - water - exempt), voc_kg_l=voc_kg_l)


def pigment_volume_concentration_pct(pigment_ml: float, binder_ml: float) -> float:
    """Pigment and filler volume as a share of the dry film.

    Parameters
    ----------
    pigment_ml, binder_ml : float
        Volumes of pigment with filler and of binder solids, mL, 0 or more, not both 0.

    Returns
    -------
    float
        Per cent by volume.

    Raises
    ------
    ValueError
        Where a number is impossible.

    Notes
    -----
    V_p / (V_p + V_b), the definition common to paint textbooks (from memory).

    Examples
    --------
    >>> pigment_volume_concentration_pct(25.0, 75.0)
    25.0
    """
    pigment = not_negative("pigment_ml", pigment_ml)
    film = total("pigment_ml and binder_ml", [pigment, not_negative("binder_ml", binder_ml)])
    return pigment / film * 100.0


def volume_ratio(a_g: float, a_density_g_ml: float, b_g: float, b_density_g_ml: float) -> float:
    """Millilitres of A to one millilitre of B, from a ratio by mass.

    Parameters
    ----------
    a_g, b_g : float
        Grams of each component; ``a_g`` 0 or more, ``b_g`` above 0.
    a_density_g_ml, b_density_g_ml : float
        g/mL, above 0.

    Returns
    -------
    float
        Volume of A over volume of B.

    Raises
    ------
    ValueError
        Where a number is impossible.

    Notes
    -----
    Plain arithmetic.

    Examples
    --------
    >>> round(volume_ratio(100.0, 1.45, 18.0, 1.02), 3)
    3.908
    """
    a = not_negative("a_g", a_g) / positive("a_density_g_ml", a_density_g_ml)
    ratio = a / positive("b_g", b_g) * positive("b_density_g_ml", b_density_g_ml)
    return answer(ratio, a_g=a_g, a_density_g_ml=a_density_g_ml, b_g=b_g, b_density_g_ml=b_density_g_ml)


def wet_film_um(dry_film_um: float, volume_solids_pct: float) -> float:
    """Wet film that dries to a given thickness.

    Parameters
    ----------
    dry_film_um : float
        µm, above 0.
    volume_solids_pct : float
        Per cent by volume, above 0 up to 100.

    Returns
    -------
    float
        µm.

    Raises
    ------
    ValueError
        Where a number is impossible.

    Notes
    -----
    Dry film · 100 / volume solids: the usual formula of coverage guides.

    Examples
    --------
    >>> round(wet_film_um(100.0, 65.0), 2)
    153.85
    """
    wet = positive("dry_film_um", dry_film_um) * 100.0 / _volume_solids(volume_solids_pct)
    return answer(wet, dry_film_um=dry_film_um, volume_solids_pct=volume_solids_pct)


def spreading_rate_m2_l(dry_film_um: float, volume_solids_pct: float) -> float:
    """Theoretical area that one litre covers.

    Parameters
    ----------
    dry_film_um : float
        µm, above 0.
    volume_solids_pct : float
        Per cent by volume, above 0 up to 100.

    Returns
    -------
    float
        m²/L, without loss.

    Raises
    ------
    ValueError
        Where a number is impossible.

    Notes
    -----
    10 · volume solids % / dry film µm (that is 1000 · the fraction: a factor of 100, which is seen in print,
    is wrong).

    Examples
    --------
    >>> spreading_rate_m2_l(125.0, 65.0)
    5.2
    """
    rate = 10.0 * _volume_solids(volume_solids_pct) / positive("dry_film_um", dry_film_um)
    return answer(rate, dry_film_um=dry_film_um, volume_solids_pct=volume_solids_pct)


def consumption_g_m2(
    dry_film_um: float, volume_solids_pct: float, density_g_ml: float, *, loss_pct: float = 0.0
) -> float:
    """Grams of mixed coating for a square metre.

    Parameters
    ----------
    dry_film_um : float
        µm, above 0.
    volume_solids_pct : float
        Per cent by volume, above 0 up to 100.
    density_g_ml : float
        g/mL of the mix, above 0.
    loss_pct : float
        Share of what is taken that never reaches the film, per cent, 0 up to below 100.

    Returns
    -------
    float
        g/m².

    Raises
    ------
    ValueError
        Where a number is impossible or all would be lost.

    Notes
    -----
    One µm on one m² is one mL. A loss divides, since it is a share of what is taken.

    Examples
    --------
    >>> round(consumption_g_m2(2000.0, 100.0, 1.45, loss_pct=10.0))
    3222
    """
    kept = 1.0 - percent("loss_pct", loss_pct) / 100.0
    if kept == 0.0:
        raise ValueError(f"loss_pct must leave something for the film; got {loss_pct}")
    wet = positive("dry_film_um", dry_film_um) * 100.0 / _volume_solids(volume_solids_pct)
    grams = wet * positive("density_g_ml", density_g_ml) / kept
    return answer(grams, dry_film_um=dry_film_um, density_g_ml=density_g_ml, loss_pct=loss_pct)


def cost_in_use(price_per_kg: float, dosage_pct: float, consumption_g_m2: float) -> CostInUse:
    """What the additive costs at its dosage, not by the kilogram.

    Parameters
    ----------
    price_per_kg : float
        Price of the additive as supplied, per kilogram, 0 or more.
    dosage_pct : float
        Per cent as supplied on top of the mix, 0 to 100.
    consumption_g_m2 : float
        Mix without additive, g/m², 0 or more.

    Returns
    -------
    CostInUse
        Per 100 kg of mix and per square metre, in the currency of the price.

    Raises
    ------
    ValueError
        Where a number is impossible.

    Notes
    -----
    Plain arithmetic.

    Examples
    --------
    >>> cost_in_use(20.0, 0.5, 3000.0)
    CostInUse(per_100_kg=10.0, per_m2=0.3)
    """
    given = {"price_per_kg": price_per_kg, "consumption_g_m2": consumption_g_m2}
    per_100_kg = not_negative("price_per_kg", price_per_kg) * percent("dosage_pct", dosage_pct)
    per_m2 = per_100_kg * not_negative("consumption_g_m2", consumption_g_m2) / 100_000.0
    return CostInUse(per_100_kg=answer(per_100_kg, **given), per_m2=answer(per_m2, **given))


def _volume_solids(volume_solids_pct: float) -> float:
    return positive("volume_solids_pct", percent("volume_solids_pct", volume_solids_pct))


def _masses(mass_g: Sequence[float]) -> list[float]:
    mass = numbers("mass_g", mass_g, not_negative)
    total("mass_g", mass)
    return mass


def _mass_and_volume(mass_g: Sequence[float], density_g_ml: Sequence[float]) -> tuple[list[float], list[float]]:
    mass, density = _masses(mass_g), numbers("density_g_ml", density_g_ml, positive)
    same_length(mass_g=mass, density_g_ml=density)
    volume = [m / d for m, d in zip(mass, density, strict=True)]
    total("mass_g / density_g_ml", volume, given=(mass_g, density_g_ml))
    return mass, volume


def _percents(name: str, values: Sequence[float], *, mass_g: list[float]) -> list[float]:
    shares = numbers(name, values, percent)
    same_length(**{"mass_g": mass_g, name: shares})
    return shares


def _mean(weight: list[float], values: list[float], **given: object) -> float:
    return answer(sum(w * v for w, v in zip(weight, values, strict=True)) / sum(weight), **given)
