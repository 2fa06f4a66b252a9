"""Impossible values are refused at the field, with the range that would be taken, as the table's constraints say."""

from collections.abc import Iterator
from dataclasses import dataclass
from decimal import Decimal
from functools import cache

from django.core.exceptions import ValidationError
from django.db.models import CheckConstraint, Model, Q

from .acting import Refused

_LOWER, _UPPER = ("gt", "gte"), ("lt", "lte")


@dataclass(frozen=True, slots=True)
class Bounds:
    """``low`` itself is taken unless ``above``."""

    low: Decimal | None = None
    above: bool = False
    high: Decimal | None = None

    def refuse(self, value) -> bool:
        too_low = self.low is not None and (value <= self.low if self.above else value < self.low)
        return too_low or (self.high is not None and value > self.high)

    def __str__(self):
        if self.high is not None:
            return f"from {self.low} to {self.high}"
        return f"above {self.low}" if self.above else f"{self.low} or more"


@cache
def bounds(model: type[Model]) -> dict[str, Bounds]:
    """What the named constraints of a table say about one number at a time, by field."""
    checks = (
        constraint.condition for constraint in model._meta.constraints if isinstance(constraint, CheckConstraint)
    )
    return dict(found for condition in checks if (found := _bounds_of(condition)))


def impossible(record: Model) -> Iterator[tuple[str, str]]:
    """(field, message) for every number of the record beyond its bounds."""
    for name, allowed in bounds(type(record)).items():
        value = getattr(record, name)
        if value is not None and allowed.refuse(value):
            field = record._meta.get_field(name)
            got = f"{value} {getattr(field, 'unit', '')}".strip()
            yield name, f"{field.verbose_name[:1].upper()}{field.verbose_name[1:]} must be {allowed}; got {got}."


def hold_to_limits(record: Model) -> None:
    """Refuse a record whose values are not of the field's kind or are impossible.

    Raises
    ------
    Refused
        At the field, with the value.
    """
    keys = {field.name for field in record._meta.concrete_fields if field.is_relation}
    try:
        record.clean_fields(exclude=keys)
    except ValidationError as error:
        name, messages = next(iter(error.message_dict.items()))
        field = record._meta.get_field(name)
        raise Refused(f"{field.verbose_name}: {messages[0]} Got “{getattr(record, name)}”.", field=name) from error
    for name, message in impossible(record):
        raise Refused(message, field=name)


def _leaves(condition) -> Iterator[tuple]:
    for child in condition.children:
        if isinstance(child, Q):
            yield from _leaves(child)
        else:
            yield child if isinstance(child, tuple) else (str(child), None)


def _bounds_of(condition) -> tuple[str, Bounds] | None:
    """None where the condition speaks of several fields, of words, or of another field's value."""
    found: dict = {}
    names = set()
    for lookup, value in _leaves(condition):
        name, _, how = lookup.rpartition("__")
        names.add(name)
        if how in (*_LOWER, *_UPPER) and isinstance(value, int | float | Decimal):
            found["low" if how in _LOWER else "high"] = value
            found["above"] = found.get("above", False) or how == "gt"
        elif how != "isnull":
            return None
    return (names.pop(), Bounds(**found)) if len(names) == 1 and found else None
