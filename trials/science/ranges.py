"""Figures that make sense, as a first check of what was typed. All of it common practice, no source."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Range:
    """From low to high, both still sensible."""

    low: float
    high: float

    def holds(self, value: float) -> bool:
        """Whether the value makes sense.

        Examples
        --------
        >>> Range(1.0, 2.0).holds(2.0)
        True
        """
        return self.low <= value <= self.high


DENSITY_OF_FUNCTION_G_ML = {
    "binder": Range(0.90, 1.35),
    "reactive diluent": Range(0.85, 1.30),
    "hardener": Range(0.85, 1.35),
    "pigment": Range(1.2, 6.0),
    "filler": Range(0.10, 5.0),
    "solvent": Range(0.65, 1.25),
    "plasticiser": Range(0.85, 1.25),
    "catalyst": Range(0.80, 1.35),
    "water": Range(0.99, 1.0),
    "water scavenger": Range(0.90, 2.5),
    "additive": Range(0.70, 2.2),
    "air-release candidate": Range(0.75, 1.25),
}

EQUIVALENT_OF_GROUP_G = {
    "epoxide": Range(80, 4000),
    "amine hydrogen": Range(18, 600),
    "isocyanate": Range(70, 1500),
    "hydroxyl": Range(25, 6000),
    "aspartate amine": Range(200, 700),
    "thiol": Range(60, 1500),
    "anhydride": Range(80, 400),
    "acrylate": Range(70, 1500),
    "water": Range(9.0, 9.02),
}

DENSITY_OF_MIX_G_ML = {"filled": Range(1.30, 1.75), "clear": Range(1.00, 1.20)}
VISCOSITY_OF_MIX_MPA_S = Range(50, 50_000)
POT_LIFE_MIN = Range(3, 240)
