"""A judged series against SciPy on the same numbers, and what a page must never claim."""

from decimal import Decimal

import numpy as np
import pytest
from scipy import stats

from tests.judged_series import LADDER, add_cup, empty_series, judge_by, ladder_series, rate
from tests.series_making import make_candidate
from trials.models import Criterion, Enquiry, Limit
from trials.queries.judging import judgement

pytestmark = pytest.mark.django_db

BLANK, *TREATED = (np.array([float(value) for value in cups]) for cups in LADDER.values())


def _air(found):
    return {row.cell.group.label: row.cell for row in found.table("air-a:fresh").rows}


def test_differences_are_those_of_scipy(bench):
    """SciPy ``stats.dunnett`` on the same values: a randomized integral, so its own noise is the tolerance."""
    found = judgement(ladder_series(bench).pk, bench)
    cells = _air(found)
    wanted = stats.dunnett(*TREATED, control=BLANK, rng=np.random.default_rng(5))
    interval = wanted.confidence_interval(0.95)
    for nth, dosage in enumerate(("0.1", "0.2", "0.3", "0.5")):
        contrast = cells[f"AR-01 {dosage} %"].blank
        assert contrast.estimate == pytest.approx(TREATED[nth].mean() - BLANK.mean(), abs=1e-9)
        assert contrast.p == pytest.approx(wanted.pvalue[nth], abs=2e-4)
        assert (contrast.low, contrast.high) == pytest.approx((interval.low[nth], interval.high[nth]), abs=5e-3)
        assert (contrast.n, contrast.n_control) == (4, 4)


def test_lowest_dosage_hangs_on_the_declared_side(bench):
    """Exact integrals of Dunnett's distribution (SciPy, converged): 0.073148 two-sided, 0.036625 one-sided."""
    series = ladder_series(bench)
    two = _air(judgement(series.pk, bench))["AR-01 0.1 %"].blank
    one = _air(judgement(series.pk, bench, declared=True))["AR-01 0.1 %"].blank
    assert (two.side, one.side) == ("two-sided", "less")
    assert two.p == pytest.approx(0.073148, abs=2e-5)
    assert one.p == pytest.approx(0.036625, abs=2e-5)
    assert (two.says, one.says) == ("not shown", "better")


def test_window_names_its_rules(bench):
    (found,) = judgement(ladder_series(bench).pk, bench).windows
    lowest = {reach.rule: reach.lowest.dosage_pct for reach in found.reaches}
    assert lowest == {"no worse than best": 0.3, "target": 0.2, "step down": 0.2}
    assert (found.window.from_pct, found.window.to_pct) == (0.3, 0.5)
    assert found.onset.reason == "No compatibility criterion was read on the ladder and its blanks."


def test_change_is_in_per_cent_of_the_blank(bench):
    cells = _air(judgement(ladder_series(bench).pk, bench))
    changes = [cells[f"AR-01 {dosage} %"].blank.change_pct for dosage in ("0.1", "0.2", "0.3", "0.5")]
    assert changes == pytest.approx([-7.18, -31.93, -57.92, -61.14], abs=0.005)
