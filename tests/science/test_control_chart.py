import pytest

from trials.science.control_chart import Signal, individuals

QUIET = [5.0, 5.4, 4.8, 5.2, 4.7, 5.3, 4.9, 5.1, 4.6, 5.2, 4.8, 5.3, 5.0, 4.7, 5.4, 4.9, 5.1, 4.8, 5.2, 5.0]


def rules(values):
    return {(signal.index, signal.rule) for signal in individuals(values).signals}


def test_a_quiet_process_gives_no_signal():
    chart = individuals(QUIET)
    assert chart.signals == ()
    assert chart.note == ""


def test_a_value_beyond_a_limit():
    assert (20, "beyond a limit") in rules([*QUIET, 8.0])


def test_nine_in_a_row_on_one_side():
    values = [*QUIET, *[5.6, 5.8] * 4]
    assert not any(rule.startswith("9") for _, rule in rules(values))
    assert (28, "9 in a row on one side") in rules([*values, 5.6])


def test_six_in_a_row_rising_and_falling():
    assert rules([5.0, 4.9, 5.0, 5.1, 5.2, 5.3, 5.4, 4.8]) == {(6, "6 in a row rising")}
    assert rules([5.0, 5.1, 5.0, 4.9, 4.8, 4.7, 4.6, 5.2]) == {(6, "6 in a row falling")}


def test_two_of_three_far_out():
    chart = individuals([*QUIET, 6.3, 5.0, 6.2])
    assert Signal(22, "2 of 3 beyond two standard deviations") in chart.signals


def test_equal_values_have_no_limits():
    chart = individuals([5.0, 5.0, 5.0])
    assert (chart.upper, chart.lower, chart.signals) == (5.0, 5.0, ())
    assert "no limits" in chart.note


def test_few_values_say_so():
    assert "10 values only" in individuals(QUIET[:10]).note


def test_one_value_is_refused():
    with pytest.raises(ValueError, match="values needs at least 2"):
        individuals([5.0])
