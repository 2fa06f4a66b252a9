import json
import os
from contextlib import suppress

import psycopg
import pytest
from django.db import DatabaseError, connection, transaction

from trials.models import Person, RawMaterial
from trials.models.history import history_models
from trials.operations.people import change_person
from trials.operations.rights import grant_rights
from trials.operations.sealing import seal_history
from trials.queries.proof import doubts


def _execute(statement, params=()):
    with connection.cursor() as cursor:
        cursor.execute(statement, params)
        return cursor.fetchall() if cursor.description else None


def _material(code="EP-104"):
    return RawMaterial.objects.create(code=code, name="Resin", function="binder")


@pytest.mark.django_db
def test_every_table_of_the_record_has_a_history():
    from django.apps import apps

    tracked = {history.pgh_tracked_model for history in history_models()}
    untracked = {
        model._meta.object_name
        for model in apps.get_app_config("trials").get_models(include_auto_created=True)
        if model not in tracked and model not in set(history_models())
    }
    # Seals are proof themselves; search words are derived from what is tracked, and can be made again.
    assert untracked == {"Seal", "TrialSearch"}


@pytest.mark.django_db
def test_insert_update_and_delete_each_leave_one_event():
    material = _material()
    RawMaterial.objects.filter(pk=material.pk).update(name="Resin, clear")
    _execute("UPDATE trials_rawmaterial SET name = 'Resin, filled'")
    material.delete()
    history = next(h for h in history_models() if h.pgh_tracked_model is RawMaterial)
    events = history.objects.order_by("pgh_id").values_list("pgh_label", "name")
    assert list(events) == [
        ("insert", "Resin"),
        ("update", "Resin, clear"),
        ("update", "Resin, filled"),
        ("delete", "Resin, filled"),
    ]


@pytest.mark.django_db
def test_event_names_who_wrote(administrator, bench):
    change_person(actor=administrator, person=bench, full_name="Someone Else")
    history = next(h for h in history_models() if h.pgh_tracked_model is Person)
    event = history.objects.order_by("-pgh_id").first()
    assert event.pgh_context == {"person": administrator.pk, "by": administrator.full_name}


@pytest.mark.django_db
def test_password_is_never_copied():
    history = next(h for h in history_models() if h.pgh_tracked_model is Person)
    assert not {"password", "last_login"} & {field.name for field in history._meta.fields}


@pytest.mark.parametrize("setting", ["pgtrigger.ignore", "session_replication_role"])
@pytest.mark.django_db
def test_application_role_cannot_switch_the_triggers_off(setting, as_application_role):
    grant_rights(role=os.environ["LABBOOK_APPLICATION_ROLE"])
    names = [t for (t,) in _execute("SELECT tgname FROM pg_trigger WHERE NOT tgisinternal")]
    value = "{" + ",".join(names) + "}" if setting == "pgtrigger.ignore" else "replica"
    history = next(h for h in history_models() if h.pgh_tracked_model is RawMaterial)
    with as_application_role():
        with suppress(DatabaseError), transaction.atomic():
            _execute("SELECT set_config(%s, %s, true)", [setting, value])
        _material()
    assert history.objects.count() == 1


@pytest.mark.parametrize(
    "statement",
    [
        "UPDATE trials_rawmaterialevent SET name = 'forged'",
        "DELETE FROM trials_rawmaterialevent",
        "TRUNCATE trials_rawmaterialevent",
        "INSERT INTO trials_rawmaterialevent SELECT * FROM trials_rawmaterialevent",
        "ALTER TABLE trials_rawmaterial DISABLE TRIGGER ALL",
        "DROP TRIGGER pgtrigger_insert_insert_x ON trials_rawmaterial",
        "TRUNCATE trials_rawmaterial CASCADE",
        "UPDATE trials_seal SET digest = 'forged'",
        "INSERT INTO trials_seal SELECT * FROM trials_seal",
        "CREATE TABLE mine (n int)",
    ],
)
@pytest.mark.django_db
def test_application_role_is_refused(statement, as_application_role):
    grant_rights(role=os.environ["LABBOOK_APPLICATION_ROLE"])
    _material()
    with as_application_role(), pytest.raises(DatabaseError) as refused, transaction.atomic():
        _execute(statement)
    # Undefined object: PostgreSQL looks a trigger up before it looks at the right to drop it.
    assert isinstance(refused.value.__cause__, psycopg.errors.InsufficientPrivilege | psycopg.errors.UndefinedObject)


