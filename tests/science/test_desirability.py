import pytest

from trials.science import desirability as d


@pytest.mark.parametrize(
    ("call", "message"),
    [
        (lambda: d.larger(1.0, 2.0, 2.0), r"target must lie above low \(2.0\); got 2.0"),
        (lambda: d.larger(1.0, 0.0, 2.0, weight=0.0), "weight must be above 0; got 0.0"),
        (lambda: d.smaller(1.0, 3.0, 2.0), r"high must lie above target \(3.0\); got 2.0"),
        (lambda: d.target(1.0, 0.0, 3.0, 2.0), r"high must lie above target \(3.0\); got 2.0"),
        (lambda: d.target(1.0, 0.0, 1.0, 2.0, high_weight=-1.0), "high_weight .*got -1.0"),
        (lambda: d.larger(float("nan"), 0.0, 1.0), "y must be a number; got nan"),
        (lambda: d.overall([]), "parts needs at least 1"),
        (lambda: d.overall([1.1]), r"parts\[0\] must be between 0 and 1; got 1.1"),
        (lambda: d.overall([1.0], weights=[1.0, 1.0]), "parts has 1, weights has 2"),
        (lambda: d.overall([1.0], weights=[0.0]), r"weights must add up .*\[0.0\]"),
        (lambda: d.overall([1.0, 1.0], weights=[2.0, -1.0]), r"weights\[1\] .*got -1.0"),
    ],
)
def test_refusals(call, message):
    with pytest.raises(ValueError, match=message):
        call()


def test_ends_and_beyond():
    assert [d.larger(y, 1.0, 2.0) for y in (0.0, 1.0, 2.0, 3.0)] == [0.0, 0.0, 1.0, 1.0]
    assert [d.smaller(y, 1.0, 2.0) for y in (0.0, 1.0, 2.0, 3.0)] == [1.0, 1.0, 0.0, 0.0]
    assert [d.target(y, 1.0, 2.0, 4.0) for y in (0.0, 1.0, 2.0, 3.0, 4.0, 5.0)] == [0.0, 0.0, 1.0, 0.5, 0.0, 0.0]


def test_each_side_has_its_weight():
    assert d.target(1.5, 1.0, 2.0, 3.0, low_weight=2.0) == 0.25
    assert d.target(2.5, 1.0, 2.0, 3.0, low_weight=2.0) == 0.5
    assert d.target(2.5, 1.0, 2.0, 3.0, high_weight=2.0) == 0.25


def test_one_unacceptable_property_is_enough():
    assert d.overall([1.0, 1.0, 0.0]) == 0.0


def test_a_property_of_no_weight_does_not_count():
    assert d.overall([0.5, 0.0], weights=[1.0, 0.0]) == pytest.approx(0.5)


def test_all_as_good_as_asked_for():
    assert d.overall([1.0, 1.0, 1.0]) == 1.0
