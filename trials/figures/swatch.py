"""The film swatch: a small drawing of a cured film, made from its ratings alone."""

from dataclasses import dataclass, fields
from math import floor, isfinite, log10
from xml.sax.saxutils import escape

from trials.figures.film_shape import BOX, grain, hatching, outline_of, spread

DOTS_AT_GRADE = (0, 3, 8, 16, 28, 44)
RINGS_AT_GRADE = (0, 1, 2, 4, 6, 9)
TICKS_AT_GRADE = (0, 2, 4, 8, 13, 20)
DOT_RADIUS_AT_SIZE = (0.6, 0.8, 1.15, 1.5, 1.95, 2.5)
MOST_DOTS = 48


@dataclass(frozen=True)
class Film:
    """What was read on one cured film; ``None`` is "not read", never "none seen".

    Parameters
    ----------
    bubbles_per_dm2 : float or None
        Counted bubbles per square decimetre, 0 or more. Where it is given it is drawn instead of the grade.
    bubbles, bubble_size, craters, pinholes, haze, levelling, crawling : float or None
        Grades from 0 (none, or not visible) to 5 (severe, or larger than 5 mm); half steps are taken.

    Raises
    ------
    ValueError
        A value that is not a finite number in its range.

    References
    ----------
    ISO 4628-1:2016: grades 0 to 5 for quantity, size and intensity of defects, half steps where agreed.
    """

    bubbles_per_dm2: float | None = None
    bubbles: float | None = None
    bubble_size: float | None = None
    craters: float | None = None
    pinholes: float | None = None
    haze: float | None = None
    levelling: float | None = None
    crawling: float | None = None

    def __post_init__(self):
        for field in fields(self):
            value = getattr(self, field.name)
            top = float("inf") if field.name == "bubbles_per_dm2" else 5
            if value is not None and not (isfinite(value) and 0 <= value <= top):
                limit = "0 or more" if top > 5 else "between 0 and 5"
                raise ValueError(f"{field.name} must be a finite number, {limit}; got {value!r}")

    @property
    def is_read(self):
        return any(getattr(self, field.name) is not None for field in fields(self))

    @property
    def dots(self):
        """How many dots stand for the bubbles: each one up to ten, then by the logarithm of the count."""
        if self.bubbles_per_dm2 is None:
            return _at_grade(DOTS_AT_GRADE, self.bubbles)
        count = self.bubbles_per_dm2
        if count > 10:
            return min(MOST_DOTS, floor(10.5 + 19 * log10(count / 10)))
        return max(1, floor(count + 0.5)) if count else 0


def swatch(film, *, size_px=40, of=""):
    """Draw a film as a self-contained SVG: the same film is always the same text.

    Dots are bubbles, open rings craters, upright pricks pinholes, hatching haze, a wavy lower edge poor
    levelling, upper corners drawn back from the edge crawling. A film that nobody has read is an empty frame
    with a dash.

    Parameters
    ----------
    film : Film or None
        ``None`` is the same as a film not read.
    size_px : float
        Side of the square in pixels, 24 to 240.
    of : str
        Whose film it is ("417-5"); stands first in the text alternative.

    Returns
    -------
    str
        An ``<svg>`` element in ``currentColor``, without style attributes, scripts or identifiers.

    Raises
    ------
    ValueError
        A size outside 24 to 240 px.

    Examples
    --------
    >>> drawing = swatch(Film(bubbles_per_dm2=4, craters=1), of="417-5")
    >>> drawing.count("<circle")
    5
    >>> describe(Film(bubbles_per_dm2=4, craters=1))
    '4 bubbles per dm²; craters grade 1 of 5; not read: pinholes, haze, levelling, crawling'
    """
    if not 24 <= size_px <= 240:
        raise ValueError(f"size_px must be between 24 and 240, got {size_px!r}")
    film = film or Film()
    words = describe(film)
    title = escape(f"{of}: {words}" if of else words[0].upper() + words[1:])
    px = BOX / size_px
    body = _read(film, px) if film.is_read else _not_read(px)
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" class="swatch" role="img" width="{size_px:g}" '
        f'height="{size_px:g}" viewBox="0 0 {BOX:g} {BOX:g}" fill="none" stroke="currentColor" '
        f'stroke-linejoin="round" stroke-linecap="round"><title>{title}</title>{body}</svg>'
    )


