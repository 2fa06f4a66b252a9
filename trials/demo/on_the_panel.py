"""Panels, tins in the oven, and what people read of the films."""

from collections import defaultdict
from datetime import datetime

from trials.models.panels import Coat, Method
from trials.operations.panels import (
    LayerEntry,
    OpenedEntry,
    PanelEntry,
    RetainEntry,
    TinEntry,
    apply_panels,
    open_tins,
    retain,
    store_tins,
)
from trials.operations.reading import RatingEntry, rate

from .chance import chance
from .imagined import BLANK, TIN_C, TIN_DAYS, ImaginedCup, Panel, imagine
from .laboratory import Laboratory, Worked, number
from .readers import MONTH, readings
from .round_rows import CONCRETE, SPIKED, STORED, RoundRow
from .tins import looked_like

POURED_AFTER_MIN = 12


def apply_and_read(laboratory: Laboratory, row: RoundRow, worked: Worked) -> None:
    """As far as the days have come: films on the day, tins after a fortnight and a month, each read in its turn."""
    days, actor = laboratory.days, laboratory.people[row.owner]
    poured = days.moment(worked.day, "13:40")
    _apply(laboratory, row, worked, poured, kinds=("fresh", "fresh 2", "thick", "second coat"))
    _read(laboratory, row, worked, poured, stored=False)
    if STORED in row.twists:
        tins = _store(laboratory, row, worked)
        for stored_days in TIN_DAYS:
            _open(laboratory, row, worked, tins, stored_days)
    _keep(laboratory, row, worked, actor)


def _apply(laboratory, row, worked, at: datetime, *, kinds, tins=None) -> None:
    keys, entries = [], []
    for cup in imagine(row):
        for panel in cup.panels:
            if panel.kind in kinds and not cup.topped_up:
                keys.append((*cup.key, panel.kind))
                entries.append(_panel(laboratory, worked, cup, panel, at, tins))
    made = apply_panels(actor=laboratory.people[row.owner], now=at, entries=entries)
    worked.panels.update(zip(keys, made, strict=True))


def _panel(laboratory, worked, cup: ImaginedCup, panel: Panel, at, tins) -> PanelEntry:
    free = float(cup.nature.system.free_mix_g_ml)
    mass = float(panel.area_dm2) * panel.laid.film_um / 100 * free
    warm = 4.0 if panel.substrate == "concrete" else 0.0
    return PanelEntry(
        worked.trials[cup.key],
        layers=_layers(cup, panel),
        substrate=panel.substrate,
        area_dm2=number(panel.area_dm2),
        mass_g=number(f"{mass * chance(cup.nature.name, panel.kind, 'mass').uniform(0.97, 1.03):.0f}"),
        applied_at=at,
        air_c=number(f"{cup.air_c:.1f}"),
        humidity_pct=number(f"{cup.humidity_pct:.0f}"),
        substrate_c=number(f"{cup.air_c - 0.4 - warm:.1f}"),
        material_c=number(f"{cup.air_c + 0.8:.1f}"),
        stored_tin=tins[cup.key, panel.laid.stored_days] if tins else None,
        code=next(laboratory.labels),
    )


def _layers(cup: ImaginedCup, panel: Panel) -> tuple[LayerEntry, ...]:
    um = number(f"{panel.laid.film_um:g}")
    spiked = number(f"{panel.laid.spiked_min:g}") if SPIKED in cup.row.twists else None
    body = LayerEntry(wet_um=um, method=_method(cup.row.base), spiked_after_min=spiked)
    if panel.kind == "second coat":
        hours = number("4" if cup.row.base == "PF-41" else "24")
        return body, LayerEntry(wet_um=um, coat=Coat.SECOND, method=body.method, recoated_after_h=hours)
    return (body,)


def _method(base: str) -> str:
    return {"PF-41": Method.ROLLER, "EM-52": Method.SPRAY, "EC-12": Method.POUR, "BB-62": Method.POUR}.get(
        base, Method.TROWEL
    )


def _read(laboratory, row, worked, poured: datetime, *, stored: bool, kind: str = "") -> None:
    """One write for each reader and age; a month later comes by amendment."""
    turns = defaultdict(list)
    for cup in imagine(row):
        for panel in cup.panels:
            wanted = panel.kind == kind if stored else not panel.kind.startswith("stored")
            if wanted and not cup.topped_up:
                for one in readings(cup, panel):
                    if one.age_h != MONTH:
                        turns[float(one.age_h), one.reader].append((cup, panel, one))
    for (age_h, reader), rows in turns.items():
        at = laboratory.days.moment(poured.date(), "13:40", hours=age_h)
        if laboratory.days.happened(at):
            ratings = [rating(laboratory, worked, *one, at=at) for one in rows]
            rate(actor=laboratory.people[reader], now=at, ratings=ratings)


def rating(laboratory, worked, cup, panel, one, *, at: datetime) -> RatingEntry:
    return RatingEntry(
        worked.panels[*cup.key, panel.kind],
        laboratory.criteria[one.criterion],
        number(one.age_h),
        number(one.value),
        one.word,
        one.instrument,
        blind=read_blind(cup.row),
        at=at,
    )


def read_blind(row: RoundRow) -> bool:
    """Most series are; on site and on concrete everybody sees what is what."""
    return row.round not in ("plant", "complaint") and CONCRETE not in row.twists


def _store(laboratory, row, worked) -> dict:
    """A full tin of each cup for each time, the blanks' too."""
    keys = [(cup.key, days) for cup in imagine(row) for days in TIN_DAYS if cup.panel(f"stored {days}")]
    at = laboratory.days.moment(worked.day, "16:00")
    entries = [TinEntry(worked.trials[key], days, number(TIN_C), at) for key, days in keys]
    made = store_tins(actor=laboratory.people[row.owner], now=at, entries=entries)
    return dict(zip(keys, made, strict=True))


def _open(laboratory, row, worked, tins: dict, stored_days: int) -> None:
    opened = laboratory.days.moment(worked.day, "10:30", hours=24 * stored_days)
    if not laboratory.days.happened(opened):
        return
    by_key = {cup.key: cup for cup in imagine(row)}
    entries = [
        OpenedEntry(tin, opened, looked_like(by_key[key], days))
        for (key, days), tin in tins.items()
        if days == stored_days
    ]
    open_tins(actor=laboratory.people[row.owner], entries=entries)
    poured = laboratory.days.moment(worked.day, "13:40", hours=24 * stored_days)
    kind = f"stored {stored_days}"
    if laboratory.days.happened(poured):
        _apply(laboratory, row, worked, poured, kinds=(kind,), tins=tins)
        _read(laboratory, row, worked, poured, stored=True, kind=kind)


def _keep(laboratory, row, worked, actor) -> None:
    """The first blank and the best-looking cup of every series go into a box."""
    with_film = [cup for cup in imagine(row) if cup.panel() and (*cup.key, "fresh") in worked.panels]
    blank = next(cup for cup in with_film if cup.part == BLANK)
    best = min(with_film, key=lambda cup: (cup.panel().seen.count + 10 * cup.panel().seen.craters, cup.key))
    box = 1 + int(worked.series.number) // 6
    until = laboratory.days.day(row.ago - 730)
    entries = [
        RetainEntry(
            worked.trials[cup.key], f"panel store, box {box}", until, worked.panels[*cup.key, "fresh"], "panel"
        )
        for cup in dict.fromkeys((blank, best))
    ]
    entries.append(
        RetainEntry(
            worked.trials[blank.key], f"cold store, shelf {1 + box % 4}", until, what="100 g of the common batch"
        )
    )
    retain(actor=actor, entries=entries)
