"""Air from density, and what a defoamer achieves against the blank."""

from trials.science import air

from .form import SumForm, number
from .lines import Given, Line, Sum

PRACTICE = "common practice, no source"
AIR_G_ML = 0.0012
RELEASED_PCT = 0.2


class AirForm(SumForm):
    called = {"u_density": "u_density_g_ml", "u_air_free": "u_air_free_g_ml"}
    density_g_ml = number("Density with its air", "g/mL")
    air_free_g_ml = number("Density free of air", "g/mL", help_text="measured on a degassed sample is best")
    u_density_g_ml = number("Uncertainty of the density", "g/mL", initial="0.002", help_text="one standard deviation")
    u_air_free_g_ml = number("Uncertainty of the one free of air", "g/mL", initial="0.002")
    blank_g_ml = number("Density of the blank", "g/mL", help_text="of the same session")


_BOTH = ("density_g_ml", "air_free_g_ml")


def _uncertainty(given: Given) -> float:
    return air.air_pct_uncertainty(
        given.density_g_ml, given.air_free_g_ml, given.u_density_g_ml, given.u_air_free_g_ml
    )


def _remarks(given: Given):
    if None in (given.density_g_ml, given.air_free_g_ml, given.u_density_g_ml, given.u_air_free_g_ml):
        return
    content, uncertain = air.air_pct(given.density_g_ml, given.air_free_g_ml), _uncertainty(given)
    if content < 2 * uncertain:
        yield (
            "note",
            f"The air found, {content:.2f} %, is less than twice its uncertainty of {uncertain:.2f} %: maybe none.",
        )


AIR = Sum(
    "air",
    "Air from density",
    "How much air a liquid holds, how sure that is, and how much of the blank's air is gone.",
    AirForm,
    (
        Line(
            "Air content",
            "% by volume",
            "(ρ₀ − ρ)/ρ₀ · 100",
            "balance of volumes, the mass of the air neglected",
            _BOTH,
            lambda g: air.air_pct(g.density_g_ml, g.air_free_g_ml),
            digits=3,
        ),
        Line(
            "Its standard uncertainty",
            "% by volume",
            "√(u(ρ)² + (ρ/ρ₀ · u(ρ₀))²)/ρ₀ · 100",
            "first-order propagation, JCGM 100; the two taken as independent",
            (*_BOTH, "u_density_g_ml", "u_air_free_g_ml"),
            _uncertainty,
            digits=2,
        ),
        Line(
            "Air content, the mass of the air counted",
            "% by volume",
            "(ρ₀ − ρ)/(ρ₀ − 0.0012) · 100",
            "balance of volumes; 0.0012 g/mL is air at room conditions",
            _BOTH,
            lambda g: air.air_pct(g.density_g_ml, g.air_free_g_ml, air_g_ml=AIR_G_ML),
            digits=3,
        ),
        Line(
            "Defoaming efficiency",
            "%",
            "(ρ − ρ of the blank)/(ρ₀ − ρ of the blank) · 100",
            "common in trade guides: 0 is the blank, 100 is free of air, below 0 is worse than the blank",
            (*_BOTH, "blank_g_ml"),
            lambda g: air.defoaming_efficiency_pct(g.density_g_ml, g.blank_g_ml, g.air_free_g_ml),
            digits=3,
        ),
        Line(
            "Density at which the air counts as released",
            "g/mL",
            "ρ₀ · (1 − 0.2/100)",
            "ASTM D3427 takes 0.2 % by volume as the end of air release",
            ("air_free_g_ml",),
            lambda g: air.density_at_air_g_ml(g.air_free_g_ml, RELEASED_PCT),
            digits=5,
        ),
    ),
    remarks=_remarks,
)
