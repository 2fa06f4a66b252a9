"""What one looks for. Everything stands in the address, so that a search can be sent to somebody."""

from django import forms
from django.core.exceptions import ValidationError

from trials import access
from trials.models import Candidate
from trials.models.series import Outcome
from trials.models.trials import Mode
from trials.queries.search import Asked, Place

ANY = ("", "any")


class DayField(forms.DateField):
    """A day; the error quotes what was typed instead."""

    widget = forms.DateInput(format="%Y-%m-%d", attrs={"type": "date"})

    def to_python(self, value):
        try:
            return super().to_python(value)
        except ValidationError:
            raise ValidationError(f"Enter a day such as 2026-03-31, not “{value}”.", code="invalid") from None


class FindForm(forms.Form):
    ORDER = (("", "newest first"), ("best", "best match first"))
    FILTERS = ("base", "candidate", "failure", "outcome", "since", "until", "after")

    q = forms.CharField(label="Words or a code", required=False, max_length=200)
    base = forms.ChoiceField(label="Base", required=False)
    candidate = forms.ChoiceField(label="Additive", required=False)
    failure = forms.ChoiceField(label="How it failed", choices=[ANY, *Mode.choices], required=False)
    outcome = forms.ChoiceField(label="Outcome", choices=[ANY, *Outcome.choices], required=False)
    since = DayField(label="From", required=False)
    until = DayField(label="To", required=False)
    order = forms.ChoiceField(label="Order", choices=ORDER, required=False)
    after = forms.CharField(required=False, widget=forms.HiddenInput)

    def __init__(self, *args, person, **kwargs):
        super().__init__(*args, **kwargs)
        bases = access.bases(person).order_by("code", "pk").values_list("code", "name")
        candidates = Candidate.objects.order_by("material__code", "pk").values_list(
            "material__code", "material__name"
        )
        self.fields["base"].choices = [ANY, *((code, f"{code} {name}") for code, name in bases)]
        self.fields["candidate"].choices = [ANY, *((code, f"{code} {name}") for code, name in candidates)]

    def clean_after(self):
        text = self.cleaned_data["after"]
        if not text:
            return None
        try:
            return Place.read(text)
        except ValueError:
            raise ValidationError(f"“{text}” is no place in this list: begin at its first page.") from None

    def clean(self):
        cleaned = super().clean()
        since, until = cleaned.get("since"), cleaned.get("until")
        if since and until and until < since:
            self.add_error("until", f"{until} is before {since}, the day to begin with.")
        return cleaned

    @property
    def typed_alone(self) -> str:
        """What stands in the box, where nothing else was asked."""
        return "" if any(self.data.get(name) for name in self.FILTERS) else self.data.get("q", "").strip()

    def asked(self) -> Asked:
        """Expects a valid form."""
        found = self.cleaned_data
        return Asked(
            words=found["q"],
            base=found["base"],
            candidate=found["candidate"],
            failure=found["failure"],
            outcome=found["outcome"],
            since=found["since"],
            until=found["until"],
            best_first=found["order"] == "best",
        )
