"""Names that an outside reader does not get: taken out of every text of a report, wherever somebody typed them."""

import re
from collections.abc import Iterable
from dataclasses import fields, is_dataclass, replace

from trials.models import Enquiry, Person

PERSON, CUSTOMER = "name withheld", "the customer"


def names_withheld(enquiry: Enquiry | None, *, outside: bool) -> dict[str, str]:
    """What stands instead of each name; empty where the reader is inside, or the enquiry does not ask for it.

    The enquiry counts even where the person who prints may not see it.
    """
    if not outside or enquiry is None or not enquiry.withheld:
        return {}
    people = Person.objects.order_by("pk").values_list("full_name", flat=True)
    found = {name: PERSON for name in people if name.strip()}
    if enquiry.customer.strip():
        found[enquiry.customer] = CUSTOMER
    return found


def without_names(report, names: dict[str, str]):
    """The same report with every one of the names replaced, in any case of letters and any spacing.

    A part of a name goes too where it stands alone with its capital, unless it is a word of this report like any
    other: “Long” is none where something took long.
    """
    if not names:
        return report
    ordinary: set[str] = set()
    _each_text(report, lambda text: ordinary.update(re.findall(r"[^\W\d_]+", text)) or text)
    parts = {
        part: word
        for name, word in names.items()
        for part in re.findall(r"[^\W\d_]{3,}", name)
        if part[0].isupper() and part.lower() not in ordinary
    }
    whole = {_plain(name): word for name, word in names.items()}
    in_full, alone = _pattern(names, re.IGNORECASE), _pattern(parts)

    def told(text: str) -> str:
        text = in_full.sub(lambda match: whole.get(_plain(match[0]), PERSON), text)
        return alone.sub(lambda match: parts[match[0]], text) if parts else text

    return _each_text(report, told)


def _pattern(names: Iterable[str], flags=re.NOFLAG) -> re.Pattern:
    """Whole names only, the longest first: “Ma” does not take a piece out of “material”."""
    ordered = sorted(names, key=len, reverse=True)
    each = (r"\s+".join(map(re.escape, name.split())) for name in ordered)
    return re.compile(rf"(?<!\w)(?:{'|'.join(each)})(?!\w)", flags)


def _plain(name: str) -> str:
    return " ".join(name.split()).lower()


def _each_text(value, change):
    if isinstance(value, str):
        return change(value)
    if isinstance(value, tuple):
        return tuple(_each_text(item, change) for item in value)
    if is_dataclass(value):
        return replace(
            value, **{field.name: _each_text(getattr(value, field.name), change) for field in fields(value)}
        )
    return value
