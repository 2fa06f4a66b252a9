"""What people conclude is written whole or not at all, and told at the field where it can't be."""

from decimal import Decimal

import pytest
from django.core.exceptions import PermissionDenied

from tests.judged_series import add_cup, empty_series
from tests.making import NOW
from tests.series_making import make_candidate
from trials.models import Failure, Trial
from trials.operations.acting import Refused
from trials.operations.judging import FailureEntry, TrialEntry, conclude_series, conclude_trial, conclude_trials
from trials.operations.signing import sign
from trials.queries.history import version

pytestmark = pytest.mark.django_db

CRATERS = FailureEntry("craters", 4, "from 0.5 %", "over-dosed")


@pytest.fixture
def series(bench):
    made = empty_series(bench)
    candidate = make_candidate()
    add_cup(made, "blank")
    add_cup(made, "treated", candidate, "0.3")
    add_cup(made, "treated", candidate, "0.5")
    return made


def _window(series, low=None, high=None, working=None) -> dict:
    """As typed, for the additive of the treated cups."""
    names = ("window_from_pct", "window_to_pct", "working_pct")
    typed = {name: value and Decimal(value) for name, value in zip(names, (low, high, working), strict=True)}
    return {**typed, "recommended": _cup(series).dosages.get().candidate}


def _cup(series, number=2) -> Trial:
    return series.trials.get(number=number)


def _failures(cup):
    return list(cup.failures.order_by("mode").values_list("mode", "severity", "how", "cause"))


def test_a_cup_is_concluded_with_its_failures_and_closed(series, bench):
    conclude_trial(
        actor=bench,
        trial=_cup(series),
        outcome="fails",
        lesson="Less of it.",
        failures=(CRATERS, FailureEntry("haze", 2)),
    )
    cup = _cup(series)
    assert (cup.outcome, cup.lesson, cup.state) == ("fails", "Less of it.", "closed")
    assert _failures(cup) == [("craters", 4, "from 0.5 %", "over-dosed"), ("haze", 2, "", "")]


def test_failures_given_replace_those_that_stand(series, bench):
    conclude_trial(actor=bench, trial=_cup(series), outcome="fails", failures=(CRATERS, FailureEntry("haze", 2)))
    kept = Failure.objects.get(mode="craters").pk
    conclude_trial(actor=bench, trial=_cup(series), outcome="fails", failures=(CRATERS, FailureEntry("bubbles", 1)))
    assert _failures(_cup(series)) == [("bubbles", 1, "", ""), ("craters", 4, "from 0.5 %", "over-dosed")]
    assert Failure.objects.get(mode="craters").pk == kept


def test_many_cups_leave_their_failures_unless_given(series, bench):
    conclude_trial(actor=bench, trial=_cup(series), outcome="fails", failures=(CRATERS,))
    conclude_trials(
        actor=bench,
        entries=[TrialEntry(_cup(series), "undecided"), TrialEntry(_cup(series, 3), "fails", failures=())],
    )
    assert [cup.outcome for cup in series.trials.order_by("number")] == ["", "undecided", "fails"]
    assert _failures(_cup(series)) == [("craters", 4, "from 0.5 %", "over-dosed")]


def test_taking_an_outcome_back_leaves_the_cup_closed(series, bench):
    conclude_trial(actor=bench, trial=_cup(series), outcome="works")
    conclude_trial(actor=bench, trial=_cup(series), outcome="")
    assert (_cup(series).outcome, _cup(series).state) == ("", "closed")


@pytest.mark.parametrize(
    ("given", "field", "said"),
    [
        ({"outcome": "splendid"}, "outcome", "got “splendid”"),
        ({"outcome": "not a fair test"}, "unfair_because", "Say why 417-2 was not a fair test."),
        ({"outcome": "not a fair test", "unfair_because": "  "}, "unfair_because", "Say why 417-2"),
        ({"outcome": "fails", "failures": (FailureEntry("melted", 1),)}, "mode", "got “melted”"),
        ({"outcome": "fails", "failures": (FailureEntry("haze", 1), FailureEntry("haze", 2))}, "mode", "given twice"),
        ({"outcome": "fails", "failures": (FailureEntry("haze", 0),)}, "severity", "got 0"),
        ({"outcome": "fails", "failures": (FailureEntry("haze", 6),)}, "severity", "got 6"),
        ({"outcome": "fails", "failures": (FailureEntry("haze", 1, "", "bad luck"),)}, "cause", "got “bad luck”"),
    ],
)
def test_refused_at_the_field_with_the_value(series, bench, given, field, said):
    with pytest.raises(Refused) as refusal:
        conclude_trial(actor=bench, trial=_cup(series), **given)
    assert refusal.value.field == field
    assert said in refusal.value.message
    assert (_cup(series).outcome, _failures(_cup(series))) == ("", [])


