"""The film swatch says what was read, no more, and always in the same way."""

from dataclasses import fields, replace
from itertools import pairwise
from xml.etree import ElementTree

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from trials.figures.swatch import MOST_DOTS, Film, describe, swatch

SVG = "{http://www.w3.org/2000/svg}"
GRADES = [name.name for name in fields(Film) if name.name != "bubbles_per_dm2"]
WORST = Film(bubbles=5, bubble_size=5, craters=5, pinholes=5, haze=5, levelling=5, crawling=5)
grade = st.none() | st.sampled_from([i / 2 for i in range(11)])
films = st.builds(Film, bubbles_per_dm2=st.none() | st.floats(0, 5000), **dict.fromkeys(GRADES, grade))


def drawn(film, **how):
    return ElementTree.fromstring(swatch(film, **how))


def dots(film):
    return [c for c in drawn(film).iter(f"{SVG}circle") if c.get("fill") == "currentColor"]


def rings(film):
    return [c for c in drawn(film).iter(f"{SVG}circle") if c.get("fill") is None]


def strokes(film):
    return len(list(drawn(film).iter(f"{SVG}path")))


@settings(deadline=None, max_examples=60)
@given(film=films, size=st.integers(24, 240))
def test_swatch_of_any_film_is_valid_and_always_the_same(film, size):
    first = swatch(film, size_px=size)
    assert first == swatch(replace(film), size_px=size)
    svg = ElementTree.fromstring(first)
    assert svg.tag == f"{SVG}svg"
    assert svg.get("width") == svg.get("height") == str(size)
    assert svg.get("role") == "img"
    assert svg[0].tag == f"{SVG}title"
    assert svg[0].text
    assert len(dots(film)) == film.dots


@settings(deadline=None, max_examples=60)
@given(film=films)
def test_swatch_of_any_film_keeps_a_strict_content_policy_and_prints_in_black(film):
    names = {key for element in drawn(film).iter() for key in element.keys()}  # noqa: SIM118 - XML elements are no dicts
    assert not names & {"style", "id", "href", "onload"}
    colours = {element.get(key) for element in drawn(film).iter() for key in ("fill", "stroke")}
    assert colours <= {None, "none", "currentColor"}


@settings(deadline=None, max_examples=60)
@given(film=films)
def test_marks_of_any_film_stay_inside_the_frame(film):
    for circle in drawn(film).iter(f"{SVG}circle"):
        x, y, r = (float(circle.get(key)) for key in ("cx", "cy", "r"))
        assert 2 < x - r < x + r < 46
        assert 2 < y - r < y + r < 46


def test_more_bubbles_are_never_fewer_dots():
    counts = [0, 0.2, 1, 2, 3, 5, 9, 10, 11, 15, 20, 40, 80, 100, 150, 400, 900, 5000]
    shown = [len(dots(Film(bubbles_per_dm2=c))) for c in counts]
    assert shown == sorted(shown)
    assert shown[:8] == [0, 1, 1, 2, 3, 5, 9, 10]
    assert shown[-1] == MOST_DOTS
    assert len(set(shown[7:16])) == 9


def test_more_bubbles_only_add_to_the_dots_already_there():
    few, many = ({(d.get("cx"), d.get("cy")) for d in dots(Film(bubbles_per_dm2=count))} for count in (6, 60))
    assert few < many


@pytest.mark.parametrize(
    ("name", "measure"),
    [
        ("bubbles", lambda film: len(dots(film))),
        ("craters", lambda film: len(rings(film))),
        ("pinholes", strokes),
        ("haze", strokes),
    ],
)
def test_each_step_of_a_grade_shows_more(name, measure):
    shown = [measure(Film(**{"bubbles": 0, "bubble_size": 0, name: step})) for step in range(6)]
    assert all(less < more for less, more in pairwise(shown))


def test_larger_bubbles_are_larger_dots():
    radii = [float(dots(Film(bubbles_per_dm2=1, bubble_size=size))[0].get("r")) for size in (1, 2, 3, 4, 5)]
    assert all(less < more for less, more in pairwise(radii))


@pytest.mark.parametrize("name", ["levelling", "crawling"])
def test_edge_defects_change_the_outline_at_each_step(name):
    outlines = [list(drawn(Film(bubbles=0, **{name: step})).iter(f"{SVG}path"))[-1].get("d") for step in range(6)]
    assert len(set(outlines)) == 6


def test_levelled_film_has_a_straight_lower_edge_and_poor_levelling_a_wavy_one():
    def lower_edge(film):
        corners = list(drawn(film).iter(f"{SVG}path"))[-1].get("d")[1:-1].split("L")
        return {float(c.split()[1]) for c in corners if float(c.split()[1]) > 24}

    assert lower_edge(Film(levelling=0, bubbles=0)) == {45.5}
    assert min(lower_edge(Film(levelling=4, bubbles=0))) == pytest.approx(45.5 - 6)


def test_film_not_read_is_an_empty_dashed_frame_with_a_dash():
    svg = drawn(Film())
    assert svg[0].text == "Film not read yet"
    assert [path.get("stroke-dasharray") is not None for path in svg.iter(f"{SVG}path")] == [True, False]
    assert swatch(None) == swatch(Film())
    assert swatch(None) != swatch(Film(bubbles_per_dm2=0))


def test_none_seen_is_not_the_same_as_not_read():
    assert len(list(drawn(Film(bubbles=0, haze=1)).iter(f"{SVG}path"))) + 1 == strokes(Film(haze=1))
    assert describe(Film(haze=1)).endswith("not read: bubbles, craters, pinholes, levelling, crawling")


def test_text_alternative_names_all_that_is_drawn():
    assert describe(WORST) == (
        "bubbles grade 5 of 5, size 5 of 5; craters grade 5 of 5; pinholes grade 5 of 5; haze grade 5 of 5; "
        "levelling grade 5 of 5; crawling grade 5 of 5"
    )
    assert drawn(Film(bubbles_per_dm2=12.5), of="<417-5>")[0].text == (
        "<417-5>: 12.5 bubbles per dm²; not read: craters, pinholes, haze, levelling, crawling"
    )


def test_count_is_drawn_where_both_count_and_grade_are_given():
    assert len(dots(Film(bubbles_per_dm2=2, bubbles=5))) == 2


@pytest.mark.parametrize("name", [field.name for field in fields(Film)])
@pytest.mark.parametrize("value", [-0.5, float("nan"), float("inf")])
def test_impossible_value_is_refused_with_its_name_and_itself(name, value):
    with pytest.raises(ValueError, match=f"{name} must be a finite number.*got {value!r}"):
        Film(**{name: value})


@pytest.mark.parametrize("name", GRADES)
def test_grade_beyond_five_is_refused(name):
    with pytest.raises(ValueError, match=f"{name} .*between 0 and 5; got 5.5"):
        Film(**{name: 5.5})


@pytest.mark.parametrize("size", [23, 241, float("nan")])
def test_size_outside_the_range_is_refused(size):
    with pytest.raises(ValueError, match="size_px must be between 24 and 240"):
        swatch(WORST, size_px=size)
