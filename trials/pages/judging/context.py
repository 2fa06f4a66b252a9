"""What the comparison of a series shows, for any page that includes it."""

from collections.abc import Mapping
from urllib.parse import urlencode

from django import forms
from django.urls import reverse

from trials.figures.ladder import ladder_figure
from trials.figures.ladder_svg import ladder_svg
from trials.models import Person
from trials.models.fields import NumberFormField
from trials.queries.judging import Judgement, judgement
from trials.queries.ladders import caption, ladder_of
from trials.queries.windows import RULE, SAID

SIDES = (("two", "two-sided"), ("one", "one-sided, if that was decided before reading"))


class AskForm(forms.Form):
    """How the cups are compared; ``of`` (which table the figure shows) has its choices from the comparison."""

    side = forms.ChoiceField(label="Compared", choices=SIDES, required=False)
    age_h = NumberFormField(label="Age, if not the latest shared", unit="h", required=False, min_value=0)


def comparison(person: Person, series_id: int, asked: Mapping[str, str]) -> dict:
    """Everything that ``judging/_comparison.html`` needs; empty where the person may not see the series."""
    form = AskForm(asked)
    given = form.cleaned_data if form.is_valid() else {}
    age_h = given.get("age_h")
    found = judgement(
        series_id, person, declared=given.get("side") == "one", age_h=None if age_h is None else float(age_h)
    )
    return shown(found, form, asked.get("of", "")) if found else {}


def shown(found: Judgement, form: AskForm, of: str = "") -> dict:
    table = found.table(of)
    context = {"judged": found, "ask": form, "table": table, "rule": SAID[RULE]}
    if table is None:
        return context
    ladder = ladder_of(table)
    return context | {
        "others": [one for one in found.tables if one.key != table.key],
        "figure": ladder_figure(ladder),
        "paper": ladder_svg(ladder),
        "caption": caption(table),
        "csv_url": _csv_url(found, form),
    }


def _csv_url(found: Judgement, form: AskForm) -> str:
    """The numbers as they are shown: compared in the same way, at the same age."""
    address = reverse("series_comparison_csv", args=[found.series.number])
    asked = {name: form[name].value() for name in form.fields if form[name].value() and not form[name].errors}
    return f"{address}?{urlencode(asked)}" if asked else address
