"""Refusals: what every computation asks of its numbers before it trusts them.

Each check returns the number as a float and raises ``ValueError`` naming the argument and the value, so that
a page can show the message as it stands. Numbers may be anything that ``float`` takes (``Decimal`` from the
record too) except text, which a form should have turned into a number before.
"""

import math
from collections.abc import Collection, Sequence

import numpy as np


def finite(name: str, value: object) -> float:
    number = _number(name, value)
    if not math.isfinite(number):
        raise ValueError(f"{name} must be a finite number; got {value}")
    return number


def positive(name: str, value: object, *, may_be_inf: bool = False) -> float:
    """Above zero. ``may_be_inf`` serves the few arguments for which "never" or "inert" is an answer."""
    number = _number(name, value) if may_be_inf else finite(name, value)
    if not number > 0.0:
        raise ValueError(f"{name} must be above 0; got {value}")
    return number


def not_negative(name: str, value: object) -> float:
    number = finite(name, value)
    if number < 0.0:
        raise ValueError(f"{name} must not be negative; got {value}")
    return number


def between(name: str, value: object, low: float, high: float) -> float:
    """Both ends included."""
    number = finite(name, value)
    if not low <= number <= high:
        raise ValueError(f"{name} must be between {low:g} and {high:g}; got {value}")
    return number


def percent(name: str, value: object) -> float:
    return between(name, value, 0.0, 100.0)


def fraction(name: str, value: object) -> float:
    return between(name, value, 0.0, 1.0)


def celsius(name: str, value: object) -> float:
    number = finite(name, value)
    if number <= -273.15:
        raise ValueError(f"{name} must be above absolute zero (-273.15); got {value}")
    return number


def whole(name: str, value: object, *, at_least: int = 0) -> int:
    number = finite(name, value)
    if number != int(number) or number < at_least:
        raise ValueError(f"{name} must be a whole number of at least {at_least}; got {value}")
    return int(number)


def one_of(name: str, value: str, allowed: Collection[str]) -> str:
    if value not in allowed:
        raise ValueError(f"{name} must be one of {', '.join(map(repr, allowed))}; got {value!r}")
    return value


def finite_array(
    name: str, values: object, *, min_size: int = 1, ndim: int = 1, low: float | None = None
) -> np.ndarray:
    """A float array of ``ndim`` dimensions with at least ``min_size`` values, none below ``low``."""
    try:
        array = np.asarray(values, dtype=float)
    except (TypeError, ValueError, OverflowError):
        raise ValueError(f"{name} must be numbers in {ndim} dimension(s); got {values!r}") from None
    if array.ndim != ndim or array.size < min_size:
        raise ValueError(f"{name} needs at least {min_size} value(s) in {ndim} dimension(s); got shape {array.shape}")
    bad = ~np.isfinite(array) if low is None else ~(np.isfinite(array) & (array >= low))
    if bad.any():
        where = tuple(int(i) for i in np.argwhere(bad)[0])
        what = "finite" if low is None else f"finite and at least {low:g}"
        raise ValueError(f"{name}[{', '.join(map(str, where))}] must be {what}; got {array[where]}")
    return array


def numbers(name: str, values: Sequence[object], check=finite, *, min_size: int = 1) -> list[float]:
    """The same as a plain list, each held to ``check``: for the short columns of a recipe NumPy is slower."""
    column = [check(f"{name}[{i}]", value) for i, value in enumerate(values)]
    if len(column) < min_size:
        raise ValueError(f"{name} needs at least {min_size} value(s); got {len(column)}")
    return column


def total(name: str, column: Sequence[float], given: object = None) -> float:
    """Sum of a column that must amount to something; ``given`` is what to show where it was derived."""
    amount = sum(column)
    if not 0.0 < amount < math.inf:
        raise ValueError(f"{name} must add up to a number above 0; got {column if given is None else given}")
    return amount


def same_length(**columns: Sequence[object]) -> None:
    if len({len(column) for column in columns.values()}) > 1:
        lengths = ", ".join(f"{name} has {len(column)}" for name, column in columns.items())
        raise ValueError(f"columns must be equally long; {lengths}")


def answer(value: float, **arguments: object) -> float:
    """A result that left the range of numbers is refused with the arguments that drove it there."""
    if not math.isfinite(value):
        given = ", ".join(f"{name}={argument}" for name, argument in arguments.items())
        raise ValueError(f"no finite answer for {given}")
    return value


def _number(name: str, value: object) -> float:
    try:
        number = math.nan if isinstance(value, str | bytes | bool) else float(value)
    except (TypeError, ValueError, OverflowError):
        number = math.nan
    if math.isnan(number):
        raise ValueError(f"{name} must be a number; got {value!r}")
    return number
