"""Treated cups against the blank: differences with their intervals, never a verdict."""

import math
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
import scipy  # its submodules load on first use, so that the web server starts without them

from trials.science import many_to_one
from trials.science._groups import SIDES, as_groups, as_values, pooled
from trials.science._refuse import answer, between, one_of, positive, whole
from trials.science.ordinal import OrdinalDifference, ordinal_against_control
from trials.science.trend import Trend, trend

__all__ = [
    "Difference",
    "OrdinalDifference",
    "Trend",
    "Tukey",
    "against_control",
    "ordinal_against_control",
    "pairwise",
    "trend",
    "upper_bound_per_dm2",
]


@dataclass(frozen=True, slots=True)
class Difference:
    """Mean of the treated cups minus mean of the control, in the unit of the values.

    ``low`` and ``high`` hold for all treatments together. One of them is None in a one-sided comparison,
    where that side has no bound; both, ``p`` and ``statistic`` are None where there is no spread to judge by.
    ``n`` counts treated cups, ``n_control`` those of the control.
    """

    estimate: float
    low: float | None
    high: float | None
    p: float | None
    statistic: float | None
    df: int
    n: int
    note: str
    n_control: int
    side: str
    level: float


@dataclass(frozen=True, slots=True)
class Tukey:
    """Mean of group ``i`` minus mean of group ``j``, counted from 0; the intervals hold for all pairs."""

    i: int
    j: int
    estimate: float
    low: float | None
    high: float | None
    p: float | None
    note: str


def against_control(
    control: Sequence[float],
    treatments: Sequence[Sequence[float]],
    *,
    side: str = "two-sided",
    level: float = 0.95,
) -> tuple[Difference, ...]:
    """Dunnett's comparison of several treatments with one control, by deterministic quadrature.

    Parameters
    ----------
    control : array_like, shape (n_0,)
        One value for each control cup, any unit. Values are taken as normal, with one standard deviation.
    treatments : sequence of array_like
        One array for each treatment; sizes may differ, one cup is enough where other groups show the spread.
    side : {"two-sided", "less", "greater"}
        What was declared beforehand: treated differs, is lower, or is higher.
    level : float
        Confidence of all intervals together, 0.5 to 0.9999.

    Returns
    -------
    tuple of Difference
        In the order of ``treatments``. ``p`` is adjusted for the number of treatments.

    Raises
    ------
    ValueError
        For no treatment, an empty group, values that are not finite, an unknown side or level.

    References
    ----------
    C. W. Dunnett, "A multiple comparison procedure for comparing several treatments with a control",
    J. Am. Stat. Assoc. 50 (1955) 1096-1121.

    Examples
    --------
    Dunnett's blood counts:

    >>> control = [7.40, 8.50, 7.20, 8.24, 9.84, 8.32]
    >>> a, b = against_control(control, [[9.76, 8.80, 7.68, 9.36], [12.80, 9.68, 12.16, 9.20, 10.55]])
    >>> round(b.estimate, 3), round(b.low, 3), round(b.high, 3), round(b.p, 4)
    (2.628, 0.84, 4.416, 0.0058)
    """
    blank = as_values("control", control)
    treated = as_groups("treatments", treatments)
    one_of("side", side, SIDES)
    level = between("level", level, 0.5, 0.9999)
    spread = pooled([blank, *treated])
    if spread.s is None:
        return tuple(_unjudged(blank, group, spread.df, side, level) for group in treated)
    loadings = [math.sqrt(group.size / (group.size + blank.size)) for group in treated]
    limit = many_to_one.critical_value(level, loadings, spread.df, two_sided=side == "two-sided")
    found = []
    for group in treated:
        estimate = float(group.mean() - blank.mean())
        error = spread.s * math.sqrt(1.0 / group.size + 1.0 / blank.size)
        low, high = _bounds(estimate, limit * error, side)
        p = _joint_p(estimate / error, loadings, spread.df, side)
        note = _note(group.size, blank.size, side)
        found.append(
            Difference(estimate, low, high, p, estimate / error, spread.df, group.size, note, blank.size, side, level)
        )
    return tuple(found)


