from datetime import date, timedelta
from decimal import Decimal
from statistics import mean, variance

import pytest

from tests.cup_making import dose, make_candidate, make_cups, make_panel, rated
from tests.making import NOW, make_epoxy_base, make_material
from tests.people import make_person
from tests.trend_making import FIRST, SECOND, THIRD, make_series
from trials.models import (
    Base,
    CommonBatch,
    CommonBatchLot,
    Failure,
    Lot,
    Series,
    SeriesShare,
    Trial,
    WetReading,
)
from trials.queries import trends
from trials.queries.blanks import blank_chart
from trials.queries.drift import EVERY_DOSAGE, candidate_drift
from trials.queries.failures import failures_by_quarter
from trials.queries.trends import bases_in_use, tried_candidates, watched
from trials.science.comparison import against_control
from trials.science.evidence import pool

pytestmark = pytest.mark.django_db

DOSAGE = "0.3 % on total, on top, as supplied, let-down"


@pytest.fixture
def revision(bench):
    return make_epoxy_base(bench, "EP-F1")


class TestDrift:
    @pytest.fixture(autouse=True)
    def _three(self, bench, revision):
        make_series(bench, revision, 417, *FIRST)
        make_series(bench, revision, 418, *SECOND)
        make_series(bench, revision, 419, *THIRD, lot="B2")

    def test_points_are_differences_from_the_blanks_of_their_own_series(self, bench):
        found = candidate_drift(bench, "AR-01", "bubble-count", age_h=24)
        assert [(point.series.number, point.on, point.lot, point.contrast.estimate) for point in found.points] == [
            (417, date(2026, 3, 2), "A7", pytest.approx(25 - 90)),
            (418, date(2026, 3, 9), "A7", pytest.approx(20 - 65)),
            (419, date(2026, 3, 16), "B2", pytest.approx(55 - 110)),
        ]

    def test_intervals_are_dunnetts_over_all_dosages_of_a_series(self, bench):
        found = candidate_drift(bench, "AR-01", "bubble-count", dosage=EVERY_DOSAGE, age_h=24)
        low, high = against_control([60, 70], [[25, 15], [5, 9]])
        mine = [point.contrast for point in found.points if point.series.number == 418]
        assert [(one.low, one.high, one.p) for one in mine] == [
            (pytest.approx(one.low), pytest.approx(one.high), pytest.approx(one.p)) for one in (low, high)
        ]

    def test_most_frequent_dosage_is_shown_and_the_rest_offered(self, bench):
        found = candidate_drift(bench, "AR-01", "bubble-count", age_h=24)
        assert (found.dosage, found.dosages) == (DOSAGE, (DOSAGE, DOSAGE.replace("0.3", "0.5")))
        other = candidate_drift(bench, "AR-01", "bubble-count", dosage=found.dosages[1], age_h=24)
        assert [point.series.number for point in other.points] == [418]
        assert candidate_drift(bench, "AR-01", "bubble-count", dosage="7 %", age_h=24).dosage == DOSAGE

    def test_mean_over_series_is_pooled_with_the_spread_of_each(self, bench):
        found = candidate_drift(bench, "AR-01", "bubble-count", age_h=24)
        # By hand: pooled variance of the groups of a series times (1/n + 1/n of the blanks).
        first = (2 * variance([80, 90, 100]) + variance([20, 30])) / 3 * (1 / 2 + 1 / 3)
        second = mean([variance([60, 70]), variance([25, 15]), variance([5, 9])]) * (1 / 2 + 1 / 2)
        third = mean([variance([120, 100]), variance([60, 50])]) * (1 / 2 + 1 / 2)
        assert [point.variance for point in found.points] == pytest.approx([first, second, third])
        assert found.pooled == pool([-65.0, -45.0, -55.0], [first, second, third])
        assert [point.pooled for point in found.points] == [True, True, True]

    def test_standard_error_is_the_one_dunnett_judges_by(self, bench):
        for point in candidate_drift(bench, "AR-01", "bubble-count", age_h=24).points:
            blanks, treated = {417: FIRST, 418: SECOND, 419: THIRD}[point.series.number]
            one = against_control(blanks, list(treated.values()))[0]
            assert point.contrast.estimate / point.variance**0.5 == pytest.approx(one.statistic)

    def test_every_dosage_together_has_no_mean(self, bench):
        found = candidate_drift(bench, "AR-01", "bubble-count", dosage=EVERY_DOSAGE, age_h=24)
        assert (len(found.points), found.pooled) == (4, None)
        assert found.unpooled.startswith("Choose one dosage")

    def test_series_without_a_spread_is_not_in_the_mean(self, bench, revision):
        make_series(bench, revision, 420, [50], {"0.3": [10]})
        found = candidate_drift(bench, "AR-01", "bubble-count", age_h=24)
        assert found.pooled.k == 3
        assert [(point.series.number, point.pooled) for point in found.points][-1] == (420, False)
        assert "no spread to judge by" in found.points[-1].contrast.note

    def test_series_without_a_blank_stands_there_without_a_difference(self, bench, revision):
        make_series(bench, revision, 420, [], {"0.3": [10, 12]})
        point = candidate_drift(bench, "AR-01", "bubble-count", age_h=24).points[-1]
        assert (point.series.number, point.contrast, point.lone, point.middle) == (420, None, "no control", 11)

    def test_two_additives_in_one_cup_are_left_out(self, bench):
        for trial in Trial.objects.filter(series__number=419, part="treated"):
            dose(trial, make_candidate(f"AR-{trial.number:02}9"))
        found = candidate_drift(bench, "AR-01", "bubble-count", age_h=24)
        assert [point.series.number for point in found.points] == [417, 418]
        assert found.beside == 2

    def test_base_narrows_it_down(self, bench):
        other = make_epoxy_base(bench, "PU-F1")
        make_series(bench, other, 430, *FIRST)
        found = candidate_drift(bench, "AR-01", "bubble-count", base="PU-F1", age_h=24)
        assert [(point.series.number, point.base) for point in found.points] == [(430, "PU-F1")]

    def test_other_age_was_not_read(self, bench):
        assert candidate_drift(bench, "AR-01", "bubble-count", age_h=168).points == ()
        assert len(candidate_drift(bench, "AR-01", "bubble-count", age_h=None).points) == 3

    def test_restricted_series_does_not_count(self, bench, colleague):
        Series.objects.filter(number=418).update(restricted=True)
        found = candidate_drift(colleague, "AR-01", "bubble-count", age_h=24)
        assert ([point.series.number for point in found.points], found.pooled.k) == ([417, 419], 2)
        SeriesShare.objects.create(series=Series.objects.get(number=418), person=colleague)
        assert candidate_drift(colleague, "AR-01", "bubble-count", age_h=24).pooled.k == 3

    def test_more_series_than_are_drawn_is_said(self, bench, monkeypatch):
        monkeypatch.setattr(trends, "MOST_SERIES", 2)
        found = candidate_drift(bench, "AR-01", "bubble-count", age_h=24)
        assert ([point.series.number for point in found.points], found.more) == ([418, 419], True)


