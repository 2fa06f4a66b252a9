"""Dew points of the air around a panel."""

import pytest
from iapws import IAPWS97
from scipy.optimize import brentq

from tests.standards.printed import printed
from trials.science import climate


@pytest.mark.parametrize(
    ("air_c", "humidity_pct", "dew_point_c"),
    [
        # The table of dew points in DIN 4108-3: from memory.
        (10.0, 50.0, "0.1"),
        (10.0, 80.0, "6.7"),
        (20.0, 40.0, "6.0"),
        (20.0, 50.0, "9.3"),
        (20.0, 60.0, "12.0"),
        (20.0, 70.0, "14.4"),
        (20.0, 80.0, "16.4"),
        (25.0, 50.0, "13.9"),
        (30.0, 50.0, "18.4"),
        (30.0, 70.0, "23.9"),
    ],
)
def test_dew_point(air_c, humidity_pct, dew_point_c):
    assert climate.dew_point_c(air_c, humidity_pct) == printed(dew_point_c)


@pytest.mark.parametrize("air_c", [5.0, 10.0, 23.0, 30.0, 45.0])
@pytest.mark.parametrize("humidity_pct", [75.0, 90.0, 99.0])
def test_dew_point_against_steam_tables(air_c, humidity_pct):
    # iapws 1.5.5, IAPWS97(T=..., x=1).P: saturation pressure of water, solved for the dew point
    wanted = IAPWS97(T=air_c + 273.15, x=1).P * humidity_pct / 100

    def over(dew_c):
        return IAPWS97(T=dew_c + 273.15, x=1).P - wanted

    found = climate.dew_point_c(air_c, humidity_pct)
    assert found == pytest.approx(brentq(over, 0.0, air_c), abs=0.1)


def test_saturated_air_is_at_its_dew_point():
    assert climate.dew_point_c(23.0, 100.0) == pytest.approx(23.0, abs=1e-9)


def test_margin_of_a_cold_floor():
    # 14.4 °C at 20 °C and 70 % (above): a floor of 16 °C stands 1.6 K over it, short of the 3 K of ISO 8502-4
    margin = climate.dew_point_margin_c(16.0, 20.0, 70.0)
    assert margin == printed("1.6")
    assert margin < climate.LEAST_MARGIN_C == 3.0
