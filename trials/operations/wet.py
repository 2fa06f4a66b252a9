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


@dataclass(frozen=True, slots=True)
class WetCorrection:
    """A reading that stands, with what it should say; None takes it out."""

    reading: WetReading
    entry: WetEntry | None


@operation()
def read_wet(
    *,
    actor: Person,
    now: datetime,
    entries: Sequence[WetEntry] = (),
    corrections: Sequence[WetCorrection] = (),
) -> list[WetReading]:
    """Add readings before cure, and put right what stands; what stood there before is in its history."""
    rows = WetReading.objects.bulk_create(_wet(entry, actor=actor, now=now) for entry in entries)
    _put_right(corrections)
    cups = {entry.trial.pk for entry in entries if entry.trial}
    made(cups, actor=actor, now=now)
    advance(cups, State.MIXED)
    return rows


def _put_right(corrections: Sequence[WetCorrection]) -> None:
    changed = []
    for one in corrections:
        if one.entry is not None:
            for name in ("quantity", "where", "value", "word", "minutes", "method"):
                setattr(one.reading, name, getattr(one.entry, name))
            _hold_wet(one.reading)
            changed.append(one.reading)
    WetReading.objects.bulk_update(changed, ["quantity", "where", "value", "word", "minutes", "method"])
    out = [one.reading.pk for one in corrections if one.entry is None]
    if out:
        WetReading.objects.filter(pk__in=out).delete()


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
