"""What is typed about a candidate."""

from django import forms

from trials.models import Candidate
from trials.models.candidates import Chemistry, Stage
from trials.pages.record_form import RecordForm


class CandidateForm(RecordForm):
    parts = ()
    stages = forms.MultipleChoiceField(
        choices=Stage.choices, required=False, widget=forms.CheckboxSelectMultiple, label="Stages it goes in at"
    )

    class Meta:
        model = Candidate
        fields = [
            "chemistry",
            "silicone",
            "carrier",
            "carrier_pct",
            "strength",
            "macro_foam",
            "air_release",
            "tip_speed_m_s",
            "minutes",
            "from_pct",
            "to_pct",
            "highest_tried_pct",
            "stages",
            "diluted_in",
            "cautions",
        ]


class CandidateFilter(forms.Form):
    SILICONE = (("", "all"), ("yes", "with silicone"), ("no", "silicone-free"))
    SORT = (("strength", "strength"), ("ease", "ease of incorporation"), ("price", "price"), ("code", "code"))

    q = forms.CharField(label="Words or code", required=False, max_length=100)
    chemistry = forms.ChoiceField(choices=[("", "all"), *Chemistry.choices], required=False)
    silicone = forms.ChoiceField(choices=SILICONE, required=False)
    sort = forms.ChoiceField(label="Order", choices=SORT, required=False)
    withdrawn = forms.BooleanField(label="those no longer used too", required=False)

    def asked(self) -> dict:
        """Arguments of the list; what is not understood is not asked for."""
        found = self.cleaned_data if self.is_valid() else getattr(self, "cleaned_data", {})
        return {
            "words": found.get("q", ""),
            "chemistry": found.get("chemistry", ""),
            "silicone": {"yes": True, "no": False}.get(found.get("silicone", "")),
            "sort": found.get("sort") or "strength",
            "withdrawn": found.get("withdrawn", False),
        }
