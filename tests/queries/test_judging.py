"""A judged series against SciPy on the same numbers, and what a page must never claim."""

from decimal import Decimal

import numpy as np
import pytest
from scipy import stats

from tests.judged_series import LADDER, add_cup, empty_series, ladder_series, rate
from tests.series_making import make_candidate
from trials.models import Criterion, Enquiry, Limit
from trials.queries.judging import judgement

pytestmark = pytest.mark.django_db

BLANK, *TREATED = (np.array([float(value) for value in cups]) for cups in LADDER.values())


def _air(found):
    return {row.cell.group.label: row.cell for row in found.table("air-a:fresh").rows}


def test_differences_are_those_of_scipy(bench):
    """SciPy ``stats.dunnett`` on the same values: a randomized integral, so its own noise is the tolerance."""
    found = judgement(ladder_series(bench).pk, bench)
    cells = _air(found)
    wanted = stats.dunnett(*TREATED, control=BLANK, rng=np.random.default_rng(5))
    interval = wanted.confidence_interval(0.95)
    for nth, dosage in enumerate(("0.1", "0.2", "0.3", "0.5")):
        contrast = cells[f"AR-01 {dosage} %"].blank
        assert contrast.estimate == pytest.approx(TREATED[nth].mean() - BLANK.mean(), abs=1e-9)
        assert contrast.p == pytest.approx(wanted.pvalue[nth], abs=2e-4)
        assert (contrast.low, contrast.high) == pytest.approx((interval.low[nth], interval.high[nth]), abs=5e-3)
        assert (contrast.n, contrast.n_control) == (4, 4)


def test_lowest_dosage_hangs_on_the_declared_side(bench):
    """Exact integrals of Dunnett's distribution (SciPy, converged): 0.073148 two-sided, 0.036625 one-sided."""
    series = ladder_series(bench)
    two = _air(judgement(series.pk, bench))["AR-01 0.1 %"].blank
    one = _air(judgement(series.pk, bench, declared=True))["AR-01 0.1 %"].blank
    assert (two.side, one.side) == ("two-sided", "less")
    assert two.p == pytest.approx(0.073148, abs=2e-5)
    assert one.p == pytest.approx(0.036625, abs=2e-5)
    assert (two.says, one.says) == ("not shown", "better")


def test_window_names_its_rules(bench):
    (found,) = judgement(ladder_series(bench).pk, bench).windows
    lowest = {reach.rule: reach.lowest.dosage_pct for reach in found.reaches}
    assert lowest == {"no worse than best": 0.3, "target": 0.2, "step down": 0.2}
    assert (found.window.from_pct, found.window.to_pct) == (0.3, 0.5)
    assert found.onset.reason == "No compatibility criterion was read on the ladder and its blanks."


def test_change_is_in_per_cent_of_the_blank(bench):
    cells = _air(judgement(ladder_series(bench).pk, bench))
    changes = [cells[f"AR-01 {dosage} %"].blank.change_pct for dosage in ("0.1", "0.2", "0.3", "0.5")]
    assert changes == pytest.approx([-7.18, -31.93, -57.92, -61.14], abs=0.005)


def test_what_was_asked_for_is_held_against_the_limit(bench):
    series = ladder_series(bench)
    enquiry = Enquiry.objects.create(number=7, subject="Foam", field="floor", received="2026-02-01", owner=bench)
    criterion = Criterion.objects.get(key="bubble-count")
    Limit.objects.create(enquiry=enquiry, criterion=criterion, limit=Decimal(5))
    series.enquiry = enquiry
    series.save()
    for cup in series.trials.all():
        # blanks 40 and more per dm², 0.1 % 5 or so, above that none or one on 3 dm²
        low = {"blank": 40}.get(cup.part) or (5 if cup.dosages.get().dosage_pct < Decimal("0.2") else 0)
        rate(cup, bench, "bubble-count", low + cup.number % 2)
    table = judgement(series.pk, bench).table("bubble-count:fresh")
    verdicts = {row.cell.group.label: row.held.verdict for row in table.rows}
    assert verdicts == {
        "blank": "misses",
        "AR-01 0.1 %": "cannot tell",
        "AR-01 0.2 %": "meets",
        "AR-01 0.3 %": "meets",
        "AR-01 0.5 %": "meets",
    }
    bounds = {row.cell.group.label: row.bound for row in table.rows}
    # 2 cups × 1 per dm² × 3 dm² = 6 on 12 dm²; exact Poisson (Garwood): chi²(0.95; 14)/2 = 11.84, per 12 dm² 0.987
    assert bounds["AR-01 0.3 %"] == "6 found on 12 dm²: proves fewer than 0.987 per dm² (95 %, exact Poisson)"
    assert stats.chi2.ppf(0.95, 14) / 2 / 12 == pytest.approx(0.987, abs=5e-4)


