"""What the parts of the demonstration hand on to each other."""

from dataclasses import dataclass, field
from decimal import Decimal

from trials.models import Candidate, Lot, Person, RawMaterial, Revision

from .days import Days


@dataclass(frozen=True, slots=True)
class Laboratory:
    """Records made so far: people by sign-in name, materials and candidates by code, lots by code and number,
    revisions by the code of their base and number."""

    days: Days
    people: dict[str, Person] = field(default_factory=dict)
    materials: dict[str, RawMaterial] = field(default_factory=dict)
    lots: dict[tuple[str, str], Lot] = field(default_factory=dict)
    candidates: dict[str, Candidate] = field(default_factory=dict)
    revisions: dict[tuple[str, int], Revision] = field(default_factory=dict)


def number(text: str | None) -> Decimal | None:
    """As written, so that 0.30 stays 0.30."""
    return None if text is None else Decimal(text)
