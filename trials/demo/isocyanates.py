"""Polyurethane and polyaspartic as recipes, both cured by isocyanate: floors and a top coat."""

from .base_rows import BaseRow, ComponentRow, RevisionRow

FLOOR = BaseRow(
    code="UF-33",
    name="Self-levelling polyurethane floor, light grey",
    chemistry="polyurethane",
    field="floor",
    film_um="2000",
    remarks="Bubbles that come after half an hour are carbon dioxide: look at the water before blaming the additive.",
    revisions=(
        RevisionRow(
            600, "11:20", "ayo", "first",
            (
                ComponentRow("A", "100", "polyol, light grey", density="1.527", viscosity="3400", lines="""
    PO-301   39.0   grind     P-1207
    PO-304    5.0   grind     P-1255
    AD-971    0.5   grind     Q-1109
    PI-701    4.0   grind     G-5501
    FI-607    6.0   grind     F-3220
    FI-610   40.0   grind     F-3308
    FI-619    0.3   grind     F-3502
    WS-804    5.0   let-down  F-3744
    AD-974    0.15  let-down  Q-1177
    CA-951    0.05  let-down  Q-0208
"""),
                ComponentRow("B", "22", "isocyanate", viscosity="210", lines="NC-401  100  -  I-9004"),
            ),
            {"air_free_density_g_ml": "1.461", "air_free_method": "degassed sample in the pyknometer",
             "viscosity_mpa_s": "2300", "yield_pa": "0.6", "pot_life_min": "26"},
        ),
        RevisionRow(
            340, "09:10", "ayo", "Filler lot F-3308 was wet: dry lot, more molecular sieve, a little less filler.",
            (
                ComponentRow("A", "100", "polyol, light grey", density="1.497", viscosity="3100", water="0.02",
                             lines="""
    PO-301   38.0   grind     P-1207
    PO-304    6.0   grind     P-1255
    AD-971    0.5   grind     Q-1109
    PI-701    4.0   grind     G-5501
    FI-607    5.0   grind     F-3220
    FI-610   38.0   grind     F-3341
    FI-619    0.3   grind     F-3502
    WS-804    8.0   let-down  F-3744
    AD-974    0.15  let-down  Q-1177
    CA-951    0.05  let-down  Q-0208
"""),
                ComponentRow("B", "23", "isocyanate", viscosity="215", lines="NC-401  100  -  I-9004"),
            ),
            {"air_free_density_g_ml": "1.438", "air_free_method": "pressure cup, 10 bar (ISO 2811-4)",
             "viscosity_mpa_s": "2050", "yield_pa": "0.5", "pot_life_min": "29"},
        ),
    ),
)  # fmt: skip

_ASPARTIC_B = """
    NC-407   60  -  I-9210
    NC-410   40  -  I-9315
"""

TOP_COAT = BaseRow(
    code="PF-41",
    name="Polyaspartic top coat, pigmented, for the roller",
    chemistry="polyaspartic",
    field="floor",
    film_um="300",
    additive="yes",
    additive_note=(
        "0.2 % of AR-06 in component A: without it the grind climbs out of the vessel. The blank holds it as well"
    ),
    revisions=(
        RevisionRow(
            520, "13:30", "nadia", "first",
            (
                ComponentRow("A", "100", "aspartate, white", density="1.356", viscosity="900", water="0.03",
                             lines="""
    AS-501   36.0  grind     N-2045
    AS-507   18.0  let-down  N-2070
    AD-971    0.8  grind     Q-1109
    PI-701   20.0  grind     G-5501
    PI-704    0.2  grind     G-5540
    FI-607    5.0  grind     F-3220
    FI-616    6.0  grind     F-3405
    WS-801    3.0  grind     F-3710
    AR-06     0.2  grind     B-0219
    SO-904    9.5  let-down  S-7145
    AD-974    0.3  let-down  Q-1177
    AD-983    1.0  let-down  Q-1290
"""),
                ComponentRow("B", "44", "isocyanate", viscosity="950", lines=_ASPARTIC_B),
            ),
            {"air_free_density_g_ml": "1.283", "air_free_method": "pressure cup, 10 bar (ISO 2811-4)",
             "viscosity_mpa_s": "620", "pot_life_min": "9"},
        ),
        RevisionRow(
            250, "08:50", "nadia", "Nine minutes are too few for a roller: the slow aspartate for the quick one.",
            (
                ComponentRow("A", "100", "aspartate, white", density="1.354", viscosity="1050", water="0.03",
                             lines="""
    AS-501   26.0  grind     N-2045
    AS-504   30.0  let-down  N-2061
    AD-971    0.8  grind     Q-1109
    PI-701   20.0  grind     G-5501
    PI-704    0.2  grind     G-5540
    FI-607    5.0  grind     F-3220
    FI-616    6.0  grind     F-3405
    WS-801    3.0  grind     F-3710
    AR-06     0.2  grind     B-0219
    SO-904    7.5  let-down  S-7145
    AD-974    0.3  let-down  Q-1177
    AD-983    1.0  let-down  Q-1290
"""),
                ComponentRow("B", "43", "isocyanate", viscosity="950", lines=_ASPARTIC_B),
            ),
            {"air_free_density_g_ml": "1.284", "air_free_method": "pressure cup, 10 bar (ISO 2811-4)",
             "viscosity_mpa_s": "780", "pot_life_min": "22"},
        ),
    ),
)  # fmt: skip
