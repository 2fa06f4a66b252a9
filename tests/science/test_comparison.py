import math

import pytest

from trials.science import exact_ranks
from trials.science.comparison import (
    against_control,
    ordinal_against_control,
    pairwise,
    trend,
    upper_bound_per_dm2,
)


def test_same_cups_always_give_the_same_p():
    first, second = (against_control([1, 2, 4], [[3, 5], [2, 7, 6], [9]]) for _ in range(2))
    assert first == second


def test_a_group_of_one_borrows_the_spread_and_says_so():
    found, other = against_control([9.8, 10.4, 9.5], [[7.0], [4.1, 4.6]])
    assert found.n == 1
    assert found.df == 3
    assert 0 < found.p < 0.1
    assert "One cup only" in found.note
    assert other.note == ""


def test_a_control_of_one_says_so():
    (found,) = against_control([9.8], [[7.0, 6.4, 7.3]])
    assert "One control cup only" in found.note
    assert found.low < found.estimate < found.high


def test_without_a_second_cup_nothing_is_judged():
    (found,) = against_control([9.8], [[7.0]])
    assert (found.estimate, found.low, found.high, found.p, found.statistic) == (
        pytest.approx(-2.8),
        None,
        None,
        None,
        None,
    )
    assert "second cup" in found.note


@pytest.mark.parametrize("cup", [0.0, 0.1, 3.0])
def test_without_spread_nothing_is_judged(cup):
    # Three times 0.1 has a mean that differs from 0.1 in the last digit: rounding is no spread.
    (found,) = against_control([cup] * 3, [[cup + 1] * 3])
    assert (found.p, found.low, found.high) == (None, None, None)
    assert "no spread" in found.note


def test_one_sided_intervals_are_open_on_the_other_side():
    (less,) = against_control([9, 10, 11], [[7, 8, 8]], side="less")
    (greater,) = against_control([9, 10, 11], [[7, 8, 8]], side="greater")
    assert less.low is None
    assert greater.high is None
    assert "no lower bound" in less.note
    assert less.p + greater.p == pytest.approx(1.0)


def test_interval_and_p_agree_at_the_limit():
    # The bound touches 0 exactly where p is 1 − level.
    found = against_control([9.8, 10.4, 9.5, 10.7], [[8.9, 9.6, 9.1, 9.9], [9.5, 9.9, 9.2, 10.0]])[0]
    at_limit = against_control(
        [9.8, 10.4, 9.5, 10.7], [[8.9, 9.6, 9.1, 9.9], [9.5, 9.9, 9.2, 10.0]], level=1 - found.p
    )[0]
    assert at_limit.high == pytest.approx(0.0, abs=1e-6)


def test_order_of_treatments_does_not_matter():
    groups = [[8.9, 9.6], [7.0, 6.4, 7.3], [4.1]]
    forward = against_control([9.8, 10.4, 9.5], groups)
    backward = against_control([9.8, 10.4, 9.5], groups[::-1])
    assert [one.p for one in forward] == pytest.approx([one.p for one in backward[::-1]], rel=1e-9)


@pytest.mark.parametrize(
    ("call", "words"),
    [
        (lambda: against_control([], [[1.0]]), "control"),
        (lambda: against_control([1.0, 2.0], []), "treatments"),
        (lambda: against_control([1.0, 2.0], [[]]), r"treatments\[0\]"),
        (lambda: against_control([1.0, 2.0], [[math.nan]]), r"treatments\[0\]\[0\].*nan"),
        (lambda: against_control([1.0, 2.0], [[3.0]], side="down"), "side.*'down'"),
        (lambda: against_control([1.0, 2.0], [[3.0]], level=95), "level.*95"),
        (lambda: against_control([1.0, 1e200], [[3.0]]), r"control.*1e\+200"),
        (lambda: ordinal_against_control([1, 2], [[3]], side="less", steps=[0, 5]), r"control\[0\].*got 1"),
        (lambda: ordinal_against_control([1, 2], [[6]], side="less", steps=range(6)), r"treatments\[0\]\[0\].*6"),
        (lambda: ordinal_against_control([1] * 60, [[1] * 60], side="less", steps=range(6)), "120"),
        (lambda: trend([[1.0, 2.0]], side="less"), "groups"),
        (lambda: trend([[1.0], [2.0]], side="up"), "side.*'up'"),
        (lambda: pairwise([[1.0, 2.0]]), "groups"),
        (lambda: upper_bound_per_dm2(-1, 1.0), "count.*-1"),
        (lambda: upper_bound_per_dm2(0.5, 1.0), "count.*0.5"),
        (lambda: upper_bound_per_dm2(0, 0.0), "area_dm2.*0"),
    ],
)
def test_refusals_name_what_they_refuse(call, words):
    with pytest.raises(ValueError, match=words):
        call()


