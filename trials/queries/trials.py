"""One cup: planned against weighed, what was done to it, read on it, and what is unfair about it so far."""

from collections.abc import Sequence
from dataclasses import dataclass
from decimal import Decimal

from django.db.models import Prefetch, Q

from trials import access
from trials.figures.swatch import Film
from trials.models import Panel, Photo, Rating, Retain, Series, Signature, StoredTin, Trial, Weighing, WetReading
from trials.models.signing import Meaning
from trials.models.trials import Part, WetQuantity, Where
from trials.science.air import air_pct

from .air import AirFree, air_free
from .blocks import places
from .fairness import Mark, cup_marks
from .films import film_of
from .groups import groups
from .panels import PanelRow, panel_row
from .reductions import Reduced, reductions
from .weighed import WeighedCup, nets, weighed_cups
from .worked import Worked, asked_for, worked

RATIO_OFF_PCT = 2.0


@dataclass(frozen=True, slots=True)
class ReadingRow:
    """A reading as it stood on the balance, and the grams it amounts to."""

    weighing: Weighing
    what: str
    grams: Decimal | None


@dataclass(frozen=True, slots=True)
class WetRow:
    """A wet reading; a density gives air against ``free``, or ``problem`` says why not."""

    reading: WetReading
    air_pct: float | None = None
    free: AirFree | None = None
    problem: str = ""


@dataclass(frozen=True, slots=True)
class RatedRow:
    """One criterion on fresh and on stored panels of this cup, each at its latest cured age."""

    name: str
    unit: str
    fresh: Reduced | None
    stored: Reduced | None


@dataclass(frozen=True, slots=True)
class TrialSheet:
    trial: Trial
    weighed: WeighedCup
    readings: tuple[ReadingRow, ...]
    workings: tuple[Worked, ...]
    asked: tuple[str, ...]
    wet: tuple[WetRow, ...]
    panels: tuple[PanelRow, ...]
    rated: tuple[RatedRow, ...]
    ratings: tuple[Rating, ...]
    photos: tuple[Photo, ...]
    tins: tuple[StoredTin, ...]
    retains: tuple[Retain, ...]
    marks: tuple[Mark, ...]
    film: Film
    stored_film: Film
    before: str
    after: str
    top_ups: tuple[Trial, ...]


def load_trial(person, code: str) -> Trial | None:
    """One that the person may see, by its code, with what every page of it names."""
    wanted = access.trials(person).select_related(
        "series__revision__base", "series__common_batch", "common_batch", "topped_up_from", "made_by"
    )
    return wanted.filter(code=code.strip()).first()


def signed_record(trial: Trial) -> Series | Trial | None:
    """What was signed and holds this cup fast: its series, or itself; None where nothing was."""
    found = Signature.objects.filter(Q(series=trial.series_id) | Q(trial=trial.pk), meaning=Meaning.PERFORMED)
    first = found.order_by("pk").first()
    if first is None:
        return None
    return trial.series if first.series_id else trial


def cup_after(trial: Trial) -> str:
    """The code of the next cup in the order of working, "" after the last."""
    later = Trial.objects.filter(series=trial.series_id, position__gt=trial.position)
    return later.order_by("position", "pk").values_list("code", flat=True).first() or ""


def trial_sheet(trial: Trial) -> TrialSheet:
    """Expects what ``load_trial`` fetched; a number of queries that no row adds to."""
    cups = _series_of(trial)
    weighed = weighed_cups(cups)
    trial = next(cup for cup in cups if cup.pk == trial.pk)
    ratings = list(
        Rating.objects.filter(panel__trial=trial)
        .select_related("criterion", "person", "panel")
        .order_by("criterion__position", "age_h", "panel__code", "person__full_name", "pk")
    )
    fresh, stored = (reductions([trial], stored=one)[trial.pk] for one in (False, True))
    codes = [cup.code for cup in cups]
    here = codes.index(trial.code)
    return TrialSheet(
        trial=trial,
        weighed=weighed[trial.pk],
        readings=reading_rows(trial),
        workings=worked(trial.workings.all()),
        asked=asked_for(trial),
        wet=_wet_rows(trial, cups),
        panels=tuple(panel_row(panel) for panel in sorted(trial.panels.all(), key=lambda panel: panel.pk)),
        rated=_rated(ratings, fresh, stored),
        ratings=tuple(ratings),
        photos=tuple(
            Photo.objects.filter(panel__trial=trial).select_related("panel").order_by("age_h", "taken_at", "pk")
        ),
        tins=tuple(trial.stored_tins.order_by("days", "pk")),
        retains=tuple(trial.retains.select_related("panel").order_by("until", "pk")),
        marks=_marks(trial, cups, weighed),
        film=film_of(fresh),
        stored_film=film_of(stored),
        before=codes[here - 1] if here else "",
        after=codes[here + 1] if here + 1 < len(codes) else "",
        top_ups=tuple(cup for cup in cups if cup.topped_up_from_id == trial.pk),
    )


