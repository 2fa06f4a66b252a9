"""Each group's own mean with its interval, the spread taken from all groups together."""

import math
from collections.abc import Sequence
from dataclasses import dataclass

import scipy  # its submodules load on first use, so that the web server starts without them

from trials.science._groups import as_groups, pooled
from trials.science._refuse import between


@dataclass(frozen=True, slots=True)
class GroupMean:
    """``low`` and ``high`` hold for this group alone; None where no group shows a spread."""

    mean: float
    low: float | None
    high: float | None
    n: int
    df: int


def group_means(groups: Sequence[Sequence[float]], *, level: float = 0.95) -> tuple[GroupMean, ...]:
    """Means with Student's interval from the pooled standard deviation.

    Parameters
    ----------
    groups : sequence of array_like
        At least one group, one value for each cup, any unit; one cup is enough where other groups show the spread.
    level : float
        Confidence of each interval by itself, 0.5 to 0.9999.

    Returns
    -------
    tuple of GroupMean
        In the order of ``groups``.

    Raises
    ------
    ValueError
        For no group, an empty group, values that are not finite, or a level out of range.

    Notes
    -----
    mean ± t·s/√n with s pooled over the groups, as in a one-way analysis of variance.

    Examples
    --------
    >>> first, second = group_means([[9.8, 10.4, 9.5, 10.7], [8.9, 9.6, 9.1, 9.9]])
    >>> round(first.mean, 2), round(first.low, 2), round(first.high, 2), first.df
    (10.1, 9.48, 10.72, 6)
    """
    arrays = as_groups("groups", groups)
    level = between("level", level, 0.5, 0.9999)
    spread = pooled(arrays)
    found = []
    for array in arrays:
        mean, low, high = float(array.mean()), None, None
        if spread.s is not None:
            reach = float(scipy.special.stdtrit(spread.df, 0.5 + level / 2.0)) * spread.s / math.sqrt(array.size)
            low, high = mean - reach, mean + reach
        found.append(GroupMean(mean, low, high, array.size, spread.df))
    return tuple(found)
