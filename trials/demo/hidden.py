"""What a cup and its film are really like, before anybody reads them: the demonstration's own small nature.

Shapes and sizes of the effects are common practice, no source.
"""

import math
from dataclasses import dataclass
from itertools import pairwise

from . import truth
from .chance import scatter

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


@dataclass(frozen=True, slots=True)
class Seen:
    """The cured film. ``count`` is a whole number per dm² with diameters about ``size_mm``; grades run 0 to 5."""

    count: int
    size_mm: float
    bubbles: float
    craters: float
    fish_eyes: float
    micro_foam: float
    pinholes: float
    haze: float
    levelling: float
    crawling: float
    bleeding: float
    blush: float
    gloss: float
    hardness: float
    adhesion: float


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


def craters(cup: Cup, laid: Laid) -> float:
    """From too much of a candidate, or from too little shear on a strong one."""
    additive = cup.additive
    if additive is None:
        return 0.05
    onset = additive.onset_pct[cup.system.clear]
    over = 4.6 * (1 - math.exp(-2.2 * max(cup.dosage_pct / onset - 0.95, 0.0)))
    coarse = 5.5 * (1 - cup.reaches) if cup.strength >= 4 else 0.0
    return min(0.1 + over + coarse, 5.0)


def haze(cup: Cup, laid: Laid) -> float:
    found = 0.1
    if cup.base == truth.CRYSTALS and not cup.righted:
        found += 2.6
    if cup.additive and cup.system.clear:
        found += cup.additive.haze * min(cup.dosage_pct / (1.2 * cup.additive.scale_pct), 1.6)
    return min(found, 5.0)


def film(cup: Cup, laid: Laid) -> Seen:
    """The film as it is: expectation, the scatter of the cup and that of the panel."""
    additive, base = cup.additive, cup.system
    between = scatter(truth.CUP_SD, cup.name, "cup") * scatter(truth.PANEL_SD, cup.name, laid.name, "panel")
    expected = expected_count(cup, laid)
    count = round(expected * between)
    full = cup.dosage_pct / (1.6 * additive.scale_pct) if additive else 0.0
    gassed = gas(cup, laid) / expected
    cratered = craters(cup, laid)
    return Seen(
        count=count,
        size_mm=round((1 - gassed) * base.size_mm + gassed * truth.GAS_SIZE_MM, 2),
        bubbles=5 * (1 - math.exp(-(count**0.45) / 3.4)),
        craters=cratered,
        fish_eyes=3.2 if cup.contaminated else 0.0,
        micro_foam=_micro_foam(cup, laid),
        pinholes=_pinholes(cup, laid),
        haze=haze(cup, laid),
        levelling=min(0.7 + 0.06 * max(0.0, 18 - laid.air_c) + 0.3 * cratered, 5.0),
        crawling=(additive.crawls * (1 - math.exp(-full * 1.1)) if additive else 0.0) if laid.second else 0.0,
        bleeding=additive.bleeds * min(full, 1.5) if additive and base.chemistry != truth.EPOXY else 0.0,
        blush=_blush(cup, laid),
        gloss=base.gloss - (additive.dulls * min(full, 1.5) if additive else 0) - 4 * cratered,
        hardness=base.hardness - softened(cup),
        adhesion=max(0.4, 3.1 - (additive.sheds * min(full, 1.2) if additive and laid.second else 0)),
    )


def softened(cup: Cup) -> float:
    """A carrier counts only where it reacts; elsewhere it is inert."""
    carrier_pct, partners = truth.REACTIVE_CARRIERS.get(cup.candidate, (0, ()))
    if cup.system.chemistry not in partners:
        return 0.0
    return truth.SOFTER_PER_CARRIER_PCT * cup.dosage_pct * carrier_pct / 100


def air_a(cup: Cup, minutes: float) -> float:
    """Air in component A after the beating, per cent by volume; a candidate lets it out faster."""
    acts = cup.additive.power * share(cup) if cup.additive else 0.0
    start = cup.system.air_a * cup.beaten * math.exp(-0.35 * acts) * (0.08 if cup.degassed else 1)
    rate = 0.006 + 0.018 * acts
    return max(0.05, start * math.exp(-rate * minutes) * scatter(0.10, cup.name, "air of A"))


def air_mix(cup: Cup) -> float:
    acts = cup.additive.power * share(cup) if cup.additive else 0.0
    air = cup.system.air_mix * cup.beaten * math.exp(-0.62 * acts) * (0.30 if cup.degassed else 1)
    return max(0.1, air * scatter(0.12, cup.name, "air of the mix"))


def bubble_free_min(cup: Cup) -> float | None:
    """When the last bubble on the poured film has burst; None where it never is before the film sets."""
    if cup.base == truth.WET and not cup.righted:
        return None
    acts = cup.additive.power * share(cup) if cup.additive else 0.0
    minutes = 0.9 * cup.system.pot_life_min * math.exp(-0.45 * acts) * scatter(0.15, cup.name, "bubble-free")
    return minutes if minutes < 1.1 * cup.system.pot_life_min else None


def head_mm(cup: Cup) -> float:
    """Foam above the mark of the cup: what acts against macro-foam need not let air out of the film."""
    additive = cup.additive
    acts = additive.head * (1 - math.exp(-cup.dosage_pct / additive.scale_pct)) * cup.reaches if additive else 0.0
    return max(0.0, 14 * cup.system.air_a / 5 * cup.beaten * (1 - acts) * scatter(0.12, cup.name, "head"))


def _micro_foam(cup: Cup, laid: Laid) -> float:
    acts = cup.additive.power * share(cup, laid.stored_days) if cup.additive else 0.0
    return 2.6 * math.exp(-0.45 * acts) * (0.2 if cup.degassed else 1)


def _pinholes(cup: Cup, laid: Laid) -> float:
    """Concrete breathes out as it warms; solvent leaves a thick film late; spikes too late leave their holes."""
    found = 0.2
    if laid.substrate == "concrete":
        found += 2.6 + 0.05 * (laid.air_c - REFERENCE_C)
    sprayed = cup.base[0] == truth.SOLVENT_BORNE
    found += 0.5 if sprayed else 0.0
    if cup.additive and (sprayed or truth.THICK_UM < laid.film_um < truth.CAST_UM):
        found += cup.additive.pinholes
    if laid.spiked_min is not None and laid.spiked_min > 0.8 * cup.system.pot_life_min:
        found += 2.8
    return min(found, 5.0)


def _blush(cup: Cup, laid: Laid) -> float:
    """The hardener and the weather, whatever the additive."""
    if cup.system.chemistry != truth.EPOXY:
        return 0.0
    cold, damp = max(0.0, 15 - laid.air_c), max(0.0, laid.humidity_pct - 65)
    return min(5.0, 0.03 * cold * damp)
