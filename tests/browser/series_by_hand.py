"""A series done on the pages of the notebook from its plan to its ratings, as at the bench."""

import re
from collections.abc import Iterable
from dataclasses import dataclass

from .typing_in import choose, content, figure, fill, press, region, rows_of

READ_AFTER_MIN = "5"


@dataclass(frozen=True, slots=True)
class Cup:
    """A cup as its series shows it."""

    code: str
    part: str
    additive: str | None
    dosage_pct: float
    weighed_g: float | None
    as_weighed_pct: float | None

    @property
    def group(self) -> tuple[str | None, float]:
        return self.additive, self.dosage_pct


@dataclass(frozen=True, slots=True)
class Base:
    """What a careful person notes down from the page of a base before planning."""

    choice: str
    parts: dict[str, float]
    air_free_g_ml: float


def base_at_hand(window, code: str) -> Base:
    """The newest revision of the base."""
    window.go(f"/bases/{code}/")
    said = content(window)
    revision = re.search(r"Revision (\d+)", said)[1]
    parts = re.findall(r"Component ([ABC])\b.*?([\d.]+) parts by mass in the mix", said)
    air_free = float(re.search(r"Density, free of air ([\d.]+) g/mL", said)[1])
    return Base(f"{code} revision {revision},", {letter: float(number) for letter, number in parts}, air_free)


def plan(window, base: Base, *, title: str, candidates: dict[str, str], blanks: int, replicates: int) -> None:
    """Fill in the page of a new series as far as every series needs it; it is not sent yet."""
    choose(window, "Base and revision", base.choice)
    fill(window, {"Title": title, "Mix of a cup": "300", "Film thickness": "2000"})
    for row, (code, ladder) in enumerate(candidates.items(), 1):
        fill(window, {f"Additive, row {row}": code, f"Dosages, row {row}": ladder})
    meant = window.page.get_by_role("group", name="How dosages are meant")
    for label, choice in (("Per cent of", "total"), ("Counting", "on top"), ("Stage", "post-addition")):
        choose(window, label, choice, meant)
    fill(window, {"Cups of each dosage": str(replicates), "Blanks": str(blanks)})
    choose(window, "Order rule", "blanks first, dosage ascending")


def planned(window) -> int:
    press(window, "Plan it")
    return int(re.search(r"/series/(\d+)/$", window.page.url)[1])


def cups_of(window, number: int) -> list[Cup]:
    """In the order of working."""
    window.go(f"/series/{number}/")
    return [_cup(row) for row in rows_of(region(window, "Cups, in the order of working").locator("table"))]


def _cup(row: dict[str, str]) -> Cup:
    return Cup(
        code=row["Cup"],
        part=row["Part"],
        additive=None if row["Additive"] == "–" else row["Additive"],
        dosage_pct=figure(row["Dosage %"]) or 0.0,
        weighed_g=figure(row["Weighed g"]),
        as_weighed_pct=figure(row["As weighed %"]),
    )


def down_the_series(window, cups: Iterable[Cup], sheet: str, enter) -> None:
    """One sheet after the other by the button that leads to the next cup, as one goes down a list."""
    cups = list(cups)
    window.go(f"/trials/{cups[0].code}/{sheet}/")
    for cup, after in zip(cups, [*cups[1:], None], strict=True):
        assert f"/trials/{cup.code}/{sheet}/" in window.page.url
        enter(cup)
        press(window, f"Keep, then {after.code}" if after else "Keep")


def weigh_in_one_cup(window) -> float:
    """Type what the display shows, all in one cup and of A and B 0.03 g too much; answers the grams of additive."""
    display, additive_g = 0.0, 0.0
    for row in range(1, window.page.locator("table.lines tbody tr").count() + 1):
        what = window.field(f"What, row {row}").locator("option:checked").inner_text()
        if what == "–":
            continue
        grams = round(float(re.search(r"([\d.]+) g", what)[1]), 2)
        if what.startswith("Component"):
            display += grams + 0.03
        else:
            display += grams
            additive_g += grams
        fill(window, {f"Reading, or a word, row {row}": f"{display:.2f}"})
    return additive_g


def read_density(window, reading: str, *, of: str) -> None:
    choose(window, "What, row 1", "density, g/mL")
    choose(window, "Of, row 1", of)
    fill(window, {"Value, or a word, row 1": reading, "After, row 1": READ_AFTER_MIN})
    fill(window, {"Method, row 1": "cup, ISO 2811-1"})


def pour_a_panel_of_each(window, cups: list[Cup], climate: dict[str, str]) -> dict[str, str]:
    """The code of the panel by that of its cup."""
    window.go(f"/trials/{cups[0].code}/panels/")
    fill(window, {"Panels of each cup": "1", "Area": "3", **climate})
    choose(window, "Substrate", "primed panel")
    choose(window, "Coat, row 1", "body coat")
    fill(window, {"Wet film, row 1": "2000"})
    choose(window, "Method, row 1", "poured")
    window.field("The same for every cup of this series").check()
    press(window, "Keep")
    return {cup.code: _panel_of(window, cup) for cup in cups}


def _panel_of(window, cup: Cup) -> str:
    """The code on the back of the panel of a cup that has one."""
    window.go(f"/trials/{cup.code}/")
    rows = rows_of(region(window, "Panels").locator("table"))
    assert len(rows) == 1
    return rows[0]["Panel"]


def rate_blind(window, number: int, grades: dict[str, dict[str, str]], *, age_h: str, instrument: str = "") -> None:
    """``grades``: by code of the panel, then by criterion."""
    window.go(f"/series/{number}/rate/")
    fill(window, {"Age of the films": age_h, "Instrument": instrument})
    assert window.field("Read blind").is_checked()
    for panel, given in grades.items():
        fill(window, {f"{panel}, {criterion}": value for criterion, value in given.items()})
    press(window, "Keep what you read")
