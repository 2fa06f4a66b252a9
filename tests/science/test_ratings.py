import pytest

from trials.science import ratings


@pytest.mark.parametrize(
    ("call", "message"),
    [
        (lambda: ratings.size_class(0.0), "diameter_mm must be above 0; got 0.0"),
        (lambda: ratings.size_class(1.0, limits_mm=(0.2, 0.2, 5.0)), "limits_mm must be three rising"),
        (lambda: ratings.size_class(1.0, limits_mm=(0.1, 0.2, 0.5, 5.0)), "limits_mm must be three rising"),
        (lambda: ratings.size_class(1.0, limits_mm=(0.2, 0.5)), "limits_mm needs at least 3"),
        (lambda: ratings.floor_size_class(-1.0), "diameter_mm .*got -1.0"),
        (lambda: ratings.gloss_angle(-0.1), "gloss_60 .*got -0.1"),
        (lambda: ratings.cross_cut_spacing_mm(0.0), "dry_film_um must be above 0; got 0.0"),
        (lambda: ratings.cross_cut_spacing_mm(250.1), "got 250.1"),
        (lambda: ratings.cross_cut_class(100.1), "affected_pct .*got 100.1"),
    ],
)
def test_refusals(call, message):
    with pytest.raises(ValueError, match=message):
        call()


def test_own_limits():
    assert ratings.size_class(0.3, limits_mm=(0.3, 1.0, 3.0)) == 2
    assert ratings.size_class(4.0, limits_mm=(0.3, 1.0, 3.0)) == 5


@pytest.mark.parametrize(
    ("diameter_mm", "expected"),
    [(0.2, "0.2–0.5 mm"), (0.5, "0.5–1 mm"), (1.0, "1–2 mm"), (2.0, "1–2 mm"), (2.0001, ">2 mm")],
)
def test_limits_of_the_floor_classes(diameter_mm, expected):
    assert ratings.floor_size_class(diameter_mm) == expected
