"""Dew point, and how far a substrate stands above it when it is coated."""

import math

from trials.science._refuse import answer, between

MAGNUS_A = 17.62
MAGNUS_B_C = 243.12
"""Constants over water, -45 to 60 °C: Sonntag 1990, as in the World Meteorological Organization's guide no. 8."""
LOWEST_C, HIGHEST_C = -45.0, 60.0

LEAST_MARGIN_C = 3.0
"""What ISO 8502-4 asks for unless otherwise agreed: from memory."""


def dew_point_c(air_c: float, humidity_pct: float) -> float:
    """Temperature at which air of this humidity begins to shed water.

    Parameters
    ----------
    air_c : float
        Temperature of the air, °C, -45 to 60.
    humidity_pct : float
        Relative humidity over water, per cent, above 0 up to 100.

    Returns
    -------
    float
        °C, never above ``air_c``.

    Raises
    ------
    ValueError
        Where a number is outside its range.

    Notes
    -----
    Magnus: with g = ln(φ/100) + a·t/(b + t), the dew point is b·g/(a − g). Within 0.1 K of the steam tables from
    0 to 50 °C.

    References
    ----------
    D. Sonntag, Zeitschrift für Meteorologie 40 (1990) 340; World Meteorological Organization, guide no. 8.

    Examples
    --------
    >>> round(dew_point_c(20.0, 50.0), 1)
    9.3
    """
    air = between("air_c", air_c, LOWEST_C, HIGHEST_C)
    humidity = between("humidity_pct", humidity_pct, 0.0, 100.0)
    if humidity == 0.0:
        raise ValueError(f"humidity_pct must be above 0: dry air has no dew point; got {humidity_pct}")
    g = math.log(humidity / 100.0) + MAGNUS_A * air / (MAGNUS_B_C + air)
    return min(air, answer(MAGNUS_B_C * g / (MAGNUS_A - g), air_c=air_c, humidity_pct=humidity_pct))


def dew_point_margin_c(substrate_c: float, air_c: float, humidity_pct: float) -> float:
    """How far a substrate stands above the dew point of the air around it.

    Parameters
    ----------
    substrate_c : float
        Temperature of the surface, °C, -45 to 60.
    air_c, humidity_pct : float
        As `dew_point_c`.

    Returns
    -------
    float
        K; negative where water stands on the surface.

    Raises
    ------
    ValueError
        As `dew_point_c`.

    Notes
    -----
    ISO 8502-4 asks for 3 K at least unless otherwise agreed: from memory.

    Examples
    --------
    >>> round(dew_point_margin_c(12.0, 20.0, 50.0), 1)
    2.7
    """
    return between("substrate_c", substrate_c, LOWEST_C, HIGHEST_C) - dew_point_c(air_c, humidity_pct)
