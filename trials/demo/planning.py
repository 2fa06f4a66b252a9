"""A series is planned from its common batch, with its references and one working for all cups."""

from collections import defaultdict
from datetime import date

from trials.models import CommonBatch, Trial
from trials.models.trials import WorkingKind
from trials.operations.cups import add_cup
from trials.operations.series import CandidateEntry, WorkingEntry, add_common_batch, plan_series

from . import tools, truth
from .chance import chance
from .imagined import ROWS, SPATULA_MM, TOP_UPS
from .laboratory import Laboratory, Worked, number
from .round_rows import DIRTY, STORED, TOPPED_UP, RoundRow, dosages

FIRST_NUMBER = 355
CLEAR_FIRST = "blanks first, dosage ascending"
SILICONE_LAST = "silicone-free before silicone"
WATER = {("UF-33", 1): "0.14", ("UF-33", 2): "0.02", ("BB-62", 1): "0.05", ("PF-41", 1): "0.03", ("PF-41", 2): "0.03"}


def plan(laboratory: Laboratory, row: RoundRow) -> Worked:
    """The common batch of the day before, and the series from it."""
    days = laboratory.days
    day = days.bench_day(row.ago)
    eve = days.before(min(day, days.until))
    owner = laboratory.people[row.owner]
    series = plan_series(
        actor=owner,
        now=days.moment(eve, "16:10"),
        title=row.title,
        question=row.question,
        round=row.round,
        revision=laboratory.revisions[row.base, row.revision],
        batch_mass_g=number(row.grams),
        candidates=_entries(laboratory, row.doses),
        incumbent=next(iter(_entries(laboratory, row.incumbent)), None),
        blanks=row.blanks,
        vacuum=WorkingEntry(
            "rest", laboratory.equipment[tools.CABINET], minutes=number("10"), vacuum_mbar=number("30")
        )
        if row.vacuum
        else False,
        replicates=row.replicates,
        workings=workings(laboratory, row),
        criteria=[laboratory.criteria[key] for key in criteria_of(row)],
        weights={"bubble-count": number("3"), "craters": number("2")},
        enquiry=laboratory.enquiries.get(row.enquiry),
        follows=laboratory.worked[row.follows].series if row.follows in laboratory.worked else None,
        common_batch=_batch(laboratory, row, eve),
        film_um=number(row.film_um or f"{truth.BASES[row.base, row.revision].film_um:g}"),
        basis=row.basis,
        basis_component="A" if row.basis == "component" else "",
        stage=row.stage,
        order_rule=row.order or _order(row),
        **({} if laboratory.worked else {"number": FIRST_NUMBER, "seed": FIRST_NUMBER}),
    )
    if TOPPED_UP in row.twists:
        _top_up(laboratory, row, series, days.moment(day, "08:40"))
    return Worked(series, day, _by_key(series))


def workings(laboratory: Laboratory, row: RoundRow) -> tuple[WorkingEntry, ...]:
    """The same for every cup: disperse, rest, beat in air, mix."""
    rpm, minutes = row.shear
    by_hand, pilot = rpm < 300, row.round == "pilot"
    blade = SPATULA_MM if by_hand else 200 if pilot else 40
    name = tools.SPATULA if by_hand else tools.PILOT if pilot else tools.DISSOLVER
    gear = laboratory.equipment
    disperse = WorkingEntry(
        WorkingKind.DISPERSE,
        gear[name],
        blade_mm=number(f"{blade:g}"),
        vessel_mm=number("400" if pilot else "90"),
        rpm=number(f"{rpm * 40 // 200 if pilot else rpm}"),
        minutes=number(minutes),
        temperature_c=number("32" if rpm > 3000 else "24"),
    )
    rest = WorkingEntry(WorkingKind.REST, minutes=number("15"))
    beat = {"blade_mm": number("50"), "rpm": number("1200"), "minutes": number("3")}
    mix = {"blade_mm": number("70"), "rpm": number("600"), "minutes": number("3")}
    return (
        disperse,
        rest,
        WorkingEntry(WorkingKind.AERATE, gear[tools.WHISK], **beat),
        WorkingEntry(WorkingKind.MIX, gear[tools.PADDLE], **mix, remark="scraped, repotted, one minute more"),
    )


