"""A group against the limits of the enquiry: meets, misses or cannot tell.

Quantities by their mean and its interval; grades and counts, which do not scatter alike in every group, cup by cup,
counts with what they prove on their area as well.
"""

import math
from collections.abc import Sequence
from dataclasses import dataclass

from trials.access import enquiries
from trials.models import Enquiry, Series
from trials.models.enquiries import Force
from trials.science.comparison import upper_bound_per_dm2
from trials.science.group_means import GroupMean, group_means

from .contrasts import LEVEL, Cell
from .cup_values import Column, Counted

MEETS, MISSES, CANNOT_TELL = "meets", "misses", "cannot tell"


@dataclass(frozen=True, slots=True)
class Wanted:
    """Where a criterion has to stand, and how firmly."""

    key: str
    limit: float
    written: str
    force: str
    better: str

    @property
    def must(self) -> bool:
        return self.force == Force.MUST

    @property
    def said(self) -> str:
        return f"{self.force}: {self.written} or {self.better}"

    def holds(self, value: float) -> bool:
        return value >= self.limit if self.better == "higher" else value <= self.limit


@dataclass(frozen=True, slots=True)
class Held:
    """A group held against one limit; ``reason`` gives the figures that decide."""

    wanted: Wanted
    verdict: str
    reason: str


def enquiry_seen(series: Series, person) -> Enquiry | None:
    """The enquiry with its limits where the person may see it: a restricted one shows its limits to nobody else."""
    if series.enquiry_id is None:
        return None
    found = enquiries(person).filter(pk=series.enquiry_id)
    return found.select_related("incumbent__material").prefetch_related("limits__criterion").first()


def wanted(enquiry: Enquiry | None) -> dict[str, Wanted]:
    """Limits by the key of their criterion."""
    if enquiry is None:
        return {}
    return {
        limit.criterion.key: Wanted(
            key=limit.criterion.key,
            limit=float(limit.limit),
            written=format(limit.limit.normalize(), "f"),
            force=limit.force,
            better=limit.criterion.better,
        )
        for limit in enquiry.limits.all()
    }


def held(column: Column, cells: Sequence[Cell], limit: Wanted) -> dict[str, Held]:
    """Every group of this column against the limit, by the key of the group."""
    found = {}
    for number in sorted({cell.group.block.number for cell in cells}):
        here = [cell for cell in cells if cell.group.block.number == number and cell.n]
        if column.measure.graded:
            found |= {cell.group.key: _steps(limit, cell) for cell in here}
        elif column.measure.counted:
            found |= {cell.group.key: _count(limit, cell, counted(column, cell)) for cell in here}
        elif here:
            means = group_means([cell.counted for cell in here], level=LEVEL)
            found |= {cell.group.key: _quantity(limit, mean) for cell, mean in zip(here, means, strict=True)}
    return found


def counted(column: Column, cell: Cell) -> Counted | None:
    """Number and area of the cups that count; None where nothing was counted."""
    cups = [column.counted[cup.pk] for cup, _ in cell.values if cup.counts and cup.pk in column.counted]
    if not cups:
        return None
    if any(cup.area_dm2 is None for cup in cups):
        return Counted(0, None)
    return Counted(sum(cup.number for cup in cups), sum(cup.area_dm2 for cup in cups))


def count_bound(found: Counted | None) -> str:
    """What a count on an area still allows, in words."""
    if found is None:
        return ""
    if not found.area_dm2:
        return "area of a panel not noted: no bound"
    number = "none" if found.number == 0 else f"{found.number}"
    proves = f"proves fewer than {_up(_bound(found))} per dm² (95 %, exact Poisson)"
    return f"{number} found on {found.area_dm2:g} dm²: {proves}"


def _steps(limit: Wanted, cell: Cell) -> Held:
    """By every cup: so few have no interval, only a range that covers the median with a known confidence."""
    holding = sum(limit.holds(value) for value in cell.counted)
    reason = f"{holding} of {cell.n} cups meet it"
    if cell.n == 1:
        return Held(limit, CANNOT_TELL, f"{reason}: one cup is no sample")
    if holding in (0, cell.n):
        covers = 100 * (1 - 0.5 ** (cell.n - 1))
        reason += f" (their range covers the median with {covers:.3g} % confidence)"
    verdict = MEETS if holding == cell.n else MISSES if holding == 0 else CANNOT_TELL
    return Held(limit, verdict, reason)


def _quantity(limit: Wanted, mean: GroupMean) -> Held:
    if mean.low is None or mean.high is None:
        return Held(limit, CANNOT_TELL, f"mean {mean.mean:.3g}, no spread to judge by")
    interval = f"95 %: {mean.low:.3g} to {mean.high:.3g}, {mean.n} cups, spread of all groups"
    return Held(limit, _verdict(limit, mean.mean, mean.low, mean.high), f"mean {mean.mean:.3g} ({interval})")


def _count(limit: Wanted, cell: Cell, found: Counted | None) -> Held:
    said = count_bound(found)
    if limit.limit == 0 and limit.better == "lower":
        some = sum(value > 0 for value in cell.counted)
        if some:
            return Held(limit, MISSES, f"found in {some} of {cell.n} cups; {said or 'no area noted'}")
        return Held(limit, CANNOT_TELL, f"none found does not prove none; {said or 'no area noted'}")
    held = _steps(limit, cell)
    if held.verdict != MEETS:
        return held
    if not found or not found.area_dm2:
        return Held(limit, CANNOT_TELL, f"{held.reason}; {said or 'no area noted'}")
    return Held(limit, MEETS if limit.holds(_bound(found)) else CANNOT_TELL, f"{held.reason}; {said}")


def _verdict(limit: Wanted, middle: float, low: float, high: float) -> str:
    ends = (limit.holds(low), limit.holds(middle), limit.holds(high))
    if all(ends):
        return MEETS
    return CANNOT_TELL if any(ends) else MISSES


def _bound(found: Counted) -> float:
    return upper_bound_per_dm2(found.number, found.area_dm2, level=LEVEL)


def _up(bound: float) -> str:
    """Three figures, never below what is proved."""
    place = 10.0 ** (math.floor(math.log10(bound)) - 2)
    return f"{math.ceil(round(bound / place, 6)) * place:.4g}"
