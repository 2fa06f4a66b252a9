"""Agreement of readers, held to published tables and to the libraries that compute the same."""

import numpy as np
import pytest
from sklearn.metrics import cohen_kappa_score
from statsmodels.stats import inter_rater

from trials.science.agreement import fleiss_kappa, intraclass, krippendorff_alpha, weighted_kappa

# The table and SAS's results for it stand in the tests of statsmodels 0.15.0 (stats/tests/test_inter_rater.py).
SAS_TABLE = [[0, 4, 1], [0, 8, 0], [0, 1, 5]]
# "anxiety", raters 1 and 2, from the R package irr, as in the same tests.
ANXIETY = (
    [3, 3, 3, 4, 5, 5, 2, 3, 5, 2, 2, 6, 1, 5, 2, 2, 1, 2, 4, 3],
    [3, 6, 4, 6, 2, 4, 2, 4, 3, 3, 2, 3, 3, 3, 2, 2, 1, 3, 3, 4],
)
GAP = ([0, 1, 3, 5, 5], [0, 3, 3, 5, 1])
TEN = ([0, 1, 2, 3, 5, 5, 2, 1, 0, 3], [0, 1, 3, 3, 5, 4, 2, 2, 0, 3])
# Ten subjects, fourteen raters: the table of Wikipedia's article on Fleiss' kappa, as in statsmodels' tests.
FLEISS = [
    [0, 0, 0, 0, 14],
    [0, 2, 6, 4, 2],
    [0, 0, 3, 5, 6],
    [0, 3, 9, 2, 0],
    [2, 2, 8, 1, 1],
    [7, 7, 0, 0, 0],
    [3, 2, 6, 3, 0],
    [2, 5, 3, 2, 2],
    [6, 5, 2, 1, 0],
    [0, 2, 2, 3, 7],
]
# K. Krippendorff, "Computing Krippendorff's alpha-reliability" (2011), four observers and twelve units.
N = None
KRIPPENDORFF = [
    [1, 2, 3, 3, 2, 1, 4, 1, 2, N, N, N],
    [1, 2, 3, 3, 2, 2, 4, 1, 2, 5, N, N],
    [N, 3, 3, 3, 2, 3, 4, 2, 2, 5, 1, 3],
    [1, 2, 3, 3, 2, 4, 4, 1, 2, 5, 1, N],
]
# P. E. Shrout, J. L. Fleiss, Psychol. Bull. 86 (1979) 420, table 2: six targets, four judges.
SHROUT_FLEISS = [[9, 2, 5, 8], [6, 1, 3, 2], [8, 4, 6, 8], [7, 1, 2, 6], [10, 5, 6, 9], [6, 2, 4, 7]]


def pairs(table):
    cells = [(i, j) for i, row in enumerate(table) for j, count in enumerate(row) for _ in range(count)]
    return [i for i, _ in cells], [j for _, j in cells]


@pytest.mark.parametrize(
    ("weights", "value", "error", "low", "high"),
    [(None, 0.4842, 0.1380, 0.2137, 0.7547), ("linear", 0.4701, 0.1457, 0.1845, 0.7558)],
)
def test_kappa_of_the_sas_table(weights, value, error, low, high):
    found = weighted_kappa(*pairs(SAS_TABLE), grades=range(3), weights=weights)
    assert (found.value, found.standard_error) == pytest.approx((value, error), abs=1e-4)
    assert (found.low, found.high) == pytest.approx((low, high), abs=1e-4)


def test_quadratic_kappa_of_the_sas_table():
    # sklearn.metrics.cohen_kappa_score 1.9.1
    found = weighted_kappa(*pairs(SAS_TABLE), grades=range(3), weights="quadratic")
    assert found.value == pytest.approx(0.450161, abs=1e-6)


@pytest.mark.parametrize("weights", [None, "linear", "quadratic"])
@pytest.mark.parametrize(("a", "b", "grades"), [(*ANXIETY, range(1, 7)), (*TEN, range(6)), (*GAP, range(6))])
def test_kappa_and_its_error_against_two_libraries(a, b, grades, weights):
    found = weighted_kappa(a, b, grades=grades, weights=weights)
    assert found.value == pytest.approx(cohen_kappa_score(a, b, labels=list(grades), weights=weights))  # 1.9.1
    table = np.zeros((6, 6))
    for first, second in zip(a, b, strict=True):
        table[first - grades[0], second - grades[0]] += 1
    theirs = inter_rater.cohens_kappa(table, wt=weights)  # statsmodels 0.15.0
    assert found.standard_error == pytest.approx(theirs.std_kappa, rel=1e-9)


@pytest.mark.parametrize(("weights", "expected"), [(None, 0.119497), ("linear", 0.189189), ("quadratic", 0.296765)])
def test_kappa_of_anxiety_as_in_irr(weights, expected):
    assert weighted_kappa(*ANXIETY, grades=range(1, 7), weights=weights).value == pytest.approx(expected, abs=1e-6)


def test_an_unused_grade_keeps_its_place():
    # With observed grades only (the default of several tools) the gap closes and 0.516129 comes out.
    assert weighted_kappa(*GAP, grades=range(6), weights="linear").value == pytest.approx(0.444444, abs=1e-6)
    assert weighted_kappa(*GAP, grades=[0, 1, 3, 5], weights="linear").value == pytest.approx(0.516129, abs=1e-6)


@pytest.mark.parametrize(("weights", "expected"), [("quadratic", 0.944238), ("linear", 0.838710)])
def test_kappa_on_the_scale_from_0_to_5(weights, expected):
    # sklearn.metrics.cohen_kappa_score 1.9.1 with all six labels
    assert weighted_kappa(*TEN, grades=range(6), weights=weights).value == pytest.approx(expected, abs=1e-6)


def test_fleiss_kappa_of_fourteen_raters():
    found = fleiss_kappa(FLEISS)
    assert found == pytest.approx(0.209931, abs=1e-6)  # printed 0.210
    assert found == pytest.approx(inter_rater.fleiss_kappa(np.array(FLEISS), method="fleiss"))


@pytest.mark.parametrize(
    ("scale", "published", "digits"),
    [
        ("nominal", 0.743, 0.743421),
        ("ordinal", 0.815, 0.815388),
        ("interval", 0.849, 0.849107),
        ("ratio", 0.797, 0.797403),
    ],
)
def test_krippendorffs_own_example(scale, published, digits):
    # Three digits as published (from memory), six by the krippendorff library 0.9.0, whose call this guards.
    found = krippendorff_alpha(KRIPPENDORFF, scale=scale)
    assert found == pytest.approx(published, abs=5e-4)
    assert found == pytest.approx(digits, abs=1e-6)


def test_krippendorff_with_two_readers_by_hand():
    # Eight values, five 1 and three 2; one unit of four disagrees: D_o = 2/8, D_e = 2 · 5 · 3 / (8 · 7).
    assert krippendorff_alpha([[1, 1, 2, 2], [1, 1, 2, 1]]) == pytest.approx(1 - (2 / 8) / (30 / 56))


def test_intraclass_correlations_of_shrout_and_fleiss():
    found = intraclass(SHROUT_FLEISS)
    six = (found.icc_1_1, found.icc_2_1, found.icc_3_1, found.icc_1_k, found.icc_2_k, found.icc_3_k)
    # Five digits by pingouin 0.7.0 (intraclass_corr); the paper prints two (from memory).
    assert six == pytest.approx((0.16574, 0.28976, 0.71484, 0.44280, 0.62005, 0.90932), abs=6e-6)
    assert [round(value, 2) for value in six] == [0.17, 0.29, 0.71, 0.44, 0.62, 0.91]
