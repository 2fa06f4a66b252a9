"""The questions about bubbles, and what somebody takes them for."""

from django import forms

from trials.models.trials import Cause
from trials.science.causes import CAUSES, QUESTIONS


class AskForm(forms.Form):
    """One group of radio buttons for each question; "not known" is always an answer."""

    def __init__(self, data):
        # A question left out of the address is not known either: its first button is the one that is on.
        known = {question.key: data.get(question.key, "") for question in QUESTIONS}
        super().__init__(known)
        for question in QUESTIONS:
            self.fields[question.key] = forms.ChoiceField(
                label=question.text,
                required=False,
                choices=[("", "not known"), *question.answers.items()],
                widget=forms.RadioSelect,
            )

    def answers(self) -> dict[str, str]:
        """What can be read; an answer that is none of those offered has its error and does not count."""
        self.is_valid()
        return {key: answer for key, answer in self.cleaned_data.items() if answer}


class FindingForm(forms.Form):
    cause = forms.ChoiceField(
        label="You take it for",
        required=False,
        choices=[("", "not told apart yet"), *((one.value, one.label) for one in Cause if one.value in CAUSES)],
    )
    remark = forms.CharField(
        label="Remark", required=False, max_length=2000, widget=forms.Textarea(attrs={"rows": 2})
    )
