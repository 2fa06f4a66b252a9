"""Outcomes, failures, lessons and the judgement of a series."""

from datetime import datetime

from trials.operations.judging import FailureEntry, TrialEntry, conclude_series

from .imagined import imagine
from .laboratory import Laboratory, Worked, number
from .round_rows import STORED, RoundRow
from .summing_up import sum_up
from .telling import Told, tell

CONCLUDED_BEFORE = 33


def conclude(laboratory: Laboratory, row: RoundRow, worked: Worked) -> None:
    at = concluded_at(laboratory, row, worked)
    if row.ago < CONCLUDED_BEFORE or not laboratory.days.happened(at):
        return
    laboratory.concluded.add(worked.series.pk)
    told = tell(row)
    summary = sum_up(row)
    conclude_series(
        actor=laboratory.people[row.owner],
        series=worked.series,
        outcome=summary.outcome,
        conclusion=summary.conclusion,
        lesson=summary.lesson,
        not_tested=summary.not_tested,
        window_from_pct=number(summary.window_from),
        window_to_pct=number(summary.window_to),
        working_pct=number(summary.working),
        recommended=laboratory.candidates.get(summary.recommended),
        trials=[_entry(worked, cup, told[cup.key]) for cup in imagine(row) if cup.key in told],
    )


def concluded_at(laboratory: Laboratory, row: RoundRow, worked: Worked) -> datetime:
    """A week and a day after the pour, or when the last tin is read."""
    after = 30 if STORED in row.twists else 8
    return laboratory.days.moment(worked.day, "10:15", hours=24 * after)


def _entry(worked: Worked, cup, told: Told) -> TrialEntry:
    failures = tuple(FailureEntry(one.mode, one.severity, one.how, one.cause) for one in told.failures)
    return TrialEntry(worked.trials[cup.key], told.outcome, told.unfair_because, told.lesson, failures)
