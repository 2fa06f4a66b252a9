import json
from datetime import timedelta
from decimal import Decimal

import pytest
from django.db import IntegrityError, connection, transaction

from tests.making import NOW, make_epoxy_base
from trials.models import CommonBatch, Criterion, Panel, Rating, Series, Signature, Trial, Working
from trials.models.signing import Meaning
from trials.operations.acting import Refused
from trials.operations.signing import amending, sign
from trials.queries import canonical as canonical_form
from trials.queries.canonical import canonical
from trials.queries.proof import doubts
from trials.queries.signatures import live_as_signed, signing_of, still_as_signed

pytestmark = pytest.mark.django_db
PERFORMED, COUNTERSIGNED = Meaning.PERFORMED, Meaning.COUNTERSIGNED


@pytest.fixture
def series(bench):
    revision = make_epoxy_base(bench)
    batch = CommonBatch.objects.create(
        revision=revision, number="A-7", made_at=NOW, made_by=bench, density_g_ml=Decimal("1.480")
    )
    made = Series.objects.create(
        common_batch=batch,
        number=417,
        title="Foam at 2 mm",
        round="ladder",
        revision=revision,
        batch_mass_g=Decimal("500.0"),
        planned_at=NOW,
        owner=bench,
    )
    for number in (1, 2):
        trial = Trial.objects.create(series=made, number=number, code=f"417-{number}", position=number, part="blank")
        Working.objects.create(trial=trial, position=1, kind="disperse", rpm=Decimal("2000"), minutes=Decimal("5.0"))
        panel = Panel.objects.create(code=f"K{number}F", trial=trial)
        Rating.objects.create(
            panel=panel,
            criterion=Criterion.objects.get(key="bubbles"),
            person=bench,
            age_h=Decimal(24),
            value=Decimal(4),
            at=NOW,
        )
    return made


def _sign(series, person, meaning=PERFORMED):
    return sign(actor=person, now=NOW, record=series, meaning=meaning)


def test_performed_then_countersigned_by_another(series, bench, supervisor):
    first = _sign(series, bench)
    second = _sign(series, supervisor, COUNTERSIGNED)
    assert (second.previous, second.previous_all) == (first.digest, first.digest)
    assert signing_of(series).word == "signed by two"
    assert all(still_as_signed(signature) for signature in Signature.objects.all())
    assert list(doubts()) == []


def test_signed_content_is_the_whole_series_as_typed(series, bench):
    content = json.loads(_sign(series, bench).canonical)
    assert content["series"]["batch_mass_g"] == "500.0"
    assert content["common_batches"][0]["density_g_ml"] == "1.480"
    assert content["trials"][0]["workings"][0]["minutes"] == "5.0"
    assert content["trials"][1]["panels"][0]["ratings"][0]["criterion"] == "bubbles version 1"


def test_every_field_of_the_record_is_signed_or_left_out_by_name():
    from django.apps import apps

    for name, signed in canonical_form.FIELDS.items():
        model = apps.get_model("trials", name)
        known = {*signed, *canonical_form.OUTSIDE[name]}
        left = {f.name for f in model._meta.concrete_fields} | {f.attname for f in model._meta.concrete_fields}
        unknown = {f.name for f in model._meta.concrete_fields if not {f.name, f.attname} & known}
        assert not unknown, f"{name}: {unknown} is neither signed nor left out on purpose"
        assert known <= left


def test_stranger_to_the_work_does_not_sign_it_as_performed(series, colleague):
    with pytest.raises(Refused, match="Who did the work signs it"):
        _sign(series, colleague)


def test_who_made_a_cup_may_sign_as_performed(series, colleague):
    Trial.objects.filter(number=2).update(made_by=colleague)
    assert _sign(series, colleague).person == colleague


def test_performer_does_not_countersign(series, bench):
    _sign(series, bench)
    with pytest.raises(Refused, match="Another person than the performer"):
        _sign(series, bench, COUNTERSIGNED)


def test_nothing_to_countersign_before_it_is_signed(series, supervisor):
    with pytest.raises(Refused, match="Nobody has signed it"):
        _sign(series, supervisor, COUNTERSIGNED)


def test_performed_only_once(series, bench):
    _sign(series, bench)
    with pytest.raises(Refused, match="has signed this already"):
        _sign(series, bench)


def test_database_refuses_a_countersignature_of_the_performer(series, bench):
    _sign(series, bench)
    with pytest.raises(IntegrityError, match="another person"), transaction.atomic():
        Signature.objects.create(
            series=series, person=bench, meaning=COUNTERSIGNED, at=NOW, canon=1, canonical="{}", digest="x"
        )


WRITES = [
    ("UPDATE trials_series SET title = 'x'", "series_frozen"),
    ("DELETE FROM trials_series", "series_frozen"),
    ("UPDATE trials_trial SET remark = 'x'", "trial_frozen"),
    (
        "INSERT INTO trials_trial"
        " (series_id, number, code, position, part, state, remark, outcome, unfair_because, lesson)"
        " SELECT id, 9, '417-9', 9, 'blank', 'planned', '', '', '', '' FROM trials_series",
        "trial_frozen",
    ),
    (
        "INSERT INTO trials_seriescriterion (series_id, criterion_id, weight)"
        " SELECT s.id, c.id, 1 FROM trials_series s, trials_criterion c",
        "series_criterion_frozen",
    ),
    ("UPDATE trials_commonbatch SET density_g_ml = 1", "common_batch_frozen"),
    (
        """INSERT INTO trials_wetreading (common_batch_id, quantity, "where", word, method)"""
        " SELECT id, 'density', 'A', 'spilled', '' FROM trials_commonbatch",
        "batch_reading_frozen",
    ),
    ("UPDATE trials_working SET rpm = 1", "working_frozen"),
    ("DELETE FROM trials_working", "working_frozen"),
    ("UPDATE trials_panel SET remark = 'x'", "panel_frozen"),
    ("UPDATE trials_rating SET value = 0", "rating_frozen"),
    ("DELETE FROM trials_rating", "rating_frozen"),
    (
        "INSERT INTO trials_failure (trial_id, mode, severity, how, cause)"
        " SELECT id, 'bubbles', 1, '', '' FROM trials_trial",
        "failure_frozen",
    ),
    (
        "INSERT INTO trials_panel (code, trial_id, substrate, remark)"
        " SELECT 'N' || id, id, 'glass', '' FROM trials_trial",
        "panel_frozen",
    ),
]


