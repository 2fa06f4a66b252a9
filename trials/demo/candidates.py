"""Sixteen invented candidates for air release, over the whole map of strength × ease of incorporation.

Windows per chemistry, carriers and cautions are common practice, no source; the figures of each are invented.
"""

from typing import NamedTuple

from .materials import EQUIVALENT, HYDROXYL_VALUE, GroupRow, MaterialRow

SILOXANES, POLYMERS, WAXES = "Sarnholt Siloxanes", "Dunmarrow Polymers", "Weisloh Waxes"


class CandidateRow(NamedTuple):
    """``window`` is from, to, highest tried; ``shear`` is m/s and minutes asked for; ``grades`` are strength,
    against macro-foam, for air release."""

    material: MaterialRow
    chemistry: str
    carrier: tuple[str, str | None]
    silicone: bool
    grades: tuple[int, int, int]
    shear: tuple[str, str]
    window: tuple[str, str, str]
    stages: tuple[str, ...]
    diluted_in: str
    cautions: str


def _material(code, name, supplier, density, non_volatile, voc, price, hazards, sheet, by, **more) -> MaterialRow:
    return MaterialRow(
        code, name, supplier, "air-release candidate", density, non_volatile, voc, price, hazards, sheet, by, **more
    )


CONCENTRATE, SOLUTION, MODIFIED = "concentrated polysiloxane", "polysiloxane solution", "modified polysiloxane"
POLYMER, OIL, FLUORINATED, WAX = "silicone-free polymer", "mineral oil", "fluorinated", "wax or particle dispersion"
GRIND, LET_DOWN, POST = "grind", "let-down", "post-addition"

C, M = CandidateRow, _material

