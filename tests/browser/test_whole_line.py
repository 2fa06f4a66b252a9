"""From a customer's question to the printed report, typed by people into the pages; the figures held to SciPy.

The cups are those of an old laboratory sheet (invented), the base and the candidates those of the demonstration.
"""

import json
import re

import pytest

from .line_bench import log_the_cups, one_more_cup_is_spilled, photograph, rate
from .line_judging import amend, check_the_comparison, conclude, sign_by_two
from .line_planning import AIR_FREE_A_G_ML, check_the_weighing_sheet, plan_the_sheet, take_the_enquiry
from .old_sheet import SAMPLES, head_of_old_sheet, read_old_sheet
from .series_by_hand import (
    base_at_hand,
    cups_of,
    down_the_series,
    plan,
    planned,
    pour_a_panel_of_each,
    read_density,
)
from .typing_in import choose, content, figure, fill, press, rows_of, table_called

pytestmark = [pytest.mark.browser, pytest.mark.slow]

LADDER = {
    0.0: (9.8, 10.4, 9.5, 10.7),
    0.1: (8.9, 9.6, 9.1, 9.9),
    0.2: (7.0, 6.4, 7.3, 6.8),
    0.3: (4.1, 4.6, 3.9, 4.4),
    0.5: (3.8, 4.2, 3.6, 4.1),
}  # air, % by volume; made-up figures
CLIMATE = {
    "Temperature of the air": "23",
    "Humidity": "50",
    "Temperature of the substrate": "22.5",
    "Temperature of the material": "23",
}


def test_the_sheet_is_read_as_its_truth_says():
    truth = json.loads((SAMPLES / "tidy-ish.truth.json").read_text())
    read = [
        {
            "additive": cup.additive,
            "dosage": cup.dosage_pct,
            "lot": cup.lot,
            "foam": cup.foam,
            "crater": cup.craters,
            "density": cup.density_g_ml,
            "no": cup.number,
            "rpm": cup.rpm,
            "min": cup.minutes,
            "disc": cup.disc_mm,
            "level": cup.levelling,
            "remark": cup.remark,
        }
        for cup in read_old_sheet()
    ]
    assert read == truth["trials"]
    assert head_of_old_sheet() == (truth["date"], truth["person"])


def test_from_the_question_to_the_report(visit):
    sheet = read_old_sheet()
    bench, supervisor = visit("bench"), visit("supervisor")

    enquiry = take_the_enquiry(bench)
    base = base_at_hand(bench, "EF-21")
    number = plan_the_sheet(bench, enquiry, base, sheet)
    cups = cups_of(bench, number)
    check_the_weighing_sheet(bench, number, cups, base, sheet)
    log_the_cups(bench, number, cups, sheet)
    panels = pour_a_panel_of_each(bench, cups, CLIMATE)
    spilled = one_more_cup_is_spilled(bench, number)
    rate(bench, number, cups, panels, sheet)
    photograph(bench, panels[cups[0].code])
    check_the_comparison(bench, number, sheet)
    word = conclude(bench, number, cups)
    sign_by_two(bench, supervisor, number)
    amend(bench, cups[-1].code)
    find_by_its_lesson(supervisor, word, number)
    watch(supervisor, number, sheet)
    print_the_report(supervisor, number, spilled)

    assert bench.complaints == []
    assert supervisor.complaints == []


def find_by_its_lesson(window, word: str, number: int) -> None:
    window.go("/find/")
    fill(window, {"Words or a code": word})
    press(window, "Find")
    found = rows_of(window.page.locator("table.found"))
    assert found
    assert all(row["Trial"].startswith(f"{number}-") for row in found)