def describe(film):
    """Say in words what the swatch draws, and what has not been read."""
    if not film.is_read:
        return "film not read yet"
    said, unread = [], []
    size = "" if film.bubble_size is None else f", size {film.bubble_size:g} of 5"
    if film.bubbles_per_dm2 is not None:
        said.append(f"{film.bubbles_per_dm2:g} bubbles per dm²{size}")
    elif film.bubbles is not None:
        said.append(f"bubbles grade {film.bubbles:g} of 5{size}")
    else:
        unread.append("bubbles")
    for name in ("craters", "pinholes", "haze", "levelling", "crawling"):
        grade = getattr(film, name)
        if grade is None:
            unread.append(name)
        else:
            said.append(f"{name} grade {grade:g} of 5")
    if unread:
        said.append("not read: " + ", ".join(unread))
    return "; ".join(said)


def _not_read(px):
    frame = outline_of(levelling=0, crawling=0)
    return _path(frame, width=1.1 * px, dash=3.2 * px) + _line((19, 24), (29, 24), width=1.6 * px)


def _read(film, px):
    outline = outline_of(levelling=film.levelling or 0, crawling=film.crawling or 0)
    rings = spread(_at_grade(RINGS_AT_GRADE, film.craters), outline, start=0.13, keep_in=6.0)
    pricks = spread(_at_grade(TICKS_AT_GRADE, film.pinholes), outline, start=0.71, keep_in=3.5)
    size = 2 if film.bubble_size is None else film.bubble_size
    radius = max(_between(DOT_RADIUS_AT_SIZE, size), 0.62 * px)
    dots = spread(film.dots, outline, start=0.5, keep_in=3.0 + radius, clear_of=[(*c, 4.0 + radius) for c in rings])
    thin = px * (0.55 + BOX / px / 400)
    parts = [_line(a, b, width=thin) for a, b in hatching(film.haze or 0, outline)]
    parts += [
        f'<circle cx="{x:.2f}" cy="{y:.2f}" r="{2.6 + 1.1 * grain(i):.2f}" stroke-width="{1.15 * px + 0.3:.2f}"/>'
        for i, (x, y) in enumerate(rings)
    ]
    sizes = [radius * (0.8 + 0.45 * grain(i)) for i in range(len(dots))]
    parts += [
        f'<circle cx="{x:.2f}" cy="{y:.2f}" r="{r:.2f}" fill="currentColor" stroke="none"/>'
        for (x, y), r in zip(dots, sizes, strict=True)
    ]
    parts += [_line((x, y - 1.3), (x, y + 1.3), width=0.9 * px + 0.2) for x, y in pricks]
    parts.append(_path(outline, width=px * (1 + BOX / px / 160)))
    if film.bubbles_per_dm2 is None and film.bubbles is None:
        parts.append(_line((20.5, 24), (27.5, 24), width=1.6 * px))
    return "".join(parts)


def _between(steps, grade):
    low = min(floor(grade), len(steps) - 2)
    return steps[low] + (steps[low + 1] - steps[low]) * (grade - low)


def _at_grade(steps, grade):
    return 0 if grade is None else floor(_between(steps, grade) + 0.5)


def _line(start, end, *, width):
    return f'<path d="M{start[0]:.2f} {start[1]:.2f}L{end[0]:.2f} {end[1]:.2f}" stroke-width="{width:.2f}"/>'


def _path(points, *, width, dash=0.0):
    corners = "L".join(f"{x:.2f} {y:.2f}" for x, y in points)
    dashes = f' stroke-dasharray="{dash:.2f}"' if dash else ""
    return f'<path d="M{corners}Z" stroke-width="{width:.2f}"{dashes}/>'
