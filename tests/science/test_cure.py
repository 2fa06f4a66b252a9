import pytest

from trials.science import cure


@pytest.mark.parametrize(
    ("call", "message"),
    [
        (lambda: cure.pot_life_min(0.0, 20.0, 30.0), "known_min must be above 0; got 0.0"),
        (lambda: cure.pot_life_min(60.0, -274.0, 30.0), "known_c .*got -274.0"),
        (lambda: cure.pot_life_min(60.0, 20.0, -300.0), "at_c .*got -300.0"),
        (lambda: cure.pot_life_min(60.0, 1e6, 20.0), "no finite answer for known_min=60.0, known_c=1000000.0"),
        (lambda: cure.adiabatic_rise_k(0.0), "equivalent_mass_g .*got 0.0"),
        (lambda: cure.adiabatic_rise_k(200.0, heat_kj_eq=-1.0), "heat_kj_eq .*got -1.0"),
    ],
)
def test_refusals(call, message):
    with pytest.raises(ValueError, match=message):
        call()


def test_inert_filler_takes_up_heat():
    assert cure.adiabatic_rise_k(2 * 232.6) == pytest.approx(cure.adiabatic_rise_k(232.6) / 2)
