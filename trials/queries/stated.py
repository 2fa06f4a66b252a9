"""Values as they were entered, each with its unit and what stands behind it."""

from dataclasses import dataclass
from datetime import date

from django.conf import settings
from django.db.models import Field, Model

from trials.models.materials import EnteredAs


@dataclass(frozen=True, slots=True)
class StatedFact:
    """A value that nobody entered reads "not stated"."""

    label: str
    value: object
    unit: str = ""
    source: str = ""


def stated(record: Model, *names: str) -> tuple[StatedFact, ...]:
    """Fields of a record as facts."""
    return tuple(fact(record._meta.get_field(name), getattr(record, name)) for name in names)


def fact(field: Field, value, source: str = "") -> StatedFact:
    label = str(field.verbose_name)
    label = label[:1].upper() + label[1:]
    if value is None:
        return StatedFact(label, "not stated")
    if field.name == "price_per_kg":
        return StatedFact(label, value, f"{settings.CURRENCY}/kg", source)
    shown = f"{value.day} {value:%b %Y}" if isinstance(value, date) else value
    return StatedFact(label, shown, getattr(field, "unit", ""), source or str(field.help_text))


def as_entered(entered_as: str, value) -> str:
    """What a data sheet or certificate gives, with its unit: "NCO content 30.8 %"."""
    what, _, unit = EnteredAs(entered_as).label.partition(", ")
    return f"{what} {value} {unit}"
