"""Candidates on their map: how strong each one is, and how much working it asks for."""

from collections.abc import Iterable
from dataclasses import dataclass
from math import ceil, isfinite, sqrt
from xml.sax.saxutils import escape, quoteattr

WIDTH, LEFT, RIGHT, TOP, FOOT = 640, 44, 12, 30, 72
GRADES = range(1, 6)
ROW, SMALLEST_BAND = 26, 52
LETTER_WIDTH = 9.5


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

    Each strength has a band; where marks or codes would lie on each other the band takes another row, so that its
    height means nothing.

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
    known = sorted((p for p in points if p.tip_speed_m_s is not None), key=lambda p: (p.tip_speed_m_s, p.code))
    last = max([8, *(ceil(point.tip_speed_m_s) for point in known)])
    bands, drawn, top = [], [], TOP
    for grade in reversed(GRADES):
        rows = _rows([_Spot(point, last) for point in known if point.strength == grade])
        height = max(SMALLEST_BAND, ROW * len(rows) + 8)
        first = top + (height - ROW * (len(rows) - 1)) / 2
        bands.append((grade, top, height))
        drawn += [_mark(spot, first + ROW * number) for number, row in enumerate(rows) for spot in row]
        top += height
    height = top + FOOT
    return (
        f'<svg class="candidate-map" width="{WIDTH}" height="{height}" viewBox="0 0 {WIDTH} {height}" role="group"'
        ' aria-label="Map of candidates: strength against the tip speed asked for" font-size="15"'
        f' fill="currentColor" stroke="none">{_scales(bands, top, last)}{"".join(drawn)}</svg>'
    )


class _Spot:
    """Where a point and its code stand on their row; the code on the side where there is room."""

    def __init__(self, point, last):
        self.point, self.x, self.radius = point, _x(point.tip_speed_m_s, last), _radius(point.minutes)
        width = self.radius + 5 + LETTER_WIDTH * len(point.code)
        self.leftward = self.x + width > WIDTH
        self.from_x = self.x - (width if self.leftward else self.radius)
        self.to_x = self.x + (self.radius if self.leftward else width)


def _x(tip_speed_m_s, last):
    return LEFT + (WIDTH - LEFT - RIGHT - 12) * tip_speed_m_s / last


def _radius(minutes):
    """Area by time: 5 min is twice the area of 2.5 min; not known is drawn smallest."""
    return 4.0 if minutes is None else min(11.0, max(4.0, 2.4 * sqrt(minutes)))


def _rows(spots):
    """Spots of one strength on as few rows as keep them apart."""
    rows = []
    for spot in spots:
        free = (row for row in rows if all(spot.from_x > o.to_x + 6 or spot.to_x < o.from_x - 6 for o in row))
        row = next(free, None)
        if row is None:
            rows.append(row := [])
        row.append(spot)
    return rows


def _mark(spot, y):
    point, x, radius = spot.point, spot.x, spot.radius
    if point.silicone:
        shape = f'<circle cx="{x:.1f}" cy="{y:.1f}" r="{radius:.1f}"/>'
    else:
        side = 1.77 * radius  # the same area as the circle
        shape = (
            f'<rect x="{x - side / 2:.1f}" y="{y - side / 2:.1f}" width="{side:.1f}" height="{side:.1f}"'
            ' fill="none" stroke="currentColor" stroke-width="2"/>'
        )
    at = x + (radius + 5) * (-1 if spot.leftward else 1)
    anchor = ' text-anchor="end"' if spot.leftward else ""
    code = f'<text x="{at:.1f}" y="{y + 5:.1f}"{anchor} font-weight="600">{escape(point.code)}</text>'
    inside = f"<title>{escape(point.said)}</title>{shape}{code}"
    return f"<a href={quoteattr(point.href)}>{inside}</a>" if point.href else f"<g>{inside}</g>"


def _scales(bands, floor, last):
    right = WIDTH - RIGHT
    step = 1 if last <= 12 else ceil(last / 10)
    lines = [f'<path d="M{LEFT} {TOP}V{floor}H{right}" fill="none" stroke="currentColor"/>']
    for grade, top, height in bands:
        lines.append(f'<path d="M{LEFT} {top}H{right}" stroke="currentColor" stroke-opacity="0.25"/>')
        lines.append(f'<text x="{LEFT - 14}" y="{top + height / 2 + 5:.1f}" text-anchor="end">{grade}</text>')
    for speed in range(0, last + 1, step):
        x = _x(speed, last)
        lines.append(f'<path d="M{x:.1f} {floor}v6" stroke="currentColor"/>')
        lines.append(f'<text x="{x:.1f}" y="{floor + 22}" text-anchor="middle">{speed}</text>')
    lines.append(f'<text x="0" y="{TOP - 12}">strength, 1 mild to 5 strong</text>')
    lines.append(f'<text x="{right}" y="{floor + 42}" text-anchor="end">tip speed asked for, m/s</text>')
    lines.append(f'<text x="{LEFT}" y="{floor + 62}">easy: stirred in by hand</text>')
    lines.append(f'<text x="{right}" y="{floor + 62}" text-anchor="end">hard: wants a disperser</text>')
    return f'<g aria-hidden="true">{"".join(lines)}</g>'
