"""Who the first administrator is: from the environment, else asked for once."""

import getpass
import os
import signal
import sys
from contextlib import contextmanager

from .errors import CannotStartError, StoppedError

ASKED = {
    "LABBOOK_ADMIN_NAME": "Full name: ",
    "LABBOOK_ADMIN_SIGN_IN": "Sign-in name: ",
    "LABBOOK_ADMIN_PASSWORD": "Password: ",
}


def first_person(say) -> dict:
    """Environment variables for ``manage.py first_person``."""
    given = {name: os.environ[name] for name in ASKED if os.environ.get(name)}
    missing = [name for name in ASKED if name not in given]
    if not missing:
        return given
    if not sys.stdin.isatty():
        raise CannotStartError(
            f"The notebook has no administrator yet: set {', '.join(missing)}, or start it with --demo for a look."
        )
    say("The notebook has nobody in it yet. Its first administrator:")
    with _ending_the_question():
        return given | {name: _ask(name) for name in missing}


def _ask(name: str) -> str:
    ask = getpass.getpass if name == "LABBOOK_ADMIN_PASSWORD" else input
    while True:
        answer = ask(ASKED[name]).strip()
        if answer and (ask is input or getpass.getpass("Password again: ") == answer):
            return answer
        print("The two passwords differ." if answer else "This cannot be left empty.", file=sys.stderr)  # noqa: T201 - a dialogue


@contextmanager
def _ending_the_question():
    """Let Ctrl-C and SIGTERM end a question, which otherwise would wait on."""
    numbers = (signal.SIGINT, signal.SIGTERM)
    before = {number: signal.signal(number, signal.default_int_handler) for number in numbers}
    try:
        yield
    except (KeyboardInterrupt, EOFError):
        raise StoppedError from None
    finally:
        for number, handler in before.items():
            signal.signal(number, handler)
