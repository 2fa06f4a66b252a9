"""Numbers as people type them."""

import re
from decimal import Decimal, InvalidOperation

from django import forms
from django.core.exceptions import ValidationError
from django.db import models

_TYPED = re.compile(r"([+-]?[\d.,\s\u00a0\u202f']*\d[\d.,]*)\s*(.*)", re.DOTALL)


def read_number(text: str) -> tuple[Decimal, str]:
    """The number and the unit typed behind it; decimal comma and point are both taken.

    Where both stand, the last one is the decimal mark: ``1.234,5`` and ``1,234.5`` are the same.

    Raises
    ------
    ValueError
        If there is no number in the text; the message quotes it.
    """
    match = _TYPED.fullmatch(text.strip())
    if not match:
        raise ValueError(f"“{text}” is not a number")
    digits = re.sub(r"[\s\u00a0\u202f']", "", match[1])
    comma, point = digits.rfind(","), digits.rfind(".")
    if comma >= 0 and point >= 0:
        digits = digits.replace("." if comma > point else ",", "")
    try:
        return Decimal(digits.replace(",", ".")), match[2].strip()
    except InvalidOperation:
        raise ValueError(f"“{text}” is not a number") from None


class NumberFormField(forms.DecimalField):
    """A text field: ``0,5 %`` and ``0.5`` are the same, a unit that is not the column's is refused."""

    widget = forms.TextInput

    def __init__(self, *, unit="", **kwargs):
        self.unit = unit
        super().__init__(**kwargs)

    def widget_attrs(self, widget):
        return {"inputmode": "decimal", "autocomplete": "off"}

    def to_python(self, value):
        if value in self.empty_values or isinstance(value, Decimal):
            return super().to_python(value)
        try:
            found, unit = read_number(str(value))
        except ValueError as error:
            raise ValidationError(f"Enter a number: {error}.", code="invalid") from None
        if unit and unit.replace(" ", "").casefold() != self.unit.replace(" ", "").casefold():
            wanted = f"in {self.unit}" if self.unit else "without a unit"
            raise ValidationError(f"Enter the number {wanted}, not “{value}”.", code="unit")
        return super().to_python(found)


class Number(models.DecimalField):
    """PostgreSQL ``numeric`` without a fixed scale, so that 0.30 stays 0.30; ``unit`` is shown and understood."""

    def __init__(self, *args, unit="", **kwargs):
        kwargs.pop("max_digits", None)
        kwargs.pop("decimal_places", None)
        self.unit = unit
        super().__init__(*args, max_digits=None, decimal_places=None, **kwargs)

    def check(self, **kwargs):
        # Django wants a scale for every decimal column; this one has none on purpose.
        return models.Field.check(self, **kwargs)

    def db_type(self, connection):
        return "numeric"

    def formfield(self, **kwargs):
        return models.Field.formfield(self, form_class=NumberFormField, unit=self.unit, **kwargs)

    def deconstruct(self):
        name, path, args, kwargs = super().deconstruct()
        kwargs.pop("max_digits", None)
        kwargs.pop("decimal_places", None)
        return name, path, args, kwargs


def quantity(**kwargs) -> Number:
    """A number that may be unknown."""
    return Number(null=True, blank=True, **kwargs)


def words(**kwargs) -> models.TextField:
    """Free text that may be empty."""
    return models.TextField(blank=True, default="", **kwargs)


def _said(name: str) -> str:
    stem = re.sub(r"_(pct|g_ml|g|kg|min|m_s|mpa_s|pa|um|per_kg)$", "", name)
    return stem.replace("_", " ").capitalize()


def positive(*names: str, table: str) -> list[models.CheckConstraint]:
    """Named constraints: each of these is unknown or above nought."""
    return [
        models.CheckConstraint(
            condition=models.Q(**{f"{name}__isnull": True}) | models.Q(**{f"{name}__gt": 0}),
            name=f"{table}_{name}_positive",
            violation_error_message=f"{_said(name)} must be above 0.",
        )
        for name in names
    ]


def not_negative(*names: str, table: str) -> list[models.CheckConstraint]:
    """Named constraints: each of these is unknown, nought or above."""
    return [
        models.CheckConstraint(
            condition=models.Q(**{f"{name}__isnull": True}) | models.Q(**{f"{name}__gte": 0}),
            name=f"{table}_{name}_not_negative",
            violation_error_message=f"{_said(name)} must not be below 0.",
        )
        for name in names
    ]


def per_cent(*names: str, table: str) -> list[models.CheckConstraint]:
    """Named constraints: each of these is unknown or from 0 to 100."""
    return [
        models.CheckConstraint(
            condition=models.Q(**{f"{name}__isnull": True}) | models.Q(**{f"{name}__gte": 0, f"{name}__lte": 100}),
            name=f"{table}_{name}_per_cent",
            violation_error_message=f"{_said(name)} must be from 0 to 100.",
        )
        for name in names
    ]


def one_of(name: str, choices: type[models.TextChoices], *, table: str) -> models.CheckConstraint:
    """Named constraint: the column holds one of the words the form offers."""
    return models.CheckConstraint(
        condition=models.Q(**{f"{name}__in": list(choices.values)}), name=f"{table}_{name}_known"
    )
