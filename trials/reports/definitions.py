"""What the figures of a report mean, so that it can be read away from the notebook."""

from collections.abc import Iterable

from trials.models.series import Basis, Counting, Supplied
from trials.queries.contrasts import LEVEL
from trials.queries.judging import Judgement
from trials.queries.masses import Reckoning

from .parts import Fact

PCT = f"{100 * LEVEL:g} %"
_BASIS = {
    Basis.TOTAL: "of the whole mix, all components together, free of additive",
    Basis.COMPONENT: "of component {letter}, free of additive",
    Basis.SOLIDS: "of the binder solids: resin, hardener, reactive diluent; no filler, pigment, solvent or water",
}
_COUNTING = {
    Counting.ON_TOP: "on top: 0.3 % is 0.3 g to 100 g",
    Counting.WITHIN: "within: 0.3 % is 0.3 g in 100 g, the additive itself among them",
}
_SUPPLIED = {
    Supplied.SUPPLIED: "of the additive as supplied, its carrier included",
    Supplied.ACTIVE: "of active matter, its carrier not counted",
}


def dosage_defined(reckoning: Reckoning) -> Fact:
    basis = _BASIS[reckoning.basis].format(letter=reckoning.basis_component)
    said = f"Per cent {basis}; {_COUNTING[reckoning.counting]}; {_SUPPLIED[reckoning.supplied]}."
    return Fact("Dosage", said)


def definitions(judged: Judgement, reckoning: Reckoning, more: Iterable[Fact] = ()) -> tuple[Fact, ...]:
    """Those that this report needs; ``more`` are those of the base."""
    other = sorted(
        {
            f"{cup.trial.code} {dose.basis}"
            for line in judged.lines
            for dose in line.group.doses
            for cup in line.group.cups
            if dose.basis != str(reckoning)
        }
    )
    measures = [table.judged.measure for table in judged.tables]
    found = [dosage_defined(reckoning)]
    if other:
        found.append(Fact("Other bases", f"These cups were dosed otherwise: {'; '.join(other)}."))
    found += [
        Fact(
            "Cup, n",
            "The cup is the unit: one batch mixed once. Its panels, readers and readings are reduced within it,"
            " quantities to their mean, grades to their median. n counts cups; one topped up from another does not.",
        ),
        Fact(
            "Compared with",
            "The blank of the same common batch, day, climate and stirring, worked like the treated cups, without"
            " additive. Across such blocks nothing is compared.",
        ),
    ]
    if any(not measure.graded for measure in measures):
        found.append(
            Fact(
                "Difference",
                f"Mean of the group less mean of the blank, with its {PCT} interval and p after Dunnett, which hold"
                " for all groups of a block together; the spread is that of all its groups.",
            )
        )
    if any(measure.graded for measure in measures):
        found.append(
            Fact(
                "Shift",
                "Of grades: the median of all differences between a cup of the group and a blank, p by the exact"
                " Mann–Whitney test, adjusted after Holm. So few grades have no interval.",
            )
        )
    found += [
        _side(judged),
        Fact("Shown", "“Better” or “worse” where p is below 0.05; “not shown” is never “no effect”."),
    ]
    if any(measure.counted for measure in measures):
        found.append(
            Fact("Counts", f"What a count on an area still allows is its upper {PCT} bound (exact Poisson).")
        )
    found += [
        Fact("Air content", f"{measure.name}: {measure.note}.")
        for measure in measures
        if measure.key.startswith("air-") and measure.note
    ]
    return (*found, *more, SWATCH)


SWATCH = Fact(
    "Film drawn",
    "The small squares are drawn from the ratings alone: dots are bubbles, open rings craters, upright pricks"
    " pinholes, hatching haze, a wavy lower edge poor levelling, drawn-back corners crawling; a dash: not read.",
)


def _side(judged: Judgement) -> Fact:
    if judged.declared:
        said = "One-sided, decided before the cups were read: efficiency for the better, compatibility for the worse."
    else:
        said = "Two-sided: better and worse are both looked for."
    return Fact("Sides", said)
