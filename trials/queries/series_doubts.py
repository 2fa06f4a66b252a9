"""What to look at in a plan before it is worked: dosages, shear, references, carry-over, water."""

from collections import Counter
from collections.abc import Iterator
from datetime import datetime

from django.utils import timezone

from trials.models import Candidate, Dosage, Series, Trial
from trials.models.bases import HasAdditive
from trials.models.series import OrderRule
from trials.models.trials import WITHOUT_ADDITIVE, Part, WorkingKind
from trials.science import stoichiometry

from .base_doubts import Remark
from .series import tip_speed
from .shift import CORRECT_ABOVE_PCT
from .weighing import WeighingSheet

ORDER = ("wrong", "warning", "note")
# Same shear: what a dial and a stop watch let through.
CLOSE_PCT = 10.0


def series_doubts(series: Series) -> tuple[Remark, ...]:
    """The worst first; expects what ``load_series`` fetched."""
    trials = list(
        series.trials.prefetch_related("dosages__candidate__material", "workings__equipment").order_by(
            "position", "pk"
        )
    )
    doses = [(trial, dose) for trial in trials for dose in trial.dosages.all()]
    found = [
        *_references(series, trials),
        *_dosages(series, doses),
        *_shear(trials, doses),
        *_carry_over(series, trials, doses),
        *_base(series),
    ]
    return tuple(sorted(found, key=lambda remark: ORDER.index(remark.kind)))


def weighing_doubts(sheet: WeighingSheet) -> tuple[Remark, ...]:
    """What the sums of the sheet are worth a word about."""
    found = []
    shifted = [cup for cup in sheet.cups if cup.known_shift and abs(cup.known_shift.pct) > CORRECT_ABOVE_PCT]
    if shifted:
        worst = max(shifted, key=lambda cup: abs(cup.known_shift.pct))
        found.append(Remark("warning", _shifted(sheet, shifted, worst)))
    reasons = {cup.shift.reason for cup in sheet.cups if cup.known_shift is None}
    for reason in sorted(reasons):
        found.append(Remark("note", f"The shift of the hardener demand can't be told: {reason}. Weighed as sold."))
    known = next((cup.known_shift for cup in sheet.cups if cup.known_shift), None)
    if known and known.water_counts and not known.water_known:
        found.append(
            Remark(
                "note",
                "Water of the common batch is not measured, so it is not in the shift: 0.05 % in the mix would be"
                f" {known.assumed_pct:+.1f} %, and more gas than stirring beats in.",
            )
        )
    advice = dict.fromkeys(portion.advice for cup in sheet.cups for portion in cup.portions if portion.coarse)
    found += [Remark("warning", text) for text in advice]
    return tuple(found)


def _shifted(sheet, shifted, worst) -> str:
    codes = ", ".join(cup.trial.code for cup in shifted) if len(shifted) < len(sheet.cups) else "every cup"
    shift = worst.known_shift
    done = "weighed with the correction" if sheet.series.ratio == "corrected" else "weighed as sold"
    offer = "" if not shift.offer or sheet.series.ratio == "corrected" else "; the corrected grams stand beside"
    return (
        f"The demand for hardener is off by more than {CORRECT_ABOVE_PCT:g} % in {codes}: up to {shift.pct:+.1f} %"
        f" (water {shift.water_pct:+.1f} %, additive {shift.additive_pct:+.1f} %). This series is {done}{offer}."
    )


def _references(series: Series, trials: list[Trial]) -> Iterator[Remark]:
    parts = Counter(trial.part for trial in trials)
    if not parts[Part.BLANK]:
        yield Remark("wrong", "There is no blank: nothing in this series can be compared.")
    elif parts[Part.BLANK] == 1:
        yield Remark("warning", "One blank alone says nothing of the spread: make at least two.")
    if trials and not parts[Part.CLEAN]:
        yield Remark("note", "No clean check at the end: that the equipment stayed clean can't be shown.")
    used = series.enquiry and (series.enquiry.incumbent_id or series.enquiry.incumbent_note)
    if used and not parts[Part.INCUMBENT]:
        yield Remark("warning", "The customer uses something today, and no cup holds it: add the incumbent.")
    if series.common_batch_id is None:
        yield Remark("note", "No common batch yet: cups from several makings are not compared with each other.")


def _dosages(series: Series, doses: list[tuple[Trial, Dosage]]) -> Iterator[Remark]:
    # Windows are on the total, on top, as supplied: the grams say what that is here.
    ladders: dict = {}
    for trial, dose in doses:
        if trial.part != Part.INCUMBENT:
            total_pct = 100 * float(dose.planned_g) / float(trial.batch_mass_g or series.batch_mass_g)
            ladders.setdefault(dose.candidate, set()).add(round(total_pct, 6))
    for candidate, ladder in sorted(ladders.items(), key=lambda pair: pair[0].material.code):
        yield from _against_window(candidate, sorted(ladder))


