"""What a sum starts from: a base or a cup of the record, where the person may see it."""

from dataclasses import dataclass, field

from django import forms
from django.http import QueryDict
from django.urls import reverse

from trials.queries import known
from trials.queries.bases import base_list, load_revision
from trials.queries.trials import load_trial


@dataclass(frozen=True, slots=True)
class Start:
    """``values`` by field; ``query`` is the part of the address that leads here again."""

    said: str = ""
    url: str = ""
    query: str = ""
    values: dict[str, object] = field(default_factory=dict)


class StartForm(forms.Form):
    """The code of a base (with a revision, else its newest) or of a cup; a cup knows its base."""

    base = forms.ChoiceField(label="Base", required=False)
    revision = forms.IntegerField(required=False, min_value=1, widget=forms.HiddenInput)
    trial = forms.CharField(
        label="or cup", required=False, max_length=16, widget=forms.TextInput(attrs={"autocomplete": "off"})
    )

    def __init__(self, data, *, person):
        super().__init__(data, auto_id="from_%s")
        self._person = person
        codes = [(base.code, str(base)) for base in base_list(person)]
        self.fields["base"].choices = [("", "–"), *codes]
        self.fields["base"].error_messages["invalid_choice"] = "There is no base “%(value)s” that you may see."
        self.start = Start()

    def clean(self):
        cleaned = super().clean()
        if cleaned.get("trial"):
            self.start = self._of_trial(cleaned["trial"])
        elif cleaned.get("base"):
            self.start = self._of_base(cleaned["base"], cleaned.get("revision"))
        return cleaned

    def _of_trial(self, code: str) -> Start:
        trial = load_trial(self._person, code)
        if trial is None:
            self.add_error("trial", f"There is no cup “{code}” that you may see.")
            return Start()
        revision = load_revision(self._person, trial.series.revision.base.code, trial.series.revision.number)
        values = known.of_trial(trial, revision)
        return Start(f"cup {trial.code}", reverse("trial", args=[trial.code]), _query(trial=trial.code), values)

    def _of_base(self, code: str, number: int | None) -> Start:
        revision = load_revision(self._person, code, number)
        if revision is None:
            self.add_error("base", f"{code} has no revision {number}.")
            return Start()
        return Start(
            str(revision),
            reverse("base_revision", args=[code, revision.number]),
            _query(base=code, revision=revision.number),
            known.of_revision(revision),
        )


def _query(**values) -> str:
    query = QueryDict(mutable=True)
    query.update(values)
    return query.urlencode()
