"""Units hold together: each formula is reckoned again with Pint, from quantities in other units."""

import math

import pint
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from trials.science import air, bubbles, composition, cure, emissions, shear, stoichiometry

UNHURRIED = settings(deadline=None)  # the machine is shared, and time is not what is tested

U = pint.UnitRegistry()
Q = U.Quantity
GRAVITY = Q(1, "standard_gravity")

blades = st.floats(10.0, 500.0)
turns = st.floats(10.0, 5000.0)
densities = st.floats(0.7, 3.0)
viscosities = st.floats(0.01, 50.0)
films = st.floats(10.0, 5000.0)
shares = st.floats(1.0, 100.0)


def near(quantity, unit):
    return pytest.approx(quantity.m_as(unit), rel=1e-9)


@UNHURRIED
@given(blades, turns)
def test_tip_speed(blade_mm, rpm):
    inches, per_second = Q(blade_mm, "mm").to("inch"), Q(rpm, "1/minute").to("1/s")
    assert shear.tip_speed_m_s(blade_mm, rpm) == near(math.pi * inches * per_second, "m/s")


@UNHURRIED
@given(blades, turns, densities, viscosities)
def test_reynolds(blade_mm, rpm, density, viscosity):
    number = Q(density, "g/mL").to("lb/gal") * Q(rpm, "1/minute") * Q(blade_mm, "mm") ** 2
    assert shear.reynolds(blade_mm, rpm, density, viscosity) == near(number / Q(viscosity, "Pa*s"), "")


@UNHURRIED
@given(blades, turns, densities, viscosities)
def test_power(blade_mm, rpm, density, viscosity):
    found = shear.power(blade_mm, rpm, density, viscosity, power_number=0.3)
    expected = 0.3 * Q(density, "g/mL") * Q(rpm, "1/minute") ** 3 * Q(blade_mm, "mm") ** 5
    assert found.watts == near(expected, "W")
    assert found.torque_n_m == near(expected / (2 * math.pi * Q(rpm, "1/minute")), "N*m")


@UNHURRIED
@given(st.floats(1.0, 1e4), st.floats(0.1, 600.0), st.floats(0.05, 500.0))
def test_specific_energy(watts, minutes, batch_kg):
    expected = Q(watts, "W").to("hp") * Q(minutes, "minute") / Q(batch_kg, "kg").to("lb")
    assert shear.specific_energy_kj_kg(watts, minutes, batch_kg) == near(expected, "kJ/kg")


@UNHURRIED
@given(st.floats(0.0, 30.0), st.floats(0.1, 100.0))
def test_gap_shear_rate(speed, gap_mm):
    assert shear.gap_shear_rate_s(speed, gap_mm) == near(Q(speed, "m/s") / Q(gap_mm, "mm"), "1/s")


@UNHURRIED
@given(turns)
def test_mean_shear_rate(rpm):
    assert shear.metzner_otto_s(rpm) == near(11.5 * Q(rpm, "1/minute"), "1/s")


@UNHURRIED
@given(st.floats(1.0, 2000.0), viscosities, densities)
def test_stokes(diameter_um, viscosity, density):
    lift = (Q(density, "g/mL") - Q(0.0012, "g/mL")) * GRAVITY
    expected = lift * Q(diameter_um, "um").to("thou") ** 2 / (18 * Q(viscosity, "Pa*s").to("centipoise"))
    assert bubbles.stokes_m_s(diameter_um, viscosity, density) == near(expected, "m/s")


@UNHURRIED
@given(st.floats(1.0, 100.0), st.floats(1.0, 5000.0))
def test_laplace(tension, diameter_um):
    assert bubbles.laplace_pa(tension, diameter_um) == near(4 * Q(tension, "mN/m") / Q(diameter_um, "um"), "Pa")


@UNHURRIED
@given(st.floats(0.001, 10.0), densities)
def test_held_sphere(yield_pa, density):
    lift = (Q(density, "g/mL") - Q(0.0012, "g/mL")) * GRAVITY
    assert bubbles.held_by_yield_um(yield_pa, density) == near(3 * Q(yield_pa, "Pa") / (0.143 * lift), "um")


@UNHURRIED
@given(films, shares, densities)
def test_film(dry_um, solids, density):
    wet = Q(dry_um, "um").to("thou") / Q(solids, "percent")
    assert composition.wet_film_um(dry_um, solids) == near(wet, "um")
    assert composition.spreading_rate_m2_l(dry_um, solids) == near(1 / wet, "m^2/L")
    assert composition.consumption_g_m2(dry_um, solids, density) == near(wet * Q(density, "g/mL"), "g/m^2")


@UNHURRIED
@given(st.floats(0.0, 100.0), densities)
def test_volatiles(non_volatile, density):
    expected = (1 - Q(non_volatile, "percent").to("")) * Q(density, "g/mL")
    found = composition.voc_by_difference_g_l(non_volatile, 0.0, density)
    assert found == pytest.approx(expected.m_as("g/L"), rel=1e-9, abs=1e-9)


@UNHURRIED
@given(st.floats(0.0, 500.0), st.floats(0.0, 100.0), st.floats(0.0, 5000.0))
def test_cost_in_use(price, pct, consumption):
    found = composition.cost_in_use(price, pct, consumption)
    share = Q(price, "1/kg") * Q(pct, "percent")
    assert found.per_100_kg == near(share * Q(100, "kg"), "")
    assert found.per_m2 == near(share * Q(consumption, "g/m^2"), "1/m^2")


@UNHURRIED
@given(st.floats(0.0, 10.0), st.floats(-20.0, 100.0))
def test_carbon_dioxide(water_g, celsius):
    moles = Q(water_g, "g") / Q(2 * 9.008, "g/mol")
    volume = moles * Q(1, "molar_gas_constant") * Q(celsius + 273.15, "kelvin") / Q(1, "atm")
    assert stoichiometry.carbon_dioxide_ml(water_g, temperature_c=celsius) == near(volume, "mL")


@UNHURRIED
@given(st.floats(10.0, 5000.0))
def test_epoxide_content(equivalent):
    assert stoichiometry.epoxide_mol_kg(equivalent) == near(1 / Q(equivalent, "g/mol"), "mol/kg")


@UNHURRIED
@given(st.floats(0.0, 1e4), st.floats(0.0, 3.0), st.floats(0.05, 10.0))
def test_room(emission, loading, changes):
    expected = Q(emission, "ug/m^2/hour") * Q(loading, "m^2/m^3") / Q(changes, "1/hour")
    assert emissions.room_concentration_ug_m3(emission, loading, changes) == near(expected, "ug/m^3")


@UNHURRIED
@given(st.floats(1.0, 1000.0), st.floats(0.95, 1.0))
def test_pyknometer(water_g, water):
    assert air.pyknometer_ml(water_g, water) == near(Q(water_g, "g") / Q(water, "g/mL"), "mL")


@UNHURRIED
@given(st.floats(50.0, 5000.0))
def test_heat(equivalent_mass_g):
    expected = Q(105, "kJ") / Q(equivalent_mass_g, "g") / Q(2.0, "J/g/kelvin")
    assert cure.adiabatic_rise_k(equivalent_mass_g) == near(expected, "kelvin")
