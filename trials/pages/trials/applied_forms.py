"""What is typed about cups made, applied, stored and kept. The forms check; they never write."""

from django import forms

from trials.models import Dosage, Layer, Panel, Retain, StoredTin, Trial
from trials.models.panels import Coat, Method, Substrate
from trials.operations.panels import LayerEntry
from trials.pages.record_form import DayInput, RecordForm
from trials.pages.series.forms import cup_said

from .writing import CupForm, DateTimeInput, copied_down


class AlongForm(CupForm):
    """Several cups at once: what is typed holds for each of them."""

    every = forms.BooleanField(label="The same for every cup of this series", required=False)
    cups = forms.ModelMultipleChoiceField(
        Trial.objects.none(), label="Or the same for", required=False, widget=forms.CheckboxSelectMultiple
    )

    def __init__(self, *args, trial, **kwargs):
        super().__init__(*args, trial=trial, **kwargs)
        every, cups = self.fields.pop("every"), self.fields.pop("cups")
        others = Trial.objects.filter(series=trial.series_id).exclude(pk=trial.pk).order_by("position", "pk")
        cups.queryset = others.prefetch_related("dosages__candidate__material")
        cups.label_from_instance = cup_said
        self.fields |= {"every": every, "cups": cups}  # at the end of the form

    def clean(self):
        cleaned = super().clean()
        if cleaned.get("every"):
            cleaned["cups"] = self.fields["cups"].queryset
        return cleaned

    def trials(self) -> list[Trial]:
        return [self.trial, *self.cleaned_data["cups"]]


class MadeForm(AlongForm):
    """When cups were made, in which air; several cups of a session at once."""

    made_at = forms.DateTimeField(label="Made at", required=False, widget=DateTimeInput)
    mixed_at = forms.DateTimeField(label="A and B together at", required=False, widget=DateTimeInput)
    air_c = Trial._meta.get_field("air_c").formfield(required=False)
    humidity_pct = Trial._meta.get_field("humidity_pct").formfield(required=False)
    remark = forms.CharField(label="Remark on this cup", required=False, widget=forms.Textarea(attrs={"rows": 2}))

    def __init__(self, *args, trial, **kwargs):
        super().__init__(*args, trial=trial, **kwargs)
        for name in ("made_at", "mixed_at", "air_c", "humidity_pct", "remark"):
            self.initial[name] = getattr(trial, name)


def _of_panel(name: str, **options):
    return Panel._meta.get_field(name).formfield(required=False, **options)


class PanelsForm(AlongForm):
    """One build-up, on so many panels of each cup."""

    count = forms.IntegerField(label="Panels of each cup", min_value=1, max_value=12, initial=2)
    stored_tin = forms.ModelChoiceField(
        StoredTin.objects.none(), label="From a stored tin", required=False, empty_label="no, fresh"
    )
    substrate = forms.ChoiceField(choices=Substrate.choices)
    area_dm2 = _of_panel("area_dm2")
    applied_at = forms.DateTimeField(label="Applied at", required=False, widget=DateTimeInput)
    air_c = _of_panel("air_c", label="Temperature of the air")
    humidity_pct = _of_panel("humidity_pct")
    substrate_c = _of_panel("substrate_c", label="Temperature of the substrate")
    material_c = _of_panel("material_c", label="Temperature of the material")
    remark = forms.CharField(required=False, widget=forms.Textarea(attrs={"rows": 2}))
    field_order = ("count", "stored_tin")

    figures = ("substrate", "area_dm2", "applied_at", "air_c", "humidity_pct", "substrate_c", "material_c", "remark")

    def __init__(self, *args, trial, like: Panel | None = None, **kwargs):
        super().__init__(*args, trial=trial, **kwargs)
        tins = self.fields["stored_tin"]
        tins.queryset = trial.stored_tins.filter(opened_at__isnull=False).order_by("days", "pk")
        tins.label_from_instance = tin_said
        if like is not None:
            for name in ("substrate", "area_dm2", "air_c", "humidity_pct", "substrate_c", "material_c"):
                self.initial[name] = getattr(like, name)

    def clean(self):
        cleaned = super().clean()
        if cleaned.get("stored_tin") and cleaned.get("cups"):
            self.add_error("cups", "A stored tin is of one cup: apply the others from their own.")
        return cleaned


