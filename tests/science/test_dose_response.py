import math

import pytest

from trials.science.dose_response import (
    Lowest,
    Onset,
    dosage_for,
    fit,
    lack_of_fit,
    lack_of_fit_of,
    lowest_effective,
    over_dosing_onset,
    window,
)

DOSAGE = [0, 0, 0.1, 0.1, 0.2, 0.2, 0.4, 0.4, 0.8, 0.8]
FALLING = [9.9, 10.1, 9.0, 9.2, 6.4, 6.2, 3.1, 3.3, 2.2, 2.0]
BLANK = [9.8, 10.4, 9.5, 10.7]
LADDER = {0.1: [8.9, 9.6, 9.1, 9.9], 0.2: [7.0, 6.4, 7.3, 6.8], 0.3: [4.1, 4.6, 3.9, 4.4]}


def test_a_rising_curve_has_a_negative_slope_and_the_same_midpoint():
    falls, rises = fit(DOSAGE, FALLING), fit(DOSAGE, [-value for value in FALLING])
    assert rises.slope == pytest.approx(-falls.slope, rel=1e-6)
    assert rises.midpoint_pct == pytest.approx(falls.midpoint_pct, rel=1e-6)
    assert (rises.lower, rises.upper) == pytest.approx((-falls.upper, -falls.lower), rel=1e-6)
    slope, lower, upper, midpoint = falls.standard_errors
    assert rises.standard_errors == pytest.approx((slope, upper, lower, midpoint), rel=1e-5)
    assert dosage_for(rises, 90).estimate_pct == pytest.approx(dosage_for(falls, 90).estimate_pct, rel=1e-6)


def test_units_of_the_response_do_not_matter():
    one, other = fit(DOSAGE, FALLING), fit(DOSAGE, [1000 * value + 7 for value in FALLING])
    assert other.midpoint_pct == pytest.approx(one.midpoint_pct, rel=1e-6)
    assert other.upper == pytest.approx(1000 * one.upper + 7, rel=1e-6)
    assert other.s == pytest.approx(1000 * one.s, rel=1e-6)


def test_the_same_cups_give_the_same_curve():
    assert fit(DOSAGE, FALLING) == fit(DOSAGE, FALLING)


def test_an_exact_curve_is_found_again():
    dosage = [0, 0.05, 0.1, 0.2, 0.3, 0.5, 1.0, 2.0]
    found = fit(dosage, [2 + 8 / (1 + (x / 0.2) ** 3) for x in dosage])
    assert (found.slope, found.lower, found.upper, found.midpoint_pct) == pytest.approx((3, 2, 10, 0.2), rel=1e-5)
    assert dosage_for(found, 50).low_pct == pytest.approx(0.2, rel=1e-4)


@pytest.mark.parametrize(
    ("dosage", "response", "words"),
    [
        ([0, 0, 0.1, 0.1, 0.2, 0.2], [9, 9.2, 5, 5.1, 2, 2.2], "at least 4 different dosages"),
        ([0, 0.1, 0.2, 0.3], [9, 7, 4, 3], "at least 5 cups"),
        ([0, 0.1, 0.2, 0.3, 0.5], [4, 4, 4, 4, 4], "All cups are equal"),
        (DOSAGE, [4.0, 5.0, 5.1, 3.9, 4.2, 5.2, 4.9, 4.1, 4.4, 4.8], "no more with dosage than they scatter"),
        (DOSAGE, [9.9, 10.1, 9.8, 10.0, 9.7, 9.6, 8.5, 8.7, 5.2, 5.0], "The midpoint, 1.5 %, lies outside"),
        (DOSAGE, [9.9, 10.1, 9.6, 9.8, 8.8, 9.0, 6.8, 7.0, 4.2, 4.3], "plateau at high dosage is not reached"),
        ([0.1, 0.1, 0.2, 0.2, 0.4, 0.4, 0.8, 0.8], [7.0, 7.2, 5.0, 5.1, 3.1, 3.2, 2.6, 2.5], "there is no blank"),
        (DOSAGE, [9.9, 10.1, 9.9, 10.1, 2.1, 2.0, 2.2, 2.1, 2.0, 2.2], "steepness is not determined"),
    ],
)
def test_when_not_to_believe_the_curve(dosage, response, words):
    found = fit(dosage, response)
    assert not found.believable
    assert words in found.reason


