from decimal import Decimal

import pytest
from django.core.exceptions import PermissionDenied
from django.db import connection
from django.test.utils import CaptureQueriesContext

from tests.making import NOW, make_epoxy_base, make_material
from tests.series_making import STIRRED, make_candidate, make_series
from trials.models import Base, Dosage, Lot, Revision, Series, Trial, Working
from trials.models.signing import Meaning
from trials.operations.acting import Refused
from trials.operations.cups import add_cup, remove_cup
from trials.operations.series import CandidateEntry, DoseEntry, add_common_batch, change_series, share_series
from trials.operations.signing import amending, sign

pytestmark = pytest.mark.django_db
HALF = Decimal("0.5")


def _parts(series):
    return [trial.part for trial in series.trials.order_by("position")]


def _doses(series):
    cups = series.trials.order_by("position").prefetch_related("dosages")
    return [str(dose.dosage_pct) for trial in cups for dose in trial.dosages.all()]


def test_plan_has_its_references_and_codes_in_the_order_of_working(bench):
    series = make_series(bench)
    assert _parts(series) == ["blank", "blank", *["treated"] * 6, "clean check"]
    assert _doses(series) == ["0.1", "0.1", "0.3", "0.3", "0.5", "0.5"]
    codes = list(series.trials.order_by("position").values_list("code", flat=True))
    assert codes == [f"{series.number}-{n}" for n in range(1, 10)]


def test_every_cup_gets_the_same_working_blanks_included(bench):
    series = make_series(bench, incumbent=CandidateEntry(make_candidate("AR-09"), (HALF,)))
    for trial in series.trials.all():
        done = trial.workings.order_by("position").values_list("kind", "rpm", "minutes")
        assert list(done) == [(w.kind, w.rpm, w.minutes) for w in STIRRED], trial.part


def test_degassed_reference_rests_under_vacuum_more(bench):
    series = make_series(bench, vacuum=True)
    degassed = series.trials.get(part="vacuum reference")
    assert degassed.workings.count() == len(STIRRED) + 1
    assert not degassed.dosages.exists()


def test_silicone_free_goes_before_silicone(bench):
    silicone, free = make_candidate("AR-01", silicone=True), make_candidate("AR-02")
    entries = (CandidateEntry(silicone, (HALF,)), CandidateEntry(free, (HALF,)))
    series = make_series(bench, candidates=entries, order_rule="silicone-free before silicone", blanks=1)
    last = [d.candidate.silicone for d in Dosage.objects.filter(trial__series=series).order_by("trial__position")]
    assert last == [False, False, True, True]


def test_random_order_is_the_same_for_the_same_seed(bench):
    orders = [_doses(make_series(bench, order_rule="random", seed=7)) for _ in range(2)]
    assert orders[0] == orders[1]


def test_grams_planned_by_hand(bench):
    """150 g of mix, 0.3 % on the total, on top: 0.45 g. Arithmetic of a mass share, by hand."""
    series = make_series(bench)
    assert {d.planned_g for d in Dosage.objects.filter(trial__series=series, dosage_pct="0.3")} == {Decimal("0.45")}


def test_planning_freezes_the_revision(bench):
    make_series(bench)
    assert Revision.objects.get().frozen_at == NOW


def test_active_dosage_without_an_active_content_is_refused_by_name(bench):
    with pytest.raises(Refused, match=r"AR-01.*active content") as refused:
        make_series(bench, supplied="active")
    assert refused.value.field == "dosages_pct"
    assert not Series.objects.exists()


def test_binder_solids_of_a_black_box_are_refused_naming_the_component(bench):
    revision = make_epoxy_base(bench)
    revision.components.get(letter="B").lines.all().delete()
    with pytest.raises(Refused, match="Component B has no known recipe"):
        make_series(bench, revision=revision, basis="binder solids")


@pytest.mark.parametrize(
    ("given", "field", "said"),
    [
        ({"blanks": 0}, "blanks", "got 0"),
        ({"batch_mass_g": Decimal(0)}, "batch_mass_g", "got 0"),
        ({"title": " "}, "title", "title"),
        ({"replicates": 0}, "replicates", "got 0"),
        ({"basis": "component"}, "basis_component", "which component"),
        ({"into": "C"}, "into", "got “C”"),
        ({"round": "lap"}, "round", "lap"),
    ],
)
def test_impossible_plan_is_refused_at_its_field(bench, given, field, said):
    with pytest.raises(Refused, match=said) as refused:
        make_series(bench, **given)
    assert refused.value.field == field
    assert not Trial.objects.exists()


