"""What is true in the demonstration and stands nowhere in its record: what each candidate, base and reader is like.

Ranges are common practice, no source; the figures are invented, and the tests ask the record for them again.
"""

from dataclasses import dataclass

EPOXY, POLYURETHANE, POLYASPARTIC = "epoxy-amine", "polyurethane", "polyaspartic"


@dataclass(frozen=True, slots=True)
class CandidateTruth:
    """``power``: logarithm of the most by which bubbles fall; ``scale_pct``: the dosage that reaches 63 % of it.

    ``onset_pct`` is where craters begin, in filled systems and in clear ones. ``head`` acts on the foam on the cup.
    ``kept`` is what is left of the effect after 14 and 28 days at 50 °C, ``deep`` what is left of it in 4 mm.
    """

    power: float
    scale_pct: float
    onset_pct: tuple[float, float] = (99.0, 99.0)
    haze: float = 0.5
    fits: tuple[float, float, float] = (1.0, 1.0, 1.0)
    head: float = 0.5
    kept: tuple[float, float] = (0.97, 0.94)
    deep: float = 0.7
    crawls: float = 0.0
    sheds: float = 0.0
    bleeds: float = 0.0
    dulls: float = 0.0
    pinholes: float = 0.0

    def fit(self, chemistry: str) -> float:
        return self.fits[(EPOXY, POLYURETHANE, POLYASPARTIC).index(chemistry)]


T = CandidateTruth
CANDIDATES = {
    "AR-01": T(1.3, 0.52, haze=0.3, pinholes=0.9, fits=(1.0, 0.9, 1.0), head=0.3, deep=0.5),
    "AR-02": T(1.9, 0.65, haze=0.4, fits=(0.9, 1.1, 1.0), head=0.3, deep=0.7),
    "AR-03": T(1.4, 0.26, (0.65, 0.45), haze=0.9, head=0.9, deep=0.3, pinholes=1.6),
    "AR-04": T(2.6, 0.26, (0.95, 0.75), haze=0.6, head=0.5, kept=(0.45, 0.12), deep=0.75),
    "AR-05": T(0.8, 1.04, haze=2.6, head=0.6, deep=0.4, dulls=14),
    "AR-06": T(1.0, 0.585, haze=3.6, fits=(1.0, 0.9, 1.0), head=0.9, deep=0.4, bleeds=2.6, dulls=6),
    # Its polyol has no partner in epoxy and stays as dead weight.
    "AR-07": T(2.4, 0.715, haze=1.0, fits=(0.08, 1.1, 1.0), head=0.2, deep=0.8),
    "AR-08": T(3.0, 0.195, (0.55, 0.38), haze=1.9, head=1.0, deep=0.5, crawls=4.2, pinholes=0.8),
    "AR-09": T(3.3, 0.26, (0.80, 0.70), haze=0.5, fits=(1.05, 0.75, 0.8), head=0.6, deep=0.9),
    "AR-10": T(1.9, 0.078, (0.22, 0.16), haze=0.9, head=0.8, deep=0.4, sheds=2.4, pinholes=1.2),
    "AR-11": T(2.7, 0.364, (1.00, 0.85), haze=1.7, fits=(0.8, 1.12, 1.0), head=0.6, deep=0.75),
    "AR-12": T(2.6, 0.0455, (0.11, 0.07), haze=1.5, head=1.0, deep=0.5),
    "AR-13": T(3.3, 0.104, (0.25, 0.15), haze=4.2, head=1.0, deep=0.85),
    "AR-14": T(3.2, 0.65, (1.80, 1.30), haze=2.9, head=0.6, deep=0.9),
    "AR-15": T(3.6, 0.0455, (0.13, 0.115), haze=0.7, head=0.8, deep=0.95),
    "AR-16": T(3.0, 0.39, (0.95, 0.60), haze=2.3, head=0.8, deep=0.8),
}
CRAWLS, DIES_IN_STORAGE = "AR-08", "AR-04"
# The group of a carrier in per cent of the candidate, and where it finds a partner.
REACTIVE_CARRIERS = {
    "AR-07": (55, (POLYURETHANE, POLYASPARTIC)),
    "AR-09": (60, (EPOXY,)),
    "AR-15": (80, (POLYURETHANE, POLYASPARTIC)),
}
SOFTER_PER_CARRIER_PCT = 4.0


