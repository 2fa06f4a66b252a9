"""Patterns of the trade, as textbooks and suppliers' guides tell them: common practice, no source."""

from itertools import combinations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from trials.science.cause_questions import QUESTIONS
from trials.science.cause_rules import CAUSES, RULED_OUT, RULES
from trials.science.causes import ADVICE, in_words, weigh

UNHURRIED = settings(deadline=None)  # the machine is shared, and time is not what is tested

PATTERNS = {
    "bubbles at minute 0, evenly": ("entrained air", {"when": "at once", "where": "evenly", "looks": "round"}),
    "micro-foam in A already": ("entrained air", {"looks": "fine", "mixing": "no", "degassed": "no"}),
    "gone where a defoamer is": ("entrained air", {"blank": "fewer treated", "degassed": "no", "mixing": "no"}),
    "late, growing, humid, degassed cup too": (
        "carbon dioxide",
        {"when": "growing", "humidity": "yes", "degassed": "yes", "substrate": "alike", "isocyanate": "yes"},
    ),
    "only on the porous block, worse as it warms": (
        "outgassing",
        {"where": "rows", "substrate": "porous", "warming": "yes"},
    ),
    "late and growing, but only on the porous block": ("outgassing", {"when": "growing", "substrate": "porous"}),
    "blisters after flash-off": ("solvent", {"when": "flash-off", "looks": "skin", "solvent": "yes"}),
    "only after mixing with B": ("mixing", {"when": "at once", "mixing": "yes", "degassed": "no"}),
    "swirls": ("mixing", {"where": "streaks", "mixing": "yes"}),
    "craters with a speck, blank and treated alike": (
        "contamination",
        {"where": "specks", "looks": "craters", "blank": "alike"},
    ),
    "milky, clears when warmed": ("crystals", {"looks": "milky", "warmed": "clears", "blank": "alike"}),
    "milky, stays milky, only with the additive": (
        "additive haze",
        {"looks": "milky", "warmed": "stays", "blank": "treated"},
    ),
}


@pytest.mark.parametrize(("cause", "answers"), PATTERNS.values(), ids=PATTERNS)
def test_pattern_leads_to_its_cause_alone(cause, answers):
    found = weigh(answers)
    assert [suspect.cause for suspect in found.likely] == [cause]
    assert found.contradictions == ()
    helped = cause == "entrained air"
    assert found.verdict.startswith("A defoamer" if helped else f"No defoamer will help against {cause}")
    assert ADVICE[cause].startswith(("A defoamer", "No defoamer", "More of it will not help"))


def test_every_cause_has_a_pattern():
    assert {cause for cause, _ in PATTERNS.values()} == set(CAUSES) == set(ADVICE)


@pytest.mark.parametrize("rule", RULES, ids=lambda rule: f"{rule.question} {rule.answer} {rule.cause}")
def test_every_rule_is_told_with_its_reason(rule):
    suspect = next(s for s in weigh({rule.question: rule.answer}).suspects if s.cause == rule.cause)
    told = suspect.speaks_for if rule.weight > 0 else suspect.speaks_against
    assert [one.reason for one in told] == [rule.reason]
    assert suspect.ruled_out is (rule.weight == RULED_OUT)


def test_rules_are_of_known_answers_and_said_once():
    answers = {(one.key, answer) for one in QUESTIONS for answer in one.answers}
    assert {(rule.question, rule.answer) for rule in RULES} <= answers
    assert len({(rule.question, rule.answer, rule.cause) for rule in RULES}) == len(RULES)
    # "yes, there is isocyanate" and "yes, there is solvent" leave possible what their "no" excludes.
    assert answers - {(rule.question, rule.answer) for rule in RULES} == {("isocyanate", "yes"), ("solvent", "yes")}


def test_nothing_known_says_so_and_asks_first_what_parts_the_causes_most():
    found = weigh({})
    assert (found.likely, found.verdict) == ((), "The answers do not tell a cause yet.")
    assert found.missing == QUESTIONS
    assert [check.question for check in found.checks] == [QUESTIONS[i].text for i in (0, 1, 2)]


