"""Wet readings as they are typed. The forms check; they never write."""

from django import forms

from trials.models import Trial, WetReading
from trials.models.trials import WetQuantity, Where
from trials.operations.wet import WetCorrection, WetEntry
from trials.pages.figure_or_word import FigureOrWord, FigureOrWordField

from .writing import NOTHING, copied_down

IN_WORDS = (WetQuantity.CLARITY, WetQuantity.APPEARANCE)


class WetLine(forms.Form):
    """One wet reading; choose – to take a row out."""

    quantity = forms.ChoiceField(label="What", required=False, choices=[NOTHING, *WetQuantity.choices])
    where = forms.ChoiceField(
        label="Of", choices=Where.choices, required=False, widget=forms.Select(attrs={"data-copy-down": ""})
    )
    reading = FigureOrWordField(label="Value, or a word", max_length=160)
    minutes = copied_down(WetReading._meta.get_field("minutes").formfield(required=False, label="After"))
    method = forms.CharField(
        label="Method", max_length=120, required=False, widget=forms.TextInput(attrs={"data-copy-down": ""})
    )
    row = forms.IntegerField(required=False, widget=forms.HiddenInput)

    def _clean_fields(self):
        # Clarity and appearance are told in words, which may hold figures: “3 mm clear on top”.
        self.fields["reading"].words = self.data.get(self.add_prefix("quantity")) in IN_WORDS
        super()._clean_fields()

    def clean(self):
        cleaned = super().clean()
        reading = cleaned.get("reading")
        if reading is None:
            return cleaned
        if not reading.empty and not cleaned.get("quantity") and not cleaned.get("row"):
            self.add_error("quantity", f"Say what “{reading.typed}” is.")
        if reading.empty and cleaned.get("quantity"):
            self.add_error("reading", "Enter a value, or a word such as “spilled”; choose – to take the row out.")
        return cleaned

    def entry(self, trial: Trial) -> WetEntry | None:
        cleaned = self.cleaned_data
        if not cleaned.get("quantity"):
            return None
        reading: FigureOrWord = cleaned["reading"]
        return WetEntry(
            quantity=cleaned["quantity"],
            where=cleaned["where"] or Where.A,
            value=reading.value,
            word=reading.word,
            minutes=cleaned["minutes"],
            method=cleaned["method"],
            trial=trial,
        )


class WetLines:
    """The wet readings of one cup, those that stand first."""

    def __init__(self, data, trial: Trial):
        self._trial = trial
        self._standing = {row.pk: row for row in trial.wet_readings.order_by("pk")}
        formset = forms.formset_factory(WetLine, extra=4, max_num=80)
        self.formset = formset(data, prefix="wet", initial=[_read(row) for row in self._standing.values()])

    def is_valid(self) -> bool:
        return self.formset.is_valid()

    def entries(self) -> list[WetEntry]:
        new = (form.entry(self._trial) for form in self.formset.forms if not self._row(form))
        return [entry for entry in new if entry]

    def corrections(self) -> list[WetCorrection]:
        old = ((self._row(form), form) for form in self.formset.forms if form.has_changed())
        return [WetCorrection(row, form.entry(self._trial)) for row, form in old if row]

    def _row(self, form):
        """None for a new row, and for one that is not this cup's."""
        return self._standing.get(form.cleaned_data.get("row"))


def _read(row) -> dict:
    reading = FigureOrWord(row.value, row.word)
    return {
        "quantity": row.quantity,
        "where": row.where,
        "reading": reading,
        "minutes": row.minutes,
        "method": row.method,
        "row": row.pk,
    }
