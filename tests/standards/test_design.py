"""Numbers of cups, held to statsmodels."""

import math

import numpy as np
import pytest
from scipy import stats
from statsmodels.stats.power import TTestIndPower

from trials.science.design import detectable_difference, power, trials_per_arm
from trials.science.many_to_one import critical_value


@pytest.mark.parametrize(
    ("effect", "expected"),
    [(0.2, 393.406), (0.5, 63.766), (0.8, 25.525), (1.0, 16.715), (1.5, 8.060), (2.0, 5.090)],
)
def test_cups_for_a_power_of_80_per_cent(effect, expected):
    # statsmodels 0.15.0: TTestIndPower().solve_power(effect_size=effect, alpha=0.05, power=0.8)
    found = trials_per_arm(effect, 1.0)
    assert found == pytest.approx(expected, abs=6e-4)
    theirs = TTestIndPower().solve_power(effect_size=effect, alpha=0.05, power=0.8)
    assert found == pytest.approx(theirs, rel=1e-5)


@pytest.mark.parametrize(("effect", "whole"), [(0.5, 64), (0.8, 26), (1.0, 17), (1.5, 9), (2.0, 6)])
def test_whole_cups(effect, whole):
    assert math.ceil(trials_per_arm(effect, 1.0)) == whole


@pytest.mark.parametrize(
    ("effect", "options", "expected"),
    [(0.5, {"power": 0.9}, 85.031), (1.0, {"power": 0.9}, 22.021), (0.5, {"side": "greater"}, 50.151)],
)
def test_cups_for_other_wishes(effect, options, expected):
    # statsmodels 0.15.0, TTestIndPower; one-sided by alternative="larger".
    assert trials_per_arm(effect, 1.0, **options) == pytest.approx(expected, abs=6e-4)


@pytest.mark.parametrize(("n", "effect", "expected"), [(20, 0.5, 0.337939), (5, 2.0, 0.790542), (3, 3.0, 0.782554)])
def test_power_of_few_cups(n, effect, expected):
    assert power(n, effect, 1.0) == pytest.approx(expected, abs=1e-6)
    assert power(n, effect, 1.0) == pytest.approx(TTestIndPower().power(effect, n, 0.05), abs=1e-8)


@pytest.mark.parametrize(("n", "s"), [(3, 0.4), (5, 2.0), (64, 1.0)])
def test_detectable_difference_against_statsmodels(n, s):
    theirs = TTestIndPower().solve_power(nobs1=n, alpha=0.05, power=0.8)  # statsmodels 0.15.0
    assert detectable_difference(n, s) == pytest.approx(theirs * s, rel=1e-6)


def test_several_arms_use_dunnetts_limit():
    # SciPy 1.17.1's noncentral t at the many-to-one limit, pooled over all five groups.
    n, arms, effect = 6, 4, 1.5
    df = (arms + 1) * (n - 1)
    limit = critical_value(0.95, [np.sqrt(0.5)] * arms, df, two_sided=True)
    away = stats.nct(df, effect * np.sqrt(n / 2))
    assert power(n, effect, 1.0, arms=arms) == pytest.approx(away.sf(limit) + away.cdf(-limit), abs=1e-7)
