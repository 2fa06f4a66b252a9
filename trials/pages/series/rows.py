"""The typed rows of a plan: workings, and the criteria to judge by."""

from decimal import Decimal

from django import forms

from trials.models import Criterion, Equipment
from trials.models.fields import NumberFormField
from trials.models.trials import WorkingKind
from trials.operations.series import WorkingEntry

FIGURES = ("blade_mm", "vessel_mm", "rpm", "minutes", "temperature_c", "vacuum_mbar")
# Most days go like that; the figures are those of the laboratory.
USUAL_KINDS = (WorkingKind.DISPERSE, WorkingKind.REST, WorkingKind.AERATE, WorkingKind.MIX)
USUAL_CRITERIA = ("bubbles", "micro-foam", "craters", "levelling")


class WorkingRow(forms.Form):
    kind = forms.ChoiceField(label="Working", required=False, choices=[("", "–"), *WorkingKind.choices])
    equipment = forms.ModelChoiceField(Equipment.objects.none(), label="With", required=False, empty_label="–")
    blade_mm = NumberFormField(label="Blade or disc", unit="mm", required=False)
    vessel_mm = NumberFormField(label="Vessel", unit="mm", required=False)
    rpm = NumberFormField(label="Speed", unit="rpm", required=False, min_value=0)
    minutes = NumberFormField(label="Time", unit="min", required=False, min_value=0)
    temperature_c = NumberFormField(label="Temperature", unit="°C", required=False)
    vacuum_mbar = NumberFormField(label="Vacuum, absolute", unit="mbar", required=False, min_value=0)

    def __init__(self, *args, equipment, **kwargs):
        super().__init__(*args, **kwargs)
        self.fields["equipment"].queryset = equipment
        self.fields["equipment"].label_from_instance = lambda one: one.name

    def clean(self):
        cleaned = super().clean()
        for name in ("blade_mm", "vessel_mm"):
            if cleaned.get(name) is not None and cleaned[name] <= 0:
                self.add_error(name, f"{self.fields[name].label} must be above 0 mm; got {cleaned[name]}.")
        given = [name for name in ("equipment", *FIGURES) if cleaned.get(name) is not None]
        if given and not cleaned.get("kind"):
            self.add_error("kind", "Say what kind of working this is, or empty the row.")
        blade = cleaned.get("equipment") and cleaned["equipment"].blade_mm
        if blade and cleaned.get("blade_mm") is None:
            cleaned["blade_mm"] = blade
        return cleaned

    def entry(self) -> WorkingEntry | None:
        typed = self.cleaned_data
        if not typed.get("kind"):
            return None
        return WorkingEntry(typed["kind"], typed["equipment"], **{name: typed[name] for name in FIGURES})


class CriterionRow(forms.Form):
    criterion = forms.ChoiceField(label="Criterion", required=False)
    weight = NumberFormField(label="Weight", required=False, min_value=0, initial=Decimal(1))

    def __init__(self, *args, criteria: dict[str, Criterion], **kwargs):
        super().__init__(*args, **kwargs)
        self._criteria = criteria
        self.fields["criterion"].choices = [("", "–"), *((key, one.name) for key, one in criteria.items())]

    @property
    def chosen(self) -> Criterion | None:
        return self._criteria.get(self.cleaned_data.get("criterion"))

    @property
    def weighs(self) -> Decimal:
        given = self.cleaned_data.get("weight")
        return Decimal(1) if given is None else given


class _Criteria(forms.BaseFormSet):
    def clean(self):
        keys = [form.cleaned_data.get("criterion") for form in self.forms if form.is_valid()]
        twice = {key for key in keys if key and keys.count(key) > 1}
        if twice:
            names = ", ".join(self.form_kwargs["criteria"][key].name for key in sorted(twice))
            raise forms.ValidationError(f"{names}: one row for each criterion, please.")

    def chosen(self) -> dict:
        """What the operation takes."""
        rows = [form for form in self.forms if form.chosen]
        return {
            "criteria": [row.chosen for row in rows],
            "weights": {row.chosen.key: row.weighs for row in rows},
        }


WorkingFormSet = forms.formset_factory(WorkingRow, extra=1, max_num=20, validate_max=True)
CriterionFormSet = forms.formset_factory(CriterionRow, formset=_Criteria, extra=2, max_num=40, validate_max=True)


def criteria_by_key(*kept: Criterion) -> dict[str, Criterion]:
    """The current criteria, and those of an older scale that are in use on the page."""
    current = Criterion.objects.filter(current=True).order_by("position", "pk")
    return {one.key: one for one in current} | {one.key: one for one in kept}


def working_rows(data, *, initial=()):
    equipment = Equipment.objects.filter(retired=False).order_by("name", "pk")
    return WorkingFormSet(data, prefix="workings", initial=list(initial), form_kwargs={"equipment": equipment})


def criterion_rows(data, *, initial=(), kept=()):
    """``initial``: (criterion's key, weight)."""
    start = [{"criterion": key, "weight": weight} for key, weight in initial]
    return CriterionFormSet(data, prefix="criteria", initial=start, form_kwargs={"criteria": criteria_by_key(*kept)})
