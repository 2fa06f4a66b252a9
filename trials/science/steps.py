"""Grades as ordered steps: what was given how often, and the middle of it."""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from trials.science._groups import as_values
from trials.science._refuse import finite


@dataclass(frozen=True, slots=True)
class Grades:
    """``counts`` lists every step of the scale with its number, unused ones too; ``between`` those midway.

    ``mean`` is there for habit's sake: it treats the steps as equally far apart, which ``note`` says. All but the
    counts are None where no rating was given.
    """

    n: int
    missing: int
    median: float | None
    lowest: float | None
    highest: float | None
    mean: float | None
    counts: tuple[tuple[float, int], ...]
    between: int
    note: str


def off_scale(grades: np.ndarray, scale: np.ndarray) -> np.ndarray:
    """Marks what the scale cannot give: neither a step nor midway between two (a median of an even number)."""
    return ~np.isin(grades, (scale[:, None] + scale[None, :]) / 2.0)


def describe(grades: Sequence[float | None], *, steps: Sequence[float]) -> Grades:
    """Median and distribution of grades.

    Parameters
    ----------
    grades : sequence of float or None
        One grade for each reader or cup; None is a missing rating. Midway between two steps is possible.
    steps : sequence of float
        All grades of the scale, at least two.

    Returns
    -------
    Grades

    Raises
    ------
    ValueError
        For fewer than two steps, or a grade that the scale cannot give.

    References
    ----------
    S. S. Stevens, Science 103 (1946) 677-680: on ordered steps the median is meaningful, the mean is not.

    Examples
    --------
    >>> found = describe([1, 2, 2, None, 5], steps=range(6))
    >>> found.median, found.mean, found.n, found.missing
    (2.0, 2.5, 4, 1)
    """
    scale = np.unique(as_values("steps", steps))
    if scale.size < 2:
        raise ValueError(f"steps need at least 2 different grades; got {scale.tolist()}")
    given = np.array([finite(f"grades[{i}]", grade) for i, grade in enumerate(grades) if grade is not None])
    off = off_scale(given, scale)
    if off.any():
        raise ValueError(f"grades must be steps of the scale or midway between two; got {given[off.argmax()]:g}")
    counts = tuple((float(step), int(np.sum(given == step))) for step in scale)
    between = given.size - sum(count for _, count in counts)
    missing = len(list(grades)) - given.size
    if given.size == 0:
        return Grades(0, missing, None, None, None, None, counts, 0, "No rating was given.")
    return Grades(
        n=given.size,
        missing=missing,
        median=float(np.median(given)),
        lowest=float(given.min()),
        highest=float(given.max()),
        mean=float(given.mean()),
        counts=counts,
        between=between,
        note="The mean treats the steps as equally far apart.",
    )
