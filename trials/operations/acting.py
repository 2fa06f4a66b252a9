"""What every write has in common: an actor with the right to it, one transaction, and history that names them."""

from functools import wraps

import pghistory
from django.core.exceptions import PermissionDenied
from django.db import IntegrityError, transaction

from trials.access import may_write

UNIQUE_VIOLATION = "23505"


class Refused(Exception):
    """The write can't be done; ``field`` is the input to blame ("" for the whole), the message quotes its value."""

    def __init__(self, message: str, *, field: str = "", signed: bool = False):
        super().__init__(message)
        self.message = message
        self.field = field
        self.signed = signed  # the record is signed: an amendment would do it


def operation(needs=may_write):
    """Make a keyword-only function a write: ``actor`` must pass ``needs``; all of it happens or nothing.

    Raises
    ------
    PermissionDenied
        If the actor lacks the right.
    Refused
        As the function says, or when a named constraint or trigger of the record refuses.
    """

    def decorate(function):
        @wraps(function)
        def write(*, actor, **given):
            if not needs(actor):
                raise PermissionDenied(f"{actor} may not do this")
            try:
                with transaction.atomic(), pghistory.context(person=actor.pk, by=actor.full_name):
                    return function(actor=actor, **given)
            except IntegrityError as error:
                raise Refused(_said(error), signed=_frozen(error)) from error

        return write

    return decorate


def _said(error: IntegrityError) -> str:
    """The database's refusal in words. Its detail names the key of a duplicate; for a check it is the whole row."""
    diagnosis = error.__cause__.diag
    if diagnosis.sqlstate == UNIQUE_VIOLATION:
        return f"There is one already: {diagnosis.message_detail}"
    primary = diagnosis.message_primary
    if _frozen(error):
        return f"{primary[:1].upper()}{primary[1:]}."
    return f"{primary[:1].upper()}{primary[1:]} ({diagnosis.constraint_name})."


def _frozen(error: IntegrityError) -> bool:
    return str(error.__cause__.diag.constraint_name).endswith("_frozen")


def assign(record, values: dict):
    """Set the named fields on a record that the caller then saves; refuse a field that it does not have."""
    known = {field.name for field in record._meta.concrete_fields}
    for name, value in values.items():
        if name not in known:
            raise TypeError(f"{record._meta.object_name} has no field {name!r}")
        setattr(record, name, value)
    return record
