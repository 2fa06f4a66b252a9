from decimal import Decimal

import pytest

from tests.judged_series import add_cup, rate
from tests.making import NOW
from tests.reports.conftest import CUSTOMER
from trials.models import Criterion, Limit, Seal
from trials.operations.judging import conclude_series, conclude_trial
from trials.operations.signing import sign
from trials.queries.judging import judgement
from trials.queries.series import load_series
from trials.reports.parts import MINUS
from trials.reports.series import series_report

pytestmark = pytest.mark.django_db
NAMES = ("Bench One", "Supervisor", CUSTOMER)


def _rows(table) -> dict[str, list[str]]:
    return {row.cells[0].text.replace("\u00a0", " "): [cell.text for cell in row.cells[1:]] for row in table.rows}


def _table(report, start):
    return next(table for table in report.compared if table.caption.startswith(start))


def test_figures_are_those_of_the_ladder_reckoned_by_hand(report_of, bench):
    # Means of the blanks and of 0.1 %: (9.8 + 10.4 + 9.5 + 10.7) / 4 = 10.1 and (8.9 + 9.6 + 9.1 + 9.9) / 4 = 9.375.
    rows = _rows(_table(report_of(bench), "Air content"))
    assert rows["blank"][:3] == ["9.80; 10.40; 9.50; 10.70", "4", "10.10"]
    assert rows["AR-01 0.1 %"][1:4] == ["4", "9.38", f"{MINUS}0.73"]
    assert rows["AR-01 0.3 %"][1:4] == ["4", "4.25", f"{MINUS}5.85"]
    assert rows["AR-01 0.3 %"][-1] == f"better, {MINUS}58 %"


def test_every_figure_is_that_of_the_comparison(report_of, series, bench):
    judged, report = judgement(series.pk, bench), report_of(bench)
    compared = 0
    for table in judged.tables:
        shown = _table(report, table.judged.measure.title)
        for row, drawn in zip(table.rows, shown.rows, strict=True):
            values = [cell.value for cell in drawn.cells if cell.places is not None]
            blank = row.cell.blank
            contrast = [blank.estimate, blank.low, blank.high, blank.p] if blank else [None] * 4
            assert values == [row.cell.n, row.cell.middle, *contrast]
            compared += blank is not None
    assert compared == 5  # four dosages by air, one by bubbles


def test_limit_stands_with_its_verdict_and_its_reason(report_of, bench):
    report = report_of(bench)
    # Three cups of 3 dm² with 1 per dm²: 9 found on 9 dm², exact Poisson upper bound 15.71 / 9 = 1.75 per dm²
    # (chi-square(0.95; 20) / 2 = 15.705, any printed table).
    assert _rows(report.limits)["AR-01 0.5 %"] == ["meets"]
    assert _rows(report.limits)["blank"] == ["misses"]
    verdict, why = _rows(_table(report, "Bubbles counted, per dm²: against"))["AR-01 0.5 %"]
    assert verdict == "meets"
    assert "9 found on 9 dm²: proves fewer than 1.75 per dm²" in why


def test_what_people_decided_leads_with_its_basis(report_of, series, bench):
    candidate = series.trials.get(number=5).dosages.get().candidate
    conclude_series(
        actor=bench, series=series, outcome="works", conclusion="0.3 % does it.", lesson="Stir longer.",
        not_tested="Recoating.", recommended=candidate, window_from_pct=Decimal("0.30"),
        window_to_pct=Decimal("0.5"), working_pct=Decimal("0.4"),
    )  # fmt: skip
    answer = report_of(bench).answer
    assert (answer.outcome, answer.recommended, answer.conclusion) == ("works", "AR-01", "0.3 % does it.")
    assert answer.window == "0.30 to 0.5 %, worked at 0.4 %, on total, on top, as supplied"
    assert report_of(bench).lesson == "Stir longer."
    assert report_of(bench).not_tested == "Recoating."


def test_what_was_unfair_is_said_of_its_cups(report_of, series, bench):
    cup = series.trials.get(number=7)
    cup.workings.update(minutes=2)
    conclude_trial(
        actor=bench, trial=series.trials.get(number=8), outcome="not a fair test", unfair_because="spilled"
    )
    texts = {remark.text: remark.heavy for remark in report_of(bench).unfair}
    stirred = "417-7: blank stirred differently (disperse): 4.2 m/s, 2 min, blank 4.2 m/s, 5 min."
    assert texts[stirred]
    assert texts["417-8: judged not a fair test: spilled."]
    assert texts["One reader."] is False


def test_what_the_enquiry_asks_for_and_nobody_read_is_said(report_of, enquiry, bench):
    Limit.objects.create(
        enquiry=enquiry, criterion=Criterion.objects.get(key="craters", current=True), limit=1, force="should"
    )
    open_ends = report_of(bench).not_read
    assert "Craters: the enquiry asks for it (should: 1 or lower), and nothing was read." in open_ends
    assert "Nothing was read after storage." in open_ends


