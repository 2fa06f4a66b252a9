"""Bubbles on their way up: rise, escape before gel, what a yield value holds, and the pressure within.

A bubble in a coating is covered by surfactant and moves like a rigid sphere; a clean one would be half as fast again.
The film is taken as the whole way to go, from the bottom up.

The growth of viscosity belongs to the film. A pot life is measured in a can, which keeps its heat: the open time of a
thin film is longer, and the two must not be exchanged.
"""

import math
from dataclasses import dataclass

from fluids.drag import v_terminal
from fluids.numerics import UnconvergedError

from trials.science._refuse import answer, not_negative, positive
from trials.science.surface import bridging, entering, laplace_pa, spreading

__all__ = [
    "Escape",
    "bridging",
    "entering",
    "escape",
    "growth_from_doubling_s",
    "held_by_yield_um",
    "laplace_pa",
    "rise_m_s",
    "risen_um",
    "smallest_escaping_um",
    "spreading",
    "stokes_m_s",
]

GRAVITY_M_S2 = 9.80665
GAS_G_ML = 0.0012
BERIS_LIMIT = 0.143


@dataclass(frozen=True, slots=True)
class Escape:
    """``seconds`` to the surface, though they may lie beyond gel; ``None`` where it never gets there.

    ``risen_by_gel_um`` is ``None`` where nothing bounds it: no gel and no growth of viscosity.
    """

    seconds: float | None
    risen_by_gel_um: float | None
    escapes: bool


def stokes_m_s(
    diameter_um: float,
    viscosity_pa_s: float,
    density_g_ml: float,
    *,
    gas_g_ml: float = GAS_G_ML,
    clean: bool = False,
    gas_viscosity_pa_s: float = 1.8e-5,
) -> float:
    """Rise of a small bubble.

    Parameters
    ----------
    diameter_um : float
        µm, above 0.
    viscosity_pa_s : float
        Of the liquid, Pa·s, above 0.
    density_g_ml : float
        Of the liquid, g/mL, above that of the gas.
    gas_g_ml : float
        g/mL, 0 or more.
    clean : bool
        Mobile surface, free of surfactant (Hadamard and Rybczynski); else a rigid one (Stokes).
    gas_viscosity_pa_s : float
        Pa·s, 0 or more; counts for a clean surface only.

    Returns
    -------
    float
        m/s; holds at Reynolds numbers below about 0.1, see `rise_m_s`.

    Raises
    ------
    ValueError
        Where a number is impossible or the gas is not lighter than the liquid.

    Notes
    -----
    Δρ·g·d²/(18µ), for a clean surface times 3(1 + λ)/(2 + 3λ) with λ the ratio of viscosities: textbooks of
    hydrodynamics.

    Examples
    --------
    >>> round(stokes_m_s(100.0, 1.0, 1.1) * 1e6, 4)
    5.9864
    >>> round(stokes_m_s(100.0, 1.0, 1.1, clean=True) * 1e6, 4)
    8.9795
    """
    diameter = positive("diameter_um", diameter_um) * 1e-6
    viscosity = positive("viscosity_pa_s", viscosity_pa_s)
    ratio = not_negative("gas_viscosity_pa_s", gas_viscosity_pa_s) / viscosity
    lift = _lift_pa_m(density_g_ml, gas_g_ml)
    mobile = _mobility(ratio) if clean else 1.0
    speed = mobile * lift / 18.0 / viscosity * diameter * diameter
    return answer(speed, diameter_um=diameter_um, viscosity_pa_s=viscosity_pa_s, density_g_ml=density_g_ml)


