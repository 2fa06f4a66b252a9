"""What a cured film is really like: bubbles, craters, holes, haze and the rest, before anybody reads it."""

import math
from dataclasses import dataclass

from . import truth
from .chance import scatter
from .hidden import REFERENCE_C, Cup, Laid, expected_count, gas, share


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
