"""Desirability: NIST/SEMATECH e-Handbook 5.5.3.2.2; Derringer and Suich, J. Quality Technology 12 (1980) 214."""

import pytest
from scipy.stats import gmean

from tests.standards.printed import printed
from trials.science import desirability as d


def test_tyre_tread_optimum_of_the_paper():
    # limits of the first three as printed; the values and the limits of the fourth from memory
    parts = [
        d.larger(129.5, 120.0, 170.0),
        d.larger(1300.0, 1000.0, 1300.0),
        d.target(465.7, 400.0, 500.0, 600.0),
        d.target(68.0, 60.0, 67.5, 75.0),
    ]
    assert parts == [printed("0.19"), printed("1"), printed("0.657"), printed("0.9333")]
    mark = d.overall(parts)
    assert mark == printed("0.58424")
    assert mark == pytest.approx(0.583, abs=2e-3)  # the paper, from unrounded values
    assert mark == pytest.approx(gmean(parts))


@pytest.mark.parametrize(
    ("air_pct", "haze", "crater", "equal", "air_twice"),
    [
        # an invented ladder, worked out by hand: air at most 2 to 10, haze 10 to 60, craters 0 to 2
        (9.4, 11.0, 0.0, "0.418886", "0.272482"),
        (6.9, 14.0, 0.0, "0.709066", "0.609653"),
        (4.25, 22.0, 0.5, "0.742707", "0.736644"),
        (3.9, 48.0, 1.5, "0.357655", "0.432173"),
        (3.8, 70.0, 2.0, "0", "0"),
    ],
)
def test_a_dosage_ladder(air_pct, haze, crater, equal, air_twice):
    parts = [d.smaller(air_pct, 2.0, 10.0), d.smaller(haze, 10.0, 60.0), d.smaller(crater, 0.0, 2.0)]
    assert d.overall(parts) == printed(equal)
    assert d.overall(parts, weights=[2.0, 1.0, 1.0]) == printed(air_twice)


def test_a_weight_above_one_is_stricter():
    assert d.larger(145.0, 120.0, 170.0, weight=2.0) == printed("0.25")
    assert d.larger(145.0, 120.0, 170.0) == printed("0.5")
