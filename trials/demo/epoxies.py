"""Epoxies as recipes: a filled floor, a clear casting resin, and a tank coating for named people only."""

from .base_rows import BaseRow, ComponentRow, RevisionRow

_EPOXY_FILLERS = """
    PI-701    4.0  grind     G-5501
    PI-704    0.1  grind     G-5540
    FI-607   10.0  grind     F-3220
    FI-601   31.0  grind     F-3102
    FI-619    0.2  grind     F-3502
    AD-974    0.3  let-down  Q-1177
"""
_EPOXY_A2 = (
    """
    EP-104   46.0  grind     {resin}
    RD-021    7.0  let-down  D-2214
    PL-040    1.0  let-down  S-7302
    AD-971    0.4  grind     Q-1109
"""
    + _EPOXY_FILLERS
)
_EPOXY_B2 = """
    HD-210   80.0  -  {adduct}
    HD-207   16.0  -  {diamine}
    PL-040    1.0  -  {alcohol}
    CA-954    3.0  -  A-4901
"""

FLOOR = BaseRow(
    code="EF-21",
    name="Self-levelling epoxy floor, grey",
    chemistry="epoxy-amine",
    field="floor",
    film_um="2000",
    remarks="The house's own yardstick: every candidate for epoxy floors meets this one first.",
    revisions=(
        RevisionRow(
            690, "09:40", "peer", "first",
            (
                ComponentRow("A", "100", "resin, grey", density="1.546", viscosity="2600", lines="""
    EP-104   44.0  grind     R-7702
    RD-024    7.0  let-down  D-1180
    PL-040    3.0  let-down  S-7302
    AD-971    0.4  grind     Q-1109
""" + _EPOXY_FILLERS),
                ComponentRow("B", "25", "hardener", viscosity="210", lines="""
    HD-210   78.0  -  A-4107
    HD-207   12.0  -  A-3340
    PL-040    7.0  -  S-7302
    CA-954    3.0  -  A-4901
"""),
            ),
            {"air_free_density_g_ml": "1.404", "air_free_method": "pressure cup, 10 bar (ISO 2811-4)",
             "viscosity_mpa_s": "1450", "yield_pa": "0.3", "pot_life_min": "34"},
        ),
        RevisionRow(
            430, "10:15", "jonna", "Less benzyl alcohol for emissions; difunctional diluent for the lost hardness.",
            (
                ComponentRow("A", "100", "resin, grey", density="1.584", viscosity="2900",
                             lines=_EPOXY_A2.format(resin="R-7719")),
                ComponentRow("B", "26", "hardener", viscosity="260",
                             lines=_EPOXY_B2.format(adduct="A-4107", diamine="A-3340", alcohol="S-7302")),
            ),
            {"air_free_density_g_ml": "1.423", "air_free_method": "pressure cup, 10 bar (ISO 2811-4)",
             "viscosity_mpa_s": "1720", "yield_pa": "0.4", "pot_life_min": "31"},
        ),
        RevisionRow(
            120, "14:05", "lena",
            "Resin lot R-7730 has 196.5 g/eq on its certificate where 188 is usual: 25 parts of B instead of 26.",
            (
                ComponentRow("A", "100", "resin, grey", viscosity="3300", water="0.06",
                             lines=_EPOXY_A2.format(resin="R-7730")),
                ComponentRow("B", "25", "hardener", viscosity="260",
                             lines=_EPOXY_B2.format(adduct="A-4152", diamine="A-3391", alcohol="S-7366")),
            ),
            {"air_free_density_g_ml": "1.4265", "air_free_method": "degassed sample in the pyknometer",
             "viscosity_mpa_s": "1880", "yield_pa": "0.4", "pot_life_min": "30"},
        ),
    ),
)  # fmt: skip

_HARDENER = """
    HD-220   56.0  -  A-4603
    HD-207   24.0  -  {diamine}
    PL-040   14.0  -  {alcohol}
    HD-204    6.0  -  A-3362
"""

CASTING = BaseRow(
    code="EC-12",
    name="Clear epoxy casting resin",
    chemistry="epoxy-amine",
    field="casting resin",
    film_um="10000",
    remarks="Anything that hazes shows here. A cast of 100 g grows hot: cast thin layers, never a full beaker.",
    revisions=(
        RevisionRow(
            640, "09:00", "nadia", "first",
            (
                ComponentRow("A", "100", "resin, clear", density="1.111", viscosity="1150", lines="""
    EP-104   86.0  let-down  R-7702
    RD-024   13.7  let-down  D-1180
    AD-974    0.3  let-down  Q-1177
"""),
                ComponentRow("B", "39", "hardener", viscosity="120",
                             lines=_HARDENER.format(diamine="A-3340", alcohol="S-7302")),
            ),
            {"air_free_density_g_ml": "1.081", "air_free_method": "degassed sample in the pyknometer",
             "viscosity_mpa_s": "640", "pot_life_min": "42"},
        ),
        RevisionRow(
            300, "15:20", "nadia", "A turned milky in the cold store: crystals of the resin. A/F blend instead.",
            (
                ComponentRow("A", "100", "resin, clear", density="1.127", viscosity="980", water="0.03", lines="""
    EP-112   84.0  let-down  R-8011
    RD-024    9.7  let-down  D-1180
    RD-021    6.0  let-down  D-2214
    AD-974    0.3  let-down  Q-1177
"""),
                ComponentRow("B", "42", "hardener", viscosity="120",
                             lines=_HARDENER.format(diamine="A-3340", alcohol="S-7302")),
            ),
            {"air_free_density_g_ml": "1.089", "air_free_method": "degassed sample in the pyknometer",
             "viscosity_mpa_s": "610", "pot_life_min": "38"},
        ),
    ),
)  # fmt: skip

TANK = BaseRow(
    code="EM-52",
    name="High-solids epoxy tank coating, red, Eastquay project",
    chemistry="epoxy-amine",
    field="marine",
    film_um="250",
    remarks="Sprayed. What looks like air may be solvent: read it after flash-off as well.",
    shared=("tibor", "ruth"),
    revisions=(
        RevisionRow(
            260, "13:00", "caspar", "first",
            (
                ComponentRow("A", "100", "resin, red", density="1.601", viscosity="4800", lines="""
    EP-130   26.0  grind     R-5523
    EP-104   14.0  grind     R-7719
    RD-024    2.0  let-down  D-1180
    AD-971    0.6  grind     Q-1109
    PI-707    8.0  grind     G-5562
    PI-710    9.0  grind     G-5580
    FI-607   16.0  grind     F-3220
    FI-616   15.5  grind     F-3405
    AD-977    0.9  grind     Q-1215
    SO-901    7.0  let-down  S-7110
    AD-980    1.0  let-down  Q-1248
"""),
                ComponentRow("B", "21", "hardener", viscosity="480", lines="""
    HD-215   92.0  -  A-4480
    CA-954    3.0  -  A-4901
    PL-040    5.0  -  S-7302
"""),
            ),
            {"air_free_density_g_ml": "1.441", "air_free_method": "pressure cup, 10 bar (ISO 2811-4)",
             "viscosity_mpa_s": "2200", "yield_pa": "4", "pot_life_min": "44"},
        ),
    ),
)  # fmt: skip
