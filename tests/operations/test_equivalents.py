"""Worked values stand with the formulas in tests/standards; here is what a person may enter and what not."""

from decimal import Decimal

import pytest

from trials.operations.acting import Refused
from trials.operations.equivalents import GroupEntry, equivalent_g


@pytest.mark.parametrize(
    ("entry", "expected"),
    [
        (GroupEntry("epoxide", "equivalent weight", Decimal("187.0")), "187.0"),
        # 4200 / 31 = 135.4838…; 56100 / 112 = 500.892857; 56100 / 658.9 / 2 = 42.570952…
        (GroupEntry("isocyanate", "NCO content", Decimal(31)), "135.484"),
        (GroupEntry("hydroxyl", "hydroxyl value", Decimal(112)), "500.893"),
        (GroupEntry("amine hydrogen", "amine value", Decimal("658.9"), Decimal(2)), "42.571"),
        (GroupEntry("aspartate amine", "amine value", Decimal(200), Decimal(1)), "280.5"),
    ],
)
def test_entry_amounts_to_an_equivalent_weight(entry, expected):
    assert str(equivalent_g(entry)) == expected


@pytest.mark.parametrize(
    ("entry", "field", "value"),
    [
        (GroupEntry("epoxide", "NCO content", Decimal(31)), "entered_as", "epoxide"),
        (GroupEntry("isocyanate", "hydroxyl value", Decimal(31)), "entered_as", "isocyanate"),
        (GroupEntry("amine hydrogen", "amine value", Decimal(600)), "hydrogens_per_nitrogen", "600"),
        (GroupEntry("amine hydrogen", "amine value", Decimal(600), Decimal(3)), "hydrogens_per_nitrogen", "3"),
        (GroupEntry("amine hydrogen", "amine value", Decimal(600), Decimal(0)), "hydrogens_per_nitrogen", "0"),
        (GroupEntry("hydroxyl", "hydroxyl value", Decimal(112), Decimal(2)), "hydrogens_per_nitrogen", "2"),
        (GroupEntry("isocyanate", "NCO content", Decimal(140)), "entered", "140"),
        (GroupEntry("isocyanate", "NCO content", Decimal(0)), "entered", "0"),
        (GroupEntry("epoxide", "equivalent weight", Decimal(-187)), "entered", "-187"),
    ],
)
def test_entry_that_cannot_be_is_refused_at_its_field(entry, field, value):
    with pytest.raises(Refused) as refused:
        equivalent_g(entry)
    assert refused.value.field == field
    assert value in refused.value.message
