"""Writing about raw materials: what they are, their reactive groups, lots and papers."""

import re
from collections.abc import Iterable

from trials.models import Lot, Paper, Person, RawMaterial, ReactiveGroup
from trials.science.hazards import statement

from .acting import Refused, assign, operation
from .equivalents import GroupEntry, equivalent_g, groups_of, lot_equivalent_g
from .limits import hold_to_limits
from .seen import refuse_unseen

# A code stands on lids, in addresses and behind "#": no spaces, nothing that a marker can't write.
CODE = re.compile(r"[A-Za-z0-9][A-Za-z0-9.\-]*")
RESERVED_CODES = ("new",)


@operation()
def add_material(*, actor: Person, groups: Iterable[GroupEntry] = (), **values) -> RawMaterial:
    material = assign(RawMaterial(), values)
    _check_material(material)
    material.save()
    _write_groups(material, groups)
    return material


@operation()
def change_material(
    *, actor: Person, material: RawMaterial, groups: Iterable[GroupEntry] | None = None, seen: str = "", **values
) -> RawMaterial:
    """Write the given fields only; ``groups`` replace what stands, None leaves it.

    ``seen`` is the version (with "groups") that was on the screen.
    """
    material = RawMaterial.objects.select_for_update().get(pk=material.pk)
    refuse_unseen(material, seen, parts=("groups",))
    assign(material, values)
    _check_material(material)
    if values:
        material.save(update_fields=list(values))
    if groups is not None:
        _write_groups(material, groups)
        _reckon_lots_again(material)
    return material


@operation()
def add_lot(*, actor: Person, material: RawMaterial, **values) -> Lot:
    lot = assign(Lot(material=material), values)
    _check_lot(lot)
    lot.save()
    return lot


@operation()
def change_lot(*, actor: Person, lot: Lot, seen: str = "", **values) -> Lot:
    """Write the given fields only; the equivalent weight follows the certificate."""
    lot = Lot.objects.select_for_update(of=["self"]).select_related("material").get(pk=lot.pk)
    refuse_unseen(lot, seen)
    assign(lot, values)
    _check_lot(lot)
    lot.save(update_fields=[*values, "equivalent_g"])
    return lot


@operation()
def add_paper(*, actor: Person, material: RawMaterial, **values) -> Paper:
    paper = assign(Paper(material=material), values)
    _check_paper(paper)
    paper.save()
    return paper


@operation()
def change_paper(*, actor: Person, paper: Paper, seen: str = "", **values) -> Paper:
    paper = Paper.objects.select_for_update().get(pk=paper.pk)
    refuse_unseen(paper, seen)
    assign(paper, values)
    _check_paper(paper)
    if values:
        paper.save(update_fields=list(values))
    return paper


@operation()
def remove_paper(*, actor: Person, paper: Paper) -> None:
    """Take a paper off its material; what it said stays in the history."""
    paper.delete()


def known_hazards(codes: Iterable[str]) -> list[str]:
    """Codes as the record keeps them: combined ones apart, each once, in order.

    Raises
    ------
    Refused
        If a code is not in the open system; the message names it.
    """
    single = {part.strip() for code in codes for part in code.split("+") if part.strip()}
    for code in sorted(single):
        try:
            statement(code)
        except ValueError as error:
            raise Refused(f"“{code}” is no hazard statement that is known here.", field="hazards") from error
    return sorted(single)


def free_code(code: str, *, besides: RawMaterial) -> str:
    """A code that can be written on a lid and that no other material has.

    Raises
    ------
    Refused
        With the code, and whose it is.
    """
    if not CODE.fullmatch(code) or code.lower() in RESERVED_CODES:
        raise Refused(f"“{code}” can't be a code: letters, digits, hyphen and full stop, as in EP-104.", field="code")
    taken = RawMaterial.objects.filter(code__iexact=code).exclude(pk=besides.pk).first()
    if taken:
        raise Refused(f"The code {taken.code} is taken: {taken.name}.", field="code")
    return code


def _check_material(material: RawMaterial) -> None:
    material.hazards = known_hazards(material.hazards)
    free_code(material.code, besides=material)
    hold_to_limits(material)


def _check_lot(lot: Lot) -> None:
    hold_to_limits(lot)
    lot.equivalent_g = lot_equivalent_g(lot, groups_of(lot.material))
    _refuse_disorder(lot, "received", "expires")
    if Lot.objects.filter(material=lot.material, number__iexact=lot.number).exclude(pk=lot.pk).exists():
        raise Refused(f"{lot.material.code} has a lot {lot.number} already.", field="number")


def _check_paper(paper: Paper) -> None:
    hold_to_limits(paper)
    _refuse_disorder(paper, "issued", "expires")


def _refuse_disorder(record, first: str, last: str) -> None:
    earlier, later = getattr(record, first), getattr(record, last)
    if earlier and later and later < earlier:
        raise Refused(f"{last.capitalize()} on {later}, before it was {first} on {earlier}.", field=last)


def _write_groups(material: RawMaterial, entries: Iterable[GroupEntry]) -> None:
    entries = list(entries)
    typed = [entry.group for entry in entries]
    twice = next((group for group in typed if typed.count(group) > 1), None)
    if twice:
        raise Refused(f"The group {twice} stands there twice.", field="group")
    standing = {group.group: group for group in groups_of(material)}
    for name in set(standing) - set(typed):
        standing[name].delete()
    for entry in entries:
        group = standing.get(entry.group) or ReactiveGroup(material=material, group=entry.group)
        group.entered_as, group.entered = entry.entered_as, entry.entered
        group.hydrogens_per_nitrogen = entry.hydrogens_per_nitrogen
        group.equivalent_g = equivalent_g(entry)
        hold_to_limits(group)
        group.save()


def _reckon_lots_again(material: RawMaterial) -> None:
    """A certificate value means what the group of the material makes of it."""
    groups = groups_of(material)
    for lot in Lot.objects.filter(material=material).exclude(certificate_as="").select_related("material"):
        try:
            reckoned = lot_equivalent_g(lot, groups)
        except Refused as refusal:
            raise Refused(f"Lot {lot.number} stands against it. {refusal.message}") from refusal
        if reckoned != lot.equivalent_g:
            lot.equivalent_g = reckoned
            lot.save(update_fields=["equivalent_g"])
