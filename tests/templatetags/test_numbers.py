"""Figures stand as they were typed, on their decimal point."""

from decimal import Decimal

import pytest
from django.utils.html import strip_tags

from trials.templatetags.numbers import FIGURE_SPACE, POINT_SPACE, aligned, interval, shown


@pytest.mark.parametrize(
    ("value", "text"),
    [
        (Decimal("0.30"), "0.30"),
        (Decimal("-0.5"), "−0.5"),
        (Decimal("1E+2"), "100"),
        (0.1 + 0.2, "0.3"),
        (3, "3"),
        (True, "yes"),
        (None, "not read"),
        ("", "not read"),
        ("spilled", "spilled"),
    ],
)
def test_shown_value(value, text):
    assert shown(value) == text


def test_shown_nothing_in_other_words():
    assert shown(None, "–") == "–"


def test_aligned_column_has_one_width_behind_the_point():
    column = [Decimal("0.3"), Decimal("0.30"), Decimal("12"), 3, "7.25"]
    texts = [strip_tags(aligned(value, 2)) for value in column]
    assert [text.strip() for text in texts] == ["0.3", "0.30", "12", "3", "7.25"]
    tails = [text.lstrip("0123456789").replace(POINT_SPACE, ".") for text in texts]
    assert {len(tail) for tail in tails} == {3}
    assert texts[2] == "12" + POINT_SPACE + 2 * FIGURE_SPACE


def test_aligned_invents_no_digit_and_keeps_words():
    assert aligned(Decimal("0.12345"), 2) == "0.12345"
    assert aligned("spilled", 2) == "spilled"
    assert strip_tags(aligned(None)) == "–"
    assert aligned("<b>", 2) == "<b>"


def test_aligned_words_are_escaped_by_the_page():
    from django.template import Context, Engine

    page = Engine(libraries={"numbers": "trials.templatetags.numbers"}).from_string(
        "{% load numbers %}{{ word|aligned:2 }}"
    )
    assert page.render(Context({"word": "<b>"})) == "&lt;b&gt;"


def test_interval_says_what_it_is_or_that_there_is_none():
    assert interval(-33.5, -41.2, -25.8, 1, "per dm²") == "−33.5 per dm² (95 %: −41.2 to −25.8)"
    assert interval(Decimal("3.20"), None, None, 2, "%") == "3.20 % (no interval)"
    assert interval(None, None, None) == "not read"