def test_grades_shift_by_their_median_and_have_no_mean(bench, revision):
    make_series(bench, revision, 417, [4, 5], {"0.3": [1, 2]}, key="bubbles")
    found = candidate_drift(bench, "AR-01", "bubbles", age_h=24)
    assert [(point.contrast.estimate, point.contrast.low, point.variance) for point in found.points] == [
        (-3, None, None)
    ]
    assert (found.pooled, found.unpooled[:6]) == (None, "Grades")


def test_air_is_reckoned_from_densities(bench, revision):
    series = make_series(bench, revision, 417, [1, 1], {"0.3": [1, 1]})
    series.common_batch.density_g_ml = Decimal("1.50")
    series.common_batch.save()
    for trial, density in zip(series.trials.order_by("number"), ("1.35", "1.38", "1.47", "1.485"), strict=True):
        WetReading.objects.create(trial=trial, quantity="density", where="A", value=Decimal(density), minutes=0)
    (point,) = candidate_drift(bench, "AR-01", "air-a", age_h=24).points
    # By hand, air = 1 − density / 1.50: 10 and 8 % in the blanks, 2 and 1 % in the treated cups.
    assert (point.contrast.control_middle, point.middle) == (pytest.approx(9.0), pytest.approx(1.5))
    assert point.contrast.estimate == pytest.approx(-7.5)


