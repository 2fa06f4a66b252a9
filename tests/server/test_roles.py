import psycopg
import pytest
from django.db import connection
from django.db.utils import ProgrammingError

pytestmark = pytest.mark.django_db


def test_tests_run_as_an_owner_who_is_no_superuser():
    with connection.cursor() as cursor:
        cursor.execute("SELECT current_user, rolsuper FROM pg_roles WHERE rolname = current_user")
        assert cursor.fetchone() == ("labbook_test_owner", False)


def test_application_role_cannot_make_tables(as_application_role):
    with pytest.raises(ProgrammingError) as refused, as_application_role():
        connection.cursor().execute("CREATE TABLE public.mine (id int)")
    assert isinstance(refused.value.__cause__, psycopg.errors.InsufficientPrivilege)


def test_role_is_the_owners_again_after_a_refusal(as_application_role):
    with pytest.raises(ProgrammingError), as_application_role():
        connection.cursor().execute("CREATE TABLE public.mine (id int)")
    with connection.cursor() as cursor:
        cursor.execute("SELECT current_user")
        assert cursor.fetchone() == ("labbook_test_owner",)


def test_umlauts_are_letters():
    # Unicode: U+00C4 folds to U+00E4.
    with connection.cursor() as cursor:
        cursor.execute("SELECT lower('Ä'), upper('ä')")
        assert cursor.fetchone() == ("ä", "Ä")
