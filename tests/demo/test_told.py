"""What people concluded and wrote in the demonstration."""

import re
from collections import Counter

import pytest

from trials.demo.concluding import CONCLUDED_BEFORE
from trials.demo.facts import good_per_dm2, groups, limit_per_dm2
from trials.demo.figures_told import counted
from trials.demo.imagined import imagine
from trials.demo.rounds import ROUNDS
from trials.demo.stories import STORIES, UNFAIR_STORIES
from trials.demo.summing_up import sum_up
from trials.demo.telling import tell
from trials.demo.verdicts import FAILS, UNFAIR

CONCLUDED = [row for row in ROUNDS if row.ago >= CONCLUDED_BEFORE]
TOLD = [(row, key, told) for row in CONCLUDED for key, told in tell(row).items()]
# A newcomer's searches: at least one lesson or failure has all of these words.
SEARCHED = (
    "craters white polyurethane",
    "silicone-free clear casting",
    "milky epoxy crystals",
    "bubbles come back hour",
    "second coat crawls",
    "pinholes concrete",
    "oil rings tin oven",
    "white sticky cold night",
    "how many rpm",
    "haze additive",
    "fish-eyes speck",
    "crystals warmed away",
    "outgassing rows",
    "needle holes",
    "spiked roller late",
)


@pytest.mark.parametrize(
    ("outcome", "share"),
    [("fails", 0.30), ("not a fair test", 0.15), ("undecided", 0.10), ("works within limits", 0.25), ("works", 0.20)],
)
def test_outcomes_are_as_a_laboratory_has_them(outcome, share):
    found = Counter(told.outcome for _, _, told in TOLD)
    assert found[outcome] / found.total() == pytest.approx(share, abs=0.04)


def test_references_are_compared_with_and_have_no_outcome():
    assert {part for _, (part, *_), _ in TOLD} == {"treated", "incumbent"}


def test_failures_say_how_they_showed_and_unfair_tests_why():
    for _, _, told in TOLD:
        assert bool(told.failures) == (told.outcome == FAILS)
        assert bool(told.unfair_because) == (told.outcome == UNFAIR)
        for failure in told.failures:
            assert failure.how
            assert 1 <= failure.severity <= 5
    assert len({failure.mode for _, _, told in TOLD for failure in told.failures}) >= 9
    assert len({failure.cause for _, _, told in TOLD for failure in told.failures}) >= 7


def test_no_two_lessons_are_the_same():
    lessons = [told.lesson for _, _, told in TOLD if told.lesson]
    lessons += [sum_up(row).lesson for row in CONCLUDED if sum_up(row).lesson]
    assert len(lessons) >= 250
    assert [lesson for lesson, often in Counter(lessons).items() if often > 1] == []
    assert not any(re.search(r"[{}]|\bNone\b|  |\.\.", lesson) for lesson in lessons)
    assert all(lesson[0].isupper() or lesson[0].isdigit() or lesson[0] == "“" for lesson in lessons)


def test_every_story_is_told():
    told = {one.why for _, _, one in TOLD}
    assert set(STORIES) | set(UNFAIR_STORIES) >= told
    assert len(told) >= 0.85 * (len(STORIES) + len(UNFAIR_STORIES))


def test_every_count_in_a_lesson_was_read():
    """A number before “per dm²” is a mean of this dosage, of its blank or a limit; nothing else."""
    checked = 0
    for row, (part, code, dosage, _), told in TOLD:
        facts = groups(row)[part, code, dosage]
        known = [facts.count, facts.blank, limit_per_dm2(row), good_per_dm2(row)]
        known += [value for pair in facts.others.values() for value in pair]
        allowed = {counted(value) for value in known} | {"three"}
        said = told.lesson + " " + " ".join(failure.how for failure in told.failures)
        for number in re.findall(r"([\d.]+) (?:open )?(?:bubbles )?per dm²", said.replace("up to ", "below ")):
            if f"below {number} per" not in said.replace("up to ", "below "):
                assert number in allowed, (row.key, code, dosage, number, said)
                checked += 1
    assert checked > 250


@pytest.mark.parametrize("words", SEARCHED)
def test_what_a_newcomer_searches_is_there(words):
    wanted = words.split()
    texts = [told.lesson + " " + " ".join(one.how for one in told.failures) for _, _, told in TOLD]
    texts += [f"{row.title} {row.question} {sum_up(row).lesson}" for row in CONCLUDED]
    assert any(all(word in text.casefold() for word in wanted) for text in texts)


def test_windows_hold_their_working_dosage_and_candidate():
    windows = [(row, sum_up(row)) for row in CONCLUDED if sum_up(row).recommended]
    assert len(windows) >= 15
    assert sum(one.window_to is not None for _, one in windows) >= 6
    for row, one in windows:
        assert float(one.window_from) <= float(one.working) < float(one.window_to or 5)
        assert one.recommended in {cup.code for cup in imagine(row)}
        assert one.recommended in one.conclusion


def test_every_series_says_what_it_left_out():
    assert all(sum_up(row).not_tested.startswith("Not tested: ") for row in CONCLUDED)
