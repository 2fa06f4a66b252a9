"""The four-parameter log-logistic curve of a response over the dosage, and when not to believe it."""

import math
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
import scipy  # its submodules load on first use, so that the web server starts without them

from trials.science._groups import as_values
from trials.science._refuse import between, finite_array, same_length
from trials.science.curve import STEEPEST, Curve, least_squares, profile_rss, standard_errors
from trials.science.pure_error import FTest, against_pure_error

# How far beyond the dosages, in natural logarithms, a bound is looked for.
BEYOND = 5.0
# A plateau counts as seen when the outermost dosage comes within this share of the whole change.
PLATEAU = 0.1


@dataclass(frozen=True, slots=True)
class LogisticFit:
    """f(x) = lower + (upper − lower) / (1 + exp(slope · (ln x − ln midpoint))).

    A positive slope falls with dosage, a negative one rises. ``standard_errors`` come in the order slope, lower,
    upper, midpoint. Where the cups cannot carry a curve at all, the parameters are None and ``reason`` says why.
    """

    slope: float | None
    lower: float | None
    upper: float | None
    midpoint_pct: float | None
    standard_errors: tuple[float, float, float, float] | None
    rss: float | None
    s: float | None
    df: int
    believable: bool
    reason: str
    dosage_pct: tuple[float, ...]
    response: tuple[float, ...]


@dataclass(frozen=True, slots=True)
class Interval:
    """A dosage in per cent. A bound is None where the cups give none."""

    estimate_pct: float | None
    low_pct: float | None
    high_pct: float | None
    level: float
    note: str


def fit(dosage_pct: Sequence[float], response: Sequence[float]) -> LogisticFit:
    """Least squares from several starts; the same cups always give the same curve.

    Parameters
    ----------
    dosage_pct : array_like, shape (n,)
        Dosage of each cup, per cent, not negative; blanks are 0.
    response : array_like, shape (n,)
        Value of each cup, any unit.

    Returns
    -------
    LogisticFit
        ``believable`` is False, with the reason, for fewer than four different dosages or five cups, no change
        beyond the scatter, a midpoint outside the dosages, a plateau not reached, a steepness that the dosages
        do not determine, or a curve that misses the dosage means.

    Raises
    ------
    ValueError
        For columns of different length, a negative dosage or values that are not finite.

    References
    ----------
    C. Ritz, F. Baty, J. C. Streibig, D. Gerhard, PLoS ONE 10 (2015) e0146021.

    Examples
    --------
    >>> dosage = [0, 0, 0.1, 0.1, 0.2, 0.2, 0.4, 0.4, 0.8, 0.8]
    >>> found = fit(dosage, [9.9, 10.1, 9.0, 9.2, 6.4, 6.2, 3.1, 3.3, 2.2, 2.0])
    >>> round(found.midpoint_pct, 3), found.believable
    (0.214, True)
    """
    x, y = _columns(dosage_pct, response)
    data = {"dosage_pct": tuple(x.tolist()), "response": tuple(y.tolist()), "df": y.size - 4}
    trouble = _too_little(x, y)
    if trouble:
        return LogisticFit(None, None, None, None, None, None, None, believable=False, reason=trouble, **data)
    centre, scale = float(y.mean()), float(np.ptp(y))
    curve = least_squares(x, (y - centre) / scale)
    residual = (y - centre) / scale - curve.at(x)
    rss = float(residual @ residual)
    s = math.sqrt(rss / data["df"])
    errors = standard_errors(curve, x, s)
    reason = _doubt(x, y, curve, residual, errors)
    # A curve that rises is the same formula with a negative slope and the plateaus in each other's place.
    falls = curve.start >= curve.end
    upper, lower = (curve.start, curve.end) if falls else (curve.end, curve.start)
    return LogisticFit(
        slope=curve.steep if falls else -curve.steep,
        lower=centre + scale * lower,
        upper=centre + scale * upper,
        midpoint_pct=curve.midpoint,
        standard_errors=errors and _in_units(errors, scale, falls=falls),
        rss=rss * scale**2,
        s=s * scale,
        believable=not reason,
        reason=reason,
        **data,
    )