def criteria_of(row: RoundRow) -> tuple[str, ...]:
    """What a series is judged by."""
    keys = ["bubble-count", "bubbles", "craters", "levelling"]
    keys += ["haze"] if truth.BASES[row.base, row.revision].clear else ["pinholes"]
    keys += [key for twist, key in (("second coat", "crawling"), ("cold night", "blush")) if twist in row.twists]
    return tuple(keys)


def _order(row: RoundRow) -> str:
    """Silicone last wherever both kinds are in a series; else the dosage rises."""
    codes = [code for code, _ in (*dosages(row.doses), *dosages(row.incumbent))]
    return SILICONE_LAST if len({ROWS[code].silicone for code in codes}) > 1 else CLEAR_FIRST


def _entries(laboratory: Laboratory, text: str) -> tuple[CandidateEntry, ...]:
    return tuple(
        CandidateEntry(laboratory.candidates[code], tuple(number(pct) for pct in ladder), _lot(laboratory, code))
        for code, ladder in dosages(text)
    )


def _lot(laboratory: Laboratory, code: str):
    return next(lot for (material, _), lot in laboratory.lots.items() if material == code)


def _batch(laboratory: Laboratory, row: RoundRow, eve: date) -> CommonBatch:
    drawn = chance(row.key, "batch")
    base = truth.BASES[row.base, row.revision]
    viscosity = base.mix_mpa_s * 1.75 * drawn.uniform(0.96, 1.04)
    grams = float(row.grams) * 24
    return add_common_batch(
        actor=laboratory.people[row.owner],
        now=laboratory.days.moment(eve, "15:05"),
        revision=laboratory.revisions[row.base, row.revision],
        number=f"M-{101 + len(laboratory.worked)}",
        lots=_lots(laboratory, row),
        mass_g=number(f"{max(6000, round(grams, -3)):.0f}"),
        water_pct=number(WATER.get((row.base, row.revision))),
        viscosity_mpa_s=number(f"{round(viscosity * (1.12 if row.lot else 1), -1):.0f}"),
        density_g_ml=number(base.free_a_g_ml),
        remarks=_remarks(row),
    )


def _remarks(row: RoundRow) -> str:
    said = ["Divided into cups the next morning; stirred up before each."]
    if "righted" in row.twists and row.base == "UF-33":
        said.append("Filler dried overnight at 110 °C.")
    if "righted" in row.twists and row.base == "EC-12":
        said.append("Resin held at 60 °C until clear, cooled, stirred.")
    if DIRTY in row.twists:
        said.append("Vessels from the wash-up of the day before.")
    if STORED in row.twists:
        said.append("Full tins set aside for the oven.")
    return " ".join(said)


def _lots(laboratory: Laboratory, row: RoundRow) -> list:
    component = laboratory.revisions[row.base, row.revision].components.filter(letter="A").first()
    lots = [line.lot for line in component.lines.order_by("position", "pk").select_related("lot") if line.lot]
    if row.lot:
        new = next(lot for (_, name), lot in laboratory.lots.items() if name == row.lot)
        lots = [new if lot.material_id == new.material_id else lot for lot in lots]
    return lots


def _top_up(laboratory: Laboratory, row: RoundRow, series, now) -> None:
    code, first, more = TOP_UPS
    like = series.trials.filter(
        dosages__candidate=laboratory.candidates[code], dosages__dosage_pct=number(first)
    ).order_by("position", "pk").first()  # fmt: skip
    for pct in more:
        like = add_cup(
            actor=laboratory.people[row.owner],
            now=now,
            series=series,
            like=like,
            dosage_pct=number(pct),
            topped_up=True,
        )


def _by_key(series) -> dict[tuple, Trial]:
    """Cups of one kind are told apart by their place in the order of working."""
    found: dict[tuple, Trial] = {}
    places: dict[tuple, int] = defaultdict(int)
    cups = series.trials.order_by("position", "pk").prefetch_related("dosages__candidate__material")
    for trial in cups:
        dose = next(iter(trial.dosages.all()), None)
        kind = (str(trial.part), dose.candidate.material.code if dose else "", str(dose.dosage_pct) if dose else "")
        found[*kind, places[kind]] = trial
        places[kind] += 1
    return found
