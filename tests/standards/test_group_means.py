"""Group means with pooled spread, against statsmodels' one-way analysis of variance.

Reference: statsmodels, ``OLS(y, one column per group).fit().conf_int()``: the same means, each with
Student's interval from the residual standard deviation.
"""

import numpy as np
import pytest
import statsmodels.api as sm

from trials.science.group_means import group_means

GROUPS = ([9.8, 10.4, 9.5, 10.7], [8.9, 9.6, 9.1, 9.9, 9.0], [7.0, 6.4], [4.1])


@pytest.mark.parametrize("level", [0.8, 0.95, 0.99])
def test_means_and_intervals_are_those_of_the_analysis_of_variance(level):
    values = np.concatenate(GROUPS)
    columns = np.repeat(np.eye(len(GROUPS)), [len(group) for group in GROUPS], axis=0)
    wanted = sm.OLS(values, columns).fit().conf_int(alpha=1 - level)
    found = group_means(GROUPS, level=level)
    assert [(one.low, one.high) for one in found] == [pytest.approx(tuple(row), rel=1e-10) for row in wanted]
    assert [one.mean for one in found] == pytest.approx([np.mean(group) for group in GROUPS])


def test_no_second_cup_no_interval():
    (only,) = group_means([[4.0]])
    assert (only.mean, only.low, only.high, only.df) == (4.0, None, None, 0)


def test_equal_cups_show_no_spread():
    assert {one.low for one in group_means([[0.0, 0.0], [0.0, 0.0]])} == {None}


@pytest.mark.parametrize(("groups", "level"), [([], 0.95), ([[]], 0.95), ([[float("nan")]], 0.95), ([[1.0]], 1.0)])
def test_impossible_input_is_refused(groups, level):
    with pytest.raises(ValueError, match=r"groups|level"):
        group_means(groups, level=level)
