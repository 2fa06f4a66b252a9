"""What was unfair about a comparison: short sentences, each with its figures.

Thresholds are common practice, no source, unless one is named.
"""

from collections.abc import Mapping, Sequence

from trials.models import Trial
from trials.models.trials import Part, WorkingKind
from trials.science.climate import LEAST_MARGIN_C, dew_point_margin_c

from .blocks import stirring
from .conditions import FILM_TOLERANCE, film_um
from .groups import Cup, Group
from .left_over import after_silicone
from .marks import Mark
from .reductions import YOUNGEST_CURED_H
from .weighed import WeighedCup

DOSAGE_OFF_PCT = 10.0
SHEAR_SHORT = 0.95


def cup_marks(
    groups: Sequence[Group], weighed: Mapping[int, WeighedCup], *, too_early: Mapping[int, float]
) -> dict[int, tuple[Mark, ...]]:
    """The marks of every cup, by its key. Expects everything of the cups prefetched; asks the database nothing."""
    films = _blank_films(groups)
    left_over, _ = after_silicone([cup.trial for group in groups for cup in group.cups])
    found = {}
    for group in groups:
        for cup in group.cups:
            trial = cup.trial
            marks = [Mark(reason, heavy=True) for reason in cup.apart]
            marks += _dosage_marks(weighed.get(trial.pk))
            marks += _shear_marks(trial)
            marks += _film_marks(trial, films.get(group.block.number))
            marks += left_over.get(trial.pk, [])
            marks += _lot_marks(trial)
            marks += _dew_marks(trial)
            if trial.pk in too_early:
                age = f"{too_early[trial.pk]:g} h"
                marks.append(Mark(f"read at {age} only: below {YOUNGEST_CURED_H} h a film is not cured, not counted"))
            found[trial.pk] = tuple(marks)
    return found


def series_marks(groups: Sequence[Group], *, readers: int, blind: bool, read: bool) -> tuple[Mark, ...]:
    """What holds for the series as a whole."""
    marks = []
    for block in {group.block.number: group.block for group in groups}.values():
        if not block.blanks:
            marks.append(Mark("no blank: there is no control to compare with", heavy=True))
        elif len(block.blanks) < 2:
            where = f" ({block.label})" if block.number > 1 or _several(groups) else ""
            marks.append(Mark(f"one blank only{where}: two show how far equal cups scatter"))
    silent = [cup.trial.code for group in groups for cup in group.cups if not cup.trial.workings.all()]
    if silent:
        marks.append(Mark(f"stirring not noted for {_list(silent)}: it can't be checked against the blank"))
    undated = [cup.trial.code for group in groups for cup in group.cups if _unmade(cup.trial)]
    if undated and read:
        marks.append(Mark(f"day not noted for {_list(undated)}: taken as that of the blank"))
    _, unknown = after_silicone([cup.trial for group in groups for cup in group.cups])
    if unknown:
        marks.append(
            Mark(f"{_list(unknown)} followed silicone on the same equipment; a cleaning between can't be checked")
        )
    if read and readers == 1:
        marks.append(Mark("one reader"))
    if read and not blind:
        marks.append(Mark("not everything was read blind to the cup"))
    return tuple(marks)


def _several(groups: Sequence[Group]) -> bool:
    return len({group.block.number for group in groups}) > 1


def _unmade(trial: Trial) -> bool:
    return trial.made_at is None and trial.mixed_at is None


def _list(codes: Sequence[str], *, most: int = 6) -> str:
    shown = ", ".join(codes[:most])
    return shown if len(codes) <= most else f"{shown} and {len(codes) - most} more"


def _dosage_marks(cup: WeighedCup | None) -> list[Mark]:
    marks = []
    for dose in cup.doses if cup else ():
        off = dose.off_pct
        if off is not None and abs(off) > DOSAGE_OFF_PCT:
            code, planned = dose.dosage.candidate.material.code, dose.dosage.dosage_pct.normalize()
            how = "more" if off > 0 else "less"
            text = f"{code} weighed at {dose.real_pct:.3g} % instead of {planned:f} %: {abs(off):.0f} % {how}"
            marks.append(Mark(text, heavy=True))
    return marks


def _shear_marks(trial: Trial) -> list[Mark]:
    """Against the working that the candidate asks for."""
    got = stirring(trial.workings.all()).get(WorkingKind.DISPERSE)
    marks = []
    for dose in trial.dosages.all():
        candidate = dose.candidate
        code = candidate.material.code
        asked = [(candidate.tip_speed_m_s, "m/s", "tip_speed_m_s"), (candidate.minutes, "min", "minutes")]
        for wanted, unit, name in asked:
            if wanted is None:
                continue
            value = getattr(got, name) if got else None
            if value is None and trial.workings.all():
                marks.append(Mark(f"{code} asks for {wanted:f} {unit}: {'not noted' if got else 'not dispersed'}"))
            elif value is not None and value < SHEAR_SHORT * float(wanted):
                marks.append(Mark(f"dispersed {value:.2g} {unit}; {code} asks for {wanted:f} {unit}", heavy=True))
    return marks


def _blank_films(groups: Sequence[Group]) -> dict[int, list[float]]:
    """Wet films of the blanks, by block."""
    found: dict[int, list[float]] = {}
    for group in groups:
        if group.part == Part.BLANK:
            films = [film for cup in group.cups for panel in cup.trial.panels.all() if (film := film_um(panel))]
            found.setdefault(group.block.number, []).extend(films)
    return found


def _film_marks(trial: Trial, blanks: list[float] | None) -> list[Mark]:
    """A film that differs from every blank's."""
    if not blanks or trial.part == Part.BLANK:
        return []
    marks = []
    for panel in trial.panels.all():
        film = film_um(panel)
        if film is None or any(abs(film - one) <= FILM_TOLERANCE * one for one in blanks):
            continue
        near = min(blanks, key=lambda one: abs(one - film))
        marks.append(Mark(f"panel {panel.code}: {film:g} µm wet, blank {near:g} µm", heavy=True))
    return marks


def _lot_marks(trial: Trial) -> list[Mark]:
    return [
        Mark(f"{dose.candidate.material.code} lot {dose.lot.number} was not shaken")
        for dose in trial.dosages.all()
        if dose.lot and dose.lot.shaken is False
    ]


def _dew_marks(trial: Trial) -> list[Mark]:
    marks = []
    for panel in trial.panels.all():
        air_c = panel.air_c if panel.air_c is not None else trial.air_c
        humidity = panel.humidity_pct if panel.humidity_pct is not None else trial.humidity_pct
        if None in (panel.substrate_c, air_c, humidity):
            continue
        try:
            margin = dew_point_margin_c(float(panel.substrate_c), float(air_c), float(humidity))
        except ValueError:
            continue  # outside what the formula holds for
        if margin < LEAST_MARGIN_C:
            marks.append(
                Mark(f"panel {panel.code}: substrate {margin:.1f} °C above the dew point, 3 °C are asked for")
            )
    return marks


def heavy(cup: Cup, marks: Mapping[int, Sequence[Mark]]) -> list[str]:
    return [mark.text for mark in marks.get(cup.pk, ()) if mark.heavy]
