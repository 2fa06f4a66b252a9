"""Does a curve miss the dosage means by more than cups of one dosage scatter? (Lack of fit)"""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
import scipy  # its submodules load on first use, so that the web server starts without them

from trials.science._groups import as_values
from trials.science._refuse import same_length


@dataclass(frozen=True, slots=True)
class FTest:
    """``df`` are the degrees of freedom above and below the line; without repeats there is no statistic."""

    statistic: float | None
    df: tuple[int, int]
    p: float | None
    note: str


def lack_of_fit(x: Sequence[float], y: Sequence[float]) -> FTest:
    """Straight line against pure error: a small p rejects the line.

    Parameters
    ----------
    x : array_like, shape (n,)
        Dosage in per cent or any other setting, repeated for repeated cups; at least three different values.
    y : array_like, shape (n,)
        Response of each cup, any unit.

    Returns
    -------
    FTest
        None as statistic and p where no setting was repeated or the repeats are all equal.

    Raises
    ------
    ValueError
        For columns of different length, values that are not finite, or fewer than three different settings.

    References
    ----------
    NIST/SEMATECH e-Handbook of Statistical Methods, section 4.4.4.6.

    Examples
    --------
    >>> found = lack_of_fit([0, 0, 1, 1, 2, 2], [9.8, 10.4, 7.0, 6.4, 4.1, 4.6])
    >>> round(found.statistic, 3), found.df
    (2.273, (1, 3))
    """
    settings, response = as_values("x", x), as_values("y", y)
    same_length(x=settings, y=response)
    if np.unique(settings).size < 3:
        raise ValueError(f"x needs at least 3 different values; got {np.unique(settings).tolist()}")
    centred = settings - settings.mean()
    scale = np.abs(centred).max()
    centred = centred / scale
    slope = centred @ (response - response.mean()) / (centred @ centred)
    return against_pure_error(settings, response, response.mean() + slope * centred, parameters=2)


def against_pure_error(settings: np.ndarray, response: np.ndarray, fitted: np.ndarray, *, parameters: int) -> FTest:
    """F test of fitted values that depend on the setting alone."""
    levels, which = np.unique(settings, return_inverse=True)
    means = np.bincount(which, response) / np.bincount(which)
    df = (levels.size - parameters, settings.size - levels.size)
    if min(df) < 1:
        return FTest(None, df, None, "Too few dosages or repeated cups to tell a miss from scatter.")
    scatter = response - means[which]
    scale = float(np.abs(scatter).max())
    if scale <= max(1e-12 * float(np.abs(response).max()), 1e-150):
        return FTest(None, df, None, "Repeated cups are all equal: there is no scatter to compare with.")
    missed = float(np.sum(((means[which] - fitted) / scale) ** 2)) / df[0]
    statistic = missed / (float(np.sum((scatter / scale) ** 2)) / df[1])
    return FTest(statistic, df, float(scipy.special.fdtrc(*df, statistic)), "")
