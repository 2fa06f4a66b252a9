"""The invented raw materials, with figures as they stand on data sheets and hazards as safety data sheets give them.

Liquid resins, amines and isocyanates carry the statements that are usual for their kind; equivalents are those
of common grades. All common practice, no source.
"""

from typing import NamedTuple

RESINS, AMINES, POLYOLS, ISOCYANATES = "Tannau Harze", "Ostmere Amines", "Norrvik Polyols", "Velmora Isocyanates"
MINERALS, PIGMENTS, SOLVENTS = "Brackwell Minerals", "Senning Pigments", "Pendrake Solvents"
ADDITIVES = "Quellborn Additives"

EQUIVALENT, NCO = "equivalent weight", "NCO content"
HYDROXYL_VALUE, AMINE_VALUE = "hydroxyl value", "amine value"


class GroupRow(NamedTuple):
    group: str
    entered_as: str
    entered: str
    hydrogens: str | None = None


class MaterialRow(NamedTuple):
    """``sheet``: days since the safety data sheet was issued. ``by``: the sign-in name of who entered it."""

    code: str
    name: str
    supplier: str
    function: str
    density: str
    non_volatile: str
    voc: str
    price: str
    hazards: str
    sheet: int
    by: str
    groups: tuple[GroupRow, ...] = ()
    active: str | None = None
    diisocyanate: str | None = None
    remarks: str = ""
    withdrawn: bool = False


def _one(group: str, entered_as: str, entered: str, hydrogens: str | None = None) -> tuple[GroupRow, ...]:
    return (GroupRow(group, entered_as, entered, hydrogens),)


class CorrectionRow(NamedTuple):
    """What somebody set right later on; None leaves what stood."""

    code: str
    by: str
    hazards: str | None = None
    sheet: int | None = None
    price: str | None = None


M = MaterialRow

