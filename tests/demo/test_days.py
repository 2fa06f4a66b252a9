from datetime import date, timedelta

import pytest

from trials.demo.days import Days

WEEK = [date(2026, 3, 2) + timedelta(days=step) for step in range(7)]


@pytest.mark.parametrize("until", WEEK)
def test_bench_days_run_from_monday_to_thursday(until):
    days = Days(until)
    assert {days.bench_day(ago).weekday() for ago in range(30)} == {0, 1, 2, 3}
    assert all(days.bench_day(ago) < until for ago in range(1, 30))


@pytest.mark.parametrize("until", WEEK)
def test_what_is_planned_lies_ahead_and_was_planned_before(until):
    days = Days(until)
    planned = days.bench_day(0)
    assert until <= planned <= until + timedelta(days=3)
    assert not days.happened(days.moment(planned, "08:00"))
    assert days.happened(days.moment(days.before(min(planned, until)), "16:10"))


def test_an_hour_is_an_hour_when_the_clocks_change():
    days = Days(date(2026, 4, 1))
    poured = days.moment(date(2026, 3, 26), "13:40")
    assert days.moment(date(2026, 3, 26), "13:40", hours=168) - poured == timedelta(hours=168)
