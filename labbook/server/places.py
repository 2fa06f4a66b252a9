"""Where a notebook keeps its database, and what has to be true of its data folder."""

import hashlib
import os
import tempfile
from pathlib import Path

from . import programs
from .accounts import server_account
from .cluster import Cluster
from .errors import CannotStartError


def state_folder() -> Path:
    """The system's folder for what runs under another account; used only as root."""
    return Path(os.environ.get("LABBOOK_STATE") or "/var/lib/labbook")


def make_writable(data: Path) -> None:
    try:
        data.mkdir(mode=0o700, parents=True, exist_ok=True)
        with tempfile.TemporaryFile(dir=data):
            pass
    except OSError as error:
        raise CannotStartError(
            f"The data folder {data} cannot be written ({error.strerror}): give another with --data, or its rights."
        ) from error


def cluster_of(data: Path) -> Cluster:
    """The cluster of this data folder: in it, or as root in the system's state folder and linked from it."""
    account = server_account()
    link = data / "postgres"
    if account is None:
        _refuse_what_root_made(link)
        return Cluster(data=link, programs=programs.wheel_folder(), secrets=data / "secrets")
    if not link.is_symlink():
        _link_into_state(link)
    return Cluster(
        data=link.readlink(),
        programs=programs.copied_to(state_folder()),
        secrets=data / "secrets",
        account=account,
    )


def lock_file(cluster: Cluster) -> Path:
    """Beside the data itself: two data folders linked to the same data must not both start it."""
    return cluster.data.with_name("up.lock")


def _refuse_what_root_made(link: Path) -> None:
    if link.is_symlink() and not os.access(link, os.W_OK):
        raise CannotStartError(
            f"The database of {link.parent} was made by root: run manage.py up as root, as before."
        )


def _link_into_state(link: Path) -> None:
    if link.exists():
        raise CannotStartError(f"{link} belongs to {link.owner()}: run manage.py up as {link.owner()}, not as root.")
    state = state_folder() / hashlib.sha256(os.fsencode(link.parent.resolve())).hexdigest()[:12]
    for folder in (state_folder(), state):
        folder.mkdir(parents=True, exist_ok=True)
        folder.chmod(0o755)  # whatever the umask; the data itself lies in a closed folder below
    link.symlink_to(state / "postgres")
