from django import forms

from trials.models.signing import Meaning


class SignForm(forms.Form):
    meaning = forms.ChoiceField(
        label="You sign it as",
        choices=[
            (Meaning.PERFORMED, "performed: I did this work"),
            (Meaning.COUNTERSIGNED, "countersigned: I read it"),
        ],
    )

    def __init__(self, *args, ask, **kwargs):
        self._ask = ask
        super().__init__(*args, **kwargs)

    def clean_password(self):
        wrong = self._ask(self.cleaned_data["password"])
        if wrong:
            raise forms.ValidationError(wrong)

    password = forms.CharField(
        strip=False,
        label="Your password",
        widget=forms.PasswordInput(attrs={"autocomplete": "current-password"}),
    )
