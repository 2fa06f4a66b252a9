"""A code typed where one searches: the one record that bears it."""

import re
from collections.abc import Callable, Iterator
from dataclasses import dataclass

from trials import access
from trials.models import RawMaterial

LONGEST_CODE = 20


@dataclass(frozen=True, slots=True)
class Record:
    """``kind`` is the noun, ``key`` what stands in its address."""

    kind: str
    key: str | int


def exact_record(person, text: str) -> Record | None:
    """The one record with exactly this code that the person may see; None where there is none or several."""
    text = " ".join(text.split())
    found = [
        record
        for pattern, look in _KINDS
        if (match := re.fullmatch(pattern, text, re.I))
        for record in look(person, match)
    ]
    return found[0] if len(found) == 1 else None


def _series(person, match) -> Iterator[Record]:
    numbers = access.series(person).filter(number=int(match["number"])).values_list("number", flat=True)
    return (Record("series", number) for number in numbers)


def _enquiry(person, match) -> Iterator[Record]:
    numbers = access.enquiries(person).filter(number=int(match["number"])).values_list("number", flat=True)
    return (Record("enquiry", number) for number in numbers)


def _trial(person, match) -> Iterator[Record]:
    return (
        Record("trial", code) for code in access.trials(person).filter(code=match[0]).values_list("code", flat=True)
    )


def _panel(person, match) -> Iterator[Record]:
    codes = access.panels(person).filter(code=match[0].upper()).values_list("code", flat=True)
    return (Record("panel", code) for code in codes)


def _base(person, match) -> Iterator[Record]:
    codes = access.bases(person).filter(code__iexact=match[0]).values_list("code", flat=True)
    return (Record("base", code) for code in codes)


def _material(person, match) -> Iterator[Record]:
    """A material that is offered as an additive is looked for as one."""
    found = RawMaterial.objects.filter(code__iexact=match[0]).values_list("code", "candidate")
    return (Record("material" if candidate is None else "candidate", code) for code, candidate in found)


_KINDS: tuple[tuple[str, Callable], ...] = (
    (r"(?:series )?(?P<number>\d{1,9})", _series),
    (r"enquiry (?P<number>\d{1,9})", _enquiry),
    (r"\d+-\d+", _trial),
    (r"\w{1,6}", _panel),
    (rf"\S{{1,{LONGEST_CODE}}}", _base),
    (rf"\S{{1,{LONGEST_CODE}}}", _material),
)
