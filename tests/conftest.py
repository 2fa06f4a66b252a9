"""The database of the tests: a PostgreSQL server of their own, or the one at LABBOOK_TEST_URL.

It is started only when a test asks for the database, and ended with the run.
"""

import os
import secrets
from contextlib import contextmanager

import psycopg
import pytest

from labbook.database import from_url
from labbook.server import roles
from tests.throwaway import ThrowawayServer

pytest_plugins = ["tests.people", "tests.access.world"]

TEST_OWNER = "labbook_test_owner"
TEST_APPLICATION = "labbook_test_application"


@contextmanager
def given_server(url: str):
    with psycopg.connect(url, autocommit=True) as connection:
        assert connection.info.server_version >= 150000, "LABBOOK_TEST_URL: PostgreSQL 15 or newer is needed"
        yield connection


def make_roles(connection) -> dict:
    """Both roles under one password, the owner able to act as the application; returns the owner's settings."""
    password = secrets.token_urlsafe()
    roles.make_role(connection, TEST_OWNER, password, may_create_databases=True)
    roles.make_role(connection, TEST_APPLICATION, password)
    connection.execute(f"GRANT {TEST_APPLICATION} TO {TEST_OWNER}")
    return {"NAME": "labbook", "USER": TEST_OWNER, "PASSWORD": password}


@pytest.fixture(scope="session")
def throwaway_server():
    """The tests' own server; None where LABBOOK_TEST_URL names one."""
    if os.environ.get("LABBOOK_TEST_URL"):
        yield None
        return
    server = ThrowawayServer()
    try:
        server.start()
        yield server
    finally:
        server.end()


@pytest.fixture(scope="session")
def django_db_keepdb(throwaway_server, request):
    """Whether the test database outlives the run: in a server that is thrown away, deleting it is idle."""
    return throwaway_server is not None or request.config.getvalue("reuse_db")


@pytest.fixture(scope="session")
def django_db_modify_db_settings(throwaway_server):
    if throwaway_server:
        _use(throwaway_server.database | make_roles(throwaway_server.connection))
    else:
        url = os.environ["LABBOOK_TEST_URL"]
        with given_server(url) as connection:
            _use(from_url("LABBOOK_TEST_URL", url) | make_roles(connection))
    os.environ["LABBOOK_APPLICATION_ROLE"] = TEST_APPLICATION


def _use(entry: dict) -> None:
    """Point Django at this database, whatever the settings found when they were read."""
    from django.conf import settings
    from django.db import connections

    # In place: Django holds this very entry. A wrapper made for the old entry is thrown away.
    database = settings.DATABASES["default"]
    entry["ATOMIC_REQUESTS"] = database.get("ATOMIC_REQUESTS", False)
    database.clear()
    database.update(entry)
    connections.configure_settings(settings.DATABASES)
    if hasattr(connections._connections, "default"):
        del connections["default"]


@pytest.fixture(scope="session")
def django_db_setup(django_db_setup, throwaway_server, django_db_keepdb, django_db_blocker):
    from django.db import connection, connections
    from django.test.utils import setup_databases

    with django_db_blocker.unblock():
        if not connection.settings_dict["NAME"].startswith("test_"):
            # The plugin makes none when every chosen test has a database of its own.
            setup_databases(verbosity=0, interactive=False, aliases=["default"], keepdb=django_db_keepdb)
        connections.close_all()
    if throwaway_server:
        throwaway_server.keep()
    yield
    with django_db_blocker.unblock():
        connections.close_all()


@pytest.fixture(scope="session")
def application_rights(django_db_setup, django_db_blocker):
    """The rights that the application has in a running notebook, so that a refusal is for the right reason."""
    from trials.operations.rights import grant_rights

    with django_db_blocker.unblock():
        grant_rights(role=TEST_APPLICATION)


@pytest.fixture
def as_application_role(application_rights, db):
    """A context in which the test acts with the application's rights instead of the owner's.

    A refusal inside it rolls back what was done in it, and the role is the owner's again.
    """
    from django.db import connection, transaction

    @contextmanager
    def acting():
        with transaction.atomic(), connection.cursor() as cursor:
            cursor.execute(f"SET LOCAL ROLE {TEST_APPLICATION}")
            yield
            cursor.execute("RESET ROLE")

    return acting


@pytest.fixture
def own_database(django_db_setup, django_db_blocker):
    """A copy of the test database for a test that commits; thrown away after it.

    Emptying tables between tests would need TRUNCATE, which history refuses even to its owner.
    """
    from django.db import connection, connections

    with django_db_blocker.unblock():
        shared = connection.settings_dict["NAME"]
        copy = f"{shared}_{secrets.token_hex(4)}"
        _copy_database(connection, shared, copy)
        connection.settings_dict["NAME"] = copy
        try:
            yield copy
        finally:
            connections.close_all()
            connection.settings_dict["NAME"] = shared
            _drop_database(connection, copy)


def _copy_database(connection, shared: str, copy: str) -> None:
    connection.close()
    with connection._nodb_cursor() as cursor:
        cursor.execute(f'CREATE DATABASE "{copy}" TEMPLATE "{shared}"')


def _drop_database(connection, copy: str) -> None:
    with connection._nodb_cursor() as cursor:
        cursor.execute(f'DROP DATABASE "{copy}" WITH (FORCE)')


@pytest.fixture(autouse=True)
def _plain_static(settings):
    """Pages are rendered without collected files; that the collected ones exist is shown in the browser tests."""
    plain = {"BACKEND": "django.contrib.staticfiles.storage.StaticFilesStorage"}
    settings.STORAGES = settings.STORAGES | {"staticfiles": plain}


def pytest_terminal_summary(terminalreporter):
    """Say how many of the checks held our numbers against the outside."""
    passed = [report.nodeid for report in terminalreporter.stats.get("passed", []) if report.when == "call"]
    outside = sum(nodeid.startswith("tests/standards/") for nodeid in passed)
    if outside:
        terminalreporter.write_line(f"{outside} checks against published values and reference libraries held.")