@pytest.mark.parametrize("statement", ["UPDATE {} SET pgh_label = 'x'", "DELETE FROM {}", "TRUNCATE {}"])
@pytest.mark.django_db
def test_even_the_owner_is_refused_on_history(statement):
    _material()
    with pytest.raises(DatabaseError, match="append-only"), transaction.atomic():
        _execute(statement.format("trials_rawmaterialevent"))


@pytest.mark.django_db
def test_untouched_record_has_no_doubts():
    material = _material()
    material.name = "Other"
    material.save()
    _material("EP-105").delete()
    assert list(doubts()) == []


@pytest.mark.parametrize(
    ("tampering", "what"),
    [
        ("UPDATE trials_rawmaterial SET name = 'forged'", "the row differs from its last event"),
        ("DELETE FROM trials_rawmaterial", "the row is gone, and its history does not say that it was deleted"),
        (
            "INSERT INTO trials_rawmaterial (code, name, supplier, function, hazards, remarks, withdrawn)"
            " VALUES ('X', 'forged', '', 'binder', '{}', '', false)",
            "the row has no history",
        ),
    ],
)
@pytest.mark.django_db
def test_row_changed_behind_the_triggers_is_named(tampering, what):
    _material()
    _execute("ALTER TABLE trials_rawmaterial DISABLE TRIGGER USER")
    _execute(tampering)
    assert [(doubt.table, doubt.what) for doubt in doubts()] == [("trials_rawmaterial", what)]


@pytest.mark.usefixtures("own_database")
class TestSeals:
    def _sealed_twice(self):
        _material("EP-1")
        first = seal_history()
        _material("EP-2")
        return first, seal_history()

    def test_chain_grows_only_when_something_happened(self):
        first, second = self._sealed_twice()
        assert first != second
        assert seal_history() == second
        assert list(doubts()) == []

    def test_open_transaction_is_left_for_the_next_seal(self):
        settings = connection.get_connection_params()
        settings.pop("cursor_factory", None)
        settings.pop("context", None)
        with psycopg.connect(**settings) as other:
            other.execute(
                "INSERT INTO trials_rawmaterial (code, name, supplier, function, hazards, remarks, withdrawn)"
                " VALUES ('SLOW', 'slow', '', 'binder', '{}', '', false)"
            )
            _material("EP-3")
            before = seal_history()
            other.commit()
        after = seal_history()
        assert before != after
        assert list(doubts()) == []

    @pytest.mark.parametrize(
        ("tampering", "what"),
        [
            ("UPDATE trials_rawmaterialevent SET pgh_created_at = now() WHERE code = 'EP-1'", "was changed"),
            ("UPDATE trials_rawmaterialevent SET pgh_context = '{}' WHERE code = 'EP-1'", "was changed"),
            ("DELETE FROM trials_rawmaterialevent WHERE code = 'EP-1'", "events were sealed, "),
            ("DELETE FROM trials_seal WHERE from_xid = 0", "the chain is broken"),
            ("UPDATE trials_seal SET digest = repeat('a', 64) WHERE from_xid = 0", "the chain is broken"),
        ],
    )
    def test_tampering_by_the_owner_shows(self, tampering, what):
        self._sealed_twice()
        _execute("ALTER TABLE trials_rawmaterialevent DISABLE TRIGGER USER")
        _execute("ALTER TABLE trials_seal DISABLE TRIGGER USER")
        _execute(tampering)
        _execute("ALTER TABLE trials_rawmaterialevent ENABLE TRIGGER USER")
        _execute("ALTER TABLE trials_seal ENABLE TRIGGER USER")
        found = list(doubts())
        assert any(what in doubt.what for doubt in found), json.dumps([doubt.what for doubt in found])
