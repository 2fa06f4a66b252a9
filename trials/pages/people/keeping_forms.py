"""What an administrator types about people, and what everybody types to change the own password."""

from django import forms

from trials.models import Person
from trials.pages.record_form import RecordForm


def _password(label, *, autocomplete="new-password", **more):
    widget = forms.PasswordInput(attrs={"autocomplete": autocomplete})
    return forms.CharField(label=label, strip=False, widget=widget, **more)


class NewPersonForm(RecordForm):
    password = _password("First password", help_text="at least 10 characters; the person changes it after signing in")

    class Meta:
        model = Person
        fields = ["sign_in_name", "full_name", "initials", "role"]

    def clean_sign_in_name(self):
        name = self.cleaned_data["sign_in_name"].strip().lower()
        if Person.objects.filter(sign_in_name=name).exists():
            raise forms.ValidationError(f"The sign-in name “{name}” is taken.")
        return name


class PersonForm(RecordForm):
    password = _password("New password", required=False, help_text="only when it was forgotten; else leave it empty")

    class Meta:
        model = Person
        fields = ["full_name", "initials", "role", "is_active"]


class OwnPasswordForm(forms.Form):
    old = _password("Your password now", autocomplete="current-password")
    password = _password("New password", help_text="at least 10 characters")
    again = _password("New password once more")

    def clean(self):
        typed = super().clean()
        new, again = typed.get("password"), typed.get("again")
        if new and again and new != again:
            self.add_error("again", "This is not the same as the new password above.")
        return typed