def reading_rows(trial: Trial) -> tuple[ReadingRow, ...]:
    """Expects weighings and dosages with their materials fetched."""
    rows = sorted(trial.weighings.all(), key=lambda row: (row.position, row.pk))
    codes = {dose.pk: dose.candidate.material.code for dose in trial.dosages.all()}
    return tuple(
        ReadingRow(row, f"Component {row.letter}" if row.letter else codes[row.dosage_id], grams)
        for row, grams in zip(rows, nets(rows), strict=True)
    )


def _series_of(trial: Trial) -> list[Trial]:
    """All cups of the series in the order of working: what is fair shows only beside the others."""
    panels = Panel.objects.select_related("trial", "stored_tin").prefetch_related("layers")
    return list(
        Trial.objects.filter(series=trial.series_id)
        .select_related("series__revision__base", "series__common_batch", "common_batch", "topped_up_from", "made_by")
        .prefetch_related(
            "workings__equipment",
            "dosages__candidate__material",
            "dosages__lot",
            "weighings__balance",
            "wet_readings",
            "common_batch__wet_readings",
            "series__common_batch__wet_readings",
            "series__revision__components__lines__material__groups",
            "series__revision__components__lines__lot",
            Prefetch("panels", panels),
        )
        .order_by("position", "pk")
    )


def _wet_rows(trial: Trial, cups: Sequence[Trial]) -> tuple[WetRow, ...]:
    batch = trial.common_batch or trial.series.common_batch
    free = {where: air_free(trial.series, cups, where, batch) for where in (Where.A, Where.MIX)}
    rows = sorted(
        trial.wet_readings.all(), key=lambda row: (row.quantity, row.where, row.minutes is None, row.minutes, row.pk)
    )
    return tuple(_wet_row(row, free.get(row.where)) for row in rows)


def _wet_row(reading: WetReading, free: AirFree | None) -> WetRow:
    if reading.quantity != WetQuantity.DENSITY or reading.value is None:
        return WetRow(reading)
    if free is None:
        return WetRow(reading, problem="the density free of air is not known")
    try:
        return WetRow(reading, air_pct(float(reading.value), free.density_g_ml), free)
    except ValueError:
        above = f"{reading.value} g/mL is above {free.said}, the density free of air"
        return WetRow(reading, free=free, problem=f"{above} ({free.source}): one of the two is not right")


def _rated(ratings, fresh: dict[str, Reduced], stored: dict[str, Reduced]) -> tuple[RatedRow, ...]:
    criteria = {rating.criterion.key: rating.criterion for rating in ratings}
    return tuple(
        RatedRow(criterion.name, criterion.unit, fresh.get(key), stored.get(key))
        for key, criterion in criteria.items()
        if key in fresh or key in stored
    )


def _marks(trial: Trial, cups: Sequence[Trial], weighed: dict[int, WeighedCup]) -> tuple[Mark, ...]:
    """Against the other cups of the series as judged, then what this cup alone shows."""
    compared = groups(cups, places(cups))
    found = list(cup_marks(compared, weighed, too_early={}).get(trial.pk, ()))
    found += _ratio_marks(weighed[trial.pk])
    found += [Mark(words) for words in weighed[trial.pk].words]
    if _no_stored_blank(trial, cups):
        found.append(Mark("stored, but no blank of the series is: nothing to compare the stored tin with"))
    return tuple(found)


def _ratio_marks(cup: WeighedCup) -> list[Mark]:
    """Components off their ratio to the first one."""
    known = [portion for portion in cup.portions if portion.weighed_g]
    if len(known) < 2:
        return []
    first = known[0]
    marks = []
    for portion in known[1:]:
        at_ratio = portion.planned_g * float(first.weighed_g) / first.planned_g
        off = 100 * (float(portion.weighed_g) - at_ratio) / at_ratio
        if abs(off) > RATIO_OFF_PCT:
            how = "more" if off > 0 else "less"
            text = f"{portion.letter} weighed {portion.weighed_g} g, {at_ratio:.4g} g at its ratio to {first.letter}"
            marks.append(Mark(f"{text}: {abs(off):.1f} % {how}"))
    return marks


def _no_stored_blank(trial: Trial, cups: Sequence[Trial]) -> bool:
    if trial.part == Part.BLANK or not trial.stored_tins.exists():
        return False
    return not StoredTin.objects.filter(trial__in=[cup.pk for cup in cups if cup.part == Part.BLANK]).exists()
