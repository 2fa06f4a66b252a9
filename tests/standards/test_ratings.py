"""What the rating standards leave to arithmetic."""

import pytest

from trials.science import ratings


@pytest.mark.parametrize(("diameter_mm", "grade"), [(0.15, 2), (0.3, 3), (0.5, 3), (0.51, 4), (5.0, 4), (5.1, 5)])
def test_size_class(diameter_mm, grade):
    # ISO 4628-1, limits from memory, inclusive
    assert ratings.size_class(diameter_mm) == grade


@pytest.mark.parametrize(
    ("diameter_mm", "expected"),
    [
        # common practice, no source
        (0.1, "<0.2 mm"),
        (0.3, "0.2–0.5 mm"),
        (0.7, "0.5–1 mm"),
        (1.5, "1–2 mm"),
        (2.5, ">2 mm"),
    ],
)
def test_size_class_of_floors(diameter_mm, expected):
    assert ratings.floor_size_class(diameter_mm) == expected


@pytest.mark.parametrize(
    ("gloss_60", "angle"),
    [
        # ASTM D523: above 70 at 20°, below 10 at 85°
        (70.0, 60),
        (70.1, 20),
        (10.0, 60),
        (9.9, 85),
        # ISO 2813, example of one visual class: 35, 70 and 95 units at 20, 60 and 85°
        (35.0, 60),
    ],
)
def test_gloss_angle(gloss_60, angle):
    assert ratings.gloss_angle(gloss_60) == angle


@pytest.mark.parametrize(
    ("dry_film_um", "soft", "spacing"),
    [
        # ISO 2409 as an instrument maker quotes it
        (60.0, False, 1),
        (60.0, True, 2),
        (61.0, False, 2),
        (120.0, True, 2),
        (121.0, False, 3),
        (250.0, True, 3),
    ],
)
def test_cross_cut_spacing(dry_film_um, soft, spacing):
    assert ratings.cross_cut_spacing_mm(dry_film_um, soft=soft) == spacing


def test_a_floor_coat_is_beyond_the_cross_cut():
    # scope of ISO 2409:2020
    with pytest.raises(ValueError, match=r"dry_film_um.*pull-off.*X-cut.*2000"):
        ratings.cross_cut_spacing_mm(2000)


@pytest.mark.parametrize(("affected_pct", "grade"), [(0, 0), (3, 1), (5, 1), (10, 2), (20, 3), (50, 4), (70, 5)])
def test_cross_cut_class(affected_pct, grade):
    # ISO 2409 as an instrument maker quotes it
    assert ratings.cross_cut_class(affected_pct) == grade
