import math

import pytest

from trials.science import air


@pytest.mark.parametrize(
    ("call", "message"),
    [
        (lambda: air.air_pct(0.0, 1.25), "density_g_ml must be above 0; got 0.0"),
        (lambda: air.air_pct(1.18, -1.25), "air_free_g_ml must be above 0; got -1.25"),
        (lambda: air.air_pct(1.30, 1.25), r"density_g_ml must not exceed air_free_g_ml \(1.25\).*got 1.3"),
        (lambda: air.air_pct(0.001, 1.25, air_g_ml=0.0012), "air_g_ml must be below density_g_ml .*got 0.0012"),
        (lambda: air.air_pct_uncertainty(1.18, 1.25, -0.001, 0.001), "u_density .*got -0.001"),
        (lambda: air.air_pct_uncertainty(1.18, 1.25, 0.001, -0.002), "u_air_free .*got -0.002"),
        (lambda: air.density_at_air_g_ml(1.25, 101.0), "air_pct .*got 101.0"),
        (lambda: air.defoaming_efficiency_pct(1.2, 1.25, 1.25), r"blank_g_ml must be below .*got 1.25"),
        (lambda: air.defoaming_efficiency_pct(1.3, 1.05, 1.25), "density_g_ml must not exceed"),
        (lambda: air.retention_pct(0.0, 10.0), "fresh_pct must be above 0; got 0.0"),
        (lambda: air.release([0.0], [1.0]), "minutes needs at least 2"),
        (lambda: air.release([0.0, 1.0], [1.0]), "air_pct needs at least 2"),
        (lambda: air.release([0.0, 1.0, 2.0], [2.0, 1.0]), "minutes has 3, air_pct has 2"),
        (lambda: air.release([5.0, 5.0], [2.0, 1.0]), "minutes must not all be equal"),
        (lambda: air.release([0.0, 5.0], [2.0, 0.0]), r"air_pct\[1\] must be above 0; got 0.0"),
        (lambda: air.release([-1.0, 5.0], [2.0, 1.0]), r"minutes\[0\] must not be negative; got -1.0"),
        (lambda: air.minutes_to(air.Release(5.0, 0.1, 6.9, 1.0), -1.0), "air_pct .*got -1.0"),
        (lambda: air.pyknometer_ml(0.0, 1.0), "water_g must be above 0; got 0.0"),
        (lambda: air.pyknometer_ml(1.0, 1.0, air_g_ml=1.0), "air_g_ml must be below water_g_ml"),
        (lambda: air.pyknometer_density_g_ml(1.0, 1.0, air_g_ml=8.0), "air_g_ml must be below weights_g_ml"),
        (lambda: air.pyknometer_density_g_ml(1.0, 0.0), "volume_ml must be above 0; got 0.0"),
        (lambda: air.water_g_ml(31.0), "temperature_c must be between 0 and 30; got 31.0"),
    ],
)
def test_refusals(call, message):
    with pytest.raises(ValueError, match=message):
        call()


def test_a_reading_within_the_noise_of_weighing_is_kept():
    assert air.air_pct(1.2510, 1.2500) == pytest.approx(-0.08)
    assert air.defoaming_efficiency_pct(1.2510, 1.05, 1.25) == pytest.approx(100.5)


def test_no_air_and_nothing_but_air():
    assert air.air_pct(1.25, 1.25) == 0.0
    assert air.density_at_air_g_ml(1.25, 0.0) == 1.25
    assert air.density_at_air_g_ml(1.25, 100.0) == 0.0


def test_the_widest_range_of_all():
    assert air.air_pct(1.0, 1.8e306) == pytest.approx(100.0)


def test_worse_than_the_blank():
    assert air.defoaming_efficiency_pct(1.00, 1.05, 1.25) == pytest.approx(-25.0)
    assert air.retention_pct(50.0, -10.0) == pytest.approx(-20.0)


def test_air_that_does_not_leave():
    steady = air.release([0.0, 10.0, 20.0], [3.0, 3.0, 3.0])
    assert steady.half_life_min is None
    assert steady.r_squared is None
    assert air.minutes_to(steady, 1.0) is None
    rising = air.release([0.0, 10.0], [3.0, 4.0])
    assert rising.rate_per_min < 0.0
    assert rising.half_life_min is None
    assert air.minutes_to(rising, 1.0) is None


def test_reached_from_the_start_and_never():
    cup = air.release([0.0, 30.0], [5.6, 2.8])
    assert air.minutes_to(cup, 5.7) == 0.0
    assert air.minutes_to(cup, 100.0) == 0.0
    assert air.minutes_to(cup, 0.0) is None


def test_scatter_shows_in_r_squared():
    clean = air.release([0, 10, 20, 30], [8.0, 4.0, 2.0, 1.0])
    assert clean.r_squared == pytest.approx(1.0)
    assert clean.half_life_min == pytest.approx(10.0)
    rough = air.release([0, 10, 20, 30], [8.0, 3.0, 3.0, 1.0])
    assert 0.8 < rough.r_squared < 1.0


def test_readings_that_began_late():
    cup = air.release([10.0, 20.0], [4.0, 2.0])
    assert cup.start_pct == pytest.approx(8.0)
    assert math.isclose(air.minutes_to(cup, 1.0), 30.0)
