"""What the wet state is really like: air, foam on the cup, and when the poured film is quiet."""

import math

from . import truth
from .chance import scatter
from .hidden import Cup, share


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
