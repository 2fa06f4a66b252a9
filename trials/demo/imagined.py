"""A series as it would go: its cups, their mishaps and their films, worked out before anything is written."""

import math
from dataclasses import dataclass
from functools import cache

from .bases import BASES
from .candidates import CANDIDATES
from .chance import chance
from .hidden import REFERENCE_C, Cup, Laid
from .hidden_film import Seen, film
from .round_rows import (
    CALM_BLANKS,
    CLIMATES,
    COLD_NIGHT,
    CONCRETE,
    DIRTY,
    RIGHTED,
    SECOND,
    SPATULA,
    SPIKED,
    STORED,
    THICK,
    TOPPED_UP,
    RoundRow,
    dosages,
)
from .truth import BASES as TRUE_BASES

TREATED, BLANK, INCUMBENT = "treated", "blank", "incumbent"
VACUUM, CLEAN = "vacuum reference", "clean check"
# What happens to single cups, and how often.
MISWEIGHED, SPILLED, OTHER_FILM, STOOD = "misweighed", "spilled", "other film", "stood"
_MISHAPS = ((MISWEIGHED, 0.036), (SPILLED, 0.012), (OTHER_FILM, 0.020), (STOOD, 0.012))
THREE_CLIMATES = (10.0, 23.0, 30.0)
TIN_DAYS, TIN_C = (14, 28), "50"
DISC_MM, SPATULA_MM = 40.0, 25.0
# One cup that is topped up twice: the candidate, its dosage, and what it then holds.
TOP_UPS = ("AR-09", "0.1", ("0.2", "0.45"))
SHEAR_SHORT = 0.95
ROWS = {row.material.code: row for row in CANDIDATES}


@dataclass(frozen=True, slots=True)
class Panel:
    """``kind``: fresh, thick, second coat, or stored with its days."""

    kind: str
    laid: Laid
    seen: Seen
    area_dm2: str
    substrate: str


@dataclass(frozen=True, slots=True)
class ImaginedCup:
    """``place`` counts cups of one kind; ``short`` says where the shear falls short of what the candidate asks."""

    row: RoundRow
    part: str
    code: str
    dosage: str
    place: int
    nature: Cup
    mishap: str
    weighed: float
    air_c: float
    humidity_pct: float
    short: bool
    panels: tuple[Panel, ...]

    @property
    def key(self) -> tuple[str, str, str, int]:
        return self.part, self.code, self.dosage, self.place

    @property
    def topped_up(self) -> bool:
        return TOPPED_UP in self.row.twists and self.code == TOP_UPS[0] and self.dosage in TOP_UPS[2]

    def panel(self, kind: str = "fresh") -> Panel | None:
        return next((panel for panel in self.panels if panel.kind == kind), None)


@cache
def imagine(row: RoundRow) -> tuple[ImaginedCup, ...]:
    """Every cup of a series, in no order of working."""
    planned = [(BLANK, "", "", place) for place in range(row.blanks)]
    planned += [(VACUUM, "", "", 0)] * row.vacuum
    for part, text in ((INCUMBENT, row.incumbent), (TREATED, row.doses)):
        for code, ladder in dosages(text):
            planned += [(part, code, dosage, place) for dosage in ladder for place in range(row.replicates)]
    if TOPPED_UP in row.twists:
        planned += [(TREATED, TOP_UPS[0], dosage, 0) for dosage in TOP_UPS[2]]
    planned.append((CLEAN, "", "", 0))
    return tuple(_cup(row, *one) for one in planned)


@cache
def share_of_a(base: str, revision: int) -> float:
    found = next(one for one in BASES if one.code == base).revisions[revision - 1]
    parts = {component.letter: float(component.parts) for component in found.components}
    return parts["A"] / sum(parts.values())


def tip_speed_m_s(row: RoundRow) -> float:
    blade_mm = SPATULA_MM if row.shear[0] < 300 else DISC_MM
    return math.pi * blade_mm / 1000 * row.shear[0] / 60


def reaches(row: RoundRow, code: str) -> float:
    """How much of the shear that it asks for a candidate got; 1 is all."""
    speed, minutes = map(float, ROWS[code].shear)
    return min(1.0, tip_speed_m_s(row) / speed) * min(1.0, float(row.shear[1]) / minutes) ** 0.5


def short_of_shear(row: RoundRow, code: str) -> bool:
    speed, minutes = map(float, ROWS[code].shear)
    return tip_speed_m_s(row) < SHEAR_SHORT * speed or float(row.shear[1]) < SHEAR_SHORT * minutes


def film_um(row: RoundRow) -> float:
    return float(row.film_um or TRUE_BASES[row.base, row.revision].film_um)


