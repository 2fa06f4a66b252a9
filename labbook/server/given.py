"""A database server that somebody else keeps, named by DATABASE_URL and LABBOOK_OWNER_URL."""

import os

import psycopg

from labbook.database import from_url

from .errors import CannotStartError

OLDEST = 150000


def is_given() -> bool:
    return bool(os.environ.get("DATABASE_URL") or os.environ.get("LABBOOK_OWNER_URL"))


class GivenDatabase:
    def __init__(self):
        self._url = _address("DATABASE_URL")
        self._owner_url = _address("LABBOOK_OWNER_URL")
        self.application_role = from_url("DATABASE_URL", self._url)["USER"]
        self.owner_environment = {"LABBOOK_AS": "owner", "LABBOOK_OWNER_URL": self._owner_url}

    def __enter__(self):
        if from_url("LABBOOK_OWNER_URL", self._owner_url)["USER"] == self.application_role:
            raise CannotStartError(
                f"DATABASE_URL and LABBOOK_OWNER_URL both name the role {self.application_role}: "
                "the application must not own the record; give it a role of its own."
            )
        check("LABBOOK_OWNER_URL", self._owner_url)
        check("DATABASE_URL", self._url, no_superuser=True)
        return self

    def __exit__(self, *_error):
        pass

    def tend(self) -> None:
        """Whoever keeps the server starts it again; the pages reconnect by themselves."""

    def connection_options(self) -> dict:
        return {"conninfo": self._url}


def check(variable: str, url: str, *, no_superuser=False) -> None:
    """Refuse a server that cannot be reached, is too old, or for which Ä and ä are no letters."""
    try:
        with psycopg.connect(url, connect_timeout=5) as connection:
            version = connection.info.server_version
            letters, superuser = connection.execute(
                "SELECT lower('Ä') = 'ä' AND upper('ä') = 'Ä' AND current_setting('server_encoding') = 'UTF8',"
                " rolsuper FROM pg_roles WHERE rolname = current_user"
            ).fetchone()
    except psycopg.Error as error:
        reason = " ".join(str(error).split())
        raise CannotStartError(f"The server at {variable} cannot be reached: {reason}") from None
    if version < OLDEST:
        raise CannotStartError(
            f"The server at {variable} is PostgreSQL {version // 10000}: the notebook needs 15 or newer."
        )
    if not letters:
        raise CannotStartError(
            f"The database at {variable} loses umlauts (lower('Ä') is not 'ä'): make it with ENCODING 'UTF8' and "
            "a UTF-8 character type such as LC_CTYPE 'C.UTF-8'."
        )
    if no_superuser and superuser:
        raise CannotStartError(f"{variable} names a superuser: the application needs a role without that right.")


def _address(variable: str) -> str:
    url = os.environ.get(variable)
    if not url:
        raise CannotStartError(
            f"{variable} is not set: give both DATABASE_URL (application) and LABBOOK_OWNER_URL (owner), or neither."
        )
    try:
        from_url(variable, url)
    except ValueError as error:
        raise CannotStartError(str(error)) from None
    return url
