"""The comparison on its page, and judging as it is typed."""

import csv
import io
import json
import re
from decimal import Decimal

import pytest
from django.urls import reverse

from tests.judged_series import add_cup, empty_series, ladder_series, rate
from tests.making import NOW
from tests.people import PASSWORD
from tests.series_making import make_candidate
from trials.models import Failure, Series, Trial
from trials.operations.judging import FailureEntry, conclude_trial
from trials.operations.signing import sign
from trials.pages.judging.table import HEAD, safe

pytestmark = pytest.mark.django_db

ROWS = {"failures-TOTAL_FORMS": "1", "failures-INITIAL_FORMS": "0"}


@pytest.fixture
def series(bench, client):
    client.force_login(bench)
    return ladder_series(bench)


def _judge(client, **typed):
    return client.post(reverse("series_judge", args=[417]), typed)


def _judge_cup(client, code="417-9", **typed):
    return client.post(reverse("trial_judge", args=[code]), {**ROWS, **typed})


def _row(page, label):
    """The cells of the first row of this group in the table of differences, as text."""
    table = page[page.index('aria-label="Air content of component A"', page.index("</figure>")) :]
    row = re.search(rf'<th scope="row">{re.escape(label)}.*?</tr>', table, re.DOTALL)[0]
    cells = re.findall(r"<t[dh][^>]*>(.*?)</t[dh]>", row, re.DOTALL)
    return [re.sub(r"<[^>]+>|[\u2007\u2008]", "", cell).strip() for cell in cells]


def test_page_tells_differences_intervals_p_and_cups(client, series):
    page = client.get(reverse("series_judge", args=[417])).content.decode()
    label, cups, n, mean, difference, low, high, p, shown = _row(page, "AR-01 0.1 %")
    assert (label, cups, n) == ("AR-01 0.1 %", "8.90; 9.60; 9.10; 9.90", "4")
    # SciPy stats.dunnett: mean 9.375, −0.725 (−1.508 to 0.058), p 0.0731
    told = [float(figure.replace("\u2212", "-")) for figure in (mean, difference, low, high, p)]
    assert told == pytest.approx([9.375, -0.725, -1.508, 0.058, 0.0731], abs=0.0051)
    assert shown == "not shown \u22127 %"
    assert "Two-sided." in page
    assert "0.3 %" in page


def test_window_is_prefilled_with_its_rule(client, series):
    page = client.get(reverse("series_judge", args=[417])).content.decode()
    values = re.findall(r'name="(window_from_pct|window_to_pct|working_pct)" value="([^"]*)"', page)
    assert dict(values) == {"window_from_pct": "0.3", "window_to_pct": "0.5", "working_pct": "0.39"}
    assert "lowest dosage that differs from the blank and is not shown to be worse than the best" in page


def test_nothing_is_decided_for_the_person(client, series):
    page = client.get(reverse("series_judge", args=[417])).content.decode()
    selects = re.findall(r'<select name="[^"]*outcome".*?</select>', page, re.DOTALL)
    assert len(selects) == 5
    assert all('<option value="" selected>' in select for select in selects)


def test_series_is_judged_with_its_groups(client, series):
    candidate = series.trials.last().dosages.get().candidate
    answer = _judge(
        client,
        outcome="works",
        conclusion="Good from 0.3 %.",
        not_tested="Recoating.",
        recommended=candidate.pk,
        window_from_pct="0,30 %",
        window_to_pct="0.5",
        **{"treated_AR-01-0p3-l_b1-outcome": "works", "treated_AR-01-0p3-l_b1-lesson": "Enough."},
    )
    assert answer.url == reverse("series", args=[417])
    series.refresh_from_db()
    assert (series.outcome, str(series.window_from_pct), series.recommended) == ("works", "0.30", candidate)
    decided = Trial.objects.exclude(outcome="").order_by("number").values_list("code", "outcome", "lesson")
    assert list(decided) == [(f"417-{number}", "works", "Enough.") for number in (13, 14, 15, 16)]