@pytest.mark.parametrize("dosages", [(), (Decimal("-0.1"),), (HALF, HALF)])
def test_impossible_dosages_are_refused(bench, dosages):
    with pytest.raises(Refused) as refused:
        make_series(bench, candidates=(CandidateEntry(make_candidate(), dosages),))
    assert refused.value.field == "dosages_pct"


def test_no_blank_only_with_a_reason_that_stays_with_the_question(bench):
    series = make_series(bench, blanks=0, no_blank_because="too little of the customer's A")
    assert "blank" not in _parts(series)
    assert "No blank: too little of the customer's A" in series.question


def test_lot_of_another_material_is_refused(bench):
    lot = Lot.objects.create(material=make_material("EP-9"), number="77")
    with pytest.raises(Refused, match="Lot 77 is not a lot of AR-01"):
        make_series(bench, candidates=(CandidateEntry(make_candidate(), (HALF,), lot=lot),))


def test_pair_of_additives_in_every_cup(bench):
    pair = CandidateEntry(make_candidate(), (HALF,), beside=(DoseEntry(make_candidate("AR-02"), Decimal("0.2")),))
    series = make_series(bench, candidates=(pair,))
    cup = series.trials.filter(part="treated").first()
    assert sorted(cup.dosages.values_list("candidate__material__code", "planned_g")) == [
        ("AR-01", Decimal("0.75")),
        ("AR-02", Decimal("0.3")),
    ]


def test_reader_may_not_plan(bench, reader):
    revision = make_epoxy_base(bench)
    with pytest.raises(PermissionDenied):
        make_series(reader, revision=revision)


def test_planning_takes_as_many_statements_for_forty_cups_as_for_nine(bench):
    make_series(bench)
    counts = []
    for replicates in (2, 12):
        with CaptureQueriesContext(
            connection,
        ) as seen:
            make_series(bench, replicates=replicates)
        counts.append(len(seen))
    assert counts[0] == counts[1] < 40


def test_common_batch_of_another_revision_is_refused(bench):
    make_series(bench)
    other = make_epoxy_base(bench, code="EP-F2")
    batch = add_common_batch(actor=bench, now=NOW, revision=other, number="CB-1")
    with pytest.raises(Refused, match="another revision") as refused:
        make_series(bench, common_batch=batch)
    assert refused.value.field == "common_batch"


def test_common_batch_number_once(bench):
    revision = make_epoxy_base(bench)
    add_common_batch(actor=bench, now=NOW, revision=revision, number="CB-1")
    with pytest.raises(Refused, match="CB-1"):
        add_common_batch(actor=bench, now=NOW, revision=revision, number="CB-1")


def test_grams_follow_the_basis_while_nothing_is_mixed(bench):
    """A is 100 of 122 parts: 0.3 % on component A of 122 g mix is 0.3 g. By hand."""
    series = make_series(bench)
    change_series(actor=bench, series=series, basis="component", basis_component="A", batch_mass_g=Decimal(122))
    dosage = Dosage.objects.filter(trial__series=series, dosage_pct="0.3").first()
    assert (dosage.planned_g, dosage.basis, dosage.basis_component) == (Decimal("0.3"), "component", "A")
    assert set(series.trials.values_list("batch_mass_g", flat=True)) == {Decimal(122)}


def test_basis_stays_once_a_cup_is_mixed(bench):
    series = make_series(bench)
    Trial.objects.filter(pk=series.trials.first().pk).update(state="mixed")
    with pytest.raises(Refused, match="mixed already") as refused:
        change_series(actor=bench, series=series, basis="binder solids")
    assert refused.value.field == "basis"
    change_series(actor=bench, series=series, title="Another title")
    assert Series.objects.get(pk=series.pk).title == "Another title"


def test_series_of_a_restricted_base_is_restricted_and_shared_like_it(bench, colleague, supervisor):
    revision = make_epoxy_base(bench, restricted=True)
    revision.base.shares.create(person=colleague)
    series = make_series(colleague, revision=revision)
    assert series.restricted
    visible = {p: Series.objects.visible_to(p).exists() for p in (bench, colleague, supervisor)}
    assert visible == {bench: True, colleague: True, supervisor: False}