def dosage_for(fit: LogisticFit, effect_pct: float, *, level: float = 0.95) -> Interval:
    """Dosage that gives a share of the whole change, with its profile likelihood interval.

    Parameters
    ----------
    fit : LogisticFit
        From `fit`.
    effect_pct : float
        Share of the change from the plateau without additive to the other plateau, 0.01 to 99.99 per cent; 50
        is the midpoint.
    level : float
        Confidence, 0.5 to 0.9999.

    Returns
    -------
    Interval
        Per cent dosage. A bound is None, with a note, where no dosage near those tested is excluded.

    Raises
    ------
    ValueError
        For an effect or a level out of range.

    References
    ----------
    D. M. Bates, D. G. Watts, Nonlinear Regression Analysis and Its Applications (1988), section 6.1.

    Examples
    --------
    >>> dosage = [0, 0, 0.1, 0.1, 0.2, 0.2, 0.4, 0.4, 0.8, 0.8]
    >>> curve = fit(dosage, [9.9, 10.1, 9.0, 9.2, 6.4, 6.2, 3.1, 3.3, 2.2, 2.0])
    >>> found = dosage_for(curve, 50)
    >>> round(found.low_pct, 3), round(found.estimate_pct, 3), round(found.high_pct, 3)
    (0.203, 0.214, 0.228)
    """
    effect = between("effect_pct", effect_pct, 0.01, 99.99)
    level = between("level", level, 0.5, 0.9999)
    if fit.midpoint_pct is None:
        return Interval(None, None, None, level, fit.reason)
    logit = math.log(effect / (100.0 - effect))
    log_estimate = math.log(fit.midpoint_pct) + logit / abs(fit.slope)
    x, y = np.array(fit.dosage_pct), np.array(fit.response)
    tested = np.log(x[x > 0.0])
    ends = (min(tested.min(), log_estimate) - BEYOND, max(tested.max(), log_estimate) + BEYOND)
    low, high = _profile_bounds(x, y, log_estimate, logit, ends=ends, level=level)
    notes = [] if fit.believable else [f"The curve is not to be believed: {fit.reason}"]
    if not tested.min() <= log_estimate <= tested.max():
        notes.append("Outside the dosages tested.")
    if low is None or high is None:
        notes.append("The cups exclude no dosage on the open side.")
    return Interval(math.exp(log_estimate), low, high, level, " ".join(notes))


def lack_of_fit_of(fit: LogisticFit) -> FTest:
    """The curve against pure error: a small p says that it misses the dosage means by more than scatter.

    Parameters
    ----------
    fit : LogisticFit
        From `fit`.

    Returns
    -------
    FTest
        None as statistic and p where there is no curve, no repeated dosage, or fewer than five dosages.

    Examples
    --------
    >>> dosage = [0, 0, 0.1, 0.1, 0.2, 0.2, 0.4, 0.4, 0.8, 0.8]
    >>> found = lack_of_fit_of(fit(dosage, [9.9, 10.1, 9.0, 9.2, 6.4, 6.2, 3.1, 3.3, 2.2, 2.0]))
    >>> found.df, found.p > 0.05
    ((1, 5), True)
    """
    x, y = np.array(fit.dosage_pct), np.array(fit.response)
    if fit.midpoint_pct is None:
        return FTest(None, (0, 0), None, fit.reason)
    start, end = (fit.upper, fit.lower) if fit.slope > 0 else (fit.lower, fit.upper)
    curve = Curve(abs(fit.slope), math.log(fit.midpoint_pct), start, end)
    return against_pure_error(x, y, curve.at(x), parameters=4)


def _columns(dosage_pct: Sequence[float], response: Sequence[float]) -> tuple[np.ndarray, np.ndarray]:
    x = finite_array("dosage_pct", dosage_pct, low=0.0)
    if x.max() > 100.0:
        raise ValueError(f"dosage_pct[{x.argmax()}] must be at most 100; got {x.max()}")
    y = as_values("response", response)
    same_length(dosage_pct=x, response=y)
    return x, y