def watch(window, number: int, sheet) -> None:
    """The trend of the candidate holds the differences of this series from its blanks."""
    window.go("/trends/")
    choose(window, "Additive", "AR-03")
    choose(window, "By", "Air content of component A")
    press(window, "Show")
    choose(window, "Dosage", "0.3 % on total, on top, as supplied, post-addition")
    press(window, "Show")
    window.page.locator("[data-figure] svg.main-svg").first.wait_for()
    rows = rows_of(window.page.get_by_role("main").locator("table"))
    (row,) = [row for row in rows if row["Series"] == str(number)]
    of = {group: [c.density_g_ml for c in sheet if c.group == group] for group in ((None, 0.0), ("AR-03", 0.3))}
    blank, treated = (100 * (1 - sum(one) / len(one) / AIR_FREE_A_G_ML) for one in of.values())
    assert figure(row["Blank % by volume"]) == pytest.approx(blank, abs=0.006)
    assert figure(row["Treated % by volume"]) == pytest.approx(treated, abs=0.006)
    assert figure(row["Difference % by volume"]) == pytest.approx(treated - blank, abs=0.006)
    assert "201993" in row["Lot"]
    assert (row["Cups"], row["Blanks"]) == ("2", "3")


def print_the_report(window, number: int, spilled: str) -> None:
    window.go(f"/series/{number}/report/")
    said = content(window)
    for expected in (f"Series {number}", "signed by two", "AR-03: 0.3 to 0.5 %", "−2.68", spilled, "over-dosed"):
        assert expected in said, expected
    assert pages_of(window.page.pdf(format="A4", prefer_css_page_size=True)) >= 2
    window.go(f"/trials/{spilled}/report/")
    assert "spilled" in content(window)


def pages_of(printed: bytes) -> int:
    return len(re.findall(rb"/Type\s*/Page\b", printed))


def test_a_ladder_of_air_contents_shows_its_lowest_dosage(visit):
    """Densities that stand for the air contents of ``LADDER``; p is that of ``scipy.stats.dunnett``, 1.17."""
    window = visit("bench")
    base = base_at_hand(window, "EF-21")
    number = plan_the_ladder(window, base)
    waiting = {dosage: list(contents) for dosage, contents in LADDER.items()}

    def read(cup):
        air_pct = waiting[cup.dosage_pct].pop(0)
        read_density(window, f"{base.air_free_g_ml * (1 - air_pct / 100):.9f}", of="the mix")

    down_the_series(window, [cup for cup in cups_of(window, number) if cup.part != "clean check"], "wet", read)
    assert not any(waiting.values())
    for side, p, at_a_tenth in (("two", "0.073", "not shown"), ("one", "0.037", "better")):
        window.go(f"/series/{number}/?side={side}")
        assert ("One-sided: efficiency for the better" if side == "one" else "Two-sided.") in content(window)
        rows = rows_of(table_called(window, "Air content of the mix"))
        assert [row["Group"] for row in rows] == ["blank", *(f"AR-03 {dosage} %" for dosage in (0.1, 0.2, 0.3, 0.5))]
        assert {row["n"] for row in rows} == {"4"}
        means = [figure(row["Mean"]) for row in rows]
        assert means == pytest.approx([10.100, 9.375, 6.875, 4.250, 3.925], abs=0.0051)
        differences = [figure(row["Difference from blank"]) for row in rows[1:]]
        assert differences == pytest.approx([-0.725, -3.225, -5.850, -6.175], abs=0.0051)
        assert [row["p adjusted"] for row in rows[1:]] == [p, "< 0.001", "< 0.001", "< 0.001"]
        shown = [row["Shown"] for row in rows[1:]]
        assert shown == [f"{at_a_tenth} −7 %", "better −32 %", "better −58 %", "better −61 %"]
        (suggested,) = rows_of(window.page.locator('table[aria-labelledby="windows"]'))
        assert figure(suggested["From %"]) == 0.3  # the lowest that is not shown to be worse than the best
    assert window.complaints == []


def plan_the_ladder(window, base) -> int:
    window.go("/series/new/")
    ladder = " ".join(f"{dosage:g}" for dosage in LADDER if dosage)
    plan(window, base, title="A ladder of air contents", candidates={"AR-03": ladder}, blanks=4, replicates=4)
    choose(window, "Round", "ladder")
    return planned(window)
