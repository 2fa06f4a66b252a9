"""Surface tension at work: the pressure in a bubble, and whether a droplet of defoamer enters, spreads and bridges.

Tensions are in mN/m, between the liquid and air, the defoamer and air, and the liquid and the defoamer.
"""

from trials.science._refuse import answer, not_negative, positive


def laplace_pa(tension_mn_m: float, diameter_um: float) -> float:
    """Excess pressure in a bubble within a liquid.

    Parameters
    ----------
    tension_mn_m : float
        mN/m, 0 or more.
    diameter_um : float
        µm, above 0.

    Returns
    -------
    float
        Pa. A bubble in air, with its two surfaces, has twice that.

    Raises
    ------
    ValueError
        Where a number is impossible.

    Notes
    -----
    4σ/d, Young and Laplace.

    Examples
    --------
    >>> round(laplace_pa(35.0, 100.0), 6)
    1400.0
    """
    pressure = 4000.0 * not_negative("tension_mn_m", tension_mn_m) / positive("diameter_um", diameter_um)
    return answer(pressure, tension_mn_m=tension_mn_m, diameter_um=diameter_um)


def entering(liquid_mn_m: float, defoamer_mn_m: float, interface_mn_m: float) -> float:
    """Entering coefficient; above 0 a droplet comes through to the surface of the liquid.

    Parameters
    ----------
    liquid_mn_m, defoamer_mn_m : float
        Surface tensions, mN/m, above 0.
    interface_mn_m : float
        Tension between them, mN/m, 0 or more.

    Returns
    -------
    float
        mN/m.

    Raises
    ------
    ValueError
        Where a number is impossible.

    Notes
    -----
    σ_F + σ_FD − σ_D: N. D. Denkov, Langmuir 20 (2004) 9463.

    Examples
    --------
    >>> entering(35.0, 21.0, 5.0)
    19.0
    """
    liquid, defoamer, interface = _tensions(liquid_mn_m, defoamer_mn_m, interface_mn_m)
    return answer(liquid + interface - defoamer, liquid_mn_m=liquid_mn_m, interface_mn_m=interface_mn_m)


def spreading(liquid_mn_m: float, defoamer_mn_m: float, interface_mn_m: float) -> float:
    """Spreading coefficient; above 0 a droplet runs out over the surface of the liquid.

    Parameters
    ----------
    liquid_mn_m, defoamer_mn_m : float
        Surface tensions, mN/m, above 0.
    interface_mn_m : float
        Tension between them, mN/m, 0 or more.

    Returns
    -------
    float
        mN/m.

    Raises
    ------
    ValueError
        Where a number is impossible.

    Notes
    -----
    σ_F − σ_FD − σ_D: N. D. Denkov, Langmuir 20 (2004) 9463.

    Examples
    --------
    >>> spreading(35.0, 21.0, 16.0)
    -2.0
    """
    liquid, defoamer, interface = _tensions(liquid_mn_m, defoamer_mn_m, interface_mn_m)
    return answer(liquid - interface - defoamer, defoamer_mn_m=defoamer_mn_m, interface_mn_m=interface_mn_m)


def bridging(liquid_mn_m: float, defoamer_mn_m: float, interface_mn_m: float) -> float:
    """Bridging coefficient; above 0 a droplet across a lamella is unstable and breaks it.

    Parameters
    ----------
    liquid_mn_m, defoamer_mn_m : float
        Surface tensions, mN/m, above 0.
    interface_mn_m : float
        Tension between them, mN/m, 0 or more.

    Returns
    -------
    float
        (mN/m)². A droplet that does not spread may still bridge.

    Raises
    ------
    ValueError
        Where a number is impossible.

    Notes
    -----
    σ_F² + σ_FD² − σ_D²: N. D. Denkov, Langmuir 20 (2004) 9463.

    Examples
    --------
    >>> bridging(35.0, 21.0, 16.0)
    1040.0
    """
    liquid, defoamer, interface = _tensions(liquid_mn_m, defoamer_mn_m, interface_mn_m)
    squares = liquid * liquid + interface * interface - defoamer * defoamer
    return answer(squares, liquid_mn_m=liquid_mn_m, defoamer_mn_m=defoamer_mn_m, interface_mn_m=interface_mn_m)


def _tensions(liquid_mn_m: float, defoamer_mn_m: float, interface_mn_m: float) -> tuple[float, float, float]:
    return (
        positive("liquid_mn_m", liquid_mn_m),
        positive("defoamer_mn_m", defoamer_mn_m),
        not_negative("interface_mn_m", interface_mn_m),
    )
