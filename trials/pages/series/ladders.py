"""Candidates with their dosages, as they are typed on one line."""

import re

from django import forms

from trials.models import Candidate, Lot, Series
from trials.models.fields import read_number
from trials.operations.series import CandidateEntry

_LADDER = {"placeholder": "0.1 0.3 0.5", "data-unit": "%"}


class DosagesField(forms.CharField):
    """Dosages behind one another, with spaces: "0.1 0.3 0.5" or "0,1; 0,3 %"."""

    def prepare_value(self, value):
        return " ".join(format(one, "f") for one in value) if isinstance(value, list | tuple) else value

    def to_python(self, value):
        found = []
        for word in re.split(r"[\s;]+", (value or "").replace("%", " ")):
            typed = word.strip(",")
            if not typed:
                continue
            try:
                number, unit = read_number(typed)
            except ValueError:
                unit, number = typed, None
            if unit or number is None:
                raise forms.ValidationError(f"“{typed}” is no dosage: put a space between numbers, as 0.1 0.3 0.5.")
            if not 0 <= number <= 100:
                raise forms.ValidationError(f"A dosage is from 0 to 100 %; got {number}.")
            found.append(number)
        if len(set(found)) < len(found):
            raise forms.ValidationError(f"One dosage stands there twice: “{value}”.")
        return tuple(found)

    def validate(self, value):
        if self.required and not value:
            raise forms.ValidationError("Give at least one dosage.")


class CandidateField(forms.CharField):
    """A candidate by its code."""

    def __init__(self, **kwargs):
        widget = forms.TextInput(attrs={"list": "candidate-codes", "autocomplete": "off"})
        super().__init__(max_length=20, widget=widget, **kwargs)

    def prepare_value(self, value):
        return value.material.code if isinstance(value, Candidate) else value

    def clean(self, value):
        code = super().clean(value)
        if not code:
            return None
        found = Candidate.objects.select_related("material").filter(material__code__iexact=code).first()
        if found is None:
            raise forms.ValidationError(f"There is no additive “{code}”. Enter one of the codes.")
        return found


def find_lot(form: forms.Form, candidate: Candidate | None, number: str) -> Lot | None:
    """The lot of this number; told at the field where the candidate has none."""
    if not candidate or not number:
        return None
    lot = Lot.objects.filter(material=candidate.material_id, number__iexact=number).first()
    if lot is None:
        form.add_error("lot", f"{candidate.material.code} has no lot “{number}”.")
    return lot


class CandidateRow(forms.Form):
    """One candidate with its ladder."""

    candidate = CandidateField(label="Additive", required=False)
    dosages_pct = DosagesField(
        label="Dosages",
        required=False,
        widget=forms.TextInput(attrs=_LADDER),
    )
    lot = forms.CharField(label="Lot", max_length=40, required=False)
    stage = forms.ChoiceField(label="Stage, if another", required=False)

    def __init__(self, *args, **kwargs):
        super().__init__(*args, **kwargs)
        self.fields["stage"].choices = [("", "as the series"), *Series._meta.get_field("stage").choices]

    def clean(self):
        cleaned = super().clean()
        candidate, dosages = cleaned.get("candidate"), cleaned.get("dosages_pct")
        if candidate and dosages == ():
            self.add_error("dosages_pct", f"Give the dosages of {candidate.material.code}.")
        if dosages and "candidate" in cleaned and not candidate:
            self.add_error("candidate", "Say which additive these dosages are of.")
        cleaned["lot"] = find_lot(self, candidate, cleaned.get("lot", "").strip())
        return cleaned

    def entry(self) -> CandidateEntry | None:
        typed = self.cleaned_data
        if not typed.get("candidate"):
            return None
        return CandidateEntry(typed["candidate"], typed["dosages_pct"], typed["lot"], typed["stage"] or None)


CandidateFormSet = forms.formset_factory(CandidateRow, extra=3, max_num=30, validate_max=True)
