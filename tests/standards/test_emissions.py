"""Emissions into rooms: EN 16516 and public indoor-emission schemes; arithmetic by hand."""

import pint
import pytest

from tests.standards.printed import printed
from trials.science import emissions


def test_risk_index():
    # R = Σ c/LCI, nothing below 5 µg/m³ counted; the schemes ask for at most 1
    assert emissions.risk_index([220.0, 60.0, 4.9], [440.0, 500.0, 100.0]) == printed("0.620")


def test_five_micrograms_count():
    assert emissions.risk_index([5.0], [100.0]) == printed("0.05")


def test_room_concentration_with_pint():
    # 250 µg/(m²·h), 0.4 m²/m³, 0.5 air changes an hour; reference room of EN 16516 from memory
    units = pint.UnitRegistry()
    expected = units("250 ug/m^2/hour") * units("0.4 m^2/m^3") / units("0.5 / hour")
    found = emissions.room_concentration_ug_m3(250.0, 0.4, 0.5)
    assert found == printed("200")
    assert found == pytest.approx(expected.m_as("ug/m^3"))


def test_what_is_above_the_limits_of_a_scheme():
    # a national indoor-emission scheme, public building-material information system: TVOC 10 after 3 days and 1.0
    # after 28, SVOC 0.1 mg/m³ after 28
    limits = {"TVOC 3 d": 10.0, "TVOC 28 d": 1.0, "SVOC 28 d": 0.1}
    found = {"TVOC 3 d": 9.8, "TVOC 28 d": 0.98, "SVOC 28 d": 0.11}
    assert emissions.above(found, limits) == ("SVOC 28 d",)