def test_none_found_does_not_prove_none(bench):
    series = empty_series(bench)
    enquiry = Enquiry.objects.create(number=7, subject="Foam", field="floor", received="2026-02-01", owner=bench)
    Limit.objects.create(enquiry=enquiry, criterion=Criterion.objects.get(key="bubble-count"), limit=Decimal(0))
    type(series).objects.filter(pk=series.pk).update(enquiry=enquiry)
    candidate = make_candidate()
    for part, count in (("blank", 40), ("blank", 50), ("treated", 0)):
        cup = add_cup(series, part, candidate if part == "treated" else None, "0.3")
        rate(cup, bench, "bubble-count", count, area_dm2="1")
    found = judgement(series.pk, bench)
    row = found.table("bubble-count:fresh").rows[-1]
    assert row.held.verdict == "cannot tell"
    # −ln 0.05 = 2.996: none on 1 dm² proves fewer than 3 only
    assert row.held.reason.startswith("none found does not prove none; none found on 1 dm²: proves fewer than 3 per")
    assert found.lines[-1].suggestion.outcome == "undecided"


def test_limits_of_an_enquiry_that_is_not_seen_stay_hidden(bench, colleague):
    series = ladder_series(bench)
    enquiry = Enquiry.objects.create(
        number=7, subject="Foam", field="floor", received="2026-02-01", owner=bench, restricted=True
    )
    Limit.objects.create(enquiry=enquiry, criterion=Criterion.objects.get(key="bubble-count"), limit=Decimal(5))
    series.enquiry = enquiry
    series.save()
    rate(series.trials.first(), bench, "bubble-count", 3)
    assert judgement(series.pk, bench).table("bubble-count:fresh").wanted.said == "must: 5 or lower"
    assert judgement(series.pk, colleague).table("bubble-count:fresh").wanted is None


def test_restricted_series_is_judged_for_named_people_only(bench, colleague):
    series = ladder_series(bench, restricted=True)
    assert judgement(series.pk, bench) is not None
    assert judgement(series.pk, colleague) is None


def test_grades_of_few_cups_are_never_no_effect(bench):
    series = empty_series(bench)
    candidate = make_candidate()
    for part, grade in (("blank", 4), ("blank", 5), ("blank", 5), ("treated", 1), ("treated", 2)):
        rate(add_cup(series, part, candidate if part == "treated" else None, "0.3"), bench, "bubbles", grade)
    table = judgement(series.pk, bench).table("bubbles:fresh")
    contrast = table.rows[-1].cell.blank
    # SciPy ``stats.mannwhitneyu``, exact: 4, 5, 5 against 1, 2
    wanted = stats.mannwhitneyu([1, 2], [4, 5, 5], method="exact").pvalue
    assert contrast.p == pytest.approx(wanted) == pytest.approx(0.2)
    assert (contrast.estimate, contrast.superiority, contrast.low, contrast.says) == (-3, 0, None, "not shown")
    assert table.remarks == (
        "With 3 blanks and 2 cups no p below 0.2 can come out; a larger p is never proof of no effect.",
    )


