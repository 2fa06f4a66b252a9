"""Trials as rows of a list: the film, what was tried in a line, how it ended, what it taught."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime

from django.db.models import Prefetch

from trials.figures.swatch import Film
from trials.models import Dosage, Series, Trial, Working
from trials.models.trials import Part, WorkingKind

from .blocks import stirring
from .films import films
from .masses import Reckoning
from .passages import Passage, Piece, marked


@dataclass(frozen=True, slots=True)
class TrialRow:
    """``tip_speed_m_s`` is the highest of the dispersing; ``said`` is empty where nobody wrote a word."""

    trial: Trial
    film: Film
    additives: tuple[str, ...]
    stages: str
    tip_speed_m_s: float | None
    said: str
    pieces: tuple[Piece, ...]

    @property
    def series(self) -> Series:
        return self.trial.series

    @property
    def word(self) -> str:
        """How it ended, or how far it has come."""
        return self.trial.outcome or self.trial.state

    @property
    def at(self) -> datetime:
        return self.trial.made_at or self.series.planned_at

    @property
    def reference(self) -> bool:
        return self.trial.part != Part.TREATED


def trial_rows(keys: Sequence[int], *, words: str = "") -> tuple[TrialRow, ...]:
    """In the order of the keys; the words asked for are marked in what each trial says."""
    trials = (
        Trial.objects.filter(pk__in=keys)
        .select_related("series__revision__base", "made_by")
        .prefetch_related(
            Prefetch("dosages", Dosage.objects.select_related("candidate__material")),
            Prefetch("workings", Working.objects.select_related("equipment")),
            "failures",
        )
    )
    by_key = {trial.pk: trial for trial in trials}
    drawn = films(keys)
    passages = marked({key: said(by_key[key]) for key in keys}, words)
    return tuple(_row(by_key[key], drawn[key], passages.get(key)) for key in keys)


def said(trial: Trial) -> tuple[tuple[str, str], ...]:
    """What a reader of the trial is told, the most telling first, each with what it is."""
    series = trial.series
    failures = sorted(trial.failures.all(), key=lambda failure: (-failure.severity, failure.pk))
    hows = [f"{failure.get_mode_display()}: {failure.how}" for failure in failures if failure.how]
    passages = (
        ("lesson", trial.lesson),
        ("how it showed", "; ".join(hows)),
        ("not a fair test because", trial.unfair_because),
        ("lesson of the series", series.lesson),
        ("remark", trial.remark),
        ("conclusion of the series", series.conclusion),
        ("question of the series", series.question),
    )
    return tuple((name, text) for name, text in passages if text.strip())


def _row(trial: Trial, film: Film, passage: Passage | None) -> TrialRow:
    doses = sorted(trial.dosages.all(), key=lambda dose: dose.pk)
    dispersed = stirring(trial.workings.all()).get(WorkingKind.DISPERSE)
    return TrialRow(
        trial=trial,
        film=film,
        additives=tuple(_dose(dose) for dose in doses),
        stages=", ".join(dict.fromkeys(dose.get_stage_display() for dose in doses)),
        tip_speed_m_s=dispersed.tip_speed_m_s if dispersed else None,
        said=passage.name if passage else "",
        pieces=passage.pieces if passage else (),
    )


def _dose(dose: Dosage) -> str:
    return f"{dose.candidate.material.code} {dose.dosage_pct:f}\u00a0% {Reckoning.of(dose)}"
