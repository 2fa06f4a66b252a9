"""Bases with their revisions, each made and measured by the person whom its row names."""

from trials.models import Revision
from trials.operations.bases import (
    ComponentEntry,
    LineEntry,
    add_base,
    copy_revision,
    measure_revision,
    share_base,
    write_recipe,
)

from .base_rows import BaseRow, ComponentRow, LineRow, RevisionRow
from .bases import BASES
from .laboratory import Laboratory, number


def set_up_bases(laboratory: Laboratory) -> str:
    for row in BASES:
        _add_base(laboratory, row)
    return f"{len(BASES)} bases in {len(laboratory.revisions)} revisions"


def _add_base(laboratory, row: BaseRow) -> None:
    first, *later = row.revisions
    owner = laboratory.people[first.by]
    revision = add_base(
        actor=owner,
        now=laboratory.days.at(first.ago, first.clock),
        components=_components(laboratory, first),
        code=row.code,
        name=row.name,
        chemistry=row.chemistry,
        field=row.field,
        kind="black box" if row.black_box else "recipe",
        film_um=number(row.film_um),
        additive=row.additive,
        additive_note=row.additive_note,
        remarks=row.remarks,
        restricted=row.shared is not None,
    )
    if row.shared is not None:
        share_base(actor=owner, base=revision.base, people=[laboratory.people[name] for name in row.shared])
    _measure(laboratory, row, first, revision)
    for made in later:
        revision = _next_revision(laboratory, made, revision)
        _measure(laboratory, row, made, revision)


def _next_revision(laboratory, row: RevisionRow, before: Revision) -> Revision:
    actor = laboratory.people[row.by]
    revision = copy_revision(actor=actor, now=laboratory.days.at(row.ago, row.clock), revision=before, why=row.why)
    return write_recipe(actor=actor, revision=revision, components=_components(laboratory, row))


def _measure(laboratory, base: BaseRow, row: RevisionRow, revision: Revision) -> None:
    measured = {name: text if name == "air_free_method" else number(text) for name, text in row.measured.items()}
    laboratory.revisions[base.code, revision.number] = measure_revision(
        actor=laboratory.people[row.by], revision=revision, **measured
    )


def _components(laboratory, row: RevisionRow) -> tuple[ComponentEntry, ...]:
    return tuple(_component(laboratory, component) for component in row.components)


def _component(laboratory, row: ComponentRow) -> ComponentEntry:
    return ComponentEntry(
        letter=row.letter,
        parts=number(row.parts),
        name=row.name,
        density_g_ml=number(row.density),
        viscosity_mpa_s=number(row.viscosity),
        non_volatile_pct=number(row.non_volatile),
        water_pct=number(row.water),
        batch=row.batch,
        received=None if row.received is None else laboratory.days.workday(row.received),
        lines=tuple(_line(laboratory, line) for line in row.rows()),
    )


def _line(laboratory, row: LineRow) -> LineEntry:
    return LineEntry(
        material=laboratory.materials[row.code],
        parts=number(row.parts),
        stage=row.stage,
        lot=laboratory.lots[row.code, row.lot] if row.lot else None,
    )
