"""B for a weighed A, the index with additive and water in it, and the heat that comes of it."""

import math

from trials.models.bases import BinderChemistry
from trials.queries.shift import CORRECT_ABOVE_PCT
from trials.science import cure, dosage, stoichiometry

from .form import SumForm, choice, number, per_cent, same
from .lines import Given, Line, Sum

PRACTICE = "common practice, no source"
NO, YES = "no", "yes"
KNOWN = [(value, label) for value, label in BinderChemistry.choices if value in stoichiometry.CHEMISTRIES]
HARDENER_CAUTIONS = (
    "Amine hardeners burn and sensitise, epoxy resins sensitise, isocyanates sensitise the airways.",
    "Safety data sheets, local rules and qualified people take precedence.",
)


class RatioForm(SumForm):
    called = {
        "resin_g": "a_g",
        "hardener_before_g": "a_g",
        "mass_g[0]": "a_g",
        "mass_g[1]": "additive_g",
        "mass_g[2]": "water_pct",
        "equivalent_g[0]": "resin_equivalent_g",
        "equivalent_g[1]": "additive_equivalent_g",
    }
    a_g = number("Component A weighed", "g", help_text="free of additive")
    parts_a = number("Parts of A", "", initial=100, help_text="by mass, as sold")
    parts_b = number("Parts of B", "")
    parts_c = number("Parts of C", "")
    additive_g = number("Additive in A", "g", initial=0)
    additive_counts = choice("Additive counts as part of A", same((NO, YES)), initial=NO)
    chemistry = choice("Chemistry", [("", "not known"), *KNOWN])
    resin_equivalent_g = number("Equivalent of A", "g/eq", help_text="as weighed, with all that is inert")
    hardener_equivalent_g = number("Equivalent of B", "g/eq", help_text="as weighed, with all that is inert")
    water_pct = number("Water in A", "%", initial=0, validators=[per_cent], help_text="Karl Fischer")
    additive_group = choice("Reactive group of the additive", [("", "none"), *same(stoichiometry.GROUPS)])
    additive_equivalent_g = number("Equivalent of the additive", "g/eq")


class HeatForm(SumForm):
    called = {"equivalent_mass_g": "resin_equivalent_g", "a_g": "resin_equivalent_g"}
    known_min = number("Pot life", "min", help_text="of the same mass in the same can")
    known_c = number("at", "°C", initial=23)
    at_c = number("wanted at", "°C", initial=30)
    resin_equivalent_g = number("Equivalent of A", "g/eq", help_text="as weighed, with all that is inert")
    parts_a = number("Parts of A", "", initial=100, help_text="by mass")
    parts_b = number("Parts of B", "")
    heat_kj_eq = number("Heat of reaction", "kJ/eq", initial=105, help_text="105 for epoxide with amine, from memory")
    heat_capacity_j_g_k = number("Heat capacity", "J/(g·K)", initial=2, help_text="from memory; filled ones less")


def _b_g(given: Given) -> float:
    return dosage.partner_g(given.a_g, given.parts_a, given.parts_b, **_additive(given))


def _c_g(given: Given) -> float:
    return dosage.partner_g(given.a_g, given.parts_a, given.parts_c, **_additive(given))


def _additive(given: Given) -> dict:
    return {"additive_g": given.additive_g or 0.0, "additive_counts": given.additive_counts == YES}


def water_g(given: Given) -> float:
    return given.a_g * (given.water_pct or 0.0) / 100


def _side(given: Given) -> str | None:
    """The side on which the additive's own group reacts here; None where it is inert."""
    if not given.additive_group or not given.additive_g or not given.additive_equivalent_g:
        return None
    return stoichiometry.side(given.additive_group, given.chemistry)


def _loaded_a(given: Given) -> tuple[float, float]:
    """A with its water and additive: grams, and grams for one equivalent of the resin's side."""
    masses = [given.a_g, given.additive_g or 0.0, water_g(given)]
    own = given.additive_equivalent_g if _side(given) == "resin" else math.inf
    wet = stoichiometry.water_equivalent_g if stoichiometry.reacts("water", given.chemistry) else math.inf
    # The water stands in the mass of A already; its own mass falls out again, mass and equivalent go together.
    equivalents = [given.resin_equivalent_g, own, wet]
    return sum(masses), stoichiometry.equivalent_of_blend(masses, equivalents)


def _index(given: Given) -> float:
    return stoichiometry.index(given.a_g, given.resin_equivalent_g, _b_g(given), given.hardener_equivalent_g)


def corrected_b_g(given: Given) -> float:
    """B that keeps the index as sold, with what water and additive use up, less what the additive brings."""
    mass, equivalent = _loaded_a(given)
    wanted = stoichiometry.hardener_g(mass, equivalent, given.hardener_equivalent_g, index=_index(given))
    if _side(given) != "hardener":
        return wanted
    own = stoichiometry.hardener_g(given.additive_g, given.additive_equivalent_g, given.hardener_equivalent_g)
    return max(0.0, wanted - own)


def shift_pct(given: Given) -> float:
    return stoichiometry.shift_pct(_b_g(given), corrected_b_g(given))


def _index_loaded(given: Given) -> float:
    """Of what is weighed: A with its water and additive, and B as sold."""
    mass, equivalent = _loaded_a(given)
    b_g, b_equivalent = _b_g(given), given.hardener_equivalent_g
    if _side(given) == "hardener":
        masses, equivalents = [b_g, given.additive_g], [b_equivalent, given.additive_equivalent_g]
        b_g, b_equivalent = sum(masses), stoichiometry.equivalent_of_blend(masses, equivalents)
    return stoichiometry.index(mass, equivalent, b_g, b_equivalent)