def test_half_grades_are_compared_too(bench):
    series = empty_series(bench)
    candidate = make_candidate()
    for part, grades in (("blank", (4, 4.5)), ("blank", (5, 5)), ("treated", (0, 0.5)), ("treated", (1, 1.5))):
        cup = add_cup(series, part, candidate if part == "treated" else None, "0.3")
        for grade in grades:
            rate(cup, bench, "bubbles", grade)
    row = judgement(series.pk, bench).table("bubbles:fresh").rows[-1]
    # medians 4.25, 5 against 0.25, 1.25: differences −4, −3, −4.75, −3.75
    assert (row.cell.middle, row.cell.blank.estimate) == (0.75, -3.875)


def test_stored_panels_are_compared_with_stored_blanks(bench):
    series = empty_series(bench)
    candidate = make_candidate()
    fresh = {"blank": (40, 44), "treated": (2, 3)}
    stored = {"blank": (50, 52), "treated": (49, 51)}
    for part in ("blank", "treated"):
        for new, old in zip(fresh[part], stored[part], strict=True):
            cup = add_cup(series, part, candidate if part == "treated" else None, "0.3")
            tin = cup.stored_tins.create(temperature_c=Decimal(50), days=28, stored_at=cup.made_at)
            rate(cup, bench, "bubble-count", new)
            rate(cup, bench, "bubble-count", old, stored_tin=tin)
    found = judgement(series.pk, bench)
    fresh_row, stored_row = (
        found.table(f"bubble-count:{where}").rows[-1] for where in ("fresh", "stored 28 d at 50 °C")
    )
    assert (fresh_row.cell.blank.estimate, fresh_row.cell.blank.says) == (-39.5, "better")
    assert (stored_row.cell.blank.estimate, stored_row.cell.blank.says) == (-1, "not shown")
    suggestion = found.lines[-1].suggestion
    assert suggestion.outcome == "works within limits"
    assert suggestion.reasons[-1] == "Bubbles counted, stored 28 d at 50 °C: not shown better than the stored blank"
    assert found.windows[0].judged_by == "Bubbles counted, stored 28 d at 50 °C"
    assert found.windows[0].window.from_pct is None


def test_thicknesses_that_blanks_have_are_judged_apart(bench):
    series = empty_series(bench)
    candidate = make_candidate()
    for part, thin, thick in (("blank", 20, 60), ("blank", 22, 66), ("treated", 0, 50), ("treated", 1, 54)):
        cup = add_cup(series, part, candidate if part == "treated" else None, "0.3")
        rate(cup, bench, "bubble-count", thin, wet_um="2000")
        rate(cup, bench, "bubble-count", thick, wet_um="4000")
    found = judgement(series.pk, bench)
    means = {table.key: table.rows[-1].cell.middle for table in found.tables}
    assert means == {"bubble-count:fresh, 2000 µm": 0.5, "bubble-count:fresh, 4000 µm": 52}


def test_the_age_that_blanks_have_is_compared(bench):
    series = empty_series(bench)
    candidate = make_candidate()
    for part, day, week in (("blank", 80, None), ("blank", 82, None), ("treated", 90, 70), ("treated", 92, 72)):
        cup = add_cup(series, part, candidate if part == "treated" else None, "0.3")
        rate(cup, bench, "gloss", day, age_h=24)
        if week is not None:
            rate(cup, bench, "gloss", week, age_h=168)
    table = judgement(series.pk, bench).table("gloss:fresh")
    assert (table.judged.column.age_h, table.rows[-1].cell.middle) == (24, 91)
    week = judgement(series.pk, bench, age_h=168).table("gloss:fresh")
    assert (week.rows[-1].cell.middle, week.rows[-1].cell.lone) == (71, "no control")


