"""The dose-response figure: what it shows is what was counted, and Plotly's own schema takes it."""

import re
from pathlib import Path
from xml.etree import ElementTree

import plotly.graph_objects as go
import pytest

from trials.figures import theme
from trials.figures.ladder import Cup, Ladder, Line, Rung, ladder_figure
from trials.figures.ladder_svg import HEIGHT, WIDTH, ladder_svg, nice_ticks

SVG = "{http://www.w3.org/2000/svg}"
TOKENS = Path(__file__).parents[2] / "static/css/tokens.css"


def _ladder(*, lines=1, limit=None, apart=False, blanks=(9.8, 10.4)):
    made = tuple(
        Line(
            f"AR-0{nth}",
            (Cup(0.1, 9.0, "417-3: 9.0"), Cup(0.3, 4.1, "417-5: 4.1", apart)),
            (Rung(0.1, 9.0, 8.0, 10.0, "9.0"), Rung(0.3, 4.1, None, None, "4.1 <one cup>")),
        )
        for nth in range(1, lines + 1)
    )
    middle = sum(blanks) / len(blanks) if blanks else None
    return Ladder("Dosage, %", "Air & gas, %", tuple(Cup(0.0, b, "") for b in blanks), middle, made, limit, "must: 3")


@pytest.mark.parametrize("ladder", [_ladder(), _ladder(lines=9, limit=3.0, apart=True), _ladder(blanks=())])
def test_plotly_takes_the_figure(ladder):
    """Plotly 7 (Python) refuses a property or a value that its schema does not know."""
    drawn = ladder_figure(ladder)
    assert len(go.Figure(data=drawn["data"], layout=drawn["layout"]).data) == len(drawn["data"])


def test_interval_reaches_from_low_to_high():
    rungs = ladder_figure(_ladder())["data"][1]
    assert rungs["y"] == [9.0, 4.1]
    assert (rungs["error_y"]["arrayminus"], rungs["error_y"]["array"]) == ([1.0, None], [1.0, None])


def test_band_runs_over_the_blanks_and_the_limit_is_a_dashed_line():
    band, blank, limit = ladder_figure(_ladder(limit=3.0))["layout"]["shapes"]
    assert (band["y0"], band["y1"], blank["y0"], limit["y0"]) == (9.8, 10.4, pytest.approx(10.1), 3.0)
    assert limit["line"]["dash"] == "dash"


def test_no_blank_no_band():
    assert ladder_figure(_ladder(blanks=()))["layout"]["shapes"] == []


def test_cups_apart_are_hollow():
    cups = ladder_figure(_ladder(apart=True))["data"][2]
    assert cups["marker"]["symbol"] == ["circle", "circle-open"]


def test_candidates_differ_in_shape_and_not_only_in_colour():
    marks = [theme.mark(nth) for nth in range(6)]
    assert len({mark["symbol"] for mark in marks}) == len({mark["dash"] for mark in marks}) == 6


def test_candidates_at_one_dosage_stand_side_by_side():
    data = ladder_figure(_ladder(lines=3))["data"]
    firsts = [trace["x"][0] for trace in data[1::2]]
    assert firsts == sorted(set(firsts))


def test_a_candidate_alone_at_its_dosage_stands_on_it():
    alone = Line("AR-09", (Cup(0.2, 5.0, ""),), (Rung(0.2, 5.0, None, None, ""),))
    ladder = _ladder(lines=2)
    data = ladder_figure(Ladder("x", "y", (), None, (*ladder.lines, alone)))["data"]
    assert data[-2]["x"] == [0.2]


def test_no_figure_offers_to_send_its_numbers_elsewhere():
    config = ladder_figure(_ladder())["config"]
    assert (config["showSendToCloud"], config["plotlyServerURL"], config["displaylogo"]) == (False, "", False)


def test_colours_are_those_of_the_light_scheme():
    """Else a page could not put its own scheme in their place."""
    first_block = TOKENS.read_text().split("@media")[0]
    tokens = dict(re.findall(r"(--[\w-]+):\s*(#[0-9a-f]{6})", first_block))
    assert {name: tokens[name] for name in theme.SCHEME.values()} == {v: k for k, v in theme.SCHEME.items()}


def test_paper_shows_every_cup_once_and_stays_on_the_sheet():
    root = ElementTree.fromstring(ladder_svg(_ladder(apart=True)))
    dots = [dot for dot in root.iter(f"{SVG}circle") if dot.get("r") == "2.4"]
    assert len(dots) == 4
    assert sum(dot.get("fill") is None for dot in dots) == 1
    for dot in root.iter(f"{SVG}circle"):
        assert 0 < float(dot.get("cx")) < WIDTH
        assert 0 < float(dot.get("cy")) < HEIGHT


def test_paper_is_escaped_and_without_style_or_script():
    svg = ladder_svg(_ladder())
    assert "Air &amp; gas, %" in svg
    assert "&lt;one cup&gt;" in svg
    assert not re.search(r"style=|<script|<one cup", svg)


def test_higher_air_stands_higher_on_paper():
    root = ElementTree.fromstring(ladder_svg(_ladder()))
    dots = [float(dot.get("cy")) for dot in root.iter(f"{SVG}circle") if dot.get("r") == "2.4"]
    blank_low, blank_high, first, second = dots
    assert blank_high < blank_low < first < second


@pytest.mark.parametrize(("low", "high"), [(0, 0), (-0.3, 0.4), (0, 1e-6), (2.1, 2.2), (0, 4711), (-5, -5)])
def test_ticks_cover_what_they_measure(low, high):
    ticks = nice_ticks(low, high)
    assert ticks[0] <= low <= high <= ticks[-1]
    assert 2 <= len(ticks) <= 9
    assert ticks == sorted(set(ticks))


def test_empty_series_draws_an_empty_frame():
    empty = Ladder("Dosage, %", "Bubbles", (), None, ())
    assert ladder_figure(empty)["data"] == []
    assert ElementTree.fromstring(ladder_svg(empty)).tag == f"{SVG}svg"
