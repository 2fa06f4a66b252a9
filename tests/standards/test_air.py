"""Air content, release and pyknometer. Numbers without a printed source were worked out by hand from the formula."""

import pytest
from iapws import IAPWS95
from uncertainties import ufloat

from tests.standards.printed import printed
from trials.science import air, composition

# dry air at 101.325 kPa, g/mL: CoolProp 8.0.0, PropsSI("D", "T", t + 273.15, "P", 101325, "Air")
AIR_G_ML = {20.0: 0.0012046, 23.0: 0.0011923, 25.0: 0.0011843}


def water_kg_m3(temperature_c):
    return IAPWS95(T=temperature_c + 273.15, P=0.101325).rho


@pytest.mark.parametrize(
    ("temperature_c", "density"),
    [
        # IAPWS-95 at 101.325 kPa: iapws 1.5.5, IAPWS95(T=t + 273.15, P=0.101325).rho
        (4.0, 999.9749),
        (10.0, 999.7025),
        (15.0, 999.1026),
        (18.0, 998.5986),
        (20.0, 998.2072),
        (21.0, 997.9955),
        (22.0, 997.7735),
        (23.0, 997.5414),
        (24.0, 997.2994),
        (25.0, 997.0476),
        (27.0, 996.5158),
        (30.0, 995.6495),
    ],
)
def test_density_of_water_against_iapws(temperature_c, density):
    assert water_kg_m3(temperature_c) == pytest.approx(density, abs=1e-3)
    assert 1000.0 * air.water_g_ml(temperature_c) == pytest.approx(density, abs=1e-3)


@pytest.mark.parametrize(("temperature_c", "density"), [(20.0, 998.2067), (23.0, 997.5408), (25.0, 997.0470)])
def test_density_of_water_by_the_cipm_formula(temperature_c, density):
    # Tanaka et al., Metrologia 38 (2001) 301; coefficients from memory
    assert 1000.0 * air.water_g_ml(temperature_c) == pytest.approx(density, abs=1e-3)


@pytest.mark.parametrize(("temperature_c", "factor"), [(20.0, "1.00286"), (23.0, "1.00351"), (25.0, "1.00401")])
def test_millilitres_of_a_gram_of_water_weighed_in_air(temperature_c, factor):
    # the Z table of ISO 8655 and ISO 4787, from memory; steel weights of 8.0 g/mL
    water = water_kg_m3(temperature_c) / 1000.0
    assert air.pyknometer_ml(1.0, water, air_g_ml=AIR_G_ML[temperature_c]) == printed(factor)


class TestPyknometerAt23Degrees:
    """Empty 34.512 g, with water 134.402 g, with sample 178.250 g; ISO 2811-1 annex A form, from memory."""

    water_g = 134.402 - 34.512
    sample_g = 178.250 - 34.512
    water_g_ml = 0.9975414

    def test_without_buoyancy(self):
        volume = air.pyknometer_ml(self.water_g, self.water_g_ml)
        assert volume == printed("100.1362")
        assert self.sample_g == printed("143.738")
        assert air.pyknometer_density_g_ml(self.sample_g, volume) == printed("1.43543")

    def test_with_buoyancy(self):
        volume = air.pyknometer_ml(self.water_g, self.water_g_ml, air_g_ml=AIR_G_ML[23.0])
        assert volume == printed("100.2411")
        density = air.pyknometer_density_g_ml(self.sample_g, volume, air_g_ml=AIR_G_ML[23.0])
        assert density == printed("1.43490")

    def test_leaving_the_sample_uncorrected_is_about_0_0012_low(self):
        # ISO 2811-1 reports so, from memory
        volume = air.pyknometer_ml(self.water_g, self.water_g_ml, air_g_ml=AIR_G_ML[23.0])
        corrected = air.pyknometer_density_g_ml(self.sample_g, volume, air_g_ml=AIR_G_ML[23.0])
        assert corrected - self.sample_g / volume == pytest.approx(0.0012, abs=3e-4)


@pytest.mark.parametrize(("measured", "air_pct"), [(1.30, "8.7409"), (1.25, "12.2509"), (1.20, "15.7609")])
def test_air_against_the_density_of_the_recipe(measured, air_pct):
    recipe = composition.mixture_density_g_ml([500, 60, 300, 50, 5, 85], [1.16, 1.08, 2.65, 4.10, 1.00, 1.00])
    assert air.air_pct(measured, recipe) == printed(air_pct)


def test_air_with_its_uncertainty_against_uncertainties():
    # uncertainties 3.2.3
    density, free = ufloat(1.180, 0.002), ufloat(1.250, 0.001)
    expected = 100.0 * (1.0 - density / free)
    assert air.air_pct(1.180, 1.250) == printed("5.60") == expected.n
    found = air.air_pct_uncertainty(1.180, 1.250, 0.002, 0.001)
    assert found == printed("0.18")
    assert found == pytest.approx(expected.s)


def test_air_with_its_mass():
    # (ρ₀ − ρ)/(ρ₀ − ρ_air) by hand, air of 0.0012 g/mL
    assert air.air_pct(1.180, 1.250, air_g_ml=0.0012) == printed("5.6054")


def test_defoaming_efficiency():
    assert air.defoaming_efficiency_pct(1.20, 1.05, 1.25) == printed("75.00")


def test_release_of_first_order():
    readings = [air.air_pct(density, 1.250) for density in (1.180, 1.215)]
    assert readings[1] == printed("2.80")
    cup = air.release([0.0, 30.0], readings)
    assert cup.start_pct == printed("5.60")
    assert cup.half_life_min == printed("30.0")
    assert air.minutes_to(cup, 0.2) == printed("144.2")


def test_density_at_the_end_of_air_release():
    # ASTM D3427, 10.2: 0.2 % air, 0.998 of the density
    assert air.density_at_air_g_ml(1.250, 0.2) == printed("1.2475")


def test_retention_after_storage():
    fresh = air.defoaming_efficiency_pct(1.200, 1.050, 1.250)
    stored = air.defoaming_efficiency_pct(1.160, 1.055, 1.250)
    assert fresh == printed("75.0")
    assert stored == printed("53.85")
    assert air.retention_pct(fresh, stored) == printed("71.8")
