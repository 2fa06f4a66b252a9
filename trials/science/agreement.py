"""Do readers agree? Coefficients of agreement, each against what chance alone would give."""

import math
from collections.abc import Hashable, Sequence
from dataclasses import dataclass

import numpy as np
import scipy  # its submodules load on first use, so that the web server starts without them

from trials.science._groups import LARGEST, as_values
from trials.science._refuse import between, finite_array, one_of, same_length

WEIGHTS = ("quadratic", "linear", None)
# Mean squares are taken from a table scaled to 1: what is smaller than this is rounding.
ROUNDING = 1e-14
SCALES = ("nominal", "ordinal", "interval", "ratio")


@dataclass(frozen=True, slots=True)
class Kappa:
    """From −1 to 1; 0 is chance. ``n`` counts panels that both readers graded. None where there is no answer."""

    value: float | None
    standard_error: float | None
    low: float | None
    high: float | None
    n: int
    note: str


@dataclass(frozen=True, slots=True)
class Intraclass:
    """Shrout and Fleiss's six forms: readers drawn anew for each panel (1), a sample of readers (2), these readers
    only (3); for one reader (1) or for the mean of all k. None where the ratings do not define one."""

    icc_1_1: float | None
    icc_2_1: float | None
    icc_3_1: float | None
    icc_1_k: float | None
    icc_2_k: float | None
    icc_3_k: float | None
    note: str


def weighted_kappa(
    a: Sequence[Hashable | None],
    b: Sequence[Hashable | None],
    *,
    grades: Sequence[Hashable],
    weights: str | None = "quadratic",
    level: float = 0.95,
) -> Kappa:
    """Cohen's kappa of two readers on a fixed list of grades, with its large-sample error.

    Parameters
    ----------
    a, b : sequence, shape (n,)
        Grade of each panel by each reader; None is a missing rating and drops the pair.
    grades : sequence
        All grades of the scale in order, used or not. Leaving out unused ones would change the answer.
    weights : {"quadratic", "linear", None}
        How much a distance of several steps counts; steps count as equal. None: any difference is the same.
    level : float
        Confidence, 0.5 to 0.9999.

    Returns
    -------
    Kappa

    Raises
    ------
    ValueError
        For columns of different length, fewer than two grades, a grade named twice or not on the list.

    References
    ----------
    J. L. Fleiss, J. Cohen, B. S. Everitt, Psychol. Bull. 72 (1969) 323-327.

    Examples
    --------
    >>> found = weighted_kappa([0, 1, 3, 5, 5], [0, 3, 3, 5, 1], grades=range(6), weights="linear")
    >>> round(found.value, 6)
    0.444444
    """
    if weights not in WEIGHTS:
        raise ValueError(f"weights must be 'quadratic', 'linear' or None; got {weights!r}")
    level = between("level", level, 0.5, 0.9999)
    same_length(a=a, b=b)
    shares, n = _joint_shares(a, b, _positions(grades))
    if n == 0:
        return Kappa(None, None, None, None, 0, "No panel was graded by both readers.")
    agreed = _credit(len(shares), weights)
    rows, columns = shares.sum(axis=1), shares.sum(axis=0)
    observed, expected = float(np.sum(agreed * shares)), float(rows @ agreed @ columns)
    if 1.0 - expected < 1e-12:
        return Kappa(None, None, None, None, n, "Both readers gave one and the same grade throughout.")
    kappa = (observed - expected) / (1.0 - expected)
    typical = (agreed @ columns)[:, None] + (rows @ agreed)[None, :]
    spread = float(np.sum(shares * (agreed - typical * (1.0 - kappa)) ** 2))
    variance = (spread - (kappa - expected * (1.0 - kappa)) ** 2) / (n * (1.0 - expected) ** 2)
    error = math.sqrt(max(0.0, variance))
    reach = float(scipy.special.ndtri(0.5 + level / 2.0)) * error
    note = "" if error > 1e-9 else "The large-sample error is 0 here and says nothing about so few panels."
    return Kappa(kappa, error, max(-1.0, kappa - reach), min(1.0, kappa + reach), n, note)


