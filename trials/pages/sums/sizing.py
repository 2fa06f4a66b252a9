"""How many cups a series needs to show a difference."""

import math

from django.core.exceptions import ValidationError

from trials.science import design

from .form import SumForm, choice, number, same
from .lines import Given, Line, Sum

MOST_KINDS = 100


def kinds(value) -> None:
    """The limit for many comparisons is worked out one kind at a time: a number without bound would never end."""
    if not 1 <= value <= MOST_KINDS:
        raise ValidationError(f"Enter 1 to {MOST_KINDS}, not {value}.")


class SizeForm(SumForm):
    called = {"n": "cups"}
    difference = number("Difference worth seeing", "", help_text="in the unit of what is read")
    standard_deviation = number("Standard deviation", "", help_text="between cups of one kind, same unit")
    arms = number(
        "Kinds of treated cup",
        "",
        initial=1,
        validators=[kinds],
        help_text="dosages and candidates compared with the blank",
    )
    power = number("Wanted probability to see it", "", initial="0.8")
    alpha = number("Chance of a false alarm", "", initial="0.05", help_text="of all comparisons together")
    side = choice("Declared", same(design.SIDES), initial="two-sided")
    cups = number("Cups that can be made", "", help_text="of each kind, and as many blanks")


_TEST = ("arms", "power", "alpha")
DUNNETT = (
    "J. Cohen, Statistical Power Analysis for the Behavioral Sciences (1988), chapter 2; above one kind the limit of"
    " C. W. Dunnett, J. Am. Stat. Assoc. 50 (1955) 1096, power of one named kind"
)


def _asked(given: Given) -> dict:
    return {"arms": given.arms, "power": given.power, "alpha": given.alpha, "side": given.side}


def _exact(given: Given) -> float:
    return design.trials_per_arm(given.difference, given.standard_deviation, **_asked(given))


def _cups(given: Given) -> float:
    return float(math.ceil(_exact(given)))


def _remarks(given: Given):
    yield "note", "The cup is the unit: two panels of one cup, or three people reading it, are one cup."
    if given.cups is not None and given.cups < 3:
        yield "note", "Two cups of a kind show only what is plain to see."


SIZE = Sum(
    "cups",
    "Size of a series",
    "How many cups of each kind show a difference, and what so many cups can show.",
    SizeForm,
    (
        Line(
            "Cups of each kind",
            "and as many blanks",
            "smallest n whose power reaches what is wanted, rounded up",
            DUNNETT,
            ("difference", "standard_deviation", *_TEST),
            _cups,
            digits=12,
        ),
        Line(
            "before rounding up",
            "",
            "n at which the power is reached",
            DUNNETT,
            ("difference", "standard_deviation", *_TEST),
            _exact,
        ),
        Line(
            "Difference that so many cups show",
            "in the unit of what is read",
            "smallest difference whose power reaches what is wanted",
            DUNNETT,
            ("cups", "standard_deviation", *_TEST),
            lambda g: design.detectable_difference(g.cups, g.standard_deviation, **_asked(g)),
        ),
    ),
    remarks=_remarks,
)
