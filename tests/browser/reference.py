"""What SciPy and statsmodels say about the same numbers, called on them directly."""

from collections.abc import Sequence
from typing import NamedTuple

import numpy as np
from scipy import stats
from statsmodels.stats.multitest import multipletests

EVERY_ARRANGEMENT = stats.PermutationMethod(n_resamples=np.inf)


class Compared(NamedTuple):
    """``low`` or ``high`` is None where a one-sided comparison has no bound."""

    estimate: float
    low: float | None
    high: float | None
    p: float


def dunnett(control: Sequence[float], treated: Sequence[Sequence[float]], side: str) -> list[Compared]:
    """``scipy.stats.dunnett``; its integrals are random, to about 1e-3 in p and 1 % of the reach of an interval."""
    found = stats.dunnett(*treated, control=control, alternative=side, rng=np.random.default_rng(2026))
    bounds = found.confidence_interval(0.95)
    return [
        Compared(float(np.mean(one) - np.mean(control)), _bound(low), _bound(high), float(p))
        for one, low, high, p in zip(treated, bounds.low, bounds.high, found.pvalue, strict=True)
    ]


def exact_ranks(control: Sequence[float], treated: Sequence[Sequence[float]], side: str) -> list[float]:
    """p of ``scipy.stats.mannwhitneyu`` over every arrangement of the ties, after Holm by statsmodels."""
    single = [stats.mannwhitneyu(one, control, alternative=side, method=EVERY_ARRANGEMENT).pvalue for one in treated]
    return list(multipletests(single, method="holm")[1])


def median_shift(control: Sequence[float], one: Sequence[float]) -> float:
    """After Hodges and Lehmann: the median of all differences between a treated cup and one of the control."""
    return float(np.median(np.subtract.outer(one, control)))


def _bound(value: float) -> float | None:
    return float(value) if np.isfinite(value) else None
