"""What was read in all series of the demonstration, worked out without a database."""

from functools import cache
from statistics import mean, median

from trials.demo.facts import unfair
from trials.demo.imagined import BLANK, TREATED, ImaginedCup, imagine
from trials.demo.readers import readings
from trials.demo.round_rows import RoundRow
from trials.demo.rounds import ROUNDS

ROWS = {row.key: row for row in ROUNDS}


@cache
def values(cup: ImaginedCup, criterion: str, kind: str = "fresh", age_h: str = "") -> tuple[float, ...]:
    """What people wrote down of a film, at the age given or at any."""
    panel = cup.panel(kind)
    found = readings(cup, panel) if panel else []
    return tuple(
        float(one.value)
        for one in found
        if one.criterion == criterion and one.value is not None and age_h in ("", one.age_h)
    )


def cups(row: RoundRow, part: str, code: str = "", dosage: str = "") -> list[ImaginedCup]:
    """Cups of a kind that were fair tests."""
    return [
        cup
        for cup in imagine(row)
        if cup.part == part
        and code in ("", cup.code)
        and dosage in ("", cup.dosage)
        and not unfair(cup)
        and not cup.topped_up
    ]


def counts(found, kind: str = "fresh") -> list[float]:
    return [mean(values(cup, "bubble-count", kind)) for cup in found if values(cup, "bubble-count", kind)]


def blank_count(row: RoundRow, kind: str = "fresh") -> float:
    return mean(counts([cup for cup in imagine(row) if cup.part == BLANK], kind))


def grade(found, criterion: str, kind: str = "fresh") -> float:
    """Median of what all readers gave."""
    return median(value for cup in found for value in values(cup, criterion, kind, "168"))


def ladders(*, least: int = 3):
    """(row, candidate, [(dosage, mean count)]) of every candidate with so many steps in a series."""
    for row in ROUNDS:
        for code, steps in row.ladder():
            found = [(float(step), counts(cups(row, TREATED, code, step))) for step in steps]
            ladder = [(dosage, mean(read)) for dosage, read in found if read]
            if len(ladder) >= least:
                yield row, code, ladder
