"""Weighing, stirring and reading the wet state of the cups of a series."""

from trials.models.trials import WetQuantity, WorkingKind
from trials.operations.bench import CupReadings, CupWorkings, MadeEntry, Reading, mark_made, weigh, work
from trials.operations.equipment import clean_equipment
from trials.operations.wet import WetEntry, read_wet

from . import tools, truth
from .chance import chance, scatter
from .hidden_wet import air_a, air_mix, bubble_free_min, head_mm
from .imagined import BLANK, CLEAN, SPILLED, STOOD, ImaginedCup, imagine, share_of_a
from .laboratory import Laboratory, Worked, number
from .planning import workings
from .round_rows import CALM_BLANKS, DIRTY, RoundRow

CUP_EVERY_MIN = 14
PYKNOMETER, MARKED, ROTATIONAL = "pyknometer, 100 mL", "marked cup, foam above the mark of 120 mm", "cone and plate"


def make_cups(laboratory: Laboratory, row: RoundRow, worked: Worked) -> None:
    """In the order of working, one after the other through the morning."""
    actor, days = laboratory.people[row.owner], laboratory.days
    now = days.moment(worked.day, "12:30")
    cups = sorted(imagine(row), key=lambda cup: worked.trials[cup.key].position)
    made = [_made(laboratory, worked, cup, place) for place, cup in enumerate(cups)]
    mark_made(actor=actor, now=now, entries=made)
    weigh(actor=actor, now=now, entries=[_weighed(laboratory, worked, cup) for cup in cups])
    otherwise = [_worked(laboratory, worked, cup) for cup in cups if _stirred_otherwise(cup)]
    if otherwise:
        work(actor=actor, now=now, entries=otherwise)
    for name in (tools.PILOT if row.round == "pilot" else tools.DISSOLVER, tools.WHISK, tools.PADDLE):
        if DIRTY not in row.twists:
            clean_equipment(actor=actor, now=days.moment(worked.day, "16:30"), equipment=laboratory.equipment[name])


def read_cups(laboratory: Laboratory, row: RoundRow, worked: Worked) -> None:
    entries = [entry for cup in imagine(row) for entry in _wet(cup, worked.trials[cup.key])]
    now = laboratory.days.moment(worked.day, "15:00")
    read_wet(actor=laboratory.people[row.owner], now=now, entries=entries)


def _made(laboratory: Laboratory, worked: Worked, cup: ImaginedCup, place: int) -> MadeEntry:
    start = laboratory.days.moment(worked.day, "08:20", minutes=CUP_EVERY_MIN * place)
    return MadeEntry(
        worked.trials[cup.key],
        made_at=start,
        mixed_at=laboratory.days.moment(worked.day, "08:55", minutes=CUP_EVERY_MIN * place),
        air_c=number(f"{cup.air_c:.1f}"),
        humidity_pct=number(f"{cup.humidity_pct:.0f}"),
        remark=_remark(cup),
    )


def _remark(cup: ImaginedCup) -> str:
    if cup.mishap == SPILLED:
        return "Spilled between balance and paddle; nothing left to pour."
    if cup.mishap == STOOD:
        return "Fire alarm: the cup stood for 25 min between beating and mixing."
    return ""


def _weighed(laboratory: Laboratory, worked: Worked, cup: ImaginedCup) -> CupReadings:
    """A on the bench balance, the additive on the fine one, then B with the balance set to zero."""
    trial = worked.trials[cup.key]
    drawn = chance(cup.nature.name, "balance")
    bench = laboratory.balances[tools.FLOOR_SCALE if cup.row.round == "pilot" else tools.BENCH]
    mass = float(trial.batch_mass_g)
    part = share_of_a(cup.row.base, cup.row.revision)
    digits = 0 if cup.row.round == "pilot" else 2
    doses = [_dosed(laboratory, cup, dose) for dose in trial.dosages.all()]
    if cup.topped_up:
        return CupReadings(trial, tuple(doses))
    a, b = (f"{mass * share + drawn.gauss(0, 0.0002 * mass):.{digits}f}" for share in (part, 1 - part))
    last = Reading(letter="B", reading_g=number(b), balance=bench)
    if cup.mishap == SPILLED:
        last = Reading(letter="B", word="spilled")
    return CupReadings(trial, (Reading(letter="A", reading_g=number(a), balance=bench), *doses, last))


