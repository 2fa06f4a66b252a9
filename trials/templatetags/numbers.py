"""How figures stand in a page: on their decimal point, as they were typed, with what they are worth."""

from decimal import Decimal

from django import template
from django.utils.html import format_html

register = template.Library()
NOT_READ = "not read"
FIGURE_SPACE, POINT_SPACE = "\u2007", "\u2008"


def as_text(value, places=None):
    """A number as the record keeps it: 0.30 stays 0.30; binary floats are cut to ``places``."""
    if isinstance(value, Decimal):
        return format(value, "f").replace("-", "\u2212")
    if isinstance(value, float):
        text = f"{value:.6g}" if places is None else f"{value:.{places}f}"
        return text.replace("-", "\u2212")
    return str(value)


@register.filter
def shown(value, empty=NOT_READ):
    """A value in running text; nothing reads "not read", yes and no read as words."""
    if value is None or value == "":
        return empty
    if isinstance(value, bool):
        return "yes" if value else "no"
    return as_text(value)


@register.filter
def aligned(value, places=2):
    """A figure for a right-aligned column: filled behind its decimal point with spaces one figure wide.

    Columns of 0.3, 0.30 and 12 then stand on their points without a digit being invented. A word ("spilled")
    stays a word.
    """
    if value is None or value == "":
        return format_html('<span class="soft">{}</span>', "–")
    text = as_text(value, places)
    if isinstance(value, str) and not text.replace(".", "", 1).lstrip("-\u2212").isdigit():
        return text
    decimals = len(text.partition(".")[2])
    missing = FIGURE_SPACE * max(0, int(places) - decimals)
    if not decimals and places:
        missing = POINT_SPACE + missing
    return format_html('{}<span class="pad">{}</span>', text, missing) if missing else text


@register.simple_tag
def interval(estimate, low, high, places=2, unit="", percent=95):
    """An estimate with its interval in words: "3.2 % (95 %: 2.1 to 4.6)"; one without an interval says so."""
    unit = f" {unit}" if unit else ""
    if estimate is None:
        return NOT_READ
    if low is None or high is None:
        return f"{as_text(estimate, places)}{unit} (no interval)"
    return f"{as_text(estimate, places)}{unit} ({percent} %: {as_text(low, places)} to {as_text(high, places)})"
