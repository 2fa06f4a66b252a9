"""The dose-response figure of a series for paper: the same numbers as the one on screen, black on white."""

from itertools import pairwise
from math import ceil, floor, log10
from xml.sax.saxutils import escape

from trials.figures.ladder import Ladder, Line

WIDTH, HEIGHT = 640, 400
LEFT, RIGHT, TOP, BOTTOM = 70, 20, 44, 58
SIZE, SMALL = 4.6, 2.4
STEPS = (1.0, 2.0, 2.5, 5.0, 10.0)


def ladder_svg(ladder: Ladder) -> str:
    """Draw the ladder as a self-contained SVG in the colour of the text around it.

    Shapes tell the candidates apart; a cup that is shown but not counted is hollow. The same ladder gives the same
    text.

    Examples
    --------
    >>> from trials.figures.ladder import Cup, Rung
    >>> line = Line("AR-01", (Cup(0.3, 4.1, ""), Cup(0.3, 4.6, "")), (Rung(0.3, 4.35, 3.1, 5.6, "4.35"),))
    >>> svg = ladder_svg(Ladder("Dosage, %", "Air, % by volume", (Cup(0.0, 9.8, ""),), 9.8, (line,)))
    >>> svg.startswith("<svg") and "Air, % by volume" in svg
    True
    """
    frame = _Frame(ladder)
    parts = [_axes(frame, ladder), _reference(frame, ladder)]
    parts += [_cup(0, frame.x(cup.dosage_pct), frame.y(cup.value), SMALL, hollow=cup.apart) for cup in ladder.blanks]
    parts += [_line(frame, line, nth, ladder.beside_pct(nth)) for nth, line in enumerate(ladder.lines)]
    parts.append(_legend(ladder))
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" class="ladder" role="img" width="{WIDTH}" height="{HEIGHT}" '
        f'viewBox="0 0 {WIDTH} {HEIGHT}" fill="none" stroke="currentColor" font-size="13" font-family="sans-serif">'
        f"<title>{escape(f'{ladder.y_title} against {ladder.x_title}')}</title>{''.join(parts)}</svg>"
    )


def nice_ticks(low: float, high: float, *, most: int = 6) -> list[float]:
    """Round values that cover low to high, at most ``most`` steps apart.

    Examples
    --------
    >>> nice_ticks(0, 10.7)
    [0.0, 2.0, 4.0, 6.0, 8.0, 10.0, 12.0]
    """
    span = (high - low) or abs(high) or 1.0
    size = 10.0 ** floor(log10(span / most))
    step = next(size * factor for factor in STEPS if span / (size * factor) <= most)
    first, last = floor(low / step + 1e-9), ceil(high / step - 1e-9)
    return [round(nth * step, 10) + 0.0 for nth in range(first, max(last, first + 1) + 1)]


class _Frame:
    """Where a dosage and a value stand on the paper."""

    def __init__(self, ladder: Ladder):
        values = ladder.values or (0.0, 1.0)
        self.ups = nice_ticks(min(0.0, *values), max(values))
        self.rights = nice_ticks(0.0, ladder.highest_pct)
        furthest = max((ladder.beside_pct(nth) for nth in range(len(ladder.lines))), default=0.0)
        self._widest = max(self.rights[-1], ladder.highest_pct + furthest)

    def x(self, dosage_pct: float) -> float:
        return LEFT + (WIDTH - LEFT - RIGHT) * dosage_pct / (self._widest * 1.02)

    def y(self, value: float) -> float:
        low, high = self.ups[0], self.ups[-1]
        return HEIGHT - BOTTOM - (HEIGHT - TOP - BOTTOM) * (value - low) / (high - low)


def _axes(frame: _Frame, ladder: Ladder) -> str:
    foot, right = HEIGHT - BOTTOM, WIDTH - RIGHT
    parts = [_stroke(LEFT, TOP, LEFT, foot, 1), _stroke(LEFT, foot, right, foot, 1)]
    for value in frame.ups:
        y = frame.y(value)
        parts += [_stroke(LEFT - 4, y, LEFT, y, 1), _text(LEFT - 8, y + 4, f"{value:g}", "end")]
    for value in frame.rights:
        x = frame.x(value)
        parts += [_stroke(x, foot, x, foot + 4, 1), _text(x, foot + 18, f"{value:g}", "middle")]
    middle = (TOP + foot) / 2
    turned = f'transform="rotate(-90 16 {middle:.1f})"'
    parts.append(_text(16, middle, ladder.y_title, "middle", turned))
    parts.append(_text((LEFT + right) / 2, HEIGHT - 14, ladder.x_title, "middle"))
    return "".join(parts)


