"""How the series of the demonstration are written down."""

from typing import NamedTuple

# What was done otherwise in a series than in the one before.
STORED, THICK, CLIMATES, SECOND, CONCRETE = "stored", "thick", "climates", "second coat", "concrete"
COLD_NIGHT, DIRTY, SPATULA, CALM_BLANKS = "cold night", "dirty", "spatula", "calm blanks"
SPIKED, RIGHTED, AMENDED, TOPPED_UP = "spiked", "righted", "amended", "topped up"


class RoundRow(NamedTuple):
    """Worked so many days ago. ``doses``: candidates divided by |, each with its dosages; ``incumbent`` the same.

    ``shear`` is rpm and minutes of the disc of 40 mm; ``lot`` a lot of resin in the common batch other than the
    revision's; ``seen_by`` the two who read; ``tint`` what the photographs look like.
    """

    key: str
    ago: int
    base: str
    revision: int
    round: str
    owner: str
    seen_by: tuple[str, ...]
    title: str
    question: str
    doses: str
    incumbent: str = ""
    enquiry: str = ""
    follows: str = ""
    twists: tuple[str, ...] = ()
    film_um: str = ""
    grams: str = "500"
    replicates: int = 2
    blanks: int = 2
    vacuum: bool = False
    shear: tuple[int, str] = (5800, "10")
    stage: str = "let-down"
    basis: str = "total"
    order: str = ""
    lot: str = ""
    tint: str = "grey"

    def ladder(self) -> list[tuple[str, tuple[str, ...]]]:
        return dosages(self.doses)


def dosages(text: str) -> list[tuple[str, tuple[str, ...]]]:
    """``AR-08 0.1 0.3 | AR-01 0.5`` by candidate."""
    rows = (part.split() for part in text.split("|") if part.strip())
    return [(code, tuple(rest)) for code, *rest in rows]
