"""What a cup and its film are really like, before anybody reads them: the demonstration's own small nature.

Shapes and sizes of the effects are common practice, no source.
"""

import math
from dataclasses import dataclass
from itertools import pairwise

from . import truth

# Bubbles that stay in a blank against the film, wet: most in a rolled film, fewest at 2 mm, more again above.
_FILMS_UM = ((250, 4.4), (300, 4.2), (500, 3.6), (1000, 2.0), (2000, 1.0), (3000, 1.1), (4000, 1.6), (5000, 1.7),
             (10000, 2.1), (20000, 2.4))  # fmt: skip
REFERENCE_C = 23.0


@dataclass(frozen=True, slots=True)
class Cup:
    """What nature knows of a cup. ``reaches`` is 1 where the candidate got the shear that it asks for;
    ``righted`` where the base was rid of its own fault (the filler dried, the crystals warmed away)."""

    name: str
    base: tuple[str, int]
    lot: str = ""
    candidate: str = ""
    dosage_pct: float = 0.0
    strength: int = 0
    reaches: float = 1.0
    beaten: float = 1.0
    degassed: bool = False
    contaminated: bool = False
    righted: bool = False

    @property
    def system(self) -> truth.BaseTruth:
        return truth.BASES[self.base]

    @property
    def additive(self) -> truth.CandidateTruth | None:
        return truth.CANDIDATES.get(self.candidate)


@dataclass(frozen=True, slots=True)
class Laid:
    """How a film was laid: ``stored_days`` of the tin that it comes from, ``spiked_min`` of a spiked roller."""

    name: str
    film_um: float
    air_c: float = REFERENCE_C
    humidity_pct: float = 50.0
    substrate: str = "glass"
    stored_days: int = 0
    second: bool = False
    spiked_min: float | None = None


def share(cup: Cup, stored_days: int = 0) -> float:
    """What of the candidate's power acts: it saturates with the dosage, and falls with shear and storage."""
    additive = cup.additive
    if additive is None:
        return 0.0
    acts = 1 - math.exp(-cup.dosage_pct / additive.scale_pct)
    return acts * cup.reaches**1.6 * kept(additive, stored_days) * additive.fit(cup.system.chemistry)


def kept(additive: truth.CandidateTruth, stored_days: int) -> float:
    if stored_days < 1:
        return 1.0
    fortnight, month = additive.kept
    return fortnight if stored_days < 21 else month


def expected_count(cup: Cup, laid: Laid) -> float:
    """Bubbles of 0.2 mm and more per dm², cup by cup alike."""
    base = cup.system
    air = base.count * film_factor(laid.film_um) / film_factor(base.film_um) * cup.beaten * cold_factor(laid.air_c)
    if cup.lot == truth.HEAVY_LOT:
        air *= truth.HEAVY_LOT_FACTOR
    if cup.degassed:
        air *= 0.04
    if cup.additive:
        air *= math.exp(-cup.additive.power * share(cup, laid.stored_days) * depth(cup.additive, laid.film_um, base))
    return air + gas(cup, laid)


def gas(cup: Cup, laid: Laid) -> float:
    """Carbon dioxide: neither degassing nor a candidate takes it away."""
    if cup.base != truth.WET or cup.righted:
        return 0.0
    return truth.GAS_PER_DM2 * (0.6 + 0.008 * laid.humidity_pct)


def depth(additive: truth.CandidateTruth, film_um: float, base: truth.BaseTruth) -> float:
    """What of the effect is left in a film thicker than the base is meant for."""
    over = (film_um - 1.25 * base.film_um) / (0.75 * base.film_um)
    return 1 - (1 - additive.deep) * min(max(over, 0.0), 1.0)


def film_factor(film_um: float) -> float:
    x = math.log(min(max(film_um, _FILMS_UM[0][0]), _FILMS_UM[-1][0]))
    for (low, below), (high, above) in pairwise(_FILMS_UM):
        if x <= math.log(high):
            part = (x - math.log(low)) / (math.log(high) - math.log(low))
            return below + part * (above - below)
    return _FILMS_UM[-1][1]


def cold_factor(air_c: float) -> float:
    """Three to four times as thick at 10 °C: more stays."""
    return math.exp(0.045 * (REFERENCE_C - air_c))
