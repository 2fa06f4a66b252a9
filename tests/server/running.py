"""A real ``manage.py up`` for the tests, and what can be asked of its processes."""

import contextlib
import http.client
import json
import os
import re
import shutil
import socket
import subprocess
import sys
import tempfile
import threading
import time
from pathlib import Path

import psutil
import psycopg

from labbook.database import ROOT

ADMINISTRATOR = {
    "LABBOOK_ADMIN_NAME": "Ada Quay",
    "LABBOOK_ADMIN_SIGN_IN": "ada",
    "LABBOOK_ADMIN_PASSWORD": "grey-heron-on-the-quay",
}
# Generous: a first start migrates an empty database and compresses the static files.
START_SECONDS = 300


class Place:
    """A data folder of its own, and as root a state folder that the database's account can reach."""

    def __init__(self):
        self.root = Path(tempfile.mkdtemp(prefix="labbook-up-"))
        self.root.chmod(0o711)
        self.data = self.root / "data"
        self.port = free_port()

    def environment(self, **more) -> dict:
        ours = ("LABBOOK_", "DATABASE_URL", "DJANGO_", "PG")
        kept = {name: value for name, value in os.environ.items() if not name.startswith(ours)}
        return kept | {"LABBOOK_STATE": str(self.root / "state")} | more

    def command(self, *arguments) -> list[str]:
        return [sys.executable, str(ROOT / "manage.py"), *map(str, arguments)]

    def up_command(self, *more) -> list[str]:
        return self.command("up", "--data", self.data, "--port", self.port, *more)

    def refused(self, *more, **environment) -> subprocess.CompletedProcess:
        """An ``up`` that is expected to end by itself."""
        return subprocess.run(
            self.up_command(*more),
            env=self.environment(**environment),
            capture_output=True,
            text=True,
            timeout=START_SECONDS,
            check=False,
            stdin=subprocess.DEVNULL,
        )

    def beside(self, *arguments) -> subprocess.CompletedProcess:
        """Another management command, with nothing told but the data folder."""
        return subprocess.run(
            self.command(*arguments),
            env=self.environment(LABBOOK_DATA=str(self.data)),
            capture_output=True,
            text=True,
            timeout=60,
            check=False,
        )

    def remove(self) -> None:
        shutil.rmtree(self.root, ignore_errors=True)


class Up:
    """A running notebook; in a ``with`` block it is ended, whatever happened."""

    def __init__(self, place: Place, *more, **environment):
        self.place = place
        began = time.monotonic()
        self.parent = subprocess.Popen(
            place.up_command(*more),
            env=place.environment(**(ADMINISTRATOR | environment)),
            stdin=subprocess.DEVNULL,
            stdout=subprocess.PIPE,
            stderr=subprocess.STDOUT,
            text=True,
        )
        self.lines = []
        self._ready = threading.Event()
        self._reader = threading.Thread(target=self._read, daemon=True)
        self._reader.start()
        self._ready.wait(START_SECONDS)
        self.started_after = time.monotonic() - began
        if not any("The notebook is at" in line for line in self.lines):
            self.end()
            raise AssertionError("It did not start:\n" + "".join(self.lines))

    def __enter__(self):
        return self

    def __exit__(self, *_error):
        self.end()

    def _read(self) -> None:
        for line in self.parent.stdout:
            self.lines.append(line)
            if "The notebook is at" in line:
                self._ready.set()
        self._ready.set()

    def end(self) -> int:
        if self.parent.poll() is None:
            self.parent.terminate()
        ended = self.parent.wait(timeout=60)
        self._reader.join(timeout=10)
        self.parent.stdout.close()
        return ended

    def processes(self) -> list[psutil.Process]:
        return psutil.Process(self.parent.pid).children(recursive=True)

    def postmaster(self) -> psutil.Process:
        (found,) = [p for p in self._children() if p.name() == "postgres"]
        return found

    def web(self) -> psutil.Process:
        (found,) = [p for p in self._children() if p.name() != "postgres"]
        return found

    def _children(self):
        return psutil.Process(self.parent.pid).children()

    def told(self) -> dict:
        """What the running notebook tells the settings."""
        return json.loads(Path(self.place.data, "connection.json").read_text())

    def connect(self, role: str) -> psycopg.Connection:
        told = self.told()
        password = Path(self.place.data, "secrets", role).read_text()
        known = {name: told[name] for name in ("host", "port", "dbname")}
        return psycopg.connect(**known, user=told[role], password=password, autocommit=True, connect_timeout=2)

    def answers(self) -> bool:
        return page_answers(self.place.port)

    def seconds_until_it_answers(self, most: float) -> float:
        began = time.monotonic()
        while not self.answers():
            assert time.monotonic() - began < most, f"no answer within {most} s\n" + "".join(self.lines)
            time.sleep(0.02)
        return time.monotonic() - began


def page_answers(port: int) -> bool:
    """Whether the first page sends a stranger to the door, having asked the database whose session this is."""
    asked = http.client.HTTPConnection("127.0.0.1", port, timeout=2)
    try:
        asked.request("GET", "/", headers={"Cookie": "sessionid=" + "x" * 32})
        answer = asked.getresponse()
        return answer.status == 302 and answer.headers["Location"].startswith("/sign-in/")
    except (OSError, http.client.HTTPException):
        return False
    finally:
        asked.close()


def alive(processes: list[psutil.Process]) -> list[psutil.Process]:
    found = []
    for process in processes:
        with contextlib.suppress(psutil.NoSuchProcess):
            if process.is_running() and process.status() != psutil.STATUS_ZOMBIE:
                found.append(process)
    return found


def left_after(processes: list[psutil.Process], seconds: float) -> list[psutil.Process]:
    _, _ = psutil.wait_procs(processes, timeout=seconds)
    return alive(processes)


def free_port() -> int:
    with socket.socket() as trial:
        trial.bind(("127.0.0.1", 0))
        return trial.getsockname()[1]


def is_one_line(text: str) -> bool:
    return bool(re.fullmatch(r"[^\n]+\n", text))
