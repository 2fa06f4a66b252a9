"""Groups against the blank and against the incumbent: differences with their intervals, one column at a time."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from statistics import mean, median

from trials.models.trials import Part
from trials.science.comparison import against_control, ordinal_against_control

from .cup_values import Column
from .groups import Cup, Group
from .measures import Measure

LEVEL = 0.95
BETTER, WORSE, NOT_SHOWN = "better", "worse", "not shown"
# Those that stand for an additive are compared together; each other reference is a question of its own.
TOGETHER = (Part.TREATED, Part.INCUMBENT)


@dataclass(frozen=True, slots=True)
class Contrast:
    """Group minus control: of means with Dunnett's interval, or of grades as their median shift, which has none.

    ``p`` is adjusted for all groups compared together. ``says`` is "better" or "worse" where a difference is shown,
    else "not shown", which is never "no effect".
    """

    against: str
    estimate: float
    low: float | None
    high: float | None
    p: float | None
    n: int
    n_control: int
    control_middle: float
    side: str
    says: str
    note: str
    superiority: float | None = None
    compared: int = 1

    @property
    def change_pct(self) -> float | None:
        """Of the control's mean; None for grades, or where that mean is not above 0."""
        if self.superiority is not None or self.control_middle <= 0:
            return None
        return 100 * self.estimate / self.control_middle

    @property
    def p_said(self) -> str:
        """As a table has it; empty where there is no spread to judge by."""
        if self.p is None:
            return ""
        return "< 0.001" if self.p < 0.001 else f"{self.p:.3f}"


@dataclass(frozen=True, slots=True)
class Cell:
    """One group in one column. ``middle`` is that of the cups that count; ``lone`` says why it has no contrast."""

    group: Group
    values: tuple[tuple[Cup, float], ...]
    middle: float | None
    blank: Contrast | None
    incumbent: Contrast | None
    lone: str

    @property
    def counted(self) -> tuple[float, ...]:
        return tuple(value for cup, value in self.values if cup.counts)

    @property
    def n(self) -> int:
        return len(self.counted)


def cells(
    column: Column, groups: Sequence[Group], *, incumbents: Mapping[int, str], declared: bool = False
) -> tuple[Cell, ...]:
    """Every group in this column. ``incumbents`` is the key of the incumbent's group by block."""
    values = {group.key: _values(column, group) for group in groups}
    blank, incumbent, why = {}, {}, {}
    for number in sorted({group.block.number for group in groups}):
        here = [group for group in groups if group.block.number == number]
        counted = {group.key: _counted(values[group.key]) for group in here}
        blanks = [group for group in here if group.part == Part.BLANK]
        control = [value for group in blanks for value in counted[group.key]]
        for family in _families(here):
            found, said = _family(column.measure, "the blank", control, family, counted, declared=declared)
            blank |= found
            why |= said
        own = incumbents.get(number)
        if own:
            treated = [group for group in here if group.part == Part.TREATED]
            name = next(group.label for group in here if group.key == own)
            found, _ = _family(column.measure, name, counted[own], treated, counted, declared=declared)
            incumbent |= found
    return tuple(
        Cell(
            group=group,
            values=values[group.key],
            middle=middle(column.measure, _counted(values[group.key])),
            blank=blank.get(group.key),
            incumbent=incumbent.get(group.key),
            lone="" if group.part == Part.BLANK else why.get(group.key, ""),
        )
        for group in groups
        if values[group.key]
    )


def middle(measure: Measure, values: Sequence[float]) -> float | None:
    """Mean of quantities, median of steps."""
    if not values:
        return None
    return median(values) if measure.graded else mean(values)


def _values(column: Column, group: Group) -> tuple[tuple[Cup, float], ...]:
    return tuple((cup, column.values[cup.pk].value) for cup in group.cups if cup.pk in column.values)


def _counted(values: Sequence[tuple[Cup, float]]) -> list[float]:
    return [value for cup, value in values if cup.counts]


def _families(groups: Sequence[Group]) -> list[list[Group]]:
    together = [group for group in groups if group.part in TOGETHER]
    alone = [[group] for group in groups if group.part not in (*TOGETHER, Part.BLANK)]
    return [family for family in (together, *alone) if family]


def _family(measure, against, control, family, counted, *, declared) -> tuple[dict, dict]:
    """Contrasts by group, and for those without one the reason."""
    read = [group for group in family if counted[group.key]]
    why = {group.key: "no cup counts here" for group in family if not counted[group.key]}
    if not control:
        return {}, why | {group.key: "no control" for group in read}
    if not read:
        return {}, why
    side = measure.side(declared=declared)
    compare = _of_steps if measure.graded else _of_quantities
    try:
        found = compare(measure, against, control, [counted[group.key] for group in read], side)
    except ValueError as error:  # more cups than can be counted exactly, or a value between the steps
        return {}, why | {group.key: f"cannot be compared: {error}" for group in read}
    return dict(zip((group.key for group in read), found, strict=True)), why


def _of_quantities(measure: Measure, against: str, control, treated, side: str) -> list[Contrast]:
    return [
        Contrast(
            against=against,
            estimate=one.estimate,
            low=one.low,
            high=one.high,
            p=one.p,
            n=one.n,
            n_control=one.n_control,
            control_middle=mean(control),
            side=side,
            says=_says(measure, one.estimate, one.p, side),
            note=one.note,
            compared=len(treated),
        )
        for one in against_control(control, treated, side=side, level=LEVEL)
    ]


def _of_steps(measure: Measure, against: str, control, treated, side: str) -> list[Contrast]:
    return [
        Contrast(
            against=against,
            estimate=one.shift,
            low=None,
            high=None,
            p=one.p_adjusted,
            n=one.n,
            n_control=one.n_control,
            control_middle=median(control),
            side=side,
            says=_says(measure, one.superiority - 0.5, one.p_adjusted, side),
            note=one.note,
            superiority=one.superiority,
            compared=len(treated),
        )
        for one in ordinal_against_control(control, treated, side=side, steps=measure.half_steps)
    ]


def _says(measure: Measure, estimate: float, p: float | None, side: str) -> str:
    if p is None or p >= 1 - LEVEL or not estimate:
        return NOT_SHOWN
    return BETTER if estimate * measure.better_way > 0 else WORSE
