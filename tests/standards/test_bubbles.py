"""Bubbles and droplets. Textbook formulas, worked out by hand with g = 9.80665 m/s²; drag by fluids 1.3.1."""

import math

import pytest
from fluids.drag import drag_sphere, v_terminal
from scipy.integrate import quad

from tests.standards.printed import printed
from trials.science import bubbles

LIQUID = 1.1
THICKENING = {"growth_s": 1200.0, "gel_s": 2400.0}


@pytest.mark.parametrize(
    ("viscosity", "diameter", "rigid", "clean", "seconds"),
    [
        (1.0, 100.0, "5.986415e-6", "8.979542e-6", "334.1"),
        (1.0, 50.0, "1.496604e-6", "2.244885e-6", "1336.4"),
        (0.5, 200.0, "4.789132e-5", "7.183569e-5", "41.8"),
        (5.0, 500.0, "2.993208e-5", "4.489803e-5", "66.8"),
        (0.1, 20.0, "2.394566e-6", "3.591526e-6", "835.2"),
    ],
)
def test_rise_of_small_bubbles(viscosity, diameter, rigid, clean, seconds):
    speed = bubbles.stokes_m_s(diameter, viscosity, LIQUID)
    assert speed == printed(rigid)
    assert bubbles.stokes_m_s(diameter, viscosity, LIQUID, clean=True) == printed(clean)
    # fluids gives minus Stokes for any bubble asked about as it is
    assert -v_terminal(diameter * 1e-6, 1.2, 1100.0, viscosity) == pytest.approx(speed)
    across = bubbles.escape(diameter, 2000.0, viscosity, LIQUID, growth_s=math.inf, gel_s=math.inf)
    assert across.seconds == printed(seconds)


def test_doubled_diameter_and_doubled_viscosity():
    speed = bubbles.stokes_m_s(100.0, 1.0, LIQUID)
    assert bubbles.stokes_m_s(200.0, 1.0, LIQUID) == pytest.approx(4.0 * speed)
    assert bubbles.stokes_m_s(100.0, 2.0, LIQUID) == pytest.approx(0.5 * speed)


@pytest.mark.parametrize(
    ("reynolds", "drag", "ratio"),
    [(0.1, "242.658", "1.0111"), (0.5, "50.5546", "1.0532"), (1.0, "26.5363", "1.1057"), (10.0, "4.36543", "1.8189")],
)
def test_drag_behind_the_rise_leaves_stokes(reynolds, drag, ratio):
    # fluids 1.3.1, drag_sphere; the rise must obey the balance of drag and buoyancy at its own Reynolds number
    assert drag_sphere(reynolds) == printed(drag)
    assert drag_sphere(reynolds) * reynolds / 24.0 == printed(ratio)
    # a bubble of 1 mm whose viscosity is chosen so that it rises at this Reynolds number
    diameter, excess = 1e-3, (1100.0 - 1.2) / 1100.0
    speed = math.sqrt(4.0 * 9.80665 * diameter * excess / (3.0 * drag_sphere(reynolds)))
    viscosity = 1100.0 * speed * diameter / reynolds
    assert bubbles.rise_m_s(1000.0, viscosity, LIQUID) == pytest.approx(speed, rel=1e-6)


@pytest.mark.parametrize(
    ("diameter", "speed", "stokes", "reynolds"),
    [(1000.0, "5.95904e-3", "5.98642e-3", "0.0655"), (3000.0, "4.64112e-2", "5.38777e-2", "1.53")],
)
def test_rise_with_drag(diameter, speed, stokes, reynolds):
    found = bubbles.rise_m_s(diameter, 0.1, LIQUID)
    assert found == printed(speed)
    assert bubbles.stokes_m_s(diameter, 0.1, LIQUID) == printed(stokes)
    assert 1100.0 * found * diameter * 1e-6 / 0.1 == pytest.approx(float(reynolds), rel=0.01)


def test_the_library_call_that_the_rise_rests_on():
    # fluids documentation, v_terminal; and GPSA Engineering Data Book, 13th ed., example 7-1, which prints 0.46 ft/s
    assert v_terminal(D=70e-6, rhop=2600.0, rho=1000.0, mu=1e-3) == printed("0.004142497")
    foot, pound = 0.3048, 0.45359237
    per_cubic_foot = pound / foot**3
    gas = v_terminal(D=150e-6, rhop=31.2 * per_cubic_foot, rho=2.07 * per_cubic_foot, mu=1.2e-5)
    assert gas / foot == printed("0.449")
    assert gas / foot == pytest.approx(0.46, rel=0.03)