def test_definitions_say_basis_unit_side_and_where_the_density_comes_from(report_of, bench):
    defined = {fact.label: fact.text for fact in report_of(bench).definitions}
    assert defined["Dosage"].startswith(
        "Per cent of the whole mix, all components together, free of additive; on top"
    )
    assert defined["Sides"].startswith("Two-sided")
    assert "measured on common batch CB-417" in defined["Air content"]
    assert "neither water nor exempt compounds subtracted" in defined["VOC, ready to use"]
    assert "Dunnett" in defined["Difference"]


def test_dosages_on_another_basis_are_named(report_of, series, bench):
    series.trials.get(number=9).dosages.update(basis="binder solids")
    defined = {fact.label: fact.text for fact in report_of(bench).definitions}
    assert defined["Other bases"] == "These cups were dosed otherwise: 417-9 on binder solids, on top, as supplied."


def test_names_stay_inside_where_the_enquiry_says_so(report_of, series, bench):
    series.conclusion = f"Tell halden  quay floors and Bench One; {CUSTOMER}'s hall."
    series.save()
    inside, outside = report_of(bench), report_of(bench, outside=True)
    assert all(name in repr(inside) for name in ("Bench One", CUSTOMER))
    assert not any(name.lower() in repr(outside).lower() for name in NAMES)
    assert outside.answer.conclusion == "Tell the customer and name withheld; the customer's hall."
    assert outside.head.record == "Series 417 · not signed · names withheld"
    assert "From the customer" in outside.asked.lines


def test_part_of_a_name_goes_too_unless_it_is_a_word_like_any_other(report_of, series, bench):
    series.title, series.question = "On top of Halden's own", "Quay is quay here, Floors are floors; haldenite stays"
    series.save()
    outside = report_of(bench, outside=True)
    assert outside.head.title == "On top of the customer's own"
    assert outside.question == "Quay is quay here, Floors are floors; haldenite stays"
    assert "One reader." in [remark.text for remark in outside.unfair]  # of the performer, Bench One


def test_a_remark_that_holds_for_cups_of_several_groups_is_told_once(report_of, series, bench):
    for number in (6, 10, 14):
        series.trials.get(number=number).workings.update(minutes=2)
    told = [remark.text for remark in report_of(bench).unfair if "stirred" in remark.text]
    stirred = "blank stirred differently (disperse): 4.2 m/s, 2 min, blank 4.2 m/s, 5 min."
    assert told == [f"417-6, 417-10, 417-14: {stirred}"]


def test_a_figure_leads_and_one_without_differences_is_left_out(report_of, series, bench):
    for cup in series.trials.all():
        rate(cup, bench, "craters", 0)
    assert [figure.label for figure in report_of(bench).figures] == ["Air content of component A"]
    rate(series.trials.get(number=20), bench, "craters", 4)
    assert [figure.label for figure in report_of(bench).figures] == ["Air content of component A", "Craters"]


def test_names_of_signers_stay_inside_too(report_of, series, bench, supervisor):
    sign(actor=bench, now=NOW, record=series, meaning="performed")
    (signed,) = report_of(bench, outside=True).proof.signatures
    assert signed.who == "name withheld"
    assert signed.digest == series.signatures.get().digest


def test_names_stand_where_no_enquiry_asks_to_withhold_them(report_of, enquiry, bench):
    enquiry.withheld = False
    enquiry.save()
    report = report_of(bench, outside=True)
    assert CUSTOMER in repr(report)
    assert report.head.record == "Series 417 · not signed · for outside readers"


def test_a_hidden_enquiry_is_not_told_and_still_withholds(report_of, enquiry, series, bench):
    enquiry.restricted = True
    enquiry.save()
    series.question = f"For {CUSTOMER}"
    series.save()
    assert report_of(bench).asked is None
    assert report_of(bench).limits is None
    assert CUSTOMER not in repr(report_of(bench, outside=True))


def test_hidden_base_shows_its_code_alone(report_of, series, bench, supervisor):
    base = series.revision.base
    base.restricted, base.owner = True, supervisor
    base.save()
    report = report_of(bench)
    assert report.head.over[0] == "Base EP-417, revision 1"
    assert not any(fact.label.startswith("VOC") for fact in report.made)


def test_signatures_and_the_newest_seal_stand_in_full(report_of, series, bench):
    assert report_of(bench).proof.state == "Nobody has signed this: it may still change."
    sign(actor=bench, now=NOW, record=series, meaning="performed")
    report = report_of(bench)
    assert report.head.record == "Series 417 · signed"
    assert report.proof.state == "To the letter, this record is what its newest signature covers."
    (signed,) = report.proof.signatures
    assert (signed.digest, signed.holds) == (series.signatures.get().digest, True)
    newest = Seal.objects.order_by("-pk").first()
    assert report.proof.seal == (newest.digest if newest else "")


@pytest.mark.parametrize("more", [0, 4])
def test_number_of_queries_is_the_same_for_more_cups(series, bench, more, django_assert_num_queries):
    candidate = series.trials.get(number=5).dosages.get().candidate
    for _ in range(more):
        rate(add_cup(series, "treated", candidate, "0.4", air_pct="4"), bench, "bubble-count", 2)
    loaded = load_series(bench, 417)
    with django_assert_num_queries(73):
        series_report(loaded, bench, now=NOW)
