"""A cell that takes a figure, or a word instead: “spilled” is an answer."""

from dataclasses import dataclass
from decimal import Decimal

from django import forms
from django.core.exceptions import ValidationError

from trials.models.fields import NumberFormField


@dataclass(frozen=True, slots=True)
class FigureOrWord:
    value: Decimal | None = None
    word: str = ""

    @property
    def empty(self) -> bool:
        return self.value is None and not self.word

    @property
    def typed(self) -> str:
        """As it would be typed again."""
        return self.word if self.value is None else format(self.value, "f")


class FigureOrWordField(forms.CharField):
    """Cleans to a ``FigureOrWord``. What holds figures has to be a number, so that a slip is not kept as a word."""

    def __init__(self, *, unit="", words=False, max_length=60, **kwargs):
        super().__init__(required=False, max_length=max_length, **kwargs)
        self.unit = unit
        self.words = words
        self._number = NumberFormField(unit=unit, required=False)

    def widget_attrs(self, widget):
        return {**super().widget_attrs(widget), "autocomplete": "off", "size": 9}

    def prepare_value(self, value):
        return value.typed if isinstance(value, FigureOrWord) else value

    def has_changed(self, initial, data):
        return super().has_changed(self.prepare_value(initial) or "", data)

    def clean(self, value):
        text = super().clean(value)
        if not text:
            return FigureOrWord()
        if self.words or not any(sign.isdecimal() for sign in text):
            return FigureOrWord(word=text)
        try:
            return FigureOrWord(self._number.clean(text))
        except ValidationError as error:
            raise ValidationError(f"{error.messages[0]} A word instead of a figure has no figures in it.") from None
