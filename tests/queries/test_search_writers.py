"""Words of a trial that two people write of at once: neither may be lost to the other."""

from threading import Thread

import psycopg
import pytest
from django.db import connection

from tests.cup_making import make_cups
from tests.people import make_person
from trials.models import Role
from trials.queries.search import Asked, find_trials

MILKY = "INSERT INTO trials_failure (trial_id, mode, severity, how, cause) VALUES (%s, 'haze', 1, 'Milky', '')"
MEADOW = "UPDATE trials_trial SET lesson = 'Meadow' WHERE id = %s"


@pytest.mark.usefixtures("own_database")
def test_both_are_found():
    person = make_person("bench_one", Role.BENCH)
    (trial,) = make_cups(person)
    address = {
        name: connection.get_connection_params()[name] for name in ("dbname", "user", "password", "host", "port")
    }
    with psycopg.connect(**address) as first:
        first.execute(MILKY, [trial.pk])
        second = Thread(target=_write, args=(address, trial.pk))
        second.start()
        _wait_until_somebody_waits()
    second.join(timeout=20)
    assert not second.is_alive()
    assert find_trials(person, Asked(words="milky meadow")).count == 1


def _write(address, trial):
    with psycopg.connect(**address) as mine:
        mine.execute(MEADOW, [trial])


def _wait_until_somebody_waits():
    with connection.cursor() as cursor:
        for _ in range(5000):
            cursor.execute("SELECT count(*) FROM pg_locks WHERE NOT granted")
            if cursor.fetchone()[0]:
                return
    raise AssertionError("nobody waited: the two did not meet")
