import math

import pytest

from trials.science import bubbles

INF = math.inf


@pytest.mark.parametrize(
    ("call", "message"),
    [
        (lambda: bubbles.stokes_m_s(0.0, 1.0, 1.1), "diameter_um must be above 0; got 0.0"),
        (lambda: bubbles.stokes_m_s(100.0, 0.0, 1.1), "viscosity_pa_s must be above 0; got 0.0"),
        (lambda: bubbles.stokes_m_s(100.0, 1.0, 0.001), r"density_g_ml must exceed gas_g_ml \(0.0012\); got 0.001"),
        (lambda: bubbles.stokes_m_s(100.0, 1.0, 1.1, gas_viscosity_pa_s=-1.0), "gas_viscosity_pa_s .*got -1.0"),
        (lambda: bubbles.stokes_m_s(INF, 1.0, 1.1), "diameter_um must be a finite number; got inf"),
        (lambda: bubbles.rise_m_s(1e6, 1e-6, 1.1), "no finite answer for diameter_um=1000000.0"),
        (lambda: bubbles.rise_m_s(1e155, 1.0, 1e155), r"no finite answer for diameter_um=1e\+155"),
        (lambda: bubbles.growth_from_doubling_s(0.0), "doubling_s must be above 0; got 0.0"),
        (lambda: bubbles.growth_from_doubling_s(math.nan), "doubling_s must be a number; got nan"),
        (lambda: bubbles.risen_um(-1.0, 100.0, 1.0, 1.1), "seconds must not be negative; got -1.0"),
        (lambda: bubbles.risen_um(INF, 100.0, 1.0, 1.1), "seconds must be a finite number; got inf"),
        (lambda: bubbles.escape(100.0, 0.0, 1.0, 1.1, growth_s=1.0, gel_s=1.0), "film_um .*got 0.0"),
        (lambda: bubbles.escape(100.0, 1.0, 1.0, 1.1, growth_s=0.0, gel_s=1.0), "growth_s .*got 0.0"),
        (lambda: bubbles.escape(100.0, 1.0, 1.0, 1.1, growth_s=1.0, gel_s=0.0), "gel_s .*got 0.0"),
        (lambda: bubbles.smallest_escaping_um(-1.0, 1.0, 1.1, growth_s=1.0, gel_s=1.0), "film_um .*got -1.0"),
        (lambda: bubbles.held_by_yield_um(-0.1, 1.1), "yield_pa must not be negative; got -0.1"),
        (lambda: bubbles.laplace_pa(35.0, 0.0), "diameter_um .*got 0.0"),
        (lambda: bubbles.entering(0.0, 21.0, 5.0), "liquid_mn_m .*got 0.0"),
        (lambda: bubbles.spreading(35.0, -21.0, 5.0), "defoamer_mn_m .*got -21.0"),
        (lambda: bubbles.bridging(35.0, 21.0, -5.0), "interface_mn_m .*got -5.0"),
    ],
)
def test_refusals(call, message):
    with pytest.raises(ValueError, match=message):
        call()


def test_without_growth_and_without_gel_every_bubble_escapes():
    found = bubbles.escape(1.0, 5000.0, 10.0, 1.1, growth_s=INF, gel_s=INF)
    assert found.escapes
    assert found.risen_by_gel_um is None
    assert bubbles.smallest_escaping_um(5000.0, 10.0, 1.1, growth_s=INF, gel_s=INF) is None


def test_a_time_beyond_gel_is_still_told():
    found = bubbles.escape(50.0, 2000.0, 0.8, 1.1, growth_s=INF, gel_s=60.0)
    assert found.seconds > 60.0
    assert not found.escapes


def test_gel_without_growth():
    smallest = bubbles.smallest_escaping_um(2000.0, 0.8, 1.1, growth_s=INF, gel_s=2400.0)
    speed = bubbles.stokes_m_s(smallest, 0.8, 1.1)
    assert speed * 2400.0 * 1e6 == pytest.approx(2000.0)


def test_viscosity_that_never_doubles():
    assert bubbles.growth_from_doubling_s(INF) == INF


def test_a_clean_bubble_of_heavy_gas_approaches_a_rigid_one():
    rigid = bubbles.stokes_m_s(100.0, 1.0, 1.1)
    assert bubbles.stokes_m_s(100.0, 1.0, 1.1, clean=True, gas_viscosity_pa_s=1e12) == pytest.approx(rigid)
    assert bubbles.stokes_m_s(100.0, 1.0, 1.1, clean=True, gas_viscosity_pa_s=0.0) == pytest.approx(1.5 * rigid)


def test_no_yield_value_holds_nothing():
    assert bubbles.held_by_yield_um(0.0, 1.1) == 0.0


def test_small_rise_is_that_of_stokes():
    assert bubbles.rise_m_s(50.0, 1.0, 1.1) == pytest.approx(bubbles.stokes_m_s(50.0, 1.0, 1.1))
