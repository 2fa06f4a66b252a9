"""The database of the tests: a PostgreSQL server of their own, or the one at LABBOOK_TEST_URL.

It is started only when a test asks for the database, and ended with the run.
"""

import os
import secrets
import shutil
import tempfile
from contextlib import contextmanager
from pathlib import Path

import psycopg
import pytest

from labbook.database import entry, from_url
from labbook.server import cluster, programs, roles
from labbook.server.accounts import server_account

pytest_plugins = ["tests.people"]

TEST_OWNER = "labbook_test_owner"
TEST_APPLICATION = "labbook_test_application"


@contextmanager
def throwaway_server():
    """An embedded server in a folder of its own; yields what psycopg needs to connect as its superuser."""
    account = server_account()
    folder = Path(tempfile.mkdtemp(prefix="labbook-tests-"))
    try:
        if account:
            folder.chmod(0o711)
        state = Path(os.environ.get("LABBOOK_STATE", "/var/lib/labbook"))
        embedded = cluster.Cluster(
            data=folder / "data",
            programs=programs.copied_to(state) if account else programs.wheel_folder(),
            secrets=folder / "secrets",
            account=account,
            durable=False,
        )
        embedded.create()
        socket = embedded.make_socket_folder()
        server = embedded.start(socket)
        try:
            with embedded.connect(socket) as connection:
                yield connection
        finally:
            cluster.stop(server)
            shutil.rmtree(socket, ignore_errors=True)
    finally:
        shutil.rmtree(folder, ignore_errors=True)


@contextmanager
def given_server(url: str):
    from_url("LABBOOK_TEST_URL", url)  # refuses what is no address
    with psycopg.connect(url, autocommit=True) as connection:
        assert connection.info.server_version >= 150000, "LABBOOK_TEST_URL: PostgreSQL 15 or newer is needed"
        yield connection


def make_roles(connection) -> dict:
    """Both roles, the owner also able to act as the application; returns the settings entry of the owner."""
    password = secrets.token_urlsafe()
    roles.make_role(connection, TEST_OWNER, password, may_create_databases=True)
    roles.make_role(connection, TEST_APPLICATION, secrets.token_urlsafe())
    connection.execute(f"GRANT {TEST_APPLICATION} TO {TEST_OWNER}")
    known = {"dbname": "labbook", "user": TEST_OWNER, "password": password}
    return entry(host=connection.info.host, port=connection.info.port, **known)


@pytest.fixture(scope="session")
def django_db_modify_db_settings():
    from django.conf import settings
    from django.db import connections

    url = os.environ.get("LABBOOK_TEST_URL")
    with given_server(url) if url else throwaway_server() as connection:
        # In place: Django holds this very entry. A wrapper made for the old entry is thrown away.
        database = settings.DATABASES["default"]
        requests = database.get("ATOMIC_REQUESTS", False)
        database.clear()
        database.update(make_roles(connection), ATOMIC_REQUESTS=requests)
        connections.configure_settings(settings.DATABASES)
        if hasattr(connections._connections, "default"):
            del connections["default"]
        os.environ["LABBOOK_APPLICATION_ROLE"] = TEST_APPLICATION
        yield
        connections.close_all()


@pytest.fixture
def as_application_role(db):
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
