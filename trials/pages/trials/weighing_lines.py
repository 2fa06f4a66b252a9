"""Balance readings as they are typed. The forms check; they never write."""

from django import forms

from trials.models import Balance, Trial
from trials.operations.bench import Reading
from trials.pages.figure_or_word import FigureOrWord, FigureOrWordField
from trials.queries.weighed import WeighedCup

from .writing import NOTHING, CupForm


class WeighForm(CupForm):
    parts = ("weighings",)


class WeighingLine(forms.Form):
    """One row of what the balance showed; empty rows are none."""

    what = forms.ChoiceField(label="What", required=False)
    reading = FigureOrWordField(label="Reading, or a word", unit="g")
    cumulative = forms.BooleanField(label="Goes on from the row above", required=False)
    balance = forms.ChoiceField(label="Balance", required=False, widget=forms.Select(attrs={"data-copy-down": ""}))

    def __init__(self, *args, things, balances, **kwargs):
        super().__init__(*args, **kwargs)
        self.fields["what"].choices = [NOTHING, *things]
        self.fields["balance"].choices = [NOTHING, *((str(key), one.name) for key, one in balances.items())]
        self._balances = balances

    def clean(self):
        cleaned = super().clean()
        reading = cleaned.get("reading")
        if reading and not reading.empty and not cleaned.get("what"):
            self.add_error("what", f"Say what “{reading.typed}” is the reading of.")
        return cleaned

    def entry(self, dosages: dict) -> Reading | None:
        reading = self.cleaned_data.get("reading") or FigureOrWord()
        if reading.empty:
            return None
        what = self.cleaned_data["what"]
        return Reading(
            letter="" if what in dosages else what,
            dosage=dosages.get(what),
            reading_g=reading.value,
            cumulative=self.cleaned_data["cumulative"],
            word=reading.word,
            balance=self._balances.get(int(self.cleaned_data["balance"] or 0)),
        )


class WeighingLines:
    """The readings of one cup: those that stand, else what has to go in, in the order of putting it in."""

    def __init__(self, data, trial: Trial, cup: WeighedCup):
        self._dosages = {f"d{dose.dosage.pk}": dose.dosage for dose in cup.doses}
        balances = {one.pk: one for one in Balance.objects.filter(retired=False).order_by("name", "pk")}
        formset = forms.formset_factory(WeighingLine, extra=2, max_num=60)
        self.formset = formset(
            data,
            prefix="readings",
            initial=_standing(trial) or _to_weigh(cup),
            form_kwargs={"things": _things(cup), "balances": balances},
        )

    def is_valid(self) -> bool:
        return self.formset.is_valid()

    def entries(self) -> tuple[Reading, ...]:
        rows = (form.entry(self._dosages) for form in self.formset.forms)
        return tuple(row for row in rows if row is not None)


def _things(cup: WeighedCup) -> list[tuple[str, str]]:
    found = []
    for portion in cup.portions:
        found.append((portion.letter, f"Component {portion.letter}, {portion.planned_g:.2f} g planned"))
        for dose in cup.doses:
            if dose.dosage.into == portion.letter:
                grams = dose.to_add_g if dose.carried_g is not None else float(dose.dosage.planned_g)
                asked = "to be known once the cup before is weighed" if grams is None else f"{grams:.3f} g"
                how = "to add" if dose.carried_g is not None else "planned"
                found.append((f"d{dose.dosage.pk}", f"{dose.dosage.candidate.material.code}, {asked} {how}"))
    return found


def _standing(trial: Trial) -> list[dict]:
    rows = trial.weighings.order_by("position", "pk")
    return [
        {
            "what": row.letter or f"d{row.dosage_id}",
            "reading": FigureOrWord(row.reading_g, row.word),
            "cumulative": row.cumulative,
            "balance": str(row.balance_id or ""),
        }
        for row in rows
    ]


def _to_weigh(cup: WeighedCup) -> list[dict]:
    """All in one cup, one after the other: every reading but the first goes on."""
    return [{"what": what, "cumulative": place > 0} for place, (what, _) in enumerate(_things(cup))]
