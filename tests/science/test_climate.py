import pytest

from trials.science import climate


@pytest.mark.parametrize(
    ("call", "message"),
    [
        (lambda: climate.dew_point_c(60.1, 50.0), "air_c must be between -45 and 60; got 60.1"),
        (lambda: climate.dew_point_c(float("nan"), 50.0), "air_c .*got nan"),
        (lambda: climate.dew_point_c(20.0, 0.0), "humidity_pct .*got 0.0"),
        (lambda: climate.dew_point_c(20.0, 100.5), "humidity_pct .*got 100.5"),
        (lambda: climate.dew_point_margin_c(-50.0, 20.0, 50.0), "substrate_c .*got -50.0"),
    ],
)
def test_refusals(call, message):
    with pytest.raises(ValueError, match=message):
        call()


def test_never_above_the_air():
    assert all(climate.dew_point_c(float(air), 100.0) <= air for air in range(-45, 61))
