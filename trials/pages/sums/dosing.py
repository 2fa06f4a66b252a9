"""Dosage to grams and back, topping up, and diluting what is too little for the balance."""

from trials.models.bases import Letter
from trials.models.series import Basis, Counting, Supplied
from trials.science import dosage
from trials.science.dosage import ComponentMass

from .form import SumForm, choice, number, per_cent
from .lines import Given, Line, Sum

PRACTICE = "common practice, no source"
MASS_SHARE = "arithmetic of a mass share; which counting is used is common practice, no source"
FREE = "free of additive"
COUNTED = "on top: p·M; within: p·M/(1 − p), with p = dosage/active matter"


class CupForm(SumForm):
    """A cup by its components, and what the per cent are of."""

    called = {
        **{f"components['{letter}'].mass_g": f"{letter.lower()}_g" for letter in Letter.values},
        **{f"components['{letter}'].binder_solids_g": f"{letter.lower()}_solids_pct" for letter in Letter.values},
    }
    basis = choice("Per cent of", Basis.choices, initial=Basis.TOTAL)
    component = choice("Which component", Letter.choices, initial=Letter.A, help_text="where the per cent are of one")
    counting = choice("Counted", Counting.choices, initial=Counting.ON_TOP)
    supplied = choice("Per cent are of the additive", Supplied.choices, initial=Supplied.SUPPLIED)
    active_pct = number("Active matter", "%", initial=100, help_text="where the per cent are of active matter")
    a_g = number("Component A", "g", help_text=FREE)
    b_g = number("Component B", "g", help_text=FREE)
    c_g = number("Component C", "g", help_text=FREE)
    a_solids_pct = number(
        "Binder solids in A", "%", validators=[per_cent], help_text="where the per cent are of them"
    )
    b_solids_pct = number("Binder solids in B", "%", validators=[per_cent])
    c_solids_pct = number("Binder solids in C", "%", validators=[per_cent])


class DosageForm(CupForm):
    dosage_pct = number("Dosage", "%")
    strength_pct = number("Strength of the dilution", "%", help_text="additive as supplied in it")
    balance_step_g = number("Step of the balance", "g", initial="0.01")
    field_order = ("dosage_pct",)


class WeighedForm(CupForm):
    called = CupForm.called | {"basis_g": "a_g"}
    additive_g = number("Additive weighed", "g", help_text="as supplied, all portions together")
    field_order = ("additive_g",)


class TopUpForm(CupForm):
    from_pct = number("Dosage it has", "%")
    to_pct = number("Dosage wanted", "%")
    field_order = ("from_pct", "to_pct")


class DilutionForm(SumForm):
    additive_g = number("Additive wanted", "g", help_text="as supplied")
    strength_pct = number("Strength of the dilution", "%", help_text="additive as supplied in it", initial=10)
    balance_step_g = number("Step of the balance", "g", initial="0.01")


def components(given: Given) -> dict[str, ComponentMass]:
    """The components that were entered, by letter."""
    found = {}
    for letter in Letter.values:
        mass = getattr(given, f"{letter.lower()}_g")
        solids = getattr(given, f"{letter.lower()}_solids_pct")
        if mass is not None:
            found[letter] = ComponentMass(mass, None if solids is None else mass * solids / 100)
    return found


def basis_g(given: Given, basis: str | None = None) -> float:
    return dosage.basis_g(basis or given.basis, components(given), given.component)


def active_pct(given: Given) -> float:
    """All of it counts where the per cent are of the additive as supplied."""
    return 100.0 if given.supplied == Supplied.SUPPLIED or given.active_pct is None else given.active_pct


def _counted(given: Given) -> dict:
    return {"counting": given.counting, "active_pct": active_pct(given)}


def _other_counting(given: Given) -> str:
    return Counting.WITHIN if given.counting == Counting.ON_TOP else Counting.ON_TOP


def _grams(given: Given) -> float:
    return dosage.additive_g(given.dosage_pct, basis_g(given), **_counted(given))


def _as_weighed(given: Given, **otherwise) -> float:
    return dosage.dosage_pct(given.additive_g, basis_g(given), **_counted(given) | otherwise)


def _dosed_otherwise(given: Given) -> float:
    counted = {"counting": _other_counting(given), "active_pct": active_pct(given)}
    return dosage.dosage_pct(_grams(given), basis_g(given), **counted)


def _restated(basis: str):
    def figure(given: Given) -> float:
        active = active_pct(given)
        return dosage.dosage_pct(_grams(given), basis_g(given, basis), active_pct=active)

    return figure


def _rounding(grams: float, given: Given) -> float | str:
    return dosage.half_step_pct(grams, given.balance_step_g) if grams else "nothing to weigh"


def _top_up(given: Given) -> float:
    return dosage.top_up_g(given.from_pct, given.to_pct, basis_g(given), **_counted(given))