def _cup(row: RoundRow, part: str, code: str, dosage: str, place: int) -> ImaginedCup:
    name = f"{row.key}/{part}/{code} {dosage}/{place}"
    mishap = _mishap(row, part, code, dosage, name)
    weighed = _weighed(mishap, name) if code else 1.0
    total = float(dosage or 0) * (share_of_a(row.base, row.revision) if row.basis == "component" else 1)
    nature = Cup(
        name=name,
        base=(row.base, row.revision),
        lot=row.lot,
        candidate=code,
        dosage_pct=total * weighed,
        strength=ROWS[code].grades[0] if code else 0,
        reaches=reaches(row, code) if code else 1.0,
        beaten=_beaten(row, part, mishap),
        degassed=part == VACUUM,
        contaminated=DIRTY in row.twists,
        righted=RIGHTED in row.twists,
    )
    air_c, humidity = _climate(row, place, name)
    panels = () if mishap == SPILLED else tuple(_panels(row, nature, part, place, mishap, air_c, humidity))
    short = bool(code) and short_of_shear(row, code)
    return ImaginedCup(
        row, part, code, dosage, place, nature, mishap, weighed, air_c, humidity, short, panels
    )  # fmt: skip


def _mishap(row: RoundRow, part: str, code: str, dosage: str, name: str) -> str:
    topped_up = TOPPED_UP in row.twists and (code, dosage) in {(TOP_UPS[0], one) for one in TOP_UPS[2]}
    if part != TREATED or topped_up or {SPATULA, DIRTY, CALM_BLANKS} & set(row.twists):
        return ""
    drawn = chance(name, "mishap").random()
    for mishap, share in _MISHAPS:
        if drawn < share:
            return mishap
        drawn -= share
    return ""


def _weighed(mishap: str, name: str) -> float:
    drawn = chance(name, "weighed")
    if mishap == MISWEIGHED:
        return drawn.choice((0.71, 0.78, 1.24, 1.38))
    return 1 + min(max(drawn.gauss(0, 0.012), -0.05), 0.05)


def _beaten(row: RoundRow, part: str, mishap: str) -> float:
    if CALM_BLANKS in row.twists and part in (BLANK, CLEAN):
        return 0.55
    return 0.6 if mishap == STOOD else 1.0


def _climate(row: RoundRow, place: int, name: str) -> tuple[float, float]:
    day = chance(row.key, "climate")
    air_c, humidity = round(day.uniform(21.5, 24.0), 1), round(day.uniform(38, 58))
    if CLIMATES in row.twists:
        air_c, humidity = THREE_CLIMATES[place % 3], (62, 48, 44)[place % 3]
    if COLD_NIGHT in row.twists:
        air_c, humidity = 8.5, 88
    return round(air_c + chance(name, "air").uniform(-0.3, 0.3), 1), humidity


def _panels(row, nature, part, place, mishap, air_c, humidity):
    meant = film_um(row)
    own = meant * 1.5 if mishap == OTHER_FILM else meant
    area = "1" if meant > 4500 else "2" if float(row.grams) <= 300 else "3"
    substrate = _substrate(row)

    def panel(kind: str, um: float, *, where: str = substrate, number: int = 0, **more) -> Panel:
        laid = Laid(f"{kind}{number}", um, air_c, humidity, where, **more)
        return Panel(kind if not number else f"{kind} {number + 1}", laid, film(nature, laid), area, where)

    spiked = (8.0, 28.0)[place % 2] if SPIKED in row.twists else None
    # What is degassed goes on glass beside the porous block.
    where = "glass" if CONCRETE in row.twists and part == VACUUM else substrate
    yield panel("fresh", own, where=where, spiked_min=spiked)
    if float(row.grams) >= 500 and not {STORED, THICK, SECOND, CLIMATES} & set(row.twists) and area != "1":
        yield panel("fresh", own, where=where, number=1, spiked_min=spiked)
    if THICK in row.twists:
        yield panel("thick", 2 * meant)
    if SECOND in row.twists:
        yield panel("second coat", own, second=True)
    if STORED in row.twists and part in (BLANK, TREATED, INCUMBENT):
        for days in TIN_DAYS:
            yield panel(f"stored {days}", meant, stored_days=days)


def _substrate(row: RoundRow) -> str:
    if CONCRETE in row.twists:
        return "concrete"
    if row.base == "EM-52":
        return "steel"
    if row.base == "PF-41":
        return "fibre board"
    return "primed panel" if row.base in ("EF-21", "UF-33", "BB-61") else "glass"


def at_reference(cup: ImaginedCup) -> bool:
    return abs(cup.air_c - REFERENCE_C) < 3
