import pytest

from trials.science import shear


@pytest.mark.parametrize(
    ("call", "message"),
    [
        (lambda: shear.tip_speed_m_s(0.0, 1000.0), "blade_mm must be above 0; got 0.0"),
        (lambda: shear.tip_speed_m_s(40.0, -1.0), "rpm must not be negative; got -1.0"),
        (lambda: shear.rpm_for_tip_speed(5.0, -40.0), "blade_mm .*got -40.0"),
        (lambda: shear.scale_up_rpm(40.0, 3000.0, 300.0, rule="power"), "rule must be one of .*got 'power'"),
        (lambda: shear.blade_ratio(90.0, 90.0), r"blade_mm must be smaller than vessel_mm \(90.0\); got 90.0"),
        (lambda: shear.usual_blade(100.0, 90.0), "blade_mm .*got 100.0"),
        (lambda: shear.reynolds(50.0, 3000.0, 1.25, 0.0), "viscosity_pa_s must be above 0; got 0.0"),
        (lambda: shear.power(50.0, 3000.0, 1.25, 2.0, power_number=0.0), "power_number .*got 0.0"),
        (lambda: shear.power(50.0, 0.0, 1.25, 2.0, power_number=0.3), "rpm must be above 0; got 0.0"),
        (lambda: shear.specific_energy_kj_kg(10.0, 10.0, 0.0), "batch_kg .*got 0.0"),
        (lambda: shear.gap_shear_rate_s(5.0, 0.0), "gap_mm .*got 0.0"),
        (lambda: shear.metzner_otto_s(1000.0, k=0.0), "k must be above 0; got 0.0"),
        (lambda: shear.tip_speed_m_s(1e308, 1e308), r"no finite answer for blade_mm=1e\+308"),
    ],
)
def test_refusals(call, message):
    with pytest.raises(ValueError, match=message):
        call()


def test_a_blade_at_rest():
    assert shear.tip_speed_m_s(40.0, 0.0) == 0.0
    assert shear.rpm_for_tip_speed(0.0, 40.0) == 0.0
    assert shear.reynolds(40.0, 0.0, 1.0, 1.0) == 0.0
    assert shear.metzner_otto_s(0.0) == 0.0


def test_turbulence_begins_at_ten_thousand():
    assert shear.power(100.0, 600.0, 1.0, 0.01, power_number=0.3).turbulent
    assert not shear.power(100.0, 600.0, 1.0, 0.0100001, power_number=0.3).turbulent


def test_the_same_blade_needs_no_scaling():
    for rule in shear.SCALE_UP_RULES:
        assert shear.scale_up_rpm(50.0, 1234.0, 50.0, rule=rule) == pytest.approx(1234.0)
