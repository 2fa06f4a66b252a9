"""Ordered lists under a record (readings, workings): written as a whole, and only where something differs."""

from collections.abc import Iterable
from decimal import Decimal

from django.db.models import Model

from .acting import Refused
from .limits import hold_to_limits


def write_lists(model: type[Model], owner: str, keys: Iterable[int], wanted: Iterable[Model]) -> None:
    """Make the rows under each owner those wanted, matched by position; a row that stays is not written.

    At most four statements for any number of owners.
    """
    standing = {_place(row, owner): row for row in model.objects.filter(**{f"{owner}__in": list(keys)})}
    names = [field.attname for field in model._meta.concrete_fields if not field.primary_key]
    new, changed = [], []
    for row in wanted:
        old = standing.pop(_place(row, owner), None)
        if old is None:
            new.append(row)
        elif any(not _same(getattr(old, name), getattr(row, name)) for name in names):
            row.pk = old.pk
            changed.append(row)
    if standing:
        model.objects.filter(pk__in=[row.pk for row in standing.values()]).delete()
    if changed:
        model.objects.bulk_update(changed, [name for name in names if name != f"{owner}_id"])
    model.objects.bulk_create(new)


def hold_row(row: Model, where: str) -> Model:
    """Refuse a row whose values are impossible, saying which row it is."""
    try:
        hold_to_limits(row)
    except Refused as refusal:
        raise Refused(f"{where}: {refusal.message}", field=refusal.field) from refusal
    return row


def _place(row: Model, owner: str) -> tuple[int, int]:
    return getattr(row, f"{owner}_id"), row.position


def _same(old, new) -> bool:
    """0.3 and 0.30 are not the same: the second was read to another place."""
    if isinstance(old, Decimal) and isinstance(new, Decimal):
        return str(old) == str(new)
    return old == new
