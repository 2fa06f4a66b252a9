"""Time and heat of curing."""

import pytest

from tests.standards.printed import printed
from trials.science import cure


@pytest.mark.parametrize(("at_c", "minutes"), [(30.0, "30"), (20.0, "60"), (10.0, "120")])
def test_pot_life_halves_every_ten_degrees(at_c, minutes):
    # two makers of epoxy systems, public pages, names withheld: half for every 18 °F
    assert cure.pot_life_min(60.0, 20.0, at_c) == printed(minutes)


def test_heat_of_a_large_mass():
    # 105 kJ per equivalent and 2.0 J/(g·K) from memory; resin 190 with amine 42.6
    assert cure.adiabatic_rise_k(190.0 + 42.6, heat_kj_eq=105.0, heat_capacity_j_g_k=2.0) == printed("226")