def _dosed(laboratory: Laboratory, cup: ImaginedCup, dose) -> Reading:
    planned = float(dose.planned_g)
    grams = planned * cup.weighed
    if cup.topped_up:
        before = {"0.2": "0.1", "0.45": "0.2"}[cup.dosage]
        grams = planned * (1 - float(before) / float(cup.dosage))
    fine = grams < 60
    return Reading(
        dosage=dose,
        reading_g=number(f"{grams:.4f}" if fine else f"{grams:.2f}"),
        balance=laboratory.balances[tools.FINE if fine else tools.BENCH],
    )


def _stirred_otherwise(cup: ImaginedCup) -> bool:
    calm = CALM_BLANKS in cup.row.twists and cup.part in (BLANK, CLEAN)
    return calm or cup.mishap == STOOD


def _worked(laboratory: Laboratory, worked: Worked, cup: ImaginedCup) -> CupWorkings:
    """Calm blanks are hardly beaten; a cup that stood rests once more."""
    found = []
    for entry in workings(laboratory, cup.row):
        if entry.kind == WorkingKind.AERATE and cup.mishap != STOOD:
            found.append(
                type(entry)(entry.kind, entry.equipment, entry.blade_mm, rpm=number("600"), minutes=number("1"))
            )
            continue
        found.append(entry)
        if entry.kind == WorkingKind.AERATE:
            found.append(type(entry)(WorkingKind.REST, minutes=number("25"), remark="left standing"))
    return CupWorkings(worked.trials[cup.key], tuple(found))


def _wet(cup: ImaginedCup, trial) -> list[WetEntry]:
    if cup.mishap == SPILLED:
        return [WetEntry(WetQuantity.DENSITY, "mix", word="spilled", trial=trial)]
    nature, base = cup.nature, cup.nature.system
    free_a, free_mix = float(base.free_a_g_ml), float(base.free_mix_g_ml)
    bubble_free = bubble_free_min(nature)
    found = [
        _density(trial, "A", free_a, air_a(nature, minutes), minutes) for minutes in (5, 30) if not cup.topped_up
    ]
    found.append(_density(trial, "mix", free_mix, air_mix(nature), 3))
    found.append(
        WetEntry(
            WetQuantity.LEVEL,
            "A",
            number(f"{120 + head_mm(nature):.0f}"),
            minutes=number("5"),
            method=MARKED,
            trial=trial,
        )
    )
    found.append(
        WetEntry(
            WetQuantity.BUBBLE_FREE,
            "mix",
            None if bubble_free is None else number(f"{bubble_free:.0f}"),
            word="not before it set" if bubble_free is None else "",
            trial=trial,
        )
    )
    if base.clear:
        found.append(WetEntry(WetQuantity.CLARITY, "A", word=_clarity(cup), minutes=number("1440"), trial=trial))
    if cup.part == BLANK:
        found += _flow(cup, trial)
    return found  # fmt: skip


def _density(trial, where: str, free: float, air: float, minutes: int) -> WetEntry:
    value = number(f"{free * (1 - air / 100):.4f}")
    return WetEntry(WetQuantity.DENSITY, where, value, minutes=number(str(minutes)), method=PYKNOMETER, trial=trial)


def _flow(cup: ImaginedCup, trial) -> list[WetEntry]:
    base, name = cup.nature.system, cup.nature.name
    thick = base.mix_mpa_s * 3.5 ** ((23 - cup.air_c) / 13) * (1.12 if cup.row.lot == truth.HEAVY_LOT else 1)
    life = base.pot_life_min * 2 ** ((23 - cup.air_c) / 12) * scatter(0.04, name, "pot life")
    found = [
        WetEntry(
            WetQuantity.VISCOSITY,
            "mix",
            number(f"{round(thick * scatter(0.03, name, 'flow'), -1):.0f}"),
            minutes=number("5"),
            method=ROTATIONAL,
            trial=trial,
        )
    ]
    if cup.place == 0:
        found.append(
            WetEntry(WetQuantity.POT_LIFE, "mix", number(f"{life:.0f}"), method="100 g in a beaker", trial=trial)
        )
    return found  # fmt: skip


def _clarity(cup: ImaginedCup) -> str:
    panel = cup.panel()
    haze = panel.seen.haze if panel else 0
    return "clear" if haze < 0.8 else "slightly hazy over black" if haze < 2 else "cloudy"
