"""What stood in a stored tin before anybody stirred it."""

from .chance import chance
from .imagined import ImaginedCup

_EVEN = (
    "even",
    "even, thin skin at the rim",
    "even, a little clear liquid on top",
    "two millimetres of clear liquid, stirs in at once",
    "soft sediment, stirs in at once",
)
_OILY = ("oil rings on the surface", "oil rings, the size of a coin", "an oily film from wall to wall")
_CLEAR = ("clear", "clear, one shade yellower", "clear, even")


def looked_like(cup: ImaginedCup, days: int) -> str:
    """Candidates that lose their effect in the oven float out of the tin."""
    drawn = chance(cup.nature.name, days, "tin")
    additive = cup.nature.additive
    if additive and additive.kept[1] < 0.5:
        return drawn.choice(_OILY[:2] if days < 21 else _OILY)
    return drawn.choice(_CLEAR if cup.nature.system.clear else _EVEN)