class PanelForm(CupForm):
    """Puts right what was noted of one panel."""

    substrate = forms.ChoiceField(choices=Substrate.choices)
    area_dm2 = _of_panel("area_dm2")
    mass_g = _of_panel("mass_g")
    applied_at = forms.DateTimeField(label="Applied at", required=False, widget=DateTimeInput)
    air_c = _of_panel("air_c", label="Temperature of the air")
    humidity_pct = _of_panel("humidity_pct")
    substrate_c = _of_panel("substrate_c", label="Temperature of the substrate")
    material_c = _of_panel("material_c", label="Temperature of the material")
    remark = forms.CharField(required=False, widget=forms.Textarea(attrs={"rows": 2}))

    def figures(self) -> dict:
        return {name: value for name, value in self.cleaned_data.items() if not name.startswith("amend_")}


def _of_layer(name: str):
    return copied_down(Layer._meta.get_field(name).formfield(required=False))


class LayerLine(forms.Form):
    """One coat of a build-up; choose – to take a row out."""

    coat = forms.ChoiceField(required=False, choices=[("", "–"), *Coat.choices])
    wet_um = _of_layer("wet_um")
    method = forms.ChoiceField(required=False, choices=Method.choices)
    spiked_after_min = _of_layer("spiked_after_min")
    recoated_after_h = _of_layer("recoated_after_h")
    sanded = forms.BooleanField(required=False)

    def clean(self):
        cleaned = super().clean()
        if cleaned.get("wet_um") is not None and not cleaned.get("coat") and not self.initial:
            self.add_error("coat", "Say which coat this is.")
        return cleaned

    def entry(self) -> LayerEntry | None:
        if not self.cleaned_data.get("coat"):
            return None
        given = dict(self.cleaned_data)
        return LayerEntry(**{**given, "method": given["method"] or Method.POUR})


class LayerLines:
    """The layers of a build-up, from the first one on the substrate."""

    def __init__(self, data, standing: list[dict]):
        formset = forms.formset_factory(LayerLine, extra=1, max_num=8)
        self.formset = formset(data, prefix="layers", initial=standing)

    def is_valid(self) -> bool:
        return self.formset.is_valid()

    def entries(self) -> tuple[LayerEntry, ...]:
        rows = (form.entry() for form in self.formset.forms)
        return tuple(row for row in rows if row is not None)


def layers_of(panel: Panel) -> list[dict]:
    names = ("coat", "wet_um", "method", "spiked_after_min", "recoated_after_h", "sanded")
    return list(panel.layers.order_by("position").values(*names))


class TinsForm(AlongForm):
    days = forms.IntegerField(label="For", min_value=1, max_value=3650, initial=28, widget=forms.NumberInput)
    temperature_c = StoredTin._meta.get_field("temperature_c").formfield(initial="50")
    stored_at = forms.DateTimeField(label="Stored at", required=False, widget=DateTimeInput)
    field_order = ("days", "temperature_c", "stored_at")


class OpenedForm(forms.Form):
    opened_at = forms.DateTimeField(label="Opened at", widget=DateTimeInput)
    appearance = forms.CharField(
        label="What stood in it before stirring",
        help_text="Clear on top, sediment, skin, gel – or “even”.",
        widget=forms.Textarea(attrs={"rows": 3}),
    )


class RetainForm(forms.Form):
    what = forms.CharField(label="What is kept", max_length=120, required=False)
    panel = forms.ModelChoiceField(Panel.objects.none(), required=False, empty_label="no panel: cup or tin")
    place = forms.CharField(label="Where", max_length=120)
    until = Retain._meta.get_field("until").formfield(required=False, widget=DayInput)

    def __init__(self, *args, trial, **kwargs):
        super().__init__(*args, **kwargs)
        self.fields["panel"].queryset = trial.panels.order_by("code")


class KeptForm(RecordForm):
    class Meta:
        model = Retain
        fields = ("what", "place", "until", "lent_to", "lent_on", "returned_on")


class TopUpForm(forms.Form):
    """A cup that holds an additive already gets more of it."""

    dosage_pct = Dosage._meta.get_field("dosage_pct").formfield(label="Up to")
    left_g = Trial._meta.get_field("batch_mass_g").formfield(
        label="Mix that is left", required=True, help_text="free of additive"
    )


def tin_said(tin: StoredTin) -> str:
    warm = f" at {tin.temperature_c:f} °C" if tin.temperature_c is not None else ""
    return f"stored {tin.days} d{warm}"
