import pytest
from django.db import connection

from labbook.server.sealing import Sealing


@pytest.fixture
def said():
    return []


def options(**other):
    known = connection.settings_dict
    return {
        "host": known["HOST"],
        "port": known["PORT"],
        "user": known["USER"],
        "password": known["PASSWORD"],
        "dbname": known["NAME"],
    } | other


def seals():
    with connection.cursor() as cursor:
        cursor.execute("SELECT count(*) FROM trials_seal")
        return cursor.fetchone()[0]


def test_seals_what_happened(own_database, said):
    from tests.people import make_person
    from trials.models import Role

    before = seals()
    make_person("ada", Role.BENCH)
    sealing = Sealing(options(), say=said.append)
    sealing.seal()
    sealing._connection.close()
    assert (seals() - before, said) == (1, [])


def test_database_not_yet_prepared_is_no_news(own_database, said):
    sealing = Sealing(options(dbname="postgres"), say=said.append)
    sealing.seal()
    sealing._connection.close()
    assert said == []


def test_failure_is_told_once_in_one_line(own_database, said):
    sealing = Sealing(options(password="wrong"), say=said.append)
    sealing.seal()
    sealing.seal()
    assert len(said) == 1
    assert said[0].startswith("The history could not be sealed: ")
    assert "\n" not in said[0]
