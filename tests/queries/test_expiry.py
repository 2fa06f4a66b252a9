from datetime import date, timedelta

import pytest

from trials.queries.expiry import in_all, standing

TODAY = date(2026, 3, 10)


@pytest.mark.parametrize(
    ("days", "words", "urgent"),
    [
        (-2, "expired 2 days ago", True),
        (-1, "expired 1 day ago", True),
        (0, "expires today", True),
        (1, "expires in 1 day", True),
        (20, "expires in 20 days", True),
        (60, "expires in 60 days", True),
        (61, "until 10 May 2026", False),
    ],
)
def test_end_is_told_in_words(days, words, urgent):
    told = standing(TODAY + timedelta(days=days), TODAY)
    assert (told.words, told.urgent) == (words, urgent)


def test_no_end_is_said():
    assert standing(None, TODAY).words == "no end stated"


@pytest.mark.parametrize(
    ("days", "words", "urgent"),
    [
        ([], "none", False),
        ([None, 400], "2", False),
        ([-1], "1: expired", True),
        ([30], "1: within 60 days", True),
        ([-1, 0, 30, 61, None], "5: 1 expired, 2 within 60 days", True),
    ],
)
def test_several_ends_are_counted(days, words, urgent):
    ends = [None if day is None else TODAY + timedelta(days=day) for day in days]
    told = in_all(ends, TODAY)
    assert (told.words, told.urgent) == (words, urgent)
