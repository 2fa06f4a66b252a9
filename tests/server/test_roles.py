import psycopg
import pytest
from django.db import connection
from django.db.utils import ProgrammingError

pytestmark = pytest.mark.django_db


def current_user():
    with connection.cursor() as cursor:
        cursor.execute("SELECT current_user")
        return cursor.fetchone()[0]


def test_tests_run_as_an_owner_who_is_no_superuser():
    with connection.cursor() as cursor:
        cursor.execute("SELECT current_user, rolsuper FROM pg_roles WHERE rolname = current_user")
        assert cursor.fetchone() == ("labbook_test_owner", False)


@pytest.mark.parametrize(
    "statement",
    [
        "CREATE TABLE public.mine (id int)",
        "ALTER TABLE trials_person ADD mine int",
        "DROP TABLE trials_person",
        "TRUNCATE trials_person CASCADE",
        "CREATE ROLE mine",
        "SET session_replication_role = replica",
    ],
)
def test_application_role_is_refused(as_application_role, statement):
    with pytest.raises(ProgrammingError) as refused, as_application_role():
        connection.cursor().execute(statement)
    assert isinstance(refused.value.__cause__, psycopg.errors.InsufficientPrivilege)
    assert current_user() == "labbook_test_owner"


def test_application_role_reads_the_record(as_application_role):
    with as_application_role(), connection.cursor() as cursor:
        cursor.execute("SELECT current_user, count(*) FROM trials_person")
        assert cursor.fetchone() == ("labbook_test_application", 0)
    assert current_user() == "labbook_test_owner"


def test_umlauts_are_letters():
    # Unicode: the lower case of U+00C4 is U+00E4.
    with connection.cursor() as cursor:
        cursor.execute("SELECT lower('Ä'), upper('ä')")
        assert cursor.fetchone() == ("ä", "Ä")
