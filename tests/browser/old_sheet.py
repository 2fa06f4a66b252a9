"""An old laboratory sheet read as a careful person reads it: title rows passed over, "blank" is no additive."""

from dataclasses import dataclass
from pathlib import Path

from python_calamine import CalamineWorkbook

SAMPLES = Path(__file__).resolve().parents[1] / "samples"


@dataclass(frozen=True, slots=True)
class OldCup:
    """One row. ``additive`` is None for a blank; ``foam``, ``craters`` and ``levelling`` are grades 0 to 5."""

    number: int
    additive: str | None
    lot: str | None
    dosage_pct: float
    disc_mm: float
    rpm: float
    minutes: float
    density_g_ml: float
    foam: int
    craters: int
    levelling: int
    remark: str

    @property
    def group(self) -> tuple[str | None, float]:
        return self.additive, self.dosage_pct


def head_of_old_sheet() -> tuple[str, str]:
    """The day and the person."""
    for first, day, _, by, person, *_ in _rows():
        if first == "Date" and by == "by":
            return day.isoformat(), person
    raise ValueError("No row of the sheet begins with “Date”.")


def read_old_sheet() -> list[OldCup]:
    rows = _rows()
    head = next(place for place, row in enumerate(rows) if row[0] == "No.")
    return [_cup(row) for row in rows[head + 1 :] if isinstance(row[0], float)]


def _rows() -> list[list]:
    return CalamineWorkbook.from_path(SAMPLES / "tidy-ish.xlsx").get_sheet_by_index(0).to_python()


def _cup(row: list) -> OldCup:
    number, additive, lot, dosage, _, disc, rpm, minutes, density, foam, craters, levelling, remark = row
    return OldCup(
        number=int(number),
        additive=None if additive == "blank" else additive,
        lot=lot or None,
        dosage_pct=dosage,
        disc_mm=disc,
        rpm=rpm,
        minutes=minutes,
        density_g_ml=density,
        foam=int(foam),
        craters=int(craters),
        levelling=int(levelling),
        remark=remark,
    )
