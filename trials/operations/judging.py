"""Writing what people conclude: of single cups, of a group of cups at once, and of a whole series."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from decimal import Decimal

from trials.models import Candidate, Failure, Person, Series, Trial
from trials.models.series import Outcome
from trials.models.trials import Cause, Mode, State

from .acting import Refused, operation
from .limits import hold_to_limits
from .seen import refuse_unseen
from .states import advance


@dataclass(frozen=True, slots=True)
class FailureEntry:
    """How a cup failed, how badly (1 slight to 5 severe), how it showed, and why where that is known."""

    mode: str
    severity: int
    how: str = ""
    cause: str = ""


@dataclass(frozen=True, slots=True)
class TrialEntry:
    """What is concluded of one cup. ``failures`` of None leaves those that stand."""

    trial: Trial
    outcome: str
    unfair_because: str = ""
    lesson: str = ""
    failures: tuple[FailureEntry, ...] | None = None


@operation()
def conclude_trial(
    *,
    actor: Person,
    trial: Trial,
    outcome: str,
    unfair_because: str = "",
    lesson: str = "",
    failures: tuple[FailureEntry, ...] = (),
    seen: str = "",
) -> Trial:
    """Conclude one cup; the failures given replace those that stand."""
    locked = Trial.objects.select_for_update().get(pk=trial.pk)
    refuse_unseen(locked, seen, parts=("failures",))
    return _conclude([TrialEntry(locked, outcome, unfair_because, lesson, tuple(failures))])[0]


@operation()
def conclude_trials(*, actor: Person, entries: Iterable[TrialEntry]) -> list[Trial]:
    """Conclude many cups in a fixed number of statements."""
    return _conclude(list(entries))


@operation()
def conclude_series(
    *,
    actor: Person,
    series: Series,
    outcome: str,
    conclusion: str = "",
    lesson: str = "",
    not_tested: str = "",
    window_from_pct: Decimal | None = None,
    window_to_pct: Decimal | None = None,
    working_pct: Decimal | None = None,
    recommended: Candidate | None = None,
    trials: Iterable[TrialEntry] = (),
    seen: str = "",
) -> Series:
    """The judgement of a series: outcome, words, window; with it the outcomes of its cups, all or none."""
    locked = Series.objects.select_for_update().get(pk=series.pk)
    refuse_unseen(locked, seen)
    _known_outcome(outcome)
    locked.outcome, locked.conclusion, locked.lesson, locked.not_tested = outcome, conclusion, lesson, not_tested
    locked.window_from_pct, locked.window_to_pct, locked.working_pct = window_from_pct, window_to_pct, working_pct
    locked.recommended = recommended
    _check_window(locked)
    hold_to_limits(locked)
    locked.save()
    entries = list(trials)
    strangers = [entry.trial.code for entry in entries if entry.trial.series_id != locked.pk]
    if strangers:
        raise Refused(f"{', '.join(strangers)} belong to another series than {locked.number}.", field="trials")
    _conclude(entries)
    return locked


def _conclude(entries: Sequence[TrialEntry]) -> list[Trial]:
    for entry in entries:
        _check(entry)
    given = {entry.trial.pk: entry for entry in entries}
    if len(given) < len(entries):
        raise Refused("The same cup is concluded twice.", field="trials")
    trials = list(Trial.objects.select_for_update().filter(pk__in=given).order_by("pk"))
    for trial in trials:
        entry = given[trial.pk]
        trial.outcome, trial.unfair_because, trial.lesson = entry.outcome, entry.unfair_because, entry.lesson
    Trial.objects.bulk_update(trials, ["outcome", "unfair_because", "lesson"])
    _write_failures({key: entry.failures for key, entry in given.items() if entry.failures is not None})
    advance([trial.pk for trial in trials if trial.outcome], State.CLOSED)
    return trials


def _write_failures(wanted: dict[int, tuple[FailureEntry, ...]]) -> None:
    """A failure that stays as it is is not written again."""
    standing = {(one.trial_id, one.mode): one for one in Failure.objects.filter(trial__in=wanted)}
    new, changed = [], []
    for trial, entries in wanted.items():
        for entry in entries:
            old = standing.pop((trial, entry.mode), None)
            values = {"severity": entry.severity, "how": entry.how, "cause": entry.cause}
            if old is None:
                new.append(Failure(trial_id=trial, mode=entry.mode, **values))
            elif any(getattr(old, name) != value for name, value in values.items()):
                for name, value in values.items():
                    setattr(old, name, value)
                changed.append(old)
    if standing:
        Failure.objects.filter(pk__in=[one.pk for one in standing.values()]).delete()
    if changed:
        Failure.objects.bulk_update(changed, ["severity", "how", "cause"])
    Failure.objects.bulk_create(new)


def _check(entry: TrialEntry) -> None:
    code = entry.trial.code
    _known_outcome(entry.outcome)
    if entry.outcome == Outcome.UNFAIR and not entry.unfair_because.strip():
        raise Refused(f"Say why {code} was not a fair test.", field="unfair_because")
    modes = [failure.mode for failure in entry.failures or ()]
    twice = sorted({mode for mode in modes if modes.count(mode) > 1})
    if twice:
        raise Refused(f"{code}: “{', '.join(twice)}” is given twice.", field="mode")
    for failure in entry.failures or ():
        _check_failure(failure)


def _check_failure(failure: FailureEntry) -> None:
    if failure.mode not in Mode.values:
        raise Refused(f"A failure is one of {', '.join(Mode.values)}; got “{failure.mode}”.", field="mode")
    if failure.cause and failure.cause not in Cause.values:
        raise Refused(f"A cause is one of {', '.join(Cause.values)}; got “{failure.cause}”.", field="cause")
    if not 1 <= failure.severity <= 5:
        raise Refused(f"Severity runs from 1 (slight) to 5 (severe); got {failure.severity}.", field="severity")


def _known_outcome(outcome: str) -> None:
    if outcome and outcome not in Outcome.values:
        raise Refused(f"An outcome is one of {', '.join(Outcome.values)}; got “{outcome}”.", field="outcome")


def _check_window(series: Series) -> None:
    low, high, working = series.window_from_pct, series.window_to_pct, series.working_pct
    if low is not None and high is not None and low > high:
        raise Refused(f"The window runs upwards; got {low} to {high} %.", field="window_to_pct")
    if working is not None and ((low is not None and working < low) or (high is not None and working > high)):
        said = f"from {low if low is not None else '0'} to {high if high is not None else 'any'} %"
        raise Refused(f"The working dosage lies in the window, {said}; got {working} %.", field="working_pct")
    if (low, high, working) != (None, None, None) and series.recommended is None:
        raise Refused("Say which additive the window is for.", field="recommended")
    if series.recommended and not series.trials.filter(dosages__candidate=series.recommended).exists():
        code = series.recommended.material.code
        raise Refused(f"{code} is in no cup of series {series.number}.", field="recommended")
