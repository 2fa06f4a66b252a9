"""Air in a liquid, from densities: how much, how sure, how fast it leaves, and what a defoamer achieves.

Densities are in g/mL. The air-free density comes from the same liquid under vacuum, or from the recipe; a
mistake in it moves every air content by as much.
"""

import math
from collections.abc import Sequence
from dataclasses import dataclass

from trials.science._refuse import answer, finite, not_negative, numbers, percent, positive, same_length
from trials.science.pyknometer import pyknometer_density_g_ml, pyknometer_ml, water_g_ml

__all__ = [
    "Release",
    "air_pct",
    "air_pct_uncertainty",
    "defoaming_efficiency_pct",
    "density_at_air_g_ml",
    "minutes_to",
    "pyknometer_density_g_ml",
    "pyknometer_ml",
    "release",
    "retention_pct",
    "water_g_ml",
]

NOISE_PCT = 0.5
"""Per cent that two weighings may put a liquid above its own air-free density. Common practice, no source."""


@dataclass(frozen=True, slots=True)
class Release:
    """First-order release of air. ``half_life_min`` is ``None`` where the air does not leave."""

    start_pct: float
    rate_per_min: float
    half_life_min: float | None
    r_squared: float | None


def air_pct(density_g_ml: float, air_free_g_ml: float, *, air_g_ml: float = 0.0) -> float:
    """Air content by volume.

    Parameters
    ----------
    density_g_ml : float
        With its air, g/mL, above 0.
    air_free_g_ml : float
        Without, g/mL, above 0.
    air_g_ml : float
        Density of the air itself, g/mL; 0 neglects its mass, 0.0012 counts it.

    Returns
    -------
    float
        Per cent by volume. Slightly below 0, never under −0.5, where the noise of weighing puts the liquid
        above its air-free density: such a reading is kept, since leaving it out would bias the mean.

    Raises
    ------
    ValueError
        Where a number is impossible, or the density exceeds the air-free one by more than noise: then that
        was not free of air, or the two are not the same liquid.

    Notes
    -----
    (ρ₀ − ρ)/(ρ₀ − ρ_air), the balance of volumes.

    Examples
    --------
    >>> round(air_pct(1.180, 1.250), 2)
    5.6
    """
    density, free = _densities(density_g_ml, air_free_g_ml)
    air = not_negative("air_g_ml", air_g_ml)
    if air >= min(density, free):
        raise ValueError(
            f"air_g_ml must be below density_g_ml ({density_g_ml}) and air_free_g_ml ({air_free_g_ml});"
            f" got {air_g_ml}"
        )
    return (free - density) / (free - air) * 100.0


def air_pct_uncertainty(density_g_ml: float, air_free_g_ml: float, u_density: float, u_air_free: float) -> float:
    """Standard uncertainty of an air content, the mass of air neglected.

    Parameters
    ----------
    density_g_ml, air_free_g_ml : float
        g/mL, above 0.
    u_density, u_air_free : float
        Their standard uncertainties, g/mL, 0 or more, taken as independent.

    Returns
    -------
    float
        Per cent by volume (absolute).

    Raises
    ------
    ValueError
        As `air_pct`.

    Notes
    -----
    First-order propagation (JCGM 100) of 1 − ρ/ρ₀.

    Examples
    --------
    >>> round(air_pct_uncertainty(1.180, 1.250, 0.002, 0.001), 2)
    0.18
    """
    density, free = _densities(density_g_ml, air_free_g_ml)
    from_density = not_negative("u_density", u_density) / free
    from_free = not_negative("u_air_free", u_air_free) / free * (density / free)
    both = 100.0 * math.hypot(from_density, from_free)
    return answer(both, u_density=u_density, u_air_free=u_air_free)


def density_at_air_g_ml(air_free_g_ml: float, air_pct: float) -> float:
    """Density with a given share of air, its mass neglected.

    Parameters
    ----------
    air_free_g_ml : float
        g/mL, above 0.
    air_pct : float
        Per cent by volume, 0 to 100.

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
    ρ₀·(1 − φ); ASTM D3427 takes 0.2 per cent, a factor of 0.998, as the end of air release.

    Examples
    --------
    >>> density_at_air_g_ml(1.250, 0.2)
    1.2475
    """
    return positive("air_free_g_ml", air_free_g_ml) * (1.0 - percent("air_pct", air_pct) / 100.0)


def defoaming_efficiency_pct(density_g_ml: float, blank_g_ml: float, air_free_g_ml: float) -> float:
    """Share of the blank's air that the additive keeps out.

    Parameters
    ----------
    density_g_ml, blank_g_ml : float
        With additive, and the blank of the same session, g/mL, above 0.
    air_free_g_ml : float
        g/mL, above the blank.

    Returns
    -------
    float
        Per cent: 0 is the blank, 100 is free of air, negative is worse than the blank.

    Raises
    ------
    ValueError
        Where a number is impossible or the blank holds no air to be removed.

    Notes
    -----
    (ρ − ρ_blank)/(ρ₀ − ρ_blank), common in trade guides.

    Examples
    --------
    >>> round(defoaming_efficiency_pct(1.20, 1.05, 1.25), 6)
    75.0
    """
    density, free = _densities(density_g_ml, air_free_g_ml)
    blank = positive("blank_g_ml", blank_g_ml)
    if blank >= free:
        raise ValueError(f"blank_g_ml must be below air_free_g_ml ({air_free_g_ml}); got {blank_g_ml}")
    return answer((density - blank) / (free - blank) * 100.0, blank_g_ml=blank_g_ml)


