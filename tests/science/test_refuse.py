import math
from decimal import Decimal

import numpy as np
import pytest

from trials.science import _refuse


@pytest.mark.parametrize("value", [math.nan, math.inf, -math.inf, None, "1.5", "", b"1", True, [1.0], 10**400, 1j])
def test_what_is_no_finite_number(value):
    with pytest.raises(ValueError, match="mass_g"):
        _refuse.finite("mass_g", value)


@pytest.mark.parametrize("value", [1, 1.0, Decimal("1"), np.float64(1.0), np.int32(1)])
def test_numbers_of_every_kind(value):
    found = _refuse.finite("mass_g", value)
    assert found == 1.0
    assert type(found) is float


@pytest.mark.parametrize(
    ("check", "value"),
    [
        (_refuse.positive, 0.0),
        (_refuse.positive, -1.0),
        (_refuse.positive, math.inf),
        (_refuse.not_negative, -0.1),
        (_refuse.percent, 100.1),
        (_refuse.percent, -0.1),
        (_refuse.fraction, 1.1),
        (_refuse.celsius, -273.15),
        (_refuse.whole, 1.5),
        (_refuse.whole, -1),
    ],
)
def test_refusals_name_argument_and_value(check, value):
    with pytest.raises(ValueError, match=rf"^level .*got {value}$"):
        check("level", value)


def test_ends_of_ranges_are_taken():
    assert _refuse.percent("p", 0) == 0.0
    assert _refuse.percent("p", 100) == 100.0
    assert _refuse.fraction("f", 1) == 1.0
    assert _refuse.not_negative("m", 0) == 0.0
    assert _refuse.whole("n", 3.0, at_least=3) == 3
    assert _refuse.positive("growth_s", math.inf, may_be_inf=True) == math.inf


def test_words():
    assert _refuse.one_of("rule", "a", ("a", "b")) == "a"
    with pytest.raises(ValueError, match="rule must be one of 'a', 'b'; got 'c'"):
        _refuse.one_of("rule", "c", ("a", "b"))


@pytest.mark.parametrize(
    ("values", "options", "message"),
    [
        ([1.0, math.nan], {}, r"air\[1\] must be finite; got nan"),
        ([1.0, -2.0], {"low": 0.0}, r"air\[1\] must be finite and at least 0; got -2"),
        ([[1.0, 2.0], [math.inf, 1.0]], {"ndim": 2}, r"air\[1, 0\].*inf"),
        ([1.0], {"min_size": 2}, r"air needs at least 2"),
        ([[1.0]], {}, r"air needs .* 1 dimension.*\(1, 1\)"),
        (["x"], {}, r"air must be numbers.*'x'"),
        ([[1.0], [1.0, 2.0]], {"ndim": 2}, r"air must be numbers"),
    ],
)
def test_arrays_that_are_refused(values, options, message):
    with pytest.raises(ValueError, match=message):
        _refuse.finite_array("air", values, **options)


def test_an_array_comes_back_as_floats():
    found = _refuse.finite_array("air", [1, Decimal("2.5")])
    assert found.dtype == float
    assert found.tolist() == [1.0, 2.5]


def test_columns():
    assert _refuse.numbers("mass_g", [1, 2]) == [1.0, 2.0]
    with pytest.raises(ValueError, match=r"mass_g\[1\] must not be negative; got -2"):
        _refuse.numbers("mass_g", [1, -2], _refuse.not_negative)
    with pytest.raises(ValueError, match="mass_g needs at least 1"):
        _refuse.numbers("mass_g", [])
    with pytest.raises(ValueError, match="a has 1, b has 2"):
        _refuse.same_length(a=[1], b=[1, 2])
    with pytest.raises(ValueError, match=r"mass_g must add up .*\[0.0, 0.0\]"):
        _refuse.total("mass_g", [0.0, 0.0])


def test_an_answer_out_of_range_names_what_drove_it_there():
    assert _refuse.answer(1.0, mass_g=1.0) == 1.0
    with pytest.raises(ValueError, match=r"mass_g=1e\+308, loss_pct=3"):
        _refuse.answer(math.inf, mass_g=1e308, loss_pct=3)
