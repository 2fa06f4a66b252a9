"""Does a value rise or fall with the order of the groups? (Jonckheere-Terpstra)"""

import math
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
import scipy  # its submodules load on first use, so that the web server starts without them

from trials.science import exact_ranks
from trials.science._groups import SIDES, as_groups
from trials.science._refuse import one_of


@dataclass(frozen=True, slots=True)
class Trend:
    """``statistic`` counts pairs of cups from two groups that rise with the order of groups, ties half.

    ``z`` and ``p_normal`` use the variance corrected for ties, without continuity correction; both are None
    where all values are equal. ``p_exact`` is None where counting would take too long.
    """

    statistic: float
    p_exact: float | None
    z: float | None
    p_normal: float | None
    z_uncorrected: float | None
    note: str


def trend(groups: Sequence[Sequence[float]], *, side: str) -> Trend:
    """Jonckheere-Terpstra test: do the values rise or fall with the order of the groups?

    Parameters
    ----------
    groups : sequence of array_like
        At least two groups in the order of dosage, one value for each cup.
    side : {"two-sided", "less", "greater"}
        "greater": values rise with the order; "less": they fall. Two-sided p is twice the smaller one.

    Returns
    -------
    Trend
        ``p_exact`` is conditional on the ties found.

    Raises
    ------
    ValueError
        For fewer than two groups, an empty group, values that are not finite or an unknown side.

    References
    ----------
    A. R. Jonckheere, Biometrika 41 (1954) 133-145.
    M. Hollander, D. A. Wolfe, Nonparametric Statistical Methods (1973), section 6.2.

    Examples
    --------
    >>> found = trend([[1, 2, 3], [4, 5, 6], [7, 8, 9]], side="greater")
    >>> found.statistic, round(1 / found.p_exact), round(found.z, 6)
    (27.0, 1680, 3.0)
    """
    arrays = as_groups("groups", groups, at_least=2)
    one_of("side", side, SIDES)
    doubled = _doubled_rising(arrays)
    mean, plain, corrected = _moments(arrays)
    chance = exact_ranks.jonckheere_chances(arrays)
    p_exact = None
    if chance is not None:
        p_exact = exact_ranks.one_p(float(chance[: doubled + 1].sum()), float(chance[doubled:].sum()), side)
    if len(set(np.concatenate(arrays).tolist())) == 1:
        return Trend(doubled / 2.0, p_exact, None, None, None, "All values are equal: there is no trend to see.")
    z = (doubled / 2.0 - mean) / math.sqrt(corrected)
    p_normal = exact_ranks.one_p(float(scipy.special.ndtr(z)), float(scipy.special.ndtr(-z)), side)
    note = "" if chance is not None else "Too many cups and ties to count exactly: the normal approximation holds."
    return Trend(doubled / 2.0, p_exact, z, p_normal, (doubled / 2.0 - mean) / math.sqrt(plain), note)


def _doubled_rising(arrays: Sequence[np.ndarray]) -> int:
    doubled = 0
    for i, lower in enumerate(arrays):
        for higher in arrays[i + 1 :]:
            pairs = np.sign(higher[None, :] - lower[:, None])
            doubled += int(np.sum(pairs + 1))
    return doubled


def _moments(arrays: Sequence[np.ndarray]) -> tuple[float, float, float]:
    """Mean, variance as if there were no ties, variance with ties, under no trend."""
    n = np.array([array.size for array in arrays], dtype=float)
    _, counts = np.unique(np.concatenate(arrays), return_counts=True)
    t = counts.astype(float)
    total = n.sum()
    mean = (total**2 - np.sum(n**2)) / 4.0
    plain = (total**2 * (2 * total + 3) - np.sum(n**2 * (2 * n + 3))) / 72.0
    corrected = plain - np.sum(t * (t - 1) * (2 * t + 5)) / 72.0
    corrected += np.sum(n * (n - 1)) * np.sum(t * (t - 1)) / (8.0 * total * (total - 1))
    if total > 2:
        threes = np.sum(n * (n - 1) * (n - 2)) * np.sum(t * (t - 1) * (t - 2))
        corrected += threes / (36.0 * total * (total - 1) * (total - 2))
    return float(mean), float(plain), float(corrected)
