"""Pooled differences, held to statsmodels and to the definitions."""

import numpy as np
import pytest
from scipy import stats
from statsmodels.stats.meta_analysis import combine_effects

from trials.science.evidence import pool

# Invented differences in air content, vol %, with squared standard errors.
SETS = [
    ([-3.2, -2.1, -4.0, -1.0, -2.9], [0.4, 0.3, 0.5, 0.2, 0.6]),
    ([0.61, 0.43, 0.50], [0.09, 0.01, 0.04]),
    ([-1.2, 2.4], [0.1, 0.3]),
]


@pytest.mark.parametrize(("effects", "variances"), SETS)
def test_pooling_against_statsmodels(effects, variances):
    # statsmodels 0.15.0: Paule-Mandel ("iterated") with Hartung-Knapp's scaled weights.
    theirs = combine_effects(np.array(effects), np.array(variances), method_re="iterated", use_t=True, atol=1e-12)
    hartung_knapp = theirs.conf_int(alpha=0.05, use_t=True)[3]
    found = pool(effects, variances)
    assert found.tau2 == pytest.approx(theirs.tau2, abs=1e-9)
    assert found.estimate == pytest.approx(theirs.mean_effect_re, rel=1e-6)
    assert (found.low, found.high) == pytest.approx(hartung_knapp, rel=1e-5)
    homogeneity = theirs.test_homogeneity()
    assert (found.q, found.p_q) == pytest.approx((homogeneity.statistic, homogeneity.pvalue), rel=1e-9)
    assert found.i2 == pytest.approx(max(0.0, theirs.i2), abs=1e-9)


def test_variance_between_series_meets_paule_and_mandels_condition():
    effects, variances = map(np.array, SETS[0])
    found = pool(effects, variances)
    weights = 1 / (variances + found.tau2)
    assert found.tau2 > 0
    assert weights @ (effects - found.estimate) ** 2 == pytest.approx(len(effects) - 1)


def test_prediction_by_its_formula():
    # Higgins, Thompson, Spiegelhalter (2009): t with k − 2 degrees of freedom, variance tau² + error².
    found = pool(*SETS[0])
    error = (found.high - found.estimate) / stats.t.ppf(0.975, 4)
    reach = stats.t.ppf(0.975, 3) * np.hypot(np.sqrt(found.tau2), error)
    assert (found.prediction_low, found.prediction_high) == pytest.approx(
        (found.estimate - reach, found.estimate + reach)
    )


def test_variance_between_two_series_by_hand():
    # (y1 − y2)² / (v1 + v2 + 2 tau²) = 1, so tau² = (3.6² − 0.4) / 2.
    assert pool(*SETS[2]).tau2 == pytest.approx(6.28)