def test_a_curve_that_misses_the_means_is_not_believed():
    found = fit(DOSAGE, [9.9, 10.0, 7.0, 7.1, 8.0, 8.1, 3.1, 3.2, 2.2, 2.1])
    assert not found.believable
    assert "misses the dosage means" in found.reason
    assert lack_of_fit_of(found).p < 0.05


def test_no_curve_no_dosage():
    found = fit([0, 0.1, 0.2], [9, 7, 4])
    assert found.slope is None
    assert dosage_for(found, 50).estimate_pct is None
    assert dosage_for(found, 50).note == found.reason
    assert lack_of_fit_of(found).p is None


def test_a_doubtful_curve_says_so_with_each_dosage():
    found = fit(DOSAGE, [9.9, 10.1, 9.8, 10.0, 9.7, 9.6, 8.5, 8.7, 5.2, 5.0])
    answer = dosage_for(found, 90)
    assert "not to be believed" in answer.note
    assert "Outside the dosages tested" in answer.note


def test_a_bound_that_the_cups_do_not_give_is_none():
    found = fit(DOSAGE, [9.0, 11.0, 8.5, 10.8, 7.0, 9.4, 6.0, 8.8, 5.2, 7.9])
    answer = dosage_for(found, 90)
    assert answer.high_pct is None
    assert "open side" in answer.note


def test_wider_confidence_gives_a_wider_interval():
    found = fit(DOSAGE, FALLING)
    narrow, wide = dosage_for(found, 50, level=0.8), dosage_for(found, 50, level=0.99)
    assert wide.low_pct < narrow.low_pct < narrow.estimate_pct < narrow.high_pct < wide.high_pct


def test_without_repeats_lack_of_fit_is_not_judged():
    found = lack_of_fit([0, 1, 2, 3], [4, 3, 2, 2])
    assert (found.statistic, found.p) == (None, None)
    assert found.note


def test_repeats_without_scatter_are_not_judged():
    found = lack_of_fit([0, 0, 1, 1, 2, 2], [4, 4, 3, 3, 1, 1])
    assert (found.statistic, found.p) == (None, None)
    assert "no scatter" in found.note


def test_too_small_an_effect_stops_the_step_down():
    found = lowest_effective(BLANK, LADDER, side="less", worthwhile=1.0)
    assert found.dosage_pct == 0.2
    assert "below 1" in found.reason


def test_step_down_stops_at_the_first_that_is_not_shown():
    ladder = {0.1: [5.0, 5.2, 4.9, 5.1], 0.2: [9.9, 10.1, 10.4, 9.8], 0.3: [4.1, 4.6, 3.9, 4.4]}
    found = lowest_effective(BLANK, ladder, side="less")
    assert found.dosage_pct == 0.3
    assert "0.2 %" in found.reason


def test_nothing_works_when_the_highest_does_not():
    found = lowest_effective(BLANK, {0.1: [9.9, 10.2], 0.2: [10.1, 10.0]}, side="less")
    assert found.dosage_pct is None
    assert "not shown to differ" in found.reason


def test_the_wrong_way_is_no_effect():
    assert lowest_effective(BLANK, LADDER, side="greater").dosage_pct is None


def test_close_to_the_best_must_be_shown_where_a_margin_is_given():
    options = {"side": "less", "rule": "no worse than best"}
    ladder = LADDER | {0.5: [3.8, 4.2, 3.6, 4.1]}
    assert lowest_effective(BLANK, ladder, worthwhile=1.0, **options).dosage_pct == 0.3
    assert lowest_effective(BLANK, ladder, worthwhile=0.5, **options).dosage_pct == 0.5
    assert lowest_effective(BLANK, ladder, **options).dosage_pct == 0.3


def test_single_cups_meet_a_target_by_their_means_alone():
    found = lowest_effective([10.0], {0.1: [9.0], 0.3: [5.0]}, side="less", rule="target", target_change_pct=30)
    assert found.dosage_pct == 0.3
    assert "means alone" in found.reason
    assert lowest_effective([10.0], {0.1: [9.0], 0.3: [5.0]}, side="less").dosage_pct is None


def test_a_target_within_the_scatter_is_not_met():
    found = lowest_effective([5, 15, 9, 11], {0.1: [3, 9, 11, 4]}, side="less", rule="target", target_change_pct=30)
    assert found.dosage_pct is None
    assert "scatter" in found.reason