def test_of_several_films_the_one_meant_is_compared(bench, revision):
    series = make_series(bench, revision, 417, [80, 90], {"0.3": [20, 30]}, film_um=Decimal(2000))
    for trial in series.trials.all():
        rated(make_panel(trial, wet_um="4000"), bench, "bubble-count", 500)
    (point,) = candidate_drift(bench, "AR-01", "bubble-count", age_h=24).points
    assert (point.contrast.estimate, point.condition) == (pytest.approx(25 - 85), "fresh, 2000 µm")


class TestBlanks:
    @pytest.fixture(autouse=True)
    def _many(self, bench, revision):
        """Nine series about 80 with one lot of resin, then three about 140 with another."""
        values = (80, 84, 78, 82, 79, 83, 77, 81, 80, 140, 142, 139)
        for nth, value in enumerate(values):
            resin = "2201" if nth < 9 else "2302"
            make_series(bench, revision, 417 + nth, [value - 2, value + 2], {"0.3": [20]}, resin=resin)

    def test_one_value_for_each_series_with_its_batch_and_lots(self, bench):
        found = blank_chart(bench, "EP-F1", "bubble-count", age_h=24)
        assert [point.value for point in found.points] == [80, 84, 78, 82, 79, 83, 77, 81, 80, 140, 142, 139]
        point = found.points[9]
        assert (point.batch, point.resin, point.lots, point.cups) == (
            "A-426", "EP-F1-R 2302", "EP-F1-R 2302", ("426-1", "426-2"),
        )  # fmt: skip

    def test_new_lot_of_resin_that_shifts_the_blanks_shows(self, bench):
        found = blank_chart(bench, "EP-F1", "bubble-count", age_h=24)
        # By hand: moving ranges of 4+6+4+3+4+6+4+1+60+2+3 = 97 over 11; the limits are the mean ± 3 · 97/11/1.128.
        centre = 1145 / 12
        reach = 3 * 97 / 11 / 1.128
        assert (found.chart.centre, found.chart.upper) == (pytest.approx(centre), pytest.approx(centre + reach))
        signalled = {point.resin for point in found.points if "beyond a limit" in point.signals}
        assert signalled == {"EP-F1-R 2302"}
        assert found.points[8].signals == ("9 in a row on one side",)

    def test_lots_of_fillers_are_no_lots_of_resin(self, bench):
        batch = CommonBatch.objects.get(number="A-417")
        quartz = make_material("QZ-1", "filler")
        CommonBatchLot.objects.create(batch=batch, lot=Lot.objects.create(material=quartz, number="77"))
        point = blank_chart(bench, "EP-F1", "bubble-count", age_h=24).points[0]
        assert (point.resin, point.lots) == ("EP-F1-R 2201", "EP-F1-R 2201, QZ-1 77")

    def test_one_value_makes_no_chart(self, bench, revision):
        Series.objects.exclude(number=417).update(restricted=True, owner=bench)
        found = blank_chart(make_person("other", "bench"), "EP-F1", "bubble-count", age_h=24)
        assert (len(found.points), found.chart) == (1, None)

    def test_base_that_is_not_to_be_seen_has_no_points(self, bench, colleague):
        Base.objects.update(restricted=True)
        assert blank_chart(colleague, "EP-F1", "bubble-count", age_h=24).points == ()


