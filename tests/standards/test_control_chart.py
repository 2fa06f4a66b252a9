"""The chart of single values, held to the NIST handbook."""

import math

import pytest

from trials.science.control_chart import D2, individuals

# NIST/SEMATECH e-Handbook of Statistical Methods, section 6.3.2.2, flow rates.
FLOW = [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1]


def test_limits_of_the_nist_flow_rates():
    chart = individuals(FLOW)
    assert chart.centre == pytest.approx(50.81)
    assert chart.mean_moving_range == pytest.approx(1.87778, abs=5e-6)
    # The handbook prints these (from memory).
    assert (chart.upper, chart.lower) == pytest.approx((55.8041, 45.8159), abs=5e-5)
    assert chart.signals == ()


def test_the_printed_constant_is_the_rounded_mean_range():
    # Mean range of two standard normal values: 2/√π. With all its digits the upper limit would be 55.8024.
    assert round(2 / math.sqrt(math.pi), 3) == D2
    chart = individuals(FLOW)
    exact = chart.centre + 3 * chart.mean_moving_range / (2 / math.sqrt(math.pi))
    assert exact == pytest.approx(55.8024, abs=5e-5)
    assert chart.upper > exact
