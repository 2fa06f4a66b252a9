"""Failures by kind and quarter, beside how many trials were made at all."""

from dataclasses import dataclass
from datetime import date, timedelta

from django.db.models import Count, QuerySet
from django.db.models.functions import Coalesce, TruncQuarter
from django.utils import timezone

from trials import access
from trials.models import Failure, Trial
from trials.models.trials import Mode, State

QUARTERS = 8


@dataclass(frozen=True, slots=True)
class Quarter:
    """``trials``: all that were made in it, failed or not."""

    begin: date
    trials: int

    @property
    def name(self) -> str:
        return f"{self.begin.year} Q{(self.begin.month + 2) // 3}"

    @property
    def end(self) -> date:
        return _next(self.begin) - timedelta(days=1)


@dataclass(frozen=True, slots=True)
class Kind:
    """``counts`` are the trials that failed so, by quarter."""

    mode: str
    label: str
    counts: tuple[int, ...]

    @property
    def total(self) -> int:
        return sum(self.counts)


@dataclass(frozen=True, slots=True)
class FailureCounts:
    """The newest quarters in order of time, without a gap; the most frequent kind first."""

    quarters: tuple[Quarter, ...]
    kinds: tuple[Kind, ...]

    @property
    def trials(self) -> int:
        return sum(quarter.trials for quarter in self.quarters)

    @property
    def most(self) -> int:
        return max((count for kind in self.kinds for count in kind.counts), default=0)


def failures_by_quarter(person) -> FailureCounts:
    """Of the trials that the person may see, in two queries. A trial that failed in two ways counts under both."""
    visible = access.series(person)
    made = _counted(Trial.objects.filter(series__in=visible).exclude(state=State.PLANNED), "")
    failed = _counted(Failure.objects.filter(trial__series__in=visible), "trial__", "mode")
    if not made and not failed:
        return FailureCounts((), ())
    begins = _run_up_to(max(begin for begin, *_ in (*made, *failed)))
    kinds = [Kind(mode, mode.label, tuple(failed.get((begin, mode.value), 0) for begin in begins)) for mode in Mode]
    return FailureCounts(
        quarters=tuple(Quarter(begin, made.get((begin,), 0)) for begin in begins),
        kinds=tuple(sorted((kind for kind in kinds if kind.total), key=lambda kind: (-kind.total, kind.label))),
    )


def _counted(found: QuerySet, trial: str, *by: str) -> dict[tuple, int]:
    """How many, by the first day of the quarter in which the trial was made, else planned, and by other columns."""
    quarter = TruncQuarter(Coalesce(f"{trial}made_at", f"{trial}series__planned_at"))
    rows = found.order_by().annotate(quarter=quarter).values_list("quarter", *by).annotate(number=Count("pk"))
    return {(timezone.localtime(at).date(), *keys): number for at, *keys, number in rows}


def _run_up_to(last: date) -> list[date]:
    begins = [last]
    while len(begins) < QUARTERS:
        begins.append(_quarter_before(begins[-1]))
    return begins[::-1]


def _quarter_before(begin: date) -> date:
    return date(begin.year - (begin.month == 1), (begin.month - 4) % 12 + 1, 1)


def _next(begin: date) -> date:
    return date(begin.year + (begin.month == 10), (begin.month + 2) % 12 + 1, 1)
