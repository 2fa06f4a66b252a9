"""What is typed about a series. The forms check and resolve; they never write."""

from django import forms

from trials import access
from trials.models import CommonBatch, Lot, Revision, Series
from trials.models.bases import Letter
from trials.models.fields import NumberFormField
from trials.operations.series import CandidateEntry
from trials.pages.record_form import RecordForm

from .ladders import CandidateField, find_lot

DECIDED = [
    "title",
    "question",
    "round",
    "enquiry",
    "follows",
    "common_batch",
    "batch_mass_g",
    "film_um",
    "basis",
    "basis_component",
    "counting",
    "supplied",
    "stage",
    "into",
    "ratio",
    "restricted",
]


class SeriesFields(RecordForm):
    """What planning and changing a series have in common."""

    class Meta:
        model = Series
        fields = DECIDED

    def __init__(self, *args, person, **kwargs):
        super().__init__(*args, **kwargs)
        self.fields["enquiry"].queryset = access.enquiries(person).order_by("-number", "-pk")
        self.fields["follows"].queryset = access.series(person).order_by("-number", "-pk")
        batches = CommonBatch.objects.filter(revision__in=access.revisions(person)).select_related("revision__base")
        self.fields["common_batch"].queryset = batches.order_by("-made_at", "-pk")
        self.fields["common_batch"].label_from_instance = lambda one: f"{one.number} of {one.revision}, {one.letter}"
        self.fields["enquiry"].label_from_instance = lambda one: f"{one.number} {one.subject}"
        for name in ("enquiry", "follows", "common_batch"):
            self.fields[name].empty_label = "–"
        self.fields["basis"].label = "Per cent of"
        self.fields["basis_component"].label = "Which component"
        self.fields["basis_component"].help_text = "only where the per cent are of a component"
        self.fields["basis_component"].required = False
        self.fields["counting"].help_text = "on top of the hundred, or within it"
        self.fields["supplied"].help_text = "of the additive as it comes, or of its active matter"


class PlanForm(SeriesFields):
    """A new series: what is decided, and its references."""

    revision = forms.ModelChoiceField(Revision.objects.none(), label="Base and revision", empty_label="–")
    replicates = forms.IntegerField(label="Cups of each dosage", min_value=1, max_value=20, initial=2)
    blanks = forms.IntegerField(
        label="Blanks", min_value=0, max_value=20, initial=2, help_text="same working, no additive; two or more"
    )
    no_blank_because = forms.CharField(label="No blank because", max_length=160, required=False)
    clean_check = forms.BooleanField(label="One clean check at the end", required=False, initial=True)
    vacuum = forms.BooleanField(label="Vacuum reference, degassed", required=False)
    incumbent = CandidateField(label="Incumbent", required=False, help_text="what is used today")
    incumbent_pct = NumberFormField(label="Dosage of the incumbent", unit="%", required=False, min_value=0)
    counts_in_ratio = forms.BooleanField(label="Additive counts in the ratio", required=False)

    class Meta(SeriesFields.Meta):
        fields = [*DECIDED, "order_rule"]

    def __init__(self, *args, person, **kwargs):
        super().__init__(*args, person=person, **kwargs)
        revisions = access.revisions(person).select_related("base")
        self.fields["revision"].queryset = revisions.order_by("base__code", "-number", "pk")
        self.fields["revision"].label_from_instance = lambda one: f"{one}, {one.base.name}"
        for name in ("replicates", "blanks"):
            self.fields[name].widget = forms.TextInput(attrs={"inputmode": "numeric"})
        order = ["title", "revision", "round", "enquiry", "question"]
        self.order_fields([*order, *(name for name in self.fields if name not in order)])

    def clean(self):
        cleaned = super().clean()
        incumbent, pct = cleaned.get("incumbent"), cleaned.get("incumbent_pct")
        if incumbent and pct is None and "incumbent_pct" in cleaned:
            self.add_error("incumbent_pct", f"Say at what dosage {incumbent.material.code} is used today.")
        if pct is not None and "incumbent" in cleaned and not incumbent:
            self.add_error("incumbent", f"Say what is used today at {pct} %.")
        if cleaned.get("blanks") == 0 and not cleaned.get("no_blank_because"):
            self.add_error("blanks", "Plan at least one blank, or say below why there is none; got 0.")
        return cleaned

    def group(self, *names):
        return [self[name] for name in names]

    @property
    def groups(self):
        """The fields under the heads of the page."""
        return (
            (
                "What and why",
                self.group("title", "revision", "round", "enquiry", "follows", "question", "restricted"),
            ),
            ("The cup", self.group("batch_mass_g", "film_um", "common_batch", "ratio")),
            (
                "How dosages are meant",
                self.group("basis", "basis_component", "counting", "supplied", "stage", "into", "counts_in_ratio"),
            ),
            (
                "References and order",
                self.group(
                    "replicates", "blanks", "clean_check", "vacuum", "incumbent", "incumbent_pct",
                    "no_blank_because", "order_rule",
                ),
            ),
        )  # fmt: skip

    def values(self) -> dict:
        """What the operation takes."""
        typed = dict(self.cleaned_data)
        incumbent, pct = typed.pop("incumbent"), typed.pop("incumbent_pct")
        return {**typed, "incumbent": CandidateEntry(incumbent, (pct,)) if incumbent else None}


