"""What every form about a cup carries: the version on the screen, and the reason where the cup is signed."""

from contextlib import contextmanager

from django import forms
from django.utils import timezone

from trials.operations.acting import Refused
from trials.operations.signing import amending
from trials.pages.password import is_own_password
from trials.queries.history import version

NOTHING = ("", "–")


def copied_down(field: forms.Field) -> forms.Field:
    """In a new row it takes the value of the row above."""
    field.widget.attrs["data-copy-down"] = ""
    return field


class DateTimeInput(forms.DateTimeInput):
    input_type = "datetime-local"

    def __init__(self, attrs=None):
        super().__init__(attrs=attrs, format="%Y-%m-%dT%H:%M")


class CupForm(forms.Form):
    """A form about one cup. ``parts`` are the lists it writes over, ``signed`` is what holds the cup fast."""

    parts: tuple[str, ...] = ()

    def __init__(self, *args, trial, signed=None, **kwargs):
        super().__init__(*args, **kwargs)
        self.trial = trial
        if self.parts:
            self.fields["seen"] = forms.CharField(required=False, widget=forms.HiddenInput)
            if not self.is_bound:
                self.initial["seen"] = version(trial, parts=self.parts)
        if signed is not None:
            self.fields |= amend_fields()

    @property
    def seen(self) -> str:
        return self.cleaned_data.get("seen", "")

    def add_error(self, field, error):
        if field == "seen":
            # Told once: keeping it again means it.
            self.data = self.data.copy()
            self.data[self.add_prefix("seen")] = version(self.trial, parts=self.parts)
            field = None
        super().add_error(field, error)


def amend_fields() -> dict[str, forms.CharField]:
    """Asked where something signed is to change: an amendment is a signature too."""
    return {
        "amend_reason": forms.CharField(
            label="Why this comes after signing",
            widget=forms.Textarea(attrs={"rows": 2}),
            help_text="This is signed: what you keep here becomes an amendment under your name.",
        ),
        "amend_password": forms.CharField(
            label="Your password",
            strip=False,
            widget=forms.PasswordInput(attrs={"autocomplete": "current-password"}),
        ),
    }


@contextmanager
def writing(request, signed, form: forms.Form):
    """Write as an amendment where something signed holds the cup fast."""
    if signed is None:
        yield
        return
    wrong = is_own_password(request, form.cleaned_data["amend_password"])
    if wrong:
        raise Refused(wrong, field="amend_password")
    reason = form.cleaned_data["amend_reason"]
    with amending(actor=request.user, now=timezone.now(), record=signed, reason=reason):
        yield
