"""Customers' systems as sold: no recipe, only what was measured on them."""

from .base_rows import BaseRow, ComponentRow, RevisionRow

FLOOR = BaseRow(
    code="BB-61",
    name="Hallsby Floors, epoxy floor as sold, grey",
    chemistry="epoxy-amine",
    field="floor",
    film_um="3000",
    black_box=True,
    additive="may",
    additive_note="the customer does not say; A foams less than its viscosity would lead one to expect",
    revisions=(
        RevisionRow(
            400, "10:30", "jonna", "first",
            (
                ComponentRow("A", "100", "as sold", "1.52", "4100", batch="HB 22-118", received=405),
                ComponentRow("B", "20", "as sold", "1.01", "320", batch="HB 22-121", received=405),
            ),
            {"air_free_density_g_ml": "1.401", "air_free_method": "pressure cup, 10 bar (ISO 2811-4)",
             "viscosity_mpa_s": "2500", "pot_life_min": "28"},
        ),
        RevisionRow(
            90, "11:00", "ruth", "New batches from the customer; a complaint about bubbles hangs on them.",
            (
                ComponentRow("A", "100", "as sold", "1.51", "4600", batch="HB 23-307", received=94),
                ComponentRow("B", "20", "as sold", "1.01", "330", batch="HB 23-311", received=94),
            ),
            {"air_free_density_g_ml": "1.394", "air_free_method": "pressure cup, 10 bar (ISO 2811-4)",
             "viscosity_mpa_s": "2800", "pot_life_min": "27"},
        ),
    ),
)  # fmt: skip

COIL = BaseRow(
    code="BB-62",
    name="Brunnmark Coils, polyurethane casting resin, black",
    chemistry="polyurethane",
    field="casting resin",
    film_um="20000",
    black_box=True,
    additive="may",
    additive_note="the data sheet says “deaerated”, not how",
    revisions=(
        RevisionRow(
            150, "10:10", "ruth", "first",
            (
                ComponentRow("A", "100", "filled polyol, as sold", "1.54", "5200", water="0.05", batch="BM-4471",
                             received=152),
                ComponentRow("B", "18", "isocyanate, as sold", "1.22", "90", batch="BM-4480", received=152),
            ),
            {"air_free_density_g_ml": "1.477", "air_free_method": "degassed sample in the pyknometer",
             "viscosity_mpa_s": "2700", "pot_life_min": "35"},
        ),
    ),
)  # fmt: skip