def pairwise(groups: Sequence[Sequence[float]], *, level: float = 0.95) -> tuple[Tukey, ...]:
    """All pairs of groups after Tukey and Kramer (SciPy computes the studentized range).

    Parameters
    ----------
    groups : sequence of array_like
        At least two groups, one value for each cup, any unit; sizes may differ, one cup is enough where other
        groups show the spread.
    level : float
        Confidence of all intervals together, 0.5 to 0.9999.

    Returns
    -------
    tuple of Tukey
        Each pair once, ``i`` below ``j``; positive where group ``i`` is higher. Always two-sided.

    Raises
    ------
    ValueError
        For fewer than two groups, an empty group or values that are not finite.

    References
    ----------
    C. Y. Kramer, Biometrics 12 (1956) 307-310.

    Examples
    --------
    >>> pairs = pairwise([[24.5, 23.5, 26.4, 27.1, 29.9], [28.4, 34.2, 29.5, 32.2, 30.1]])
    >>> round(pairs[0].estimate, 2)
    -4.6
    """
    arrays = as_groups("groups", groups, at_least=2)
    level = between("level", level, 0.5, 0.9999)
    spread = pooled(arrays)
    pairs = [(i, j) for i in range(len(arrays)) for j in range(i + 1, len(arrays))]
    estimates = [float(arrays[i].mean() - arrays[j].mean()) for i, j in pairs]
    if spread.s is None:
        note = _no_spread(spread.df)
        return tuple(Tukey(*pair, e, None, None, None, note) for pair, e in zip(pairs, estimates, strict=True))
    studentized = scipy.stats.studentized_range
    limit = float(studentized.ppf(level, len(arrays), spread.df))
    errors = [spread.s * math.sqrt((1 / arrays[i].size + 1 / arrays[j].size) / 2.0) for i, j in pairs]
    ranges = np.abs(estimates) / np.array(errors)
    chances = np.clip(studentized.sf(ranges, len(arrays), spread.df), 0.0, 1.0)
    return tuple(
        Tukey(*pair, estimate, estimate - limit * error, estimate + limit * error, float(p), "")
        for pair, estimate, error, p in zip(pairs, estimates, errors, chances, strict=True)
    )


def upper_bound_per_dm2(count: int, area_dm2: float, *, level: float = 0.95) -> float:
    """Highest number per dm² that a count still allows: exact one-sided bound of a Poisson count.

    None found on 1 dm² does not prove none: it proves fewer than 3 per dm².

    Parameters
    ----------
    count : int
        Number found, 0 to a thousand million.
    area_dm2 : float
        Area searched, dm², above 0.
    level : float
        Confidence, 0.5 to 0.9999.

    Returns
    -------
    float
        Per dm².

    Raises
    ------
    ValueError
        For a count that is negative or not whole, an area that is not above 0, or a level out of range.

    References
    ----------
    F. Garwood, Biometrika 28 (1936) 437-442.

    Examples
    --------
    >>> round(upper_bound_per_dm2(0, 1.0), 3)
    2.996
    """
    number = between("count", whole("count", count), 0, 1e9)
    area = positive("area_dm2", area_dm2)
    level = between("level", level, 0.5, 0.9999)
    bound = float(scipy.special.gammaincinv(number + 1.0, level)) / area
    return answer(bound, count=count, area_dm2=area_dm2)


def _unjudged(blank: np.ndarray, group: np.ndarray, df: int, side: str, level: float) -> Difference:
    estimate = float(group.mean() - blank.mean())
    return Difference(estimate, None, None, None, None, df, group.size, _no_spread(df), blank.size, side, level)


def _bounds(estimate: float, reach: float, side: str) -> tuple[float | None, float | None]:
    return (
        None if side == "less" else estimate - reach,
        None if side == "greater" else estimate + reach,
    )


def _joint_p(statistic: float, loadings: Sequence[float], df: int, side: str) -> float:
    extreme = {"two-sided": abs(statistic), "less": -statistic, "greater": statistic}[side]
    return many_to_one.exceedance(extreme, loadings, df, two_sided=side == "two-sided")


def _no_spread(df: int) -> str:
    if df < 1:
        return "No group has a second cup: there is no spread to judge by."
    return "The cups within each group are all equal: there is no spread to judge by."


def _note(n: int, n_control: int, side: str) -> str:
    notes = []
    if n == 1:
        notes.append("One cup only: its spread is taken from the other groups.")
    if n_control == 1:
        notes.append("One control cup only: its spread is taken from the other groups.")
    if side != "two-sided":
        notes.append(f"One-sided ({side}): the interval has no {'lower' if side == 'less' else 'upper'} bound.")
    return " ".join(notes)
