from decimal import Decimal

import pghistory
import pytest
from django.apps import apps
from django.db import connection
from django.db.models import Model
from django.test.utils import CaptureQueriesContext

from trials.models import Base, Candidate, Lot, Paper, RawMaterial, ReactiveGroup
from trials.queries.history import what_changed

pytestmark = pytest.mark.django_db


def _material(code="EP-104", **more):
    return RawMaterial.objects.create(code=code, name="Resin", function="binder", **more)


def _set(record, **values):
    with pghistory.context(person=1, by="Mara Lind"):
        type(record).objects.filter(pk=record.pk).update(**values)


def test_changed_fields_stand_newest_first_with_before_after_and_who():
    material = _material(density_g_ml=Decimal("1.16"))
    _set(material, density_g_ml=Decimal("1.17"), function="hardener")
    _set(material, withdrawn=True)
    changes = what_changed(material)
    assert [(change.who, change.changes) for change in changes] == [
        ("Mara Lind", (("No longer used", False, True),)),
        (
            "Mara Lind",
            (("Function", "binder", "hardener"), ("Density, g/mL", Decimal("1.16"), Decimal("1.17"))),
        ),
        ("not named", ()),
    ]
    assert changes[-1].what == "Raw material EP-104 added"


def test_rows_that_hang_on_the_record_are_told_even_when_they_are_gone():
    material, other = _material(), _material("EP-105")
    group = ReactiveGroup.objects.create(
        material=material, group="epoxide", entered=Decimal(190), equivalent_g=Decimal(190)
    )
    Paper.objects.create(material=other, subject="emissions", title="of another material")
    _set(group, equivalent_g=Decimal(187))
    group.delete()
    changes = what_changed(material, parts=("groups", "papers"))
    assert [(change.what, change.changes) for change in changes] == [
        ("Reactive group epoxide removed", ()),
        (
            "Reactive group epoxide changed",
            (("reactive group epoxide: equivalent weight, g/eq", Decimal(190), Decimal(187)),),
        ),
        ("Reactive group epoxide added", ()),
        ("Raw material EP-104 added", ()),
    ]


def test_last_change_within_the_limit_is_compared_with_the_one_before_it():
    material = _material()
    _set(material, name="Resin, clear")
    _set(material, name="Resin, filled")
    assert [change.changes for change in what_changed(material, limit=1)] == [
        (("Name", "Resin, clear", "Resin, filled"),)
    ]


def test_what_a_field_points_to_is_named(bench, colleague):
    base = Base.objects.create(
        code="B-1", name="Floor", chemistry="epoxy-amine", field="floor", kind="recipe", owner=bench
    )
    _set(base, owner=colleague)
    assert what_changed(base)[0].changes == (("Owner", "Bench One", "Bench Two"),)


def test_whatever_a_field_points_to_has_a_name():
    models = [
        model for model in apps.get_app_config("trials").get_models() if not hasattr(model, "pgh_tracked_model")
    ]
    pointed = {field.related_model for model in models for field in model._meta.concrete_fields if field.is_relation}
    assert Candidate in pointed
    assert [model.__name__ for model in pointed if model.__str__ is Model.__str__] == []


@pytest.mark.parametrize("times", [1, 3])
def test_one_query_per_model(times):
    material = _material()
    lot = Lot.objects.create(material=material, number="22-1")
    other = Lot.objects.create(material=material, number="22-2")
    for turn in range(times):
        _set(material, name=f"Resin {turn}")
        _set(lot, water_pct=Decimal(turn))
    with CaptureQueriesContext(
        connection,
    ) as queries:
        changes = what_changed(material, lot, other)
    assert len(queries) == 2
    assert len(changes) == 3 + 2 * times