# fmt: off
CANDIDATES = (
    # material: code, name, supplier, g/mL, non-volatile %, VOC %, price per kg, hazards, sheet, by
    # Mild and easy.
    C(M("AR-01", "Vinyl polymer, 50 % in solvent", POLYMERS, "0.91", "50", "50", "11.20", "H226 H336 EUH066", 420,
        "jonna", active="50"),
      POLYMER, ("solvent", "50"), False, (1, 2, 2), ("1.0", "3"), ("0.30", "1.0", "1.5"), (LET_DOWN, POST),
      "n-butyl acetate, 1 : 1",
      "Hardly ever does harm and seldom enough: good in thin clear coats, not against the air of a dissolver."),
    C(M("AR-02", "Acrylic copolymer, free of solvent", POLYMERS, "1.02", "100", "0", "13.80", "", 420, "jonna",
        active="100"),
      POLYMER, ("none", None), False, (2, 2, 3), ("2.0", "5"), ("0.30", "1.2", "2.0"), (LET_DOWN, POST), "",
      "Thick when cold: warm to 25 °C, weigh by difference from the syringe. Above 1.2 % the film stays soft."),
    C(M("AR-03", "Polydimethylsiloxane, 12 % in solvent", SILOXANES, "0.80", "12", "88", "7.90", "H226 H304 H336",
        400, "jonna", active="12"),
      SOLUTION, ("solvent", "88"), True, (2, 3, 2), ("2.0", "3"), ("0.10", "0.50", "1.0"), (LET_DOWN, POST),
      "white spirit, 1 : 9",
      "Breaks the head on the cup at once and leaves small bubbles in the film. Flash-off pinholes above 2 mm."),
    C(M("AR-04", "Polyether-modified polysiloxane in plasticiser", SILOXANES, "0.99", "99", "0", "16.40", "EUH210",
        380, "tibor", active="40"),
      MODIFIED, ("plasticiser", "60"), True, (2, 2, 3), ("1.5", "3"), ("0.10", "0.60", "1.0"), (LET_DOWN, POST),
      "the plasticiser that it comes in, 1 : 1",
      "Forgiving to stir in. Loses half of its effect in two weeks at 50 °C: always judge it stored."),
    # Mild, and asks for shear.
    C(M("AR-05", "Amide wax dispersion in plasticiser", WAXES, "0.97", "99", "0", "9.60", "", 500, "tibor",
        active="20"),
      WAX, ("plasticiser", "80"), False, (2, 3, 1), ("8.0", "10"), ("0.50", "1.5", "2.0"), (GRIND,), "",
      "Only into the grind, warm. Stirred in late it stays as specks; dulls gloss from 1 %."),
    C(M("AR-06", "Paraffinic oil with hydrophobic silica", WAXES, "0.89", "99", "0", "5.30", "H304", 430, "tibor",
        active="100"),
      OIL, ("none", None), False, (2, 4, 1), ("6.0", "8"), ("0.20", "1.0", "1.5"), (GRIND, LET_DOWN), "",
      "For filled, dull systems. Clouds a clear casting and bleeds from soft polyurethane."),
    C(M("AR-07", "High polymer in a polyether polyol", POLYMERS, "1.01", "100", "0", "14.90", "", 340, "nadia",
        groups=(GroupRow("hydroxyl", HYDROXYL_VALUE, "35"),), active="45"),
      POLYMER, ("reactive", "55"), False, (2, 1, 3), ("6.0", "10"), ("0.50", "1.5", "2.0"), (GRIND, LET_DOWN),
      "the polyol of the base",
      "The polyol counts with isocyanate and is dead weight in epoxy. Undersheared it does nothing at all."),
    # Strong and easy.
    C(M("AR-08", "Long-chain polysiloxane, 20 % in solvent", SILOXANES, "0.85", "20", "80", "12.60",
        "H226 H304 H336 H412", 390, "nadia", active="20"),
      SOLUTION, ("solvent", "80"), True, (4, 5, 3), ("2.0", "3"), ("0.10", "0.40", "0.8"), (LET_DOWN, POST),
      "n-butyl acetate, 1 : 4",
      "Craters from 0.4 % in clear systems, from 0.6 % in filled ones. The second coat may crawl."),
    C(M("AR-09", "Alkyl-modified polysiloxane in hexanediol diglycidyl ether", SILOXANES, "1.03", "100", "0", "19.50",
        "H315 H317 H319 H412", 360, "nadia", groups=(GroupRow("epoxide", EQUIVALENT, "251.67"),), active="40"),
      MODIFIED, ("reactive", "60"), True, (4, 3, 5), ("2.5", "5"), ("0.10", "0.60", "1.0"), (LET_DOWN, POST), "",
      "The ether takes up amine: it counts in the index of epoxy. With isocyanate it stays in the film unbound."),
    C(M("AR-10", "Fluorinated acrylate, 30 % in solvent", POLYMERS, "0.94", "30", "70", "68.00",
        "H226 H335 H336", 560, "peer", active="30"),
      FLUORINATED, ("solvent", "70"), False, (4, 4, 2), ("2.0", "3"), ("0.03", "0.15", "0.30"), (POST,),
      "methoxypropyl acetate, 1 : 9",
      "Very strong on the surface: levels the craters of others and spoils the adhesion of the next coat."),
    C(M("AR-11", "Aryl-modified polysiloxane in plasticiser", SILOXANES, "1.00", "99", "0", "17.20", "EUH210", 350,
        "lena", active="50"),
      MODIFIED, ("plasticiser", "50"), True, (3, 3, 4), ("3.0", "5"), ("0.10", "0.80", "1.2"), (LET_DOWN, POST),
      "the plasticiser that it comes in, 1 : 1",
      "The middle of the map, and a fair first try in filled polyurethane. Slightly hazy in clear epoxy."),
    # Strong, and asks for shear.
    C(M("AR-12", "Polysiloxane, neat, high molecular", SILOXANES, "0.97", "100", "0", "14.50", "EUH210", 700, "lena",
        active="100"),
      CONCENTRATE, ("none", None), True, (5, 5, 3), ("10.0", "10"), ("0.02", "0.10", "0.2"), (GRIND,), "",
      "One drop too much in 150 g is a crater in every square decimetre. Weigh it into the grind, never on top."),
    C(M("AR-13", "Polysiloxane with hydrophobic silica, neat", SILOXANES, "1.01", "100", "0", "18.90", "", 480, "ayo",
        active="100"),
      CONCENTRATE, ("none", None), True, (5, 5, 4), ("12.0", "10"), ("0.03", "0.20", "0.4"), (GRIND, LET_DOWN), "",
      "Roll the bottle for ten minutes: the silica settles and the oil alone craters. Haze in anything clear."),
    C(M("AR-14", "Incompatible polymer with particles, in plasticiser", POLYMERS, "1.00", "99", "0", "15.70", "", 470,
        "ayo", active="35"),
      POLYMER, ("plasticiser", "65"), False, (4, 3, 5), ("8.0", "10"), ("0.30", "1.5", "2.0"), (GRIND, LET_DOWN), "",
      "The strongest without silicone. Needs a real grind; roll the bottle first."),
    C(M("AR-15", "Fluorosilicone in a polyester diol", SILOXANES, "1.12", "100", "0", "92.00", "H412", 250, "ruth",
        groups=(GroupRow("hydroxyl", HYDROXYL_VALUE, "90"),), active="20"),
      FLUORINATED, ("reactive", "80"), True, (5, 4, 5), ("8.0", "8"), ("0.02", "0.10", "0.2"), (GRIND, LET_DOWN), "",
      "For casting resins that nothing else clears. The diol counts with isocyanate. Ask before a sample leaves."),
    C(M("AR-16", "Modified polysiloxane with particles, 60 % in solvent", SILOXANES, "0.92", "60", "40", "13.30",
        "H226 H304 H336", 240, "ruth", active="60"),
      MODIFIED, ("solvent", "40"), True, (4, 4, 4), ("6.0", "8"), ("0.20", "0.80", "1.2"), (GRIND, LET_DOWN),
      "xylene, 1 : 2",
      "Shake before every weighing. Against air from the dissolver and from pigment, not for clear systems."),
)
# fmt: on
