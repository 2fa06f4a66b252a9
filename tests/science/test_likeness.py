import pytest

from trials.science.likeness import nearest

ASKED = {"binder": "epoxy", "density_g_ml": 1.2, "viscosity_pa_s": 1.0}
EVEN = dict.fromkeys(ASKED, 1.0)


def test_the_same_base_is_at_no_distance():
    (found,) = nearest({"K1": dict(ASKED)}, ASKED, weights=EVEN)
    assert found.distance == 0.0
    assert found.by_property == {"binder": 0.0, "density_g_ml": 0.0, "viscosity_pa_s": 0.0}
    assert found.unknown == ()


def test_unknown_is_neither_like_nor_unlike():
    bases = {"nothing known": {}, "alike": dict(ASKED), "unlike": {"binder": "polyurethane", "density_g_ml": 2.0}}
    found = nearest(bases, ASKED, weights={"binder": 1.0, "density_g_ml": 1.0})
    assert [one.base for one in found] == ["alike", "nothing known", "unlike"]
    assert found[1].distance == 0.5
    assert found[1].by_property == {"binder": None, "density_g_ml": None}
    assert found[1].unknown == ("binder", "density_g_ml")


def test_unknown_of_the_one_that_is_asked_about():
    (found,) = nearest({"K1": dict(ASKED)}, {"binder": "epoxy", "density_g_ml": None}, weights=EVEN)
    assert found.unknown == ("density_g_ml", "viscosity_pa_s")


def test_a_property_without_weight_is_shown_and_does_not_count():
    (found,) = nearest(
        {"K1": {**ASKED, "binder": "vinyl ester"}}, ASKED, weights={"binder": 0.0, "density_g_ml": 1.0}
    )
    assert found.distance == 0.0
    assert found.by_property["binder"] == 1.0


def test_decades_are_compared_by_their_ratio():
    bases = {"K1": {"viscosity_pa_s": 0.1}, "K2": {"viscosity_pa_s": 10.0}, "K3": {"viscosity_pa_s": 1000.0}}
    found = nearest(bases, {"viscosity_pa_s": 1.0}, weights={"viscosity_pa_s": 1.0}, by_ratio={"viscosity_pa_s"})
    assert [round(one.distance, 6) for one in found] == [0.25, 0.25, 0.75]


def test_equally_far_keep_their_order():
    bases = {key: {"binder": "epoxy"} for key in "CAB"}
    assert [one.base for one in nearest(bases, ASKED, weights=EVEN)] == ["C", "A", "B"]


def test_yes_and_no_are_words():
    bases = {"K1": {"clear": True}, "K2": {"clear": False}}
    found = nearest(bases, {"clear": False}, weights={"clear": 1.0})
    assert [(one.base, one.distance) for one in found] == [("K2", 0.0), ("K1", 1.0)]


def test_no_bases():
    assert nearest({}, ASKED, weights=EVEN) == ()


@pytest.mark.parametrize(
    ("bases", "weights", "options", "message"),
    [
        ({}, {}, {}, "weights must add up"),
        ({}, {"binder": -1.0}, {}, r"weights\['binder'\] .*got -1.0"),
        ({"K1": {"density_g_ml": "heavy"}}, EVEN, {}, r"bases\['K1'\]\['density_g_ml'\] .*got 'heavy'"),
        ({"K1": {"density_g_ml": float("inf")}}, EVEN, {}, r"bases\['K1'\]\['density_g_ml'\] .*got inf"),
        ({"K1": {"density_g_ml": 0}}, EVEN, {"by_ratio": {"density_g_ml"}}, r"\['density_g_ml'\] .*above 0; got 0"),
    ],
)
def test_refusals(bases, weights, options, message):
    with pytest.raises(ValueError, match=message):
        nearest(bases, ASKED, weights=weights, **options)
