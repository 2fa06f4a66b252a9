"""Whether a bubble gets out of a film before it gels."""

import math

from trials.science import bubbles

from .form import SumForm, above_zero, number
from .lines import Given, Line, Sum

STOKES = "Stokes' rigid sphere, as surfactant makes of a bubble; textbooks of hydrodynamics"
THICKENING = "Stokes' rigid sphere with µ = µ₀ · e^(t/τ), through the whole film"


class RiseForm(SumForm):
    called = {
        "density_g_ml": "mix_g_ml",
        "viscosity_pa_s": "viscosity_mpa_s",
        "growth_s": "doubling_min",
        "gel_s": "gel_min",
    }
    diameter_um = number("Bubble", "µm", help_text="diameter", initial=100)
    film_um = number("Wet film", "µm")
    viscosity_mpa_s = number("Viscosity at the start", "mPa·s", validators=[above_zero])
    mix_g_ml = number("Density of the liquid", "g/mL", help_text="free of air")
    doubling_min = number(
        "Viscosity doubles every", "min", validators=[above_zero], help_text="in the film; empty: it stays"
    )
    gel_min = number("Gel after", "min", validators=[above_zero], help_text="in the film, not in the can")
    yield_pa = number("Yield value", "Pa")


def _liquid(given: Given) -> tuple[float, float]:
    return given.viscosity_mpa_s / 1000, given.mix_g_ml


def _growth_s(given: Given) -> float:
    return math.inf if given.doubling_min is None else bubbles.growth_from_doubling_s(60 * given.doubling_min)


def _curing(given: Given) -> dict[str, float]:
    return {"growth_s": _growth_s(given), "gel_s": 60 * given.gel_min}


def _held_um(given: Given) -> float:
    return 0.0 if given.yield_pa is None else bubbles.held_by_yield_um(given.yield_pa, given.mix_g_ml)


def _verdict(given: Given) -> str:
    found = bubbles.escape(given.diameter_um, given.film_um, *_liquid(given), **_curing(given))
    if given.diameter_um <= _held_um(given):
        return "trapped: the yield value holds it"
    return "escapes" if found.escapes else "trapped"


def _seconds(given: Given) -> float | str:
    if given.diameter_um <= _held_um(given):
        return "never: the yield value holds it"
    crossing = bubbles.escape(
        given.diameter_um, given.film_um, *_liquid(given), growth_s=_growth_s(given), gel_s=math.inf
    )
    return "never: the film thickens faster" if crossing.seconds is None else crossing.seconds


def _smallest(given: Given) -> float:
    """What Stokes lets out, where the yield value does not hold it anyway."""
    return max(_held_um(given), bubbles.smallest_escaping_um(given.film_um, *_liquid(given), **_curing(given)))


_BUBBLE = ("diameter_um", "viscosity_mpa_s", "mix_g_ml")
_FILM = ("film_um", "viscosity_mpa_s", "mix_g_ml", "gel_min")

RISE = Sum(
    "rise",
    "Bubble rise",
    "Whether a bubble gets out of a film that thickens to gel, and the smallest one that does.",
    RiseForm,
    (
        Line(
            "Escapes or trapped",
            "",
            "risen by gel against the film; never where the yield value holds it",
            THICKENING,
            ("diameter_um", *_FILM),
            _verdict,
        ),
        Line(
            "Time to the surface",
            "s",
            "−τ · ln(1 − h/(v₀ · τ))",
            f"{THICKENING}; may lie beyond gel",
            ("film_um", *_BUBBLE),
            _seconds,
            digits=3,
        ),
        Line(
            "Rise at the start",
            "µm/s",
            "Δρ · g · d²/(18 · µ)",
            STOKES,
            _BUBBLE,
            lambda g: 1e6 * bubbles.stokes_m_s(g.diameter_um, *_liquid(g)),
            digits=3,
        ),
        Line(
            "Rise at the start, drag of its own speed counted",
            "µm/s",
            "drag of a sphere at its Reynolds number",
            "drag correlation of the library fluids, v_terminal; the same as Stokes for small bubbles",
            _BUBBLE,
            lambda g: 1e6 * bubbles.rise_m_s(g.diameter_um, *_liquid(g)),
            digits=3,
        ),
        Line(
            "Risen by gel",
            "µm",
            "v₀ · τ · (1 − e^(−t/τ))",
            f"{THICKENING}; in a liquid without bound above or yield value",
            ("diameter_um", "viscosity_mpa_s", "mix_g_ml", "gel_min"),
            lambda g: bubbles.risen_um(60 * g.gel_min, g.diameter_um, *_liquid(g), growth_s=_growth_s(g)),
            digits=3,
        ),
        Line(
            "Smallest bubble that escapes",
            "µm",
            "the diameter that crosses the film just at gel, or what the yield value holds where that is more",
            THICKENING,
            _FILM,
            _smallest,
            digits=3,
        ),
        Line(
            "Held by the yield value",
            "µm and below",
            "3 · τ_y/(0.143 · Δρ · g)",
            "A. N. Beris et al., J. Fluid Mech. 158 (1985) 219; limit as in the abstract, definition from memory",
            ("yield_pa", "mix_g_ml"),
            lambda g: bubbles.held_by_yield_um(g.yield_pa, g.mix_g_ml),
            digits=3,
        ),
    ),
    cautions=(
        "A pot life is measured in a can, which keeps its heat: it is not the open time of a thin film. Enter the gel"
        " time of the film.",
    ),
)
