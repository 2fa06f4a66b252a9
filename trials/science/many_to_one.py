"""The joint distribution of several treatments compared with one control (Dunnett).

With means of independent normal values, the statistics T_i share the control's mean and the pooled standard
deviation. Given both, they are independent: T_i = (λ_i U + √(1 − λ_i²) E_i) / S, λ_i² = n_i / (n_i + n_0),
U and E_i standard normal, S² = χ²/df. What is left is a double integral over U and ln S. Both integrands are
smooth and die off at both ends, where equal steps converge exponentially: a few thousand nodes give eight
digits, and the same input always gives the same answer.
"""

import math
from collections.abc import Sequence

import numpy as np
import scipy  # its submodules load on first use, so that the web server starts without them

# Mass of the distributions left out at each end.
TAIL = 1e-13


def exceedance(critical: float, loadings: Sequence[float], df: float, *, two_sided: bool) -> float:
    """Probability that at least one T_i lies above ``critical`` (two-sided: outside ± ``critical``).

    Parameters
    ----------
    critical : float
        Limit on the t scale.
    loadings : sequence of float
        λ_i = √(n_i / (n_i + n_0)), each between 0 and 1, one for each treatment.
    df : float
        Degrees of freedom of the pooled standard deviation, at least 1.
    two_sided : bool
        Whether both tails count.

    Returns
    -------
    float
        Between 0 and 1.

    References
    ----------
    C. W. Dunnett, "A multiple comparison procedure for comparing several treatments with a control",
    J. Am. Stat. Assoc. 50 (1955) 1096-1121.

    Examples
    --------
    Dunnett's printed one-sided 5 % point for three treatments and 16 degrees of freedom is 2.23:

    >>> round(exceedance(2.2271, [0.5**0.5] * 3, 16, two_sided=False), 4)
    0.05
    """
    if len(loadings) == 1:
        tail = float(scipy.special.stdtr(df, -critical))
        return min(1.0, 2.0 * tail) if two_sided else tail
    loading, count = np.unique(np.asarray(loadings, dtype=float), return_counts=True)
    residual = np.sqrt(1.0 - loading**2)
    s, s_weight = _spread_nodes(df)
    u, u_weight = _control_nodes(float(np.sum(count * (loading / residual) ** 2)))
    limit = critical * s[:, None, None]
    shared = loading * u[:, None]
    outside = scipy.special.ndtr((shared - limit) / residual)
    if two_sided:
        outside += scipy.special.ndtr((-limit - shared) / residual)
    # log1p and expm1 keep the digits of small probabilities, which 1 − Π would lose.
    with np.errstate(divide="ignore"):
        missed = np.log1p(-np.minimum(outside, 1.0)) @ count
    return float(min(1.0, max(0.0, s_weight @ -np.expm1(missed) @ u_weight)))


def critical_value(level: float, loadings: Sequence[float], df: float, *, two_sided: bool) -> float:
    """The limit that all T_i respect together with probability ``level`` (between 0 and 1, ends excluded).

    Examples
    --------
    >>> round(critical_value(0.95, [0.5**0.5] * 4, 20, two_sided=True), 3)
    2.651
    """
    alpha = 1.0 - level
    tail = alpha / 2.0 if two_sided else alpha
    # One comparison alone needs less than this, and Bonferroni's inequality never more.
    low = float(scipy.special.stdtrit(df, 1.0 - tail))
    high = float(scipy.special.stdtrit(df, 1.0 - tail / len(loadings)))
    if len(loadings) == 1:
        return low

    def above(limit: float) -> float:
        return exceedance(limit, loadings, df, two_sided=two_sided) - alpha

    span = 1e-6 * max(1.0, abs(high))
    return float(scipy.optimize.brentq(above, low - span, high + span, xtol=1e-10, rtol=1e-10))


def shown(limit: float, shift: float, df: float, *, two_sided: bool) -> float:
    """Probability that one statistic passes ``limit`` where the true difference is ``shift`` standard errors.

    Examples
    --------
    >>> round(shown(2.0244, 0.5 * 10**0.5, 38, two_sided=True), 3)
    0.338
    """
    s, s_weight = _spread_nodes(df, steepness=shift)
    beyond = scipy.special.ndtr(shift - limit * s)
    if two_sided:
        beyond += scipy.special.ndtr(-shift - limit * s)
    return float(min(1.0, max(0.0, s_weight @ beyond)))


def _spread_nodes(df: float, *, steepness: float = 1.0) -> tuple[np.ndarray, np.ndarray]:
    half = df / 2.0
    ends = scipy.special.gammaincinv(half, TAIL), scipy.special.gammainccinv(half, TAIL)
    low, high = (0.5 * math.log(end / half) for end in ends)
    nodes = _steps(low, high, min(0.2, 0.8 / math.sqrt(2.0 * df), 0.4 / max(1.0, steepness)))
    density = np.exp(df * (nodes - 0.5 * np.expm1(2.0 * nodes)))
    return np.exp(nodes), density / density.sum()


def _control_nodes(size_ratio: float) -> tuple[np.ndarray, np.ndarray]:
    # A small control beside many treated cups makes the inner product steep in U.
    nodes = _steps(-8.0, 8.0, 0.84 / math.sqrt(1.0 + size_ratio))
    density = np.exp(-0.5 * nodes**2)
    return nodes, density / density.sum()


def _steps(low: float, high: float, step: float) -> np.ndarray:
    return np.linspace(low, high, math.ceil((high - low) / step) + 1)
