"""Figures over time: what is drawn is what was given, and Plotly's own schema takes it."""

from datetime import date

import plotly.graph_objects as go
import pytest

from trials.figures import theme
from trials.figures.drift import Band, Level, Seen, over_time
from trials.figures.failures import count_bar

POINTS = (
    Seen(date(2026, 3, 2), -3.0, "lot A7", "417", -5.0, -1.0),
    Seen(date(2026, 3, 2), -2.0, "lot B2", "418", hollow=True),
    Seen(date(2026, 6, 10), -4.0, "lot A7", "419", -6.5, -2.0, ringed=True),
)


def drawn(points=POINTS, **more):
    return over_time(points, y_title="Difference, %", **more)


@pytest.mark.parametrize("points", [POINTS, POINTS[:1], ()])
def test_plotly_takes_the_figure(points):
    """Plotly 7 (Python) refuses a property or a value that its schema does not know."""
    figure = drawn(
        points, levels=[Level(0.0, "blank"), Level(-3.0, "mean", firm=False)], band=Band(-5, -1), joined=True
    )
    assert len(go.Figure(data=figure["data"], layout=figure["layout"]).data) == len(figure["data"])


def test_each_lot_has_its_own_shape_in_the_order_in_which_they_come():
    first, second, _ = drawn()["data"]
    assert [(trace["name"], trace["y"]) for trace in (first, second)] == [
        ("lot A7", [-3.0, -4.0]),
        ("lot B2", [-2.0]),
    ]
    assert first["marker"]["symbol"] == [theme.SYMBOLS[0]] * 2
    assert second["marker"]["symbol"] == [f"{theme.SYMBOLS[1]}-open"]


def test_interval_reaches_from_low_to_high():
    first, second, _ = drawn()["data"]
    assert (first["error_y"]["arrayminus"], first["error_y"]["array"]) == ([2.0, 2.5], [2.0, 2.0])
    assert (second["error_y"]["arrayminus"], second["error_y"]["array"]) == ([None], [None])


def test_values_of_one_day_stand_beside_each_other():
    first, second, _ = drawn()["data"]
    # 1.2 % of the hundred days shown.
    assert (first["x"], second["x"]) == (["2026-03-02T12:00:00", "2026-06-10T12:00:00"], ["2026-03-03T16:48:00"])


def test_ring_stands_about_what_asks_for_a_cause():
    rings = drawn()["data"][-1]
    assert (rings["name"], rings["x"], rings["y"]) == ("asks for a cause", ["2026-06-10T12:00:00"], [-4.0])
    assert len(drawn(POINTS[:2])["data"]) == 2


def test_levels_and_band_lie_across():
    layout = drawn(levels=[Level(0.0, "blank"), Level(-3.0, "mean", firm=False)], band=Band(-5.0, -1.0))["layout"]
    band, blank, mean = layout["shapes"]
    assert (band["y0"], band["y1"], blank["y0"], mean["y0"]) == (-5.0, -1.0, 0.0, -3.0)
    assert (blank["line"]["dash"], mean["line"]["dash"]) == ("solid", "dash")
    assert [note["text"] for note in layout["annotations"]] == ["blank", "mean"]


def test_line_joins_the_points_in_order_of_time():
    thread = drawn(joined=True)["data"][0]
    assert (thread["mode"], thread["y"]) == ("lines", [-3.0, -2.0, -4.0])


@pytest.mark.parametrize(("count", "most"), [(-1, 4), (5, 4), (1, 0)])
def test_bar_of_an_impossible_count_is_refused(count, most):
    with pytest.raises(ValueError, match=f"count must be from 0 to {most}; got {count}"):
        count_bar(count, most)


def test_longest_bar_is_as_wide_as_there_is_room():
    assert '<rect fill="currentColor" width="60.0"' in count_bar(4, 4)