@pytest.mark.parametrize(("statement", "constraint"), WRITES)
def test_signed_series_is_frozen_against_sql(series, bench, statement, constraint):
    _sign(series, bench)
    with pytest.raises(IntegrityError) as refused, transaction.atomic(), connection.cursor() as cursor:
        cursor.execute(statement)
    assert refused.value.__cause__.diag.constraint_name == constraint


def test_signed_series_is_frozen_against_the_orm(series, bench):
    _sign(series, bench)
    with pytest.raises(IntegrityError, match="signed"), transaction.atomic():
        Rating.objects.update(value=Decimal(0))
    with pytest.raises(IntegrityError, match="signed"), transaction.atomic():
        series.save()


def test_signed_trial_freezes_itself_alone(series, bench):
    first, second = series.trials.order_by("number")
    sign(actor=bench, now=NOW, record=first, meaning=PERFORMED)
    second.remark = "still open"
    second.save()
    with pytest.raises(IntegrityError), transaction.atomic():
        first.save()


def test_amendment_changes_signs_again_and_keeps_the_old_value(series, bench):
    _sign(series, bench)
    with amending(actor=bench, now=NOW + timedelta(days=6), record=series, reason="read again at 7 d"):
        Rating.objects.filter(panel__code="K1F").update(value=Decimal(3))
    signing = signing_of(series)
    assert (signing.word, signing.amended[0].reason) == ("signed, amended", "read again at 7 d")
    assert live_as_signed(series, signing)
    assert '"value":"3"' in signing.amended[0].canonical
    assert '"value":"3"' not in signing.performed.canonical
    assert list(doubts()) == []
    with pytest.raises(IntegrityError), transaction.atomic():
        Rating.objects.update(value=Decimal(0))


def test_amendment_needs_a_reason(series, bench):
    _sign(series, bench)
    with pytest.raises(Refused, match="says why"), amending(actor=bench, now=NOW, record=series, reason=" "):
        pass


def test_amendment_that_fails_leaves_nothing(series, bench):
    _sign(series, bench)
    before = canonical(series)

    def amend():
        with amending(actor=bench, now=NOW, record=series, reason="a slip"):
            Rating.objects.update(value=Decimal(0))
            raise ZeroDivisionError

    with pytest.raises(ZeroDivisionError):
        amend()
    assert canonical(series) == before
    assert signing_of(series).word == "signed"


def test_amendment_of_another_series_opens_nothing(series, bench):
    _sign(series, bench)
    other = Series.objects.create(
        number=418,
        title="Other",
        round="scout",
        revision=series.revision,
        batch_mass_g=1,
        planned_at=NOW,
        owner=bench,
    )
    _sign(other, bench)
    with (
        amending(actor=bench, now=NOW, record=other, reason="a slip"),
        pytest.raises(IntegrityError),
        transaction.atomic(),
    ):
        Rating.objects.update(value=Decimal(0))


@pytest.mark.parametrize("statement", ["UPDATE trials_signature SET reason = 'x'", "DELETE FROM trials_signature"])
def test_signature_stays(series, bench, statement):
    _sign(series, bench)
    with pytest.raises(IntegrityError), transaction.atomic(), connection.cursor() as cursor:
        cursor.execute(statement)


def test_empty_signature_does_not_survive_the_transaction(series, bench):
    _sign(series, bench)
    Signature.objects.create(
        series=series, person=bench, meaning=Meaning.AMENDED, at=NOW, reason="x", canon=1, canonical="", digest=""
    )
    with pytest.raises(IntegrityError, match="without content"), connection.cursor() as cursor:
        cursor.execute("SET CONSTRAINTS ALL IMMEDIATE")


def test_prove_names_a_signed_record_that_was_changed_by_its_owner(series, bench):
    _sign(series, bench)
    with connection.cursor() as cursor:
        cursor.execute("SET CONSTRAINTS ALL IMMEDIATE")
        cursor.execute("ALTER TABLE trials_rating DISABLE TRIGGER USER")
        cursor.execute("UPDATE trials_rating SET value = 0")
    found = {(doubt.table, doubt.what) for doubt in doubts()}
    assert ("trials_series", "the record is not what was signed") in found
    assert ("trials_rating", "the row differs from its last event") in found


def test_prove_names_a_signature_that_was_changed_by_its_owner(series, bench):
    _sign(series, bench)
    with connection.cursor() as cursor:
        cursor.execute("SET CONSTRAINTS ALL IMMEDIATE")
        cursor.execute("ALTER TABLE trials_signature DISABLE TRIGGER USER")
        cursor.execute("UPDATE trials_signature SET at = at + interval '1 day'")
    assert "its content, signer or chain does not give its digest" in {doubt.what for doubt in doubts()}
