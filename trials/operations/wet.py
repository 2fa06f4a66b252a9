"""Readings before cure: a value or a word, of a cup or of a common batch."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from decimal import Decimal

from trials.models import CommonBatch, Person, Trial, WetReading
from trials.models.trials import State, WetQuantity

from .acting import Refused, operation
from .rows import hold_row
from .states import advance, made


@dataclass(frozen=True, slots=True)
class WetEntry:
    """A value or a word before cure, of a cup or of a common batch."""

    quantity: str
    where: str
    value: Decimal | None = None
    word: str = ""
    minutes: Decimal | None = None
    method: str = ""
    trial: Trial | None = None
    common_batch: CommonBatch | None = None
    at: datetime | None = None


@operation()
def read_wet(*, actor: Person, now: datetime, entries: Sequence[WetEntry]) -> list[WetReading]:
    """Add readings before cure."""
    rows = WetReading.objects.bulk_create(_wet(entry, actor=actor, now=now) for entry in entries)
    cups = {entry.trial.pk for entry in entries if entry.trial}
    made(cups, actor=actor, now=now)
    advance(cups, State.MIXED)
    return rows


@operation()
def correct_wet(
    *, actor: Person, reading: WetReading, value: Decimal | None, word: str = "", minutes=None, method: str = ""
) -> WetReading:
    """Write a reading anew; what stood there before is in its history."""
    reading.value, reading.word, reading.minutes, reading.method = value, word.strip(), minutes, method
    _hold_wet(reading)
    reading.save(update_fields=["value", "word", "minutes", "method"])
    return reading


@operation()
def remove_wet(*, actor: Person, reading: WetReading) -> None:
    """Take out a reading that was never one."""
    reading.delete()


def _wet(entry: WetEntry, *, actor: Person, now: datetime) -> WetReading:
    row = WetReading(
        trial=entry.trial,
        common_batch=entry.common_batch,
        quantity=entry.quantity,
        where=entry.where,
        value=entry.value,
        word=entry.word.strip(),
        minutes=entry.minutes,
        method=entry.method.strip(),
        person=actor,
        at=entry.at or now,
    )
    _hold_wet(row)
    return row


def _hold_wet(row: WetReading) -> None:
    of = row.trial or row.common_batch
    if of is None or (row.trial_id and row.common_batch_id):
        raise Refused("A wet reading is of one cup or of one common batch.", field="trial")
    where = f"{of}, {row.get_quantity_display()}"
    if row.value is None and not row.word:
        raise Refused(f"{where}: enter a value, or a word such as “spilled”.", field="value")
    if row.value is not None and row.value <= 0 and row.quantity != WetQuantity.TEMPERATURE:
        allowed = row.quantity in (WetQuantity.LEVEL, WetQuantity.BUBBLE_FREE) and row.value == 0
        if not allowed:
            raise Refused(f"{where}: must be above 0; got {row.value}.", field="value")
    hold_row(row, where)
