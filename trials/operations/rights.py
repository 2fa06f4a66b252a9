"""What the application role may do in the database: everything in the record, nothing to its history."""

from django.apps import apps
from django.db import connection, transaction
from psycopg import sql

from trials.models.history import history_models
from trials.models.searching import TrialSearch
from trials.models.signing import Seal


def grant_rights(*, role: str) -> None:
    """Give the application role its rights; run as the owner after every migration.

    History, seals and search words are written by the triggers and functions of the owner; the role may only read
    them.
    """
    everything = [model._meta.db_table for model in apps.get_models(include_auto_created=True)]
    kept = [model._meta.db_table for model in (*history_models(), Seal, TrialSearch)] + ["django_migrations"]
    with transaction.atomic(), connection.cursor() as cursor:
        present = set(connection.introspection.table_names(cursor))
        name = sql.Identifier(role)
        _run(cursor, "REVOKE ALL ON ALL TABLES IN SCHEMA public FROM {}", name)
        _run(cursor, "REVOKE CREATE ON SCHEMA public FROM PUBLIC")
        _run(cursor, "GRANT USAGE ON SCHEMA public TO {}", name)
        _run(cursor, "GRANT USAGE ON ALL SEQUENCES IN SCHEMA public TO {}", name)
        for table in sorted(present & {*everything, *kept, "labbook_cache"}):
            rights = "SELECT" if table in kept else "SELECT, INSERT, UPDATE, DELETE"
            _run(cursor, f"GRANT {rights} ON {{}} TO {{}}", sql.Identifier(table), name)


def _run(cursor, statement: str, *names) -> None:
    cursor.execute(sql.SQL(statement).format(*names).as_string(cursor.connection))
