"""Repeatability and reproducibility, and values or groups that do not belong with the others."""

import math
from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
import scipy  # its submodules load on first use, so that the web server starts without them

from trials.science._groups import as_groups, as_values


@dataclass(frozen=True, slots=True)
class Precision:
    """Standard deviations in the unit of the values: s_r within groups, s_L between them, s_R of both.

    ``r`` and ``R`` are the limits 2.8 s_r and 2.8 s_R that two results exceed in about 5 % of cases.
    ``between_set_to_zero`` tells that s_L² came out negative and was set to 0.
    """

    mean: float
    s_r: float
    s_L: float  # noqa: N815 - the standard's own symbol
    s_R: float  # noqa: N815 - the standard's own symbol
    r: float
    R: float
    n_bar: float
    between_set_to_zero: bool


@dataclass(frozen=True, slots=True)
class Outlier:
    """The most extreme value or group, counted from 0, against the 5 % and 1 % limits.

    Above the 5 % limit it is a straggler, above the 1 % limit an outlier (ISO 5725-2). None where there is no
    spread to judge by.
    """

    index: int | None
    statistic: float | None
    critical_5: float
    critical_1: float
    note: str


def precision(groups: Sequence[Sequence[float]]) -> Precision:
    """Precision of a method from repeated results in several laboratories, days or persons.

    Parameters
    ----------
    groups : sequence of array_like
        At least two groups, any unit, at least one of them with a second value; sizes may differ.

    Returns
    -------
    Precision

    Raises
    ------
    ValueError
        For fewer than two groups, an empty group, no repeated value, or values that are not finite.

    References
    ----------
    ISO 5725-2:1994, section 7.4; r = 2.8 s_r after ISO 5725-6.

    Examples
    --------
    >>> found = precision([[9.8, 10.4], [9.5, 10.7], [11.0, 11.6]])
    >>> round(found.s_r, 3), round(found.s_L, 3), round(found.r, 2)
    (0.6, 0.548, 1.68)
    """
    arrays = as_groups("groups", groups, at_least=2)
    sizes = np.array([array.size for array in arrays], dtype=float)
    total = sizes.sum()
    if total == len(arrays):
        raise ValueError(f"groups need at least one repeated value; got sizes {sizes.astype(int).tolist()}")
    # Centred first: with many leading digits alike, the differences would otherwise drown in rounding.
    origin = float(arrays[0][0])
    arrays = [array - origin for array in arrays]
    means = np.array([array.mean() for array in arrays])
    mean = float(sizes @ means / total)
    within = sum(float(np.sum((array - array.mean()) ** 2)) for array in arrays) / (total - len(arrays))
    between = float(sizes @ (means - mean) ** 2) / (len(arrays) - 1)
    n_bar = float(total - sizes @ sizes / total) / (len(arrays) - 1)
    s_l2 = (between - within) / n_bar
    s_r, s_L = math.sqrt(within), math.sqrt(max(0.0, s_l2))
    s_R = math.hypot(s_r, s_L)
    return Precision(mean + origin, s_r, s_L, s_R, 2.8 * s_r, 2.8 * s_R, n_bar, s_l2 < 0.0)


def grubbs(values: Sequence[float]) -> Outlier:
    """Grubbs's test of the value farthest from the mean, both sides watched.

    Parameters
    ----------
    values : array_like, shape (n,)
        At least three values, any unit, taken as normal.

    Returns
    -------
    Outlier
        ``statistic`` is the distance from the mean in standard deviations.

    Raises
    ------
    ValueError
        For fewer than three values, or values that are not finite.

    References
    ----------
    F. E. Grubbs, Technometrics 11 (1969) 1-21; limits from Student's t by the formula given there.

    Examples
    --------
    >>> found = grubbs([4.1, 4.6, 3.9, 4.4, 7.9])
    >>> found.index, round(found.statistic, 3), round(found.critical_5, 3)
    (4, 1.765, 1.715)
    """
    array = as_values("values", values, min_size=3)
    limits = [_grubbs_limit(array.size, alpha) for alpha in (0.05, 0.01)]
    deviations = np.abs(array - array.mean())
    scale = float(deviations.max())
    if scale <= max(1e-12 * float(np.abs(array).max()), 1e-150):
        return Outlier(None, None, *limits, "All values are equal.")
    s = math.sqrt(float(np.sum((deviations / scale) ** 2)) / (array.size - 1))
    return Outlier(int(deviations.argmax()), 1.0 / s, *limits, "")


def cochran(groups: Sequence[Sequence[float]]) -> Outlier:
    """Cochran's test of the group that scatters most.

    Parameters
    ----------
    groups : sequence of array_like
        At least two groups with a repeated value, any unit. Groups of one value are left out; where sizes differ,
        the limits are those of the most common size.

    Returns
    -------
    Outlier
        ``statistic`` is the share of the largest variance in the sum of all.

    Raises
    ------
    ValueError
        For fewer than two groups with a repeated value, an empty group, or values that are not finite.

    References
    ----------
    W. G. Cochran, Ann. Eugen. 11 (1941) 47-52; ISO 5725-2:1994, section 7.3.3; limits from F by formula.

    Examples
    --------
    >>> found = cochran([[9.8, 10.4, 9.5], [8.9, 9.6, 9.1], [4.1, 9.6, 3.9]])
    >>> found.index, round(found.statistic, 3), round(found.critical_5, 3)
    (2, 0.969, 0.871)
    """
    arrays = as_groups("groups", groups)
    repeated = [i for i, array in enumerate(arrays) if array.size > 1]
    if len(repeated) < 2:
        raise ValueError(f"groups need at least 2 with a repeated value; got {len(repeated)}")
    sizes = [arrays[i].size for i in repeated]
    size = Counter(sizes).most_common(1)[0][0]
    limits = [_cochran_limit(len(repeated), size, alpha) for alpha in (0.05, 0.01)]
    note = "" if len(set(sizes)) == 1 else f"Groups differ in size: the limits are those for {size} values each."
    spreads = np.array([arrays[i].std(ddof=1) for i in repeated])
    if spreads.max() <= max(1e-12 * max(np.abs(arrays[i]).max() for i in repeated), 1e-150):
        return Outlier(None, None, *limits, "All groups are without spread.")
    shares = (spreads / spreads.max()) ** 2
    return Outlier(repeated[int(shares.argmax())], float(shares.max() / shares.sum()), *limits, note)


def _grubbs_limit(n: int, alpha: float) -> float:
    t = float(scipy.special.stdtrit(n - 2, 1.0 - alpha / (2.0 * n)))
    return (n - 1) / math.sqrt(n) * math.sqrt(t**2 / (n - 2 + t**2))


def _cochran_limit(groups: int, size: int, alpha: float) -> float:
    df = size - 1
    f = float(scipy.special.fdtri(df, (groups - 1) * df, 1.0 - alpha / groups))
    return f / (f + groups - 1)
