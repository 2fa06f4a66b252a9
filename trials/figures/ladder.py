"""Dose and response of one series: every cup, the middle of each dosage with its interval, the blank as reference."""

from dataclasses import dataclass

from trials.figures import theme


@dataclass(frozen=True, slots=True)
class Cup:
    """One cup at its dosage (blanks at 0). ``apart``: shown, but not counted in the middle of its dosage."""

    dosage_pct: float
    value: float
    said: str
    apart: bool = False


@dataclass(frozen=True, slots=True)
class Rung:
    """The middle of the cups at one dosage.

    ``low`` and ``high`` are the interval of its difference from the blank, set on the middle of the blanks; None
    where there is none.
    """

    dosage_pct: float
    middle: float
    low: float | None
    high: float | None
    said: str


@dataclass(frozen=True, slots=True)
class Line:
    """One candidate, or one pair of them."""

    name: str
    cups: tuple[Cup, ...]
    rungs: tuple[Rung, ...]


@dataclass(frozen=True, slots=True)
class Ladder:
    """``control`` and ``limit`` may be missing; ``y_title`` and ``x_title`` carry their units."""

    x_title: str
    y_title: str
    blanks: tuple[Cup, ...]
    blank_middle: float | None
    lines: tuple[Line, ...]
    limit: float | None = None
    limit_said: str = ""

    @property
    def values(self) -> tuple[float, ...]:
        """Everything that has to fit on the upright axis."""
        cups = [cup.value for cup in self.all_cups]
        ends = [end for line in self.lines for rung in line.rungs for end in (rung.low, rung.high) if end is not None]
        return (*cups, *ends, *([] if self.limit is None else [self.limit]))

    @property
    def all_cups(self) -> tuple[Cup, ...]:
        return (*self.blanks, *(cup for line in self.lines for cup in line.cups))

    @property
    def highest_pct(self) -> float:
        return max((cup.dosage_pct for cup in self.all_cups), default=0.0) or 1.0

    def beside_pct(self, nth: int) -> float:
        """How far the nth line stands to the right of its dosages: once for each line before it that shares one."""
        mine = {rung.dosage_pct for rung in self.lines[nth].rungs}
        sharing = sum(any(rung.dosage_pct in mine for rung in line.rungs) for line in self.lines[:nth])
        return 0.012 * self.highest_pct * sharing


def ladder_figure(ladder: Ladder) -> dict:
    """The figure as ``figure.js`` draws it.

    Examples
    --------
    >>> cups = (Cup(0.3, 4.1, "417-5: 4.1"), Cup(0.3, 4.6, "417-6: 4.6"))
    >>> line = Line("AR-01", cups, (Rung(0.3, 4.35, 3.1, 5.6, "AR-01 0.3 %: mean 4.35 of 2 cups"),))
    >>> drawn = ladder_figure(Ladder("Dosage, %", "Air, % by volume", (Cup(0.0, 9.8, "417-1: 9.8"),), 9.8, (line,)))
    >>> [trace["name"] for trace in drawn["data"]]
    ['blank', 'AR-01', 'AR-01, cups']
    """
    traces = [_blank_trace(ladder)] if ladder.blanks else []
    for nth, line in enumerate(ladder.lines):
        traces += _line_traces(line, nth, ladder.beside_pct(nth))
    x = theme.axis(ladder.x_title, range=[-0.03 * ladder.highest_pct, 1.08 * ladder.highest_pct])
    y = theme.axis(ladder.y_title, rangemode="tozero" if min(ladder.values, default=0.0) >= 0 else "normal")
    shapes, notes = _reference(ladder)
    return theme.figure(traces, theme.layout(x=x, y=y, shapes=shapes, annotations=notes))


def _blank_trace(ladder: Ladder) -> dict:
    symbols = ["circle-open" if cup.apart else "circle" for cup in ladder.blanks]
    return _cups_trace("blank", ladder.blanks, symbols, theme.INK, beside=0.0) | {"showlegend": True}


def _line_traces(line: Line, nth: int, beside: float) -> list[dict]:
    look = theme.mark(nth)
    symbols = [f"{look['symbol']}-open" if cup.apart else look["symbol"] for cup in line.cups]
    cups = _cups_trace(f"{line.name}, cups", line.cups, symbols, look["color"], beside=beside)
    return [_rungs_trace(line, look, beside), cups | {"legendgroup": line.name}]


def _rungs_trace(line: Line, look: dict, beside: float) -> dict:
    reach = [
        (None, None) if r.low is None or r.high is None else (r.high - r.middle, r.middle - r.low) for r in line.rungs
    ]
    return {
        "type": "scatter",
        "mode": "lines+markers",
        "name": line.name,
        "legendgroup": line.name,
        "x": [rung.dosage_pct + beside for rung in line.rungs],
        "y": [rung.middle for rung in line.rungs],
        "error_y": {
            "type": "data",
            "symmetric": False,
            "array": [up for up, _ in reach],
            "arrayminus": [down for _, down in reach],
            "color": look["color"],
            "thickness": 1.5,
            "width": 6,
        },
        "line": {"color": look["color"], "dash": look["dash"], "width": 1},
        "marker": {"symbol": look["symbol"], "color": look["color"], "size": 11},
        "text": [rung.said for rung in line.rungs],
        "hovertemplate": "%{text}<extra></extra>",
    }


def _cups_trace(name: str, cups: tuple[Cup, ...], symbols: list[str], colour: str, *, beside: float) -> dict:
    return {
        "type": "scatter",
        "mode": "markers",
        "name": name,
        "showlegend": False,
        "x": [cup.dosage_pct + beside for cup in cups],
        "y": [cup.value for cup in cups],
        "marker": {"symbol": symbols, "color": colour, "size": 6, "opacity": 0.75},
        "text": [cup.said for cup in cups],
        "hovertemplate": "%{text}<extra></extra>",
    }


def _reference(ladder: Ladder) -> tuple[list[dict], list[dict]]:
    """The blanks from the lowest to the highest as a band, their middle as a line, the limit as a dashed one."""
    shapes: list[dict] = []
    notes: list[dict] = []
    counted = [cup.value for cup in ladder.blanks if not cup.apart]
    across = {"xref": "paper", "x0": 0, "x1": 1}
    if counted and ladder.blank_middle is not None:
        band = {"type": "rect", "y0": min(counted), "y1": max(counted), "fillcolor": theme.HAIRLINE, "opacity": 0.5}
        shapes.append({**across, **band, "line": {"width": 0}, "layer": "below"})
        shapes.append(_level(across, ladder.blank_middle, "solid", theme.INK))
        notes.append(_note(ladder.blank_middle, "blank", "bottom"))
    if ladder.limit is not None:
        shapes.append(_level(across, ladder.limit, "dash", theme.ACCENT))
        notes.append(_note(ladder.limit, ladder.limit_said, "top"))
    return shapes, notes


def _level(across: dict, y: float, dash: str, colour: str) -> dict:
    return {**across, "type": "line", "y0": y, "y1": y, "line": {"color": colour, "width": 1.5, "dash": dash}}


def _note(y: float, text: str, anchor: str) -> dict:
    return {
        "xref": "paper",
        "x": 1,
        "xanchor": "right",
        "y": y,
        "yanchor": anchor,
        "text": text,
        "showarrow": False,
        "font": {"size": 12, "color": theme.INK_SOFT},
    }
