"""What is typed about raw materials, lots and papers."""

import re

from django import forms
from django.conf import settings
from django.core.exceptions import ValidationError

from trials.models import Lot, Paper, RawMaterial
from trials.models.materials import EnteredAs, Function
from trials.operations.acting import Refused
from trials.operations.materials import free_code, known_hazards
from trials.pages.record_form import RecordForm

UNITS = {choice: choice.label.partition(", ")[2] for choice in EnteredAs}


class HazardsField(forms.CharField):
    """Codes behind one another, with spaces or commas: "H315, H317 EUH205"."""

    def prepare_value(self, value):
        return ", ".join(value) if isinstance(value, list) else value

    def to_python(self, value):
        if isinstance(value, list):
            return value
        try:
            return known_hazards(re.split(r"[\s,;]+", value or ""))
        except Refused as refusal:
            raise ValidationError(refusal.message) from refusal

    def has_changed(self, initial, data):
        try:
            return self.to_python(data) != sorted(initial or [])
        except ValidationError:
            return True


class MaterialForm(RecordForm):
    parts = ("groups",)
    hazards = HazardsField(
        label="Hazard statements",
        required=False,
        help_text="codes of section 2 of the safety data sheet, as H315, H317 or EUH205",
    )

    class Meta:
        model = RawMaterial
        fields = [
            "code",
            "name",
            "supplier",
            "function",
            "density_g_ml",
            "non_volatile_pct",
            "voc_pct",
            "active_pct",
            "diisocyanate_pct",
            "price_per_kg",
            "hazards",
            "sheet_issued",
            "withdrawn",
            "remarks",
        ]

    def __init__(self, *args, **kwargs):
        super().__init__(*args, **kwargs)
        self.fields["price_per_kg"].unit = f"{settings.CURRENCY}/kg"
        self.fields["price_per_kg"].help_text = ""

    def clean_code(self):
        try:
            return free_code(self.cleaned_data["code"], besides=self.instance)
        except Refused as refusal:
            raise ValidationError(refusal.message) from refusal


class LotForm(RecordForm):
    parts = ()

    class Meta:
        model = Lot
        fields = [
            "number",
            "received",
            "expires",
            "on_hand_kg",
            "density_g_ml",
            "non_volatile_pct",
            "certificate_as",
            "certificate_value",
            "water_pct",
            "opened",
            "shaken",
            "warmed",
            "appearance",
        ]

    def __init__(self, *args, **kwargs):
        super().__init__(*args, **kwargs)
        given = self.data.get("certificate_as") if self.is_bound else self.instance.certificate_as
        self.fields["certificate_value"].unit = UNITS.get(given, "")


class PaperForm(RecordForm):
    parts = ()

    class Meta:
        model = Paper
        fields = ["subject", "title", "region", "issued", "expires", "says"]


class MaterialFilter(forms.Form):
    q = forms.CharField(label="Words or code", required=False, max_length=100)
    function = forms.ChoiceField(choices=[("", "all"), *Function.choices], required=False)
    withdrawn = forms.BooleanField(label="those no longer used too", required=False)

    def asked(self) -> dict:
        """Arguments of the list; what is not understood is not asked for."""
        found = self.cleaned_data if self.is_valid() else getattr(self, "cleaned_data", {})
        return {
            "words": found.get("q", ""),
            "function": found.get("function", ""),
            "withdrawn": found.get("withdrawn", False),
        }