def rise_m_s(diameter_um: float, viscosity_pa_s: float, density_g_ml: float, *, gas_g_ml: float = GAS_G_ML) -> float:
    """Rise of a rigid bubble with the drag of its own speed.

    Parameters
    ----------
    diameter_um : float
        µm, above 0.
    viscosity_pa_s : float
        Of the liquid, Pa·s, above 0.
    density_g_ml : float
        Of the liquid, g/mL, above that of the gas.
    gas_g_ml : float
        g/mL, 0 or more.

    Returns
    -------
    float
        m/s.

    Raises
    ------
    ValueError
        Where a number is impossible or the speed lies outside the drag correlation (Reynolds numbers to 1e6).

    Notes
    -----
    `fluids.v_terminal` with its drag of a sphere. It is asked about a sphere as much heavier than the liquid as
    the bubble is lighter: asked about a lighter one it never leaves Stokes, as it tests a signed Reynolds number.

    Examples
    --------
    >>> round(rise_m_s(3000.0, 0.1, 1.1) * 1000.0, 3)
    46.411
    """
    diameter = positive("diameter_um", diameter_um) * 1e-6
    viscosity = positive("viscosity_pa_s", viscosity_pa_s)
    lift = _lift_pa_m(density_g_ml, gas_g_ml)
    liquid = 1000.0 * float(density_g_ml)
    given = {"diameter_um": diameter_um, "viscosity_pa_s": viscosity_pa_s, "density_g_ml": density_g_ml}
    try:
        speed = v_terminal(diameter, liquid + lift / GRAVITY_M_S2, liquid, viscosity)
    except (ArithmeticError, ValueError, TypeError, UnconvergedError):
        speed = math.nan
    return answer(speed if isinstance(speed, float) else math.nan, **given)


def growth_from_doubling_s(doubling_s: float) -> float:
    """E-folding time of viscosity from its doubling time.

    Parameters
    ----------
    doubling_s : float
        s, above 0; ``inf`` for a viscosity that stays.

    Returns
    -------
    float
        s.

    Raises
    ------
    ValueError
        Where the time is impossible.

    Notes
    -----
    t₂/ln 2.

    Examples
    --------
    >>> round(growth_from_doubling_s(1200.0), 2)
    1731.23
    """
    doubling = positive("doubling_s", doubling_s, may_be_inf=True)
    growth = doubling / math.log(2.0)
    return growth if math.isinf(doubling) else answer(growth, doubling_s=doubling_s)


def risen_um(
    seconds: float,
    diameter_um: float,
    viscosity_pa_s: float,
    density_g_ml: float,
    *,
    growth_s: float = math.inf,
) -> float:
    """Way that a bubble has risen while viscosity grows.

    Parameters
    ----------
    seconds : float
        s, 0 or more.
    diameter_um, viscosity_pa_s, density_g_ml : float
        As `stokes_m_s`; the viscosity is that at the start.
    growth_s : float
        E-folding time of viscosity, s, above 0; ``inf`` where it stays.

    Returns
    -------
    float
        µm, in a liquid without bound above.

    Raises
    ------
    ValueError
        Where a number is impossible.

    Notes
    -----
    v₀·τ·(1 − e^(−t/τ)), Stokes' speed with µ = µ₀·e^(t/τ) integrated over time.

    Examples
    --------
    >>> round(risen_um(2400.0, 100.0, 0.8, 1.1, growth_s=1200.0) / 1000.0, 4)
    7.7644
    """
    speed = 1e6 * stokes_m_s(diameter_um, viscosity_pa_s, density_g_ml)
    span = _span_s(not_negative("seconds", seconds), positive("growth_s", growth_s, may_be_inf=True))
    return answer(speed * span, seconds=seconds, diameter_um=diameter_um, viscosity_pa_s=viscosity_pa_s)


def escape(
    diameter_um: float,
    film_um: float,
    viscosity_pa_s: float,
    density_g_ml: float,
    *,
    growth_s: float,
    gel_s: float,
) -> Escape:
    """Whether a bubble gets out of the film before it gels.

    Parameters
    ----------
    diameter_um, viscosity_pa_s, density_g_ml : float
        As `stokes_m_s`; the viscosity is that at the start.
    film_um : float
        Wet film, µm, above 0: the way to go.
    growth_s, gel_s : float
        E-folding time of viscosity and time to gel in the film, s, above 0; ``inf`` where they never come.

    Returns
    -------
    Escape

    Raises
    ------
    ValueError
        Where a number is impossible.

    Notes
    -----
    −τ·ln(1 − h/(v₀·τ)) to cross h, never where h is v₀·τ or more. Stokes' speed.

    Examples
    --------
    >>> film = escape(100.0, 2000.0, 0.8, 1.1, growth_s=1200.0, gel_s=2400.0)
    >>> round(film.seconds, 2), film.escapes
    (302.36, True)
    """
    speed = 1e6 * stokes_m_s(diameter_um, viscosity_pa_s, density_g_ml)
    way = positive("film_um", film_um)
    growth = positive("growth_s", growth_s, may_be_inf=True)
    gel = positive("gel_s", gel_s, may_be_inf=True)
    seconds = _crossing_s(way, speed, growth)
    return Escape(
        seconds=seconds,
        risen_by_gel_um=_finite_or_none(speed * _span_s(gel, growth)),
        escapes=seconds is not None and seconds <= gel,
    )