def test_a_row_left_alone_keeps_what_differs_between_its_cups(client, series, bench):
    conclude_trial(actor=bench, trial=Trial.objects.get(code="417-13"), outcome="fails")
    _judge(client, outcome="undecided", **{"treated_AR-01-0p3-l_b1-outcome": ""})
    assert Trial.objects.get(code="417-13").outcome == "fails"
    _judge(client, outcome="undecided", **{"treated_AR-01-0p3-l_b1-lesson": "Same for all."})
    assert list(Trial.objects.filter(number__in=[13, 14]).order_by("number").values_list("outcome", "lesson")) == [
        ("fails", "Same for all."),
        ("", "Same for all."),
    ]


def test_what_is_wrong_is_told_at_its_field_and_nothing_is_lost(client, series):
    page = _judge(
        client,
        outcome="works",
        conclusion="Long thought over.",
        window_from_pct="much",
        **{"treated_AR-01-0p3-l_b1-outcome": "not a fair test"},
    ).content.decode()
    assert 'href="#id_window_from_pct"' in page
    assert 'href="#id_treated_AR-01-0p3-l_b1-unfair_because"' in page
    assert "Say why AR-01 0.3 % was not a fair test." in page
    assert "Long thought over." in page
    assert Series.objects.get().outcome == ""


def test_a_refusal_of_the_operation_is_told_at_its_field(client, series):
    page = _judge(client, outcome="works", window_from_pct="0.3").content.decode()
    assert "Say which additive the window is for." in page
    assert 'href="#id_recommended"' in page


def test_a_cup_is_judged_with_its_failures(client, series):
    answer = _judge_cup(
        client,
        outcome="fails",
        lesson="Too much.",
        **{
            "failures-0-mode": "craters",
            "failures-0-severity": "4",
            "failures-0-how": "a dozen",
            "failures-0-cause": "over-dosed",
        },
    )
    assert answer.url == reverse("series", args=[417])
    assert Trial.objects.get(code="417-9").outcome == "fails"
    assert list(Failure.objects.values_list("mode", "severity", "how", "cause")) == [
        ("craters", 4, "a dozen", "over-dosed")
    ]
    assert "a dozen" in client.get(reverse("trial_judge", args=["417-9"])).content.decode()


def test_a_failure_is_taken_out_by_taking_none(client, series, bench):
    conclude_trial(
        actor=bench,
        trial=Trial.objects.get(code="417-9"),
        outcome="fails",
        failures=(FailureEntry("haze", 2, "milky"),),
    )
    typed = {"failures-TOTAL_FORMS": "2", "failures-INITIAL_FORMS": "1", "failures-0-mode": ""}
    _judge_cup(client, outcome="works", **typed, **{"failures-0-severity": "2", "failures-0-how": "milky"})
    assert not Failure.objects.exists()


@pytest.mark.parametrize(
    ("typed", "said"),
    [
        ({"failures-0-mode": "haze"}, "Say how severe it is, from 1 to 5."),
        ({"failures-0-mode": "haze", "failures-0-severity": "7"}, "less than or equal to 5"),
        ({"failures-0-how": "milky"}, "Say which failure it is."),
        ({"outcome": "not a fair test"}, "Say why this was not a fair test."),
        ({"outcome": "splendid"}, "splendid is not one of the available choices"),
    ],
)
def test_a_cup_that_can_not_be_judged_so_says_why(client, series, typed, said):
    page = _judge_cup(client, **{"lesson": "Kept in the form.", **typed}).content.decode()
    assert said in page
    assert "Kept in the form." in page
    assert not Trial.objects.exclude(outcome="").exists()


def test_one_side_is_said_to_need_a_declaration(client, series):
    page = client.get(reverse("series_judge", args=[417]), {"side": "one"}).content.decode()
    assert _row(page, "AR-01 0.1 %")[7] == "0.037"
    assert "only where it was decided before the cups were read" in page


def test_figure_and_paper_show_the_same_cups(client, series):
    page = client.get(reverse("series_judge", args=[417])).content.decode()
    figure = json.loads(re.search(r'<script id="ladder-figure" type="application/json">(.*?)</script>', page)[1])
    on_screen = sum(len(trace["x"]) for trace in figure["data"] if trace["mode"] == "markers")
    on_paper = page.count('r="2.4"')
    assert (on_screen, on_paper) == (20, 20)
    assert "<style" not in page
    assert not re.search(r"<script(?![^>]*(src=|application/json))", page)


