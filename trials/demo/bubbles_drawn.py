"""Where the bubbles of a photographed film lie, and how large they are: as many as were counted, none on another."""

from dataclasses import dataclass

import numpy as np

from .chance import chance
from .imagined import ImaginedCup, Panel

# One square decimetre at a tenth of a millimetre per pixel: what is counted is what is per dm².
WIDTH_PX, HEIGHT_PX, MM_PER_PX = 1250, 800, "0.1"
EDGE_MM, GAP_MM, SMALLEST_MM = 2.0, 0.5, 0.25


@dataclass(frozen=True, slots=True)
class Bubbles:
    """Centres and diameters in millimetres, from the upper left corner; ``xy_mm`` has shape (n, 2)."""

    xy_mm: np.ndarray
    diameter_mm: np.ndarray


def bubbles_of(cup: ImaginedCup, panel: Panel) -> Bubbles:
    seen = panel.seen
    drawn = chance(cup.nature.name, panel.kind, "bubbles")
    sizes = [min(max(seen.size_mm * drawn.lognormvariate(-0.06, 0.35), SMALLEST_MM), 4.0) for _ in range(seen.count)]
    sizes.sort(reverse=True)
    return Bubbles(_apart(sizes, drawn), np.array(sizes))


def _apart(sizes: list[float], drawn) -> np.ndarray:
    """Large ones first; each is put where it touches none."""
    wide, high = WIDTH_PX * float(MM_PER_PX), HEIGHT_PX * float(MM_PER_PX)
    xy = np.empty((len(sizes), 2))
    for place, size in enumerate(sizes):
        reach = np.array(sizes[:place]) / 2 + size / 2 + GAP_MM
        for _ in range(500):
            at = drawn.uniform(EDGE_MM, wide - EDGE_MM), drawn.uniform(EDGE_MM, high - EDGE_MM)
            if (np.hypot(*(xy[:place] - at).T) > reach).all():
                break
        else:
            raise ValueError(f"{len(sizes)} bubbles of {size} mm do not fit on a square decimetre")
        xy[place] = at
    return xy
