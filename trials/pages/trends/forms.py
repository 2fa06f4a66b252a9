"""What is watched. Everything stands in the address; what is not chosen is what was tried most."""

from django import forms

from trials.queries.drift import EVERY_DOSAGE
from trials.queries.trends import Choice

LATEST = "latest"
AGES = (("", "24 h"), ("4", "4 h"), ("168", "7 d"), ("672", "28 d"), (LATEST, "latest from 20 h on"))
USUAL_AGE_H = 24.0
USUAL = "bubble-count"


class WatchForm(forms.Form):
    """``show`` is the part of the page; what is asked for by it comes first, from ``choices``."""

    show = forms.CharField(widget=forms.HiddenInput)
    of = forms.ChoiceField(label="By", required=False)
    age = forms.ChoiceField(label="Read at the age of", choices=AGES, required=False)

    def __init__(self, data, *, show: str, choices: tuple[Choice, ...], watched):
        super().__init__({**data.dict(), "show": show})
        chosen = self.fields[self.subject]
        chosen.choices = [(one.code, f"{one.code} {one.name} ({one.series} series)") for one in choices]
        self.fields["of"].choices = watched
        self._first = choices[0].code if choices else ""
        self.data.setdefault(self.subject, self._first)
        self.data.setdefault("of", USUAL)

    def asked(self) -> dict:
        """Arguments of the query. Expects a valid form."""
        found = self.cleaned_data
        age = found["age"]
        return {
            "code": found[self.subject] or self._first,
            "key": found["of"] or USUAL,
            "age_h": None if age == LATEST else float(age or USUAL_AGE_H),
        }


class CandidateForm(WatchForm):
    subject = "candidate"
    candidate = forms.ChoiceField(label="Additive", required=False)
    base = forms.ChoiceField(label="In the base", required=False)
    field_order = ("candidate", "base", "of", "age")

    def __init__(self, *args, bases: tuple[Choice, ...], **kwargs):
        super().__init__(*args, **kwargs)
        self.fields["base"].choices = [("", "any"), *((one.code, f"{one.code} {one.name}") for one in bases)]

    def asked(self) -> dict:
        return super().asked() | {"base": self.cleaned_data["base"]}


class DosageForm(forms.Form):
    """The dosages to choose from, known only when the series are read."""

    dosage = forms.ChoiceField(label="Dosage", required=False)

    def __init__(self, *, dosages: tuple[str, ...], chosen: str):
        super().__init__(initial={"dosage": chosen})
        self.fields["dosage"].choices = [
            *((one, one) for one in dosages),
            (EVERY_DOSAGE, "every one, without a mean"),
        ]


class BaseForm(WatchForm):
    subject = "base"
    base = forms.ChoiceField(label="Base", required=False)
    field_order = ("base", "of", "age")