def test_csv_has_the_numbers_and_no_formula(client, series, bench):
    candidate = make_candidate("=cmd|'/c calc'!A1")
    add_cup(series, "treated", candidate, "0.3", air_pct="5")
    answer = client.get(reverse("series_comparison_csv", args=[417]))
    assert answer["Content-Type"] == "text/csv; charset=utf-8"
    rows = list(csv.DictReader(io.StringIO(answer.content.decode("utf-8-sig"))))
    assert list(rows[0]) == list(HEAD)
    first = next(row for row in rows if row["group"] == "AR-01 0.1 %")
    assert float(first["difference_from_blank"]) == pytest.approx(-0.725)
    assert (first["n"], first["n_blank"], first["basis"]) == ("4", "4", "on total, on top, as supplied")
    assert [row["group"] for row in rows if "cmd" in row["group"]] == ["'=cmd|'/c calc'!A1 0.3 %"]


@pytest.mark.parametrize(
    ("value", "cell"), [("=1+1", "'=1+1"), ("+x", "'+x"), ("-x", "'-x"), ("@x", "'@x"), (-1.5, -1.5), (None, "")]
)
def test_cells_that_a_spreadsheet_would_run_are_text(value, cell):
    assert safe(value) == cell


def test_series_without_a_reading_says_so(client, bench):
    client.force_login(bench)
    empty_series(bench)
    page = client.get(reverse("series_judge", args=[417])).content.decode()
    assert "Nothing is read yet that could be compared." in page


@pytest.mark.parametrize("address", ["series_judge", "series_comparison_csv"])
def test_restricted_series_is_not_there_for_others(client, bench, colleague, address):
    ladder_series(bench, restricted=True)
    client.force_login(colleague)
    assert client.get(reverse(address, args=[417])).status_code == 404
    assert client.get(reverse("trial_judge", args=["417-9"])).status_code == 404


def test_readers_see_numbers_and_judge_nothing(client, bench, reader):
    ladder_series(bench)
    client.force_login(reader)
    assert client.get(reverse("series_comparison_csv", args=[417])).status_code == 200
    assert client.get(reverse("series_judge", args=[417])).status_code == 403
    assert client.post(reverse("trial_judge", args=["417-9"]), {}).status_code == 403


def test_topped_up_cups_stand_in_brackets(client, series, bench):
    parent = series.trials.get(number=9)
    candidate = parent.dosages.get().candidate
    add_cup(series, "treated", candidate, "0.3", air_pct="1", topped_up_from=parent)
    rate(parent, bench, "bubble-count", Decimal(3))
    page = client.get(reverse("series_judge", args=[417])).content.decode()
    assert _row(page, "AR-01 0.3 %")[1:4] == ["4.10; 4.60; 3.90; 4.40; (1.00)", "4", "4.25"]
    assert "417-21: topped up from 417-9: not independent, left out of n." in page


def test_csv_of_what_is_shown_is_compared_in_the_same_way(client, series):
    page = client.get(reverse("series", args=[417]), {"side": "one", "of": "air-a:fresh"}).content.decode()
    address = re.search(r'href="([^"]*comparison\.csv[^"]*)"', page)[1]
    assert address == "/series/417/comparison.csv?side=one"
    rows = csv.DictReader(io.StringIO(client.get(address).content.decode("utf-8-sig")))
    assert {row["compared"] for row in rows if row["part"] == "treated"} == {"less"}


def test_an_age_that_is_no_number_is_told_at_its_field(client, series):
    page = client.get(reverse("series", args=[417]), {"age_h": "a week"}).content.decode()
    assert "“a week” is not a number" in page


def test_what_is_signed_is_judged_by_an_amendment(client, series, bench):
    sign(actor=bench, now=NOW, record=series, meaning="performed")
    page = _judge(client, outcome="works", conclusion="Seen anew.").content.decode()
    assert "This is signed: amend it" in page
    assert "Seen anew." in page
    assert Series.objects.get().outcome == ""
    reason = {"amend_reason": "Read again after a week.", "amend_password": "not mine"}
    page = _judge(client, outcome="works", conclusion="Seen anew.", **reason).content.decode()
    assert "This is not your password." in page
    assert "This is signed: amend it" in page
    assert Series.objects.get().outcome == ""
    reason["amend_password"] = PASSWORD
    answer = _judge(client, outcome="works", conclusion="Seen anew.", **reason)
    assert answer.status_code == 302
    assert (Series.objects.get().outcome, series.signatures.last().meaning) == ("works", "amended")
