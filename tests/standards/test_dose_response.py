"""The curve over dosage, lack of fit, and the lowest dosage that works, held to outside numbers."""

import math

import numpy as np
import pytest
import statsmodels.api as sm
from scipy import optimize
from statsmodels.stats.anova import anova_lm

from trials.science.dose_response import (
    dosage_for,
    fit,
    lack_of_fit,
    lack_of_fit_of,
    lowest_effective,
    over_dosing_onset,
    window,
)

# Root length over dose: Inderjit, Streibig, Olofsdotter, Physiol. Plant. 114 (2002) 422 (citation from memory);
# an open set that the Python package delicatessen 4.3 ships (load_inderjit).
ROOTS = {
    0.0: [7.58, 8.0, 8.3285714, 7.25, 7.375, 7.9625],
    0.94: [8.3555556, 6.9142857, 7.75],
    1.88: [6.8714286, 6.45, 5.9222222],
    3.75: [1.925, 2.8857143, 4.2333333],
    7.5: [1.1875, 0.8571429, 1.0571429],
    15.0: [0.6875, 0.525, 0.825],
    30.0: [0.25, 0.22, 0.44],
}
# Invented air contents, vol %; the figures beside them are SciPy 1.17.1 and plain arithmetic.
AIR = {
    0.0: [9.8, 10.4, 9.5, 10.7],
    0.1: [8.9, 9.6, 9.1, 9.9],
    0.2: [7.0, 6.4, 7.3, 6.8],
    0.3: [4.1, 4.6, 3.9, 4.4],
    0.5: [3.8, 4.2, 3.6, 4.1],
}
BLANK = AIR[0.0]
LADDER = {dosage: cups for dosage, cups in AIR.items() if dosage > 0}


def columns(ladder):
    return [x for x, cups in ladder.items() for _ in cups], [y for cups in ladder.values() for y in cups]


def logistic(x, slope, lower, upper, midpoint):
    return lower + (upper - lower) / (1 + (x / midpoint) ** slope)


@pytest.fixture(scope="module")
def roots():
    return fit(*columns(ROOTS))


def test_root_length_parameters_of_the_r_package(roots):
    # Test file of the R dose-response package drc for the same data.
    found = (roots.slope, roots.lower, roots.upper, roots.midpoint_pct)
    assert found == pytest.approx((2.98221907, 0.48141319, 7.79295829, 3.05795497), rel=1e-4)
    n = len(roots.response)
    log_likelihood = -n / 2 * (math.log(2 * math.pi * roots.rss / n) + 1)
    assert log_likelihood == pytest.approx(-16.15514322, rel=1e-6)


def test_root_length_errors_against_scipys_curve_fit(roots):
    x, y = columns(ROOTS)
    parameters, covariance = optimize.curve_fit(logistic, x, y, p0=(2, 1, 8, 3))  # scipy 1.17.1
    found = (roots.slope, roots.lower, roots.upper, roots.midpoint_pct)
    assert found == pytest.approx(parameters, rel=1e-4)
    assert roots.standard_errors == pytest.approx(np.sqrt(np.diag(covariance)), rel=1e-3)
    assert found == pytest.approx((2.982229, 0.481410, 7.792962, 3.057955), rel=1e-5)
    assert roots.standard_errors == pytest.approx((0.4584, 0.2095, 0.1897, 0.1858), abs=6e-5)
    assert (roots.rss, roots.s, roots.df) == pytest.approx((5.400215, 0.519626, 20), rel=1e-6)
    assert roots.believable, roots.reason


@pytest.mark.parametrize(("effect", "expected"), [(10, 1.46371), (50, 3.05796), (90, 6.38863)])
def test_root_length_dosages_for_an_effect(roots, effect, expected):
    # From the curve_fit parameters by the inverse of the formula.
    found = dosage_for(roots, effect)
    assert found.estimate_pct == pytest.approx(expected, rel=1e-4)
    assert found.low_pct < found.estimate_pct < found.high_pct


