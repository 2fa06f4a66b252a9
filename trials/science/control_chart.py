"""Is the blank of a base what it has always been? A chart of single values with limits."""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from trials.science._groups import as_values

# Mean range of two normal values in standard deviations, as printed in the tables (exactly 2/√π = 1.12838).
D2 = 1.128
RUN, DRIFT = 9, 6


@dataclass(frozen=True, slots=True)
class Signal:
    """``index``, counted from 0, is the value that completes the pattern; ``rule`` says which."""

    index: int
    rule: str


@dataclass(frozen=True, slots=True)
class Chart:
    """All in the unit of the values; the limits lie three standard deviations from the centre."""

    centre: float
    mean_moving_range: float
    upper: float
    lower: float
    signals: tuple[Signal, ...]
    note: str


def individuals(values: Sequence[float]) -> Chart:
    """Control chart of single values; the spread comes from the moving ranges of neighbours, by 1.128.

    Parameters
    ----------
    values : array_like, shape (n,)
        In order of time, at least two, any unit.

    Returns
    -------
    Chart
        Signals are the first three of Nelson's tests and his fifth: a value beyond a limit; nine in a row on one
        side of the centre; six in a row rising or falling; two of three beyond two standard deviations on one
        side. A signal asks for a cause; it proves none.

    Raises
    ------
    ValueError
        For fewer than two values, or values that are not finite.

    References
    ----------
    ISO 7870-2 (chart of individuals; which runs it names is from memory); L. S. Nelson, "The Shewhart control
    chart: tests for special causes", J. Qual. Technol. 16 (1984) 237-239.

    Examples
    --------
    >>> chart = individuals([49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1])
    >>> round(chart.centre, 2), round(chart.upper, 4), round(chart.lower, 4), chart.signals
    (50.81, 55.8041, 45.8159, ())
    """
    array = as_values("values", values, min_size=2)
    centre = float(array.mean())
    moving = float(np.abs(np.diff(array)).mean())
    s = moving / D2
    if s <= max(1e-12 * float(np.abs(array).max()), 1e-150):
        return Chart(centre, moving, centre, centre, (), "All values are equal: there are no limits.")
    note = "" if array.size >= 20 else f"Limits from {array.size} values only are rough."
    signals = _signals((array - centre) / s, array)
    return Chart(centre, moving, centre + 3.0 * s, centre - 3.0 * s, signals, note)


def _signals(z: np.ndarray, values: np.ndarray) -> tuple[Signal, ...]:
    found = [Signal(i, "beyond a limit") for i in np.flatnonzero(np.abs(z) > 3.0).tolist()]
    for side in (1.0, -1.0):
        found += [Signal(i, f"{RUN} in a row on one side") for i in _runs(side * z > 0.0, RUN)]
        far = side * z > 2.0
        found += [
            Signal(i, "2 of 3 beyond two standard deviations")
            for i in range(1, far.size)
            if far[i] and far[max(0, i - 2) : i + 1].sum() >= 2
        ]
        # Six values in a row make five steps; the first step leads to the second value.
        steps = _runs(side * np.diff(values) > 0.0, DRIFT - 1)
        found += [Signal(i + 1, f"{DRIFT} in a row {'rising' if side > 0 else 'falling'}") for i in steps]
    return tuple(sorted(found, key=lambda signal: (signal.index, signal.rule)))


def _runs(holds: np.ndarray, length: int) -> list[int]:
    """Where a run of at least this length is standing."""
    ends, run = [], 0
    for i, held in enumerate(holds.tolist()):
        run = run + 1 if held else 0
        if run >= length:
            ends.append(i)
    return ends
