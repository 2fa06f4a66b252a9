"""Dissolver shear. Numbers without a printed source follow from the formula named and were worked out by hand."""

import pint
import pytest

from tests.standards.printed import printed
from trials.science import shear

UNITS = pint.UnitRegistry()


@pytest.mark.parametrize(
    ("blade_mm", "rpm", "speed", "feet_per_minute"),
    [
        # π·D·n by hand, feet per minute by pint 0.25
        (40.0, 2000.0, "4.1888", "824.6"),
        (40.0, 3000.0, "6.2832", "1236.8"),
        (50.0, 3000.0, "7.8540", None),
        (60.0, 4000.0, "12.5664", None),
        (100.0, 3000.0, "15.7080", None),
        (300.0, 1200.0, "18.8496", None),
    ],
)
def test_tip_speed(blade_mm, rpm, speed, feet_per_minute):
    found = shear.tip_speed_m_s(blade_mm, rpm)
    assert found == printed(speed)
    if feet_per_minute:
        assert UNITS.Quantity(found, "m/s").m_as("ft/min") == printed(feet_per_minute)


@pytest.mark.parametrize(("speed", "blade_mm", "rpm"), [(5.0, 40.0, "2387.3"), (20.0, 60.0, "6366.2")])
def test_turns_for_a_tip_speed(speed, blade_mm, rpm):
    assert shear.rpm_for_tip_speed(speed, blade_mm) == printed(rpm)


@pytest.mark.parametrize(
    ("feet_per_minute", "speed"), [(4000, "20.32"), (5000, "25.40"), (5200, "26.416"), (6000, "30.48")]
)
def test_makers_bands_in_feet_per_minute(feet_per_minute, speed):
    # dissolver makers' primers give 4000 to 6000 ft/min for grinding; conversion by pint 0.25
    asked = UNITS.Quantity(feet_per_minute, "ft/min").m_as("m/s")
    assert asked == printed(speed)
    rpm = shear.rpm_for_tip_speed(asked, 100.0)
    circumference = UNITS.Quantity(1, "pi") * UNITS.Quantity(100.0, "mm")
    assert (circumference * rpm / UNITS.minute).m_as("ft/min") == pytest.approx(feet_per_minute)


def test_primer_formula_in_inches():
    # dissolver maker's primer: 0.262·D(in)·rpm, 4192 ft/min for 4 in at 4000 rpm; exactly 4188.8
    speed = UNITS.Quantity(shear.tip_speed_m_s(4 * 25.4, 4000.0), "m/s").m_as("ft/min")
    assert speed == printed("4188.8")
    assert speed == pytest.approx(4192, rel=1e-3)


def test_a_small_dissolver_in_a_thick_batch_is_not_turbulent():
    # by hand: 50 mm at 3000 rpm in 1.25 g/mL and 2 Pa·s
    assert shear.reynolds(50.0, 3000.0, 1.25, 2.0) == printed("78.125")
    speed = shear.tip_speed_m_s(50.0, 3000.0)
    assert shear.gap_shear_rate_s(speed, 25.0) == printed("314.2")
    assert shear.gap_shear_rate_s(speed, 5.0) == printed("1570.8")
    assert shear.metzner_otto_s(3000.0) == printed("575")
    assert not shear.power(50.0, 3000.0, 1.25, 2.0, power_number=0.35).turbulent


@pytest.mark.parametrize(
    ("power_number", "watts", "torque", "energy"),
    [(0.35, "17.090", "0.05440", "25.63"), (0.2, "9.766", None, "14.65")],
)
def test_power_torque_and_energy(power_number, watts, torque, energy):
    # by hand: P = N_p·ρ·n³·D⁵, 400 g for ten minutes
    found = shear.power(50.0, 3000.0, 1.25, 2.0, power_number=power_number)
    assert found.watts == printed(watts)
    assert shear.specific_energy_kj_kg(found.watts, 10.0, 0.4) == printed(energy)
    if torque:
        assert found.torque_n_m == printed(torque)


def test_power_carries_its_unit_with_pint():
    found = shear.power(300.0, 1200.0, 1.25, 0.01, power_number=0.35)
    assert found.turbulent
    expected = 0.35 * UNITS("1.25 g/mL") * UNITS("1200 / minute") ** 3 * UNITS("300 mm") ** 5
    assert found.watts == pytest.approx(expected.m_as("W"))


def test_equal_tip_speed_on_a_larger_blade():
    assert shear.scale_up_rpm(40.0, 3000.0, 300.0) == printed("400")


def test_equal_power_per_volume():
    # Z. Berk, Food Process Engineering and Technology, example 7.1: 0.1 m at 600 rpm, 1000 kg/m³, 0.02 Pa·s;
    # scaled by hand from a vessel of 0.3 m diameter and height to 1 m³ of the same shape
    scale = (1.0 / (3.141592653589793 / 4.0 * 0.3**3)) ** (1.0 / 3.0)
    assert scale == printed("3.613")
    assert shear.reynolds(100.0, 600.0, 1.0, 0.02) == printed("5000")
    assert shear.scale_up_rpm(100.0, 600.0, 100.0 * scale, rule="power per volume") == printed("254.8")


@pytest.mark.parametrize(("vessel_mm", "ratio", "usual"), [(180.0, "0.333", True), (90.0, "0.667", False)])
def test_blade_in_its_vessel(vessel_mm, ratio, usual):
    # a third of the vessel: dissolver makers' guides; how far off is still usual is common practice, no source
    assert shear.blade_ratio(60.0, vessel_mm) == printed(ratio)
    assert shear.usual_blade(60.0, vessel_mm) is usual
