"""The question is taken down, the old sheet planned as a series, and its weighing sheet worked out by hand."""

import re
import secrets
from collections import defaultdict
from datetime import date, timedelta

import pytest

from .series_by_hand import plan, planned
from .typing_in import choose, content, fill, follow, press, rows_of

# Not in the sheet: what its component A would weigh without air, as the person who types it in measured it.
AIR_FREE_A_G_ML = 1.53


def take_the_enquiry(window) -> int:
    window.go("/enquiries/new/")
    fill(window, {"Subject": "Foam and craters in a grey floor", "Customer": "Floor works in the harbour"})
    choose(window, "Application field", "floor")
    choose(window, "In which base", "EF-21")
    fill(window, {"Film thickness": "2000", "What is asked": "Fewer bubbles than today, no craters."})
    choose(window, "Used today", "AR-09")
    fill(window, {"Dosage used today": "0.4", "Due": (date.today() + timedelta(days=30)).isoformat()})
    for row, (criterion, limit, force) in enumerate((("Bubbles (", "2", "must"), ("Craters", "1", "should")), 1):
        choose(window, f"Criterion, row {row}", criterion)
        fill(window, {f"Limit, row {row}": limit})
        choose(window, f"Must or should, row {row}", force)
    press(window, "Keep")
    said = content(window)
    assert "AR-09" in said
    assert "0.4 %" in said
    return int(re.search(r"/enquiries/(\d+)/$", window.page.url)[1])


def plan_the_sheet(window, enquiry: int, base, sheet) -> int:
    lots = {cup.additive: cup.lot for cup in sheet if cup.additive}
    for code, lot in lots.items():
        add_the_lot(window, code, lot)
    batch = make_the_common_batch(window, base)
    window.go(f"/series/new/?enquiry={enquiry}")
    # Nobody made a cup with today's additive on that day.
    fill(window, {"Incumbent": "", "Dosage of the incumbent": ""})
    ladders: dict[str, list[str]] = defaultdict(list)
    for cup in sheet:
        if cup.additive and f"{cup.dosage_pct:g}" not in ladders[cup.additive]:
            ladders[cup.additive].append(f"{cup.dosage_pct:g}")
    candidates = {code: " ".join(ladder) for code, ladder in ladders.items()}
    plan(window, base, title="Screening of an old sheet", candidates=candidates, blanks=3, replicates=2)
    fill(window, {f"Lot, row {row}": lots[code] for row, code in enumerate(candidates, 1)})
    choose(window, "Round", "ladder")
    choose(window, "Common batch", batch)
    window.field("One clean check at the end").uncheck()
    fill(window, {"Blade or disc, row 1": "40", "Speed, row 1": "2000", "Time, row 1": "5", "Time, row 2": "720"})
    fill(window, {"Speed, row 3": "800", "Time, row 3": "2", "Speed, row 4": "400", "Time, row 4": "3"})
    for row, criterion in enumerate(("Bubbles", "Craters", "Levelling", "Gloss"), 1):
        choose(window, f"Criterion, row {row}", criterion)
    return planned(window)


def add_the_lot(window, code: str, lot: str) -> None:
    window.go(f"/materials/{code}/")
    if lot not in content(window):
        window.go(f"/materials/{code}/lots/new/")
        fill(window, {"Number": lot})
        press(window, "Keep")


def make_the_common_batch(window, base) -> str:
    number = f"CB-{secrets.token_hex(3).upper()}"
    window.go("/bases/EF-21/")
    follow(window, "Common batch")
    fill(window, {"Number": number, "Mass": "5000", "Density": f"{AIR_FREE_A_G_ML}"})
    press(window, "Keep")
    return number


def check_the_weighing_sheet(window, number: int, cups, base, sheet) -> None:
    """300 g of mix, free of additive, at the mixing ratio; per cent of the total, on top of the hundred."""
    window.go(f"/series/{number}/weighing/")
    rows = rows_of(window.page.get_by_role("main").locator("table").nth(1))
    assert [row["Cup"] for row in rows] == [cup.code for cup in cups]
    lots = {old.additive: old.lot for old in sheet}
    a_g = 300 * base.parts["A"] / sum(base.parts.values())
    for row, cup in zip(rows, cups, strict=True):
        grams = {head: [float(one) for one in re.findall(r"\d+\.\d+", cell)] for head, cell in row.items()}
        dose_g = cup.dosage_pct / 100 * 300
        assert grams["Component A g"][0] == pytest.approx(a_g, abs=0.005)
        assert grams["Component B g (display)"] == pytest.approx([300 - a_g, 300 + dose_g], abs=0.01)
        if cup.additive:
            assert row["Additive into A g (display)"].startswith(f"lot {lots[cup.additive]}: ")
            assert grams["Additive into A g (display)"] == pytest.approx([dose_g, a_g + dose_g], abs=0.006)