def smallest_escaping_um(
    film_um: float, viscosity_pa_s: float, density_g_ml: float, *, growth_s: float, gel_s: float
) -> float | None:
    """Smallest bubble that gets out of the film by gel.

    Parameters
    ----------
    film_um, viscosity_pa_s, density_g_ml, growth_s, gel_s : float
        As `escape`.

    Returns
    -------
    float or None
        µm; ``None`` where nothing bounds it: given for ever at one viscosity, any bubble escapes.

    Raises
    ------
    ValueError
        Where a number is impossible.

    Notes
    -----
    Stokes' speed with growing viscosity, solved for the diameter.

    Examples
    --------
    >>> round(smallest_escaping_um(2000.0, 0.8, 1.1, growth_s=1200.0, gel_s=2400.0), 3)
    50.753
    """
    way = positive("film_um", film_um)
    growth = positive("growth_s", growth_s, may_be_inf=True)
    span = _span_s(positive("gel_s", gel_s, may_be_inf=True), growth)
    of_one_um = 1e6 * stokes_m_s(1.0, viscosity_pa_s, density_g_ml)
    if math.isinf(span):
        return None
    given = {"film_um": film_um, "viscosity_pa_s": viscosity_pa_s, "growth_s": growth_s, "gel_s": gel_s}
    return answer(math.sqrt(way / span / of_one_um) if span > 0.0 and of_one_um > 0.0 else math.inf, **given)


def held_by_yield_um(yield_pa: float, density_g_ml: float) -> float:
    """Largest sphere that a yield value holds for good.

    Parameters
    ----------
    yield_pa : float
        Yield value of the liquid, Pa, 0 or more.
    density_g_ml : float
        Of the liquid, g/mL, above that of air.

    Returns
    -------
    float
        µm. All smaller bubbles stay, however long the film is open; a soft bubble comes free a little earlier.

    Raises
    ------
    ValueError
        Where a number is impossible.

    Notes
    -----
    A. N. Beris et al., J. Fluid Mech. 158 (1985) 219: a rigid sphere moves only where 2π·r²·τ_y over its buoyancy
    is below 0.143 (limit read in the abstract, its definition from memory), so that d = 3·τ_y/(0.143·Δρ·g).

    Examples
    --------
    >>> round(held_by_yield_um(0.1, 1.1))
    195
    """
    stress = not_negative("yield_pa", yield_pa)
    diameter = 3.0 * stress / BERIS_LIMIT / _lift_pa_m(density_g_ml, GAS_G_ML) * 1e6
    return answer(diameter, yield_pa=yield_pa, density_g_ml=density_g_ml)


def _lift_pa_m(density_g_ml: float, gas_g_ml: float) -> float:
    """Buoyancy per volume, N/m³."""
    liquid, gas = positive("density_g_ml", density_g_ml), not_negative("gas_g_ml", gas_g_ml)
    if gas >= liquid:
        raise ValueError(f"density_g_ml must exceed gas_g_ml ({gas_g_ml}); got {density_g_ml}")
    return answer(1000.0 * (liquid - gas) * GRAVITY_M_S2, density_g_ml=density_g_ml)


def _mobility(ratio: float) -> float:
    """3(1 + λ)/(2 + 3λ), turned so that it stays finite where λ, gas over liquid, does not."""
    return 1.5 - 1.5 / (3.0 + 2.0 / ratio) if ratio > 0.0 else 1.5


def _span_s(seconds: float, growth_s: float) -> float:
    """Seconds at the first viscosity that would bring a bubble as far."""
    if math.isinf(growth_s):
        return seconds
    return -growth_s * math.expm1(-seconds / growth_s)


def _crossing_s(way_um: float, speed_um_s: float, growth_s: float) -> float | None:
    if speed_um_s == 0.0:
        return None
    steady = way_um / speed_um_s
    if math.isinf(growth_s):
        return _finite_or_none(steady)
    return _finite_or_none(-growth_s * math.log1p(-steady / growth_s)) if steady < growth_s else None


def _finite_or_none(value: float) -> float | None:
    return value if math.isfinite(value) else None
