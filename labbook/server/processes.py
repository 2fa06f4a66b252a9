"""Starting, recognising and ending processes."""

import os
import signal
import subprocess
import sys
import time
from collections.abc import Callable, Iterable
from pathlib import Path

import psutil

from .accounts import Account

TETHER = Path(__file__).with_name("tether.py")


def launch(command: list, *, account: Account | None = None, end_with=signal.SIGTERM, **options):
    """Start ``command`` so that it receives ``end_with`` should this process die (Linux only)."""
    ids = [str(account.uid), str(account.gid)] if account else ["-", "-"]
    tether = [sys.executable, "-I", "-S", str(TETHER), str(int(end_with)), str(os.getpid()), *ids]
    return subprocess.Popen(  # noqa: S603 - our own programs, no shell
        [*tether, *map(str, command)], stdin=subprocess.DEVNULL, umask=0o077, **options
    )


def run_to_end(command: list, **options) -> tuple[int, str]:
    """Run ``command``; returns its exit code and all it said."""
    process = launch(command, cwd="/", stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True, **options)
    said, _ = process.communicate()
    return process.returncode, said


def wait_until(is_so: Callable[[], bool], *, seconds: float) -> bool:
    deadline = time.monotonic() + seconds
    while not is_so():
        if time.monotonic() > deadline:
            return False
        time.sleep(0.02)
    return True


def is_alive(pid: int, started: float | None = None) -> bool:
    """Whether process ``pid`` runs (a zombie does not), and is the one that ``started`` then."""
    try:
        process = psutil.Process(pid)
        same = started is None or abs(process.create_time() - started) < 1
        return same and process.status() != psutil.STATUS_ZOMBIE
    except psutil.NoSuchProcess:
        return False


def started_at(pid: int) -> float:
    return psutil.Process(pid).create_time()


def working_in(folder: Path) -> list[int]:
    """Processes whose working folder is ``folder``: every process of a PostgreSQL server sits in its data."""
    return [p.pid for p in psutil.process_iter() if _works_in(p, folder)]


def _works_in(process: psutil.Process, folder: Path) -> bool:
    try:
        return Path(process.cwd()) == folder
    except (psutil.Error, OSError):
        return False


def group_members(leader: int) -> list[int]:
    return [pid for pid in psutil.pids() if _group_of(pid) == leader and is_alive(pid)]


def _group_of(pid: int) -> int | None:
    try:
        return os.getpgid(pid)
    except OSError:
        return None


def send(pids: Iterable[int], number: signal.Signals) -> None:
    for pid in pids:
        try:
            os.kill(pid, number)
        except ProcessLookupError:
            continue
