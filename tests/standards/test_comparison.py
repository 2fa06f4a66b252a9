"""Treated cups against the control, held to published data, reference libraries and numerical integration."""

import numpy as np
import pytest
from scipy import integrate, special, stats
from statsmodels.stats.multitest import multipletests

from trials.science.comparison import (
    against_control,
    ordinal_against_control,
    pairwise,
    trend,
    upper_bound_per_dm2,
)
from trials.science.many_to_one import critical_value, exceedance

# Blood counts of C. W. Dunnett, J. Am. Stat. Assoc. 50 (1955) 1096; the data as in SciPy's tutorial
# "Dunnett's test" (docs.scipy.org).
BLOOD_CONTROL = [7.40, 8.50, 7.20, 8.24, 9.84, 8.32]
BLOOD_TREATED = [[9.76, 8.80, 7.68, 9.36], [12.80, 9.68, 12.16, 9.20, 10.55]]

# Invented air contents, vol %, of a dosage ladder 0 / 0.1 / 0.2 / 0.3 / 0.5 %; the figures beside are SciPy 1.17.1
# (ttest and tukey_hsd) and the exact integral below.
AIR_BLANK = [9.8, 10.4, 9.5, 10.7]
AIR_TREATED = [[8.9, 9.6, 9.1, 9.9], [7.0, 6.4, 7.3, 6.8], [4.1, 4.6, 3.9, 4.4], [3.8, 4.2, 3.6, 4.1]]

# SciPy's documentation of tukey_hsd; it states that SAS gives the same.
SAS_GROUPS = [
    [24.5, 23.5, 26.4, 27.1, 29.9],
    [28.4, 34.2, 29.5, 32.2, 30.1],
    [26.1, 28.3, 24.3, 26.2, 27.8],
]

# M. Hollander, D. A. Wolfe, Nonparametric Statistical Methods, example 6.2 (data from memory).
HOLLANDER_WOLFE = [[40, 35, 38, 43, 44, 41], [38, 40, 47, 44, 40, 42], [48, 40, 45, 43, 46, 44]]
# L. Sachs, Angewandte Statistik (1997), p. 402.
SACHS = [[106, 114, 116, 127, 145], [110, 125, 143, 148, 151], [136, 139, 149, 160, 174]]


def dunnett_integral(critical, loadings, df, *, two_sided):
    """Dunnett's double integral by nested adaptive quadrature (SciPy's QUADPACK), slow and independent."""
    loadings = np.asarray(loadings)
    residual = np.sqrt(1 - loadings**2)

    def given_control(u, s):
        inside = special.ndtr((critical * s - loadings * u) / residual)
        if two_sided:
            inside = inside - special.ndtr((-critical * s - loadings * u) / residual)
        return np.prod(inside) * np.exp(-u * u / 2) / np.sqrt(2 * np.pi)

    def given_spread(s):
        inner = integrate.quad(given_control, -9, 9, args=(s,), epsabs=1e-10, limit=400, points=[0.0])[0]
        return inner * spread.pdf(s)

    spread = stats.chi(df, scale=1 / np.sqrt(df))
    return 1 - integrate.quad(given_spread, spread.ppf(1e-13), spread.isf(1e-13), epsabs=1e-9, limit=400)[0]


@pytest.mark.parametrize(
    ("side", "expected"),
    # The exact double integral; scipy.stats.dunnett scatters around these in the fourth digit.
    [("two-sided", (0.620102, 0.005825)), ("greater", (0.324978, 0.002914))],
)
def test_dunnett_blood_counts_p(side, expected):
    found = against_control(BLOOD_CONTROL, BLOOD_TREATED, side=side)
    assert [one.p for one in found] == pytest.approx(expected, abs=1e-5)


