"""What a series is judged by: the criteria that were rated, and the air content that densities give."""

from collections.abc import Iterable
from dataclasses import dataclass
from itertools import pairwise

from trials.models import Criterion
from trials.models.criteria import Better, Concern, Scale


@dataclass(frozen=True, slots=True)
class Measure:
    """A criterion, or a quantity worked out like one. ``steps`` is empty for quantities; ``note`` defines it."""

    key: str
    name: str
    unit: str
    better: str
    concern: str
    steps: tuple[float, ...] = ()
    low: float = 0.0
    high: float | None = None
    standard: str = ""
    note: str = ""

    @property
    def graded(self) -> bool:
        """Steps have a median and are ranked; quantities have a mean."""
        return bool(self.steps)

    @property
    def counted(self) -> bool:
        """A number per area: none found is no proof of none."""
        return self.unit == "per dm²"

    @property
    def efficiency(self) -> bool:
        return self.concern == Concern.EFFICIENCY

    @property
    def half_steps(self) -> tuple[float, ...]:
        """The steps and what lies midway between neighbours: ISO 4628-1 allows half grades where they are agreed."""
        return tuple(sorted({*self.steps, *((low + high) / 2 for low, high in pairwise(self.steps))}))

    @property
    def places(self) -> int:
        """Decimals that a table shows; grades and counts have few."""
        return 1 if self.counted else 2

    @property
    def loose_places(self) -> int:
        """For ``floatformat``: whole grades stay whole."""
        return -2 if self.graded else self.places

    @property
    def better_way(self) -> int:
        return 1 if self.better == Better.HIGHER else -1

    @property
    def middle_word(self) -> str:
        return "median" if self.graded else "mean"

    @property
    def title(self) -> str:
        """Name and unit, as an axis or a head of a table has it."""
        unit = f"grade {self.steps[0]:g} to {self.steps[-1]:g}" if self.graded else self.unit
        return f"{self.name}, {unit}" if unit else self.name

    def side(self, *, declared: bool) -> str:
        """Two-sided unless one side was declared before reading: better for efficiency, worse for compatibility."""
        if not declared:
            return "two-sided"
        way = self.better_way if self.efficiency else -self.better_way
        return "greater" if way > 0 else "less"

    def worse_side(self) -> str:
        return "less" if self.better_way > 0 else "greater"

    def better_side(self) -> str:
        return "greater" if self.better_way > 0 else "less"


def measure_of(criterion: Criterion) -> Measure:
    """Expects the steps of the criterion prefetched."""
    steps = tuple(sorted(float(step.value) for step in criterion.steps.all()))
    if criterion.scale == Scale.STEPS and len(steps) < 2:
        steps = tuple(float(value) for value in range(int(criterion.low), int(criterion.high) + 1))
    return Measure(
        key=criterion.key,
        name=criterion.name,
        unit=criterion.unit,
        better=criterion.better,
        concern=criterion.concern,
        steps=steps if criterion.scale == Scale.STEPS else (),
        low=float(criterion.low),
        high=None if criterion.high is None else float(criterion.high),
        standard=criterion.standard,
    )


def in_order(criteria: Iterable[Criterion]) -> list[Criterion]:
    """Efficiency before compatibility, then as the list of criteria has them."""
    return sorted(criteria, key=lambda one: (one.concern != Concern.EFFICIENCY, one.position, one.key, -one.version))
