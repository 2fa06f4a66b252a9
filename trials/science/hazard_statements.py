"""Hazard statements of the open UN system (GHS), as far as a coatings laboratory meets them.

Wording: UN GHS, annex 3, and Regulation (EC) No 1272/2008, annex III; supplemental EU statements EUH380 to
EUH451 from Delegated Regulation (EU) 2023/707. Pictogram and signal word: annex V and annex I of the
regulation, from memory. Where the signal word depends on the category (H228, H242, H261, H272), the stricter
one stands here. The safety data sheet of the actual raw material always rules.
"""

from typing import NamedTuple


class Statement(NamedTuple):
    wording: str
    pictogram: str | None
    signal_word: str | None


D, W = "Danger", "Warning"
EXPLODING, FLAME, OXIDISER, CYLINDER = "GHS01", "GHS02", "GHS03", "GHS04"
CORROSION, SKULL, EXCLAMATION, HEALTH, ENVIRONMENT = "GHS05", "GHS06", "GHS07", "GHS08", "GHS09"

PHYSICAL = {
    "H200": Statement("Unstable explosive", EXPLODING, D),
    "H201": Statement("Explosive; mass explosion hazard", EXPLODING, D),
    "H202": Statement("Explosive; severe projection hazard", EXPLODING, D),
    "H203": Statement("Explosive; fire, blast or projection hazard", EXPLODING, D),
    "H204": Statement("Fire or projection hazard", EXPLODING, W),
    "H205": Statement("May mass explode in fire", None, D),
    "H220": Statement("Extremely flammable gas", FLAME, D),
    "H221": Statement("Flammable gas", None, W),
    "H222": Statement("Extremely flammable aerosol", FLAME, D),
    "H223": Statement("Flammable aerosol", FLAME, W),
    "H224": Statement("Extremely flammable liquid and vapour", FLAME, D),
    "H225": Statement("Highly flammable liquid and vapour", FLAME, D),
    "H226": Statement("Flammable liquid and vapour", FLAME, W),
    "H227": Statement("Combustible liquid", None, W),
    "H228": Statement("Flammable solid", FLAME, D),
    "H229": Statement("Pressurised container: may burst if heated", None, W),
    "H240": Statement("Heating may cause an explosion", EXPLODING, D),
    "H242": Statement("Heating may cause a fire", FLAME, D),
    "H250": Statement("Catches fire spontaneously if exposed to air", FLAME, D),
    "H251": Statement("Self-heating; may catch fire", FLAME, D),
    "H252": Statement("Self-heating in large quantities; may catch fire", FLAME, W),
    "H260": Statement("In contact with water releases flammable gases which may ignite spontaneously", FLAME, D),
    "H261": Statement("In contact with water releases flammable gases", FLAME, D),
    "H270": Statement("May cause or intensify fire; oxidiser", OXIDISER, D),
    "H271": Statement("May cause fire or explosion; strong oxidiser", OXIDISER, D),
    "H272": Statement("May intensify fire; oxidiser", OXIDISER, D),
    "H280": Statement("Contains gas under pressure; may explode if heated", CYLINDER, W),
    "H281": Statement("Contains refrigerated gas; may cause cryogenic burns or injury", CYLINDER, W),
    "H290": Statement("May be corrosive to metals", CORROSION, W),
}