def _band(given: Given) -> str:
    band = stoichiometry.index_band(given.chemistry)
    return f"{band.usual_low:.2f} to {band.usual_high:.2f}, at most {band.low:.2f} to {band.high:.2f}, {band.over}"


def _gas(given: Given) -> float | str:
    if not stoichiometry.reacts("water", given.chemistry):
        return "none: water does not react here"
    return stoichiometry.carbon_dioxide_ml(water_g(given))


def _ratio_remarks(given: Given):
    known = (given.a_g, given.parts_a, given.parts_b, given.resin_equivalent_g, given.hardener_equivalent_g)
    if not given.chemistry or None in known:
        return
    band, index = stoichiometry.index_band(given.chemistry), _index_loaded(given)
    if not band.low <= index <= band.high:
        yield "warning", f"The index {index:.3f} lies outside {band.low:.2f} to {band.high:.2f} ({band.over})."
    if abs(shift_pct(given)) > CORRECT_ABOVE_PCT:
        yield (
            "note",
            f"The demand for B shifts by more than {CORRECT_ABOVE_PCT:g} %: a correction is worth a thought.",
        )
    if given.water_pct and stoichiometry.reacts("water", given.chemistry):
        yield (
            "warning",
            "Water and isocyanate set carbon dioxide free: no defoamer cures that foam, and a closed tin can burst.",
        )


def _mass_of_one_equivalent(given: Given) -> float:
    return given.resin_equivalent_g + dosage.partner_g(given.resin_equivalent_g, given.parts_a, given.parts_b)


def _rise(given: Given) -> float:
    return cure.adiabatic_rise_k(
        _mass_of_one_equivalent(given), heat_kj_eq=given.heat_kj_eq, heat_capacity_j_g_k=given.heat_capacity_j_g_k
    )


_WEIGHED = ("a_g", "parts_a", "parts_b")
_EQUIVALENTS = (*_WEIGHED, "resin_equivalent_g", "hardener_equivalent_g")
_LOADED = ("chemistry", *_EQUIVALENTS)
RATIO = Sum(
    "ratio",
    "Mixing ratio",
    "B for a weighed A, and what additive and water in A do to the index.",
    RatioForm,
    (
        Line(
            "Component B to weigh",
            "g",
            "A · parts of B/parts of A",
            f"ratio as sold; whether additive counts as A: {PRACTICE}",
            _WEIGHED,
            _b_g,
            digits=6,
        ),
        Line(
            "Component C to weigh",
            "g",
            "A · parts of C/parts of A",
            f"ratio as sold; whether additive counts as A: {PRACTICE}",
            ("a_g", "parts_a", "parts_c"),
            _c_g,
            digits=6,
        ),
        Line(
            "Index as sold",
            "",
            "(B/equivalent of B)/(A/equivalent of A)",
            "hardener equivalents over resin equivalents, as ASTM D7997 defines the index for isocyanates",
            _EQUIVALENTS,
            _index,
        ),
        Line("Usual index", "", "band of the chemistry", PRACTICE, ("chemistry",), _band),
        Line(
            "Index with water and additive",
            "",
            "the same, with their equivalents; water 9.008 g/eq where it reacts",
            "blend Σm/Σ(m/E): turiya.nl, “Guide to epoxy calculations”; inert parts add mass only",
            _LOADED,
            _index_loaded,
        ),
        Line(
            "Shift of the demand for B",
            "%",
            "(B with/B without − 1) · 100",
            "arithmetic, at the index as sold; water counts as part of the A weighed",
            _LOADED,
            shift_pct,
            digits=3,
        ),
        Line(
            "B corrected for that shift",
            "g",
            "B that keeps the index as sold",
            f"the ratio is normally weighed as sold; {PRACTICE}",
            _LOADED,
            corrected_b_g,
            digits=6,
        ),
        Line(
            "Carbon dioxide from the water in A",
            "mL at 23 °C",
            "water/18.016 · R·T/p",
            "ideal gas with the CODATA gas constant, if all of it leaves the liquid",
            ("chemistry", "a_g"),
            _gas,
            digits=3,
        ),
    ),
    remarks=_ratio_remarks,
    cautions=HARDENER_CAUTIONS,
)

HEAT = Sum(
    "heat",
    "Pot life and heat",
    "Pot life at another temperature, and how hot a large mix could get.",
    HeatForm,
    (
        Line(
            "Pot life there",
            "min",
            "half for every 10 °C more",
            "rule of thumb of two makers of epoxy systems, for some ten degrees; a thin film stays open longer",
            ("known_min", "known_c", "at_c"),
            lambda g: cure.pot_life_min(g.known_min, g.known_c, g.at_c),
            digits=3,
        ),
        Line(
            "Mix that holds one equivalent",
            "g",
            "equivalent of A + its B",
            "with all that is inert; at the ratio entered",
            ("resin_equivalent_g", "parts_a", "parts_b"),
            _mass_of_one_equivalent,
        ),
        Line(
            "Rise in temperature at most",
            "K",
            "heat of reaction/(mass · heat capacity)",
            "heat balance of a mix that keeps all of its heat; the figures it starts from are from memory",
            ("resin_equivalent_g", "parts_a", "parts_b", "heat_kj_eq", "heat_capacity_j_g_k"),
            _rise,
            digits=3,
        ),
    ),
    cautions=(
        "A large mixed mass can run away with heat: 100 g of some epoxy systems pass 200 °C. Mix small, spread it"
        " out, do not close leftovers, keep out of the fume.",
        *HARDENER_CAUTIONS,
    ),
)
