"""Writing about bases: recipe or black box, revisions, copies, and the freeze once something was made from one."""

from dataclasses import dataclass
from datetime import date, datetime
from decimal import Decimal

from django.db.models import Max

from trials.access import may_restrict
from trials.models import Base, BaseShare, Component, Line, Lot, Person, RawMaterial, Revision
from trials.models.bases import Kind
from trials.queries.facts import held

from .acting import Refused, assign, operation


@dataclass(frozen=True, slots=True)
class LineEntry:
    """So many parts of a material, as typed on a line of a recipe."""

    material: RawMaterial
    parts: Decimal
    stage: str = ""
    lot: Lot | None = None


@dataclass(frozen=True, slots=True)
class ComponentEntry:
    """A component as typed: with lines it is a recipe, without it is a black box and its own figures count."""

    letter: str
    parts: Decimal
    name: str = ""
    density_g_ml: Decimal | None = None
    viscosity_mpa_s: Decimal | None = None
    non_volatile_pct: Decimal | None = None
    water_pct: Decimal | None = None
    batch: str = ""
    received: date | None = None
    lines: tuple[LineEntry, ...] = ()


@operation()
def add_base(*, actor: Person, now: datetime, components: tuple[ComponentEntry, ...] = (), **values) -> Revision:
    """A base with its first revision; ``components`` may be given at once or written later."""
    base = assign(Base(owner=actor), values)
    base.save()
    return _new_revision(base, actor=actor, now=now, number=1, why="first", components=components)


@operation()
def change_base(*, actor: Person, base: Base, **values) -> Base:
    """Change what the base is called and for; who sees it only by its owner or a supervisor."""
    if values.get("restricted", base.restricted) != base.restricted and not may_restrict(actor, base):
        raise Refused("Only the owner of a base or a supervisor decides who sees it.", field="restricted")
    assign(base, values)
    base.save()
    return base


@operation()
def share_base(*, actor: Person, base: Base, people: list[Person]) -> None:
    """Name the people who may see a restricted base."""
    if not may_restrict(actor, base):
        raise Refused("Only the owner of a base or a supervisor decides who sees it.", field="people")
    BaseShare.objects.filter(base=base).exclude(person__in=people).delete()
    named = set(BaseShare.objects.filter(base=base).values_list("person", flat=True))
    BaseShare.objects.bulk_create(BaseShare(base=base, person=person) for person in people if person.pk not in named)


@operation()
def write_recipe(*, actor: Person, revision: Revision, components: tuple[ComponentEntry, ...]) -> Revision:
    """Replace the components of a revision that is not frozen by what was typed."""
    _refuse_frozen(revision)
    _check(revision.base, components)
    typed = {entry.letter for entry in components}
    revision.components.exclude(letter__in=typed).delete()
    standing = {component.letter: component for component in revision.components.all()}
    for entry in components:
        _write_component(revision, entry, standing.get(entry.letter))
    return revision


@operation()
def measure_revision(*, actor: Person, revision: Revision, **values) -> Revision:
    """Note why the revision was made and what was measured on its mix."""
    _refuse_frozen(revision)
    assign(revision, values)
    revision.save()
    return revision


@operation()
def copy_revision(*, actor: Person, now: datetime, revision: Revision, why: str) -> Revision:
    """The next revision of the same base: same recipe, nothing measured yet."""
    if not why.strip():
        raise Refused("Say why there is a new revision.", field="why")
    base = Base.objects.select_for_update().get(pk=revision.base_id)
    number = 1 + base.revisions.aggregate(last=Max("number"))["last"]
    return _new_revision(base, actor=actor, now=now, number=number, why=why, components=entries(revision))


@operation()
def copy_base(*, actor: Person, now: datetime, revision: Revision, code: str, name: str) -> Revision:
    """A base of its own that starts from this revision; as restricted as the one it was copied from."""
    old = revision.base
    kept = ("chemistry", "field", "kind", "film_um", "additive", "additive_note", "restricted")
    base = Base(owner=actor, code=code, name=name, **{field: getattr(old, field) for field in kept})
    base.save()
    why = f"copied from {old.code} revision {revision.number}"
    return _new_revision(base, actor=actor, now=now, number=1, why=why, components=entries(revision))


@operation()
def freeze_revision(*, actor: Person, now: datetime, revision: Revision) -> Revision:
    """Hold every line's figures as they are now; from here on the revision does not change. Twice is once."""
    revision = Revision.objects.select_for_update().get(pk=revision.pk)
    if revision.frozen_at is not None:
        return revision
    lines = Line.objects.filter(component__revision=revision).select_related("material", "lot")
    rows = list(lines.prefetch_related("material__groups"))
    for line in rows:
        line.held = held(line)
    Line.objects.bulk_update(rows, ["held"])
    revision.frozen_at = now
    revision.save(update_fields=["frozen_at"])
    return revision


def entries(revision: Revision) -> tuple[ComponentEntry, ...]:
    """What would have to be typed to get this recipe again."""
    components = revision.components.order_by("letter").prefetch_related("lines__material", "lines__lot")
    return tuple(_entry(component) for component in components)


def _entry(component: Component) -> ComponentEntry:
    lines = sorted(component.lines.all(), key=lambda line: (line.position, line.pk))
    return ComponentEntry(
        letter=component.letter,
        parts=component.parts,
        name=component.name,
        density_g_ml=component.density_g_ml,
        viscosity_mpa_s=component.viscosity_mpa_s,
        non_volatile_pct=component.non_volatile_pct,
        water_pct=component.water_pct,
        batch=component.batch,
        received=component.received,
        lines=tuple(LineEntry(line.material, line.parts, line.stage, line.lot) for line in lines),
    )


def _new_revision(base, *, actor, now, number, why, components) -> Revision:
    _check(base, components)
    revision = Revision.objects.create(base=base, number=number, why=why, made_by=actor, made_at=now)
    for entry in components:
        _write_component(revision, entry, None)
    return revision


def _refuse_frozen(revision: Revision) -> None:
    if revision.frozen_at is not None:
        raise Refused(f"Revision {revision.number} of {revision.base.code} is frozen: copy it, then change the copy.")


def _check(base: Base, components: tuple[ComponentEntry, ...]) -> None:
    letters = [entry.letter for entry in components]
    twice = {letter for letter in letters if letters.count(letter) > 1}
    if twice:
        raise Refused(f"Component {', '.join(sorted(twice))} is given twice.", field="letter")
    if base.kind == Kind.BLACK_BOX and any(entry.lines for entry in components):
        raise Refused("A black box has no lines: say “recipe” if they are known.", field="kind")
    for entry in components:
        for line in entry.lines:
            if line.lot and line.lot.material_id != line.material.pk:
                raise Refused(f"Lot {line.lot.number} is not a lot of {line.material.code}.", field="lot")


def _write_component(revision: Revision, entry: ComponentEntry, component: Component | None) -> None:
    component = component or Component(revision=revision, letter=entry.letter)
    names = (
        "name", "parts", "density_g_ml", "viscosity_mpa_s", "non_volatile_pct", "water_pct", "batch", "received",
    )  # fmt: skip
    assign(component, {name: getattr(entry, name) for name in names})
    component.save()
    component.lines.all().delete()
    Line.objects.bulk_create(
        Line(
            component=component,
            position=position,
            material=line.material,
            lot=line.lot,
            parts=line.parts,
            stage=line.stage,
        )
        for position, line in enumerate(entry.lines, 1)
    )