@pytest.mark.parametrize("effect", [10, 50, 90])
def test_profile_bounds_are_where_the_constrained_fit_reaches_the_f_limit(roots, effect):
    x, y = map(np.array, columns(ROOTS))
    found = dosage_for(roots, effect)
    limit = roots.rss * (1 + 4.351244 / 20)  # F(0.95; 1, 20) = 4.351244, printed tables give 4.35
    for bound in (found.low_pct, found.high_pct):

        def miss(p, bound=bound):
            midpoint = bound / (effect / (100 - effect)) ** (1 / p[0])
            return logistic(x, p[0], p[1], p[2], midpoint) - y

        fitted = optimize.least_squares(miss, (2.5, 0.5, 7.8), bounds=((0.1, -9, -9), (60, 20, 20)))
        assert 2 * fitted.cost == pytest.approx(limit, rel=1e-4)


def test_root_length_curve_is_not_rejected(roots):
    # Pure error by hand: the sums of squares within the seven doses, 17 degrees of freedom.
    pure = sum(float(np.sum((np.array(cups) - np.mean(cups)) ** 2)) for cups in ROOTS.values())
    found = lack_of_fit_of(roots)
    assert found.df == (3, 17)
    assert found.statistic == pytest.approx((roots.rss - pure) / 3 / (pure / 17), rel=1e-6)
    assert found.p > 0.05


def test_straight_line_over_the_air_ladder_is_rejected():
    x, y = columns(AIR)
    found = lack_of_fit(x, y)
    assert found.df == (3, 15)
    assert found.statistic == pytest.approx(32.1012, abs=1e-4)
    assert found.p == pytest.approx(9.02e-7, rel=1e-3)


def test_lack_of_fit_against_nested_models_of_statsmodels():
    x, y = map(np.array, columns(AIR))
    line = sm.OLS(y, sm.add_constant(x)).fit()  # statsmodels 0.15.0
    means = sm.OLS(y, (x[:, None] == np.unique(x)).astype(float)).fit()
    theirs = anova_lm(line, means)
    found = lack_of_fit(x, y)
    assert (found.statistic, found.p) == pytest.approx((theirs["F"].iloc[1], theirs["Pr(>F)"].iloc[1]), rel=1e-9)


def test_whether_a_tenth_of_a_per_cent_works_hangs_on_the_side():
    # Dunnett: one-sided p 0.036625, two-sided 0.073148 (exact integrals).
    assert lowest_effective(BLANK, LADDER, side="less").dosage_pct == 0.1
    two_sided = lowest_effective(BLANK, LADDER, side="two-sided")
    assert two_sided.dosage_pct == 0.2
    assert "0.073" in two_sided.reason


def test_lowest_dosage_no_worse_than_the_best():
    # 0.3 against 0.5 %: Tukey p 0.78758 (scipy.stats.tukey_hsd 1.17.1): no gain above 0.3 %.
    assert lowest_effective(BLANK, LADDER, side="less", rule="no worse than best").dosage_pct == 0.3


def test_lowest_dosage_with_thirty_per_cent_less_air():
    # Mean reductions 7.18 / 31.93 / 57.92 / 61.14 % of the blank's 10.10, plain arithmetic.
    found = lowest_effective(BLANK, LADDER, side="less", rule="target", target_change_pct=30)
    assert found.dosage_pct == 0.2
    assert "31.9 %" in found.reason


def test_window_from_less_air_to_haze():
    # Invented haze units; over-dosing shows as haze well before the air rises again (common practice, no source).
    haze = {0.1: [11, 12, 10], 0.2: [13, 12, 14], 0.3: [14, 13, 16], 0.5: [47, 50, 44]}
    onset = over_dosing_onset(haze, control=[10, 11, 12], side="greater", worthwhile=10)
    lowest = lowest_effective(BLANK, LADDER, side="less", rule="target", target_change_pct=30)
    found = window(lowest, onset, tested_pct=list(haze))
    assert (onset.dosage_pct, found.from_pct, found.to_pct) == (0.5, 0.2, 0.3)
    assert found.from_pct <= found.working_pct <= found.to_pct