class TestFailures:
    def _failed(self, actor, number, made_at, *modes):
        trial = make_cups(actor, number=number)[0]
        Trial.objects.filter(pk=trial.pk).update(made_at=made_at, state="read")
        for mode in modes:
            Failure.objects.create(trial=trial, mode=mode, severity=3)
        return trial

    def test_counts_by_kind_and_quarter_with_what_was_made(self, bench):
        self._failed(bench, 417, NOW, "craters", "haze")
        self._failed(bench, 418, NOW, "craters")
        self._failed(bench, 419, NOW - timedelta(days=90), "haze")
        self._failed(bench, 420, NOW - timedelta(days=90))
        self._failed(bench, 421, NOW - timedelta(days=180), "craters")
        found = failures_by_quarter(bench)
        assert [(quarter.name, quarter.trials) for quarter in found.quarters[-3:]] == [
            ("2025 Q3", 1), ("2025 Q4", 2), ("2026 Q1", 2),
        ]  # fmt: skip
        assert [(kind.mode, kind.counts[-3:], kind.total) for kind in found.kinds] == [
            ("craters", (1, 0, 2), 3),
            ("haze", (0, 1, 1), 2),
        ]
        assert (len(found.quarters), found.trials, found.most) == (8, 5, 2)

    def test_quarter_begins_and_ends_by_the_laboratorys_own_clock(self, bench):
        # 23:30 UTC on 31 March is 1:30 on 1 April in the laboratory.
        self._failed(bench, 417, NOW.replace(month=3, day=31, hour=23), "craters")
        quarter = failures_by_quarter(bench).quarters[-1]
        assert (quarter.name, quarter.begin, quarter.end) == ("2026 Q2", date(2026, 4, 1), date(2026, 6, 30))

    def test_restricted_does_not_count(self, bench, colleague):
        self._failed(bench, 417, NOW, "craters")
        Series.objects.update(restricted=True)
        assert failures_by_quarter(colleague).kinds == ()
        assert failures_by_quarter(bench).kinds != ()


def test_choices_are_what_the_person_may_see_the_most_used_first(bench, colleague, revision):
    make_series(bench, revision, 417, *FIRST)
    make_series(bench, revision, 418, *SECOND)
    other = make_epoxy_base(bench, "PU-F1", restricted=True)
    make_series(bench, other, 419, *THIRD, restricted=True)
    assert [(one.code, one.series) for one in tried_candidates(bench)] == [("AR-01", 3)]
    assert [(one.code, one.series) for one in tried_candidates(colleague)] == [("AR-01", 2)]
    assert [(one.code, one.series) for one in bases_in_use(bench)] == [("EP-F1", 2), ("PU-F1", 1)]
    assert [(one.code, one.series) for one in bases_in_use(colleague)] == [("EP-F1", 2)]


def test_air_is_called_here_what_it_is_called_where_it_is_reckoned(bench, revision):
    series = make_series(bench, revision, 417, *FIRST)
    for where in ("A", "mix"):
        WetReading.objects.create(trial=series.trials.first(), quantity="density", where=where, value=Decimal("1.2"))
    names = dict(watched())
    for key in trends.AIR:
        column = trends.columns(trends.load(Series.objects.all()), key, age_h=None)[series.pk]
        assert names[key] == column.measure.name


@pytest.mark.parametrize("series", [1, 3])
@pytest.mark.parametrize("key", ["bubble-count", "air-a"])
def test_queries_are_fixed_in_number(series, key, bench, revision, django_assert_max_num_queries):
    for nth in range(series):
        made = make_series(bench, revision, 417 + nth, *SECOND)
        for trial in made.trials.all():
            WetReading.objects.create(trial=trial, quantity="density", where="A", value=Decimal("1.2"))
    with django_assert_max_num_queries(30) as drift:
        assert len(candidate_drift(bench, "AR-01", key, age_h=24).points) == series
    with django_assert_max_num_queries(30) as blanks:
        assert len(blank_chart(bench, "EP-F1", key, age_h=24).points) == series
    assert (len(drift), len(blanks)) == {"bubble-count": (16, 16), "air-a": (13, 13)}[key]
