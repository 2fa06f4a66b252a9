"""Lists: found by words, bounded, and honest about what was left out."""

from collections.abc import Callable
from dataclasses import dataclass

from django.db.models import Model, Q, QuerySet

MOST = 500


@dataclass(frozen=True, slots=True)
class Found:
    """The rows of a list, and whether there are more than it holds."""

    rows: tuple
    more: bool


def found(records: QuerySet, row: Callable[[Model], object]) -> Found:
    """The first rows of an ordered queryset."""
    rows = [row(record) for record in records[: MOST + 1]]
    return Found(tuple(rows[:MOST]), more=len(rows) > MOST)


def with_words(records: QuerySet, words: str, *fields: str) -> QuerySet:
    """Those in which every word stands in one of the fields."""
    for word in words.split():
        condition = Q()
        for field in fields:
            condition |= Q(**{f"{field}__icontains": word})
        records = records.filter(condition)
    return records
