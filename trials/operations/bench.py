"""Logging at the bench: what was weighed into a cup, and what was done to it.

Each write takes the entries of any number of cups, in a fixed number of statements. Times may be entered later.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from decimal import Decimal

from django.db.models import F
from django.db.models.functions import Coalesce, Greatest

from trials.models import Balance, Dosage, Equipment, Person, Trial, Weighing, Working
from trials.models.trials import State, WorkingKind
from trials.queries.weighed import carried_g, grams_of, nets

from .acting import Refused, operation
from .layout import WorkingEntry, working
from .rows import hold_row, write_lists
from .seen import refuse_unseen
from .states import advance, made

__all__ = [
    "CupReadings",
    "CupWorkings",
    "MadeEntry",
    "Reading",
    "WorkingEntry",
    "mark_made",
    "set_remark",
    "weigh",
    "work",
]


@dataclass(frozen=True, slots=True)
class Reading:
    """What the balance showed for a component or an additive; ``cumulative`` goes on from the reading before."""

    letter: str = ""
    dosage: Dosage | None = None
    reading_g: Decimal | None = None
    cumulative: bool = False
    word: str = ""
    balance: Balance | None = None
    at: datetime | None = None


@dataclass(frozen=True, slots=True)
class CupReadings:
    """All readings of one cup in their order; ``seen`` is the version of the cup that was on the screen."""

    trial: Trial
    readings: tuple[Reading, ...]
    seen: str = ""


@dataclass(frozen=True, slots=True)
class CupWorkings:
    """All that was done to one cup in its order; ``mixed_at`` is when A and B came together."""

    trial: Trial
    workings: tuple[WorkingEntry, ...]
    mixed_at: datetime | None = None
    seen: str = ""


@dataclass(frozen=True, slots=True)
class MadeEntry:
    """When a cup was made, in which climate. What is None stays as it is."""

    trial: Trial
    made_at: datetime | None = None
    mixed_at: datetime | None = None
    air_c: Decimal | None = None
    humidity_pct: Decimal | None = None
    remark: str | None = None


@operation()
def weigh(*, actor: Person, now: datetime, entries: Sequence[CupReadings]) -> None:
    """Keep the readings of these cups as they stood on the display; grams weighed follow from them.

    Raises
    ------
    Refused
        At the field "reading_g" where a cumulative reading falls, naming cup, reading and both values.
    """
    keys = _keys(entries)
    for entry in entries:
        refuse_unseen(entry.trial, entry.seen, parts=("weighings",))
    rows = [_weighing(entry, place, one) for entry in entries for place, one in enumerate(entry.readings, 1)]
    write_lists(Weighing, "trial", keys, rows)
    _weighed_follows(keys)
    logged = [entry.trial.pk for entry in entries if entry.readings]
    made(logged, actor=actor, now=now)
    advance(logged, State.MIXED)


@operation()
def work(*, actor: Person, now: datetime, entries: Sequence[CupWorkings]) -> None:
    """Keep what was done to these cups; stirring gear that touched silicone is marked so."""
    keys = _keys(entries)
    for entry in entries:
        refuse_unseen(entry.trial, entry.seen, parts=("workings",))
    rows = [
        hold_row(working(entry.trial, place, one), f"{entry.trial.code}, row {place}")
        for entry in entries
        for place, one in enumerate(entry.workings, 1)
    ]
    write_lists(Working, "trial", keys, rows)
    _touched_silicone(rows, now)
    logged = [entry.trial.pk for entry in entries if entry.workings]
    made(logged, actor=actor, now=now)
    _mixed_at({entry.trial.pk: entry.mixed_at for entry in entries if entry.mixed_at})
    advance(logged, State.MIXED)


@operation()
def mark_made(*, actor: Person, now: datetime, entries: Sequence[MadeEntry]) -> None:
    """Say that cups were made as planned, by whom, when and in which climate."""
    cups = {trial.pk: trial for trial in Trial.objects.filter(pk__in=_keys(entries)).order_by("pk")}
    for entry in entries:
        trial = cups[entry.trial.pk]
        trial.made_by_id = trial.made_by_id or actor.pk
        trial.made_at = entry.made_at or trial.made_at or now
        for name in ("mixed_at", "air_c", "humidity_pct", "remark"):
            if getattr(entry, name) is not None:
                setattr(trial, name, getattr(entry, name))
        hold_row(trial, trial.code)
    names = ["made_by", "made_at", "mixed_at", "air_c", "humidity_pct", "remark"]
    Trial.objects.bulk_update(cups.values(), names)
    advance(cups, State.MIXED)


@operation()
def set_remark(*, actor: Person, trial: Trial, remark: str) -> None:
    Trial.objects.filter(pk=trial.pk).update(remark=remark.strip())


def _keys(entries) -> list[int]:
    keys = [entry.trial.pk for entry in entries]
    twice = (
        {entry.trial.code for entry in entries if keys.count(entry.trial.pk) > 1} if len({*keys}) < len(keys) else ()
    )
    if twice:
        raise Refused(f"{', '.join(sorted(twice))} is given twice.", field="trial")
    return keys


def _weighing(entry: CupReadings, place: int, one: Reading) -> Weighing:
    where = f"{entry.trial.code}, reading {place}"
    if bool(one.letter) == (one.dosage is not None):
        raise Refused(f"{where}: say whether it is a component or an additive.", field="letter")
    if one.dosage and one.dosage.trial_id != entry.trial.pk:
        raise Refused(f"{where}: the additive is that of another cup.", field="dosage")
    if one.reading_g is None and not one.word.strip():
        raise Refused(f"{where}: enter what the balance showed, or a word such as “spilled”.", field="reading_g")
    row = Weighing(
        trial=entry.trial,
        position=place,
        letter=one.letter,
        dosage=one.dosage,
        reading_g=one.reading_g,
        cumulative=one.cumulative,
        word=one.word.strip(),
        balance=one.balance,
        at=one.at,
    )
    return hold_row(row, where)


def _weighed_follows(keys: list[int]) -> None:
    """Grams weighed of every additive of these cups, and of the cups that were topped up from them."""
    # A topped-up cup is younger than the cup it came from, so that one pass in the order of keys is enough.
    series = Trial.objects.filter(pk__in=keys).values("series")
    cups = list(Trial.objects.filter(series__in=series).order_by("pk").prefetch_related("weighings", "dosages"))
    by_key = {cup.pk: cup for cup in cups}
    touched, changed = set(keys), []
    for cup in cups:
        if cup.pk in touched or cup.topped_up_from_id in touched:
            touched.add(cup.pk)
            changed += _weigh_anew(cup, by_key.get(cup.topped_up_from_id))
    if changed:
        Dosage.objects.bulk_update(changed, ["weighed_g"])


def _weigh_anew(cup: Trial, parent: Trial | None) -> list[Dosage]:
    readings = sorted(cup.weighings.all(), key=lambda reading: reading.position)
    try:
        nets(readings)
    except ValueError as error:
        raise Refused(f"{cup.code}, {error}.", field="reading_g") from error
    before = {dose.candidate_id: dose for dose in parent.dosages.all()} if parent else {}
    changed = []
    for dose in cup.dosages.all():
        grams = grams_of(readings, lambda reading, key=dose.pk: reading.dosage_id == key)
        carried = carried_g(before.get(dose.candidate_id), cup, parent) if parent else Decimal(0)
        held = None if grams is None or carried is None else carried + grams
        if str(held) != str(dose.weighed_g):
            dose.weighed_g = held
            changed.append(dose)
    return changed


def _mixed_at(times: dict[int, datetime]) -> None:
    cups = list(Trial.objects.filter(pk__in=times)) if times else []
    for cup in cups:
        cup.mixed_at = times[cup.pk]
    if cups:
        Trial.objects.bulk_update(cups, ["mixed_at"])


def _touched_silicone(workings: list[Working], now: datetime) -> None:
    stirred = {row.trial_id: set() for row in workings}
    for row in workings:
        if row.equipment_id and row.kind != WorkingKind.REST:
            stirred[row.trial_id].add(row.equipment_id)
    silicone = Dosage.objects.filter(trial__in=stirred, candidate__silicone=True).values_list("trial", flat=True)
    touched = set().union(*(stirred[key] for key in silicone))
    if touched:
        Equipment.objects.filter(pk__in=touched).update(
            last_silicone=Greatest(Coalesce(F("last_silicone"), now), now)
        )
