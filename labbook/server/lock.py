"""One notebook runs on a data folder at a time, and leaves word of what it started."""

import fcntl
import json
import os
import shutil
import signal
import tempfile
from contextlib import contextmanager
from pathlib import Path

from . import processes
from .errors import CannotStartError


class Lock:
    """The held lock file; ``earlier`` is what a notebook that never ended properly wrote into it."""

    def __init__(self, file):
        self._file = file
        self.earlier = _read(file)
        self._told = {"pid": os.getpid(), "started": processes.started_at(os.getpid())}

    def tell(self, **news) -> None:
        """Leave word for whoever starts after this process was killed."""
        self._told.update(news)
        self._write(json.dumps(self._told))

    def forget(self) -> None:
        self._write("")

    def _write(self, text: str) -> None:
        # In place: the lock is on this very file, and goes with the process that holds it.
        self._file.seek(0)
        self._file.truncate()
        self._file.write(text)
        self._file.flush()


@contextmanager
def held(path: Path, *, data: Path):
    with os.fdopen(os.open(path, os.O_RDWR | os.O_CREAT, 0o600), "r+") as file:
        try:
            fcntl.flock(file, fcntl.LOCK_EX | fcntl.LOCK_NB)
        except BlockingIOError:
            holder = _read(file).get("pid", "unknown")
            raise CannotStartError(
                f"Another manage.py up (process {holder}) already runs on {data}: stop it, or give another --data."
            ) from None
        lock = Lock(file)
        yield lock
        lock.forget()


def end_earlier(earlier: dict) -> None:
    """End the web server and remove the socket folder that a killed parent left behind."""
    web = earlier.get("web")
    if web and (processes.is_alive(web["pid"], web["started"]) or not processes.is_alive(web["pid"])):
        end_group(web["pid"])
    socket = earlier.get("socket")
    if socket and Path(socket).name.startswith("labbook-") and Path(socket).parent == Path(tempfile.gettempdir()):
        shutil.rmtree(socket, ignore_errors=True)


def end_group(leader: int, *, seconds: float = 10) -> None:
    """End a process group: kindly, then after ``seconds`` by force."""
    for number in (signal.SIGTERM, signal.SIGKILL):
        processes.send(processes.group_members(leader), number)
        if processes.wait_until(lambda: not processes.group_members(leader), seconds=seconds):
            return


def _read(file) -> dict:
    file.seek(0)
    try:
        return json.loads(file.read())
    except ValueError:
        return {}
