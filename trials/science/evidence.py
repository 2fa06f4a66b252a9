"""Differences from several series, pooled: what a candidate does in bases like this, and how much that varies."""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
import scipy  # its submodules load on first use, so that the web server starts without them

from trials.science._groups import as_values
from trials.science._refuse import between, finite_array, same_length


@dataclass(frozen=True, slots=True)
class Pooled:
    """``low`` and ``high`` hold for the mean over series, the prediction for one new series.

    ``tau2`` is the variance between series in squared units of the effects, ``i2`` its share (0 to 1) of the
    whole, ``q`` Cochran's heterogeneity with its ``p_q``, ``k`` the number of series. None where k is too small.
    """

    estimate: float
    low: float | None
    high: float | None
    prediction_low: float | None
    prediction_high: float | None
    tau2: float | None
    i2: float | None
    q: float | None
    p_q: float | None
    k: int
    note: str


def pool(effects: Sequence[float], variances: Sequence[float], *, level: float = 0.95) -> Pooled:
    """Random-effects mean: variance between series after Paule and Mandel, interval after Hartung and Knapp.

    Parameters
    ----------
    effects : array_like, shape (k,)
        Difference against the blank of the same series, one for each series, any unit.
    variances : array_like, shape (k,)
        Squared standard errors of the effects, from 1e-100 to 1e100.
    level : float
        Confidence, 0.5 to 0.9999.

    Returns
    -------
    Pooled
        With one series there is nothing to pool: the estimate is its own and the rest None. The prediction
        interval (t with k − 2 degrees of freedom) needs three.

    Raises
    ------
    ValueError
        For columns of different length or empty, effects that are not finite, variances out of range.

    References
    ----------
    R. C. Paule, J. Mandel, J. Res. Natl. Bur. Stand. 87 (1982) 377-385; J. Hartung, G. Knapp, Stat. Med. 20
    (2001) 3875-3889; J. P. T. Higgins, S. G. Thompson, D. J. Spiegelhalter, J. R. Stat. Soc. A 172 (2009) 137-159.

    Examples
    --------
    >>> found = pool([-3.2, -2.1, -4.0], [0.4, 0.3, 0.5])
    >>> round(found.estimate, 3), round(found.low, 3), round(found.high, 3)
    (-3.031, -5.409, -0.652)
    """
    y = as_values("effects", effects)
    v = _variances(variances)
    same_length(effects=y, variances=v)
    # Differences from the first, so that large effects that are nearly alike keep their digits.
    origin = float(y[0])
    y = y - origin
    level = between("level", level, 0.5, 0.9999)
    if y.size == 1:
        note = "One series only: nothing to pool. Its own interval stands with the series."
        return Pooled(origin, None, None, None, None, None, None, None, None, 1, note)
    q = _spread(y, v, 0.0)
    tau2 = _between_series(y, v)
    weights = 1.0 / (v + tau2)
    estimate = origin + float(weights @ y / weights.sum())
    error2 = _spread(y, v, tau2) / ((y.size - 1) * float(weights.sum()))
    reach = _t(level, y.size - 1) * error2**0.5
    ahead = _t(level, y.size - 2) * (tau2 + error2) ** 0.5 if y.size > 2 else None
    notes = ["Two series: no prediction for a third."] if y.size == 2 else []
    if tau2 == 0.0:
        notes.append("No variance between series was found; with few series it may be there all the same.")
    return Pooled(
        estimate=estimate,
        low=estimate - reach,
        high=estimate + reach,
        prediction_low=None if ahead is None else estimate - ahead,
        prediction_high=None if ahead is None else estimate + ahead,
        tau2=tau2,
        i2=max(0.0, (q - (y.size - 1)) / q) if q > 0.0 else 0.0,
        q=q,
        p_q=float(scipy.special.chdtrc(y.size - 1, q)),
        k=y.size,
        note=" ".join(notes),
    )


def _variances(variances: Sequence[float]) -> np.ndarray:
    v = finite_array("variances", variances)
    bad = (v < 1e-100) | (v > 1e100)
    if bad.any():
        raise ValueError(f"variances[{bad.argmax()}] must be between 1e-100 and 1e100; got {v[bad.argmax()]:g}")
    return v


def _spread(y: np.ndarray, v: np.ndarray, tau2: float) -> float:
    weights = 1.0 / (v + tau2)
    mean = weights @ y / weights.sum()
    return float(weights @ (y - mean) ** 2)


def _between_series(y: np.ndarray, v: np.ndarray) -> float:
    """The variance with which the weighted spread is just what chance gives: k − 1."""
    expected = y.size - 1
    if _spread(y, v, 0.0) <= expected:
        return 0.0
    # From here on every weight is below 1 / Σ(y − mean)², and the spread below 1; doubling outruns rounding.
    high = float(np.sum((y - y.mean()) ** 2))
    while _spread(y, v, high) > expected:
        high *= 2.0
    return float(scipy.optimize.brentq(lambda tau2: _spread(y, v, tau2) - expected, 0.0, high, rtol=1e-12))


def _t(level: float, df: int) -> float:
    return float(scipy.special.stdtrit(df, 0.5 + level / 2.0))