def test_film_whose_viscosity_grows():
    assert bubbles.stokes_m_s(100.0, 0.8, LIQUID) == printed("7.483019e-6")
    steady = bubbles.escape(100.0, 2000.0, 0.8, LIQUID, growth_s=math.inf, gel_s=2400.0)
    assert steady.seconds == printed("267.27")
    growing = bubbles.escape(100.0, 2000.0, 0.8, LIQUID, **THICKENING)
    assert growing.seconds == printed("302.36")
    assert growing.risen_by_gel_um / 1000.0 == printed("7.7644")
    limit = bubbles.escape(100.0, 2000.0, 0.8, LIQUID, growth_s=1200.0, gel_s=math.inf)
    assert limit.risen_by_gel_um / 1000.0 == printed("8.9796")


def test_rise_against_numerical_integration():
    # scipy 1.17.1, integrate.quad of the speed at the viscosity of each moment
    speed = bubbles.stokes_m_s(100.0, 0.8, LIQUID)
    expected, _ = quad(lambda t: 1e6 * speed * math.exp(-t / 1200.0), 0.0, 2400.0)
    assert bubbles.risen_um(2400.0, 100.0, 0.8, LIQUID, growth_s=1200.0) == pytest.approx(expected)


def test_bubble_that_gel_traps():
    steady = bubbles.escape(50.0, 2000.0, 0.8, LIQUID, growth_s=math.inf, gel_s=2400.0)
    assert steady.seconds == printed("1069.09")
    growing = bubbles.escape(50.0, 2000.0, 0.8, LIQUID, **THICKENING)
    assert growing.seconds == printed("2658.65")
    assert not growing.escapes
    assert growing.risen_by_gel_um / 1000.0 == printed("1.9411")


def test_bubble_that_never_gets_there():
    never = bubbles.escape(30.0, 2000.0, 0.8, LIQUID, growth_s=1200.0, gel_s=math.inf)
    assert never.seconds is None
    assert not never.escapes
    assert never.risen_by_gel_um / 1000.0 == printed("0.8082")


def test_smallest_bubble_to_escape():
    smallest = bubbles.smallest_escaping_um(2000.0, 0.8, LIQUID, **THICKENING)
    assert smallest == printed("50.753")
    assert bubbles.escape(smallest * 1.0001, 2000.0, 0.8, LIQUID, **THICKENING).escapes
    assert not bubbles.escape(smallest * 0.9999, 2000.0, 0.8, LIQUID, **THICKENING).escapes


@pytest.mark.parametrize(
    ("tension", "diameter", "pressure"),
    [(35.0, 100.0, "1400"), (35.0, 50.0, "2800"), (40.0, 10.0, "16000"), (30.0, 1000.0, "120")],
)
def test_laplace_pressure(tension, diameter, pressure):
    assert bubbles.laplace_pa(tension, diameter) == printed(pressure)


def test_growth_from_doubling():
    assert bubbles.growth_from_doubling_s(20.0 * 60.0) == printed("1731.23")


@pytest.mark.parametrize(
    ("liquid", "defoamer", "interface", "enters", "spreads", "bridges"),
    [
        # signs as in N. D. Denkov, Langmuir 20 (2004) 9463; the second does not spread and still bridges
        (35.0, 21.0, 5.0, "19", "9", "809"),
        (35.0, 21.0, 16.0, "30", "-2", "1040"),
        (72.8, 20.6, 40.0, "92.2", "12.2", "6475.48"),
        (30.0, 33.0, 2.0, "-1", "-5", "-185"),
        (30.0, 36.0, 2.0, "-4", "-8", "-392"),
    ],
)
def test_droplet_of_defoamer(liquid, defoamer, interface, enters, spreads, bridges):
    assert bubbles.entering(liquid, defoamer, interface) == printed(enters)
    assert bubbles.spreading(liquid, defoamer, interface) == printed(spreads)
    assert bubbles.bridging(liquid, defoamer, interface) == printed(bridges)


def test_yield_value_that_holds_a_sphere():
    # A. N. Beris et al., J. Fluid Mech. 158 (1985) 219: at rest where 2π·r²·τ over the buoyancy is 0.143 or more;
    # concrete science writes the same as d = 18 to 21·τ/(Δρ·g) (from memory)
    held = bubbles.held_by_yield_um(1.0, LIQUID) * 1e-6
    buoyancy = math.pi / 6.0 * held**3 * (1100.0 - 1.2) * 9.80665
    assert 2.0 * math.pi * (held / 2.0) ** 2 * 1.0 / buoyancy == printed("0.143")
    assert held * (1100.0 - 1.2) * 9.80665 == printed("21")
