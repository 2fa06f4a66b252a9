"""What is typed into a sum. Nothing is needed: a line that lacks a number says which."""

import re
from typing import ClassVar

from django import forms
from django.core.exceptions import ValidationError

from trials.models.fields import NumberFormField


def above_zero(value) -> None:
    """For fields whose number reaches the computation in another unit: the message quotes what was typed."""
    if value <= 0:
        raise ValidationError(f"Enter a number above 0, not {value}.")


def per_cent(value) -> None:
    if not 0 <= value <= 100:
        raise ValidationError(f"Enter 0 to 100, not {value}.")


def number(label: str, unit: str = "", **more) -> NumberFormField:
    return NumberFormField(label=label, unit=unit, required=False, **more)


def choice(label: str, choices, **more) -> forms.ChoiceField:
    return forms.ChoiceField(label=label, choices=choices, required=False, **more)


def same(words) -> list[tuple[str, str]]:
    """Choices that are called what they are."""
    return [(word, word) for word in words]


class SumForm(forms.Form):
    """``called`` says which field holds an argument of the computation, where it is not the field of that name."""

    called: ClassVar[dict[str, str]] = {}

    def __init__(self, *args, **kwargs):
        super().__init__(*args, **kwargs)
        for name, field in self.fields.items():
            # The slot of a field's error is always there: it fills and empties while somebody types.
            helped = f"id_{name}_helptext " if field.help_text else ""
            field.widget.attrs["aria-describedby"] = f"{helped}error-{name}"

    def given(self) -> dict[str, float | str | None]:
        """Numbers as floats; None where nothing (or nothing that can be read) was typed."""
        read = {name: self.cleaned_data.get(name) for name in self.fields}
        return {name: float(value) if hasattr(value, "as_tuple") else value for name, value in read.items()}

    def blame(self, message: str) -> None:
        """Put the refusal of a computation at the first field that it names, in the words of the labels."""
        found = []

        def label(match) -> str:
            name = self.called.get(match[0], match[0])
            found.append(name)
            return _in_a_sentence(self.fields[name].label, first=match.start() == 0)

        names = sorted([*self.called, *self.fields], key=len, reverse=True)
        told = re.sub("|".join(map(_as_an_argument, names)), label, message)
        field = found[0] if found else None
        if told not in self.errors.get(field or "__all__", ()):
            self.add_error(field, told)


def _as_an_argument(name: str) -> str:
    """A pattern; a name that is a plain word ("basis") means the argument only where the message starts with it."""
    plain = "^" if name.isalpha() else ""
    return rf"{plain}(?<!\w){re.escape(name)}(?!\w)"


def _in_a_sentence(label: str, *, first: bool) -> str:
    return label if first or label[1:2] in ("", " ", ",") else label[0].lower() + label[1:]
