"""Bubbles or milkiness in a film: what the answers speak for, what they speak against, and what to try next.

A defoamer cures one cause of eight. All of it is common practice, no source: it weighs words, it proves nothing.
"""

from collections.abc import Mapping
from dataclasses import dataclass

from trials.science._refuse import one_of
from trials.science.cause_questions import BY_KEY, QUESTIONS, Question
from trials.science.cause_rules import (
    AIR,
    CAUSES,
    CONTAMINATION,
    CRYSTALS,
    GAS,
    HAZE,
    MIXING,
    OUTGASSING,
    RULED_OUT,
    RULES,
    SOLVENT,
    Rule,
)

__all__ = ["CAUSES", "QUESTIONS", "Check", "Evidence", "Suspect", "Weighed", "in_words", "weigh"]

STRONG = 2
CLEAR_LEAD = 3
MOST_CHECKS = 3

ADVICE = {
    AIR: "A defoamer or air-release additive works on this. Beside it: stir less air in, let A stand, pour low.",
    GAS: "No defoamer will help. Keep water out: dry fillers, closed dry tins, a water scavenger, a dry substrate;"
    " have the water measured. Never close a tin of isocyanate that may have met water: it can burst.",
    OUTGASSING: "No defoamer will help. Close the pores with a primer or a scratch coat, and coat while it cools"
    " down.",
    SOLVENT: "No defoamer will help. Thinner films, less or slower solvent, more time before the next coat, no heat"
    " or draught on the fresh film. Solvent vapours ignite: no flame or spark.",
    MIXING: "No defoamer will mend it. Mix more slowly and below the surface, with another mixer, scrape the wall,"
    " pour into a second vessel and mix again.",
    CONTAMINATION: "No defoamer will help, and silicone makes it worse. Clean vessel, disc and substrate, a disc for"
    " each candidate, and prove it with a clean check.",
    CRYSTALS: "No defoamer will help. Warm the resin slowly with its lid loose until it is clear, and store it"
    " warmer; read its safety data sheet first.",
    HAZE: "More of it will not help: it is the additive. Try less, stir it in better, or take one that is more"
    " compatible.",
}


@dataclass(frozen=True, slots=True)
class Evidence:
    """One answer, as it reads, with what it says about a cause. ``weight`` as in `cause_rules`."""

    question: str
    answer: str
    weight: int
    reason: str


@dataclass(frozen=True, slots=True)
class Suspect:
    """A cause with the answers for and against it, the strongest first. ``standing`` orders, it is no probability."""

    cause: str
    standing: int
    speaks_for: tuple[Evidence, ...]
    speaks_against: tuple[Evidence, ...]
    ruled_out: bool
    advice: str


@dataclass(frozen=True, slots=True)
class Check:
    """Something to do, and what each outcome would speak for: (outcome, causes)."""

    question: str
    text: str
    tells: tuple[tuple[str, tuple[str, ...]], ...]


@dataclass(frozen=True, slots=True)
class Weighed:
    """``suspects`` in order, those ruled out last; ``likely`` is empty where the answers do not tell.

    ``missing`` are the questions without an answer. ``verdict`` says whether a defoamer is worth trying.
    """

    suspects: tuple[Suspect, ...]
    likely: tuple[Suspect, ...]
    verdict: str
    contradictions: tuple[str, ...]
    missing: tuple[Question, ...]
    checks: tuple[Check, ...]


def weigh(answers: Mapping[str, str]) -> Weighed:
    """Rank the causes by what was answered.

    Parameters
    ----------
    answers : mapping of question key to answer key
        As `QUESTIONS` lists them; a question left out, or answered "", is not known.

    Returns
    -------
    Weighed

    Raises
    ------
    ValueError
        Where a question or an answer is none of those.

    Notes
    -----
    Common practice, no source. Each answer speaks for or against a cause by one or two; an answer that excludes a
    cause outweighs everything. A cause is likely where its sum is at least two and no more than one behind the first.

    Examples
    --------
    >>> found = weigh({"when": "growing", "degassed": "yes", "humidity": "yes", "isocyanate": "yes"})
    >>> [suspect.cause for suspect in found.likely]
    ['carbon dioxide']
    >>> found.verdict
    'No defoamer will help against carbon dioxide.'
    """
    known = {key: answer for key, answer in answers.items() if answer}
    for key, answer in known.items():
        one_of("answers", key, BY_KEY)
        one_of(f"answers[{key!r}]", answer, BY_KEY[key].answers)
    suspects = tuple(sorted((_suspect(cause, known) for cause in CAUSES), key=_order))
    likely = _likely(suspects)
    missing = tuple(question for question in QUESTIONS if question.key not in known)
    return Weighed(
        suspects=suspects,
        likely=likely,
        verdict=_verdict([suspect.cause for suspect in likely]),
        contradictions=_contradictions(suspects, likely),
        missing=missing,
        checks=_checks(_rivals(suspects), missing),
    )