def _reference(frame: _Frame, ladder: Ladder) -> str:
    parts = []
    counted = [cup.value for cup in ladder.blanks if not cup.apart]
    if counted and ladder.blank_middle is not None:
        top, bottom = frame.y(max(counted)), frame.y(min(counted))
        parts.append(
            f'<rect x="{LEFT}" y="{top:.1f}" width="{WIDTH - LEFT - RIGHT}" height="{bottom - top:.1f}" '
            'fill="currentColor" fill-opacity="0.12" stroke="none"/>'
        )
        parts.append(_level(frame.y(ladder.blank_middle), "blank", above=True))
    if ladder.limit is not None:
        parts.append(_level(frame.y(ladder.limit), ladder.limit_said, above=False, dash="6 4"))
    return "".join(parts)


def _level(y: float, text: str, *, above: bool, dash: str = "") -> str:
    return _stroke(LEFT, y, WIDTH - RIGHT, y, 1.2, dash) + _text(
        WIDTH - RIGHT, y + (-4 if above else 13), text, "end"
    )


def _line(frame: _Frame, line: Line, nth: int, beside: float) -> str:
    parts = []
    places = [(frame.x(rung.dosage_pct + beside), rung) for rung in line.rungs]
    for (x, rung), (next_x, after) in pairwise(places):
        parts.append(_stroke(x, frame.y(rung.middle), next_x, frame.y(after.middle), 0.8, _dash(nth)))
    parts += [
        _cup(nth, frame.x(cup.dosage_pct + beside), frame.y(cup.value), SMALL, hollow=cup.apart) for cup in line.cups
    ]
    for x, rung in places:
        if rung.low is not None and rung.high is not None:
            low, high = frame.y(rung.low), frame.y(rung.high)
            parts += [_stroke(x, low, x, high, 1.4), _stroke(x - 4, low, x + 4, low, 1.4)]
            parts.append(_stroke(x - 4, high, x + 4, high, 1.4))
        title = f"<title>{escape(rung.said)}</title>"
        parts.append(f"<g>{title}{_cup(nth, x, frame.y(rung.middle), SIZE)}</g>")
    return "".join(parts)


def _legend(ladder: Ladder) -> str:
    parts, x = [], float(LEFT)
    for nth, line in enumerate(ladder.lines):
        parts += [_cup(nth, x + 6, 18, SIZE), _text(x + 18, 22, line.name, "start")]
        x += 34 + 7.6 * len(line.name)
    return "".join(parts)


def _cup(nth: int, x: float, y: float, r: float, *, hollow: bool = False) -> str:
    fill = "" if hollow else ' fill="currentColor"'
    shape = _SHAPES[nth % len(_SHAPES)]
    if shape is None:
        return f'<circle cx="{x:.1f}" cy="{y:.1f}" r="{r}" stroke-width="1"{fill}/>'
    corners = "L".join(f"{x + r * dx:.1f} {y + r * dy:.1f}" for dx, dy in shape)
    return f'<path d="M{corners}Z" stroke-width="1"{fill}/>'


# Corners around the centre, in radii; None is the circle.
_SHAPES = (
    None,
    ((-0.9, -0.9), (0.9, -0.9), (0.9, 0.9), (-0.9, 0.9)),
    ((0, -1.3), (1.3, 0), (0, 1.3), (-1.3, 0)),
    ((0, -1.2), (1.15, 0.9), (-1.15, 0.9)),
    ((-0.35, -1.1), (0.35, -1.1), (0.35, -0.35), (1.1, -0.35), (1.1, 0.35), (0.35, 0.35), (0.35, 1.1), (-0.35, 1.1),
     (-0.35, 0.35), (-1.1, 0.35), (-1.1, -0.35), (-0.35, -0.35)),
    ((0, 1.2), (1.15, -0.9), (-1.15, -0.9)),
)  # fmt: skip


def _dash(nth: int) -> str:
    return ("", "2 3", "6 4", "10 4", "8 3 2 3", "10 3 2 3 2 3")[nth % 6]


def _stroke(x1: float, y1: float, x2: float, y2: float, width: float, dash: str = "") -> str:
    dashes = f' stroke-dasharray="{dash}"' if dash else ""
    return f'<path d="M{x1:.1f} {y1:.1f}L{x2:.1f} {y2:.1f}" stroke-width="{width}"{dashes}/>'


def _text(x: float, y: float, text: str, anchor: str, more: str = "") -> str:
    return (
        f'<text x="{x:.1f}" y="{y:.1f}" text-anchor="{anchor}" fill="currentColor" stroke="none" {more}>'
        f"{escape(text)}</text>"
    )
