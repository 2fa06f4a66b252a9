"""The account a PostgreSQL server runs under: it refuses to run as root."""

import os
import pwd
import shutil
import subprocess
from dataclasses import dataclass

from .errors import CannotStartError

OWN_ACCOUNT = "labbook"


@dataclass(frozen=True)
class Account:
    name: str
    uid: int
    gid: int


def server_account() -> Account | None:
    """None where this account itself will do; as root an unprivileged one, made if need be."""
    if os.geteuid() != 0:
        return None
    found = _first_of(OWN_ACCOUNT, "postgres") or _made() or _first_of("nobody")
    if found is None:
        raise CannotStartError(
            "PostgreSQL refuses to run as root and no other account was found: run manage.py up as an "
            "ordinary user, or set DATABASE_URL and LABBOOK_OWNER_URL."
        )
    return found


def _first_of(*names: str) -> Account | None:
    for name in names:
        try:
            entry = pwd.getpwnam(name)
        except KeyError:
            continue
        if entry.pw_uid != 0:
            return Account(name, entry.pw_uid, entry.pw_gid)
    return None


def _made() -> Account | None:
    useradd = shutil.which("useradd", path="/usr/sbin:/sbin:/usr/bin:/bin")
    if useradd:
        subprocess.run(  # noqa: S603 - a system program found on the system's own path
            [useradd, "--system", "--no-create-home", "--shell", "/usr/sbin/nologin", OWN_ACCOUNT],
            check=False,
            capture_output=True,
        )
    return _first_of(OWN_ACCOUNT)