def test_dunnett_blood_counts_statistics_and_simultaneous_intervals():
    a, b = against_control(BLOOD_CONTROL, BLOOD_TREATED)
    # Plain arithmetic: pooled s 1.174957 with 12 degrees of freedom.
    assert (a.statistic, b.statistic) == pytest.approx((0.857032, 3.693752), abs=1e-6)
    assert (a.df, a.n, b.n, a.n_control) == (12, 4, 5, 6)
    # Critical |t| 2.51348 by the exact integral: 0.65 ± 1.906 and 2.628 ± 1.788.
    assert (a.low, a.high) == pytest.approx((0.65 - 1.906, 0.65 + 1.906), abs=1e-3)
    assert (b.low, b.high) == pytest.approx((2.628 - 1.788, 2.628 + 1.788), abs=1e-3)
    loadings = [np.sqrt(n / (n + 6)) for n in (4, 5)]
    assert critical_value(0.95, loadings, 12, two_sided=True) == pytest.approx(2.51348, abs=1e-5)


@pytest.mark.parametrize("side", ["two-sided", "less", "greater"])
def test_dunnett_against_scipy_within_its_own_scatter(side):
    theirs = stats.dunnett(
        *map(np.asarray, BLOOD_TREATED),
        control=np.asarray(BLOOD_CONTROL),
        alternative=side,
        rng=np.random.default_rng(12345),
    )
    ours = against_control(BLOOD_CONTROL, BLOOD_TREATED, side=side)
    assert [one.statistic for one in ours] == pytest.approx(theirs.statistic)
    # scipy 1.17.1 draws quasi-random points: its p moves by some 1e-4 with the seed.
    assert [one.p for one in ours] == pytest.approx(theirs.pvalue, abs=5e-4)
    interval = theirs.confidence_interval(0.95)
    if side != "less":
        assert [one.low for one in ours] == pytest.approx(interval.low, abs=0.01)
    if side != "greater":
        assert [one.high for one in ours] == pytest.approx(interval.high, abs=0.01)


@pytest.mark.parametrize(
    ("arms", "df", "two_sided", "expected", "printed"),
    [
        (3, 16, True, 2.5923, None),
        (3, 16, False, 2.2271, 2.23),
        (4, 20, True, 2.6510, None),
        (4, 20, False, 2.3044, 2.30),
        (2, 20, False, 2.0273, 2.03),
        (2, 10, False, 2.1506, 2.15),
    ],
)
def test_dunnett_critical_values(arms, df, two_sided, expected, printed):
    # Four digits by the exact integral; the printed ones are Dunnett's one-sided 5 % table (1955, as reprinted).
    found = critical_value(0.95, [np.sqrt(0.5)] * arms, df, two_sided=two_sided)
    assert found == pytest.approx(expected, abs=1e-4)
    if printed is not None:
        assert round(found, 2) == printed


@pytest.mark.parametrize(
    ("critical", "n_control", "sizes", "df", "two_sided"),
    [
        (2.5, 1, [12] * 6, 30, True),
        (2.5, 1, [40, 3, 9, 40, 20], 60, True),
        (2.2, 30, [3] * 12, 60, True),
        (12.0, 2, [1, 2], 1, True),
        (-0.7, 2, [1, 2, 3], 1, False),
        (1.0, 3, [3, 4], 2, False),
    ],
)
def test_dunnett_quadrature_against_nested_integration(critical, n_control, sizes, df, two_sided):
    loadings = [np.sqrt(n / (n + n_control)) for n in sizes]
    expected = dunnett_integral(critical, loadings, df, two_sided=two_sided)
    assert exceedance(critical, loadings, df, two_sided=two_sided) == pytest.approx(expected, abs=1e-7)


@pytest.mark.parametrize("side", ["two-sided", "less", "greater"])
def test_one_treatment_is_students_t(side):
    (ours,) = against_control(BLOOD_CONTROL, BLOOD_TREATED[:1], side=side)
    theirs = stats.ttest_ind(BLOOD_TREATED[0], BLOOD_CONTROL, alternative=side)  # scipy 1.17.1
    interval = theirs.confidence_interval(0.95)
    assert (ours.statistic, ours.p, ours.df) == pytest.approx((theirs.statistic, theirs.pvalue, theirs.df))
    if ours.low is not None:
        assert ours.low == pytest.approx(interval.low)
    if ours.high is not None:
        assert ours.high == pytest.approx(interval.high)


