"""Which bases are like another, property by property.

Numbers and names are compared side by side, each difference between 0 (the same) and 1 (as far apart as any here).
What is not known of one of the two counts neither for nor against them, that is one half, and is said to be unknown:
left out altogether, the base of which least is known would come first.
"""

import math
from collections.abc import Collection, Hashable, Mapping
from dataclasses import dataclass
from numbers import Number

from trials.science._refuse import finite, not_negative, positive, total

UNKNOWN = 0.5

Properties = Mapping[str, float | str | None]


@dataclass(frozen=True, slots=True)
class Likeness:
    """How far one base is: over all, and in each property, where ``None`` is unknown."""

    base: Hashable
    distance: float
    by_property: dict[str, float | None]
    unknown: tuple[str, ...]


def nearest(
    bases: Mapping[Hashable, Properties],
    base: Properties,
    *,
    weights: Mapping[str, float],
    by_ratio: Collection[str] = (),
) -> tuple[Likeness, ...]:
    """Bases ordered by their likeness to one, the most alike first.

    Parameters
    ----------
    bases : mapping of name to properties
        Properties by name: a number, a word, or ``None`` or absent where unknown.
    base : mapping
        Properties of the one that is asked about.
    weights : mapping of property to float
        The properties that count, 0 or more, not all 0.
    by_ratio : collection of str
        Properties that span decades, such as viscosity or film thickness: compared by their ratio, above 0.

    Returns
    -------
    tuple of Likeness
        Those equally far keep the order they came in.

    Raises
    ------
    ValueError
        Where a number is impossible or a property is a number here and a word there.

    Notes
    -----
    J. C. Gower, Biometrics 27 (1971) 857: differences of numbers over their range among all bases here, words 0 or
    1. Gower leaves unknown properties out; here they count one half.

    Examples
    --------
    >>> known = {"K1": {"binder": "epoxy", "viscosity_pa_s": 1.0}, "K2": {"binder": "epoxy"}}
    >>> asked = {"binder": "epoxy", "viscosity_pa_s": 1.0}
    >>> [(one.base, one.distance, one.unknown) for one in nearest(known, asked, weights=dict.fromkeys(asked, 1.0))]
    [('K1', 0.0, ()), ('K2', 0.25, ('viscosity_pa_s',))]
    """
    shares = {name: not_negative(f"weights[{name!r}]", weight) for name, weight in weights.items()}
    whole = total("weights", list(shares.values()))
    everyone = {"base": base} | {f"bases[{key!r}]": properties for key, properties in bases.items()}
    columns = {name: _column(name, everyone, ratio=name in by_ratio) for name in shares}
    found = []
    for key in bases:
        parts = {name: _difference(column, f"bases[{key!r}]") for name, column in columns.items()}
        distance = sum(shares[n] / whole * (UNKNOWN if part is None else part) for n, part in parts.items())
        unknown = tuple(name for name, part in parts.items() if part is None)
        found.append(Likeness(base=key, distance=distance, by_property=parts, unknown=unknown))
    return tuple(sorted(found, key=lambda one: one.distance))


def _column(name: str, everyone: Mapping[str, Properties], *, ratio: bool) -> dict[str, float | str]:
    """Known values of one property, numbers already on a scale from 0 to 1."""
    known = {who: properties[name] for who, properties in everyone.items() if properties.get(name) is not None}
    are_numbers = {who: isinstance(value, Number) and not isinstance(value, bool) for who, value in known.items()}
    if not any(are_numbers.values()):
        return known
    for who, is_number in are_numbers.items():
        if not is_number:
            raise ValueError(f"{who}[{name!r}] must be a number as elsewhere; got {known[who]!r}")
    scaled = {who: _scaled(f"{who}[{name!r}]", value, ratio=ratio) for who, value in known.items()}
    low, high = min(scaled.values()), max(scaled.values())
    span = high / 2.0 - low / 2.0  # halves, so that the widest range of all still has a number
    return {who: (value / 2.0 - low / 2.0) / span if span > 0.0 else 0.0 for who, value in scaled.items()}


def _scaled(name: str, value: object, *, ratio: bool) -> float:
    return math.log(positive(name, value)) if ratio else finite(name, value)


def _difference(column: Mapping[str, float | str], who: str) -> float | None:
    if who not in column or "base" not in column:
        return None
    here, there = column[who], column["base"]
    if isinstance(here, float):
        return abs(here - there)
    return 0.0 if here == there else 1.0
