import pytest

from trials.science import emissions


@pytest.mark.parametrize(
    ("call", "message"),
    [
        (lambda: emissions.risk_index([1.0], [1.0, 2.0]), "concentrations_ug_m3 has 1, limits_ug_m3 has 2"),
        (lambda: emissions.risk_index([-1.0], [1.0]), r"concentrations_ug_m3\[0\] .*got -1.0"),
        (lambda: emissions.risk_index([1.0], [0.0]), r"limits_ug_m3\[0\] must be above 0; got 0.0"),
        (lambda: emissions.risk_index([1.0], [1.0], smallest_ug_m3=-5.0), "smallest_ug_m3 .*got -5.0"),
        (lambda: emissions.room_concentration_ug_m3(250.0, 0.4, 0.0), "air_change_per_h .*got 0.0"),
        (lambda: emissions.above({"SVOC": -0.1}, {"SVOC": 0.1}), r"values\['SVOC'\] .*got -0.1"),
        (lambda: emissions.above({"SVOC": 0.1}, {"SVOC": float("nan")}), r"limits\['SVOC'\] .*nan"),
    ],
)
def test_refusals(call, message):
    with pytest.raises(ValueError, match=message):
        call()


def test_nothing_found():
    assert emissions.risk_index([], []) == 0.0
    assert emissions.above({}, {"TVOC": 1.0}) == ()


def test_at_the_limit_is_not_above_it():
    assert emissions.above({"TVOC": 1.0}, {"TVOC": 1.0}) == ()


def test_names_without_a_partner_are_passed_over():
    assert emissions.above({"TVOC": 2.0, "own": 9.0}, {"TVOC": 1.0, "SVOC": 0.1}) == ("TVOC",)
