"""What is typed about an enquiry. The forms check and resolve; they never write."""

from django import forms

from trials.models import Criterion, Enquiry
from trials.models.enquiries import Force
from trials.models.fields import NumberFormField
from trials.operations.acting import Refused
from trials.operations.enquiries import PARTS, LimitEntry, refuse_off_scale
from trials.pages.record_form import RecordForm


class EnquiryForm(RecordForm):
    parts = PARTS

    class Meta:
        model = Enquiry
        fields = [
            "subject",
            "customer",
            "withheld",
            "field",
            "base",
            "film_um",
            "asked",
            "incumbent",
            "incumbent_pct",
            "incumbent_note",
            "received",
            "due",
            "restricted",
        ]

    def __init__(self, *args, bases, candidates, **kwargs):
        super().__init__(*args, **kwargs)
        self.fields["base"].queryset = bases
        self.fields["base"].label = "In which base, if it is here already"
        self.fields["incumbent"].queryset = candidates
        self.fields["base"].empty_label = self.fields["incumbent"].empty_label = "–"
        self.fields["incumbent"].label_from_instance = lambda one: str(one.material)
        self.fields["withheld"].label = "Withhold the customer's name outside"

    def validate_constraints(self):
        super().validate_constraints()
        received, due = self.instance.received, self.instance.due
        if received and due and due < received:
            self.add_error("due", f"Due {due} is before it was received, {received}.")


class LimitForm(forms.Form):
    criterion = forms.ChoiceField(label="Criterion", required=False)
    limit = NumberFormField(label="Limit", required=False)
    force = forms.ChoiceField(label="Must or should", choices=Force.choices)

    def __init__(self, *args, criteria: dict[str, Criterion], **kwargs):
        super().__init__(*args, **kwargs)
        self._criteria = criteria
        self.fields["criterion"].choices = [("", "–"), *((key, limit_said(one)) for key, one in criteria.items())]

    def clean(self):
        cleaned = super().clean()
        criterion = self._criteria.get(cleaned.get("criterion"))
        limit = cleaned.get("limit")
        if criterion and limit is None and "limit" in cleaned:
            self.add_error("limit", f"Say where {criterion.name} has to stand, or empty the row.")
        elif limit is not None and not criterion:
            self.add_error("criterion", f"Say what {limit} is the limit of, or empty the row.")
        elif criterion and limit is not None:
            try:
                refuse_off_scale(criterion, cleaned["limit"])
            except Refused as refusal:
                self.add_error("limit", refusal.message)
        return cleaned

    def entry(self) -> LimitEntry:
        typed = self.cleaned_data
        return LimitEntry(self._criteria[typed["criterion"]], typed["limit"], typed["force"])


class _Limits(forms.BaseFormSet):
    def clean(self):
        typed = [form.cleaned_data.get("criterion") for form in self.forms if form.is_valid()]
        twice = {key for key in typed if key and typed.count(key) > 1}
        if twice:
            names = ", ".join(self.form_kwargs["criteria"][key].name for key in sorted(twice))
            raise forms.ValidationError(f"{names}: one limit for each criterion, please.")

    def entries(self) -> tuple[LimitEntry, ...]:
        return tuple(form.entry() for form in self.forms if form.cleaned_data.get("criterion"))


LimitFormSet = forms.formset_factory(LimitForm, formset=_Limits, extra=3, max_num=40, validate_max=True)


class FilterForm(forms.Form):
    q = forms.CharField(label="Words", required=False)
    answered = forms.BooleanField(label="Answered ones too", required=False)


def limit_said(criterion: Criterion) -> str:
    """A criterion in a list of choices: its scale, and which way a limit holds."""
    at = "at most" if criterion.better == "lower" else "at least"
    scale = criterion.unit or f"{criterion.low} to {criterion.high}"
    return f"{criterion.name} ({scale}), {at}"
