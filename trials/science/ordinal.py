"""Grades of treated cups against the blank. Grades are ordered steps: they are ranked, never averaged."""

import math
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from trials.science import exact_ranks
from trials.science._groups import SIDES, as_groups, as_values
from trials.science._refuse import one_of
from trials.science.steps import off_scale


@dataclass(frozen=True, slots=True)
class OrdinalDifference:
    """``shift`` is the Hodges-Lehmann shift (median of all differences treated minus control) in grades.

    ``superiority`` is the share of pairs in which the treated cup has the higher grade, ties counted half.
    ``p_adjusted`` is Holm's over all treatments. ``smallest_p`` is the smallest unadjusted p that so many
    cups can give at all.
    """

    shift: float
    superiority: float
    p: float
    p_adjusted: float
    smallest_p: float
    n: int
    note: str
    n_control: int
    side: str


def ordinal_against_control(
    control: Sequence[float],
    treatments: Sequence[Sequence[float]],
    *,
    side: str,
    steps: Sequence[float],
) -> tuple[OrdinalDifference, ...]:
    """Grades of treated cups against the control: exact Mann-Whitney for each treatment, adjusted after Holm.

    Parameters
    ----------
    control : array_like, shape (n_0,)
        One grade for each control cup: the median of its readers, so half steps occur.
    treatments : sequence of array_like
        One array of such grades for each treatment.
    side : {"two-sided", "less", "greater"}
        What was declared beforehand. Two-sided p is twice the smaller one-sided one, at most 1.
    steps : sequence of float
        All grades of the scale, used or not. A value must be one of them or midway between two.

    Returns
    -------
    tuple of OrdinalDifference
        In the order of ``treatments``. p is conditional on the ties found.

    Raises
    ------
    ValueError
        For no treatment, an empty group, an unknown side, more than 100 cups in one comparison, or a value
        that the scale cannot give.

    References
    ----------
    H. B. Mann, D. R. Whitney, Ann. Math. Stat. 18 (1947) 50-60; S. Holm, Scand. J. Stat. 6 (1979) 65-70;
    J. L. Hodges, E. L. Lehmann, Ann. Math. Stat. 34 (1963) 598-611.

    Examples
    --------
    >>> (found,) = ordinal_against_control([4, 5, 5], [[1, 2]], side="less", steps=range(6))
    >>> round(found.p, 3), found.shift, found.superiority
    (0.1, -3.0, 0.0)
    >>> found.note
    'With 3 blanks and 2 cups no p below 0.1 can come out; a larger p is never proof of no effect.'
    """
    scale = np.unique(as_values("steps", steps, min_size=2))
    blank = _on_scale("control", as_values("control", control), scale)
    treated = as_groups("treatments", treatments)
    for i, group in enumerate(treated):
        _on_scale(f"treatments[{i}]", group, scale)
    one_of("side", side, SIDES)
    chances = [_exact_p(f"treatments[{i}]", blank, group, side) for i, group in enumerate(treated)]
    adjusted = _holm(chances)
    return tuple(
        _ordinal(blank, group, side, p=p, p_adjusted=p_adjusted, comparisons=len(treated))
        for group, p, p_adjusted in zip(treated, chances, adjusted, strict=True)
    )


def _ordinal(
    blank: np.ndarray, group: np.ndarray, side: str, *, p: float, p_adjusted: float, comparisons: int
) -> OrdinalDifference:
    pairs = group[:, None] - blank[None, :]
    smallest = _smallest_p(blank.size, group.size, side)
    return OrdinalDifference(
        shift=float(np.median(pairs)),
        superiority=float(np.mean(pairs > 0) + np.mean(pairs == 0) / 2.0),
        p=p,
        p_adjusted=p_adjusted,
        smallest_p=smallest,
        n=group.size,
        note=_note(blank.size, group.size, smallest, comparisons),
        n_control=blank.size,
        side=side,
    )


def _smallest_p(n_control: int, n: int, side: str) -> float:
    one_sided = 1.0 / math.comb(n_control + n, n)
    return min(1.0, 2.0 * one_sided) if side == "two-sided" else one_sided


def _note(n_control: int, n: int, smallest: float, comparisons: int) -> str:
    if smallest * comparisons <= 0.05:
        return ""
    among = f" (below {min(1.0, smallest * comparisons):.2g} after adjustment)" if comparisons > 1 else ""
    return (
        f"With {_count(n_control, 'blank')} and {_count(n, 'cup')} no p below {smallest:.2g}{among} can come "
        "out; a larger p is never proof of no effect."
    )


def _count(number: int, noun: str) -> str:
    return f"{number} {noun}" if number == 1 else f"{number} {noun}s"


def _on_scale(name: str, grades: np.ndarray, scale: np.ndarray) -> np.ndarray:
    off = off_scale(grades, scale)
    if off.any():
        i = int(off.argmax())
        raise ValueError(f"{name}[{i}] must be a step of the scale or midway between two; got {grades[i]:g}")
    return grades


def _exact_p(name: str, blank: np.ndarray, group: np.ndarray, side: str) -> float:
    cups = blank.size + group.size
    if cups > exact_ranks.MOST_CUPS:
        raise ValueError(f"{name} and control may hold {exact_ranks.MOST_CUPS} cups together; got {cups}")
    lower, higher = exact_ranks.mann_whitney_tails(blank, group)
    return exact_ranks.one_p(lower, higher, side)


def _holm(chances: Sequence[float]) -> list[float]:
    adjusted = [0.0] * len(chances)
    highest = 0.0
    for rank, i in enumerate(sorted(range(len(chances)), key=chances.__getitem__)):
        highest = max(highest, min(1.0, (len(chances) - rank) * chances[i]))
        adjusted[i] = highest
    return adjusted