def test_air_ladder_against_the_blank():
    found = against_control(AIR_BLANK, AIR_TREATED, side="less")
    assert [one.statistic for one in found] == pytest.approx([-2.52540, -11.23368, -20.37738, -21.50946], abs=1e-5)
    assert found[0].df == 15
    # Whether 0.1 % works hangs on the side declared beforehand.
    assert found[0].p == pytest.approx(0.036625, abs=1e-5)
    assert all(one.p < 1e-6 for one in found[1:])
    assert against_control(AIR_BLANK, AIR_TREATED)[0].p == pytest.approx(0.073148, abs=1e-5)
    reductions = [-100 * one.estimate / 10.10 for one in found]
    assert reductions == pytest.approx([7.18, 31.93, 57.92, 61.14], abs=0.005)


def test_tukey_sas_example():
    first, second, third = pairwise(SAS_GROUPS)
    assert [(one.i, one.j) for one in (first, second, third)] == [(0, 1), (0, 2), (1, 2)]
    assert (first.estimate, first.low, first.high) == pytest.approx((-4.600, -8.249, -0.951), abs=5e-4)
    assert second.estimate == pytest.approx(-0.260)
    assert (third.estimate, third.low, third.high) == pytest.approx((4.340, 0.691, 7.989), abs=5e-4)
    assert (first.p, second.p, third.p) == pytest.approx((0.014448, 0.98031, 0.020331), rel=1e-4)


@pytest.mark.parametrize(
    ("sizes", "df", "quantile"), [((5, 5, 5), 12, 3.77293), ((4, 4, 5), 10, 3.87678), ((6, 6, 6, 6), 20, 3.95829)]
)
def test_tukey_reaches_as_far_as_the_studentized_range(sizes, df, quantile):
    # scipy.stats.studentized_range.ppf(0.95, groups, df) 1.17.1; printed tables give 3.77, 3.88 and 3.96.
    groups = [np.arange(size) * 1.0 for size in sizes]
    pooled = np.sqrt(sum(np.sum((group - group.mean()) ** 2) for group in groups) / df)
    first = pairwise(groups)[0]
    error = pooled * np.sqrt((1 / sizes[0] + 1 / sizes[1]) / 2)
    assert (first.high - first.estimate) / error == pytest.approx(quantile, abs=1e-5)


def test_tukey_unequal_groups_against_scipy():
    groups = [SAS_GROUPS[0][:3], SAS_GROUPS[1], SAS_GROUPS[2][:4]]
    theirs = stats.tukey_hsd(*groups)  # scipy 1.17.1, Tukey-Kramer
    interval = theirs.confidence_interval(0.95)
    for one in pairwise(groups):
        assert one.p == pytest.approx(theirs.pvalue[one.i, one.j], rel=1e-6)
        assert one.low == pytest.approx(interval.low[one.i, one.j], rel=1e-6)
        assert one.high == pytest.approx(interval.high[one.i, one.j], rel=1e-6)


def test_tukey_sees_no_gain_above_the_third_dosage():
    pairs = {(one.i, one.j): one for one in pairwise([AIR_BLANK, *AIR_TREATED])}
    assert pairs[3, 4].p == pytest.approx(0.78758, rel=1e-4)  # scipy.stats.tukey_hsd 1.17.1


def test_trend_hollander_wolfe():
    found = trend(HOLLANDER_WOLFE, side="greater")
    assert found.statistic == 79
    # Variance 153 as if there were no ties, 150.2868 with them.
    assert found.z_uncorrected == pytest.approx((79 - 54) / np.sqrt(153), rel=1e-9)
    assert found.z_uncorrected == pytest.approx(2.02113, abs=1e-5)
    assert found.z == pytest.approx(2.03929, abs=1e-5)
    assert found.p_normal == pytest.approx(0.020710, abs=1e-6)


def test_trend_sachs():
    found = trend(SACHS, side="greater")
    assert found.statistic == 59
    assert found.z == found.z_uncorrected == pytest.approx(2.271563, abs=1e-6)
    assert found.p_normal == pytest.approx(0.0115564, abs=1e-7)
    # Counted over all 756756 arrangements; a public package that says 0.0035 is wrong.
    assert found.p_exact == pytest.approx(0.0119642, abs=1e-7)


