import re
from xml.etree import ElementTree

import pytest

from trials.figures.candidate_map import WIDTH, MapPoint, candidate_map


def _point(code="AR-01", strength=3, tip_speed_m_s=4.0, minutes=5.0, silicone=True, href=""):
    return MapPoint(code, strength, tip_speed_m_s, minutes, silicone, href)


def _drawn(*points):
    return ElementTree.fromstring(candidate_map(points))


def _labels(root):
    return {text.text: (float(text.get("x")), float(text.get("y"))) for text in root.iter("text") if _is_code(text)}


def _is_code(text):
    return re.fullmatch(r"AR-\d\d", text.text or "")


def test_stronger_stands_higher_and_harder_stands_further_right():
    root = _drawn(_point("AR-01", strength=5, tip_speed_m_s=1.0), _point("AR-02", strength=1, tip_speed_m_s=7.0))
    strong, mild = (circle for circle in root.iter("circle"))
    assert float(strong.get("cy")) < float(mild.get("cy"))
    assert float(strong.get("cx")) < float(mild.get("cx"))


def test_area_grows_with_the_minutes():
    root = _drawn(_point("AR-01", minutes=5.0), _point("AR-02", minutes=10.0))
    short, long = (float(circle.get("r")) for circle in root.iter("circle"))
    assert long**2 / short**2 == pytest.approx(2.0, rel=0.02)


def test_silicone_free_is_a_hollow_square():
    root = _drawn(_point(silicone=False))
    assert not list(root.iter("circle"))
    assert [rect.get("fill") for rect in root.iter("rect")] == ["none"]


def test_point_without_a_tip_speed_is_left_out():
    assert _labels(_drawn(_point("AR-01", tip_speed_m_s=None), _point("AR-02"))).keys() == {"AR-02"}


def test_codes_on_one_spot_do_not_lie_on_each_other():
    rows = [y for _, y in _labels(_drawn(*(_point(f"AR-0{n}") for n in range(1, 8)))).values()]
    assert len(rows) == 7
    assert min(abs(a - b) for number, a in enumerate(rows) for b in rows[:number]) >= 15


def test_stronger_stands_higher_however_many_share_a_strength():
    crowd = [_point(f"AR-1{n}", strength=4) for n in range(9)]
    places = _labels(_drawn(_point("AR-01", strength=5), *crowd, _point("AR-02", strength=3)))
    crowded = [y for code, (_, y) in places.items() if code.startswith("AR-1")]
    assert places["AR-01"][1] < min(crowded)
    assert max(crowded) < places["AR-02"][1]


@pytest.mark.parametrize("speed", [0.1, 8.0, 23.5])
def test_everything_stays_on_the_sheet(speed):
    root = _drawn(_point(tip_speed_m_s=speed, strength=5), _point("AR-02", tip_speed_m_s=speed, strength=1))
    texts = [text for text in root.iter("text") if _is_code(text)]
    for text in texts:
        width = 9.5 * len(text.text) * (-1 if text.get("text-anchor") == "end" else 1)
        assert 0 < float(text.get("x")) < WIDTH
        assert 0 < float(text.get("x")) + width <= WIDTH
        assert 0 < float(text.get("y")) < float(root.get("height"))


def test_text_from_people_is_escaped():
    svg = candidate_map([_point('<b>"&', href='/x/?a="><script>')])
    assert "<b>" not in svg
    assert "<script" not in svg
    ElementTree.fromstring(svg)


@pytest.mark.parametrize(
    ("values", "told"),
    [
        ({"strength": 6}, "strength must be 1 to 5; got 6"),
        ({"strength": 0}, "strength must be 1 to 5; got 0"),
        ({"tip_speed_m_s": 0.0}, "tip_speed_m_s must be a finite number above 0; got 0.0"),
        ({"minutes": float("nan")}, "minutes must be a finite number above 0; got nan"),
    ],
)
def test_impossible_point_is_refused_with_its_value(values, told):
    with pytest.raises(ValueError, match=re.escape(told)):
        _point(**values)


def test_empty_map_has_its_axes():
    assert "strength, 1 mild to 5 strong" in candidate_map([])
