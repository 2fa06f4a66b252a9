"""Asking for the first administrator, at a real terminal."""

import os
import pty
import select
import signal
import subprocess
import sys
import time

import pytest

from labbook.database import ROOT

PROGRAM = """
import json, sys
from labbook.server.errors import CannotStartError, StoppedError
from labbook.server.first_person import first_person
try:
    print(json.dumps(first_person(print)))
except StoppedError:
    print("stopped")
except CannotStartError as error:
    print(error)
"""
GIVEN = {"LABBOOK_ADMIN_NAME": "Ada Quay", "LABBOOK_ADMIN_SIGN_IN": "ada", "LABBOOK_ADMIN_PASSWORD": "grey-heron"}


class Terminal:
    def __init__(self, **given):
        kept = {name: value for name, value in os.environ.items() if not name.startswith("LABBOOK_ADMIN")}
        self._ours, theirs = pty.openpty()
        command = [sys.executable, "-c", PROGRAM]
        self.process = subprocess.Popen(
            command, cwd=ROOT, env=kept | given, stdin=theirs, stdout=theirs, stderr=theirs, start_new_session=True
        )
        os.close(theirs)
        self.seen = ""
        self._past = 0

    def read_until(self, text: str) -> None:
        """Read on, past what was read before, until ``text`` has come."""
        deadline = time.monotonic() + 60
        while text not in self.seen[self._past :]:
            assert time.monotonic() < deadline, self.seen
            if select.select([self._ours], [], [], 1)[0]:
                self.seen += os.read(self._ours, 4096).decode()
        self._past = self.seen.index(text, self._past) + len(text)

    def type(self, text: str) -> None:
        os.write(self._ours, f"{text}\n".encode())

    def close(self) -> None:
        self.process.kill()
        self.process.wait()
        os.close(self._ours)


@pytest.fixture
def terminal():
    opened = []

    def start(**given):
        opened.append(Terminal(**given))
        return opened[-1]

    yield start
    for one in opened:
        one.close()


def test_asks_for_what_is_missing_and_hides_the_password(terminal):
    asked = terminal(LABBOOK_ADMIN_NAME="Ada Quay")
    asked.read_until("Sign-in name: ")
    asked.type("")
    asked.read_until("This cannot be left empty.")
    asked.read_until("Sign-in name: ")
    asked.type("ada")
    asked.read_until("Password: ")
    asked.type("grey-heron")
    asked.read_until("Password again: ")
    asked.type("grey-herring")
    asked.read_until("The two passwords differ.")
    assert "grey-her" not in asked.seen
    for prompt in ("Password: ", "Password again: "):
        asked.read_until(prompt)
        asked.type("grey-heron")
    asked.read_until('"LABBOOK_ADMIN_PASSWORD": "grey-heron"')
    assert '"LABBOOK_ADMIN_SIGN_IN": "ada"' in asked.seen
    assert "Full name" not in asked.seen


@pytest.mark.parametrize("number", [signal.SIGINT, signal.SIGTERM], ids=["Ctrl-C", "SIGTERM"])
def test_a_signal_ends_the_question(terminal, number):
    asked = terminal()
    asked.read_until("Full name: ")
    time.sleep(0.5)  # the question is shown a moment before the answer is waited for
    asked.process.send_signal(number)
    asked.read_until("stopped")


def ended(**given):
    kept = {name: value for name, value in os.environ.items() if not name.startswith("LABBOOK_ADMIN")}
    command = [sys.executable, "-c", PROGRAM]
    return subprocess.run(
        command, cwd=ROOT, env=kept | given, stdin=subprocess.DEVNULL, capture_output=True, text=True, check=True
    ).stdout


def test_environment_is_enough():
    assert ended(**GIVEN) == (
        '{"LABBOOK_ADMIN_NAME": "Ada Quay", "LABBOOK_ADMIN_SIGN_IN": "ada", "LABBOOK_ADMIN_PASSWORD": "grey-heron"}\n'
    )


def test_without_a_terminal_it_says_what_to_set():
    said = ended(LABBOOK_ADMIN_NAME="Ada Quay")
    assert "no administrator yet: set LABBOOK_ADMIN_SIGN_IN, LABBOOK_ADMIN_PASSWORD, or start it with --demo" in said