# fmt: off
MATERIALS = (
    # code, name, supplier, function, g/mL, non-volatile %, VOC %, price per kg, hazards, sheet, by
    M("EP-104", "Epoxy resin, bisphenol A, liquid", RESINS, "binder", "1.16", "100", "0", "3.90",
      "H315 H317 H319 H411", 410, "lena", _one("epoxide", EQUIVALENT, "188"),
      remarks="Crystallises below 15 °C. Milky: warm to 60 °C until clear, cool, stir, only then weigh."),
    M("EP-108", "Epoxy resin, bisphenol F, liquid", RESINS, "binder", "1.19", "100", "0", "5.40",
      "H315 H317 H319 H411", 410, "lena", _one("epoxide", EQUIVALENT, "169")),
    M("EP-112", "Epoxy resin, bisphenol A/F blend", RESINS, "binder", "1.17", "100", "0", "4.60",
      "H315 H317 H319 H411", 240, "lena", _one("epoxide", EQUIVALENT, "178"),
      remarks="Stays clear in a cold store; about a third thinner than EP-104."),
    M("EP-130", "Epoxy resin, bisphenol A, solid, 75 % in xylene", RESINS, "binder", "1.09", "75", "25", "4.20",
      "H226 H312 H315 H317 H319 H332 H411", 700, "tibor", _one("epoxide", EQUIVALENT, "633"),
      remarks="The equivalent is that of the solution."),
    M("RD-021", "Hexanediol diglycidyl ether", RESINS, "reactive diluent", "1.07", "99", "0", "7.80",
      "H315 H317 H319 H412", 380, "lena", _one("epoxide", EQUIVALENT, "148")),
    M("RD-024", "C12–C14 alkyl glycidyl ether", RESINS, "reactive diluent", "0.89", "98", "0", "5.90",
      "H315 H317", 380, "lena", _one("epoxide", EQUIVALENT, "285"),
      remarks="One group per molecule: ends chains, softens, and helps air out."),
    M("RD-027", "Cresyl glycidyl ether", RESINS, "reactive diluent", "1.08", "100", "0", "5.20",
      "H315 H317 H341 H411", 820, "peer", _one("epoxide", EQUIVALENT, "182"), withdrawn=True,
      remarks="Suspected of causing genetic defects: not for new recipes."),
    M("HD-201", "Isophorone diamine", AMINES, "hardener", "0.92", "100", "0", "6.30",
      "H302 H312 H314 H317 H412", 510, "jonna", _one("amine hydrogen", AMINE_VALUE, "659", "2"),
      remarks="Boils at 247 °C; counted as bound by the cure."),
    M("HD-204", "m-Xylylenediamine", AMINES, "hardener", "1.05", "100", "0", "6.90",
      "H302 H314 H317 H332 H412 EUH071", 510, "jonna", _one("amine hydrogen", AMINE_VALUE, "824", "2"),
      remarks="Blushes readily in cold, damp air. Keep the lid on."),
    M("HD-207", "Polyether diamine, short", AMINES, "hardener", "0.95", "100", "0", "5.80",
      "H314 H412", 505, "jonna", _one("amine hydrogen", AMINE_VALUE, "471", "2")),
    M("HD-210", "Cycloaliphatic amine adduct in benzyl alcohol", AMINES, "hardener", "1.04", "70", "30", "5.10",
      "H302 H314 H317 H332 H412", 290, "jonna", _one("amine hydrogen", EQUIVALENT, "95"),
      remarks="Benzyl alcohol boils at 205 °C: it counts as VOC, though much of it stays in 2 mm."),
    M("HD-215", "Phenalkamine, 80 % in xylene", AMINES, "hardener", "0.98", "80", "20", "4.70",
      "H226 H312 H314 H317 H332 H373", 620, "tibor", _one("amine hydrogen", AMINE_VALUE, "250", "1.4"),
      remarks="A blend of primary and secondary amines: 1.4 hydrogens per nitrogen on average."),
    M("HD-220", "Light cycloaliphatic amine adduct, free of benzyl alcohol", AMINES, "hardener", "1.03", "100", "0",
      "7.40", "H314 H317 H412", 300, "nadia", _one("amine hydrogen", EQUIVALENT, "82")),
    M("PO-301", "Branched castor oil polyol", POLYOLS, "binder", "1.01", "100", "0", "4.40",
      "", 450, "ayo", _one("hydroxyl", HYDROXYL_VALUE, "165")),
    M("PO-304", "Polyether triol, short", POLYOLS, "binder", "1.03", "100", "0", "2.90",
      "", 450, "ayo", _one("hydroxyl", HYDROXYL_VALUE, "380"),
      remarks="Takes up water from the air: blanket with nitrogen after opening."),
    M("PO-310", "Castor oil, dried", POLYOLS, "binder", "0.96", "100", "0", "2.60",
      "", 640, "ayo", _one("hydroxyl", HYDROXYL_VALUE, "163")),
    M("NC-401", "Polymeric diphenylmethane diisocyanate", ISOCYANATES, "hardener", "1.23", "100", "0", "2.90",
      "H315 H317 H319 H332 H334 H335 H351 H373", 200, "ayo", _one("isocyanate", NCO, "31.2"), diisocyanate="42",
      remarks="Training is asked for before use in some jurisdictions. Never close a tin that has drawn moisture."),
    M("NC-407", "Hexamethylene diisocyanate trimer", ISOCYANATES, "hardener", "1.16", "100", "0", "8.20",
      "H317 H332 H335", 210, "nadia", _one("isocyanate", NCO, "21.8"), diisocyanate="0.15"),
    M("NC-410", "Aliphatic polyisocyanate, low viscosity", ISOCYANATES, "hardener", "1.13", "100", "0", "9.70",
      "H317 H332 H335", 210, "nadia", _one("isocyanate", NCO, "20.0"), diisocyanate="0.09"),
    M("AS-501", "Aspartate of a cycloaliphatic diamine", AMINES, "binder", "1.06", "100", "0", "11.50",
      "H317 H412", 330, "nadia", _one("aspartate amine", AMINE_VALUE, "201", "1")),
    M("AS-504", "Aspartate of a hindered cycloaliphatic diamine", AMINES, "binder", "1.05", "100", "0", "12.40",
      "H412", 330, "nadia", _one("aspartate amine", AMINE_VALUE, "191", "1"),
      remarks="The slow one: about four times the pot life of AS-501."),
    M("AS-507", "Aspartate of a short branched diamine", AMINES, "binder", "1.07", "100", "0", "10.80",
      "H317 H412", 330, "peer", _one("aspartate amine", AMINE_VALUE, "225", "1"),
      remarks="The quick one: a few minutes on its own."),
    M("FI-601", "Quartz flour, 16 µm", MINERALS, "filler", "2.65", "100", "0", "0.28", "H372", 560, "tibor",
      remarks="Respirable quartz: weigh under extraction, with a mask."),
    M("FI-604", "Quartz sand, 0.1–0.3 mm", MINERALS, "filler", "2.65", "100", "0", "0.15", "", 560, "tibor"),
    M("FI-607", "Barytes, natural, 10 µm", MINERALS, "filler", "4.30", "100", "0", "0.85", "", 560, "tibor"),
    M("FI-610", "Calcium carbonate, ground, 5 µm", MINERALS, "filler", "2.71", "100", "0", "0.22", "", 555, "ayo",
      remarks="For polyurethane only with a Karl Fischer value on the lot."),
    M("FI-616", "Talc, platy, 10 µm", MINERALS, "filler", "2.78", "100", "0", "0.55", "", 555, "tibor"),
    M("FI-619", "Fumed silica, hydrophobic", MINERALS, "filler", "2.20", "100", "0", "14.00", "", 550, "tibor",
      remarks="Holds small bubbles: half a per cent too much and nothing rises any more."),
    M("PI-701", "Titanium dioxide, coated rutile", PIGMENTS, "pigment", "4.10", "100", "0", "3.40",
      "EUH212", 275, "lena"),
    M("PI-704", "Carbon black, furnace", PIGMENTS, "pigment", "1.80", "100", "0", "9.00", "", 275, "lena"),
    M("PI-707", "Iron oxide red", PIGMENTS, "pigment", "5.00", "100", "0", "2.60", "", 275, "tibor"),
    M("PI-710", "Zinc phosphate", PIGMENTS, "pigment", "3.30", "100", "0", "3.90", "H400 H410", 275, "tibor"),
    M("SO-901", "Xylene", SOLVENTS, "solvent", "0.87", "0", "100", "1.40",
      "H226 H304 H312 H315 H332 H373", 600, "tibor"),
    M("SO-904", "n-Butyl acetate", SOLVENTS, "solvent", "0.88", "0", "100", "1.70", "H226 H336 EUH066", 600, "nadia"),
    M("PL-040", "Benzyl alcohol", SOLVENTS, "plasticiser", "1.045", "0", "100", "3.10",
      "H302 H319 H332", 690, "jonna",
      _one("hydroxyl", EQUIVALENT, "108.14"),
      remarks="Boils at 205 °C: by that limit all of it is VOC, though much of it stays in a thick film."),
    M("WS-801", "Molecular sieve 3A, powder", MINERALS, "water scavenger", "2.10", "100", "0", "4.20",
      "", 470, "nadia",
      remarks="Loaded with water after a day in an open bag."),
    M("WS-804", "Molecular sieve 3A, 50 % in castor oil", MINERALS, "water scavenger", "1.29", "100", "0", "3.90",
      "", 470, "ayo", _one("hydroxyl", HYDROXYL_VALUE, "81"),
      remarks="Stir up from the bottom. The oil counts in the index."),
    M("CA-951", "Bismuth carboxylate", ADDITIVES, "catalyst", "1.14", "100", "0", "26.00", "", 365, "ayo"),
    M("CA-954", "Tris(dimethylaminomethyl)phenol", AMINES, "catalyst", "0.97", "100", "0", "8.60",
      "H302 H314", 505, "jonna",
      remarks="A tertiary amine: speeds the cure, takes no part in the index."),
    M("AD-971", "Dispersing additive, polymeric", ADDITIVES, "additive", "1.05", "100", "0", "12.00",
      "", 365, "lena"),
    M("AD-974", "Levelling additive, polyacrylate, silicone-free", ADDITIVES, "additive", "1.02", "100", "0", "9.50",
      "", 365, "lena", remarks="Fights some defoamers for the surface: never change both at once."),
    M("AD-977", "Polyamide wax, micronised", ADDITIVES, "additive", "0.98", "100", "0", "8.90", "", 365, "tibor",
      remarks="Needs 50 to 60 °C and shear to swell; swollen too little it specks."),
    M("AD-980", "Epoxysilane", ADDITIVES, "additive", "1.07", "68", "30", "15.50", "H318 H412", 340, "tibor",
      _one("epoxide", EQUIVALENT, "236"), remarks="Sets methanol free as it takes up water."),
    M("AD-983", "Light stabiliser, liquid", ADDITIVES, "additive", "1.05", "100", "0", "21.00",
      "H317 H411", 340, "nadia"),
    M("WA-001", "Water, deionised", "the house", "water", "0.998", "0", "0", "0.01", "", 700, "runa",
      _one("water", EQUIVALENT, "9.008"), remarks="Only for cups that are made wet on purpose."),
)
# fmt: on

CORRECTIONS = (
    CorrectionRow("PL-040", "jonna", hazards="H302 H317 H319 H332", sheet=95),
    CorrectionRow("EP-104", "lena", price="4.15"),
    CorrectionRow("RD-021", "lena", price="8.20"),
)