def in_words(answers: Mapping[str, str]) -> tuple[tuple[str, str], ...]:
    """Questions that were answered, and their answers, as they read.

    Examples
    --------
    >>> in_words({"isocyanate": "no", "when": ""})
    (('Does it cure with isocyanate?', 'no'),)
    """
    return tuple(
        (one.text, one.answers.get(answers[one.key], answers[one.key])) for one in QUESTIONS if answers.get(one.key)
    )


def _suspect(cause: str, known: Mapping[str, str]) -> Suspect:
    found = [_evidence(rule) for rule in RULES if rule.cause == cause and known.get(rule.question) == rule.answer]
    found.sort(key=lambda one: -abs(one.weight))
    return Suspect(
        cause=cause,
        standing=sum(one.weight for one in found if one.weight != RULED_OUT),
        speaks_for=tuple(one for one in found if one.weight > 0),
        speaks_against=tuple(one for one in found if one.weight < 0),
        ruled_out=any(one.weight == RULED_OUT for one in found),
        advice=ADVICE[cause],
    )


def _evidence(rule: Rule) -> Evidence:
    question = BY_KEY[rule.question]
    return Evidence(question.text, question.answers[rule.answer], rule.weight, rule.reason)


def _order(suspect: Suspect) -> tuple:
    return suspect.ruled_out, -suspect.standing, CAUSES.index(suspect.cause)


def _likely(suspects: tuple[Suspect, ...]) -> tuple[Suspect, ...]:
    first = suspects[0]
    if first.ruled_out or first.standing < STRONG:
        return ()
    return tuple(one for one in suspects if not one.ruled_out and one.standing >= first.standing - 1)


def _verdict(likely: list[str]) -> str:
    if not likely:
        return "The answers do not tell a cause yet."
    if likely == [AIR]:
        return "A defoamer or air-release additive is worth trying."
    if AIR in likely:
        return "A defoamer helps only if it is entrained air: tell the causes apart first."
    return f"No defoamer will help against {' or '.join(likely)}."


def _contradictions(suspects: tuple[Suspect, ...], likely: tuple[Suspect, ...]) -> tuple[str, ...]:
    """What speaks strongly for and strongly against one cause, where that cause matters to the outcome."""
    first = max((one.standing for one in suspects if not one.ruled_out), default=0)
    excluded = [one for one in suspects if one.ruled_out and _sum_for(one) > max(first, STRONG)]
    doubtful = [*likely, *excluded] if likely else list(suspects)
    told = {}
    for one in doubtful:
        for pro, con in zip(one.speaks_for[:1], one.speaks_against[:1], strict=False):
            pair = frozenset((pro.question, con.question))  # two causes may disagree over the same two answers
            if pro.weight >= STRONG and con.weight <= -STRONG and pair not in told:
                told[pair] = (
                    f"“{pro.question} – {pro.answer}” speaks for {one.cause}, “{con.question} – {con.answer}” against"
                    " it: look at both again."
                )
    return tuple(told.values())


def _sum_for(suspect: Suspect) -> int:
    return sum(one.weight for one in suspect.speaks_for)


def _rivals(suspects: tuple[Suspect, ...]) -> list[str]:
    """Causes that the answers leave open: those close to the first, or everything while little is known."""
    possible = [one for one in suspects if not one.ruled_out]
    first = possible[0].standing
    least = first - CLEAR_LEAD if first < STRONG else max(1, first - CLEAR_LEAD)
    return [one.cause for one in possible if one.standing >= least]


def _checks(rivals: list[str], missing: tuple[Question, ...]) -> tuple[Check, ...]:
    """The open questions whose answers part the rivals most, as things to do."""
    weights = {(rule.question, rule.answer, rule.cause): max(rule.weight, -STRONG) for rule in RULES}

    def apart(question: Question, answer: str) -> int:
        said = [weights.get((question.key, answer, cause), 0) for cause in rivals]
        return max(said) - min(said)

    parting = {question.key: max(apart(question, answer) for answer in question.answers) for question in missing}
    useful = sorted((one for one in missing if parting[one.key] >= STRONG), key=lambda one: -parting[one.key])
    return tuple(
        Check(question.text, question.check, _tells(question, rivals, weights)) for question in useful[:MOST_CHECKS]
    )


def _tells(question: Question, rivals: list[str], weights) -> tuple[tuple[str, tuple[str, ...]], ...]:
    return tuple(
        (words, tuple(cause for cause in rivals if weights.get((question.key, answer, cause), 0) > 0))
        for answer, words in question.answers.items()
    )
