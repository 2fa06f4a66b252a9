from decimal import Decimal

import pytest

from tests.judged_series import add_cup, rate
from tests.making import NOW
from trials.models import Weighing
from trials.operations.judging import FailureEntry, conclude_trial
from trials.operations.signing import sign
from trials.queries.judging import judgement
from trials.queries.trials import load_trial
from trials.reports.trial import trial_report

pytestmark = pytest.mark.django_db


@pytest.fixture
def made_of(series, bench):
    def made(code="417-13", person=bench, **how):
        return trial_report(load_trial(person, code), person, now=NOW, **how)

    return made


def _logged(report, start) -> list[list[str]]:
    table = next(table for table in report.logged if table.caption.startswith(start))
    return [[cell.text for cell in row.cells] for row in table.rows]


def test_a_reading_can_be_traced_to_the_balance(made_of, series):
    cup = series.trials.get(number=13)
    dose = cup.dosages.get()
    # 122.950 g of A, then the display goes on to 123.400 g with the additive: 0.450 g, on 150 g of mix 0.3 %.
    rows = [("A", None, "122.950", False), ("", dose, "123.400", True), ("B", None, "27.05", False)]
    for position, (letter, dosage, reading, cumulative) in enumerate(rows, 1):
        Weighing.objects.create(
            trial=cup,
            position=position,
            letter=letter,
            dosage=dosage,
            reading_g=Decimal(reading),
            cumulative=cumulative,
        )
    dose.weighed_g = Decimal("0.450")
    dose.save()
    report = made_of()
    readings = [[row[0], row[1], row[2]] for row in _logged(report, "Balance readings")]
    assert readings == [
        ["Component A", "122.950", "122.950"],
        ["AR-01", "123.400", "0.450"],
        ["Component B", "27.05", "27.05"],
    ]
    ((code, _, decided, real, planned, weighed, how),) = _logged(report, "Additive, decided and weighed")
    assert (code, decided, real, planned, weighed) == ("AR-01", "0.3", "0.300", "0.45", "0.450")
    assert how.startswith("on total, on top, as supplied, into A at let-down")


def test_air_of_a_density_names_what_it_is_reckoned_against(made_of):
    # 1.500 g/mL free of air less 4.1 % by volume is 1.4385 g/mL.
    ((quantity, where, value, minutes, air, _),) = _logged(made_of(), "Read before cure")
    assert (quantity, where, minutes, air) == ("density, g/mL", "component A", "2", "4.10")
    assert Decimal(value) == Decimal("1.4385")
    table = next(table for table in made_of().logged if table.caption == "Read before cure")
    assert table.notes == ("Air of component A against 1.5 g/mL, measured on common batch CB-417.",)


def test_its_group_stands_against_the_blank_as_in_the_series(made_of, series, bench):
    (table, *_) = made_of().compared
    assert [row.cells[0].text.replace("\u00a0", " ") for row in table.rows] == ["blank", "AR-01 0.3 %"]
    row = next(row for row in judgement(series.pk, bench).tables[0].rows if row.cell.group.label == "AR-01 0.3 %")
    figures = [cell.value for cell in table.rows[1].cells if cell.places is not None]
    blank = row.cell.blank
    assert figures == [4, row.cell.middle, blank.estimate, blank.low, blank.high, blank.p]


def test_outcome_failures_and_lesson_are_told(made_of, series, bench):
    failure = FailureEntry("craters", 3, "a dozen", "over-dosed")
    cup = series.trials.get(number=13)
    conclude_trial(actor=bench, trial=cup, outcome="fails", lesson="Less.", failures=(failure,))
    report = made_of()
    assert (report.outcome, report.lesson) == ("fails", "Less.")
    assert report.failures == ("craters, 3 of 5, cause: over-dosed: a dozen",)


def test_a_cup_stands_under_the_signatures_of_its_series(made_of, series, bench):
    sign(actor=bench, now=NOW, record=series, meaning="performed")
    report = made_of()
    assert report.head.record == "Cup 417-13 · signed"
    assert (
        report.proof.state
        == "To the letter, series 417, to which this cup belongs, is what its newest signature covers."
    )


def test_readers_stay_inside_where_the_enquiry_says_so(made_of):
    assert any(row[4] == "Bench One" for row in _logged(made_of("417-1"), "Every reading"))
    outside = made_of("417-1", outside=True)
    assert [row[4] for row in _logged(outside, "Every reading")] == ["name withheld"]
    assert "Bench One" not in repr(outside)


@pytest.mark.parametrize("more", [0, 3])
def test_number_of_queries_is_the_same_for_more_rows(series, bench, more, django_assert_num_queries):
    for number in (1, 13):
        rate(series.trials.get(number=number), bench, "haze", 1)
    for _ in range(more):
        rate(series.trials.get(number=13), bench, "bubble-count", 2)
        add_cup(series, "treated", series.trials.get(number=13).dosages.get().candidate, "0.3", air_pct="4")
    loaded = load_trial(bench, "417-13")
    with django_assert_num_queries(90):
        trial_report(loaded, bench, now=NOW)
