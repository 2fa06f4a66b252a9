import math

import pytest

from trials.science import stoichiometry as st


@pytest.mark.parametrize(
    ("call", "message"),
    [
        (lambda: st.equivalent_from_nco_pct(0.0), "nco_pct must be above 0; got 0.0"),
        (lambda: st.equivalent_from_nco_pct(101.0), "nco_pct .*got 101.0"),
        (lambda: st.equivalent_from_hydroxyl_value(-1.0), "mg_koh_g .*got -1.0"),
        (lambda: st.equivalent_from_amine_value(500.0, hydrogens_per_nitrogen=0), "hydrogens_per_nitrogen .*got 0"),
        (lambda: st.equivalent_from_amine_value(500.0, hydrogens_per_nitrogen=3), "hydrogens_per_nitrogen .*got 3"),
        (lambda: st.equivalent_of_blend([1.0], [0.0]), r"equivalent_g\[0\] must be above 0; got 0.0"),
        (lambda: st.equivalent_of_blend([1.0], [math.nan]), r"equivalent_g\[0\] must be a number; got nan"),
        (lambda: st.equivalent_of_blend([0.0], [100.0]), r"mass_g must add up"),
        (lambda: st.equivalent_of_blend([1.0, 1.0], [100.0]), "mass_g has 2, equivalent_g has 1"),
        (lambda: st.hardener_g(100.0, math.inf, 43.0), "resin_equivalent_g must be a finite number; got inf"),
        (lambda: st.hardener_g(100.0, 190.0, math.inf), "hardener_equivalent_g .*got inf"),
        (lambda: st.hardener_g(100.0, 190.0, 43.0, index=0.0), "index must be above 0; got 0.0"),
        (lambda: st.index(0.0, 190.0, 1.0, 43.0), "resin_g must be above 0; got 0.0"),
        (lambda: st.shift_pct(0.0, 1.0), "hardener_before_g must be above 0; got 0.0"),
        (lambda: st.epoxide_pct(40.0), "equivalent_g must be at least 43.045.*got 40.0"),
        (lambda: st.carbon_dioxide_ml(0.05, temperature_c=-300.0), "temperature_c .*got -300.0"),
        (lambda: st.carbon_dioxide_ml(-0.05), "water_g must not be negative; got -0.05"),
        (lambda: st.index_band("silicone"), "chemistry must be one of .*got 'silicone'"),
        (lambda: st.reacts("epoxy", "epoxy-amine"), "group must be one of .*got 'epoxy'"),
        (lambda: st.side("epoxide", "epoxy"), "chemistry must be one of .*got 'epoxy'"),
        (
            lambda: st.balance({"isocyanate": 1.0}, "polyurethane"),
            "resin equivalents of equivalents_by_group.*got 0.0",
        ),
        (lambda: st.balance({"epoxide": -1.0}, "epoxy-amine"), r"equivalents_by_group\['epoxide'\] .*got -1.0"),
        (lambda: st.balance({"olefin": 1.0}, "epoxy-amine"), "group .*got 'olefin'"),
    ],
)
def test_refusals(call, message):
    with pytest.raises(ValueError, match=message):
        call()


def test_a_blend_in_which_nothing_reacts():
    assert st.equivalent_of_blend([10.0, 5.0], [math.inf, math.inf]) == math.inf
    assert st.equivalent_of_blend([0.0, 5.0], [100.0, math.inf]) == math.inf


def test_a_resin_alone_has_index_nought():
    assert st.index(100.0, 190.0, 0.0, 43.0) == 0.0
    assert st.hardener_g(0.0, 190.0, 43.0) == 0.0


def test_every_band_rises_and_says_which_over_which():
    for chemistry in st.CHEMISTRIES:
        band = st.index_band(chemistry)
        assert band.low <= band.usual_low <= band.usual_high <= band.high
        over, under = band.over.split(" over ")
        assert st.side(over, chemistry) == "hardener"
        assert st.side(under, chemistry) == "resin"


def test_every_group_has_a_side_or_none_in_every_chemistry():
    for chemistry in st.CHEMISTRIES:
        for group in st.GROUPS:
            assert st.reacts(group, chemistry) is (st.side(group, chemistry) in {"resin", "hardener"})


def test_balance_of_an_epoxy_floor_with_a_polyol_carrier():
    found = st.balance({"epoxide": 0.5, "acrylate": 0.1, "amine hydrogen": 0.57, "hydroxyl": 0.2}, "epoxy-amine")
    assert found.index == pytest.approx(0.95)
    assert found.index_with_water == found.index
    assert found.inert == ("hydroxyl",)
    assert (found.numerator_eq, found.denominator_eq, found.water_eq) == (0.57, pytest.approx(0.6), 0.0)


def test_balance_keeps_water_apart():
    found = st.balance({"isocyanate": 1.05, "hydroxyl": 1.0, "water": 0.05}, "polyurethane")
    assert found.index == pytest.approx(1.05)
    assert found.index_with_water == pytest.approx(1.0)
    assert found.water_eq == 0.05


def test_water_is_inert_to_epoxide():
    assert st.balance({"epoxide": 1.0, "amine hydrogen": 1.0, "water": 1.0}, "epoxy-amine").inert == ("water",)
