"""Every scheme of the look keeps the contrast that WCAG 2.2 AA asks for.

Source: WCAG 2.2, success criteria 1.4.3 (text 4.5:1) and 1.4.11 (parts of controls 3:1), and its definitions of
relative luminance and contrast ratio.
"""

import re
from pathlib import Path

import pytest

CSS = Path(__file__).resolve().parents[2] / "static" / "css"
TOKENS = (CSS / "tokens.css").read_text()
COLOUR = re.compile(r"--([a-z-]+): (#[0-9a-f]{6});")
ALL = {"paper", "paper-sunk", "ink", "ink-soft", "hairline", "line", "accent", "accent-ink"}


def schemes():
    """The colours of each block: the first is the light scheme, the others replace all of it."""
    light, *others = TOKENS.split("@media ")
    found = {"light": dict(COLOUR.findall(light))}
    for block in others:
        found[block.partition("{")[0].strip()] = dict(COLOUR.findall(block))
    return found


def luminance(colour):
    channels = [int(colour[i : i + 2], 16) / 255 for i in (1, 3, 5)]
    linear = [c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in channels]
    return sum(weight * c for weight, c in zip((0.2126, 0.7152, 0.0722), linear, strict=True))


def contrast(one, other):
    low, high = sorted([luminance(one), luminance(other)])
    return (high + 0.05) / (low + 0.05)


def test_contrast_of_known_pairs():
    # #767676 on white is the usual example of the lightest grey that passes at 4.5:1 (from memory).
    assert contrast("#000000", "#ffffff") == pytest.approx(21)
    assert contrast("#767676", "#ffffff") == pytest.approx(4.54, abs=0.01)
    assert contrast("#777777", "#ffffff") < 4.5


def test_each_scheme_sets_every_colour():
    assert list(schemes()) == [
        "light",
        "(prefers-color-scheme: dark)",
        "(prefers-contrast: more)",
        "(prefers-contrast: more) and (prefers-color-scheme: dark)",
        "print",
    ]
    assert {name: set(colours) for name, colours in schemes().items()} == dict.fromkeys(schemes(), ALL)


@pytest.mark.parametrize("scheme", schemes())
@pytest.mark.parametrize("ground", ["paper", "paper-sunk"])
@pytest.mark.parametrize("ink", ["ink", "ink-soft", "accent"])
def test_type_stands_out_from_its_ground(scheme, ground, ink):
    colours = schemes()[scheme]
    needed = 7 if "contrast" in scheme else 4.5
    assert contrast(colours[ink], colours[ground]) >= needed


@pytest.mark.parametrize("scheme", schemes())
def test_controls_and_type_on_the_accent_stand_out(scheme):
    colours = schemes()[scheme]
    assert contrast(colours["line"], colours["paper"]) >= 3
    assert contrast(colours["accent-ink"], colours["accent"]) >= 4.5


def test_colours_are_set_in_one_place_only():
    """Paper for the bench is black on white whatever the scheme: print.css alone may name a grey of its own."""
    for sheet in ("base.css", "tables.css", "forms.css", "sheet.css"):
        assert not re.search(r"#[0-9a-fA-F]{3,8}\b(?![^{]*\{)", (CSS / sheet).read_text()), sheet
