"""What the comparison suggests for a group, with its reasons. Never a verdict: the person decides."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from trials.models.series import Outcome

from .contrasts import BETTER, WORSE, Cell
from .fairness import heavy
from .groups import Group
from .limits import CANNOT_TELL, MISSES, Held
from .marks import Mark
from .windows import TARGET_CHANGE_PCT, Judged


@dataclass(frozen=True, slots=True)
class Suggestion:
    outcome: str
    reasons: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class _Found:
    """One group in one column."""

    judged: Judged
    cell: Cell
    held: Held | None

    @property
    def said(self) -> str:
        one = self.cell.blank
        change = "" if one.change_pct is None else f" by {abs(one.change_pct):.0f} %"
        p = "p < 0.001" if one.p < 0.001 else f"p = {one.p:.2g}"
        return f"{self.judged.name} {one.says} than the blank{change} ({p})"


def suggest(
    group: Group,
    judged: Sequence[Judged],
    held: Mapping[tuple[str, str], Mapping[str, Held]],
    marks: Mapping[int, Sequence[Mark]],
) -> Suggestion:
    """For a group with an additive. ``held`` is by key of measure and condition, then of the group.

    Not a fair test where every cup is; then by the must limits, then by what is shown against the blank.
    """
    unfair = [heavy(cup, marks) for cup in group.cups]
    if unfair and all(unfair):
        return Suggestion(Outcome.UNFAIR, tuple(dict.fromkeys(text for texts in unfair for text in texts)))
    found = _found(group, judged, held)
    if not found:
        return Suggestion(Outcome.UNDECIDED, ("nothing read yet",))
    if not group.block.blanks:
        return Suggestion(Outcome.UNDECIDED, ("no control",))
    return _by_limits(found) or _by_contrasts(found)


def _gains(found: list[_Found]) -> list[_Found]:
    compared = [one for one in found if one.cell.blank]
    return [one for one in compared if one.judged.measure.efficiency and one.cell.blank.says == BETTER]


def _found(group, judged, held) -> list[_Found]:
    return [
        _Found(one, cell, held.get((one.measure.key, one.column.condition.key), {}).get(group.key))
        for one in judged
        for cell in one.cells
        if cell.group.key == group.key and cell.n
    ]


def _by_limits(found: list[_Found]) -> Suggestion | None:
    """A must limit that is missed fails; one that can't be told leaves it undecided."""
    must = [one for one in found if one.held and one.held.wanted.must]
    gains = tuple(one.said for one in _gains(found))  # said as well: the person weighs the one against the other
    missed = [one for one in must if one.held.verdict == MISSES]
    if missed:
        return Suggestion(Outcome.FAILS, (*(_limit_said(one) for one in missed), *gains))
    unsure = [one for one in must if one.held.verdict == CANNOT_TELL]
    if unsure:
        return Suggestion(Outcome.UNDECIDED, (*(_limit_said(one) for one in unsure), *gains))
    return None


def _by_contrasts(found: list[_Found]) -> Suggestion:
    compared = [one for one in found if one.cell.blank]
    gains = _gains(found)
    fresh = [one for one in gains if one.judged.column.condition.fresh]
    if not fresh:
        return _without_gain([one for one in compared if one.judged.measure.efficiency])
    but = [one.said for one in compared if one.cell.blank.says == WORSE]
    but += [_limit_said(one) for one in found if one.held and not one.held.wanted.must and one.held.verdict == MISSES]
    kept = {one.judged.measure.key for one in gains if one.judged.column.condition.stored}
    but += [
        f"{one.judged.name}: not shown better than the stored blank"
        for one in compared
        if one.judged.column.condition.stored and one.judged.measure.efficiency
        if one.judged.measure.key in {gain.judged.measure.key for gain in fresh} - kept
    ]
    reasons = (*(one.said for one in fresh), *but)
    return Suggestion(Outcome.LIMITS if but else Outcome.WORKS, reasons)


def _without_gain(compared: list[_Found]) -> Suggestion:
    """A failure only where the interval leaves no room for an effect worth having; else undecided."""
    if not compared:
        return Suggestion(Outcome.UNDECIDED, ("no efficiency criterion can be compared with the blank",))
    worse = [one for one in compared if one.cell.blank.says == WORSE]
    if worse:
        return Suggestion(Outcome.FAILS, tuple(one.said for one in worse))
    excluded = [one for one in compared if _no_room(one)]
    if excluded and len(excluded) == len(compared):
        reasons = [f"{one.judged.name}: a change of {TARGET_CHANGE_PCT:g} % is excluded" for one in excluded]
        return Suggestion(Outcome.FAILS, tuple(reasons))
    reasons = tuple(f"{one.judged.name}: not shown to differ from the blank, {one.cell.n} cups" for one in compared)
    return Suggestion(Outcome.UNDECIDED, reasons)


def _no_room(one: _Found) -> bool:
    contrast = one.cell.blank
    best = contrast.low if one.judged.measure.better_way < 0 else contrast.high
    if best is None or contrast.control_middle <= 0:
        return False
    gain = best * one.judged.measure.better_way
    return gain < TARGET_CHANGE_PCT / 100 * contrast.control_middle


def _limit_said(one: _Found) -> str:
    return f"{one.judged.name} {one.held.verdict} “{one.held.wanted.said}”: {one.held.reason}"
