"""Values as they were entered, each with its unit and what stands behind it."""

from dataclasses import dataclass
from datetime import date

from django.conf import settings
from django.db.models import Field, Model


@dataclass(frozen=True, slots=True)
class StatedFact:
    """``value`` None: nobody entered one."""

    label: str
    value: object
    unit: str = ""
    source: str = ""


def stated(record: Model, *names: str) -> tuple[StatedFact, ...]:
    """Fields of a record as facts."""
    return tuple(fact(record._meta.get_field(name), getattr(record, name)) for name in names)


def fact(field: Field, value, source: str = "") -> StatedFact:
    label = str(field.verbose_name)
    return StatedFact(
        label=label[:1].upper() + label[1:],
        value=f"{value.day} {value:%b %Y}" if isinstance(value, date) else value,
        unit=f"{settings.CURRENCY}/kg" if field.name == "price_per_kg" else getattr(field, "unit", ""),
        source=source or str(field.help_text),
    )