class ChangeForm(SeriesFields):
    parts = ("criteria",)


class CupForm(forms.Form):
    """One more cup."""

    like = forms.ChoiceField(label="Like cup")
    dosage_pct = NumberFormField(label="Dosage", unit="%", required=False, min_value=0, help_text="if another")
    candidate = CandidateField(label="Additive", required=False, help_text="if another")
    lot = forms.CharField(label="Lot", max_length=40, required=False, help_text="if another")
    batch_mass_g = NumberFormField(label="Mix of the cup", unit="g", required=False, help_text="if another")
    topped_up = forms.BooleanField(label="Made from that cup by adding more", required=False)

    def __init__(self, *args, cups, **kwargs):
        super().__init__(*args, **kwargs)
        self._cups = {cup.code: cup for cup in cups}
        self.fields["like"].choices = [(cup.code, cup_said(cup)) for cup in cups]

    def clean_like(self):
        return self._cups[self.cleaned_data["like"]]

    def clean_batch_mass_g(self):
        mass = self.cleaned_data["batch_mass_g"]
        if mass is not None and mass <= 0:
            raise forms.ValidationError(f"The mix of a cup must be above 0 g; got {mass}.")
        return mass

    def clean(self):
        cleaned = super().clean()
        like = cleaned.get("like")
        number = cleaned.get("lot", "").strip()
        cleaned["lot"] = None
        if number and like:
            doses = list(like.dosages.all())
            of = cleaned.get("candidate") or (doses[0].candidate if doses else None)
            cleaned["lot"] = find_lot(self, of, number)
        return cleaned


def cup_said(cup) -> str:
    doses = " + ".join(
        f"{dose.candidate.material.code} {format(dose.dosage_pct, 'f')} %" for dose in cup.dosages.all()
    )
    return f"{cup.code}, {doses}" if doses else f"{cup.code}, {cup.get_part_display()}"


class CommonBatchForm(RecordForm):
    made_at = forms.DateTimeField(
        label="Made at", widget=forms.DateTimeInput(attrs={"type": "datetime-local"}, format="%Y-%m-%dT%H:%M")
    )
    lots = forms.ModelMultipleChoiceField(
        Lot.objects.none(), required=False, widget=forms.CheckboxSelectMultiple, label="Lots in it"
    )

    class Meta:
        model = CommonBatch
        fields = ["number", "letter", "made_at", "mass_g", "water_pct", "viscosity_mpa_s", "density_g_ml", "remarks"]

    def __init__(self, *args, revision: Revision, **kwargs):
        super().__init__(*args, **kwargs)
        letters = list(revision.components.order_by("letter").values_list("letter", flat=True))
        self.fields["letter"].choices = [(letter, Letter(letter).label) for letter in letters]
        lots = Lot.objects.filter(material__in=revision.components.values("lines__material"))
        self.fields["lots"].queryset = lots.select_related("material").order_by("material__code", "number", "pk")


class FilterForm(forms.Form):
    q = forms.CharField(label="Words", required=False)
    round = forms.ChoiceField(label="Round", required=False)
    outcome = forms.ChoiceField(label="Outcome", required=False)

    def __init__(self, *args, **kwargs):
        super().__init__(*args, **kwargs)
        field = Series._meta.get_field
        self.fields["round"].choices = [("", "all"), *field("round").choices]
        self.fields["outcome"].choices = [("", "all"), ("none", "none yet"), *field("outcome").choices]
