"""What changed: the history of a record as people read it, newest first."""

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date, datetime
from functools import cache

from django.db.models import F, Max, Model, Q, Window
from django.db.models.functions import Lag
from django.utils import timezone

from trials.models.history import history_models

# How a row is called when it stands in another record's history, first match wins.
_NAMED_BY = ("code", "number", "title", "group", "letter", "name", "full_name", "position")
_LABELS = {"insert": "added", "delete": "removed"}


@dataclass(frozen=True, slots=True)
class Change:
    """One write to one row. ``changes`` are (field, before, after); an added or removed row has only ``what``."""

    at: datetime
    who: str
    what: str
    changes: tuple[tuple[str, object, object], ...] = ()
    reason: str = ""


def what_changed(*records: Model, parts: Iterable[str] = (), limit: int = 50) -> tuple[Change, ...]:
    """The last changes of some records and of the rows that hang on them.

    Parameters
    ----------
    *records
        Rows of any recorded models; the first is the one whose page this is, its fields are named without it.
    parts
        Names of reverse relations ("groups", "lots"); removed rows are told too.
    limit
        How many changes at most.

    Notes
    -----
    One query per model, and one per model that a changed field points to.
    """
    parts = tuple(parts)
    found = []
    for order, (model, condition) in enumerate(_wanted(records, parts).items()):
        found += [(event, order) for event in _events(model, condition, limit)]
    found.sort(key=lambda pair: (pair[0].pgh_created_at, pair[0].pgh_xid, pair[1], pair[0].pgh_id), reverse=True)
    events = [event for event, _ in found[:limit]]
    names = _names_of_what_changed(events)
    return tuple(_told(event, _is_record(event, records), names) for event in events)


def version(record: Model, *, parts: Iterable[str] = ()) -> str:
    """Which state of a record and its parts this is: another write makes another word of it."""
    # Events of one row are written under its lock, so their numbers rise with the writes.
    last = (
        _event_model(model).objects.filter(condition).aggregate(last=Max("pgh_id"))["last"]
        for model, condition in _wanted((record,), tuple(parts)).items()
    )
    return ".".join(str(number or 0) for number in last)


def _wanted(records, parts) -> dict[type[Model], Q]:
    wanted: dict[type[Model], Q] = {}
    for record in records:
        wanted[type(record)] = wanted.get(type(record), Q()) | Q(pgh_obj_id=record.pk)
    for record in records:
        relations = {relation.get_accessor_name(): relation for relation in record._meta.related_objects}
        for part in parts:
            if part in relations:
                model, key = relations[part].related_model, relations[part].field.attname
                wanted[model] = wanted.get(model, Q()) | Q(**{key: record.pk})
    return wanted


def _is_record(event, records) -> bool:
    first = records[0]
    return event.pgh_tracked_model is type(first) and event.pgh_obj_id == first.pk


@cache
def _event_model(model: type[Model]) -> type[Model]:
    return next(history for history in history_models() if history.pgh_tracked_model is model)


def _columns(history: type[Model]) -> list:
    """The fields of the tracked model that the history keeps; the model's own know their unit."""
    kept = {field.name for field in history._meta.concrete_fields}
    model = history.pgh_tracked_model
    return [field for field in model._meta.concrete_fields if field.name in kept and not field.primary_key]


def _events(model, condition, limit):
    history = _event_model(model)
    # The row before, in the database: else the oldest event of the page would have nothing to be compared with.
    before = {
        f"before_{column.name}": Window(Lag(column.attname), partition_by="pgh_obj_id", order_by="pgh_id")
        for column in _columns(history)
    }
    return history.objects.filter(condition).annotate(**before).order_by(F("pgh_id").desc())[:limit]


def _differences(event) -> list[tuple]:
    if event.pgh_label != "update":
        return []
    columns = _columns(type(event))
    values = ((column, getattr(event, f"before_{column.name}"), getattr(event, column.attname)) for column in columns)
    return [(column, before, after) for column, before, after in values if before != after]


def _names_of_what_changed(events) -> dict[type[Model], dict]:
    """Rows that changed fields point to, by model and key; loaded together."""
    keys: dict[type[Model], set] = {}
    for event in events:
        for column, before, after in _differences(event):
            if column.is_relation:
                keys.setdefault(column.related_model, set()).update({before, after} - {None})
    # str() of a lot names its material: what it needs comes along.
    return {model: model._base_manager.select_related().in_bulk(found) for model, found in keys.items()}


def _told(event, is_record: bool, names) -> Change:
    context = event.pgh_context or {}
    row = f"{event.pgh_tracked_model._meta.verbose_name} {_name(event)}".strip()
    changes = tuple(
        (_label(column, "" if is_record else row), _shown(column, before, names), _shown(column, after, names))
        for column, before, after in _differences(event)
    )
    done = _LABELS.get(event.pgh_label, "changed")
    return Change(
        at=event.pgh_created_at,
        who=context.get("by") or "not named",
        what=f"{row[:1].upper()}{row[1:]} {done}",
        changes=changes,
        reason=context.get("reason", ""),
    )


def _name(event) -> str:
    present = {column.name for column in _columns(type(event))}
    return next((str(getattr(event, name)) for name in _NAMED_BY if name in present), "")


def _label(column, row: str) -> str:
    unit = getattr(column, "unit", "")
    label = f"{column.verbose_name}, {unit}" if unit else str(column.verbose_name)
    return f"{row}: {label}" if row else f"{label[:1].upper()}{label[1:]}"


def _shown(column, value, names):
    """The value in words; numbers stay numbers, so that the page sets them as it sets all others."""
    if value is None:
        return None
    if column.is_relation:
        return str(names.get(column.related_model, {}).get(value, f"no. {value}, removed"))
    if isinstance(value, list | tuple):
        return ", ".join(map(str, value))
    if isinstance(value, date):
        return _day(value)
    return dict(column.flatchoices or []).get(value, value)


def _day(value: date) -> str:
    if not isinstance(value, datetime):
        return f"{value.day} {value:%b %Y}"
    local = timezone.localtime(value)
    return f"{local.day} {local:%b %Y, %H:%M}"
