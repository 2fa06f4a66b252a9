"""Shear of a dissolver: tip speed, scale, power and what a batch has been through.

Guides (common in dissolver makers' primers): the disc about a third of the vessel, 20 m/s and more to grind,
2 to 6 m/s to let down; at most 2 to 3 m/s for a gentle post-addition is common practice, no source. Most
defoamers need real shear to be dispersed, or they crater; too much of it can weaken them (common practice,
no source).
"""

import math
from dataclasses import dataclass

from trials.science._refuse import answer, not_negative, one_of, positive

SCALE_UP_RULES = ("tip speed", "power per volume")
TURBULENT_REYNOLDS = 1e4
USUAL_BLADE_RATIO = (0.25, 0.5)


@dataclass(frozen=True, slots=True)
class Power:
    """Power drawn and torque. Where ``turbulent`` is false a constant power number does not hold."""

    watts: float
    torque_n_m: float
    reynolds: float
    turbulent: bool


def tip_speed_m_s(blade_mm: float, rpm: float) -> float:
    """Speed of the blade's edge.

    Parameters
    ----------
    blade_mm : float
        Diameter of the blade, mm, above 0.
    rpm : float
        Turns per minute, 0 or more.

    Returns
    -------
    float
        m/s.

    Raises
    ------
    ValueError
        Where a number is impossible.

    Notes
    -----
    π·D·n, in feet and inches 0.262·D·rpm: dissolver maker's primer.

    Examples
    --------
    >>> round(tip_speed_m_s(40.0, 2000.0), 4)
    4.1888
    """
    speed = math.pi * positive("blade_mm", blade_mm) / 1000.0 * not_negative("rpm", rpm) / 60.0
    return answer(speed, blade_mm=blade_mm, rpm=rpm)


def rpm_for_tip_speed(tip_speed_m_s: float, blade_mm: float) -> float:
    """Turns per minute that give a tip speed: the inverse of `tip_speed_m_s`.

    Parameters
    ----------
    tip_speed_m_s : float
        m/s, 0 or more.
    blade_mm : float
        mm, above 0.

    Returns
    -------
    float
        Turns per minute.

    Raises
    ------
    ValueError
        Where a number is impossible.

    Notes
    -----
    v / (π·D).

    Examples
    --------
    >>> round(rpm_for_tip_speed(5.0, 40.0), 1)
    2387.3
    """
    rpm = not_negative("tip_speed_m_s", tip_speed_m_s) * 60_000.0 / math.pi / positive("blade_mm", blade_mm)
    return answer(rpm, tip_speed_m_s=tip_speed_m_s, blade_mm=blade_mm)


def scale_up_rpm(blade_mm: float, rpm: float, to_blade_mm: float, *, rule: str = "tip speed") -> float:
    """Turns per minute in a larger or smaller vessel of the same shape.

    Parameters
    ----------
    blade_mm, to_blade_mm : float
        Diameters of the two blades, mm, above 0.
    rpm : float
        Turns per minute of the first, 0 or more.
    rule : {"tip speed", "power per volume"}
        What is kept equal. The second assumes turbulent flow, where power goes with n³D⁵.

    Returns
    -------
    float
        Turns per minute of the second.

    Raises
    ------
    ValueError
        Where a number is impossible or the rule unknown.

    Notes
    -----
    n·D constant, or n³·D² constant: Z. Berk, Food Process Engineering and Technology, chapter 7. Dissolvers
    are usually scaled at equal tip speed.

    Examples
    --------
    >>> scale_up_rpm(40.0, 3000.0, 300.0)
    400.0
    """
    one_of("rule", rule, SCALE_UP_RULES)
    turns = not_negative("rpm", rpm)
    ratio = positive("blade_mm", blade_mm) / positive("to_blade_mm", to_blade_mm)
    scaled = turns * (ratio if rule == "tip speed" else ratio ** (2.0 / 3.0))
    return answer(scaled, blade_mm=blade_mm, rpm=rpm, to_blade_mm=to_blade_mm)


def blade_ratio(blade_mm: float, vessel_mm: float) -> float:
    """Blade over vessel diameter.

    Parameters
    ----------
    blade_mm, vessel_mm : float
        Diameters, mm, above 0, the blade smaller than the vessel.

    Returns
    -------
    float
        Above 0, below 1.

    Raises
    ------
    ValueError
        Where a number is impossible or the blade does not fit.

    Notes
    -----
    About a third is the guide of dissolver makers.

    Examples
    --------
    >>> round(blade_ratio(60.0, 180.0), 3)
    0.333
    """
    blade, vessel = positive("blade_mm", blade_mm), positive("vessel_mm", vessel_mm)
    if blade >= vessel:
        raise ValueError(f"blade_mm must be smaller than vessel_mm ({vessel_mm}); got {blade_mm}")
    return blade / vessel


def usual_blade(blade_mm: float, vessel_mm: float) -> bool:
    """Whether the blade is of usual size for the vessel; else a page should say so.

    Parameters
    ----------
    blade_mm, vessel_mm : float
        Diameters, mm, above 0, the blade smaller than the vessel.

    Returns
    -------
    bool
        From a quarter to half of the vessel.

    Raises
    ------
    ValueError
        As `blade_ratio`.

    Notes
    -----
    A third, with some room on both sides: common practice, no source.

    Examples
    --------
    >>> usual_blade(60.0, 180.0), usual_blade(60.0, 90.0)
    (True, False)
    """
    low, high = USUAL_BLADE_RATIO
    return low <= blade_ratio(blade_mm, vessel_mm) <= high