def test_who_may_only_read_concludes_nothing(series, reader):
    with pytest.raises(PermissionDenied):
        conclude_trial(actor=reader, trial=_cup(series), outcome="works")
    with pytest.raises(PermissionDenied):
        conclude_series(actor=reader, series=series, outcome="works")


def test_a_series_is_concluded_with_its_window_and_its_cups(series, bench):
    cups = [TrialEntry(_cup(series), "works"), TrialEntry(_cup(series, 3), "works within limits")]
    window = _window(series, "0.30", "0.5", "0.4")
    conclude_series(actor=bench, series=series, outcome="works", not_tested="Recoating.", trials=cups, **window)
    series.refresh_from_db()
    assert (series.outcome, series.not_tested, str(series.window_from_pct)) == ("works", "Recoating.", "0.30")
    assert [cup.outcome for cup in series.trials.order_by("number")] == ["", "works", "works within limits"]


@pytest.mark.parametrize(
    ("window", "field", "said"),
    [
        (("0.5", "0.3", None), "window_to_pct", "got 0.5 to 0.3 %"),
        (("0.3", "0.5", "0.6"), "working_pct", "from 0.3 to 0.5 %; got 0.6 %"),
        (("0.3", "0.5", "0.2"), "working_pct", "got 0.2 %"),
        (("-0.1", "0.5", None), "window_from_pct", "got -0.1 %"),
    ],
)
def test_impossible_windows_are_refused(series, bench, window, field, said):
    with pytest.raises(Refused) as refusal:
        conclude_series(actor=bench, series=series, outcome="works", **_window(series, *window))
    assert refusal.value.field == field
    assert said in refusal.value.message


def test_a_window_is_of_one_additive_that_was_tried(series, bench):
    with pytest.raises(Refused, match="Say which additive"):
        conclude_series(actor=bench, series=series, outcome="works", window_from_pct=Decimal("0.3"))
    with pytest.raises(Refused, match="AR-09 is in no cup of series 417"):
        conclude_series(actor=bench, series=series, outcome="works", recommended=make_candidate("AR-09"))


def test_a_cup_of_another_series_concludes_nothing_at_all(series, bench):
    stranger = add_cup(empty_series(bench, number=418), "blank")
    with pytest.raises(Refused, match="418-1 belong to another series than 417"):
        conclude_series(actor=bench, series=series, outcome="fails", trials=[TrialEntry(stranger, "fails")])
    series.refresh_from_db()
    assert series.outcome == ""


def test_nobody_writes_over_what_they_have_not_seen(series, bench, colleague):
    seen = version(_cup(series), parts=("failures",))
    conclude_trial(actor=colleague, trial=_cup(series), outcome="fails", failures=(CRATERS,), seen=seen)
    with pytest.raises(Refused) as refusal:
        conclude_trial(actor=bench, trial=_cup(series), outcome="works", seen=seen)
    assert refusal.value.field == "seen"
    assert _cup(series).outcome == "fails"


def test_what_is_signed_asks_for_an_amendment(series, bench):
    sign(actor=bench, now=NOW, record=series, meaning="performed")
    for write, given in ((conclude_trial, {"trial": _cup(series)}), (conclude_series, {"series": series})):
        with pytest.raises(Refused) as refusal:
            write(actor=bench, outcome="works", **given)
        assert refusal.value.signed


@pytest.mark.parametrize("cups", [1, 3])
def test_many_cups_cost_a_fixed_number_of_statements(bench, django_assert_num_queries, cups):
    series = empty_series(bench)
    made = [add_cup(series, "blank") for _ in range(cups)]
    entries = [TrialEntry(cup, "fails", failures=(CRATERS,)) for cup in made]
    with django_assert_num_queries(7):
        conclude_trials(actor=bench, entries=entries)
