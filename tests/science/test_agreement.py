import math

import pytest

from trials.science.agreement import fleiss_kappa, intraclass, krippendorff_alpha, weighted_kappa


def test_missing_ratings_drop_the_pair():
    found = weighted_kappa([0, 1, None, 3], [0, 2, 4, None], grades=range(6))
    assert found.n == 2
    assert found.value == weighted_kappa([0, 1], [0, 2], grades=range(6)).value


def test_no_common_panel_has_no_kappa():
    found = weighted_kappa([None, 1], [0, None], grades=range(6))
    assert (found.value, found.n) == (None, 0)
    assert found.note


def test_one_grade_throughout_has_no_kappa():
    # Both readers saw no bubble anywhere: agreement, but nothing that chance would not give as well.
    found = weighted_kappa([0, 0, 0], [0, 0, 0], grades=range(6))
    assert (found.value, found.low, found.high) == (None, None, None)
    assert "one and the same grade" in found.note


def test_complete_agreement_says_that_its_error_is_empty():
    found = weighted_kappa([0, 1, 2], [0, 1, 2], grades=range(6))
    assert found.value == pytest.approx(1.0)
    assert "says nothing" in found.note


def test_grades_may_be_words():
    found = weighted_kappa(["none", "few"], ["few", "few"], grades=["none", "few", "many"], weights=None)
    assert found.value == pytest.approx(0.0)


@pytest.mark.parametrize(
    ("ratings", "scale"),
    [
        ([[0, 0, 0], [0, 0, 0]], "ordinal"),
        # The one odd rating stands alone on its panel: nothing to compare it with.
        ([[0, 0, 3], [0, 0, None]], "ordinal"),
        ([[1, None], [None, 2]], "nominal"),
    ],
)
def test_alpha_is_none_where_nothing_can_disagree(ratings, scale):
    assert krippendorff_alpha(ratings, scale=scale) is None


def test_alpha_of_intervals_knows_no_unit():
    ratings = [[1.0, 2.5, 3.0, None], [1.5, 2.0, 3.5, 4.0], [1.0, 2.0, None, 4.5]]
    other = [[None if value is None else 1e90 * value - 5e89 for value in row] for row in ratings]
    assert krippendorff_alpha(other, scale="interval") == pytest.approx(krippendorff_alpha(ratings, scale="interval"))


def test_one_class_only_has_no_fleiss_kappa():
    assert fleiss_kappa([[3, 0], [3, 0]]) is None


def test_intraclass_of_equal_ratings_is_undefined():
    found = intraclass([[2.0, 2.0], [2.0, 2.0]])
    assert (found.icc_1_1, found.icc_3_k) == (None, None)
    assert found.note


def test_readers_with_a_constant_offset_agree_in_form_3_only():
    # By hand: reader 2 is always 1 higher; nothing is left after panels and readers.
    found = intraclass([[1, 2], [2, 3], [4, 5]])
    assert found.icc_3_1 == pytest.approx(1.0)
    assert found.icc_2_1 < 1.0


@pytest.mark.parametrize(
    ("call", "words"),
    [
        (lambda: weighted_kappa([0], [0, 1], grades=range(6)), "equally long"),
        (lambda: weighted_kappa([0, 7], [0, 1], grades=range(6)), r"a\[1\].*got 7"),
        (lambda: weighted_kappa([0], [0], grades=[0]), "grades"),
        (lambda: weighted_kappa([0], [0], grades=[0, 1, 1]), r"grades.*\[0, 1, 1\]"),
        (lambda: weighted_kappa([0], [0], grades=range(6), weights="cubic"), "weights.*'cubic'"),
        (lambda: krippendorff_alpha([[1, 2]]), "ratings"),
        (lambda: krippendorff_alpha([[1, 2], [1]]), r"ratings.*\[2, 1\]"),
        (lambda: krippendorff_alpha([[1, math.nan], [1, 2]]), r"ratings\[0\]\[1\].*nan"),
        (lambda: krippendorff_alpha([[1, -2], [1, 2]], scale="ratio"), "ratings.*-2"),
        (lambda: krippendorff_alpha([[1, 2], [1, 2]], scale="grades"), "scale.*'grades'"),
        (lambda: fleiss_kappa([[3, 0], [2, 0]]), r"table.*\[3.0, 2.0\]"),
        (lambda: fleiss_kappa([[1, 0], [0, 1]]), "table"),
        (lambda: fleiss_kappa([[1.5, 0.5]]), "table.*1.5"),
        (lambda: intraclass([[1, 2, 3, 4]]), r"ratings.*\(1, 4\)"),
        (lambda: intraclass([[1, 2], [3, None]]), r"ratings\[1, 1\]"),
    ],
)
def test_refusals_name_what_they_refuse(call, words):
    with pytest.raises(ValueError, match=words):
        call()
