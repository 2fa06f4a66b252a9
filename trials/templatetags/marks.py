"""What a page says with a word and a shape: states, outcomes, remarks, hazards, the film swatch."""

from django import template
from django.templatetags.static import static
from django.utils.html import format_html
from django.utils.safestring import mark_safe

from trials.figures.swatch import swatch

register = template.Library()

# A trial is told by its cup: empty, half full, poured out on a film, read, closed with its lid.
CUP = "M3 3.5L4.5 14H11.5L13 3.5"
FILM = '<path d="M1.5 12.5H14.5"/><path d="M3 12V9.5H13V12Z" fill="currentColor"/>'
SHAPES = {
    "planned": f'<path d="{CUP}"/>',
    "mixed": f'<path d="{CUP}"/><path d="M3.9 8H12.1L11.4 14H4.6Z" fill="currentColor"/>',
    "applied": FILM,
    "read": f'{FILM}<circle cx="8" cy="5" r="2.2"/>',
    "closed": f'<path d="{CUP}"/><path d="M3 3.5H13L11.5 14H4.5Z" fill="currentColor"/><path d="M1.5 2.5H14.5"/>',
    "signed": '<path d="M1.5 13.5H14.5"/><path d="M2 10.5C4 3 6 3 6 7.5S8 11 9.5 7S12 6 14 9.5"/>',
    "signed by two": (
        '<path d="M1.5 13.5H14.5M1.5 11H14.5"/><path d="M2 8.5C4 1.5 6 1.5 6 5.5S8 9 9.5 5S12 4 14 7.5"/>'
    ),
    "works": '<path d="M8 2L14 13.5H2Z" fill="currentColor"/>',
    "works within limits": '<path d="M8 2L14 13.5H2Z"/>',
    "fails": '<path d="M8 14L2 2.5H14Z" fill="currentColor"/>',
    "undecided": '<path d="M8 1.5L14.5 8L8 14.5L1.5 8Z"/>',
    "not a fair test": '<path d="M2.5 2.5L13.5 13.5M13.5 2.5L2.5 13.5"/>',
    "no control": '<circle cx="8" cy="8" r="5.8" stroke-dasharray="2.4 2.2"/>',
    "note": '<circle cx="8" cy="8" r="6"/><path d="M8 7.2V11.4M8 4.6V4.8"/>',
    "warning": '<path d="M8 1.8L15 14.2H1Z"/><path d="M8 6.2V10M8 12V12.2"/>',
    "wrong": (
        '<path d="M5.3 1.5H10.7L14.5 5.3V10.7L10.7 14.5H5.3L1.5 10.7V5.3Z"/>'
        '<path d="M5.4 5.4L10.6 10.6M10.6 5.4L5.4 10.6"/>'
    ),
}
REMARKS = {"note": "Note", "warning": "Warning", "wrong": "Cannot be right"}

# The nine pictograms of the Globally Harmonized System (United Nations, ST/SG/AC.10/30, annex 1).
PICTOGRAMS = {
    "GHS01": "exploding bomb",
    "GHS02": "flame",
    "GHS03": "flame over circle",
    "GHS04": "gas cylinder",
    "GHS05": "corrosion",
    "GHS06": "skull and crossbones",
    "GHS07": "exclamation mark",
    "GHS08": "health hazard",
    "GHS09": "environment",
}


def _shape(name):
    if name not in SHAPES:
        return ""
    return mark_safe(  # noqa: S308 - constant drawings of this module
        '<svg width="16" height="16" viewBox="0 0 16 16" fill="none" stroke="currentColor" stroke-width="1.5" '
        f'stroke-linejoin="round" stroke-linecap="round" aria-hidden="true">{SHAPES[name]}</svg>'
    )


@register.simple_tag
def state(word):
    """A state or outcome as shape and word; a word without a shape of its own stands alone."""
    return format_html('<span class="mark">{}{}</span>', _shape(str(word).lower()), word)


@register.simple_tag
def notice_mark(kind):
    if kind not in REMARKS:
        raise template.TemplateSyntaxError(f"a notice is one of {', '.join(REMARKS)}; got {kind!r}")
    return format_html("{}<strong>{}</strong>", _shape(kind), REMARKS[kind])


@register.simple_tag
def pictogram(code):
    """The diamond of one hazard class; a code outside the system is shown as its text, not dropped."""
    if code not in PICTOGRAMS:
        return format_html("<span>{}</span>", code)
    return format_html(
        '<img src="{}" width="64" height="64" alt="{}" title="{}">',
        static(f"img/ghs/{code}.svg"),
        f"{PICTOGRAMS[code]} ({code})",
        PICTOGRAMS[code],
    )


@register.simple_tag
def film_swatch(film, size_px=40, of=""):
    """Draw a ``trials.figures.swatch.Film`` (or ``None``, not read) in place."""
    return mark_safe(swatch(film, size_px=size_px, of=str(of)))  # noqa: S308 - swatch() escapes its only free text
