from decimal import Decimal

import pytest

from trials.operations.acting import Refused
from trials.operations.equivalents import GroupEntry
from trials.operations.materials import add_material, change_material
from trials.queries.history import version

pytestmark = pytest.mark.django_db


@pytest.fixture
def material(bench):
    epoxide = GroupEntry("epoxide", "equivalent weight", Decimal(187))
    return add_material(actor=bench, groups=[epoxide], code="EP-104", name="Resin", function="binder")


def test_change_of_what_was_seen_is_written(bench, material):
    seen = version(material, parts=("groups",))
    change_material(actor=bench, material=material, seen=seen, name="Resin, clear")
    material.refresh_from_db()
    assert material.name == "Resin, clear"


def test_change_over_a_colleagues_is_refused_with_both_values(bench, colleague):
    material = add_material(actor=bench, code="EP-105", name="Resin", function="binder")
    seen = version(material, parts=("groups",))
    change_material(actor=colleague, material=material, name="Resin, filled")
    with pytest.raises(Refused, match=r"Bench Two changed this at .*Name: Resin became Resin, filled") as refused:
        change_material(actor=bench, material=material, seen=seen, name="Resin, clear")
    assert refused.value.field == "seen"
    material.refresh_from_db()
    assert material.name == "Resin, filled"


def test_change_of_a_part_counts(bench, colleague, material):
    seen = version(material, parts=("groups",))
    change_material(actor=colleague, material=material, groups=[])
    with pytest.raises(Refused, match=r"Reactive group epoxide removed"):
        change_material(actor=bench, material=material, seen=seen, name="Resin, clear")
