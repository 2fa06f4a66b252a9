import pytest

from trials.science.evidence import pool


def test_one_series_is_not_pooled():
    found = pool([-3.0], [0.4])
    assert (found.estimate, found.k) == (-3.0, 1)
    assert (found.low, found.prediction_low, found.tau2, found.q) == (None, None, None, None)
    assert "nothing to pool" in found.note


def test_two_series_predict_no_third():
    found = pool([-3.0, -2.0], [0.4, 0.3])
    assert found.low < found.estimate < found.high
    assert (found.prediction_low, found.prediction_high) == (None, None)
    assert "no prediction" in found.note


def test_series_that_agree_show_no_variance_between_them():
    found = pool([-3.0, -3.1, -2.9], [0.4, 0.3, 0.5])
    assert (found.tau2, found.i2) == (0.0, 0.0)
    assert "may be there all the same" in found.note


def test_prediction_is_wider_than_the_interval_of_the_mean():
    found = pool([-3.2, -2.1, -4.0, -1.0], [0.2, 0.3, 0.2, 0.2])
    assert found.prediction_low < found.low < found.high < found.prediction_high


def test_order_and_a_common_offset_do_not_matter():
    one = pool([-3.2, -2.1, -4.0], [0.4, 0.3, 0.5])
    other = pool([96.0, 97.9, 96.8], [0.5, 0.3, 0.4])
    assert other.estimate - 100 == pytest.approx(one.estimate)
    assert (other.tau2, other.q) == pytest.approx((one.tau2, one.q))


@pytest.mark.parametrize(
    ("call", "words"),
    [
        (lambda: pool([], []), "effects"),
        (lambda: pool([1.0], [1.0, 2.0]), "equally long"),
        (lambda: pool([1.0, 2.0], [1.0, 0.0]), r"variances\[1\].*0"),
        (lambda: pool([1.0, 2.0], [1.0, 1.0], level=1.0), "level.*1"),
    ],
)
def test_refusals_name_what_they_refuse(call, words):
    with pytest.raises(ValueError, match=words):
        call()
