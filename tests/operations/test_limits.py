from decimal import Decimal

import pytest

from trials.models import Candidate, Lot, RawMaterial
from trials.operations.acting import Refused
from trials.operations.limits import bounds, hold_to_limits, impossible


def _material(**more):
    return RawMaterial(**{"code": "EP-104", "name": "Resin", "function": "binder", **more})


def test_bounds_are_those_of_the_constraints():
    assert {name: str(allowed) for name, allowed in bounds(Lot).items()} == {
        "density_g_ml": "above 0",
        "certificate_value": "above 0",
        "equivalent_g": "above 0",
        "non_volatile_pct": "from 0 to 100",
        "water_pct": "from 0 to 100",
        "on_hand_kg": "0 or more",
    }


def test_conditions_over_two_fields_are_no_bounds():
    assert str(bounds(Candidate)["to_pct"]) == "above 0"


@pytest.mark.parametrize(
    ("values", "told"),
    [
        ({}, []),
        ({"density_g_ml": Decimal("1.16"), "voc_pct": Decimal(0), "non_volatile_pct": Decimal(100)}, []),
        ({"density_g_ml": Decimal(0)}, [("density_g_ml", "Density must be above 0; got 0 g/mL.")]),
        ({"voc_pct": Decimal("100.1")}, [("voc_pct", "VOC must be from 0 to 100; got 100.1 %.")]),
        ({"price_per_kg": Decimal(-1)}, [("price_per_kg", "Price must be 0 or more; got -1.")]),
        (
            {"density_g_ml": Decimal(-1), "active_pct": Decimal(-2)},
            [
                ("density_g_ml", "Density must be above 0; got -1 g/mL."),
                ("active_pct", "Active content must be from 0 to 100; got -2 %."),
            ],
        ),
    ],
)
def test_every_impossible_number_is_told(values, told):
    assert list(impossible(_material(**values))) == told


@pytest.mark.parametrize(
    ("values", "field"),
    [
        ({"function": "glue"}, "function"),
        ({"name": "x" * 121}, "name"),
        ({"name": ""}, "name"),
        ({"density_g_ml": "much"}, "density_g_ml"),
        ({"density_g_ml": Decimal("NaN")}, "density_g_ml"),
        ({"density_g_ml": Decimal("Infinity")}, "density_g_ml"),
        ({"density_g_ml": Decimal(-3)}, "density_g_ml"),
    ],
)
def test_refusal_names_field_and_value(values, field):
    with pytest.raises(Refused) as refused:
        hold_to_limits(_material(**values))
    assert refused.value.field == field
    assert str(values[field]) in refused.value.message
