"""Is the record as its history says, and the history as its seals say?"""

from collections.abc import Iterator
from dataclasses import dataclass

from django.db import connection
from psycopg import sql

from trials.models import Seal, Signature
from trials.models.history import history_models

from .canonical import canonical, digest

NOUGHT = "0" * 64


@dataclass(frozen=True, slots=True)
class Doubt:
    """One thing that does not agree: the table, the row (or span) and what is wrong."""

    table: str
    row: str
    what: str


def doubts() -> Iterator[Doubt]:
    """Everything that does not agree; nothing when the record is untouched.

    Events newer than the last seal are compared with their rows like all others, but no seal covers them yet.
    """
    for history in history_models():
        yield from _rows_against_events(history)
    yield from _broken_seals()
    yield from _broken_signatures()


def unsealed_events() -> int:
    """How many events no seal covers yet."""
    last = Seal.objects.order_by("-id").values_list("to_xid", flat=True).first() or 0
    return sum(history.objects.filter(pgh_xid__gte=last).count() for history in history_models())


def _rows_against_events(history) -> Iterator[Doubt]:
    model = history.pgh_tracked_model
    columns = [
        field.column
        for field in history._meta.concrete_fields
        if not field.name.startswith("pgh_") and field.name != model._meta.pk.name
    ]
    query = sql.SQL(
        "WITH last AS (SELECT DISTINCT ON (pgh_obj_id) * FROM {history} ORDER BY pgh_obj_id, pgh_id DESC)"
        " SELECT coalesce(live.{key}, last.pgh_obj_id), live.{key} IS NULL, last.pgh_label"
        " FROM {table} live FULL JOIN last ON last.pgh_obj_id = live.{key}"
        " WHERE (live.{key} IS NULL) IS DISTINCT FROM (coalesce(last.pgh_label, 'delete') = 'delete')"
        " OR (live.{key} IS NOT NULL AND ROW({live}) IS DISTINCT FROM ROW({last})) ORDER BY 1"
    ).format(
        history=sql.Identifier(history._meta.db_table),
        table=sql.Identifier(model._meta.db_table),
        key=sql.Identifier(model._meta.pk.column),
        live=sql.SQL(", ").join(sql.Identifier("live", column) for column in columns),
        last=sql.SQL(", ").join(sql.Identifier("last", column) for column in columns),
    )
    with connection.cursor() as cursor:
        cursor.execute(query.as_string(cursor.connection))
        for row, gone, label in cursor.fetchall():
            if gone:
                what = "the row is gone, and its history does not say that it was deleted"
            elif label in (None, "delete"):
                what = "the row has no history"
            else:
                what = "the row differs from its last event"
            yield Doubt(model._meta.db_table, str(row), what)


def _broken_seals() -> Iterator[Doubt]:
    previous, at = NOUGHT, 0
    for seal in Seal.objects.order_by("id").iterator():
        name = f"{seal.from_xid}-{seal.to_xid}"
        if seal.previous != previous or seal.from_xid != at:
            yield Doubt("trials_seal", name, "the chain is broken: a seal before this one is missing or was changed")
        events, digest = _recomputed(seal)
        if events != seal.events:
            yield Doubt("trials_seal", name, f"{seal.events} events were sealed, {events} are there")
        elif digest != seal.digest:
            yield Doubt("trials_seal", name, "an event of this span was changed after it was sealed")
        previous, at = seal.digest, seal.to_xid


def _recomputed(seal: Seal) -> tuple[int, str]:
    with connection.cursor() as cursor:
        cursor.execute(
            "SELECT span.events, trials_seal_digest(%s, %s, %s, span.events, span.digest)"
            " FROM trials_span_digest(%s, %s) span",
            [seal.previous, seal.from_xid, seal.to_xid, seal.from_xid, seal.to_xid],
        )
        return cursor.fetchone()


def _broken_signatures() -> Iterator[Doubt]:
    """Each signature against its own content, the chain over all, and each signed record against its newest one."""
    chain, heads = "", {}
    for signature in Signature.objects.select_related("person", "series", "trial").order_by("pk").iterator():
        record = signature.series or signature.trial
        name = f"{signature.pk} on {record}"
        if digest(signature) != signature.digest:
            yield Doubt("trials_signature", name, "its content, signer or chain does not give its digest")
        if signature.previous_all != chain or signature.previous != (heads[record].digest if record in heads else ""):
            yield Doubt("trials_signature", name, "the chain is broken: a signature before this one is missing")
        chain, heads[record] = signature.digest, signature
    for record, newest in heads.items():
        if canonical(record) != newest.canonical:
            yield Doubt(record._meta.db_table, str(record), "the record is not what was signed")
