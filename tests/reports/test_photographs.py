import pytest

from tests.judged_series import add_cup
from tests.making import NOW
from trials.models import Panel, Photo, StoredTin
from trials.queries.judging import judgement
from trials.reports.photographs import strips

pytestmark = pytest.mark.django_db


@pytest.fixture
def strip_of(series, bench):
    def made(person=bench):
        groups = [line.group for line in judgement(series.pk, bench).lines]
        return strips(groups, series, person)

    return made


def photo(series, bench, number, *, mm_per_px="0.05", size_px=(1600, 1200), age_h=24, **panel):
    cup = series.trials.get(number=number)
    made = Panel.objects.create(trial=cup, code=f"P{Photo.objects.count():03d}", **panel)
    width, height = size_px
    return Photo.objects.create(
        panel=made, person=bench, taken_at=NOW, age_h=age_h, original="o", original_sha256="0", picture="p",
        picture_sha256="0", width_px=width, height_px=height, mm_per_px=mm_per_px,
    )  # fmt: skip


def test_references_stand_left_and_the_dosage_rises_to_the_right(strip_of, series, bench):
    for number in (17, 1, 13, 5):
        photo(series, bench, number)
    (strip,) = strip_of()
    assert [head.replace("\u00a0", " ") for head in strip.heads] == [
        "blank",
        "AR-01 0.1 %",
        "AR-01 0.3 %",
        "AR-01 0.5 %",
    ]
    assert [tile.said.split(",")[0] for tile in strip.rows[0].tiles] == ["417-1", "417-5", "417-13", "417-17"]


def test_all_are_at_one_scale_reckoned_by_hand(strip_of, series, bench):
    # 1600 × 1200 px at 0.05 mm are 80 × 60 mm; twice as large, and half as large, at the same pixels.
    photo(series, bench, 1)
    photo(series, bench, 9, mm_per_px="0.1")
    photo(series, bench, 17, mm_per_px="0.025")
    (strip,) = strip_of()
    whole, middle, small = strip.rows[0].tiles
    # Three columns are 56 mm wide at most: 80 mm of film on 56 mm of paper, 0.7 to 1.
    assert whole.paper_mm == pytest.approx((56, 42))
    assert whole.piece_px == pytest.approx((0, 0, 1600, 1200))
    assert middle.paper_mm == pytest.approx((56, 42))
    assert middle.piece_px == pytest.approx((400, 300, 800, 600))
    assert small.paper_mm == pytest.approx((28, 21))
    assert (strip.bar_mm, strip.bar_paper_mm) == (20, pytest.approx(14))
    for tile, mm_per_px in ((whole, 0.05), (middle, 0.1), (small, 0.025)):
        assert tile.paper_mm[0] / (tile.piece_px[2] * mm_per_px) == pytest.approx(0.7)


def test_stored_stands_below_fresh_and_a_gap_is_told(strip_of, series, bench):
    for number in (1, 9):
        photo(series, bench, number)
    tin = StoredTin.objects.create(trial=series.trials.get(number=9), temperature_c=50, days=28, stored_at=NOW)
    photo(series, bench, 9, stored_tin=tin)
    (strip,) = strip_of()
    assert [row.name for row in strip.rows] == ["fresh", "stored 28 d at 50 °C"]
    gap, kept = strip.rows[1].tiles
    assert (gap.photo, gap.said) == (None, "no photograph")
    assert kept.photo


def test_photographs_of_the_same_age_stand_together(strip_of, series, bench):
    for number in (1, 9):
        photo(series, bench, number, age_h=24)
        photo(series, bench, number, age_h=4)
    photo(series, bench, 9, age_h=168)
    (strip,) = strip_of()
    assert all(tile.said.endswith("24 h") for tile in strip.rows[0].tiles)


def test_photographs_without_a_scale_stand_apart(strip_of, series, bench):
    photo(series, bench, 1)
    photo(series, bench, 9)
    photo(series, bench, 17, mm_per_px=None)
    scaled, without = strip_of()
    assert (len(scaled.heads), scaled.bar_mm) == (2, 20)
    assert (len(without.heads), without.bar_mm) == (1, 0)
    assert "can't be compared" in without.said


def test_a_long_ladder_repeats_its_references(strip_of, series, bench):
    candidate = series.trials.get(number=5).dosages.get().candidate
    for dosage in ("0.6", "0.7", "0.8"):
        add_cup(series, "treated", candidate, dosage, air_pct="3")
    for number in (1, 5, 9, 13, 17, 21, 22, 23):
        photo(series, bench, number)
    first, second = strip_of()
    assert (len(first.heads), len(second.heads)) == (6, 3)
    assert first.heads[0] == second.heads[0] == "blank"


def test_photographs_come_through_what_the_person_may_see(strip_of, series, bench, colleague):
    photo(series, bench, 9)
    series.restricted = True
    series.save()
    assert strip_of(bench)
    assert strip_of(colleague) == ()
