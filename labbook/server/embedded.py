"""The database that ``manage.py up`` starts itself, and keeps running."""

import json
import os
import shutil
import time
from pathlib import Path

from labbook.database import kept_secret

from . import cluster, roles
from .errors import CannotStartError
from .restarts import Restarts


class EmbeddedDatabase:
    application_role = roles.APPLICATION
    # The children find their passwords in the data folder; only the owner's steps read the owner's.
    owner_environment = {"LABBOOK_AS": "owner"}

    def __init__(self, own: cluster.Cluster, *, folder: Path, lock, say, cancelled):
        self._cluster = own
        self._connection_file = folder / "connection.json"
        self._lock = lock
        self._say = say
        self._cancelled = cancelled
        self._restarts = Restarts("The database server", log=own.log)

    def __enter__(self):
        own = self._cluster
        if own.account:
            self._say(f"PostgreSQL refuses to run as root: it runs as {own.account.name}, its data in {own.data}.")
        own.end_remains()
        if own.data.exists():
            own.check_secrets()
        else:
            own.create()
        own.check_version()
        self._socket = own.make_socket_folder()
        self._lock.tell(socket=str(self._socket))
        self._server = None
        try:
            self._server = own.start(self._socket, cancelled=self._cancelled)
            roles.make_all(own, self._socket)
            self._write_connection_file()
        except BaseException:
            self.__exit__()
            raise
        return self

    def __exit__(self, *_error):
        self._connection_file.unlink(missing_ok=True)
        if self._server:
            cluster.stop(self._server)
        shutil.rmtree(self._socket, ignore_errors=True)

    def tend(self) -> None:
        """Start the server again if it ended."""
        if self._server.poll() is None:
            return
        began = time.monotonic()
        try:
            self._cluster.end_remains()
            self._server = self._cluster.start(self._socket, cancelled=self._cancelled)
        except CannotStartError as error:
            self._say(f"{error} Trying again.")
            self._restarts.failed()
            time.sleep(1)
        else:
            self._restarts.succeeded()
            self._say(f"The database server had ended; it is back after {time.monotonic() - began:.1f} s.")

    def connection_options(self) -> dict:
        """What psycopg needs to connect as the application."""
        return {
            "host": str(self._socket),
            "port": 5432,
            "dbname": roles.DATABASE,
            "user": roles.APPLICATION,
            "password": self._password("application"),
        }

    def _password(self, role: str) -> str:
        return kept_secret(self._cluster.secrets / role)

    def _write_connection_file(self) -> None:
        """Tell the settings of this server; passwords stay in files of their own."""
        told = {
            "host": str(self._socket),
            "port": 5432,
            "dbname": roles.DATABASE,
            "owner": roles.OWNER,
            "application": roles.APPLICATION,
        }
        aside = self._connection_file.with_suffix(".new")
        with os.fdopen(os.open(aside, os.O_WRONLY | os.O_CREAT | os.O_TRUNC, 0o600), "w") as file:
            json.dump(told, file)
        aside.replace(self._connection_file)
