"""Writing about what cups are weighed and stirred with."""

from datetime import datetime

from trials.models import Balance, Equipment, Person

from .acting import assign, operation
from .limits import hold_to_limits


@operation()
def add_equipment(*, actor: Person, name: str, **values) -> Equipment:
    return _kept(Equipment(name=name.strip()), values)


@operation()
def change_equipment(*, actor: Person, equipment: Equipment, **values) -> Equipment:
    return _kept(Equipment.objects.select_for_update().get(pk=equipment.pk), values)


@operation()
def clean_equipment(*, actor: Person, now: datetime, equipment: Equipment) -> Equipment:
    """Note that it was cleaned."""
    return _kept(Equipment.objects.select_for_update().get(pk=equipment.pk), {"last_cleaned": now})


@operation()
def add_balance(*, actor: Person, name: str, **values) -> Balance:
    return _kept(Balance(name=name.strip()), values)


@operation()
def change_balance(*, actor: Person, balance: Balance, **values) -> Balance:
    return _kept(Balance.objects.select_for_update().get(pk=balance.pk), values)


def _kept(record, values: dict):
    assign(record, values)
    hold_to_limits(record)
    record.save()
    return record
