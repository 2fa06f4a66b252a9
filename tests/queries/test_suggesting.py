"""What is suggested, with its reasons, for groups whose case is plain; and what stays undecided."""

from decimal import Decimal

import pytest

from tests.judged_series import add_cup, empty_series, ladder_series, rate
from tests.series_making import make_candidate
from trials.models import Criterion, Enquiry, Limit
from trials.queries.judging import judgement

pytestmark = pytest.mark.django_db


def _suggested(series, bench, label="AR-01 0.3 %"):
    (line,) = [line for line in judgement(series.pk, bench).lines if line.group.label == label]
    return line.suggestion


def _limit(series, bench, key, limit, force="must"):
    enquiry = series.enquiry or Enquiry.objects.create(
        number=7, subject="Foam", field="floor", received="2026-02-01", owner=bench
    )
    Limit.objects.create(enquiry=enquiry, criterion=Criterion.objects.get(key=key), limit=Decimal(limit), force=force)
    series.enquiry = enquiry
    series.save()


def test_works_where_the_gain_is_shown_and_nothing_is_worse(bench):
    found = _suggested(ladder_series(bench), bench)
    # the mean falls from 10.1 to 4.25, 57.9 %
    assert (found.outcome, found.reasons) == (
        "works",
        ("Air content of component A better than the blank by 58 % (p < 0.001)",),
    )


def test_undecided_where_nothing_is_shown(bench):
    series = ladder_series(bench, ladder={"0": ("8.0", "12.0"), "0.3": ("7.0", "10.0")})
    found = _suggested(series, bench)
    assert (found.outcome, found.reasons) == (
        "undecided",
        ("Air content of component A: not shown to differ from the blank, 2 cups",),
    )


def test_a_small_effect_that_leaves_no_room_for_one_worth_having_fails(bench):
    # −0.725 (−1.508 to 0.058) of 10.1: at most 15 %
    found = _suggested(ladder_series(bench), bench, "AR-01 0.1 %")
    assert (found.outcome, found.reasons) == (
        "fails",
        ("Air content of component A: a change of 30 % is excluded",),
    )


@pytest.mark.parametrize(
    ("treated", "reason"),
    [
        (("10.0", "10.5", "9.8", "10.1"), "Air content of component A: a change of 30 % is excluded"),
        (("14.0", "14.5", "13.8", "14.1"), "Air content of component A worse than the blank by 40 % (p < 0.001)"),
    ],
)
def test_fails_where_an_effect_is_excluded_or_turned(bench, treated, reason):
    series = ladder_series(bench, ladder={"0": ("9.8", "10.4", "9.9", "10.3"), "0.3": treated})
    found = _suggested(series, bench)
    assert (found.outcome, found.reasons) == ("fails", (reason,))


def test_fails_where_a_must_limit_is_missed(bench):
    series = ladder_series(bench)
    _limit(series, bench, "bubble-count", 5)
    for cup in series.trials.all():
        rate(cup, bench, "bubble-count", 20)
    found = _suggested(series, bench)
    assert found.outcome == "fails"
    assert found.reasons[0].startswith("Bubbles counted misses “must: 5 or lower”: 0 of 4 cups meet it")


def test_undecided_where_a_must_limit_cannot_be_told(bench):
    series = ladder_series(bench)
    _limit(series, bench, "bubble-count", 5)
    for cup in series.trials.all():
        rate(cup, bench, "bubble-count", 4 + 2 * (cup.number % 2))
    assert _suggested(series, bench).outcome == "undecided"


def test_works_within_limits_where_a_should_limit_is_missed(bench):
    series = ladder_series(bench)
    _limit(series, bench, "craters", 0, force="should")
    for cup in series.trials.all():
        rate(cup, bench, "craters", 0 if cup.part == "blank" else 1)
    found = _suggested(series, bench)
    assert found.outcome == "works within limits"
    assert found.reasons[-1].startswith("Craters misses “should: 0 or lower”: 0 of 4 cups meet it")


def test_works_within_limits_where_something_else_is_worse(bench):
    series = empty_series(bench)
    candidate = make_candidate()
    for nth in range(5):
        blank = add_cup(series, "blank", air_pct=f"9.{nth}")
        treated = add_cup(series, "treated", candidate, "0.3", air_pct=f"4.{nth}")
        rate(blank, bench, "gloss", 85 + nth)
        rate(treated, bench, "gloss", 60 + nth)
    found = _suggested(series, bench)
    assert found.outcome == "works within limits"
    # 87 to 62
    assert found.reasons[-1] == "Gloss worse than the blank by 29 % (p < 0.001)"


def test_an_unfair_group_draws_no_window(bench):
    series = ladder_series(bench, candidate=make_candidate(tip_speed_m_s=Decimal(9)))
    found = judgement(series.pk, bench)
    outcomes = {line.suggestion.outcome for line in found.lines if line.suggestion}
    assert (outcomes, found.windows) == ({"not a fair test"}, ())


def test_the_window_ends_where_haze_begins(bench):
    series = ladder_series(bench)
    for cup in series.trials.all():
        dose = cup.dosages.first()
        rate(
            cup, bench, "haze-reflection", (60 if dose and dose.dosage_pct == Decimal("0.5") else 10) + cup.number % 3
        )
    (found,) = judgement(series.pk, bench).windows
    assert (found.window.from_pct, found.window.to_pct) == (0.3, 0.3)
    assert (found.onset.dosage_pct, found.harmed) == (0.5, "Haze by reflection")