HEALTH_HAZARDS = {
    "H300": Statement("Fatal if swallowed", SKULL, D),
    "H301": Statement("Toxic if swallowed", SKULL, D),
    "H302": Statement("Harmful if swallowed", EXCLAMATION, W),
    "H303": Statement("May be harmful if swallowed", None, W),
    "H304": Statement("May be fatal if swallowed and enters airways", HEALTH, D),
    "H305": Statement("May be harmful if swallowed and enters airways", HEALTH, W),
    "H310": Statement("Fatal in contact with skin", SKULL, D),
    "H311": Statement("Toxic in contact with skin", SKULL, D),
    "H312": Statement("Harmful in contact with skin", EXCLAMATION, W),
    "H313": Statement("May be harmful in contact with skin", None, W),
    "H314": Statement("Causes severe skin burns and eye damage", CORROSION, D),
    "H315": Statement("Causes skin irritation", EXCLAMATION, W),
    "H316": Statement("Causes mild skin irritation", None, W),
    "H317": Statement("May cause an allergic skin reaction", EXCLAMATION, W),
    "H318": Statement("Causes serious eye damage", CORROSION, D),
    "H319": Statement("Causes serious eye irritation", EXCLAMATION, W),
    "H320": Statement("Causes eye irritation", None, W),
    "H330": Statement("Fatal if inhaled", SKULL, D),
    "H331": Statement("Toxic if inhaled", SKULL, D),
    "H332": Statement("Harmful if inhaled", EXCLAMATION, W),
    "H333": Statement("May be harmful if inhaled", None, W),
    "H334": Statement("May cause allergy or asthma symptoms or breathing difficulties if inhaled", HEALTH, D),
    "H335": Statement("May cause respiratory irritation", EXCLAMATION, W),
    "H336": Statement("May cause drowsiness or dizziness", EXCLAMATION, W),
    "H340": Statement("May cause genetic defects", HEALTH, D),
    "H341": Statement("Suspected of causing genetic defects", HEALTH, W),
    "H350": Statement("May cause cancer", HEALTH, D),
    "H350i": Statement("May cause cancer by inhalation", HEALTH, D),
    "H351": Statement("Suspected of causing cancer", HEALTH, W),
    "H360": Statement("May damage fertility or the unborn child", HEALTH, D),
    "H360F": Statement("May damage fertility", HEALTH, D),
    "H360D": Statement("May damage the unborn child", HEALTH, D),
    "H360FD": Statement("May damage fertility. May damage the unborn child", HEALTH, D),
    "H360Fd": Statement("May damage fertility. Suspected of damaging the unborn child", HEALTH, D),
    "H360Df": Statement("May damage the unborn child. Suspected of damaging fertility", HEALTH, D),
    "H361": Statement("Suspected of damaging fertility or the unborn child", HEALTH, W),
    "H361f": Statement("Suspected of damaging fertility", HEALTH, W),
    "H361d": Statement("Suspected of damaging the unborn child", HEALTH, W),
    "H361fd": Statement("Suspected of damaging fertility. Suspected of damaging the unborn child", HEALTH, W),
    "H362": Statement("May cause harm to breast-fed children", None, None),
    "H370": Statement("Causes damage to organs", HEALTH, D),
    "H371": Statement("May cause damage to organs", HEALTH, W),
    "H372": Statement("Causes damage to organs through prolonged or repeated exposure", HEALTH, D),
    "H373": Statement("May cause damage to organs through prolonged or repeated exposure", HEALTH, W),
}

ENVIRONMENTAL = {
    "H400": Statement("Very toxic to aquatic life", ENVIRONMENT, W),
    "H401": Statement("Toxic to aquatic life", None, None),
    "H402": Statement("Harmful to aquatic life", None, None),
    "H410": Statement("Very toxic to aquatic life with long lasting effects", ENVIRONMENT, W),
    "H411": Statement("Toxic to aquatic life with long lasting effects", ENVIRONMENT, None),
    "H412": Statement("Harmful to aquatic life with long lasting effects", None, None),
    "H413": Statement("May cause long lasting harmful effects to aquatic life", None, None),
    "H420": Statement(
        "Harms public health and the environment by destroying ozone in the upper atmosphere", EXCLAMATION, W
    ),
}

SUPPLEMENTAL = {
    "EUH014": Statement("Reacts violently with water", None, None),
    "EUH018": Statement("In use may form flammable/explosive vapour-air mixture", None, None),
    "EUH019": Statement("May form explosive peroxides", None, None),
    "EUH029": Statement("Contact with water liberates toxic gas", None, None),
    "EUH031": Statement("Contact with acids liberates toxic gas", None, None),
    "EUH032": Statement("Contact with acids liberates very toxic gas", None, None),
    "EUH066": Statement("Repeated exposure may cause skin dryness or cracking", None, None),
    "EUH070": Statement("Toxic by eye contact", None, None),
    "EUH071": Statement("Corrosive to the respiratory tract", None, None),
    "EUH203": Statement("Contains chromium (VI). May produce an allergic reaction", None, None),
    "EUH204": Statement("Contains isocyanates. May produce an allergic reaction", None, None),
    "EUH205": Statement("Contains epoxy constituents. May produce an allergic reaction", None, None),
    "EUH208": Statement(
        "Contains a sensitising substance (its name stands on the safety data sheet). May produce an allergic"
        " reaction",
        None,
        None,
    ),
    "EUH210": Statement("Safety data sheet available on request", None, None),
    "EUH211": Statement(
        "Warning! Hazardous respirable droplets may be formed when sprayed. Do not breathe spray or mist",
        None,
        None,
    ),
    "EUH212": Statement(
        "Warning! Hazardous respirable dust may be formed when used. Do not breathe dust", None, None
    ),
    "EUH380": Statement("May cause endocrine disruption in humans", None, D),
    "EUH381": Statement("Suspected of causing endocrine disruption in humans", None, W),
    "EUH430": Statement("May cause endocrine disruption in the environment", None, D),
    "EUH431": Statement("Suspected of causing endocrine disruption in the environment", None, W),
    "EUH440": Statement("Accumulates in the environment and living organisms including in humans", None, D),
    "EUH441": Statement("Strongly accumulates in the environment and living organisms including in humans", None, D),
    "EUH450": Statement("Can cause long-lasting and diffuse contamination of water resources", None, D),
    "EUH451": Statement("Can cause very long-lasting and diffuse contamination of water resources", None, D),
}

STATEMENTS: dict[str, Statement] = PHYSICAL | HEALTH_HAZARDS | ENVIRONMENTAL | SUPPLEMENTAL