def reynolds(blade_mm: float, rpm: float, density_g_ml: float, viscosity_pa_s: float) -> float:
    """Reynolds number of stirring.

    Parameters
    ----------
    blade_mm : float
        mm, above 0.
    rpm : float
        Turns per minute, 0 or more.
    density_g_ml : float
        g/mL, above 0.
    viscosity_pa_s : float
        Pa·s at the shear of the blade, above 0.

    Returns
    -------
    float

    Raises
    ------
    ValueError
        Where a number is impossible.

    Notes
    -----
    ρ·n·D²/µ: Z. Berk, Food Process Engineering and Technology, equation 7.2.

    Examples
    --------
    >>> round(reynolds(50.0, 3000.0, 1.25, 2.0), 3)
    78.125
    """
    blade = positive("blade_mm", blade_mm) / 1000.0
    turns = not_negative("rpm", rpm) / 60.0
    density = 1000.0 * positive("density_g_ml", density_g_ml)
    number = density * turns * blade * blade / positive("viscosity_pa_s", viscosity_pa_s)
    return answer(number, blade_mm=blade_mm, rpm=rpm, viscosity_pa_s=viscosity_pa_s)


def power(blade_mm: float, rpm: float, density_g_ml: float, viscosity_pa_s: float, *, power_number: float) -> Power:
    """Power and torque from a power number.

    Parameters
    ----------
    blade_mm : float
        mm, above 0.
    rpm : float
        Turns per minute, above 0.
    density_g_ml : float
        g/mL, above 0.
    viscosity_pa_s : float
        Pa·s, above 0.
    power_number : float
        Above 0. A toothed disc has roughly 0.1 to 0.4 in turbulent flow (from memory).

    Returns
    -------
    Power
        ``turbulent`` is false below a Reynolds number of 10 000: there the power number is not constant, and
        the figure is a guide at best.

    Raises
    ------
    ValueError
        Where a number is impossible.

    Notes
    -----
    P = N_p·ρ·n³·D⁵: Z. Berk, Food Process Engineering and Technology, equation 7.3.

    Examples
    --------
    >>> stirred = power(50.0, 3000.0, 1.25, 2.0, power_number=0.35)
    >>> round(stirred.watts, 3), stirred.turbulent
    (17.09, False)
    """
    number = reynolds(blade_mm, positive("rpm", rpm), density_g_ml, viscosity_pa_s)
    blade, turns = float(blade_mm) / 1000.0, float(rpm) / 60.0
    torque = positive("power_number", power_number) * 1000.0 * float(density_g_ml) / (2.0 * math.pi)
    for factor in (turns, turns, blade, blade, blade, blade, blade):
        torque *= factor
    given = {"blade_mm": blade_mm, "rpm": rpm, "density_g_ml": density_g_ml, "power_number": power_number}
    return Power(
        watts=answer(torque * 2.0 * math.pi * turns, **given),
        torque_n_m=answer(torque, **given),
        reynolds=number,
        turbulent=number >= TURBULENT_REYNOLDS,
    )


def specific_energy_kj_kg(watts: float, minutes: float, batch_kg: float) -> float:
    """Energy put into a kilogram of batch.

    Parameters
    ----------
    watts, minutes : float
        Power drawn and time, 0 or more.
    batch_kg : float
        kg, above 0.

    Returns
    -------
    float
        kJ/kg.

    Raises
    ------
    ValueError
        Where a number is impossible.

    Notes
    -----
    P·t/m.

    Examples
    --------
    >>> round(specific_energy_kj_kg(17.09, 10.0, 0.4), 2)
    25.63
    """
    joules = not_negative("watts", watts) * not_negative("minutes", minutes) * 60.0
    energy = joules / 1000.0 / positive("batch_kg", batch_kg)
    return answer(energy, watts=watts, minutes=minutes, batch_kg=batch_kg)


def gap_shear_rate_s(tip_speed_m_s: float, gap_mm: float) -> float:
    """Shear rate between the blade's edge and a wall.

    Parameters
    ----------
    tip_speed_m_s : float
        m/s, 0 or more.
    gap_mm : float
        mm, above 0.

    Returns
    -------
    float
        1/s.

    Raises
    ------
    ValueError
        Where a number is impossible.

    Notes
    -----
    Speed over gap, a plane estimate.

    Examples
    --------
    >>> round(gap_shear_rate_s(7.854, 25.0), 1)
    314.2
    """
    rate = not_negative("tip_speed_m_s", tip_speed_m_s) * 1000.0 / positive("gap_mm", gap_mm)
    return answer(rate, tip_speed_m_s=tip_speed_m_s, gap_mm=gap_mm)


def metzner_otto_s(rpm: float, *, k: float = 11.5) -> float:
    """Mean shear rate around a stirrer.

    Parameters
    ----------
    rpm : float
        Turns per minute, 0 or more.
    k : float
        Constant of the stirrer, above 0: 10 to 13 for turbines, 11.5 for a Rushton turbine.

    Returns
    -------
    float
        1/s.

    Raises
    ------
    ValueError
        Where a number is impossible.

    Notes
    -----
    k·n, after Metzner and Otto (AIChE Journal 3, 1957, 3; citation from memory).

    Examples
    --------
    >>> metzner_otto_s(3000.0)
    575.0
    """
    rate = positive("k", k) * not_negative("rpm", rpm) / 60.0
    return answer(rate, rpm=rpm, k=k)
