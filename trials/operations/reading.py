"""Rating panels: many panels, criteria and ages at once."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from decimal import Decimal

from trials.models import Criterion, Panel, Person, Rating
from trials.models.criteria import Scale
from trials.models.trials import State

from .acting import Refused, operation
from .states import advance

_HALF = Decimal("0.5")


@dataclass(frozen=True, slots=True)
class RatingEntry:
    """A value of one criterion on one panel, or a word instead ("not read"); ``instrument`` names what read it."""

    panel: Panel
    criterion: Criterion
    age_h: Decimal
    value: Decimal | None = None
    word: str = ""
    instrument: str = ""
    blind: bool = False
    at: datetime | None = None


@operation()
def rate(*, actor: Person, now: datetime, ratings: Sequence[RatingEntry]) -> int:
    """Keep what this person reads on panels; the same reading again replaces the one before.

    Returns
    -------
    int
        How many ratings are new or changed.

    Raises
    ------
    Refused
        At "value" with the range of the scale, or at "age_h", naming panel and criterion.
    """
    rows: dict[tuple, Rating] = {}
    for entry in ratings:
        row = _rating(entry, actor=actor, now=now)
        if _key(row) in rows:
            raise Refused(f"{_name(entry)} at {entry.age_h} h is given twice.", field="value")
        rows[_key(row)] = row
    new, changed = _against_standing(rows, actor)
    Rating.objects.bulk_create(new)
    if changed:
        Rating.objects.bulk_update(changed, ["value", "word", "blind", "at"])
    advance({entry.panel.trial_id for entry in ratings if entry.value is not None}, State.READ)
    return len(new) + len(changed)


@operation()
def take_back(*, actor: Person, rating: Rating) -> None:
    """Remove an own rating that belongs to no panel, age or criterion; its history stays."""
    if rating.person_id != actor.pk:
        raise Refused(f"Only {rating.person.full_name} takes back what {rating.person.full_name} read.")
    rating.delete()


def _rating(entry: RatingEntry, *, actor: Person, now: datetime) -> Rating:
    if entry.age_h is None or entry.age_h < 0:
        raise Refused(f"{_name(entry)}: the age must be 0 h or more; got {entry.age_h}.", field="age_h")
    word = entry.word.strip()
    if entry.value is None and not word:
        raise Refused(f"{_name(entry)}: enter a value, or a word such as “not read”.", field="value")
    if len(word) > 60:
        raise Refused(f"{_name(entry)}: a word is 60 signs at most; got {len(word)}.", field="word")
    if entry.value is not None:
        hold_to_scale(entry.criterion, entry.value, where=f"{entry.panel.code}, ")
    return Rating(
        panel=entry.panel,
        criterion=entry.criterion,
        person=actor,
        instrument=entry.instrument.strip(),
        age_h=entry.age_h,
        value=entry.value,
        word=word,
        blind=entry.blind,
        at=entry.at or now,
    )


def hold_to_scale(criterion: Criterion, value: Decimal, *, where: str = "") -> None:
    """Refuse a value off the scale with the range that is taken; steps are whole or half (ISO 4628-1).

    Raises
    ------
    Refused
        At the field "value".
    """
    low, high = criterion.low, criterion.high
    unit = f" {criterion.unit}" if criterion.unit else ""
    allowed = f"{low} or more{unit}" if high is None else f"from {low} to {high}{unit}"
    if value < low or (high is not None and value > high):
        raise Refused(f"{where}{criterion.name} must be {allowed}; got {value}.", field="value")
    if criterion.scale == Scale.STEPS and value % _HALF:
        raise Refused(
            f"{where}{criterion.name} is graded in whole or half steps {allowed}; got {value}.", field="value"
        )


def _against_standing(rows: dict[tuple, Rating], actor: Person) -> tuple[list[Rating], list[Rating]]:
    """Which are new, and which say something else than what this person noted before."""
    panels = {row.panel_id for row in rows.values()}
    standing = {_key(old): old for old in Rating.objects.filter(panel__in=panels, person=actor)}
    new, changed = [], []
    for key, row in rows.items():
        old = standing.get(key)
        if old is None:
            new.append(row)
        elif (str(old.value), old.word, old.blind) != (str(row.value), row.word, row.blind):
            row.pk = old.pk
            changed.append(row)
    return new, changed


def _key(row: Rating) -> tuple:
    return row.panel_id, row.criterion_id, row.instrument, Decimal(row.age_h)


def _name(entry: RatingEntry) -> str:
    return f"{entry.panel.code}, {entry.criterion.name}"
