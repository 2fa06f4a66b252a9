"""Forms and lines render through the notebook's own parts, errors linked to what they are about."""

from types import SimpleNamespace

import pytest
from django import forms
from django.template.loader import render_to_string

from trials.templatetags.fields import error_links, unit

DECIMAL = {"inputmode": "decimal"}


class Cup(forms.Form):
    code = forms.CharField(label="Code", help_text="Short enough for a lid")
    water_pct = forms.DecimalField(label="Water", required=False, widget=forms.TextInput(attrs=DECIMAL))
    part = forms.ChoiceField(label="Part", choices=[("t", "treated"), ("b", "blank")], widget=forms.RadioSelect)


Cups = forms.formset_factory(Cup, extra=0, min_num=1, validate_min=True)


def posted_rows(*rows):
    data = {"form-TOTAL_FORMS": len(rows), "form-INITIAL_FORMS": 0}
    for number, row in enumerate(rows):
        data |= {f"form-{number}-{name}": value for name, value in row.items()}
    return Cups(data)


@pytest.mark.parametrize(
    ("name", "expected"),
    [
        ("water_pct", "%"),
        ("density_g_ml", "g/mL"),
        ("grams_weighed_g", "g"),
        ("rpm", "rpm"),
        ("equivalent_g", "g/eq"),
        ("blade_mm", "mm"),
        ("minutes", "min"),
        ("code", ""),
        ("heating", ""),
    ],
)
def test_unit_follows_the_ending_of_the_name(name, expected):
    assert unit(SimpleNamespace(name=name, field=forms.CharField())) == expected


def test_unit_that_is_told_wins_over_the_name():
    field = forms.CharField(widget=forms.TextInput(attrs={"data-unit": "% of A"}))
    assert unit(SimpleNamespace(name="dosage_pct", field=field)) == "% of A"
    field.unit = "% of binder"
    assert unit(SimpleNamespace(name="dosage_pct", field=field)) == "% of binder"


def test_error_links_reach_the_field_and_the_first_of_a_group():
    assert error_links(Cup({"water_pct": "fifty"})) == [
        {"text": "Code: This field is required.", "target": "id_code"},
        {"text": "Water: Enter a number.", "target": "id_water_pct"},
        {"text": "Part: This field is required.", "target": "id_part_0"},
    ]


def test_error_links_of_rows_name_the_row():
    rows = posted_rows({"code": "417-1", "part": "t"}, {"code": "", "part": "b", "water_pct": "1"})
    assert error_links(formset=rows) == [{"text": "Row 2, Code: This field is required.", "target": "id_form-1-code"}]


def test_error_links_of_a_page_come_first():
    assert error_links(Cup(), problems=[("The server was away.", "")]) == [
        {"text": "The server was away.", "target": ""}
    ]


def test_summary_links_to_inputs_that_are_there():
    form = Cup({"code": "", "water_pct": "fifty"})
    page = render_to_string("components/error_summary.html", {"form": form}) + str(form)
    assert "There is a problem" in page
    for link in error_links(form):
        assert f'href="#{link["target"]}"' in page
        assert f'id="{link["target"]}"' in page


def test_summary_is_absent_where_nothing_is_wrong():
    assert render_to_string("components/error_summary.html", {"form": Cup()}).strip() == ""


def test_wrong_field_keeps_its_input_and_is_described_by_its_error():
    page = str(Cup({"code": "417-5", "part": "t", "water_pct": "fifty"}))
    assert 'value="fifty"' in page
    assert 'aria-describedby="id_water_pct_error"' in page
    assert 'id="id_water_pct_error"' in page
    assert 'aria-describedby="id_code_helptext"' in page
    assert '<p class="help" id="id_code_helptext">' in page
    assert '<span class="unit">%</span>' in page


def test_help_text_is_escaped():
    class Odd(forms.Form):
        code = forms.CharField(help_text="<script>")

    assert "<script>" not in str(Odd())


def test_lines_are_a_table_with_labels_units_and_a_row_to_copy():
    page = str(posted_rows({"code": "417-1", "part": "t"}, {"code": "417-2", "part": "b"}))
    assert page.count("<tr>") == 1 + 2 + 1  # head, rows, the row in the template
    assert '<th scope="col" class="num">Water <span class="unit">%</span></th>' in page
    assert 'for="id_form-1-code">Code, row <span data-row-number>2</span></label>' in page
    assert 'name="form-__prefix__-code"' in page.partition("<template data-line-template>")[2]
