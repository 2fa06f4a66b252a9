"""What was read of each dosage, cups that were no fair test apart, and what it is held to."""

from collections.abc import Iterable
from dataclasses import dataclass, field
from functools import cache
from statistics import mean, median

from .enquiry_rows import ENQUIRIES
from .hidden import film_factor
from .imagined import (
    BLANK,
    INCUMBENT,
    THREE_CLIMATES,
    TREATED,
    ImaginedCup,
    film_um,
    imagine,
)
from .readers import readings
from .round_rows import CALM_BLANKS, CLIMATES, DIRTY, RoundRow
from .truth import CRYSTALS

# Why a cup was no fair test, beside its own mishaps.
UNDER_SHEARED, SPECKS, BLANK_STIRRED_LESS, MILKY = "under-sheared", "specks", "blank stirred less", "milky"
GOOD_AT_2_MM, GOOD_IN_A_CAST, CAST_UM, FAR_ABOVE = 5.0, 5.5, 4500, 2.8


@dataclass(frozen=True, slots=True)
class Facts:
    """What was read of one dosage, as the means (counts) and medians (grades) of its cups that count."""

    row: RoundRow
    part: str
    code: str
    dosage: str
    cups: tuple[ImaginedCup, ...]
    n: int
    count: float
    blank: float
    size_mm: float = 0.0
    grades: dict[str, float] = field(default_factory=dict)
    quantities: dict[str, float] = field(default_factory=dict)
    others: dict[str, tuple[float, float]] = field(default_factory=dict)

    @property
    def ratio(self) -> float:
        return self.count / self.blank if self.blank else 1.0

    def worst(self, key: str) -> float:
        return self.grades.get(key, 0.0)

    def other(self, kind: str) -> float | None:
        """Bubbles against the blank under another condition: stored, thick, at another temperature."""
        pair = self.others.get(kind)
        return pair[0] / pair[1] if pair and pair[1] else None


def groups(row: RoundRow) -> dict[tuple[str, str, str], Facts]:
    """Every dosage of a series, incumbents too."""
    cups = imagine(row)
    found: dict[tuple, list[ImaginedCup]] = {}
    for cup in cups:
        if cup.part in (TREATED, INCUMBENT):
            found.setdefault((cup.part, cup.code, cup.dosage), []).append(cup)
    blanks = [cup for cup in cups if cup.part == BLANK]
    return {key: _facts(row, key, members, blanks) for key, members in found.items()}


def good_per_dm2(row: RoundRow, *, thicker: float = 1) -> float:
    """What a good film shows at most, or what the customer takes where that is less; a rolled one shows more."""
    um = thicker * film_um(row)
    own = GOOD_AT_2_MM * film_factor(um) if um < CAST_UM else GOOD_IN_A_CAST
    return min(own, _asked().get(row.enquiry, own))


def limit_per_dm2(row: RoundRow, *, thicker: float = 1) -> float:
    """Above this it fails: the customer's limit, else a little over twice what is good."""
    return (
        _asked().get(row.enquiry, FAR_ABOVE * good_per_dm2(row))
        * film_factor(thicker * film_um(row))
        / film_factor(film_um(row))
    )


@cache
def _asked() -> dict[str, float]:
    found = {}
    for row in ENQUIRIES:
        for text in row.limits.split("|"):
            key, *rest = text.split() or [""]
            if key == "bubble-count":
                found[row.key] = float(rest[0])
    return found


def unfair(cup: ImaginedCup) -> str:
    """Why this cup was no fair test; empty where it was one."""
    if cup.mishap:
        return cup.mishap
    if DIRTY in cup.row.twists:
        return SPECKS
    if CALM_BLANKS in cup.row.twists:
        return BLANK_STIRRED_LESS
    if cup.nature.base == CRYSTALS and not cup.nature.righted:
        return MILKY
    return UNDER_SHEARED if cup.short else ""


def _facts(row: RoundRow, key: tuple, members: list[ImaginedCup], blanks: list[ImaginedCup]) -> Facts:
    fair = [cup for cup in members if not unfair(cup)]
    told = fair or [cup for cup in members if cup.panels]
    grades: dict[str, list[float]] = {}
    quantities: dict[str, list[float]] = {}
    for cup in told:
        for panel in cup.panels:
            if panel.kind.startswith(("fresh", "second")):
                for one in readings(cup, panel):
                    if one.value is not None and one.age_h == "168":
                        wide = one.criterion in ("bubble-count", "gloss", "hardness", "adhesion")
                        (quantities if wide else grades).setdefault(one.criterion, []).append(float(one.value))
    return Facts(
        row, *key, tuple(members), len(fair),
        count=_count(told), blank=_count(blanks),
        size_mm=mean(cup.panels[0].seen.size_mm for cup in told) if told else 0.0,
        grades={name: median(values) for name, values in grades.items()},
        quantities={name: mean(values) for name, values in quantities.items()},
        others=_others(row, told, blanks),
    )  # fmt: skip


def _others(row: RoundRow, told: list[ImaginedCup], blanks: list[ImaginedCup]) -> dict[str, tuple[float, float]]:
    found = {}
    for kind in sorted({panel.kind for cup in told for panel in cup.panels if not panel.kind.startswith("fresh")}):
        found[kind] = (_count(told, kind), _count(blanks, kind))
    if CLIMATES in row.twists:
        for celsius in THREE_CLIMATES:
            here = [[cup for cup in cups if abs(cup.air_c - celsius) < 3] for cups in (told, blanks)]
            if all(here):
                found[f"{celsius:g} °C"] = (_count(here[0]), _count(here[1]))
    return found


def _count(cups: Iterable[ImaginedCup], kind: str = "fresh") -> float:
    """Mean of the cups' counts as read, whoever counted."""
    counts = []
    for cup in cups:
        for panel in cup.panels:
            if panel.kind == kind:
                read = [
                    float(one.value) for one in readings(cup, panel) if one.criterion == "bubble-count" and one.value
                ]
                counts += [mean(read)] if read else []
    return mean(counts) if counts else 0.0