@dataclass(frozen=True, slots=True)
class BaseTruth:
    """``count`` per dm² and ``size_mm`` are those of the blank at the film meant; air in per cent by volume."""

    chemistry: str
    count: float
    size_mm: float
    air_a: float
    air_mix: float
    gloss: float
    hardness: float
    free_a_g_ml: str
    free_mix_g_ml: str
    mix_mpa_s: float
    pot_life_min: float
    film_um: float
    clear: bool = False


B = BaseTruth
BASES = {
    ("EF-21", 1): B(EPOXY, 46, 0.9, 5.6, 4.4, 86, 76, "1.546", "1.404", 1450, 34, 2000),
    ("EF-21", 2): B(EPOXY, 48, 0.9, 5.9, 4.6, 88, 79, "1.584", "1.423", 1720, 31, 2000),
    ("EF-21", 3): B(EPOXY, 48, 0.9, 5.9, 4.6, 88, 79, "1.588", "1.4265", 1880, 30, 2000),
    ("EC-12", 1): B(EPOXY, 60, 0.8, 2.3, 2.6, 92, 80, "1.111", "1.081", 640, 42, 10000, clear=True),
    ("EC-12", 2): B(EPOXY, 55, 0.8, 2.1, 2.4, 94, 81, "1.127", "1.089", 610, 38, 10000, clear=True),
    ("UF-33", 1): B(POLYURETHANE, 52, 0.9, 5.2, 4.8, 62, 63, "1.527", "1.461", 2300, 26, 2000),
    ("UF-33", 2): B(POLYURETHANE, 50, 0.9, 5.0, 4.6, 64, 64, "1.497", "1.438", 2050, 29, 2000),
    ("PF-41", 1): B(POLYASPARTIC, 210, 0.45, 4.2, 3.6, 82, 72, "1.356", "1.283", 620, 9, 300),
    ("PF-41", 2): B(POLYASPARTIC, 190, 0.45, 4.0, 3.4, 84, 72, "1.354", "1.284", 780, 22, 300),
    ("BB-61", 1): B(EPOXY, 40, 1.0, 4.4, 3.8, 87, 78, "1.52", "1.401", 2500, 28, 3000),
    ("BB-61", 2): B(EPOXY, 52, 1.0, 4.9, 4.3, 86, 78, "1.51", "1.394", 2800, 27, 3000),
    ("EM-52", 1): B(EPOXY, 170, 0.4, 4.6, 3.9, 55, 74, "1.601", "1.441", 2200, 44, 250),
    ("BB-62", 1): B(POLYURETHANE, 64, 1.1, 4.2, 4.0, 70, 58, "1.54", "1.477", 2700, 35, 20000),
}

# The filler of this revision was wet: gas that no candidate cures, per dm², growing after the pour.
WET = ("UF-33", 1)
GAS_PER_DM2, GAS_SIZE_MM = 85.0, 1.5
# This lot is thicker than the others: more bubbles stay, blank and treated alike.
HEAVY_LOT, HEAVY_LOT_FACTOR = "R-7730", 1.65
CRYSTALS = ("EC-12", 1)

# Where the solvent of a candidate leaves its holes: in this sprayed base, and in films between these.
SOLVENT_BORNE, THICK_UM, CAST_UM = "EM-52", 2200, 9000

CUP_SD = 0.30
PANEL_SD = 0.10


@dataclass(frozen=True, slots=True)
class Reader:
    """Reads so many steps higher or lower than the others, with this spread; finds this share of the bubbles."""

    bias: float
    spread: float
    finds: float


READERS = {
    "jonna": Reader(0.0, 0.22, 1.00),
    "tibor": Reader(0.25, 0.30, 1.08),
    "nadia": Reader(-0.20, 0.28, 0.94),
    "ayo": Reader(0.10, 0.32, 1.03),
    "lena": Reader(-0.10, 0.18, 0.98),
    "ruth": Reader(0.38, 0.30, 1.14),
    "peer": Reader(-0.35, 0.40, 0.86),
    "caspar": Reader(0.10, 0.28, 1.04),
}
