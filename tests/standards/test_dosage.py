"""Dosage arithmetic.

The rules (what the per cent are of, whether the additive counts as part of the whole) are common practice,
no source. The numbers follow from the definition of a mass share and were worked out by hand to the digits
shown.
"""

import pint
import pytest

from tests.standards.printed import printed
from trials.science import dosage
from trials.science.dosage import ComponentMass

CUP = {"A": ComponentMass(1000.0, 400.0), "B": ComponentMass(250.0, 175.0)}


@pytest.mark.parametrize(
    ("basis", "counting", "grams"),
    [
        ("total", "on top", "6.2500"),
        ("total", "within", "6.281407"),
        ("component", "on top", "5.0000"),
        ("component", "within", "5.025126"),
    ],
)
def test_half_a_per_cent_on_each_basis_in_each_counting(basis, counting, grams):
    on = dosage.basis_g(basis, CUP, "A")
    assert dosage.additive_g(0.5, on, counting=counting) == printed(grams)


@pytest.mark.parametrize(
    ("dosage_pct", "on_top", "within"),
    [(0.1, "1.25", "1.251251"), (0.3, "3.75", "3.761284"), (1.0, "12.5", "12.626263")],
)
def test_grams_for_1250_g(dosage_pct, on_top, within):
    assert dosage.additive_g(dosage_pct, 1250.0) == printed(on_top)
    assert dosage.additive_g(dosage_pct, 1250.0, counting="within") == printed(within)


@pytest.mark.parametrize(
    ("on_top", "within"), [(0.1, "0.0999001"), (0.3, "0.299103"), (0.5, "0.497512"), (1.0, "0.990099")]
)
def test_on_top_is_less_than_it_says_as_a_true_mass_share(on_top, within):
    grams = dosage.additive_g(on_top, 1000.0)
    assert dosage.dosage_pct(grams, 1000.0, counting="within") == printed(within)
    assert dosage.recount_pct(on_top, to="within") == printed(within)


def test_a_dosage_on_a_restated_on_the_total():
    assert dosage.restate_pct(0.5, from_basis_g=100.0, to_basis_g=125.0) == printed("0.40")


def test_active_matter_at_forty_per_cent_strength():
    on_top = dosage.additive_g(0.2, 1250.0, active_pct=40.0)
    assert on_top == printed("6.25")
    assert dosage.dosage_pct(on_top, 1250.0) == printed("0.50")
    within = dosage.additive_g(0.2, 1250.0, counting="within", active_pct=40.0)
    assert within == printed("6.281407")
    assert 100.0 * within / (1250.0 + within) == printed("0.50")


def test_on_binder_solids():
    solids = dosage.basis_g("binder solids", CUP)
    assert solids == printed("575.0")  # 46 % of 1250 g
    assert dosage.additive_g(0.5, solids) == printed("2.875")
    assert dosage.restate_pct(0.5, from_basis_g=solids, to_basis_g=1250.0) == printed("0.23")


def test_share_needed_in_a_where_a_with_its_additive_is_80_per_cent_of_the_mix():
    assert dosage.pct_in_component(0.3, 80.0) == printed("0.375")


def test_top_up_from_0_2_to_0_5_per_cent():
    assert dosage.top_up_g(0.2, 0.5, 1000.0) == printed("3.0000")
    assert dosage.top_up_g(0.2, 0.5, 998.0, counting="within") == printed("3.015075")


def test_a_ten_per_cent_dilution_brings_its_carrier_along():
    diluted = dosage.dilution(dosage.additive_g(0.1, 200.0), 10.0)
    assert diluted.weighed_g == printed("2.000")
    assert diluted.carrier_g == printed("1.800")
    assert dosage.dosage_pct(diluted.carrier_g, 200.0) == printed("0.9")


@pytest.mark.parametrize(
    ("dosage_pct", "grams", "half_step"),
    [
        (0.1, "0.15", "3.33"),
        (0.2, "0.30", "1.67"),
        (0.3, "0.45", "1.11"),
        (0.5, "0.75", "0.67"),
        (0.8, "1.20", "0.42"),
    ],
)
def test_a_ladder_of_150_g_cups_on_a_centigram_balance(dosage_pct, grams, half_step):
    weighed = dosage.additive_g(dosage_pct, 150.0)
    assert weighed == printed(grams)
    assert dosage.half_step_pct(weighed, 0.01) == printed(half_step)


def test_the_blank_of_the_ladder_weighs_nothing():
    assert dosage.additive_g(0.0, 150.0) == 0.0
    assert dosage.additive_g(0.0, 150.0, counting="within", active_pct=40.0) == 0.0


@pytest.mark.parametrize(("counts", "grams"), [(True, "251.25"), (False, "250")])
def test_b_to_a_dosed_a(counts, grams):
    assert dosage.partner_g(1000.0, 100.0, 25.0, additive_g=5.0, additive_counts=counts) == printed(grams)


def test_ppm_against_pint():
    units = pint.UnitRegistry()
    assert dosage.pct_from_ppm(500.0) == printed("0.05")
    assert dosage.pct_from_ppm(500.0) == pytest.approx(units.Quantity(500, "ppm").m_as("percent"))


def test_additive_in_both_components_is_summed():
    in_a, in_b = 2.0, 1.75
    assert dosage.dosage_pct(in_a + in_b, 1250.0) == printed("0.3")
