"""One look for every Plotly figure: ink on paper, one accent, shapes that differ as well as colours.

A figure carries the colours of the light scheme. ``SCHEME`` names the custom property that each one stands for, so
that a page can put its own scheme's colour in its place, and a figure drawn anywhere else still has one.
"""

INK = "#1d1a16"
INK_SOFT = "#5d564b"
PAPER = "#faf7f0"
HAIRLINE = "#d8d0c0"
LINE = "#857b6b"
ACCENT = "#98371a"
SCHEME = {
    INK: "--ink",
    INK_SOFT: "--ink-soft",
    PAPER: "--paper",
    HAIRLINE: "--hairline",
    LINE: "--line",
    ACCENT: "--accent",
}

SYMBOLS = ("circle", "square", "diamond", "triangle-up", "cross", "star", "hexagon", "triangle-down")
COLOURS = (ACCENT, INK, INK_SOFT)
DASHES = ("solid", "dot", "dash", "longdash", "dashdot", "longdashdot")

# No button that sends the numbers elsewhere, and no address to send them to.
CONFIG = {
    "displaylogo": False,
    "responsive": True,
    "showSendToCloud": False,
    "plotlyServerURL": "",
    "modeBarButtonsToRemove": ["select2d", "lasso2d", "autoScale2d"],
}


def mark(nth: int) -> dict:
    """Symbol, colour and dash of the nth thing that a figure tells apart; the combinations repeat late."""
    return {
        "symbol": SYMBOLS[nth % len(SYMBOLS)],
        "color": COLOURS[nth % len(COLOURS)],
        "dash": DASHES[nth % len(DASHES)],
    }


def axis(title: str, **more) -> dict:
    """An axis with its unit in the title."""
    return {
        "title": {"text": title, "standoff": 10},
        "automargin": True,
        "showline": True,
        "linecolor": INK,
        "gridcolor": HAIRLINE,
        "zeroline": False,
        "ticks": "outside",
        "tickcolor": LINE,
        **more,
    }


def layout(*, x: dict, y: dict, **more) -> dict:
    return {
        "xaxis": x,
        "yaxis": y,
        "paper_bgcolor": PAPER,
        "plot_bgcolor": PAPER,
        "font": {"color": INK, "family": "system-ui, sans-serif", "size": 14},
        "hoverlabel": {"bgcolor": PAPER, "bordercolor": INK, "font": {"color": INK}, "align": "left"},
        "hovermode": "closest",
        "legend": {"orientation": "h", "yanchor": "bottom", "y": 1.02, "x": 0},
        "margin": {"l": 60, "r": 20, "t": 40, "b": 60},
        "separators": ".\u202f",
        **more,
    }


def figure(data: list[dict], layout: dict) -> dict:
    """What ``figure.js`` draws: traces, layout, behaviour, and which colour is which."""
    return {"data": data, "layout": layout, "config": CONFIG, "scheme": SCHEME}
