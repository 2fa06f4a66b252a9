"""What is typed about a base. The forms check and resolve; they never write."""

from django import forms

from trials.models import Base, Person, Revision
from trials.models.bases import Letter
from trials.models.candidates import Stage
from trials.models.fields import NumberFormField


class BaseForm(forms.ModelForm):
    class Meta:
        model = Base
        fields = [
            "code",
            "name",
            "chemistry",
            "field",
            "kind",
            "film_um",
            "additive",
            "additive_note",
            "restricted",
            "remarks",
        ]
        widgets = {
            "additive_note": forms.Textarea(attrs={"rows": 2}),
            "remarks": forms.Textarea(attrs={"rows": 3}),
        }


class MeasuredForm(forms.ModelForm):
    class Meta:
        model = Revision
        fields = ["why", "air_free_density_g_ml", "air_free_method", "viscosity_mpa_s", "yield_pa", "pot_life_min"]
        widgets = {"why": forms.Textarea(attrs={"rows": 2})}


class CopyRevisionForm(forms.Form):
    why = forms.CharField(label="Why a new revision", widget=forms.Textarea(attrs={"rows": 2}))


class CopyBaseForm(forms.Form):
    code = forms.CharField(max_length=20)
    name = forms.CharField(max_length=120)


class ShareForm(forms.Form):
    people = forms.ModelMultipleChoiceField(
        Person.objects.filter(is_active=True).order_by("full_name", "pk"),
        required=False,
        widget=forms.CheckboxSelectMultiple,
        label="Who may see it beside its owner",
    )


class ComponentForm(forms.Form):
    """One component of a recipe or black box; the letter comes from the form's place on the page."""

    name = forms.CharField(max_length=120, required=False, label="What it is")
    parts = NumberFormField(label="Mixing parts by mass", required=False, min_value=0)
    density_g_ml = NumberFormField(label="Density, measured or stated", unit="g/mL", required=False)
    viscosity_mpa_s = NumberFormField(label="Viscosity at 23 °C", unit="mPa·s", required=False)
    non_volatile_pct = NumberFormField(
        label="Non-volatile content, as stated", unit="%", required=False, min_value=0, max_value=100
    )
    water_pct = NumberFormField(label="Water, Karl Fischer", unit="%", required=False, min_value=0, max_value=100)
    batch = forms.CharField(label="Customer's batch", max_length=60, required=False)
    received = forms.DateField(required=False, widget=forms.DateInput(attrs={"type": "date"}))

    def clean_parts(self):
        parts = self.cleaned_data["parts"]
        if parts == 0:
            raise forms.ValidationError("0 parts cannot be mixed: enter a number above 0, or leave it empty.")
        return parts

    def clean(self):
        cleaned = super().clean()
        if self.has_changed() and "parts" in cleaned and cleaned["parts"] is None:
            self.add_error("parts", "Say how many parts by mass of this component are mixed.")
        return cleaned


class LineForm(forms.Form):
    """One line: the material by its code, the lot by its number."""

    material = forms.CharField(
        max_length=20,
        label="Material",
        widget=forms.TextInput(attrs={"list": "material-codes", "autocomplete": "off"}),
    )
    parts = NumberFormField(label="Parts by mass", min_value=0)
    stage = forms.ChoiceField(
        label="Stage",
        required=False,
        choices=[("", "–"), *Stage.choices],
        widget=forms.Select(attrs={"data-copy-down": ""}),
    )
    lot = forms.CharField(label="Lot", max_length=40, required=False)

    def __init__(self, *args, materials, **kwargs):
        self._materials = materials
        super().__init__(*args, **kwargs)

    def clean_material(self):
        code = self.cleaned_data["material"].strip()
        found = self._materials.get(code.casefold())
        if found is None:
            raise forms.ValidationError(f"There is no raw material “{code}”. Enter one of the codes.")
        return found

    def clean_parts(self):
        parts = self.cleaned_data["parts"]
        if parts == 0:
            raise forms.ValidationError("0 parts is no line: enter a number above 0, or empty the line.")
        return parts

    def clean(self):
        cleaned = super().clean()
        material, number = cleaned.get("material"), cleaned.get("lot", "").strip()
        cleaned["lot"] = None
        if material and number:
            lots = {lot.number.casefold(): lot for lot in material.lots.all()}
            cleaned["lot"] = lots.get(number.casefold())
            if cleaned["lot"] is None:
                self.add_error("lot", f"{material.code} has no lot “{number}”.")
        return cleaned


LineFormSet = forms.formset_factory(LineForm, extra=2, max_num=60, validate_max=True)
LETTERS = tuple(Letter.values)