def test_two_causes_left_say_what_parts_them():
    found = weigh({"when": "at once"})
    assert [one.cause for one in found.likely] == ["entrained air", "mixing"]
    assert found.verdict == "A defoamer helps only if it is entrained air: tell the causes apart first."
    first = found.checks[0]
    assert first.question == "Is A free of them until B is mixed in?"
    assert first.tells == (("yes", ("mixing",)), ("no", ("entrained air",)))


def test_gas_without_isocyanate_is_told_as_a_contradiction():
    found = weigh({"when": "growing", "humidity": "yes", "isocyanate": "no"})
    assert found.suspects[-1].cause == "carbon dioxide"
    assert found.likely == ()
    assert found.contradictions == (
        "“When do they appear? – from 20 to 60 minutes on, and growing” speaks for carbon dioxide, “Does it cure with"
        " isocyanate? – no” against it: look at both again.",
    )


def test_answer_against_the_likely_cause_is_told():
    found = weigh({"when": "at once", "where": "evenly", "looks": "round", "degassed": "yes"})
    assert found.likely[0].cause == "entrained air"
    assert len(found.contradictions) == 1
    assert "Does a degassed cup, poured on glass, have them too? – yes” against it" in found.contradictions[0]


@pytest.mark.parametrize(
    ("answers", "words"),
    [({"colour": "red"}, "answers must be one of.*'colour'"), ({"when": "noon"}, r"answers\['when'\].*'noon'")],
)
def test_unknown_question_or_answer_is_refused(answers, words):
    with pytest.raises(ValueError, match=words):
        weigh(answers)


def _holds(answers) -> None:
    found = weigh(answers)
    ranked = [suspect.cause for suspect in found.suspects]
    assert sorted(ranked) == sorted(CAUSES)
    excluded = {
        rule.cause for rule in RULES if rule.weight == RULED_OUT and answers.get(rule.question) == rule.answer
    }
    assert {one.cause for one in found.suspects if one.ruled_out} == excluded
    assert set(ranked[len(CAUSES) - len(excluded) :]) == excluded
    standings = [one.standing for one in found.suspects if not one.ruled_out]
    assert standings == sorted(standings, reverse=True)
    assert all(not one.ruled_out and one.standing >= standings[0] - 1 for one in found.likely)
    assert bool(found.likely) is (standings[0] >= 2)
    assert ("No defoamer" in found.verdict) is (
        bool(found.likely) and "entrained air" not in {one.cause for one in found.likely}
    )
    answered = {key for key, answer in answers.items() if answer}
    assert {one.key for one in found.missing} == {one.key for one in QUESTIONS} - answered
    assert {check.question for check in found.checks} <= {one.text for one in found.missing}


def test_every_pair_of_answers_is_weighed():
    for one, other in combinations(QUESTIONS, 2):
        for answer in ("", *one.answers):
            for another in ("", *other.answers):
                _holds({one.key: answer, other.key: another})


@UNHURRIED
@given(st.fixed_dictionaries({one.key: st.sampled_from(["", *one.answers]) for one in QUESTIONS}))
def test_any_answers_are_weighed(answers):
    _holds(answers)


@UNHURRIED
@given(st.fixed_dictionaries({one.key: st.sampled_from(["", *one.answers]) for one in QUESTIONS}), st.randoms())
def test_order_of_the_answers_does_not_matter(answers, random):
    shuffled = list(answers.items())
    random.shuffle(shuffled)
    assert weigh(dict(shuffled)) == weigh(answers)


def test_answers_in_words_in_the_order_of_the_questions():
    assert in_words({"solvent": "no", "when": "at once", "blank": ""}) == (
        ("When do they appear?", "there from the first minute"),
        ("Is there solvent in it, or in the additive?", "no"),
    )
