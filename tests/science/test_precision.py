import pytest

from trials.science.precision import cochran, grubbs, precision


def test_a_common_offset_changes_the_mean_only():
    groups = [[0.71, 0.70], [0.69, 0.67, 0.68], [0.66]]
    one, other = precision(groups), precision([[1000 + value for value in group] for group in groups])
    assert other.mean == pytest.approx(one.mean + 1000)
    assert (other.s_r, other.s_L, other.s_R) == pytest.approx((one.s_r, one.s_L, one.s_R), rel=1e-8)


def test_repeats_without_spread():
    found = precision([[1, 1], [2, 2]])
    assert (found.s_r, found.r) == (0.0, 0.0)
    assert found.s_R == found.s_L > 0


def test_grubbs_of_equal_values_is_not_judged():
    found = grubbs([0.1, 0.1, 0.1])
    assert (found.index, found.statistic) == (None, None)
    assert found.note


def test_cochran_leaves_single_values_out_and_keeps_their_place():
    found = cochran([[5.0], [1.0, 2.0], [1.0, 5.0]])
    assert found.index == 2
    assert found.statistic == pytest.approx(8 / 8.5)


def test_cochran_with_unequal_groups_says_which_limits():
    assert "2 values each" in cochran([[1, 2], [1, 3], [1, 4, 5]]).note


def test_cochran_without_spread_is_not_judged():
    assert cochran([[1, 1], [2, 2]]).statistic is None


@pytest.mark.parametrize(
    ("call", "words"),
    [
        (lambda: precision([[1, 2]]), "groups needs at least 2"),
        (lambda: precision([[1], [2]]), r"groups.*repeated.*\[1, 1\]"),
        (lambda: precision([[1, 2], []]), r"groups\[1\]"),
        (lambda: grubbs([1, 2]), "values needs at least 3"),
        (lambda: cochran([[1, 2], [3]]), "groups.*got 1"),
    ],
)
def test_refusals_name_what_they_refuse(call, words):
    with pytest.raises(ValueError, match=words):
        call()
