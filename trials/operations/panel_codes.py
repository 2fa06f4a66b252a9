"""Neutral codes for panels: drawn by lot, so that nothing of a cup can be read from one."""

import re
import secrets
from collections.abc import Callable, Iterable

from trials.models import Panel

from .acting import Refused

# Of each pair that a marker or a glove confuses (0 O, 1 I L, 2 Z, 5 S, 6 G, 8 B, U V) one or none; no E, since a
# spreadsheet reads 4E5 as a number.
LETTERS = "ACDFHJKMNPRTWXY"
FIGURES = "2345678"
_LENGTH = 3
_TYPED = re.compile(r"(?=.*[A-Z])[A-Z0-9]{3,6}")


def draw() -> str:
    """Letters and figures mixed: neither a word nor the number of a series."""
    while True:
        code = "".join(secrets.choice(LETTERS + FIGURES) for _ in range(_LENGTH))
        if any(sign in LETTERS for sign in code) and any(sign in FIGURES for sign in code):
            return code


def free_codes(count: int, *, taken: Iterable[str] = (), drawn: Callable[[], str] = draw) -> list[str]:
    """So many codes that no panel has; one that is taken is drawn again.

    Raises
    ------
    Refused
        If almost all codes are taken.
    """
    out = set(taken)
    found: list[str] = []
    for _ in range(100):
        wanted = {drawn() for _ in range(count - len(found))} - out
        wanted -= set(Panel.objects.filter(code__in=wanted).values_list("code", flat=True))
        out |= wanted
        found += sorted(wanted, key=lambda _: secrets.randbits(32))
        if len(found) == count:
            return found
    raise Refused("Hardly any code of three signs is left: give the panels codes of four.", field="code")


def typed_code(code: str) -> str:
    """A code from a label made before, as it is kept."""
    code = code.strip().upper()
    if code and not _TYPED.fullmatch(code):
        raise Refused(
            f"A panel's code is 3 to 6 letters and figures with a letter among them; got “{code}”.", field="code"
        )
    return code