def test_onset_needs_the_harm_to_matter():
    haze = {0.1: [11.0, 11.2], 0.2: [13.0, 13.2], 0.3: [40.0, 40.2]}
    assert over_dosing_onset(haze, control=[10.0, 10.2], side="greater", worthwhile=10).dosage_pct == 0.3
    assert over_dosing_onset(haze, control=[10.0, 10.2], side="greater", worthwhile=2).dosage_pct == 0.2
    assert over_dosing_onset(haze, control=[10.0, 10.2], side="less", worthwhile=1).dosage_pct is None


def test_onset_against_the_lowest_dosage():
    haze = {0.1: [11, 12], 0.2: [13, 12], 0.5: [47, 50]}
    found = over_dosing_onset(haze, side="greater", worthwhile=10)
    assert found.dosage_pct == 0.5
    assert "against 0.1 %" in found.reason


def test_onset_that_the_cups_cannot_exclude_is_said():
    found = over_dosing_onset({0.1: [11, 30], 0.2: [13, 29]}, control=[10, 25], side="greater", worthwhile=5)
    assert (found.dosage_pct, found.clear_to_pct) == (None, None)
    assert "No dosage excludes" in found.reason


def test_single_cups_show_an_onset_by_their_means_alone():
    found = over_dosing_onset({0.1: [11], 0.5: [47]}, control=[10], side="greater", worthwhile=10)
    assert found.dosage_pct == 0.5
    assert "means alone" in found.reason


@pytest.mark.parametrize(
    ("lowest", "onset", "expected"),
    [
        (0.2, 0.8, (0.2, 0.5, 0.3)),
        (0.2, 0.5, (0.2, 0.3, 0.24)),
        (0.2, 0.3, (0.2, 0.2, 0.2)),
        (0.2, None, (0.2, 0.8, 0.5)),
        (0.3, 0.3, (None, None, None)),
        (0.5, 0.2, (None, None, None)),
        (None, 0.5, (None, None, None)),
    ],
)
def test_window(lowest, onset, expected):
    found = window(Lowest(lowest, "target", "why"), Onset(onset, "", None), tested_pct=[0.1, 0.2, 0.3, 0.5, 0.8])
    assert (found.from_pct, found.to_pct, found.working_pct) == expected
    assert found.reason


def test_the_highest_dosage_tested_is_no_limit_found():
    found = window(Lowest(0.1, "", ""), Onset(None, "", 0.2), tested_pct=[0.1, 0.2, 0.3])
    assert "not a limit found" in found.reason
    assert "up to 0.2 % only" in found.reason


@pytest.mark.parametrize(
    ("call", "words"),
    [
        (lambda: fit([0, -0.1], [1, 2]), r"dosage_pct\[1\].*-0.1"),
        (lambda: fit([0, 101], [1, 2]), r"dosage_pct\[1\].*101"),
        (lambda: fit([0, 1], [1, 2, 3]), "equally long"),
        (lambda: fit([0, 1], [1, math.inf]), r"response\[1\].*inf"),
        (lambda: dosage_for(fit(DOSAGE, FALLING), 100), "effect_pct.*100"),
        (lambda: lack_of_fit([0, 0, 1], [1, 2, 3]), "x needs at least 3 different values"),
        (lambda: lowest_effective(BLANK, {}, side="less"), "ladder"),
        (lambda: lowest_effective(BLANK, {0.0: [1.0]}, side="less"), "ladder.*above 0"),
        (lambda: lowest_effective(BLANK, LADDER, side="less", rule="best"), "rule.*'best'"),
        (lambda: lowest_effective(BLANK, LADDER, side="less", rule="target"), "target_change_pct"),
        (lambda: lowest_effective(BLANK, LADDER, side="less", worthwhile=0), "worthwhile.*0"),
        (
            lambda: lowest_effective([0.0, 0.0, -1.0], LADDER, side="less", rule="target", target_change_pct=30),
            "control must have a mean above 0",
        ),
        (lambda: over_dosing_onset({0.1: [1.0]}, side="greater", worthwhile=1), "ladder needs at least 2"),
        (lambda: over_dosing_onset(LADDER, side="two-sided", worthwhile=1), "side.*'two-sided'"),
        (lambda: window(Lowest(0.1, "", ""), Onset(None, "", None), tested_pct=[]), "tested_pct"),
    ],
)
def test_refusals_name_what_they_refuse(call, words):
    with pytest.raises(ValueError, match=words):
        call()