def _too_little(x: np.ndarray, y: np.ndarray) -> str:
    different = np.unique(x).size
    if different < 4:
        return f"A curve needs at least 4 different dosages, the blank counted; there are {different}."
    if y.size < 5:
        return f"A curve of four parameters needs at least 5 cups; there are {y.size}."
    if np.ptp(y) <= max(1e-12 * np.abs(y).max(), 1e-150):
        return "All cups are equal: nothing changes with dosage."
    return ""


def _doubt(x: np.ndarray, y: np.ndarray, curve: Curve, residual: np.ndarray, errors: tuple[float, ...] | None) -> str:
    """The first reason not to believe the curve, the gravest first."""
    scaled = residual + curve.at(x)
    if not _beyond_scatter(scaled, residual):
        return "The cups change no more with dosage than they scatter."
    plateaus = _outside_the_tested(x, curve)
    if curve.steep > 0.99 * STEEPEST or errors is None:
        return plateaus or "The change falls between two neighbouring dosages: its steepness is not determined."
    if not plateaus and (errors[0] > curve.steep or errors[3] > curve.midpoint):
        return "The dosages tested do not determine the curve: its errors exceed its parameters."
    miss = against_pure_error(x, scaled, curve.at(x), parameters=4)
    if not plateaus and miss.p is not None and miss.p < 0.05:
        return f"The curve misses the dosage means by more than the cups scatter (p = {miss.p:.2g})."
    return plateaus


def _outside_the_tested(x: np.ndarray, curve: Curve) -> str:
    tested = x[x > 0.0]
    changed, reached = 1.0 - curve.share(np.array([tested.min(), x.max()]))
    if not tested.min() <= curve.midpoint <= tested.max():
        return f"The midpoint, {curve.midpoint:.2g} %, lies outside the dosages tested."
    if reached < 1.0 - PLATEAU:
        return f"The plateau at high dosage is not reached: {x.max():g} % gives {100 * reached:.0f} % of it."
    if x.min() > 0.0 and changed > PLATEAU:
        return "The plateau without additive is not reached, and there is no blank."
    return ""


def _beyond_scatter(y: np.ndarray, residual: np.ndarray) -> bool:
    df = y.size - 4
    rss, total = float(residual @ residual), float(np.sum((y - y.mean()) ** 2))
    if rss <= 1e-20 * total:
        return True
    return bool(scipy.special.fdtrc(3, df, max(0.0, (total - rss) / 3.0) / (rss / df)) < 0.05)


def _in_units(errors: tuple[float, ...], scale: float, *, falls: bool) -> tuple[float, float, float, float]:
    steep, start, end, midpoint = errors
    upper, lower = (start, end) if falls else (end, start)
    return steep, lower * scale, upper * scale, midpoint


def _profile_bounds(
    x: np.ndarray, y: np.ndarray, log_estimate: float, logit: float, *, ends: tuple[float, float], level: float
) -> tuple[float | None, float | None]:
    y = (y - y.mean()) / np.ptp(y)
    df = y.size - 4
    best = profile_rss(x, y, log_estimate, logit)
    if best <= 1e-20 * y.size:
        return math.exp(log_estimate), math.exp(log_estimate)
    limit = best * (1.0 + float(scipy.special.stdtrit(df, 0.5 + level / 2.0)) ** 2 / df)
    bounds = []
    for end in ends:
        inside, outside = log_estimate, None
        for step in np.linspace(log_estimate, end, 41)[1:]:
            if profile_rss(x, y, step, logit) > limit:
                outside = step
                break
            inside = step
        bounds.append(
            outside
            and math.exp(
                scipy.optimize.brentq(lambda at: profile_rss(x, y, at, logit) - limit, inside, outside, xtol=1e-9)
            )
        )
    return bounds[0], bounds[1]
