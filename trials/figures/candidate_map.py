"""Candidates on their map: how strong each one is, and how much working it asks for."""

from collections.abc import Iterable
from dataclasses import dataclass
from math import ceil, isfinite, sqrt
from xml.sax.saxutils import escape, quoteattr

WIDTH, HEIGHT = 640, 440
LEFT, RIGHT, TOP, BOTTOM = 64, 24, 34, 72
GRADES = range(1, 6)
LETTER_WIDTH = 8.6
LEVELS = (-1, 1, -2, 2, -3, 3)
"""Where a code may stand: rows above (negative) and below its mark, the nearest first."""


@dataclass(frozen=True)
class MapPoint:
    """One candidate.

    Parameters
    ----------
    code : str
        Stands beside the mark.
    strength : int
        1 (mild) to 5 (strong).
    tip_speed_m_s : float or None
        Shear asked for, m/s, above 0; ``None`` when it is not known: then it is not on the map.
    minutes : float or None
        Time asked for at that speed, above 0.
    silicone : bool
        Drawn full when it contains silicone, hollow when not.
    href : str
        Where the mark leads; empty for nowhere.

    Raises
    ------
    ValueError
        A value outside its range.
    """

    code: str
    strength: int
    tip_speed_m_s: float | None
    minutes: float | None
    silicone: bool
    href: str = ""

    def __post_init__(self):
        if self.strength not in GRADES:
            raise ValueError(f"strength must be 1 to 5; got {self.strength!r}")
        for name in ("tip_speed_m_s", "minutes"):
            value = getattr(self, name)
            if value is not None and not (isfinite(value) and value > 0):
                raise ValueError(f"{name} must be a finite number above 0; got {value!r}")

    @property
    def said(self):
        """The point in words, for who cannot see it and for who points at it."""
        kind = "with silicone" if self.silicone else "silicone-free"
        minutes = "" if self.minutes is None else f" for {self.minutes:g} min"
        return f"{self.code}: strength {self.strength}, {self.tip_speed_m_s:g} m/s{minutes}, {kind}"


def candidate_map(points: Iterable[MapPoint]) -> str:
    """Draw the map as a self-contained SVG: strength upwards, tip speed to the right, a larger mark for longer.

    Parameters
    ----------
    points : iterable of MapPoint
        Points without a tip speed are left out: say so beside the map.

    Returns
    -------
    str
        SVG without style or script, in the colour of the text around it. The same points give the same text.

    Examples
    --------
    >>> svg = candidate_map([MapPoint("AR-01", 5, 6.0, 5.0, True, "/additives/AR-01/")])
    >>> 'href="/additives/AR-01/"' in svg, "AR-01: strength 5, 6 m/s for 5 min, with silicone" in svg
    (True, True)
    """
    known = sorted((p for p in points if p.tip_speed_m_s is not None), key=lambda p: (-p.strength, p.code))
    last = max([8, *(ceil(point.tip_speed_m_s) for point in known)])
    places = [_place(point, last) for point in known]
    marks = [
        _mark(point, place, label) for point, place, label in zip(known, places, _labels(known, places), strict=True)
    ]
    return (
        f'<svg class="candidate-map" width="{WIDTH}" height="{HEIGHT}" viewBox="0 0 {WIDTH} {HEIGHT}" role="group"'
        ' aria-label="Map of candidates: strength against the tip speed asked for" font-size="15"'
        f' fill="currentColor" stroke="none">{_axes(last)}{"".join(marks)}</svg>'
    )


def _x(tip_speed_m_s, last):
    return LEFT + (WIDTH - LEFT - RIGHT) * tip_speed_m_s / last


def _y(strength):
    return HEIGHT - BOTTOM - (HEIGHT - TOP - BOTTOM) * (strength - 0.5) / len(GRADES)


def _place(point, last):
    return _x(point.tip_speed_m_s, last), _y(point.strength)


def _radius(minutes):
    """Area by time: 5 min is twice the area of 2.5 min; not known is drawn smallest."""
    return 4.0 if minutes is None else min(14.0, max(4.0, 2.6 * sqrt(minutes)))


def _labels(points, places):
    """Where each code stands, so that no two lie on each other: above, else below, else a row further off."""
    taken = []
    for point, (x, y) in zip(points, places, strict=True):
        half = LETTER_WIDTH * len(point.code) / 2
        centre = min(max(x, LEFT + half), WIDTH - half)
        gap = _radius(point.minutes) + 4
        for level in LEVELS:
            base = y - gap + 17 * (level + 1) if level < 0 else y + gap + 12 + 17 * (level - 1)
            if not any(abs(base - other) < 15 and abs(centre - at) < half + wide for at, other, wide in taken):
                break
        taken.append((centre, base, half))
    return [(at, base) for at, base, _ in taken]


def _mark(point, place, label):
    (x, y), (at, base), radius = place, label, _radius(point.minutes)
    paint = "" if point.silicone else ' fill="none" stroke="currentColor" stroke-width="2"'
    if point.silicone:
        shape = f'<circle cx="{x:.1f}" cy="{y:.1f}" r="{radius:.1f}"/>'
    else:
        side = 1.77 * radius
        shape = (
            f'<rect x="{x - side / 2:.1f}" y="{y - side / 2:.1f}" width="{side:.1f}" height="{side:.1f}"'
            f' fill-opacity="0"{paint}/>'
        )
    code = f'<text x="{at:.1f}" y="{base:.1f}" text-anchor="middle" font-weight="600">{escape(point.code)}</text>'
    drawn = f"<title>{escape(point.said)}</title>{shape}{code}"
    return f"<a href={quoteattr(point.href)}>{drawn}</a>" if point.href else f"<g>{drawn}</g>"


def _axes(last):
    floor, right = HEIGHT - BOTTOM, WIDTH - RIGHT
    step = 1 if last <= 12 else ceil(last / 10)
    lines = [f'<path d="M{LEFT} {TOP}V{floor}H{right}" fill="none" stroke="currentColor"/>']
    for grade in GRADES:
        y = _y(grade)
        lines.append(f'<path d="M{LEFT} {y:.1f}H{right}" stroke="currentColor" stroke-opacity="0.2"/>')
        lines.append(f'<text x="{LEFT - 12}" y="{y + 5:.1f}" text-anchor="end">{grade}</text>')
    for speed in range(0, last + 1, step):
        x = _x(speed, last)
        lines.append(f'<path d="M{x:.1f} {floor}v6" stroke="currentColor"/>')
        lines.append(f'<text x="{x:.1f}" y="{floor + 22}" text-anchor="middle">{speed}</text>')
    lines.append(f'<text x="8" y="{TOP - 14}">strength, 1 mild to 5 strong</text>')
    lines.append(f'<text x="{right}" y="{floor + 42}" text-anchor="end">tip speed asked for, m/s</text>')
    lines.append(f'<text x="{LEFT}" y="{floor + 60}">easy: stirred in by hand</text>')
    lines.append(f'<text x="{right}" y="{floor + 60}" text-anchor="end">hard: wants a disperser</text>')
    return f'<g aria-hidden="true">{"".join(lines)}</g>'
