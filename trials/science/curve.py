"""The shape behind the four-parameter fit: its values, its best parameters and how firmly they are held."""

import math
from dataclasses import dataclass

import numpy as np
import scipy  # its submodules load on first use, so that the web server starts without them

# Steeper than this, a curve is a step between two neighbouring dosages; flatter, no plateau is in sight.
FLATTEST, STEEPEST = 0.1, 60.0
# How far beyond the dosages, in natural logarithms, the midpoint is looked for.
BEYOND = 3.0
STARTS = 3


@dataclass(frozen=True, slots=True)
class Curve:
    """``start`` is the value without additive, ``end`` the one at very high dosage, ``steep`` is positive."""

    steep: float
    log_midpoint: float
    start: float
    end: float

    @property
    def midpoint(self) -> float:
        return math.exp(self.log_midpoint)

    def share(self, x: np.ndarray) -> np.ndarray:
        """What is left of the value without additive, 1 at dosage 0."""
        return _share(_log(x), self.steep, self.log_midpoint)

    def at(self, x: np.ndarray) -> np.ndarray:
        return self.end + (self.start - self.end) * self.share(x)


def least_squares(x: np.ndarray, y: np.ndarray) -> Curve:
    """Best curve for dosages ``x`` (not negative) and values ``y`` of a range near 1."""
    log_x = _log(x)
    tested = log_x[x > 0.0]
    low = (math.log(FLATTEST), max(tested.min() - BEYOND, -690.0))
    high = (math.log(STEEPEST), tested.max() + BEYOND)
    found = [_refine(log_x, y, start, low, high) for start in _starts(log_x, y, low, high)]
    return min(found, key=lambda pair: pair[0])[1]


def standard_errors(curve: Curve, x: np.ndarray, s: float) -> tuple[float, float, float, float] | None:
    """Of steepness, start, end and midpoint; None where the cups do not tell them apart."""
    log_x = _log(x)
    jacobian = _jacobian(log_x, np.array([math.log(curve.steep), curve.log_midpoint, curve.start, curve.end]))
    lengths = np.sqrt(np.sum(jacobian**2, axis=0))
    if lengths.min() < 1e-10:
        return None
    _, singular, rotation = np.linalg.svd(jacobian / lengths, full_matrices=False)
    if singular.min() < 1e-7 * singular.max():
        return None
    steep, midpoint, start, end = s * np.sqrt(np.sum((rotation.T / singular) ** 2, axis=1)) / lengths
    return float(steep * curve.steep), float(start), float(end), float(midpoint * curve.midpoint)


def profile_rss(x: np.ndarray, y: np.ndarray, log_dosage: float, logit: float) -> float:
    """Smallest sum of squares of all curves that reach the effect of this logit at this dosage."""
    log_x = _log(x)

    def rss(log_steep: np.ndarray) -> np.ndarray:
        steep = np.exp(np.atleast_1d(log_steep))[:, None]
        return _best_plateaus(_share(log_x, steep, log_dosage - logit / steep), y)

    grid = np.linspace(math.log(FLATTEST), math.log(STEEPEST), 49)
    tried = rss(grid)
    best = int(tried.argmin())
    around = (grid[max(best - 1, 0)], grid[min(best + 1, grid.size - 1)])
    nearest = scipy.optimize.minimize_scalar(
        lambda log_steep: float(rss(log_steep)[0]), bounds=around, method="bounded", options={"xatol": 1e-6}
    )
    return min(float(tried[best]), float(nearest.fun))


def _log(x: np.ndarray) -> np.ndarray:
    return np.log(x, out=np.full(x.shape, -np.inf), where=x > 0.0)


def _share(log_x: np.ndarray, steep: np.ndarray | float, log_midpoint: np.ndarray | float) -> np.ndarray:
    return scipy.special.expit(-steep * (log_x - log_midpoint))


def _best_plateaus(share: np.ndarray, y: np.ndarray) -> np.ndarray:
    """Sum of squares when start and end are the best for each row of shares: a straight line in the share."""
    centred = share - share.mean(axis=1, keepdims=True)
    moved = y - y.mean()
    sxx, sxy = np.sum(centred**2, axis=1), centred @ moved
    gain = np.divide(sxy**2, sxx, out=np.zeros_like(sxx), where=sxx > 1e-20)
    return np.maximum(moved @ moved - gain, 0.0)


def _starts(
    log_x: np.ndarray, y: np.ndarray, low: tuple[float, float], high: tuple[float, float]
) -> list[tuple[float, float]]:
    log_steeps = np.linspace(low[0] + 0.5, high[0] - 0.5, 10)
    middles = np.linspace(low[1], high[1], 61)
    tried = np.array([_best_plateaus(_share(log_x, math.exp(steep), middles[:, None]), y) for steep in log_steeps])
    best = sorted(range(log_steeps.size), key=lambda i: tried[i].min())[:STARTS]
    return [(float(log_steeps[i]), float(middles[tried[i].argmin()])) for i in best]


def _refine(
    log_x: np.ndarray,
    y: np.ndarray,
    start: tuple[float, float],
    low: tuple[float, float],
    high: tuple[float, float],
) -> tuple[float, Curve]:
    share = _share(log_x, math.exp(start[0]), start[1])
    slope, end = np.polyfit(share, y, 1) if np.ptp(share) > 1e-9 else (0.0, y.mean())
    found = scipy.optimize.least_squares(
        lambda p: p[3] + (p[2] - p[3]) * _share(log_x, math.exp(p[0]), p[1]) - y,
        (*start, end + slope, end),
        jac=lambda p: _jacobian(log_x, p),
        bounds=((*low, -np.inf, -np.inf), (*high, np.inf, np.inf)),
        x_scale=1.0,
        xtol=1e-14,
        ftol=1e-14,
        gtol=1e-14,
    )
    log_steep, log_midpoint, begins, ends = map(float, found.x)
    return float(found.cost), Curve(math.exp(log_steep), log_midpoint, begins, ends)


def _jacobian(log_x: np.ndarray, p: np.ndarray) -> np.ndarray:
    """By the logarithms of steepness and midpoint, which have no unit, and by start and end."""
    steep = math.exp(p[0])
    share = _share(log_x, steep, p[1])
    height = (p[2] - p[3]) * share * (1.0 - share) * steep
    # Without additive the value does not depend on where the curve turns: 0, not 0 times infinity.
    distance = np.where(np.isfinite(log_x), log_x - p[1], 0.0)
    return np.column_stack([-height * distance, height, share, 1.0 - share])
