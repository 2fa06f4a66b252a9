"""Density, solids, volatile matter and film.

Numbers without a printed source follow from the formula named and were worked out by hand.
"""

import pint
import pytest

from tests.standards.printed import printed
from trials.science import composition

UNITS = pint.UnitRegistry()
LB_GAL = UNITS.Quantity(1, "lb/gal").m_as("g/L")


def voc_of_volumes(volumes, lb_gal):
    """g/L of a mix of volumes whose volatile content is printed in lb/gal: any density gives the same."""
    return composition.mixture_voc_g_l(volumes, [1.0] * len(volumes), [figure * LB_GAL / 10.0 for figure in lb_gal])


def test_density_of_a_filled_epoxy_coating():
    # Σm/Σ(m/ρ), ideal volumes; the mass-weighted mean, which is wrong, would give 1.7348
    mass = [500, 60, 300, 50, 5, 85]
    density = [1.16, 1.08, 2.65, 4.10, 1.00, 1.00]
    assert composition.mixture_density_g_ml(mass, density) == printed("1.424516")
    wrong = sum(m * d for m, d in zip(mass, density, strict=True)) / sum(mass)
    assert wrong == printed("1.7348")


def test_solids_density_and_volatiles_from_one_recipe():
    # worked by hand: non-volatile share of each line at the line's own density
    mass = [500, 60, 300, 50, 5, 85]
    density = [1.16, 1.08, 2.65, 4.1, 1.0, 0.87]
    non_volatile = [100, 100, 100, 100, 40, 0]
    voc = [100 - share for share in non_volatile]
    assert composition.volume_solids_pct(mass, density, non_volatile) == printed("85.910")
    assert composition.mixture_non_volatile_pct(mass, non_volatile) == printed("91.20")
    assert composition.mixture_density_g_ml(mass, density) == printed("1.399200")
    assert composition.mixture_voc_g_l(mass, density, voc) == printed("123.13")


def test_volatiles_by_difference():
    # (100 − NV − water)·ρ·10, ISO 11890-1 from memory
    assert composition.voc_by_difference_g_l(94.0, 0.5, 1.40) == printed("77.0")


def test_volatiles_of_a_waterborne_coating_as_is_and_less_water():
    # by hand; density of water at 23 °C 0.997537 kg/L
    as_is = composition.voc_by_difference_g_l(40.0, 52.0, 1.05)
    assert as_is == printed("84.0")
    less_water = composition.voc_less_water_kg_l(as_is / 1000.0, 0.52 * 1.05, water_density=0.997537)
    assert 1000.0 * less_water == printed("185.57")


def test_regulation_formula_with_an_exempt_compound():
    # A/(1 − B/0.995 − C/D), Code of Maryland Regulations COMAR 26.11.19.02; numbers by hand
    less = composition.voc_less_water_kg_l(0.10, 0.40, exempt_kg_l=0.05, exempt_density=0.79)
    assert less == printed("0.18702")


def test_two_components_by_volume():
    # Metal Finishing guidebook 2013, appendix B: 1 gal at 2.5 and a quart at 6.8 lb/gal
    assert voc_of_volumes([1.0, 0.25], [2.5, 6.8]) / LB_GAL == printed("3.36")


def test_two_components_by_volume_where_the_book_misprints():
    # Metal Finishing guidebook 2013, p. 817: 3 volumes at 3.1 and 1 at 1.8 lb/gal; it prints 2.75
    assert voc_of_volumes([3.0, 1.0], [3.1, 1.8]) / LB_GAL == printed("2.775")


def test_less_water_where_the_book_misprints():
    # Same page: 6 vol% solvent of 7.36 lb/gal, 52 vol% water, 42 vol% solids. It adds water in place of
    # solids in the denominator and prints 0.76; the formula gives 0.06/0.48·7.36 = 0.92
    solvent_kg_l = 0.06 * 7.36 * LB_GAL / 1000.0
    less = composition.voc_less_water_kg_l(solvent_kg_l, 0.52 * 0.995)
    assert 1000.0 * less / LB_GAL == printed("0.92")


def test_benzyl_alcohol_of_a_hardener_counted():
    # by hand; below 250 °C it counts under 2004/42/EC, although most stays in the film
    voc = composition.mixture_voc_g_l([100.0, 20.0], [1.45, 1.00], [0.0, 8.0])
    assert voc == printed("17.98")


def test_pounds_per_gallon_with_pint():
    assert printed("119.8264") == LB_GAL  # 119.83 is the figure printed in VOC guides
    assert voc_of_volumes([1.0], [2.1]) == printed("251.64")
    assert voc_of_volumes([1.0], [3.5]) == printed("419.39")


def test_volume_ratio_of_a_mass_ratio():
    # by hand: 100 g of 1.45 g/mL to 18 g of 1.02 g/mL
    assert composition.volume_ratio(100.0, 1.45, 18.0, 1.02) == printed("3.908")


def test_wet_film():
    # dry film·100/volume solids, by hand
    assert composition.wet_film_um(100.0, 65.0) == printed("153.85")


def test_spreading_rate():
    # coverage sheet (scribd 343849341), worked example: 65 % at 125 µm. Its formula misprints 100 for 1000
    assert composition.spreading_rate_m2_l(125.0, 65.0) == printed("5.2")


def test_spreading_rate_in_feet_and_gallons():
    # 1604 ft²·mil/gal is the figure of American coverage sheets, 231 in³/144 in²/0.001 in = 1604.17 exactly.
    # `thou` is the film unit: pint's `mil` is an angle.
    thou = UNITS.Quantity(1, "thou").m_as("micrometer")
    assert thou == printed("25.4")
    rate = UNITS.Quantity(composition.spreading_rate_m2_l(5.0 * thou, 65.0), "m^2/L").m_as("ft^2/gal")
    assert rate == printed("208.54")
    assert rate == pytest.approx(1604.0 * 0.65 / 5.0, rel=2e-4)
    assert printed("208.52") == 1604.0 * 0.65 / 5.0


def test_consumption_of_a_floor_coat():
    # by hand; a loss of 10 % divides by 0.9
    assert composition.consumption_g_m2(2000.0, 100.0, 1.45) == printed("2900")
    assert composition.consumption_g_m2(2000.0, 100.0, 1.45, loss_pct=10.0) == printed("3222")


def test_consumption_with_solvent():
    assert composition.consumption_g_m2(150.0, 70.0, 1.35) == printed("289.29")
    assert composition.consumption_g_m2(150.0, 70.0, 1.35, loss_pct=30.0) == printed("413.27")


def test_cost_in_use():
    # by hand: 18.50 a kilogram at 0.3 % is 5.55 for 100 kg, and 2.9 kg/m² takes 8.7 g of it
    cost = composition.cost_in_use(18.50, 0.3, 2900.0)
    assert cost.per_100_kg == printed("5.55")
    assert cost.per_m2 == printed("0.16095")


def test_pigment_volume_concentration_of_the_filled_coating():
    # V_p/(V_p + V_b) by hand: 300 g of 2.65 and 50 g of 4.10 g/mL in 500 g of 1.16 and 60 g of 1.08 g/mL
    pigment, binder = 300 / 2.65 + 50 / 4.10, 500 / 1.16 + 60 / 1.08
    assert composition.pigment_volume_concentration_pct(pigment, binder) == printed("20.49")