def _alone(given: Given):
    if given.basis != Basis.COMPONENT and len(components(given)) == 1:
        yield "note", "Only one component is entered: the total is that component alone."
    if given.supplied == Supplied.SUPPLIED and given.active_pct not in (None, 100.0):
        yield "note", f"Active matter ({given.active_pct:g} %) does not count here: the per cent are as supplied."


_BASIS = Line(
    "Mass that the per cent are of",
    "g",
    "total: all components; binder solids: Σ component × its binder solids",
    f"always free of additive; {PRACTICE}",
    ("a_g",),
    basis_g,
    digits=6,
)
_ROUNDING = "half a step of the balance over the dose: the rounding that no care avoids"

DOSAGE = Sum(
    "dosage",
    "Dosage to grams",
    "How much additive to weigh for a dosage, and how it reads on another basis.",
    DosageForm,
    (
        _BASIS,
        Line("Additive to weigh", "g as supplied", COUNTED, MASS_SHARE, ("dosage_pct", "a_g"), _grams, digits=5),
        Line(
            "Rounding of the balance",
            "% of the dose, up or down",
            _ROUNDING,
            "arithmetic",
            ("dosage_pct", "a_g", "balance_step_g"),
            lambda g: _rounding(_grams(g), g),
            digits=2,
        ),
        Line(
            "The same, counted the other way",
            "%",
            "within = on top/(1 + on top)",
            MASS_SHARE,
            ("dosage_pct", "a_g"),
            _dosed_otherwise,
        ),
        Line(
            "The same, on top of the total",
            "%",
            "grams/total mass",
            MASS_SHARE,
            ("dosage_pct", "a_g"),
            _restated(Basis.TOTAL),
        ),
        Line(
            "The same, on top of the component chosen",
            "%",
            "grams/mass of the component",
            MASS_SHARE,
            ("dosage_pct", "a_g"),
            _restated(Basis.COMPONENT),
        ),
        Line(
            "Dilution to weigh instead",
            "g",
            "grams of additive · 100/strength",
            "arithmetic; how strong a dilution may be is the supplier's word",
            ("dosage_pct", "a_g", "strength_pct"),
            lambda g: dosage.dilution(_grams(g), g.strength_pct).weighed_g,
            digits=5,
        ),
        Line(
            "Carrier that it brings in",
            "g",
            "dilution − additive",
            "stays in the cup, and counts in its solids and volatile matter",
            ("dosage_pct", "a_g", "strength_pct"),
            lambda g: dosage.dilution(_grams(g), g.strength_pct).carrier_g,
            digits=5,
        ),
    ),
    remarks=_alone,
)

WEIGHED = Sum(
    "weighed",
    "What a weighing amounts to",
    "The dosage that so many grams in the cup are.",
    WeighedForm,
    (
        _BASIS,
        Line("Dosage as weighed", "%", f"the inverse of {COUNTED}", MASS_SHARE, ("additive_g", "a_g"), _as_weighed),
        Line(
            "The same, counted the other way",
            "%",
            "within = on top/(1 + on top)",
            MASS_SHARE,
            ("additive_g", "a_g"),
            lambda g: _as_weighed(g, counting=_other_counting(g)),
        ),
    ),
    remarks=_alone,
)

TOP_UP = Sum(
    "top-up",
    "Topping up",
    "How much to add to a cup that holds some already.",
    TopUpForm,
    (
        _BASIS,
        Line(
            "Additive to add",
            "g as supplied",
            f"difference of two doses, {COUNTED}",
            "arithmetic; a topped-up cup is no independent cup",
            ("from_pct", "to_pct", "a_g"),
            _top_up,
            digits=5,
        ),
    ),
    remarks=_alone,
)

DILUTION = Sum(
    "dilution",
    "Dilution",
    "What to weigh of a dilution where the dose is too little for the balance.",
    DilutionForm,
    (
        Line(
            "Dilution to weigh",
            "g",
            "grams of additive · 100/strength",
            "arithmetic; how strong a dilution may be is the supplier's word",
            ("additive_g", "strength_pct"),
            lambda g: dosage.dilution(g.additive_g, g.strength_pct).weighed_g,
            digits=5,
        ),
        Line(
            "Carrier that it brings in",
            "g",
            "dilution − additive",
            "stays in the cup, and counts in its solids and volatile matter",
            ("additive_g", "strength_pct"),
            lambda g: dosage.dilution(g.additive_g, g.strength_pct).carrier_g,
            digits=5,
        ),
        Line(
            "Rounding of the balance, undiluted",
            "% of the dose, up or down",
            _ROUNDING,
            "arithmetic",
            ("additive_g", "balance_step_g"),
            lambda g: _rounding(g.additive_g, g),
            digits=2,
        ),
        Line(
            "Rounding of the balance, diluted",
            "% of the dose, up or down",
            _ROUNDING,
            "arithmetic",
            ("additive_g", "strength_pct", "balance_step_g"),
            lambda g: _rounding(dosage.dilution(g.additive_g, g.strength_pct).weighed_g, g),
            digits=2,
        ),
    ),
)
