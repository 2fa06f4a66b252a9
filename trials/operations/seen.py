"""Nobody writes over what they have not seen."""

from collections.abc import Iterable

from django.db.models import Model
from django.utils import timezone

from trials.queries.history import version, what_changed

from .acting import Refused


def refuse_unseen(record: Model, seen: str, *, parts: Iterable[str] = ()) -> None:
    """Refuse a change of a record that somebody else changed since ``seen`` was read; "" asks nothing.

    The record must be locked. Both values are told: theirs in the message, the own one stays in the form.

    Raises
    ------
    Refused
        At the field "seen".
    """
    parts = tuple(parts)
    if not seen or version(record, parts=parts) == seen:
        return
    change = what_changed(record, parts=parts, limit=1)[0]
    shown = (f"{field}: {_said(before)} became {_said(after)}" for field, before, after in change.changes)
    raise Refused(
        f"{change.who} changed this at {timezone.localtime(change.at):%H:%M}, after you opened it"
        f" ({'; '.join(shown) or change.what}). What you typed is still here: keep it again to write it over that.",
        field="seen",
    )


def _said(value) -> str:
    return "nothing" if value in (None, "") else str(value)
