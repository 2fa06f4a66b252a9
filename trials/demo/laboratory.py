"""What the parts of the demonstration hand on to each other."""

from collections.abc import Iterator
from dataclasses import dataclass, field
from datetime import date
from decimal import Decimal

from trials.models import (
    Balance,
    Base,
    Candidate,
    Criterion,
    Enquiry,
    Equipment,
    Lot,
    Panel,
    Person,
    RawMaterial,
    Revision,
    Series,
    Trial,
)

from .days import Days
from .panel_labels import labels


@dataclass(frozen=True, slots=True)
class Worked:
    """A series as recorded: its cups and panels under the keys that the imagined ones have."""

    series: Series
    day: date
    trials: dict[tuple, Trial]
    panels: dict[tuple, Panel] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class Laboratory:
    """Records made so far: people by sign-in name, materials and candidates by code, lots by code and number,
    revisions by the code of their base and number, series by the key of their row."""

    days: Days
    people: dict[str, Person] = field(default_factory=dict)
    materials: dict[str, RawMaterial] = field(default_factory=dict)
    lots: dict[tuple[str, str], Lot] = field(default_factory=dict)
    candidates: dict[str, Candidate] = field(default_factory=dict)
    revisions: dict[tuple[str, int], Revision] = field(default_factory=dict)
    criteria: dict[str, Criterion] = field(default_factory=dict)
    enquiries: dict[str, Enquiry] = field(default_factory=dict)
    balances: dict[str, Balance] = field(default_factory=dict)
    equipment: dict[str, Equipment] = field(default_factory=dict)
    worked: dict[str, Worked] = field(default_factory=dict)
    concluded: set[int] = field(default_factory=set)
    labels: Iterator[str] = field(default_factory=labels)

    @property
    def bases(self) -> dict[str, Base]:
        return {code: revision.base for (code, _), revision in self.revisions.items()}


def number(text: str | None) -> Decimal | None:
    """As written, so that 0.30 stays 0.30."""
    return None if text is None else Decimal(text)
