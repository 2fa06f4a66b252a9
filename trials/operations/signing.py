"""Signing a series or a trial, and amending what is signed."""

from contextlib import contextmanager
from datetime import datetime

import pghistory
from django.core.exceptions import PermissionDenied
from django.db import connection, transaction

from trials.access import may_sign, may_write
from trials.models import Person, Series, Signature, Trial
from trials.models.signing import Meaning
from trials.queries.canonical import CANON, canonical, digest

from .acting import Refused, operation
from .sealing import seal_history


@operation()
def sign(*, actor: Person, now: datetime, record: Series | Trial, meaning: Meaning) -> Signature:
    """Put a name to the record as it stands: performed freezes it, countersigned confirms it by another person.

    The caller has asked for the password again.
    """
    _one_at_a_time()
    standing = list(Signature.objects.filter(**_of(record)).order_by("pk"))
    _refuse_out_of_turn(actor, record, meaning, standing)
    signature = _signature(record, actor=actor, now=now, meaning=meaning)
    _complete(signature, record)
    signature.save()
    seal_history()
    return signature


@contextmanager
def amending(*, actor: Person, now: datetime, record: Series | Trial, reason: str):
    """Within this context what is signed may change; it ends with a signature of that meaning over the new content.

    Raises
    ------
    PermissionDenied
        If the actor may not write.
    Refused
        If no reason is given, or nothing is signed yet.
    """
    if not may_write(actor):
        raise PermissionDenied(f"{actor} may not do this")
    if not reason.strip():
        raise Refused("An amendment says why.", field="amend_reason")
    with transaction.atomic(), pghistory.context(person=actor.pk, by=actor.full_name, reason=reason):
        _one_at_a_time()
        if not Signature.objects.filter(**_of(record), meaning=Meaning.PERFORMED).exists():
            raise Refused("Nothing is signed yet: change it without an amendment.", field="amend_reason")
        # Written first, so that the guards let the changes through; its content follows when they are made.
        signature = _signature(record, actor=actor, now=now, meaning=Meaning.AMENDED, reason=reason)
        signature.save()
        yield signature
        _complete(signature, record)
        signature.save(update_fields=["canon", "canonical", "digest", "previous", "previous_all"])
    seal_history()


def _of(record) -> dict:
    return {"series" if isinstance(record, Series) else "trial": record}


def _signature(record, *, actor, now, meaning, reason="") -> Signature:
    return Signature(**_of(record), person=actor, meaning=meaning, at=now, reason=reason, canon=CANON)


def _complete(signature: Signature, record) -> None:
    """Fill in the content, its digest and the chain to the signatures before."""
    others = Signature.objects.exclude(pk=signature.pk).order_by("-pk")
    newest = others.values_list("digest", flat=True).first()
    newest_here = others.filter(**_of(record)).values_list("digest", flat=True).first()
    signature.canonical = canonical(record)
    signature.previous = newest_here or ""
    signature.previous_all = newest or ""
    signature.digest = digest(signature)


def _refuse_out_of_turn(actor, record, meaning, standing) -> None:
    performed = next((s for s in standing if s.meaning == Meaning.PERFORMED), None)
    if meaning == Meaning.PERFORMED:
        if performed:
            raise Refused(f"{performed.person.full_name} has signed this already.")
        if not may_sign(actor, record):
            raise Refused("Who did the work signs it: the owner of the series or who made a cup of it.")
    elif meaning == Meaning.COUNTERSIGNED:
        if performed is None:
            raise Refused("Nobody has signed it as performed yet.")
        if performed.person_id == actor.pk:
            raise Refused("Another person than the performer countersigns.")
    else:
        raise Refused("An amendment is made by amending, with its reason.")


def _one_at_a_time() -> None:
    with connection.cursor() as cursor:
        cursor.execute("SELECT pg_advisory_xact_lock(7246003)")
