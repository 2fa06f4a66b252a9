"""The cups of the old sheet are weighed, stirred and read, one more is spilled; panels are rated and photographed."""

import io
from collections import defaultdict

import pytest
from PIL import Image, ImageDraw

from .series_by_hand import cups_of, down_the_series, rate_blind, read_density, weigh_in_one_cup
from .typing_in import choose, content, fill, press, region


def log_the_cups(window, number: int, cups, sheet) -> None:
    grams, density = {}, {cup.code: f"{old.density_g_ml:.3f}" for cup, old in as_typed(cups, sheet)}

    def weigh(cup):
        grams[cup.code] = weigh_in_one_cup(window)

    down_the_series(window, cups, "weighings", weigh)
    down_the_series(window, cups, "workings", lambda _cup: None)  # as planned
    down_the_series(window, cups, "wet", lambda cup: read_density(window, density[cup.code], of="component A"))
    for cup in cups_of(window, number):
        assert (cup.weighed_g or 0.0) == pytest.approx(grams[cup.code], abs=1e-9)
        if cup.additive:
            assert cup.as_weighed_pct == pytest.approx(100 * grams[cup.code] / (300 + 2 * 0.03), abs=0.0006)


def as_typed(cups, sheet) -> list[tuple]:
    """Each cup of the series with its row of the sheet: the first of a group with the first, and so on."""
    waiting = defaultdict(list)
    for old in sheet:
        waiting[old.group].append(old)
    return [(cup, waiting[cup.group].pop(0)) for cup in cups]


def one_more_cup_is_spilled(window, number: int) -> str:
    before = cups_of(window, number)
    like = next(cup for cup in before if cup.group == ("AR-03", 0.3))
    more = window.page.get_by_role("form", name="One more cup")
    choose(window, "Like cup", f"{like.code},", more)
    fill(window, {"Dosage": "0.5"}, more)
    press(window, "One more cup", more)
    (made,) = {cup.code for cup in cups_of(window, number)} - {cup.code for cup in before}
    window.go(f"/trials/{made}/wet/")
    read_density(window, "spilled", of="component A")
    press(window, "Keep")
    assert "spilled" in region(window, "Read before cure").inner_text()
    window.go(f"/series/{number}/#cup-{made}")
    assert "density: spilled" in window.page.locator(f"#cup-{made}").inner_text()
    return made


def rate(window, number: int, cups, panels: dict[str, str], sheet) -> None:
    """Grades by eye at 24 h, gloss by an instrument."""
    grades = {
        panels[cup.code]: {"Bubbles": f"{old.foam}", "Craters": f"{old.craters}", "Levelling": f"{old.levelling}"}
        for cup, old in as_typed(cups, sheet)
    }
    rate_blind(window, number, grades, age_h="24")
    rate_blind(window, number, {panels[cups[0].code]: {"Gloss": "86"}}, age_h="24", instrument="gloss meter, 60°")


def photograph(window, panel: str) -> None:
    """A grey film with five bubbles on 100 mm."""
    picture = Image.new("RGB", (400, 300), (120, 124, 128))
    drawn = ImageDraw.Draw(picture)
    for place in range(5):
        drawn.ellipse((40 + 70 * place, 140, 52 + 70 * place, 152), fill=(60, 60, 64), outline=(190, 190, 190))
    file = io.BytesIO()
    picture.save(file, "PNG")
    window.go(f"/panels/{panel}/photos/")
    window.field("Photographs").set_input_files(
        {"name": "panel.png", "mimeType": "image/png", "buffer": file.getvalue()}
    )
    fill(window, {"What they show across": "100", "Age": "24"})
    press(window, "Keep")
    shown = window.page.locator("main img").first
    assert shown.evaluate("image => image.complete && image.naturalWidth") > 0
    assert "0.25 mm per pixel" in content(window)