def krippendorff_alpha(ratings: Sequence[Sequence[float | None]], *, scale: str = "nominal") -> float | None:
    """Krippendorff's alpha for any number of readers and missing ratings (computed by the krippendorff library).

    Parameters
    ----------
    ratings : sequence of sequences, shape (readers, panels)
        One row for each reader; None is a missing rating. Numbers, for names of classes too.
    scale : {"nominal", "ordinal", "interval", "ratio"}
        How differences between ratings count. Grades are "ordinal".

    Returns
    -------
    float or None
        At most 1; 0 is chance. None where no panel has two ratings, or where all of those are equal.

    Raises
    ------
    ValueError
        For fewer than two readers, rows of different length, an unknown scale, values that are not finite, or
        negative values on a ratio scale.

    References
    ----------
    K. Krippendorff, Computing Krippendorff's alpha-reliability (2011).

    Examples
    --------
    >>> round(krippendorff_alpha([[1, 2, 3, None, 2], [1, 2, 3, 3, 1]], scale="ordinal"), 3)
    0.79
    """
    one_of("scale", scale, SCALES)
    table = _with_gaps(ratings)
    if scale == "ratio" and np.nanmin(table, initial=0.0) < 0.0:
        raise ValueError(f"ratings must not be negative on a ratio scale; got {np.nanmin(table):g}")
    # Panels with a single rating say nothing; left in, they make the library divide by zero when all others agree.
    paired = table[:, np.sum(np.isfinite(table), axis=0) >= 2]
    if np.unique(paired[np.isfinite(paired)]).size < 2:
        return None
    import krippendorff  # noqa: PLC0415 - takes 0.1 s and only this function needs it

    return float(krippendorff.alpha(reliability_data=_without_unit(paired, scale), level_of_measurement=scale))


def fleiss_kappa(table: Sequence[Sequence[int]]) -> float | None:
    """Fleiss's kappa of any number of readers on named classes.

    Parameters
    ----------
    table : array_like, shape (panels, classes)
        How many readers put the panel into the class. Every panel has the same number of readers, at least two.

    Returns
    -------
    float or None
        At most 1; 0 is chance. None where all readers used one class only.

    Raises
    ------
    ValueError
        For counts that are negative or not whole, or panels with different numbers of readers or fewer than two.

    References
    ----------
    J. L. Fleiss, Psychol. Bull. 76 (1971) 378-382.

    Examples
    --------
    >>> round(fleiss_kappa([[3, 0], [0, 3], [2, 1], [3, 0]]), 3)
    0.625
    """
    counts = finite_array("table", table, ndim=2, low=0.0)
    readers = counts.sum(axis=1)
    if (counts != np.floor(counts)).any() or readers.max() > 1e6:
        raise ValueError(f"table must hold counts of readers; got {counts.tolist()}")
    if np.ptp(readers) > 0.0 or readers[0] < 2.0:
        raise ValueError(f"table needs the same number of readers, 2 or more, in each row; got {readers.tolist()}")
    agreed = float(np.mean((np.sum(counts**2, axis=1) - readers) / (readers * (readers - 1.0))))
    by_chance = float(np.sum((counts.sum(axis=0) / counts.sum()) ** 2))
    return None if 1.0 - by_chance < 1e-12 else (agreed - by_chance) / (1.0 - by_chance)


def intraclass(ratings: Sequence[Sequence[float]]) -> Intraclass:
    """Intraclass correlations of readers who give quantities.

    Parameters
    ----------
    ratings : array_like, shape (panels, readers)
        One row for each panel, no gaps, any unit; at least two panels and two readers.

    Returns
    -------
    Intraclass

    Raises
    ------
    ValueError
        For fewer than two panels or readers, gaps, or values that are not finite.

    References
    ----------
    P. E. Shrout, J. L. Fleiss, Psychol. Bull. 86 (1979) 420-428.

    Examples
    --------
    >>> found = intraclass([[9, 2, 5, 8], [6, 1, 3, 2], [8, 4, 6, 8], [7, 1, 2, 6], [10, 5, 6, 9], [6, 2, 4, 7]])
    >>> round(found.icc_2_1, 2), round(found.icc_3_k, 2)
    (0.29, 0.91)
    """
    table = finite_array("ratings", ratings, min_size=4, ndim=2)
    as_values("ratings", table.ravel())
    panels, readers = table.shape
    if panels < 2 or readers < 2:
        raise ValueError(f"ratings need at least 2 panels and 2 readers; got shape {table.shape}")
    between_panels, between_readers, left, within = _mean_squares(table)
    of_readers = (between_readers - left) / panels
    six = {
        "icc_1_1": _ratio(between_panels - within, between_panels + (readers - 1) * within),
        "icc_2_1": _ratio(between_panels - left, between_panels + (readers - 1) * left + readers * of_readers),
        "icc_3_1": _ratio(between_panels - left, between_panels + (readers - 1) * left),
        "icc_1_k": _ratio(between_panels - within, between_panels),
        "icc_2_k": _ratio(between_panels - left, between_panels + of_readers),
        "icc_3_k": _ratio(between_panels - left, between_panels),
    }
    undefined = None in six.values()
    return Intraclass(**six, note="The panels differ too little for all six forms." if undefined else "")


