"""What people conclude, as it is typed."""

from django import forms

from trials.models import Candidate, Series, Trial
from trials.models.fields import NumberFormField
from trials.models.series import Outcome
from trials.models.trials import Cause, Mode
from trials.operations.judging import FailureEntry, TrialEntry
from trials.queries.groups import Group
from trials.queries.history import version
from trials.queries.judging import Judgement, Line

OPEN = ("", "not decided")
OUTCOMES = [OPEN, *Outcome.choices]
LONG = forms.Textarea(attrs={"rows": 3})
SHORT = forms.Textarea(attrs={"rows": 2})


class SeenForm(forms.Form):
    """Carries the version of the record that is on the screen."""

    parts: tuple[str, ...] = ()
    seen = forms.CharField(required=False, widget=forms.HiddenInput)

    def __init__(self, *args, record, **kwargs):
        super().__init__(*args, **kwargs)
        self._record = record
        self.fields["seen"].initial = version(record, parts=self.parts)

    def add_error(self, field, error):
        if field == "seen":
            # Told once: keeping it again means it.
            self.data = self.data.copy()
            self.data[self.add_prefix("seen")] = version(self._record, parts=self.parts)
            field = None
        super().add_error(field, error)


class SeriesForm(SeenForm):
    outcome = forms.ChoiceField(choices=OUTCOMES, required=False)
    conclusion = forms.CharField(required=False, widget=LONG)
    lesson = forms.CharField(required=False, widget=SHORT, help_text="for the next person, in a sentence or two")
    not_tested = forms.CharField(label="What was not tested", required=False, widget=SHORT)
    recommended = forms.ModelChoiceField(
        Candidate.objects.none(), required=False, label="Additive recommended", empty_label="–"
    )
    window_from_pct = NumberFormField(label="Window from", unit="%", required=False)
    window_to_pct = NumberFormField(label="Window to", unit="%", required=False)
    working_pct = NumberFormField(label="Working dosage", unit="%", required=False)

    def __init__(self, *args, judged: Judgement, **kwargs):
        start = start_of(judged)
        super().__init__(*args, record=judged.series, initial=start, **kwargs)
        wanted = Candidate.objects.filter(dosages__trial__series=judged.series).distinct()
        self.fields["recommended"].queryset = wanted.select_related("material").order_by("material__code", "pk")
        self.fields["recommended"].label_from_instance = lambda candidate: str(candidate.material)


def start_of(judged: Judgement) -> dict:
    """What is recorded; where nothing is yet, the window of the only candidate that has one."""
    series: Series = judged.series
    names = ("outcome", "conclusion", "lesson", "not_tested", "window_from_pct", "window_to_pct", "working_pct")
    start = {name: getattr(series, name) for name in names} | {"recommended": series.recommended_id}
    suggested = prefilled(judged)
    if suggested:
        window = suggested.window
        start |= {"recommended": suggested.candidate, "window_from_pct": f"{window.from_pct:g}"}
        start |= {"window_to_pct": f"{window.to_pct:g}", "working_pct": f"{window.working_pct:g}"}
    return start


def prefilled(judged: Judgement):
    """The suggested window that the form starts with; None where something is recorded or several have one."""
    series = judged.series
    if series.outcome or series.recommended_id or series.window_from_pct is not None:
        return None
    able = [one for one in judged.windows if one.window.from_pct is not None and one.candidate is not None]
    return able[0] if len(able) == 1 else None


class GroupForm(forms.Form):
    """One outcome for all cups of a group; a row that is left alone writes nothing."""

    outcome = forms.ChoiceField(choices=OUTCOMES, required=False)
    unfair_because = forms.CharField(label="Not a fair test because", required=False, widget=SHORT)
    lesson = forms.CharField(required=False, widget=SHORT)

    def __init__(self, data, *, line: Line):
        self.line = line
        super().__init__(data, prefix=line.group.key, initial=_alike(line.group))

    def clean(self):
        cleaned = super().clean()
        if cleaned.get("outcome") == Outcome.UNFAIR and not cleaned.get("unfair_because", "").strip():
            self.add_error("unfair_because", f"Say why {self.line.group.label} was not a fair test.")
        return cleaned

    def entries(self) -> list[TrialEntry]:
        """For every cup of the group; what differed between them and was left alone stays as it is."""
        if not self.has_changed():
            return []
        changed = {name: self.cleaned_data[name] for name in self.changed_data}
        names = ("outcome", "unfair_because", "lesson")
        return [
            TrialEntry(trial=cup.trial, **{name: changed.get(name, getattr(cup.trial, name)) for name in names})
            for cup in self.line.group.cups
        ]


def _alike(group: Group) -> dict:
    """What is recorded, where it is the same for every cup."""
    names = ("outcome", "unfair_because", "lesson")
    standing = {name: {getattr(cup.trial, name) for cup in group.cups} for name in names}
    return {name: values.pop() for name, values in standing.items() if len(values) == 1}


class TrialForm(SeenForm):
    parts = ("failures",)
    outcome = forms.ChoiceField(choices=OUTCOMES, required=False)
    unfair_because = forms.CharField(label="Not a fair test because", required=False, widget=SHORT)
    lesson = forms.CharField(required=False, widget=SHORT, help_text="for the next person, in a sentence or two")

    def __init__(self, *args, trial: Trial, **kwargs):
        names = ("outcome", "unfair_because", "lesson")
        super().__init__(*args, record=trial, initial={name: getattr(trial, name) for name in names}, **kwargs)

    def clean(self):
        cleaned = super().clean()
        if cleaned.get("outcome") == Outcome.UNFAIR and not cleaned.get("unfair_because", "").strip():
            self.add_error("unfair_because", "Say why this was not a fair test.")
        return cleaned


class FailureForm(forms.Form):
    """One failure; a row whose failure is taken out is no row."""

    mode = forms.ChoiceField(label="Failure", choices=[("", "none"), *Mode.choices], required=False)
    severity = forms.IntegerField(
        label="Severity, 1 slight to 5 severe", min_value=1, max_value=5, required=False,
        widget=forms.TextInput(attrs={"inputmode": "numeric"}),
    )  # fmt: skip
    how = forms.CharField(label="How it showed", required=False)
    cause = forms.ChoiceField(label="Cause, if known", choices=[("", "not known"), *Cause.choices], required=False)

    def clean(self):
        cleaned = super().clean()
        typed = any(cleaned.get(name) for name in ("severity", "how", "cause"))
        if not cleaned.get("mode") and typed and not self.initial.get("mode"):
            self.add_error("mode", "Say which failure it is.")
        if cleaned.get("mode") and cleaned.get("severity") is None and "severity" not in self.errors:
            self.add_error("severity", "Say how severe it is, from 1 to 5.")
        return cleaned


class BaseFailures(forms.BaseFormSet):
    def entries(self) -> tuple[FailureEntry, ...]:
        rows = [form.cleaned_data for form in self.forms if form.cleaned_data.get("mode")]
        return tuple(FailureEntry(row["mode"], row["severity"], row["how"], row["cause"]) for row in rows)


Failures = forms.formset_factory(FailureForm, formset=BaseFailures, extra=1, max_num=30, validate_max=True)


def failures_of(trial: Trial) -> list[dict]:
    names = ("mode", "severity", "how", "cause")
    return [
        {name: getattr(one, name) for name in names} for one in trial.failures.order_by("-severity", "mode", "pk")
    ]
