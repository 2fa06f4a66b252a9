"""From what a certificate or a data sheet gives to an equivalent weight."""

from dataclasses import dataclass
from decimal import Decimal

from trials.models import Lot, RawMaterial, ReactiveGroup
from trials.models.materials import EnteredAs, Group
from trials.science.stoichiometry import (
    equivalent_from_amine_value,
    equivalent_from_hydroxyl_value,
    equivalent_from_nco_pct,
)

from .acting import Refused

AMINES = (Group.AMINE_HYDROGEN, Group.ASPARTATE)
GIVES = {
    EnteredAs.NCO: (Group.ISOCYANATE,),
    EnteredAs.HYDROXYL_VALUE: (Group.HYDROXYL,),
    EnteredAs.AMINE_VALUE: AMINES,
    EnteredAs.EQUIVALENT: tuple(Group),
}


@dataclass(frozen=True, slots=True)
class GroupEntry:
    """A reactive group as typed: an equivalent weight, or the value that it follows from."""

    group: str
    entered_as: str
    entered: Decimal
    hydrogens_per_nitrogen: Decimal | None = None


def equivalent_g(entry: GroupEntry) -> Decimal:
    """The equivalent weight of an entry, in g/eq; six significant digits where it is reckoned.

    Raises
    ------
    Refused
        If the value does not go with the group, is impossible, or the hydrogens of an amine value are missing.
    """
    name = EnteredAs(entry.entered_as).value
    if entry.group not in GIVES[entry.entered_as]:
        given = " or ".join(GIVES[entry.entered_as])
        raise Refused(f"{_article(name)} speaks of {given}, not of {entry.group}.", field="entered_as")
    _refuse_hydrogens(entry)
    try:
        return _reckoned(entry)
    except ValueError as error:
        raise Refused(f"{_article(name)} of {entry.entered} is not possible: {error}.", field="entered") from error


def lot_equivalent_g(lot: Lot, groups: list[ReactiveGroup]) -> Decimal | None:
    """The equivalent weight that a lot's certificate amounts to; None where the certificate gives none.

    A lot overrides the one group of its material. Where there are several, one value cannot tell which.
    """
    code, value = lot.material.code, lot.certificate_value
    if not lot.certificate_as:
        if value is not None:
            raise Refused(f"Say what the certificate value {value} is.", field="certificate_as")
        return None
    if value is None:
        raise Refused(
            f"Enter the {EnteredAs(lot.certificate_as).label} of the certificate.", field="certificate_value"
        )
    if len(groups) != 1:
        said = f"has {len(groups)}" if groups else "has none yet: add it there first"
        raise Refused(
            f"The certificate value {value} overrides the one reactive group of a material; {code} {said}.",
            field="certificate_value",
        )
    hydrogens = groups[0].hydrogens_per_nitrogen
    try:
        return equivalent_g(GroupEntry(groups[0].group, lot.certificate_as, value, hydrogens))
    except Refused as refusal:
        field = "certificate_as" if refusal.field == "entered_as" else "certificate_value"
        raise Refused(f"{refusal.message} ({code})", field=field) from refusal


def groups_of(material: RawMaterial) -> list[ReactiveGroup]:
    return list(ReactiveGroup.objects.filter(material=material).order_by("pk"))


def _refuse_hydrogens(entry: GroupEntry) -> None:
    given, field = entry.hydrogens_per_nitrogen, "hydrogens_per_nitrogen"
    if given is None:
        if entry.entered_as == EnteredAs.AMINE_VALUE:
            raise Refused(
                f"An amine value ({entry.entered}) counts nitrogen: say how many hydrogens each carries,"
                " 2 for a primary amine, 1 for an aspartate.",
                field=field,
            )
        return
    if entry.group not in AMINES:
        raise Refused(f"Hydrogens per nitrogen ({given}) belong to an amine, not to {entry.group}.", field=field)
    if not 0 < given <= 2:
        raise Refused(f"A nitrogen carries above 0 and at most 2 hydrogens that react; got {given}.", field=field)


def _reckoned(entry: GroupEntry) -> Decimal:
    match entry.entered_as:
        case EnteredAs.NCO:
            return _rounded(equivalent_from_nco_pct(entry.entered))
        case EnteredAs.HYDROXYL_VALUE:
            return _rounded(equivalent_from_hydroxyl_value(entry.entered))
        case EnteredAs.AMINE_VALUE:
            hydrogens = entry.hydrogens_per_nitrogen
            return _rounded(equivalent_from_amine_value(entry.entered, hydrogens_per_nitrogen=hydrogens))
    if not entry.entered > 0:
        raise ValueError("it must be above 0")
    return entry.entered


def _rounded(value: float) -> Decimal:
    return Decimal(f"{value:.6g}")


def _article(name: str) -> str:
    return f"An {name}" if name[:1] in "aeN" else f"A {name}"
