"""Precision of a method and outliers, held to ISO 5725-2, certified data and printed limits."""

from pathlib import Path

import numpy as np
import pytest
import scipy.stats

from trials.science.precision import cochran, grubbs, precision

# Sulphur in coal, ISO 5725-2:1994, annex B.1 (data typed from memory; they give the published pairs).
SULPHUR_1 = [
    [0.71, 0.71, 0.70, 0.71],
    [0.69, 0.67, 0.68],
    [0.66, 0.65, 0.69],
    [0.67, 0.65, 0.66],
    [0.70, 0.69, 0.66, 0.71, 0.69],
    [0.73, 0.74, 0.73],
    [0.71, 0.71, 0.69],
    [0.70, 0.65, 0.68],
]
SULPHUR_3 = [
    [1.68, 1.70, 1.68, 1.69],
    [1.64, 1.64, 1.65],
    [1.61, 1.61, 1.62],
    [1.68, 1.66, 1.66],
    [1.64, 1.67, 1.60, 1.66, 1.68],
    [1.70, 1.73, 1.73],
    [1.69, 1.70, 1.68],
    [1.67, 1.68, 1.67],
]


def certified(name):
    """Groups of a NIST StRD analysis of variance, from the files that SciPy ships for its own tests."""
    path = Path(scipy.stats.__file__).parent / "tests" / "data" / "nist_anova" / f"{name}.dat"
    if not path.exists():
        pytest.skip(f"this SciPy comes without its test data: {path.name}")
    rows = np.loadtxt(path, skiprows=60)
    return [rows[rows[:, 0] == group, 1] for group in np.unique(rows[:, 0])]


@pytest.mark.parametrize(
    ("groups", "mean", "s_r", "s_R", "published"),
    [
        (SULPHUR_1, 0.69037, 0.015117, 0.026364, (0.690, 0.015, 0.026)),
        (SULPHUR_3, 1.667407, 0.017078, 0.034768, (1.667, 0.017, 0.035)),
    ],
)
def test_sulphur_in_coal(groups, mean, s_r, s_R, published):
    found = precision(groups)
    assert found.mean == pytest.approx(mean, abs=1e-5)
    assert (found.s_r, found.s_R) == pytest.approx((s_r, s_R), abs=1e-6)
    # As published in the standard (from memory).
    assert tuple(round(value, 3) for value in (found.mean, found.s_r, found.s_R)) == published
    assert found.n_bar == pytest.approx(3.354497, abs=1e-6)
    assert not found.between_set_to_zero


def test_limits_of_sulphur_in_coal():
    found = precision(SULPHUR_1)
    assert (found.r, found.R) == pytest.approx((0.0423, 0.0738), abs=5e-5)


def test_published_limits_are_2_8_standard_deviations():
    # Total sulphur in aggregates, a public table of a building research body: s, and r or R beside it. The limits
    # were rounded from unrounded deviations, hence the tolerance of half a unit of s in the third place.
    for s, limit in [(0.021, 0.059), (0.042, 0.118), (0.047, 0.131), (0.057, 0.160), (0.137, 0.383), (0.102, 0.284)]:
        pair = [10.0 - s / 2**0.5, 10.0 + s / 2**0.5]
        assert precision([pair, pair]).r == pytest.approx(limit, abs=2.8 * 0.0005 + 0.0005)


@pytest.mark.parametrize(
    ("name", "s", "f", "digits"),
    [
        # NIST StRD, certified residual standard deviation and F. The second figure needs the differences of
        # numbers with 7 and 13 leading digits alike, where a double itself has lost digits.
        ("SiRstv", 0.104076068334656, 1.18046237440255, 1e-9),
        ("SmLs01", 0.1, 21.0, 1e-10),
        ("SmLs04", 0.1, 21.0, 1e-7),
        ("SmLs07", 0.1, 21.0, 1e-2),
    ],
)
def test_within_and_between_groups_of_certified_data(name, s, f, digits):
    groups = certified(name)
    found = precision(groups)
    assert found.s_r == pytest.approx(s, rel=digits)
    # F = 1 + n s_L² / s_r² for groups of one size n.
    assert 1 + len(groups[0]) * (found.s_L / found.s_r) ** 2 == pytest.approx(f, rel=digits)


def test_negative_variance_between_groups_is_set_to_zero():
    # By hand: equal means, so s_d² = 0 and s_L² = −s_r²/n̄ (ISO 5725-2: set to 0).
    found = precision([[9.0, 11.0], [8.0, 12.0]])
    assert found.between_set_to_zero
    assert found.s_L == 0.0
    assert found.s_R == found.s_r == pytest.approx(5**0.5)


@pytest.mark.parametrize(
    ("n", "critical_5", "critical_1"),
    # Printed in LibreTexts Analytic References, appendix 07, within 0.001 (its row n = 7 is garbled).
    [(3, 1.1543, 1.1547), (5, 1.7150, 1.7637), (7, 2.020, 2.139), (8, 2.1266, 2.2744), (10, 2.2900, 2.4821)],
)
def test_grubbs_limits(n, critical_5, critical_1):
    found = grubbs(range(n))
    assert (found.critical_5, found.critical_1) == pytest.approx((critical_5, critical_1), abs=6e-4)


@pytest.mark.parametrize(
    ("groups", "n", "critical_5", "critical_1"),
    # ISO 5725-2:1994, table 4, gives three digits of these (from memory); four by the F formula.
    [(8, 3, 0.5157, 0.6152), (10, 2, 0.6020, 0.7175), (5, 3, 0.6838, 0.7885), (6, 2, 0.7807, 0.8828)],
)
def test_cochran_limits(groups, n, critical_5, critical_1):
    found = cochran([range(n)] * groups)
    assert (found.critical_5, found.critical_1) == pytest.approx((critical_5, critical_1), abs=6e-5)


def test_cochran_statistic_by_hand():
    # Variances 0.5, 2 and 8: 8 / 10.5.
    found = cochran([[1.0, 2.0], [1.0, 3.0], [1.0, 5.0]])
    assert (found.index, found.statistic) == (2, pytest.approx(8 / 10.5))