def _positions(grades: Sequence[Hashable]) -> dict[Hashable, int]:
    listed = list(grades)
    positions = {grade: i for i, grade in enumerate(listed)}
    if len(positions) < 2 or len(positions) < len(listed):
        raise ValueError(f"grades must list at least 2 grades, each once; got {listed}")
    return positions


def _joint_shares(
    a: Sequence[Hashable | None], b: Sequence[Hashable | None], positions: dict[Hashable, int]
) -> tuple[np.ndarray, int]:
    counts = np.zeros((len(positions), len(positions)))
    for i, (first, second) in enumerate(zip(a, b, strict=True)):
        for name, grade in (("a", first), ("b", second)):
            if grade is not None and grade not in positions:
                raise ValueError(f"{name}[{i}] must be one of the grades {list(positions)}; got {grade!r}")
        if first is not None and second is not None:
            counts[positions[first], positions[second]] += 1.0
    n = int(counts.sum())
    return counts / max(n, 1), n


def _credit(size: int, weights: str | None) -> np.ndarray:
    distance = np.abs(np.subtract.outer(np.arange(size), np.arange(size))) / (size - 1.0)
    if weights is None:
        return (distance == 0.0).astype(float)
    return 1.0 - (distance if weights == "linear" else distance**2)


def _with_gaps(ratings: Sequence[Sequence[float | None]]) -> np.ndarray:
    rows = [[_rating(f"ratings[{i}][{j}]", value) for j, value in enumerate(row)] for i, row in enumerate(ratings)]
    if len(rows) < 2 or len({len(row) for row in rows}) > 1:
        raise ValueError(f"ratings need at least 2 rows of one length; got lengths {[len(row) for row in rows]}")
    return np.array(rows, dtype=float)


def _rating(name: str, value: float | None) -> float:
    return math.nan if value is None else between(name, value, -LARGEST, LARGEST)


def _without_unit(table: np.ndarray, scale: str) -> np.ndarray:
    """The same ratings near 1, for alpha knows no unit, and the library squares what it is given."""
    given = np.isfinite(table)
    moved = table.copy()
    if scale == "ratio":
        moved[given] /= table[given].max()
    elif scale == "interval":
        moved[given] = (table[given] - table[given].min()) / np.ptp(table[given])
    else:
        moved[given] = np.unique(table[given], return_inverse=True)[1]
    return moved


def _mean_squares(table: np.ndarray) -> tuple[float, float, float, float]:
    """Between panels, between readers, what is left of both, and within panels."""
    panels, readers = table.shape
    centred = table - table.mean()
    scale = float(np.abs(centred).max())
    if scale <= max(1e-12 * float(np.abs(table).max()), 1e-150):
        return 0.0, 0.0, 0.0, 0.0
    centred = centred / scale
    by_panel, by_reader = centred.mean(axis=1), centred.mean(axis=0)
    left = centred - by_panel[:, None] - by_reader[None, :]
    return (
        readers * float(by_panel @ by_panel) / (panels - 1),
        panels * float(by_reader @ by_reader) / (readers - 1),
        float(np.sum(left**2)) / ((panels - 1) * (readers - 1)),
        float(np.sum((centred - by_panel[:, None]) ** 2)) / (panels * (readers - 1)),
    )


def _ratio(above: float, below: float) -> float | None:
    return above / below if below > ROUNDING else None
