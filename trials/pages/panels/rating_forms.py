"""The table in which one person rates: panels down, criteria across. The form checks; it never writes."""

from collections.abc import Iterator, Sequence
from decimal import Decimal

from django import forms

from trials.models import Criterion, Panel, Rating
from trials.operations.acting import Refused
from trials.operations.reading import RatingEntry, hold_to_scale
from trials.pages.figure_or_word import FigureOrWord, FigureOrWordField
from trials.pages.trials.writing import amend_fields


class RatingForm(forms.Form):
    """``standing`` is what the person noted at this age before; an empty cell says nothing and changes nothing."""

    age_h = Rating._meta.get_field("age_h").formfield(label="Age of the films")
    instrument = forms.CharField(
        max_length=60, required=False, help_text="Its name, where not your eyes read the values; else empty."
    )
    blind = forms.BooleanField(
        label="Read blind", required=False, help_text="Without knowing which panel is of which cup."
    )

    def __init__(
        self,
        *args,
        panels: Sequence[Panel],
        criteria: Sequence[Criterion],
        standing: dict[tuple[int, int], Rating],
        may_be_blind: bool,
        signed=None,
        **kwargs,
    ):
        super().__init__(*args, **kwargs)
        self.panels, self.criteria = panels, criteria
        if not may_be_blind:
            del self.fields["blind"]
        if signed is not None:
            self.fields |= amend_fields()
        self.heads = list(self.fields)
        for panel in panels:
            for criterion in criteria:
                self.fields[_cell(panel, criterion)] = _field(panel, criterion)
                noted = standing.get((panel.pk, criterion.pk))
                if noted:
                    self.initial[_cell(panel, criterion)] = FigureOrWord(noted.value, noted.word)

    def clean(self):
        cleaned = super().clean()
        for panel, criterion, given in self._given(cleaned):
            if given.value is not None:
                try:
                    hold_to_scale(criterion, given.value)
                except Refused as refusal:
                    self.add_error(_cell(panel, criterion), refusal.message)
        return cleaned

    def head_fields(self) -> list:
        return [self[name] for name in self.heads]

    def rows(self) -> Iterator[tuple[Panel, list]]:
        for panel in self.panels:
            yield panel, [self[_cell(panel, criterion)] for criterion in self.criteria]

    def entries(self) -> tuple[RatingEntry, ...]:
        typed = self.cleaned_data
        return tuple(
            RatingEntry(
                panel=panel,
                criterion=criterion,
                age_h=typed["age_h"],
                value=given.value,
                word=given.word,
                instrument=typed["instrument"],
                blind=typed.get("blind", False),
            )
            for panel, criterion, given in self._given(typed)
        )

    def _given(self, cleaned) -> Iterator[tuple[Panel, Criterion, FigureOrWord]]:
        for panel in self.panels:
            for criterion in self.criteria:
                given = cleaned.get(_cell(panel, criterion))
                if given is not None and not given.empty:
                    yield panel, criterion, given


def asked_age(text: str, otherwise: Decimal | None) -> Decimal | None:
    """The age in an address, else the one that the panels have now."""
    field = RatingForm.base_fields["age_h"]
    try:
        return field.clean(text) if text else otherwise
    except forms.ValidationError:
        return otherwise


def _cell(panel: Panel, criterion: Criterion) -> str:
    return f"v-{panel.pk}-{criterion.pk}"


def _field(panel: Panel, criterion: Criterion) -> FigureOrWordField:
    field = FigureOrWordField(label=f"{panel.code}, {criterion.name}", unit=criterion.unit)
    field.widget.attrs["size"] = 5
    return field
