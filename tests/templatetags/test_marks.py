"""A state is told by a word and a shape; a hazard by its diamond and its words."""

from xml.etree import ElementTree

import pytest
from django.conf import settings
from django.template import TemplateSyntaxError
from django.template.loader import render_to_string

from trials.figures.swatch import Film
from trials.templatetags.marks import PICTOGRAMS, SHAPES, film_swatch, notice_mark, pictogram, state

STATES = ["planned", "mixed", "applied", "read", "closed", "signed"]
OUTCOMES = ["works", "works within limits", "fails", "undecided", "not a fair test"]


@pytest.mark.parametrize("word", STATES + OUTCOMES)
def test_state_has_its_word_and_a_shape_of_its_own(word):
    mark = state(word)
    assert mark.endswith(f"{word}</span>")
    assert SHAPES[word] in mark
    assert ElementTree.fromstring(mark) is not None
    assert [other for other in SHAPES if SHAPES[other] == SHAPES[word]] == [word]


def test_state_without_a_shape_stands_as_its_word_escaped():
    assert state("<lent>") == '<span class="mark">&lt;lent&gt;</span>'


def test_notice_of_an_unknown_kind_is_refused():
    assert "Cannot be right" in notice_mark("wrong")
    with pytest.raises(TemplateSyntaxError, match="got 'danger'"):
        notice_mark("danger")


@pytest.mark.parametrize("code", PICTOGRAMS)
def test_pictogram_is_drawn_and_has_a_text_alternative(code):
    drawing = settings.ROOT / "static" / "img" / "ghs" / f"{code}.svg"
    svg = ElementTree.parse(drawing).getroot()
    diamond = svg[0]
    assert diamond.get("stroke") == "#d7141a"  # GHS annex 1: black symbol, white ground, red frame
    assert diamond.get("fill") == "#fff"
    assert not [part for part in svg.iter() if part.get("style") or part.get("id")]
    assert f'alt="{PICTOGRAMS[code]} ({code})"' in pictogram(code)


def test_nine_pictograms_are_known_and_another_code_is_not_dropped():
    assert list(PICTOGRAMS) == [f"GHS0{number}" for number in range(1, 10)]
    assert pictogram("GHS10") == "<span>GHS10</span>"


def test_hazards_show_statements_and_where_precedence_lies():
    page = render_to_string(
        "components/hazards.html",
        {"pictograms": ["GHS05"], "signal_word": "Danger", "statements": [("H314", "Causes severe skin burns")]},
    )
    for words in (
        "Danger",
        "H314",
        "corrosion",
        "Safety data sheets, local rules and qualified people take precedence",
    ):
        assert words in page


def test_hazards_of_nothing_known_are_absent():
    assert render_to_string("components/hazards.html", {}).strip() == ""


def test_swatch_component_draws_a_film_or_its_absence():
    assert film_swatch(None) in render_to_string("components/swatch.html", {"film": None})
    film = Film(bubbles_per_dm2=3)
    assert film_swatch(film, 64) in render_to_string("components/swatch.html", {"film": film, "size": 64})
