"""Exact null distributions of rank statistics, conditional on the ties that the ratings show.

Every assignment of the pooled values to the groups is equally likely if the additive does nothing. The
assignments are counted, not drawn: the same ratings always give the same p.
"""

import itertools
import math
from collections.abc import Iterator, Sequence

import numpy as np

# Above these the counting takes longer than somebody waits for a page.
MOST_CUPS = 100
MOST_STATES = 8000


def mann_whitney_tails(control: np.ndarray, treated: np.ndarray) -> tuple[float, float]:
    """Exact one-sided p of "treated is lower" and "treated is higher"; both include the value found.

    Examples
    --------
    >>> mann_whitney_tails(np.array([4.0, 5.0, 5.0]), np.array([1.0, 2.0]))
    (0.1, 1.0)
    """
    ranks = doubled_ranks(np.concatenate([treated, control]))
    chance = rank_sum_chances(ranks, treated.size)
    found = int(ranks[: treated.size].sum())
    return _up_to_one(chance[: found + 1].sum()), _up_to_one(chance[found:].sum())


def one_p(lower: float, higher: float, side: str) -> float:
    """The declared side's p from the two one-sided ones; two-sided is twice the smaller, at most 1."""
    p = {"less": lower, "greater": higher, "two-sided": 2.0 * min(lower, higher)}[side]
    return min(1.0, max(0.0, p))


def doubled_ranks(values: np.ndarray) -> np.ndarray:
    """Twice the mean rank, so that tied values keep whole numbers."""
    ordered = np.sort(values)
    return np.searchsorted(ordered, values, "left") + np.searchsorted(ordered, values, "right") + 1


def rank_sum_chances(ranks: np.ndarray, size: int) -> np.ndarray:
    """Probability of each sum of ``size`` of the whole-numbered ``ranks``, drawn without putting back."""
    ways = np.zeros((size + 1, int(ranks.sum()) + 1))
    ways[0, 0] = 1.0
    for rank in ranks:
        # The right side is computed before it is added, so that no rank is drawn twice.
        ways[1:, rank:] += ways[:-1, : ways.shape[1] - rank].copy()
    return ways[size] / ways[size].sum()


def jonckheere_chances(groups: Sequence[np.ndarray]) -> np.ndarray | None:
    """Chances of twice the Jonckheere-Terpstra statistic, from 0 up; None where counting takes too long.

    Examples
    --------
    Three groups of three in perfect order are one of 1680 arrangements:

    >>> chance = jonckheere_chances([np.array([1.0, 2, 3]), np.array([4.0, 5, 6]), np.array([7.0, 8, 9])])
    >>> round(1 / chance[2 * 27])
    1680
    """
    _, ties = np.unique(np.concatenate(groups), return_counts=True)
    sizes = [group.size for group in groups]
    if sum(sizes) > MOST_CUPS:
        return None
    if ties.max() == 1:
        return _without_ties(sizes)
    if math.prod(size + 1 for size in sizes) > MOST_STATES:
        return None
    return _with_ties(sizes, ties)


def _without_ties(sizes: Sequence[int]) -> np.ndarray:
    # Without ties the statistic is a sum of independent counts: each group against all before it.
    chance = np.ones(1)
    for before, size in zip(itertools.accumulate(sizes), sizes[1:], strict=False):
        sums = rank_sum_chances(2 * np.arange(1, before + size + 1), size)
        lowest = size * (size + 1)
        chance = np.convolve(chance, sums[lowest : lowest + 2 * before * size + 1])
    return chance


def _with_ties(sizes: Sequence[int], ties: np.ndarray) -> np.ndarray:
    """Deal the values out from the lowest up; what is dealt so far is all that the next pairs depend on."""
    length = sum(size**2 for size in sizes)
    length = sum(sizes) ** 2 - length + 1
    dealt = {(0,) * len(sizes): np.zeros(length)}
    dealt[(0,) * len(sizes)][0] = 1.0
    for tie in ties:
        after: dict[tuple[int, ...], np.ndarray] = {}
        for held, ways in dealt.items():
            room = [size - count for size, count in zip(sizes, held, strict=True)]
            for hand in _hands(int(tie), room):
                gain = _doubled_gain(held, hand)
                state = tuple(a + b for a, b in zip(held, hand, strict=True))
                target = after.setdefault(state, np.zeros(length))
                arrangements = math.prod(math.comb(r, h) for r, h in zip(room, hand, strict=True))
                target[gain:] += arrangements * ways[: length - gain]
        dealt = after
    (ways,) = dealt.values()
    return ways / ways.sum()


def _hands(cards: int, room: Sequence[int]) -> Iterator[tuple[int, ...]]:
    if len(room) == 1:
        if cards <= room[0]:
            yield (cards,)
        return
    for first in range(min(cards, room[0]) + 1):
        for rest in _hands(cards - first, room[1:]):
            yield (first, *rest)


def _doubled_gain(held: Sequence[int], hand: Sequence[int]) -> int:
    lower = tied = gain = 0
    for before, new in zip(held, hand, strict=True):
        gain += new * (2 * lower + tied)
        lower += before
        tied += new
    return gain


def _up_to_one(chance: float) -> float:
    return min(1.0, float(chance))