def test_only_who_keeps_it_or_a_supervisor_decides_who_sees(bench, colleague, supervisor):
    series = make_series(bench)
    with pytest.raises(Refused):
        change_series(actor=colleague, series=series, restricted=True)
    change_series(actor=supervisor, series=series, restricted=True)
    with pytest.raises(Refused):
        share_series(actor=colleague, series=series, people=[colleague])
    share_series(actor=bench, series=series, people=[colleague])
    assert Series.objects.visible_to(colleague).exists()


def test_one_more_cup_is_a_copy_with_its_own_dosage_before_the_clean_check(bench):
    series = make_series(bench)
    like = series.trials.filter(part="treated").last()
    cup = add_cup(actor=bench, now=NOW, series=series, like=like, dosage_pct=Decimal("0.7"))
    assert cup.code == f"{series.number}-10"
    assert _parts(series)[-2:] == ["treated", "clean check"]
    assert series.trials.order_by("position")[8] == cup
    dosage = cup.dosages.get()
    assert (dosage.dosage_pct, dosage.planned_g) == (Decimal("0.7"), Decimal("1.05"))
    kinds = list(Working.objects.filter(trial=cup).order_by("position").values_list("kind", "rpm"))
    assert kinds == [(w.kind, w.rpm) for w in STIRRED]


def test_one_more_blank_has_no_additive(bench):
    series = make_series(bench)
    cup = add_cup(actor=bench, now=NOW, series=series, like=series.trials.filter(part="blank").first())
    assert (cup.part, cup.dosages.count(), cup.workings.count()) == ("blank", 0, len(STIRRED))


def test_cup_like_a_blank_with_another_candidate_is_treated(bench):
    series = make_series(bench)
    blank = series.trials.filter(part="blank").first()
    other = make_candidate("AR-02")
    cup = add_cup(actor=bench, now=NOW, series=series, like=blank, candidate=other, dosage_pct=HALF)
    assert (cup.part, cup.dosages.get().candidate) == ("treated", other)
    with pytest.raises(Refused, match="without additive"):
        add_cup(actor=bench, now=NOW, series=series, like=blank, dosage_pct=HALF)


def test_topped_up_cup_holds_more_than_the_one_it_comes_from(bench):
    series = make_series(bench)
    like = series.trials.filter(part="treated").first()
    with pytest.raises(Refused, match=r"holds 0\.1 % already"):
        add_cup(actor=bench, now=NOW, series=series, like=like, dosage_pct=Decimal("0.1"), topped_up=True)
    cup = add_cup(actor=bench, now=NOW, series=series, like=like, dosage_pct=Decimal("0.3"), topped_up=True)
    assert (cup.topped_up_from, cup.dosages.get().planned_g) == (like, Decimal("0.45"))


def test_planned_cup_may_go_a_made_one_stays(bench):
    series = make_series(bench)
    first, second = series.trials.filter(part="treated")[:2]
    remove_cup(actor=bench, trial=first)
    Trial.objects.filter(pk=second.pk).update(state="mixed")
    with pytest.raises(Refused, match="no longer only planned"):
        remove_cup(actor=bench, trial=second)
    assert Trial.objects.filter(series=series).count() == 8
    assert Base.objects.count() == 1


def test_signed_series_gets_a_cup_only_by_an_amendment(bench):
    series = make_series(bench)
    like = series.trials.filter(part="treated").first()
    sign(actor=bench, now=NOW, record=series, meaning=Meaning.PERFORMED)
    for write, given in ((add_cup, {"now": NOW, "like": like}), (change_series, {"title": "Another"})):
        with pytest.raises(Refused, match="is signed"):
            write(actor=bench, series=series, **given)
    with pytest.raises(Refused, match="is signed"):
        remove_cup(actor=bench, trial=like)
    with amending(actor=bench, now=NOW, record=series, reason="one cup was left out"):
        cup = add_cup(actor=bench, now=NOW, series=series, like=like, dosage_pct=Decimal("0.7"))
    assert Trial.objects.filter(series=series).count() == 10
    assert cup.part == "treated"
