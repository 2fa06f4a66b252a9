"""Series: the list, and one with its cups in the order of working."""

from collections import defaultdict
from dataclasses import dataclass
from decimal import Decimal

from django.db.models import Count, Exists, OuterRef, Q
from django.utils import timezone

from trials import access
from trials.figures.swatch import Film
from trials.models import Series, Signature, Trial, WetReading, Working
from trials.models.signing import Meaning
from trials.models.trials import Part, State, WetQuantity
from trials.science.shear import tip_speed_m_s

from .films import films
from .listing import Found, found, with_words
from .masses import Reckoning
from .stated import StatedFact, fact
from .weighed import Dose, WeighedCup, weighed_cups


@dataclass(frozen=True, slots=True)
class SeriesRow:
    series: Series
    cups: int
    read: int
    mixed: int
    signed: str

    @property
    def standing(self) -> str:
        """How far its cups are, in words."""
        if not self.cups:
            return "no cup"
        if not self.mixed:
            return f"{self.cups} cups planned"
        return f"{self.read} of {self.cups} cups read" if self.read else f"{self.mixed} of {self.cups} cups mixed"


@dataclass(frozen=True, slots=True)
class DoseRow:
    """One additive of a cup; ``real_pct`` is told where it was weighed, ``differs`` where that is another dosage."""

    code: str
    dosage_pct: Decimal
    planned_g: Decimal
    weighed_g: Decimal | None
    real_pct: float | None
    differs: bool
    lot: str
    stage: str


@dataclass(frozen=True, slots=True)
class CupRow:
    trial: Trial
    doses: tuple[DoseRow, ...]
    film: Film | None
    words: tuple[str, ...]

    @property
    def reference(self) -> bool:
        return self.trial.part != Part.TREATED


@dataclass(frozen=True, slots=True)
class WorkingRow:
    """One working that cups get, with the tip speed that it amounts to."""

    working: Working
    tip_speed_m_s: float | None


@dataclass(frozen=True, slots=True)
class SeriesSheet:
    series: Series
    cups: tuple[CupRow, ...]
    workings: tuple[WorkingRow, ...]
    facts: tuple[StatedFact, ...]
    reckoning: Reckoning
    base_visible: bool
    enquiry_visible: bool


def find_series(person, *, words: str = "", round: str = "", outcome: str = "") -> Found:
    """Those the person may see, the newest first."""
    wanted = with_words(access.series(person), words, "title", "question", "revision__base__code", "number")
    if round:
        wanted = wanted.filter(round=round)
    if outcome:
        wanted = wanted.filter(outcome="" if outcome == "none" else outcome)
    state = Count("trials", filter=~Q(trials__state=State.PLANNED))
    read = Count("trials", filter=Q(trials__state__in=[State.READ, State.CLOSED]))
    wanted = wanted.select_related("revision__base", "owner", "enquiry", "recommended__material").annotate(
        n_cups=Count("trials"),
        n_mixed=state,
        n_read=read,
        is_signed=_signed(Meaning.PERFORMED),
        is_countersigned=_signed(Meaning.COUNTERSIGNED),
    )
    return found(wanted.order_by("-number", "-pk"), _row)


def load_series(person, number: int) -> Series | None:
    """One that the person may see, with what its page names."""
    wanted = access.series(person).select_related(
        "revision__base", "enquiry__owner", "common_batch", "owner", "follows", "recommended__material"
    )
    return wanted.filter(number=number).first()


def series_sheet(person, series: Series) -> SeriesSheet:
    """Everything that the page of a series shows of its plan; expects what ``load_series`` fetched."""
    trials = list(
        series.trials.select_related("topped_up_from", "common_batch", "made_by").order_by("position", "pk")
    )
    weighed, read, words = weighed_cups(trials), films(trials), _wet_words(series)
    return SeriesSheet(
        series=series,
        cups=tuple(_cup(trial, weighed[trial.pk], read.get(trial.pk), words[trial.pk]) for trial in trials),
        workings=workings_of(trials[0]) if trials else (),
        facts=_facts(series),
        reckoning=Reckoning.of(series),
        base_visible=access.bases(person).filter(pk=series.revision.base_id).exists(),
        enquiry_visible=bool(series.enquiry_id) and access.enquiries(person).filter(pk=series.enquiry_id).exists(),
    )


def workings_of(trial: Trial) -> tuple[WorkingRow, ...]:
    rows = trial.workings.select_related("equipment").order_by("position", "pk")
    return tuple(WorkingRow(row, tip_speed(row)) for row in rows)


def tip_speed(working: Working) -> float | None:
    """None where blade or speed is not noted."""
    if working.blade_mm is None or not working.rpm:
        return None
    return tip_speed_m_s(float(working.blade_mm), float(working.rpm))


def _signed(meaning: str) -> Exists:
    return Exists(Signature.objects.filter(series=OuterRef("pk"), meaning=meaning))


def _row(series: Series) -> SeriesRow:
    signed = "signed by two" if series.is_countersigned else "signed" if series.is_signed else ""
    return SeriesRow(series, series.n_cups, series.n_read, series.n_mixed, signed)


def _wet_words(series: Series) -> dict[int, list[str]]:
    """What was noted instead of a figure before cure ("density: spilled"), by cup."""
    found = defaultdict(list)
    told = (WetQuantity.CLARITY, WetQuantity.APPEARANCE)  # these are words anyway
    rows = WetReading.objects.filter(trial__series=series, value__isnull=True).exclude(quantity__in=told)
    for trial, quantity, word in rows.order_by("pk").values_list("trial", "quantity", "word"):
        found[trial].append(f"{quantity}: {word}")
    return found


def _cup(trial: Trial, weighed: WeighedCup, film: Film | None, words: list[str]) -> CupRow:
    return CupRow(trial, tuple(_dose(dose) for dose in weighed.doses), film, (*weighed.words, *words))


def _dose(dose: Dose) -> DoseRow:
    row = dose.dosage
    return DoseRow(
        code=row.candidate.material.code,
        dosage_pct=row.dosage_pct,
        planned_g=row.planned_g,
        weighed_g=dose.weighed_g,
        real_pct=dose.real_pct,
        # What a balance cannot help is not another dosage: 2 % of it is worth showing.
        differs=dose.off_pct is not None and abs(dose.off_pct) >= 2,
        lot=row.lot.number if row.lot else "",
        stage=row.get_stage_display(),
    )


def _facts(series: Series) -> tuple[StatedFact, ...]:
    field = Series._meta.get_field
    batch = series.common_batch
    return (
        fact(field("batch_mass_g"), series.batch_mass_g),
        fact(field("film_um"), series.film_um),
        StatedFact("Dosages", str(Reckoning.of(series))),
        StatedFact("Additive goes", f"into {series.into}, {series.get_stage_display()}"),
        fact(field("ratio"), series.get_ratio_display()),
        StatedFact("Common batch", _batch_said(batch) if batch else "none yet"),
        fact(field("replicates"), series.replicates, "cups of each dosage"),
        StatedFact("Order of working", series.get_order_rule_display(), source=f"lot drawn with {series.seed}"),
    )


def _batch_said(batch) -> str:
    water = f", water {batch.water_pct} %" if batch.water_pct is not None else ", water not measured"
    made = timezone.localtime(batch.made_at)
    return f"{batch.number} of {batch.letter}, made {made.day} {made:%b %Y}{water}"