def _against_window(candidate: Candidate, ladder: list[float]) -> Iterator[Remark]:
    code, low, high, tried = (
        candidate.material.code,
        candidate.from_pct,
        candidate.to_pct,
        candidate.highest_tried_pct,
    )
    outside = [pct for pct in ladder if _below(pct, low) or _above(pct, high)]
    if outside:
        window = " to ".join(format(end, "f") if end is not None else "?" for end in (low, high))
        yield Remark(
            "warning", f"{code} at {_listed(outside)} % on the total is outside its usual window of {window} %."
        )
    beyond = [pct for pct in ladder if _above(pct, tried)]
    if beyond:
        yield Remark("note", f"{code} at {_listed(beyond)} % is more than was ever tried here ({tried:f} %).")


def _below(pct: float, end) -> bool:
    return end is not None and pct < float(end) * 0.999


def _above(pct: float, end) -> bool:
    return end is not None and pct > float(end) * 1.001


def _listed(ladder: list[float]) -> str:
    return " and ".join(f"{pct:.3g}" for pct in ladder)


def _shear(trials: list[Trial], doses) -> Iterator[Remark]:
    if not trials:
        return
    worked = {trial.pk: _worked(trial) for trial in trials}
    if not any(worked.values()):
        yield Remark("warning", "No working is planned: write down what every cup gets, the blanks too.")
        return
    treated = [worked[trial.pk] for trial in trials if trial.part == Part.TREATED] or list(worked.values())
    usual = Counter(treated).most_common(1)[0][0]
    for trial in trials:
        ends_degassed = trial.part == Part.VACUUM and _alike(worked[trial.pk][: len(usual)], usual)
        if not _alike(worked[trial.pk], usual) and not ends_degassed:
            kind = "wrong" if trial.part in WITHOUT_ADDITIVE else "warning"
            said = "a blank" if trial.part in WITHOUT_ADDITIVE else "it"
            yield Remark(
                kind, f"{trial.code} ({trial.part}) is worked otherwise than the treated cups: {said} is no match."
            )
    yield from _under_sheared(doses)


def _worked(trial: Trial) -> tuple:
    rows = sorted(trial.workings.all(), key=lambda row: (row.position, row.pk))
    return tuple((row.kind, tip_speed(row), row.minutes) for row in rows)


def _alike(one: tuple, other: tuple) -> bool:
    return len(one) == len(other) and all(
        a[0] == b[0] and _close(a[1], b[1]) and _close(a[2], b[2]) for a, b in zip(one, other, strict=True)
    )


def _close(a, b) -> bool:
    if a is None or b is None:
        return a is None and b is None
    return abs(float(a) - float(b)) <= CLOSE_PCT / 100 * max(float(a), float(b))


def _under_sheared(doses) -> Iterator[Remark]:
    seen = set()
    for trial, dose in doses:
        candidate = dose.candidate
        if candidate.pk in seen or (candidate.tip_speed_m_s is None and candidate.minutes is None):
            continue
        seen.add(candidate.pk)
        dispersed = [row for row in trial.workings.all() if row.kind == WorkingKind.DISPERSE]
        speeds = [speed for row in dispersed if (speed := tip_speed(row)) is not None]
        minutes = [float(row.minutes) for row in dispersed if row.minutes is not None]
        asked, code = candidate.tip_speed_m_s, candidate.material.code
        if asked is not None and speeds and max(speeds) < float(asked):
            yield Remark(
                "warning", f"{code} asks for {asked} m/s at the tip of the blade; planned are {max(speeds):.1f} m/s."
            )
        if candidate.minutes is not None and minutes and sum(minutes) < float(candidate.minutes):
            yield Remark("warning", f"{code} asks for {candidate.minutes} min; dispersed are {sum(minutes):g} min.")


def _carry_over(series: Series, trials: list[Trial], doses) -> Iterator[Remark]:
    kinds = {dose.candidate.silicone for _, dose in doses}
    if len(kinds) == 2 and series.order_rule != OrderRule.SILICONE_LAST:
        yield Remark(
            "warning",
            "Silicone and silicone-free candidates in one series: work the silicone-free ones first, or give each"
            " its own disc.",
        )
    used = {row.equipment for trial in trials for row in trial.workings.all() if row.equipment}
    for equipment in sorted(used, key=lambda one: one.name):
        soiled = equipment.last_silicone
        if soiled and not (equipment.last_cleaned and equipment.last_cleaned > soiled):
            yield Remark(
                "warning", f"{equipment.name} was last used with silicone on {_day(soiled)} and not cleaned since."
            )


def _day(at: datetime) -> str:
    local = timezone.localtime(at)
    return f"{local.day} {local:%b %Y}"


def _base(series: Series) -> Iterator[Remark]:
    base = series.revision.base
    if base.additive != HasAdditive.NO:
        holds = "may contain" if base.additive == HasAdditive.MAY else "contains"
        note = f": {base.additive_note}" if base.additive_note else "."
        yield Remark("note", f"{base.code} {holds} a defoamer already; the blank holds it too{note}")
    batch = series.common_batch
    wet = base.chemistry in stoichiometry.CHEMISTRIES and stoichiometry.reacts("water", base.chemistry)
    if wet and batch and batch.water_pct is None:
        yield Remark("note", f"Water of common batch {batch.number} is not measured; it outweighs the additive.")
