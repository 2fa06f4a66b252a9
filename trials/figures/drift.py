"""Values over time: differences with their intervals about a mean, and single values between limits."""

from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, datetime, time, timedelta

from trials.figures import theme

# How far the second value of a day stands to the right of the first, as share of all the time shown.
BESIDE = 0.012


@dataclass(frozen=True, slots=True)
class Seen:
    """One value on a day. ``lot`` is what its shape tells; ``low`` and ``high`` are None where there is no interval.

    ``hollow``: shown, but not counted. ``ringed``: asks for a cause.
    """

    on: date
    value: float
    lot: str
    said: str
    low: float | None = None
    high: float | None = None
    hollow: bool = False
    ringed: bool = False


@dataclass(frozen=True, slots=True)
class Level:
    """A line across the figure, and its name; a thin one is dashed."""

    value: float
    name: str
    firm: bool = True


@dataclass(frozen=True, slots=True)
class Band:
    """From low to high across the figure."""

    low: float
    high: float


def over_time(
    points: Sequence[Seen],
    *,
    y_title: str,
    levels: Iterable[Level] = (),
    band: Band | None = None,
    joined: bool = False,
) -> dict:
    """The figure as ``figure.js`` draws it: one shape for each lot, in the order in which they come.

    Parameters
    ----------
    points : sequence of Seen
        In order of time.
    y_title : str
        With its unit.
    levels, band
        What the points are seen against.
    joined : bool
        Draw a thin line from each point to the next.

    Examples
    --------
    >>> seen = [Seen(date(2026, 3, 2), -3.1, "lot 1", "417"), Seen(date(2026, 4, 1), -2.2, "lot 2", "418")]
    >>> drawn = over_time(seen, y_title="Difference, %", levels=[Level(0.0, "blank")])
    >>> [trace["name"] for trace in drawn["data"]], drawn["data"][1]["x"]
    (['lot 1', 'lot 2'], ['2026-04-01T12:00:00'])
    """
    places = _places(points)
    traces = [_thread(points, places)] if joined else []
    lots = list(dict.fromkeys(point.lot for point in points))
    for nth, lot in enumerate(lots):
        mine = [place for place, point in enumerate(points) if point.lot == lot]
        traces.append(_lot(lot, nth, [points[place] for place in mine], [places[place] for place in mine]))
    if any(point.ringed for point in points):
        traces.append(_rings(points, places))
    shapes, notes = _behind(list(levels), band)
    layout = theme.layout(x=theme.axis("", type="date"), y=theme.axis(y_title), shapes=shapes, annotations=notes)
    return theme.figure(traces, layout)


def _places(points: Sequence[Seen]) -> list[str]:
    """Noon of each day; values of one day stand beside each other."""
    days = [point.on for point in points]
    span = (max(days) - min(days)).days if days else 0
    step = timedelta(days=max(1.0, span) * BESIDE)
    before: Counter[date] = Counter()
    found = []
    for day in days:
        at = datetime.combine(day, time(12)) + before[day] * step
        found.append(at.isoformat(timespec="seconds"))
        before[day] += 1
    return found


def _lot(name: str, nth: int, points: Sequence[Seen], places: Sequence[str]) -> dict:
    look = theme.mark(nth)
    known = [None not in (point.low, point.high) for point in points]
    return {
        "type": "scatter",
        "mode": "markers",
        "name": name,
        "showlegend": True,
        "x": list(places),
        "y": [point.value for point in points],
        "error_y": {
            "type": "data",
            "symmetric": False,
            "array": [p.high - p.value if has else None for p, has in zip(points, known, strict=True)],
            "arrayminus": [p.value - p.low if has else None for p, has in zip(points, known, strict=True)],
            "color": look["color"],
            "thickness": 1.5,
            "width": 5,
        },
        "marker": {
            "symbol": [f"{look['symbol']}-open" if point.hollow else look["symbol"] for point in points],
            "color": look["color"],
            "size": 11,
        },
        "text": [point.said for point in points],
        "hovertemplate": "%{text}<extra></extra>",
    }


def _thread(points: Sequence[Seen], places: Sequence[str]) -> dict:
    return {
        "type": "scatter",
        "mode": "lines",
        "name": "in order of time",
        "showlegend": False,
        "x": list(places),
        "y": [point.value for point in points],
        "line": {"color": theme.LINE, "width": 1},
        "hoverinfo": "skip",
    }


def _rings(points: Sequence[Seen], places: Sequence[str]) -> dict:
    ringed = [(place, point.value) for place, point in zip(places, points, strict=True) if point.ringed]
    return {
        "type": "scatter",
        "mode": "markers",
        "name": "asks for a cause",
        "x": [place for place, _ in ringed],
        "y": [value for _, value in ringed],
        "marker": {"symbol": "circle-open", "color": theme.ACCENT, "size": 22, "line": {"width": 2}},
        "hoverinfo": "skip",
    }


def _behind(levels: list[Level], band: Band | None) -> tuple[list[dict], list[dict]]:
    across = {"xref": "paper", "x0": 0, "x1": 1}
    shapes: list[dict] = []
    if band:
        drawn = {"type": "rect", "y0": band.low, "y1": band.high, "fillcolor": theme.HAIRLINE, "opacity": 0.5}
        shapes.append({**across, **drawn, "line": {"width": 0}, "layer": "below"})
    for level in levels:
        line = {
            "color": theme.INK if level.firm else theme.ACCENT,
            "width": 1.5,
            "dash": "solid" if level.firm else "dash",
        }
        shapes.append({**across, "type": "line", "y0": level.value, "y1": level.value, "line": line})
    notes = [
        {
            "xref": "paper",
            "x": 1,
            "xanchor": "right",
            "y": level.value,
            "yanchor": "bottom",
            "text": level.name,
            "showarrow": False,
            "font": {"size": 12, "color": theme.INK_SOFT},
        }
        for level in levels
    ]
    return shapes, notes