def test_trend_perfect_order_of_three_threes():
    found = trend([[1, 2, 3], [4, 5, 6], [7, 8, 9]], side="greater")
    assert (found.statistic, found.z) == (27, pytest.approx(3.0))
    assert found.p_exact == pytest.approx(1 / 1680)  # 9! / (3! 3! 3!) arrangements


@pytest.mark.parametrize("groups", [HOLLANDER_WOLFE, SACHS, [AIR_BLANK, *AIR_TREATED]])
def test_trend_two_sided_normal_p_against_kendall(groups):
    order = np.repeat(np.arange(len(groups)), [len(group) for group in groups])
    theirs = stats.kendalltau(order, np.concatenate(groups), method="asymptotic")  # scipy 1.17.1
    assert trend(groups, side="two-sided").p_normal == pytest.approx(theirs.pvalue, rel=1e-9)


def test_trend_known_two_sided_normal_p():
    assert trend(SACHS, side="two-sided").p_normal == pytest.approx(0.0231129, abs=1e-7)
    # Kendall's trend over the dosage ladder, scipy.stats.kendalltau 1.17.1.
    assert trend([AIR_BLANK, *AIR_TREATED], side="two-sided").p_normal == pytest.approx(1.038e-6, rel=1e-3)


@pytest.mark.parametrize("side", ["two-sided", "less", "greater"])
@pytest.mark.parametrize(
    ("control", "treated"),
    [([4, 5, 5, 3], [1, 2, 4]), ([3, 3, 4], [3, 5, 5, 4]), ([0, 0, 1, 2], [0, 1, 1, 1])],
)
def test_grades_with_ties_against_scipys_exact_permutation(side, control, treated):
    def u_statistic(x, y):
        return stats.mannwhitneyu(x, y).statistic

    theirs = stats.permutation_test(  # scipy 1.17.1: enumerates all arrangements when they are few
        (treated, control), u_statistic, alternative=side, n_resamples=np.inf
    )
    (ours,) = ordinal_against_control(control, [treated], side=side, steps=range(6))
    assert ours.p == pytest.approx(theirs.pvalue, rel=1e-9)
    assert ours.superiority == pytest.approx(u_statistic(treated, control) / (len(control) * len(treated)))


def test_grades_without_ties_against_scipys_exact_mann_whitney():
    control, treated = [5, 4.5, 3, 3.5], [1, 2, 4, 0.5, 0]
    theirs = stats.mannwhitneyu(treated, control, alternative="less", method="exact")  # scipy 1.17.1
    (ours,) = ordinal_against_control(control, [treated], side="less", steps=range(6))
    assert ours.p == pytest.approx(theirs.pvalue)


def test_grades_are_adjusted_after_holm():
    control = [4, 5, 5, 3]
    treated = [[1, 2, 2, 0], [3, 4, 4, 5], [2, 3, 3, 4]]
    found = ordinal_against_control(control, treated, side="less", steps=range(6))
    theirs = multipletests([one.p for one in found], method="holm")[1]  # statsmodels 0.15.0
    assert [one.p_adjusted for one in found] == pytest.approx(theirs)


def test_three_blanks_and_two_cups_never_reach_a_tenth():
    # 1 of 5! / (3! 2!) = 10 arrangements, plain counting.
    (found,) = ordinal_against_control([5, 5, 4], [[0, 0]], side="less", steps=range(6))
    assert found.smallest_p == pytest.approx(0.1)
    assert found.p == pytest.approx(0.1)
    assert "no p below 0.1 can come out" in found.note
    assert "proof of no effect" in found.note


@pytest.mark.parametrize("count", [0, 1, 4, 12])
def test_poisson_bound_against_its_definition(count):
    bound = upper_bound_per_dm2(count, 2.5)
    # Garwood's bound: with this mean, so few or fewer turn up in 5 % of cases.
    assert stats.poisson.cdf(count, bound * 2.5) == pytest.approx(0.05)


def test_none_found_on_one_dm2_proves_fewer_than_three():
    assert upper_bound_per_dm2(0, 1.0) == pytest.approx(2.996, abs=5e-4)  # -ln 0.05 = 2.99573
