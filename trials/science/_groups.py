"""Groups of values from separate cups: how they are taken in, and their pooled spread."""

import math
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from trials.science._refuse import finite_array

SIDES = ("two-sided", "less", "greater")
# Squares of anything larger leave the range of floating point numbers.
LARGEST = 1e100


def as_values(name: str, given: object, *, min_size: int = 1) -> np.ndarray:
    array = finite_array(name, given, min_size=min_size)
    if np.abs(array).max() > LARGEST:
        raise ValueError(f"{name} must stay below {LARGEST:g}; got {array[np.abs(array).argmax()]}")
    return array


def as_groups(name: str, given: Sequence[object], *, at_least: int = 1, min_size: int = 1) -> list[np.ndarray]:
    """Groups may differ in size; each is one array of values."""
    arrays = [as_values(f"{name}[{i}]", group, min_size=min_size) for i, group in enumerate(given)]
    if len(arrays) < at_least:
        raise ValueError(f"{name} needs at least {at_least} group(s); got {len(arrays)}")
    return arrays


@dataclass(frozen=True, slots=True)
class Spread:
    """``s`` is None where the groups show none, or where no group has a second value."""

    s: float | None
    df: int


def pooled(arrays: Sequence[np.ndarray]) -> Spread:
    deviations = np.concatenate([array - array.mean() for array in arrays])
    df = deviations.size - len(arrays)
    scale = float(np.abs(deviations).max())
    # Below this the deviations are rounding of the mean, not spread between cups.
    rounding = 1e-12 * max(float(np.abs(array).max()) for array in arrays)
    if df < 1 or scale <= max(rounding, 1e-150):
        return Spread(None, df)
    return Spread(scale * math.sqrt(float(np.sum((deviations / scale) ** 2)) / df), df)