def test_incumbent_is_a_comparison_of_its_own(bench):
    series = empty_series(bench)
    today, new = make_candidate("AR-05"), make_candidate("AR-01")
    cups = {"blank": (9.8, 10.4), "incumbent": (6.1, 6.5), "treated": (4.1, 4.6)}
    for part, airs in cups.items():
        for air in airs:
            candidate = {"incumbent": today, "treated": new}.get(part)
            add_cup(series, part, candidate, "0.3", air_pct=str(air))
    found = judgement(series.pk, bench)
    cells = _air(found)
    wanted = stats.ttest_ind(cups["treated"], cups["incumbent"])
    contrast = cells["AR-01 0.3 %"].incumbent
    # one group against one control: Dunnett's p is Student's
    assert contrast.p == pytest.approx(wanted.pvalue, abs=1e-5)
    assert contrast.against == found.incumbent == "incumbent AR-05 0.3 %"
    assert cells["incumbent AR-05 0.3 %"].incumbent is None
    assert cells["incumbent AR-05 0.3 %"].blank.compared == 2


def test_without_blank_there_is_no_control(bench):
    series = empty_series(bench)
    candidate = make_candidate()
    for air in ("4.1", "4.6"):
        add_cup(series, "treated", candidate, "0.3", air_pct=air)
    found = judgement(series.pk, bench)
    (cell,) = _air(found).values()
    assert (cell.blank, cell.lone) == (None, "no control")
    assert found.lines[0].suggestion.reasons == ("no control",)
    assert found.marks[0].text == "no blank: there is no control to compare with"
    assert found.windows == ()


def test_top_ups_are_shown_and_not_counted(bench):
    series = ladder_series(bench)
    parent = series.trials.filter(dosages__dosage_pct=Decimal("0.2")).first()
    candidate = parent.dosages.get().candidate
    add_cup(series, "treated", candidate, "0.3", air_pct="1.0", topped_up_from=parent)
    cell = _air(judgement(series.pk, bench))["AR-01 0.3 %"]
    assert (len(cell.values), cell.n, cell.middle) == (5, 4, pytest.approx(4.25))


def test_impossible_density_is_told_and_left_out(bench):
    series = ladder_series(bench)
    cup = series.trials.last()
    cup.wet_readings.update(value=Decimal("1.6"))
    table = judgement(series.pk, bench).table("air-a:fresh")
    assert table.rows[-1].cell.n == 3
    assert table.remarks[0].startswith(f"{cup.code}: density_g_ml must not exceed air_free_g_ml (1.5)")


def test_air_free_density_says_where_it_comes_from(bench):
    series = ladder_series(bench)
    measure = judgement(series.pk, bench).table("air-a:fresh").judged.measure
    assert measure.note == "first density of each cup against 1.5 g/mL, measured on common batch CB-417"
    type(series.common_batch).objects.update(density_g_ml=None)
    (table,) = judgement(series.pk, bench).tables
    # of the recipe: 100/(60/1.16 + 40/2.65) = 1.497, so the blanks lie above it by their own noise at most
    assert table.judged.measure.note.startswith("first density of each cup against 1.497 g/mL, from the recipe")


def test_grades_are_compared_on_the_scale_that_they_were_read_on(bench):
    series = empty_series(bench)
    candidate = make_candidate()
    for part, grade in (("blank", 4), ("blank", 5), ("treated", 1), ("treated", 2)):
        rate(add_cup(series, part, candidate if part == "treated" else None, "0.3"), bench, "bubbles", grade)
    Criterion.objects.filter(key="bubbles").update(current=False)
    Criterion.objects.create(
        key="bubbles", version=2, name="Bubbles", position=10, scale="steps", low=0, high=100, better="lower",
        concern="efficiency",
    )  # fmt: skip
    table = judgement(series.pk, bench).table("bubbles:fresh")
    assert table.judged.measure.steps == (0, 1, 2, 3, 4, 5)
    assert table.rows[-1].cell.blank.estimate == -3


@pytest.mark.parametrize("more", [0, 2])
def test_number_of_queries_does_not_grow_with_the_cups(bench, django_assert_num_queries, more):
    series = empty_series(bench)
    candidate = make_candidate()
    for _ in range(1 + more):
        for part in ("blank", "treated"):
            cup = add_cup(series, part, candidate if part == "treated" else None, "0.3", air_pct="5")
            rate(cup, bench, "bubbles", 2)
    with django_assert_num_queries(32):
        judgement(series.pk, bench)