def test_medians_between_steps_are_taken():
    (found,) = ordinal_against_control([4.5, 5, 3.5], [[1, 1.5]], side="less", steps=range(6))
    assert found.p == pytest.approx(0.1)
    assert found.shift == pytest.approx(-3.25)


def test_enough_cups_need_no_warning():
    (found,) = ordinal_against_control([4, 5, 5, 3], [[1, 2, 1, 0]], side="less", steps=range(6))
    assert found.note == ""
    assert found.smallest_p == pytest.approx(1 / 70)


def test_many_candidates_raise_the_smallest_adjusted_p():
    found = ordinal_against_control([4, 5, 5, 3], [[1, 2, 1, 0]] * 4, side="less", steps=range(6))
    assert "below 0.057 after adjustment" in found[0].note


def test_equal_grades_show_nothing():
    (found,) = ordinal_against_control([0, 0, 0], [[0, 0]], side="two-sided", steps=range(6))
    assert (found.p, found.superiority, found.shift) == (1.0, 0.5, 0.0)


def test_trend_of_equal_values_has_no_z():
    found = trend([[1, 1], [1, 1]], side="greater")
    assert (found.p_exact, found.z, found.p_normal) == (1.0, None, None)
    assert "equal" in found.note


def test_trend_falls_as_it_rises():
    groups = [[1, 2, 2], [2, 3], [3, 5, 4]]
    rising, falling = trend(groups, side="greater"), trend(groups[::-1], side="less")
    assert rising.p_exact == pytest.approx(falling.p_exact)
    assert rising.z == pytest.approx(-falling.z)


def test_trend_too_large_to_count_says_so():
    found = trend([[i % 3 for i in range(9)] for _ in range(6)], side="two-sided")
    assert found.p_exact is None
    assert found.p_normal is not None
    assert "normal approximation" in found.note


@pytest.mark.parametrize("values", [[0, 1, 1, 2, 2, 2, 3], [5, 5, 5, 5, 5, 5, 4], [1, 2, 3, 4, 5, 6, 7]])
def test_trend_is_counted_over_all_arrangements(values):
    # All ways to give seven values to groups of 2, 3 and 2, one by one.
    import itertools
    from collections import Counter

    ways = Counter()
    for labels in set(itertools.permutations([0, 0, 1, 1, 1, 2, 2])):
        pairs = itertools.product(zip(labels, values, strict=True), repeat=2)
        ways[sum(2 * (x < y) + (x == y) for (i, x), (j, y) in pairs if i < j)] += 1
    import numpy as np

    groups = [np.array(part, dtype=float) for part in (values[:2], values[2:5], values[5:])]
    chances = exact_ranks.jonckheere_chances(groups)
    assert chances.sum() == pytest.approx(1.0)
    assert {i: chances[i] for i in np.flatnonzero(chances)} == pytest.approx(
        {doubled: count / 210 for doubled, count in ways.items()}
    )


def test_tukey_takes_a_group_of_one():
    found = pairwise([[9.8, 10.4, 9.5], [7.0]])
    assert 0 < found[0].p < 0.05


def test_tukey_without_spread_judges_nothing():
    (found,) = pairwise([[1, 1], [2, 2]])
    assert (found.estimate, found.low, found.high, found.p) == (-1.0, None, None, None)
    assert found.note
