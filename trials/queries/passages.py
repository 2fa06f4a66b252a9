"""Passages of the record with the words asked for marked, cut to what a list has room for."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from django.db import connection

from trials.models.searching import CONFIGURATION

# No keyboard types these; what is cut out by them is escaped like any other text.
BEGIN, END = "\x02", "\x03"
NOT_IN_TEXT = {ord(BEGIN): None, ord(END): None}
MOST_WORDS, BEFORE = 45, 8


@dataclass(frozen=True, slots=True)
class Piece:
    text: str
    marked: bool


@dataclass(frozen=True, slots=True)
class Passage:
    """``name`` says what it is a passage of."""

    name: str
    pieces: tuple[Piece, ...]


def marked(passages: Mapping[int, Sequence[tuple[str, str]]], words: str) -> dict[int, Passage]:
    """Of each record the first passage in which the words stand, else its first; one query where words are given."""
    flat = [text.translate(NOT_IN_TEXT) for offered in passages.values() for _, text in offered]
    folded = iter(_folded_and_marked(flat, words) if words and flat else flat)
    texts = iter(flat)
    found = {}
    for key, offered in passages.items():
        chunks = [(name, aligned(next(texts), next(folded))) for name, _ in offered]
        if chunks:
            name, best = next((one for one in chunks if any(hit for _, hit in one[1])), chunks[0])
            found[key] = Passage(name, pieces(cut(best)))
    return found


def aligned(text: str, folded: str) -> list[tuple[str, bool]]:
    """Every word of the text, and whether the same word of its folded copy is marked.

    Folding changes letters and never the spaces, so the nth word of one is the nth of the other.

    Examples
    --------
    >>> aligned("Bläschen, no craters", "\\x02blaeschen\\x03, no craters")
    [('Bläschen,', True), ('no', False), ('craters', False)]
    """
    words, copies = text.split(), folded.split()
    if len(words) != len(copies):
        return [(word, False) for word in words]
    return [(word, BEGIN in copy) for word, copy in zip(words, copies, strict=True)]


def cut(words: list[tuple[str, bool]]) -> list[tuple[str, bool]]:
    """So many words from shortly before the first that is marked; an ellipsis stands for what is left out."""
    first = next((place for place, (_, hit) in enumerate(words) if hit), 0)
    start = max(0, min(first - BEFORE, len(words) - MOST_WORDS))
    kept = words[start : start + MOST_WORDS]
    before = [("…", False)] if start else []
    after = [("…", False)] if start + MOST_WORDS < len(words) else []
    return [*before, *kept, *after]


def pieces(words: list[tuple[str, bool]]) -> tuple[Piece, ...]:
    """Running text in which each marked word stands alone, its punctuation outside.

    Examples
    --------
    >>> [piece.text for piece in pieces([("No", False), ("“craters”,", True), ("ever", False)])]
    ['No “', 'craters', '”, ever']
    """
    found: list[Piece] = []
    plain = ""
    for place, (word, hit) in enumerate(words):
        plain += " " if place else ""
        core = word.strip("“”„\"'()[].,;:!?") if hit else ""
        if not core:
            plain += word
            continue
        lead, _, tail = word.partition(core)
        if plain + lead:
            found.append(Piece(plain + lead, marked=False))
        found.append(Piece(core, marked=True))
        plain = tail
    if plain:
        found.append(Piece(plain, marked=False))
    return tuple(found)


def _folded_and_marked(texts: list[str], words: str) -> list[str]:
    with connection.cursor() as cursor:
        cursor.execute(
            "SELECT ts_headline(%s::regconfig, trials_folded(said),"
            " websearch_to_tsquery(%s::regconfig, trials_folded(%s)), %s)"
            " FROM unnest(%s::text[]) WITH ORDINALITY AS one (said, place) ORDER BY place",
            [CONFIGURATION, CONFIGURATION, words, f"HighlightAll=true, StartSel={BEGIN}, StopSel={END}", texts],
        )
        return [headline for (headline,) in cursor.fetchall()]
