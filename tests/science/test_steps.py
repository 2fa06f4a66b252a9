import pytest

from trials.science.steps import describe


def test_unused_steps_are_counted_as_unused():
    found = describe([0, 2, 2, 2.5], steps=range(4))
    assert found.counts == ((0.0, 1), (1.0, 0), (2.0, 2), (3.0, 0))
    assert found.between == 1
    assert found.median == 2.0


def test_the_mean_comes_with_its_assumption():
    assert "equally far apart" in describe([1, 4], steps=range(6)).note


def test_no_rating_has_no_median():
    found = describe([None, None], steps=range(6))
    assert (found.n, found.missing, found.median, found.mean) == (0, 2, None, None)
    assert found.note


@pytest.mark.parametrize(
    ("call", "words"),
    [
        (lambda: describe([0.7], steps=range(6)), "grades.*0.7"),
        (lambda: describe([6], steps=range(6)), "grades.*6"),
        (lambda: describe([1], steps=[1]), "steps"),
    ],
)
def test_refusals_name_what_they_refuse(call, words):
    with pytest.raises(ValueError, match=words):
        call()
