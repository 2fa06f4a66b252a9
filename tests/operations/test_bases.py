from decimal import Decimal

import pytest
from django.core.exceptions import PermissionDenied
from django.db import IntegrityError, connection, transaction

from tests.making import NOW, make_epoxy_base, make_material
from trials.models import Base, Line, Lot, RawMaterial
from trials.operations.acting import Refused
from trials.operations.bases import (
    ComponentEntry,
    LineEntry,
    add_base,
    change_base,
    copy_base,
    copy_revision,
    entries,
    freeze_revision,
    measure_revision,
    share_base,
    write_recipe,
)
from trials.queries.bases import base_sheet, load_revision

pytestmark = pytest.mark.django_db


def test_reader_may_not_write(reader):
    with pytest.raises(PermissionDenied):
        make_epoxy_base(reader)
    assert not Base.objects.exists()


def test_recipe_is_replaced_as_typed(bench):
    revision = make_epoxy_base(bench)
    resin = RawMaterial.objects.get(code="EP-F1-R")
    write_recipe(
        actor=bench,
        revision=revision,
        components=(ComponentEntry("A", Decimal("99.50"), lines=(LineEntry(resin, Decimal("0.30")),)),),
    )
    line = Line.objects.get()
    assert (str(line.parts), str(line.component.parts), line.component.letter) == ("0.30", "99.50", "A")


def test_code_twice_is_refused_by_name(bench):
    make_epoxy_base(bench)
    with pytest.raises(Refused, match="EP-F1"):
        add_base(actor=bench, now=NOW, code="EP-F1", name="x", chemistry="other", field="adhesive", kind="recipe")


def test_lot_of_another_material_is_refused(bench):
    revision = make_epoxy_base(bench)
    resin = RawMaterial.objects.get(code="EP-F1-R")
    other = Lot.objects.create(material=make_material("EP-9"), number="77")
    entry = ComponentEntry("A", Decimal(1), lines=(LineEntry(resin, Decimal(1), lot=other),))
    with pytest.raises(Refused, match="Lot 77 is not a lot of EP-F1-R"):
        write_recipe(actor=bench, revision=revision, components=(entry,))
    assert Line.objects.count() == 3


def test_black_box_takes_no_lines(bench):
    revision = make_epoxy_base(bench)
    Base.objects.update(kind="black box")
    revision.base.refresh_from_db()
    with pytest.raises(Refused, match="black box has no lines"):
        write_recipe(actor=bench, revision=revision, components=entries(revision))


def test_frozen_revision_keeps_its_figures(bench):
    revision = make_epoxy_base(bench)
    before = base_sheet(load_revision(bench, "EP-F1")).mix
    freeze_revision(actor=bench, now=NOW, revision=revision)
    RawMaterial.objects.update(density_g_ml=Decimal("9.9"), price_per_kg=Decimal(99))
    assert base_sheet(load_revision(bench, "EP-F1")).mix == before


def test_freezing_twice_is_freezing_once(bench):
    revision = make_epoxy_base(bench)
    first = freeze_revision(actor=bench, now=NOW, revision=revision)
    assert freeze_revision(actor=bench, now=NOW.replace(year=2027), revision=revision).frozen_at == first.frozen_at


@pytest.mark.parametrize(
    ("statement", "constraint"),
    [
        ("UPDATE trials_revision SET viscosity_mpa_s = 1", "revision_frozen"),
        ("DELETE FROM trials_revision", "revision_frozen"),
        ("UPDATE trials_component SET parts = 1", "component_frozen"),
        ("DELETE FROM trials_component", "component_frozen"),
        ("UPDATE trials_line SET parts = 1", "line_frozen"),
        ("DELETE FROM trials_line", "line_frozen"),
        (
            "INSERT INTO trials_component (revision_id, letter, name, parts, batch)"
            " SELECT id, 'C', '', 1, '' FROM trials_revision",
            "component_frozen",
        ),
    ],
)
def test_frozen_revision_is_frozen_against_sql(bench, statement, constraint):
    freeze_revision(actor=bench, now=NOW, revision=make_epoxy_base(bench))
    with pytest.raises(IntegrityError) as refused, transaction.atomic(), connection.cursor() as cursor:
        cursor.execute(statement)
    assert refused.value.__cause__.diag.constraint_name == constraint


def test_frozen_revision_is_refused_by_every_operation(bench):
    revision = freeze_revision(actor=bench, now=NOW, revision=make_epoxy_base(bench))
    with pytest.raises(Refused, match="frozen"):
        write_recipe(actor=bench, revision=revision, components=())
    with pytest.raises(Refused, match="frozen"):
        measure_revision(actor=bench, revision=revision, viscosity_mpa_s=Decimal(1))


def test_next_revision_has_the_recipe_and_nothing_measured(bench, colleague):
    revision = make_epoxy_base(bench)
    measure_revision(actor=bench, revision=revision, air_free_density_g_ml=Decimal("1.450"))
    freeze_revision(actor=bench, now=NOW, revision=revision)
    copy = copy_revision(actor=colleague, now=NOW, revision=revision, why="less quartz")
    assert (copy.number, copy.made_by, copy.air_free_density_g_ml, copy.frozen_at) == (2, colleague, None, None)
    assert entries(copy) == entries(revision)


def test_copied_base_stays_as_restricted(bench):
    revision = make_epoxy_base(bench, restricted=True)
    copy = copy_base(actor=bench, now=NOW, revision=revision, code="EP-F2", name="Floor two")
    assert copy.base.restricted
    assert entries(copy) == entries(revision)


def test_only_owner_or_supervisor_decides_who_sees(bench, colleague, supervisor):
    base = make_epoxy_base(bench).base
    with pytest.raises(Refused):
        change_base(actor=colleague, base=base, restricted=True)
    change_base(actor=supervisor, base=base, restricted=True)
    with pytest.raises(Refused):
        share_base(actor=colleague, base=base, people=[colleague])
    assert load_revision(colleague, "EP-F1") is None
    share_base(actor=bench, base=base, people=[colleague])
    assert load_revision(colleague, "EP-F1") is not None
    share_base(actor=bench, base=base, people=[])
    assert load_revision(colleague, "EP-F1") is None
