"""Density by pyknometer, with or without the buoyancy of air, and the water it is calibrated with."""

from trials.science._refuse import answer, between, not_negative, positive

# CIPM formula for air-free water (Tanaka et al., Metrologia 38, 2001, 301): coefficients from memory, held
# to IAPWS-95
_A1, _A2, _A3, _A4, _A5 = -3.983035, 301.797, 522_528.9, 69.34881, 0.999974950


def water_g_ml(temperature_c: float) -> float:
    """Density of air-free water at 101.325 kPa.

    Parameters
    ----------
    temperature_c : float
        °C, 0 to 30.

    Returns
    -------
    float
        g/mL.

    Raises
    ------
    ValueError
        Outside that range.

    Notes
    -----
    CIPM recommended formula, M. Tanaka et al., Metrologia 38 (2001) 301, coefficients from memory. Up to 30 °C it
    stays within 0.001 kg/m³ of IAPWS-95; beyond, the two part.

    Examples
    --------
    >>> round(water_g_ml(23.0), 6)
    0.997541
    """
    t = between("temperature_c", temperature_c, 0.0, 30.0)
    return _A5 * (1.0 - (t + _A1) ** 2 * (t + _A2) / (_A3 * (t + _A4)))


def pyknometer_ml(water_g: float, water_g_ml: float, *, air_g_ml: float = 0.0, weights_g_ml: float = 8.0) -> float:
    """Volume of a pyknometer from the water it holds.

    Parameters
    ----------
    water_g : float
        Reading of the balance, full less empty, g, above 0.
    water_g_ml : float
        Density of water at that temperature, g/mL, above 0.
    air_g_ml : float
        Density of air, g/mL; 0 leaves buoyancy out, 0.0012 counts it.
    weights_g_ml : float
        Density of the weights the balance was adjusted with, g/mL; steel counts as 8.0.

    Returns
    -------
    float
        mL.

    Raises
    ------
    ValueError
        Where a number is impossible, or air is not lighter than water and weights.

    Notes
    -----
    m·(1 − ρ_air/ρ_weights)/(ρ_water − ρ_air), the form of ISO 2811-1 annex A (from memory).

    Examples
    --------
    >>> round(pyknometer_ml(99.890, 0.9975414, air_g_ml=0.0011923), 4)
    100.2411
    """
    water = positive("water_g_ml", water_g_ml)
    air, buoyed = _buoyancy(air_g_ml, weights_g_ml)
    if air >= water:
        raise ValueError(f"air_g_ml must be below water_g_ml ({water_g_ml}); got {air_g_ml}")
    volume = positive("water_g", water_g) * buoyed / (water - air)
    return answer(volume, water_g=water_g, water_g_ml=water_g_ml)


def pyknometer_density_g_ml(
    sample_g: float, volume_ml: float, *, air_g_ml: float = 0.0, weights_g_ml: float = 8.0
) -> float:
    """Density of a sample in a pyknometer of known volume.

    Parameters
    ----------
    sample_g : float
        Reading of the balance, full less empty, g, above 0.
    volume_ml : float
        mL, above 0, found with the same treatment of buoyancy.
    air_g_ml, weights_g_ml : float
        As `pyknometer_ml`.

    Returns
    -------
    float
        g/mL.

    Raises
    ------
    ValueError
        Where a number is impossible.

    Notes
    -----
    m·(1 − ρ_air/ρ_weights)/V + ρ_air. ISO 2811-1 reports without this correction of the sample (from memory).

    Examples
    --------
    >>> round(pyknometer_density_g_ml(143.738, 100.1362), 5)
    1.43542
    >>> round(pyknometer_density_g_ml(143.738, 100.2411, air_g_ml=0.0011923), 5)
    1.4349
    """
    air, buoyed = _buoyancy(air_g_ml, weights_g_ml)
    density = positive("sample_g", sample_g) * buoyed / positive("volume_ml", volume_ml) + air
    return answer(density, sample_g=sample_g, volume_ml=volume_ml)


def _buoyancy(air_g_ml: float, weights_g_ml: float) -> tuple[float, float]:
    air, weights = not_negative("air_g_ml", air_g_ml), positive("weights_g_ml", weights_g_ml)
    if air >= weights:
        raise ValueError(f"air_g_ml must be below weights_g_ml ({weights_g_ml}); got {air_g_ml}")
    return air, 1.0 - air / weights
