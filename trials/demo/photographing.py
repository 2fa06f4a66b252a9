"""About a hundred and fifty panels are photographed: references and ladders, fresh and stored, for the strips."""

from datetime import timedelta

from trials.operations.photos import PhotoEntry, add_photos

from .bubbles_drawn import MM_PER_PX, bubbles_of
from .imagined import BLANK, INCUMBENT, TREATED, ImaginedCup, Panel, imagine
from .laboratory import Laboratory, Worked, number
from .readers import readings
from .rendering import photograph
from .round_rows import CONCRETE, RoundRow
from .rounds import ROUNDS

PHOTOGRAPHED = (
    "ef-1", "ef-4", "ef-6", "ef-7", "ef-10", "ef-16", "ef-20", "ef-21", "ec-1", "ec-4",
    "ec-7", "ec-8", "uf-3", "uf-6", "uf-7", "uf-8", "uf-9", "uf-11", "pf-2", "pf-5", "bb-2", "em-2", "ef-22",
)  # fmt: skip
KINDS = {"fresh": "168", "thick": "168", "second coat": "168", "stored 28": "24"}


def take_photographs(laboratory: Laboratory) -> str:
    taken = sum(
        _photograph(laboratory, row, laboratory.worked[row.key])
        for row in ROUNDS
        if row.key in PHOTOGRAPHED and row.key in laboratory.worked
    )
    return f"{taken} photographs"


def photographed(row: RoundRow) -> list[tuple[ImaginedCup, Panel, str]]:
    """The first cup of each kind, every film of it that was counted; with its age."""
    found = []
    for cup in imagine(row):
        if cup.place or cup.part not in (BLANK, INCUMBENT, TREATED) or cup.topped_up:
            continue
        found += [
            (cup, panel, KINDS[panel.kind]) for panel in cup.panels if panel.kind in KINDS and count_read(cup, panel)
        ]
    return found


def count_read(cup: ImaginedCup, panel: Panel) -> str | None:
    """What the first reader counted, on this photograph."""
    first = (
        one for one in readings(cup, panel) if one.criterion == "bubble-count" and one.reader == cup.row.seen_by[0]
    )
    return next(first).value


def picture_of(cup: ImaginedCup, panel: Panel) -> bytes:
    name = f"{cup.nature.name} {panel.kind}"
    return photograph(
        panel.seen,
        bubbles_of(cup, panel),
        tint=cup.row.tint,
        rows=CONCRETE in cup.row.twists,
        name=name,
    )


def _photograph(laboratory: Laboratory, row: RoundRow, worked: Worked) -> int:
    entries = []
    for cup, panel, age_h in photographed(row):
        taken = worked.panels.get((*cup.key, panel.kind))
        if taken is None:
            continue
        at = taken.applied_at + timedelta(hours=float(age_h))
        if laboratory.days.happened(at):
            entries.append(
                PhotoEntry(
                    taken,
                    picture_of(cup, panel),
                    f"{taken.code}.jpg",
                    mm_per_px=number(MM_PER_PX),
                    age_h=number(age_h),
                    taken_at=at,
                )
            )
    if entries:
        add_photos(actor=laboratory.people[row.seen_by[0]], now=entries[-1].taken_at, entries=entries)
    return len(entries)
