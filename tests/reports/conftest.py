"""A ladder as the bench leaves it, asked for by a customer whose name is withheld outside."""

from datetime import date

import pytest

from tests.judged_series import ladder_series, rate
from tests.making import NOW
from trials.models import Criterion, Enquiry, Limit
from trials.queries.series import load_series
from trials.reports.series import series_report

CUSTOMER = "Halden Quay Floors"


@pytest.fixture
def enquiry(supervisor):
    enquiry = Enquiry.objects.create(
        number=31, subject="Bubbles in the hall floor", customer=CUSTOMER, withheld=True, field="floor",
        asked=f"{CUSTOMER} sees foam at 2 mm.", received=date(2026, 2, 1), owner=supervisor,
    )  # fmt: skip
    Limit.objects.create(
        enquiry=enquiry, criterion=Criterion.objects.get(key="bubble-count", current=True), limit=3, force="must"
    )
    return enquiry


@pytest.fixture
def series(bench, enquiry):
    """Sixteen treated cups and four blanks with densities; bubbles counted on three cups of the highest dosage."""
    series = ladder_series(bench, question="How much of AR-01?", enquiry=enquiry)
    for number in (1, 2, 3):
        rate(series.trials.get(number=number), bench, "bubble-count", 40)
        rate(series.trials.get(number=16 + number), bench, "bubble-count", 1)
    return series


@pytest.fixture
def report_of(series):
    """The report of the series as somebody would print it now."""

    def made(person, **how):
        return series_report(load_series(person, series.number), person, now=NOW, **how)

    return made
