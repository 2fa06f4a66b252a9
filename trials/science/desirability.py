"""One mark out of several properties, after G. Derringer and R. Suich, J. Quality Technology 12 (1980) 214.

Each property gives a part between 0 (unacceptable) and 1 (as good as asked for); the whole is their geometric mean,
so that one unacceptable property cannot be bought off by the others. A weight above 1 asks for values close to the
target, one below 1 is content with less. NIST/SEMATECH e-Handbook, 5.5.3.2.2.
"""

import math
from collections.abc import Sequence

from trials.science._refuse import answer, finite, fraction, not_negative, numbers, positive, same_length, total


def larger(y: float, low: float, target: float, *, weight: float = 1.0) -> float:
    """Part for a property that should be large.

    Parameters
    ----------
    y : float
        The value found.
    low, target : float
        Unacceptable at and below ``low``, as good as asked for from ``target``, which lies above it.
    weight : float
        Above 0.

    Returns
    -------
    float
        0 to 1.

    Raises
    ------
    ValueError
        Where a number is impossible or the limits do not rise.

    Notes
    -----
    ((y − low)/(target − low))^weight.

    Examples
    --------
    >>> larger(129.5, 120.0, 170.0)
    0.19
    """
    bottom, top = _rising("low", low, "target", target)
    return _part(finite("y", y), bottom, top, weight=positive("weight", weight))


def smaller(y: float, target: float, high: float, *, weight: float = 1.0) -> float:
    """Part for a property that should be small.

    Parameters
    ----------
    y : float
        The value found.
    target, high : float
        As good as asked for up to ``target``, unacceptable from ``high``, which lies above it.
    weight : float
        Above 0.

    Returns
    -------
    float
        0 to 1.

    Raises
    ------
    ValueError
        Where a number is impossible or the limits do not rise.

    Notes
    -----
    ((high − y)/(high − target))^weight.

    Examples
    --------
    >>> smaller(4.0, 2.0, 10.0)
    0.75
    """
    best, worst = _rising("target", target, "high", high)
    return _part(finite("y", y), worst, best, weight=positive("weight", weight))


def target(
    y: float, low: float, target: float, high: float, *, low_weight: float = 1.0, high_weight: float = 1.0
) -> float:
    """Part for a property that should meet a value.

    Parameters
    ----------
    y : float
        The value found.
    low, target, high : float
        Rising; unacceptable at both ends and beyond.
    low_weight, high_weight : float
        Above 0, for each side.

    Returns
    -------
    float
        0 to 1.

    Raises
    ------
    ValueError
        Where a number is impossible or the limits do not rise.

    Notes
    -----
    `larger` up to the target and `smaller` beyond.

    Examples
    --------
    >>> round(target(465.7, 400.0, 500.0, 600.0), 3)
    0.657
    """
    bottom, best = _rising("low", low, "target", target)
    _, top = _rising("target", target, "high", high)
    below, beyond = positive("low_weight", low_weight), positive("high_weight", high_weight)
    value = finite("y", y)
    if value <= best:
        return _part(value, bottom, best, weight=below)
    return _part(value, top, best, weight=beyond)


def overall(parts: Sequence[float], *, weights: Sequence[float] | None = None) -> float:
    """Overall mark, the weighted geometric mean of the parts.

    Parameters
    ----------
    parts : sequence of float, n
        0 to 1 each.
    weights : sequence of float, n, optional
        0 or more, not all 0; equal where not given. A weight of 0 leaves its part out.

    Returns
    -------
    float
        0 to 1; 0 where any part that counts is 0.

    Raises
    ------
    ValueError
        Where a number is impossible or the columns differ in length.

    Notes
    -----
    (Π dᵢ^wᵢ)^(1/Σw).

    Examples
    --------
    >>> round(overall([0.19, 1.0, 0.657, 0.9333]), 3)
    0.584
    """
    found = numbers("parts", parts, fraction)
    shares = [1.0] * len(found) if weights is None else numbers("weights", weights, not_negative)
    same_length(parts=found, weights=shares)
    whole = total("weights", shares)
    counted = [(part, share / whole) for part, share in zip(found, shares, strict=True) if share > 0.0]
    if any(part == 0.0 for part, _ in counted):
        return 0.0
    return min(1.0, math.exp(sum(share * math.log(part) for part, share in counted)))


def _part(y: float, worst: float, best: float, *, weight: float) -> float:
    share = (y - worst) / (best - worst)
    return min(1.0, max(0.0, share)) ** weight


def _rising(low_name: str, low: float, high_name: str, high: float) -> tuple[float, float]:
    bottom, top = finite(low_name, low), finite(high_name, high)
    if bottom >= top:
        raise ValueError(f"{high_name} must lie above {low_name} ({low}); got {high}")
    answer(top - bottom, **{low_name: low, high_name: high})
    return bottom, top
