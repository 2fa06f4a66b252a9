"""What people wrote of each cup: outcome, how it failed, and a lesson of sentences that fit the figures.

A sentence is taken only where everything it speaks of is known; ``{if_...}`` stands for a condition that must hold.
"""

import string
from dataclasses import dataclass
from functools import cache

from .chance import chance
from .characters import CHARACTERS
from .facts import Facts, groups, unfair
from .figures_told import figures
from .imagined import ImaginedCup
from .round_rows import RoundRow
from .stories import STORIES, UNFAIR_STORIES
from .verdicts import FAILS, UNFAIR, Verdict, spiked_late, verdict

# How each of them writes: which kinds of sentence, in which order.
VOICES = {
    "jonna": (("seen", "next"), ("seen", "because", "next")),
    "tibor": (("because", "seen", "next"), ("seen", "character")),
    "nadia": (("seen", "because"), ("character", "seen", "next")),
    "ayo": (("next", "because"), ("seen", "because", "next")),
    "lena": (("seen", "because", "next"), ("seen", "next")),
    "ruth": (("next", "seen"), ("seen", "character", "next")),
    "peer": (("seen", "next"),),
    "caspar": (("seen", "because"), ("character", "next")),
    "maren": (("seen", "because", "next"),),
}
LESSONS_OF_A_KIND = 2


@dataclass(frozen=True, slots=True)
class ToldFailure:
    mode: str
    severity: int
    how: str
    cause: str


@dataclass(frozen=True, slots=True)
class Told:
    outcome: str
    why: str
    unfair_because: str = ""
    lesson: str = ""
    failures: tuple[ToldFailure, ...] = ()


@cache
def tell(row: RoundRow) -> dict[tuple, Told]:
    """By the key of the cup; of cups with an additive. References have no outcome: they are what is compared with."""
    found: dict[tuple, Told] = {}
    made = groups(row)
    for facts in made.values():
        judged = verdict(facts)
        written = 0
        for cup in facts.cups:
            why = unfair(cup)
            told = _unfair(cup, facts, made, why) if why else _fair(cup, facts, made, judged, written)
            written += not why
            found[cup.key] = told
    return found


def sentences(why: str, kind: str, slots: dict[str, str], *name: object) -> list[str]:
    """Those of a story that the figures allow, filled in, in an order of chance."""
    story = {**STORIES, **UNFAIR_STORIES}[why]
    known = [text.format_map(slots) for text in story.get(kind, ()) if _asked_for(text) <= set(slots)]
    chance(why, kind, *name).shuffle(known)
    return known


def _asked_for(text: str) -> set[str]:
    return {name for _, name, _, _ in string.Formatter().parse(text) if name}


def _fair(cup: ImaginedCup, facts: Facts, made, judged: Verdict, written: int) -> Told:
    why = "late spikes" if spiked_late(cup) else judged.why
    outcome = FAILS if why == "late spikes" else judged.outcome
    slots = figures(cup, facts, made)
    lesson = _lesson(cup, why, slots, written) if written < LESSONS_OF_A_KIND else ""
    return Told(outcome, why, "", lesson, _failures(cup, judged, why, slots))


def _unfair(cup: ImaginedCup, facts: Facts, made, why: str) -> Told:
    slots = figures(cup, facts, made)
    reason = sentences(why, "why", slots, cup.nature.name)[0]
    return Told(UNFAIR, why, reason[:1].upper() + reason[1:] + ".", _once(cup, why, "next", slots, cup.place))


def _failures(cup: ImaginedCup, judged: Verdict, why: str, slots) -> tuple[ToldFailure, ...]:
    if why == "late spikes":
        return (ToldFailure("pinholes", 3, _how(cup, why, slots), ""),)
    if judged.outcome != FAILS:
        return ()
    return (ToldFailure(judged.mode, judged.severity, _how(cup, why, slots), judged.cause),)


def _how(cup: ImaginedCup, why: str, slots) -> str:
    return _in_turn(sentences(why, "how", slots, cup.row.key, cup.code, cup.dosage), cup.place)


def _lesson(cup: ImaginedCup, why: str, slots, turn: int) -> str:
    ways = VOICES[cup.row.owner]
    kinds = ways[chance(cup.row.key, cup.code, cup.dosage, "voice").randrange(len(ways))]
    parts = [_once(cup, why, kind, slots, turn) for kind in kinds]
    said = " ".join(part for part in parts if part)
    return said or _once(cup, why, "next", slots, turn)


def _once(cup: ImaginedCup, why: str, kind: str, slots, turn: int) -> str:
    """Cups of one dosage are told in different words."""
    name = (cup.row.key, cup.code, cup.dosage)
    if kind == "character":
        known = list(CHARACTERS[cup.code])
        chance(kind, *name).shuffle(known)
    else:
        known = sentences(why, kind, slots, *name)
    return _in_turn(known, turn)


def _in_turn(known: list[str], turn: int) -> str:
    return known[turn % len(known)] if known else ""