def retention_pct(fresh_pct: float, stored_pct: float) -> float:
    """How much of an effect is left after storage.

    Parameters
    ----------
    fresh_pct : float
        Effect when fresh, per cent, above 0.
    stored_pct : float
        Effect after storage against a blank stored alike, per cent; negative where it has turned.

    Returns
    -------
    float
        Per cent of the fresh effect.

    Raises
    ------
    ValueError
        Where a number is impossible: no fresh effect, nothing to retain.

    Notes
    -----
    Plain arithmetic.

    Examples
    --------
    >>> round(retention_pct(75.0, 53.85), 1)
    71.8
    """
    kept = finite("stored_pct", stored_pct) / positive("fresh_pct", fresh_pct) * 100.0
    return answer(kept, fresh_pct=fresh_pct, stored_pct=stored_pct)


def release(minutes: Sequence[float], air_pct: Sequence[float]) -> Release:
    """First-order release fitted to readings of one cup.

    Parameters
    ----------
    minutes : sequence of float, n of at least 2
        Time since stirring stopped, 0 or more, not all equal.
    air_pct : sequence of float, n
        Per cent by volume, above 0 up to 100. A reading of no air left has no logarithm and is left out
        before.

    Returns
    -------
    Release
        ``r_squared`` is that of the logarithms, and ``None`` where they do not vary.

    Raises
    ------
    ValueError
        Where a number is impossible, or all readings are of the same minute.

    Notes
    -----
    Least squares of ln(air) on time. Real release slows down as the large bubbles go first, so the half-life
    holds over the span that was read.

    Examples
    --------
    >>> cup = release([0.0, 30.0], [5.6, 2.8])
    >>> round(cup.half_life_min, 6)
    30.0
    """
    times = numbers("minutes", minutes, not_negative, min_size=2)
    logs = [math.log(air) for air in numbers("air_pct", air_pct, _some_air, min_size=2)]
    same_length(minutes=times, air_pct=logs)
    mean_time = answer(sum(times) / len(times), minutes=minutes)
    mean_log = sum(logs) / len(logs)
    spread = answer(sum((t - mean_time) * (t - mean_time) for t in times), minutes=minutes)
    if spread == 0.0:
        raise ValueError(f"minutes must not all be equal; got {minutes}")
    shared = sum((t - mean_time) * (y - mean_log) for t, y in zip(times, logs, strict=True))
    total = sum((y - mean_log) * (y - mean_log) for y in logs)
    rate = answer(-shared / spread, minutes=minutes)
    start = answer(_exp(mean_log + rate * mean_time), minutes=minutes, air_pct=air_pct)
    return Release(
        start_pct=start,
        rate_per_min=rate,
        half_life_min=_half_life_min(rate),
        r_squared=shared / spread * (shared / total) if total > 0.0 else None,
    )


def minutes_to(release: Release, air_pct: float) -> float | None:
    """Minutes until a share of air is reached.

    Parameters
    ----------
    release : Release
    air_pct : float
        Per cent by volume, 0 to 100.

    Returns
    -------
    float or None
        0 where the start is below it already; ``None`` where it is never reached.

    Raises
    ------
    ValueError
        Where a number is impossible.

    Notes
    -----
    ln(start/target)/rate.

    Examples
    --------
    >>> cup = release([0.0, 30.0], [5.6, 2.8])
    >>> round(minutes_to(cup, 0.2), 1)
    144.2
    """
    target = percent("air_pct", air_pct)
    if target >= release.start_pct:
        return 0.0
    if target == 0.0 or release.rate_per_min <= 0.0:
        return None
    minutes = (math.log(release.start_pct) - math.log(target)) / release.rate_per_min
    return minutes if math.isfinite(minutes) else None


def _densities(density_g_ml: float, air_free_g_ml: float) -> tuple[float, float]:
    density, free = positive("density_g_ml", density_g_ml), positive("air_free_g_ml", air_free_g_ml)
    if density > free * (1.0 + NOISE_PCT / 100.0):
        raise ValueError(
            f"density_g_ml must not exceed air_free_g_ml ({air_free_g_ml}) by more than {NOISE_PCT} %;"
            f" got {density_g_ml}"
        )
    return density, free


def _some_air(name: str, value: object) -> float:
    return positive(name, percent(name, value))


def _half_life_min(rate_per_min: float) -> float | None:
    half_life = math.log(2.0) / rate_per_min if rate_per_min > 0.0 else math.inf
    return half_life if math.isfinite(half_life) else None


def _exp(exponent: float) -> float:
    try:
        return math.exp(exponent)
    except OverflowError:
        return math.inf
