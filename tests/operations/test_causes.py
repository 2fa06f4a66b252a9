from datetime import timedelta

import pytest
from django.core.exceptions import PermissionDenied
from django.db import IntegrityError, transaction

from tests.cup_making import make_cups
from tests.making import NOW
from trials.models import Finding
from trials.operations.acting import Refused
from trials.operations.causes import store_finding
from trials.operations.signing import amending, sign
from trials.queries.canonical import canonical
from trials.queries.findings import findings_of

pytestmark = pytest.mark.django_db
ANSWERS = {"when": "at once", "degassed": "no", "humidity": ""}


@pytest.fixture
def cup(bench):
    return make_cups(bench)[0]


def _store(actor, cup, **values):
    chosen = {"answers": ANSWERS, "cause": "entrained air", "remark": "poured from high up ", **values}
    return store_finding(actor=actor, trial=cup, **{"now": NOW, **chosen})


def test_finding_keeps_what_was_answered_and_leaves_out_what_was_not(bench, cup):
    kept = _store(bench, cup)
    kept.refresh_from_db()
    assert (kept.answers, kept.cause, kept.remark) == (
        {"when": "at once", "degassed": "no"},
        "entrained air",
        "poured from high up",
    )
    assert (kept.person, kept.at) == (bench, NOW)


def test_findings_stand_newest_first_with_their_answers_in_words(bench, colleague, cup):
    _store(bench, cup)
    _store(colleague, cup, answers={"isocyanate": "yes"}, cause="carbon dioxide", now=NOW + timedelta(days=1))
    newest, oldest = findings_of(cup)
    assert (newest.finding.person, newest.answers) == (colleague, (("Does it cure with isocyanate?", "yes"),))
    assert oldest.answers[0] == ("When do they appear?", "there from the first minute")


def test_answer_that_is_asked_no_more_is_shown_as_it_was(bench, cup):
    Finding.objects.create(trial=cup, person=bench, at=NOW, answers={"when": "at noon"})
    assert findings_of(cup)[0].answers == (("When do they appear?", "at noon"),)


@pytest.mark.parametrize(
    ("values", "words"),
    [
        ({"answers": {}, "cause": "", "remark": " "}, "nothing to keep"),
        ({"answers": {"when": "at noon"}}, "at noon"),
        ({"answers": {"colour": "red"}}, "colour"),
        ({"cause": "bad luck"}, "finding_cause_known"),
    ],
)
def test_finding_that_says_nothing_or_something_unknown_is_refused(bench, cup, values, words):
    with pytest.raises(Refused, match=words):
        _store(bench, cup, **values)
    assert not Finding.objects.exists()


def test_remark_alone_is_a_finding(bench, cup):
    assert _store(bench, cup, answers={}, cause="").remark == "poured from high up"


def test_reader_keeps_no_finding(reader, cup):
    with pytest.raises(PermissionDenied):
        _store(reader, cup)


def test_signed_trial_takes_a_finding_only_with_an_amendment(bench, cup):
    sign(actor=bench, now=NOW, record=cup.series, meaning="performed")
    with pytest.raises(Refused, match="signed") as refused:
        _store(bench, cup)
    assert refused.value.signed
    with amending(actor=bench, now=NOW, record=cup.series, reason="looked again"):
        kept = _store(bench, cup)
    assert '"answers":{"degassed":"no","when":"at once"},"at":"2026-03-02T09:30:00.000000+00:00"' in canonical(cup)
    with pytest.raises(IntegrityError, match="signed"), transaction.atomic():
        kept.delete()
    with pytest.raises(IntegrityError, match="signed"), transaction.atomic():
        Finding.objects.update(cause="solvent")
