"""Workings as they are typed. The forms check; they never write."""

from django import forms

from trials.models import Equipment, Trial, Working
from trials.models.trials import WorkingKind
from trials.operations.bench import WorkingEntry

from .writing import NOTHING, CupForm, DateTimeInput, copied_down

FIGURES = ("blade_mm", "vessel_mm", "rpm", "minutes", "temperature_c", "vacuum_mbar")


class WorkForm(CupForm):
    parts = ("workings",)
    mixed_at = forms.DateTimeField(label="A and B together at", required=False, widget=DateTimeInput)


def _figure(name: str):
    return copied_down(Working._meta.get_field(name).formfield(required=False))


class WorkingLine(forms.Form):
    """One working; choose – to take a row out."""

    kind = forms.ChoiceField(label="What", required=False, choices=[NOTHING, *WorkingKind.choices])
    equipment = forms.ChoiceField(label="With", required=False, widget=forms.Select(attrs={"data-copy-down": ""}))
    blade_mm = _figure("blade_mm")
    vessel_mm = _figure("vessel_mm")
    rpm = _figure("rpm")
    minutes = _figure("minutes")
    temperature_c = _figure("temperature_c")
    vacuum_mbar = _figure("vacuum_mbar")
    remark = forms.CharField(label="Remark", max_length=160, required=False)

    def __init__(self, *args, equipment, **kwargs):
        super().__init__(*args, **kwargs)
        self._equipment = equipment
        self.fields["equipment"].choices = [NOTHING, *((str(key), one.name) for key, one in equipment.items())]

    def clean(self):
        cleaned = super().clean()
        if any(cleaned.get(name) is not None for name in FIGURES) and not cleaned.get("kind") and not self.initial:
            self.add_error("kind", "Say what was done in this row.")
        return cleaned

    def entry(self) -> WorkingEntry | None:
        cleaned = self.cleaned_data
        if not cleaned.get("kind"):
            return None
        equipment = self._equipment.get(int(cleaned["equipment"] or 0))
        figures = {name: cleaned[name] for name in FIGURES}
        if figures["blade_mm"] is None and equipment:
            figures["blade_mm"] = equipment.blade_mm
        return WorkingEntry(kind=cleaned["kind"], equipment=equipment, remark=cleaned["remark"], **figures)


class WorkingLines:
    """The workings of one cup: planned or noted before, else those of the cup before it."""

    def __init__(self, data, trial: Trial):
        rows = list(trial.workings.order_by("position", "pk"))
        self.taken_from = "" if rows else _cup_before(trial)
        if self.taken_from:
            rows = list(Working.objects.filter(trial__code=self.taken_from).order_by("position", "pk"))
        equipment = {one.pk: one for one in Equipment.objects.filter(retired=False).order_by("name", "pk")}
        formset = forms.formset_factory(WorkingLine, extra=2, max_num=40)
        self.formset = formset(
            data, prefix="workings", initial=[_worked(row) for row in rows], form_kwargs={"equipment": equipment}
        )

    def is_valid(self) -> bool:
        return self.formset.is_valid()

    def entries(self) -> tuple[WorkingEntry, ...]:
        rows = (form.entry() for form in self.formset.forms)
        return tuple(row for row in rows if row is not None)


def _worked(row: Working) -> dict:
    figures = {name: getattr(row, name) for name in FIGURES}
    return {"kind": row.kind, "equipment": str(row.equipment_id or ""), "remark": row.remark, **figures}


def _cup_before(trial: Trial) -> str:
    earlier = Trial.objects.filter(series=trial.series_id, position__lt=trial.position, workings__isnull=False)
    found = earlier.order_by("-position", "-pk").values_list("code", flat=True).first()
    return found or ""
