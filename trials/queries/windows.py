"""The window that the comparison allows for each candidate, with the rule that drew it; the person decides."""

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass

from trials.models.trials import Part
from trials.science.dose_response import Lowest, Onset, Window, lowest_effective, over_dosing_onset, window

from .contrasts import LEVEL, Cell, middle
from .cup_values import Column
from .limits import Wanted
from .measures import Measure

# Common practice, no source: the change worth having, the steps that are more than a reader's noise, and the
# harm worth minding where no limit says how much.
TARGET_CHANGE_PCT = 30.0
STEPS_THAT_TALK = 2.0
HARM_SHARE = 0.20
RULES = ("no worse than best", "target", "step down")
RULE = RULES[0]
SAID = {
    "no worse than best": "lowest dosage that differs from the blank and is not shown to be worse than the best",
    "target": f"lowest dosage that changes the mean by {TARGET_CHANGE_PCT:g} % of the blank's and differs from it",
    "step down": "from the highest dosage down as long as each differs from the blank",
}


@dataclass(frozen=True, slots=True)
class Reach:
    """The lower end by one rule."""

    rule: str
    said: str
    lowest: Lowest


@dataclass(frozen=True, slots=True)
class Suggested:
    """One candidate (or pair) in one block. ``judged_by`` is the column of the lower end, ``harmed`` of the upper."""

    name: str
    candidate: int | None
    block: str
    judged_by: str
    side: str
    reaches: tuple[Reach, ...]
    onset: Onset
    harmed: str
    window: Window

    @property
    def reach(self) -> Reach:
        """The one that the window starts from."""
        return next(reach for reach in self.reaches if reach.rule == RULE)


@dataclass(frozen=True, slots=True)
class Judged:
    """One column with its cells."""

    column: Column
    cells: tuple[Cell, ...]

    @property
    def measure(self) -> Measure:
        return self.column.measure

    @property
    def name(self) -> str:
        where = self.column.condition.key
        return self.measure.name if where == "fresh" else f"{self.measure.name}, {where}"


def windows(
    judged: Sequence[Judged],
    wanted: Mapping[str, Wanted],
    *,
    unfair: Collection[str] = (),
    declared: bool = False,
) -> tuple[Suggested, ...]:
    """For every candidate with a dosage in a block that has blanks, where anything on efficiency was read.

    ``unfair`` are keys of groups that were no fair test: nothing is drawn from them.
    """
    judged = [_without(one, unfair) for one in judged]
    found = []
    for name, number in _ladders(judged):
        by = _deciding(judged, name, number)
        if by is not None:
            found.append(_suggested(judged, by, wanted, name, number, declared=declared))
    return tuple(found)


def _without(one: Judged, unfair: Collection[str]) -> Judged:
    return Judged(one.column, tuple(cell for cell in one.cells if cell.group.key not in unfair))


def deciding_rank(one: Judged) -> tuple:
    """Which column decides first: stored before fresh, quantities before grades, then the order of the criteria."""
    return not one.column.condition.stored, one.measure.graded


def _ladders(judged: Sequence[Judged]) -> list[tuple[str, int]]:
    treated = [cell.group for one in judged for cell in one.cells if cell.group.treated and cell.group.doses]
    return list(dict.fromkeys((group.name, group.block.number) for group in treated if group.block.blanks))


def _deciding(judged: Sequence[Judged], name: str, number: int) -> Judged | None:
    """The efficiency column with the most dosages of this candidate; where that is equal, by ``deciding_rank``."""
    able = [
        (len(_ladder(one, name, number)), one)
        for one in judged
        if one.measure.efficiency and _ladder(one, name, number) and _control(one, number)
    ]
    if not able:
        return None
    most = max(dosages for dosages, _ in able)
    return min((one for dosages, one in able if dosages == most), key=deciding_rank)


def _suggested(judged, by: Judged, wanted, name: str, number: int, *, declared: bool) -> Suggested:
    ladder = _ladder(by, name, number)
    side = by.measure.better_side() if declared else "two-sided"
    reaches = tuple(Reach(rule, SAID[rule], _lowest(by, ladder, number, side, rule)) for rule in RULES)
    onset, harmed = _onset(judged, wanted, name, number)
    group = next(cell.group for cell in by.cells if cell.group.name == name and cell.group.block.number == number)
    return Suggested(
        name=name,
        candidate=group.doses[0].candidate if len(group.doses) == 1 else None,
        block=group.block.label,
        judged_by=by.name,
        side=side,
        reaches=reaches,
        onset=onset,
        harmed=harmed,
        window=window(_for_better(by, reaches[0].lowest, ladder, number), onset, tested_pct=list(ladder)),
    )


def _lowest(by: Judged, ladder, number: int, side: str, rule: str) -> Lowest:
    target = TARGET_CHANGE_PCT if rule == "target" else None
    try:
        return lowest_effective(
            _control(by, number), ladder, side=side, rule=rule, target_change_pct=target, level=LEVEL
        )
    except ValueError as error:
        return Lowest(None, rule, f"Not told: {error}")


def _for_better(by: Judged, lowest: Lowest, ladder, number: int) -> Lowest:
    """Two-sided rules take the way of the highest dosage: one that leads to the worse is no window."""
    if lowest.dosage_pct is None:
        return lowest
    change = middle(by.measure, ladder[lowest.dosage_pct]) - middle(by.measure, _control(by, number))
    if change * by.measure.better_way > 0:
        return lowest
    return Lowest(None, lowest.rule, f"{lowest.dosage_pct:g} % differs from the blank for the worse.")


def _onset(judged, wanted, name: str, number: int) -> tuple[Onset, str]:
    """Of the most sensitive compatibility criterion; where none turns, of the one that excludes least."""
    found = []
    for one in judged:
        ladder, control = _ladder(one, name, number), _control(one, number)
        if one.measure.efficiency or not ladder or not control:
            continue
        harm = _harm(one.measure, middle(one.measure, control), wanted.get(one.measure.key))
        onset = over_dosing_onset(
            ladder, control=control, side=one.measure.worse_side(), worthwhile=harm, level=LEVEL
        )
        found.append((onset, one.name))
    if not found:
        return Onset(None, "No compatibility criterion was read on the ladder and its blanks.", None), ""
    turning = [pair for pair in found if pair[0].dosage_pct is not None]
    if turning:
        return min(turning, key=lambda pair: pair[0].dosage_pct)
    return min(found, key=lambda pair: pair[0].clear_to_pct or 0.0)


def _harm(measure: Measure, blank: float, limit: Wanted | None) -> float:
    """Harm worth minding, in the measure's unit: up to the enquiry's limit where the blank keeps it."""
    if limit is not None and limit.holds(blank) and abs(limit.limit - blank) > 0:
        return abs(limit.limit - blank)
    if measure.graded:
        return STEPS_THAT_TALK
    span = 1.0 if measure.high is None else measure.high - measure.low
    return HARM_SHARE * abs(blank) or HARM_SHARE * span / 10


def _ladder(one: Judged, name: str, number: int) -> dict[float, tuple[float, ...]]:
    return {
        cell.group.dosage_pct: cell.counted
        for cell in one.cells
        if cell.group.treated and cell.group.name == name and cell.group.block.number == number
        if cell.counted and cell.group.dosage_pct > 0
    }


def _control(one: Judged, number: int) -> tuple[float, ...]:
    return tuple(
        value
        for cell in one.cells
        if cell.group.part == Part.BLANK and cell.group.block.number == number
        for value in cell.counted
    )
