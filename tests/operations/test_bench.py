from datetime import timedelta
from decimal import Decimal

import pytest
from django.core.exceptions import PermissionDenied

from tests.cup_making import dose, make_candidate, make_cups, signed
from tests.making import NOW
from trials.models import Equipment, Trial, Weighing, Working
from trials.operations.acting import Refused
from trials.operations.bench import (
    CupReadings,
    CupWorkings,
    MadeEntry,
    Reading,
    WorkingEntry,
    mark_made,
    set_remark,
    weigh,
    work,
)
from trials.queries.history import version, what_changed
from trials.queries.weighed import weighed_cups

pytestmark = pytest.mark.django_db


def g(text):
    return Decimal(text)


def weigh_one(actor, cup, *readings, **more):
    weigh(actor=actor, now=NOW, entries=[CupReadings(cup, readings, **more)])


def test_cumulative_readings_are_subtracted(bench):
    (cup,) = make_cups(bench)
    additive = dose(cup, make_candidate())
    weigh_one(
        bench,
        cup,
        Reading("A", reading_g=g("100.20")),
        Reading(dosage=additive, reading_g=g("100.83"), cumulative=True),
        Reading("B", reading_g=g("122.89"), cumulative=True),
    )
    # 100.83 - 100.20 = 0.63; 122.89 - 100.83 = 22.06; 0.63 / (100.20 + 22.06) = 0.515 %
    found = weighed_cups([cup])[cup.pk]
    assert [(p.letter, str(p.weighed_g)) for p in found.portions] == [("A", "100.20"), ("B", "22.06")]
    assert str(found.doses[0].weighed_g) == "0.63"
    assert found.doses[0].real_pct == pytest.approx(100 * 0.63 / 122.26)
    # decided 0.5 %: 100 * (0.51530 - 0.5) / 0.5
    assert found.doses[0].off_pct == pytest.approx(3.06, abs=0.01)
    additive.refresh_from_db()
    cup.refresh_from_db()
    assert (str(additive.weighed_g), cup.state, cup.made_by, cup.made_at) == ("0.63", "mixed", bench, NOW)


@pytest.mark.parametrize(
    ("more", "real_pct"),
    [
        ({}, 100 * 0.5 / 122),
        ({"counting": "within"}, 100 * 0.5 / 122.5),
        ({"basis": "component", "basis_component": "A"}, 0.5),
        # binder solids: 60 of the 100 g of A, all 22 g of B
        ({"basis": "binder solids"}, 100 * 0.5 / 82),
        # 40 % of it is active
        ({"supplied": "active"}, 100 * 0.2 / 122),
    ],
)
def test_real_dosage_is_counted_as_the_dosage_was_decided(bench, more, real_pct):
    (cup,) = make_cups(bench)
    additive = dose(cup, make_candidate(), **more)
    weigh_one(
        bench,
        cup,
        Reading("A", reading_g=g(100)),
        Reading(dosage=additive, reading_g=g("0.5")),
        Reading("B", reading_g=g(22)),
    )
    assert weighed_cups([cup])[cup.pk].doses[0].real_pct == pytest.approx(real_pct)


def test_what_is_not_weighed_yet_stands_at_its_ratio(bench):
    (cup,) = make_cups(bench)
    additive = dose(cup, make_candidate())
    weigh_one(bench, cup, Reading("A", reading_g=g(110)), Reading(dosage=additive, reading_g=g("0.671")))
    found = weighed_cups([cup])[cup.pk]
    # 110 g of A ask for 24.2 g of B: 0.671 of 134.2 g is 0.5 %
    assert [(p.source, round(p.used_g, 6)) for p in found.portions] == [("as weighed", 110.0), ("at its ratio", 24.2)]
    assert found.doses[0].real_pct == pytest.approx(0.5)


def test_spilled_is_a_value_and_leaves_no_dosage(bench):
    (cup,) = make_cups(bench)
    additive = dose(cup, make_candidate())
    weigh_one(
        bench,
        cup,
        Reading("A", reading_g=g("100.0")),
        Reading(dosage=additive, word="spilled"),
        Reading("B", reading_g=g("122.5"), cumulative=True),
    )
    found = weighed_cups([cup])[cup.pk]
    assert found.words == ("AR-01: spilled",)
    assert (found.doses[0].real_pct, found.doses[0].why_not) == (None, "AR-01: spilled")
    # B goes on from a reading that is a word: what it weighs is not known, it is not 122.5
    assert [(p.letter, p.weighed_g) for p in found.portions] == [("A", g("100.0")), ("B", None)]


def test_weighed_again_after_it_was_spilled_counts(bench):
    (cup,) = make_cups(bench)
    additive = dose(cup, make_candidate())
    weigh_one(bench, cup, Reading(dosage=additive, word="spilled"), Reading(dosage=additive, reading_g=g("0.60")))
    assert str(weighed_cups([cup])[cup.pk].doses[0].weighed_g) == "0.60"


def test_falling_cumulative_reading_is_refused_with_both_values(bench):
    (cup,) = make_cups(bench)
    with pytest.raises(
        Refused, match=r"417-1, reading 2: 99\.8 g is below the reading before it, 100\.2 g"
    ) as refused:
        weigh_one(bench, cup, Reading("A", reading_g=g("100.2")), Reading("B", reading_g=g("99.8"), cumulative=True))
    assert refused.value.field == "reading_g"
    assert not Weighing.objects.exists()


@pytest.mark.parametrize(
    ("reading", "message", "field"),
    [
        (Reading("A", reading_g=Decimal(-1)), "417-1, reading 1: Reading must be 0 or more; got -1 g", "reading_g"),
        (Reading("A"), "417-1, reading 1: enter what the balance showed", "reading_g"),
        (Reading(reading_g=Decimal(1)), "say whether it is a component or an additive", "letter"),
    ],
)
def test_impossible_readings_are_refused(bench, reading, message, field):
    (cup,) = make_cups(bench)
    with pytest.raises(Refused, match=message) as refused:
        weigh_one(bench, cup, reading)
    assert refused.value.field == field


def test_additive_of_another_cup_is_refused(bench):
    first, second = make_cups(bench, cups=2)
    additive = dose(first, make_candidate())
    with pytest.raises(Refused, match="417-2, reading 1: the additive is that of another cup"):
        weigh_one(bench, second, Reading(dosage=additive, reading_g=g(1)))


def test_corrected_reading_keeps_what_stays(bench):
    (cup,) = make_cups(bench)
    weigh_one(
        bench, cup, Reading("A", reading_g=g("0.3")), Reading("B", reading_g=g("22")), Reading("B", word="drop")
    )
    before = dict(Weighing.objects.values_list("position", "pk"))
    weigh_one(bench, cup, Reading("A", reading_g=g("0.30")), Reading("B", reading_g=g("22")))
    assert dict(Weighing.objects.values_list("position", "pk")) == {1: before[1], 2: before[2]}
    assert [str(one.reading_g) for one in Weighing.objects.order_by("position")] == ["0.30", "22"]
    # The reading that stayed was not written again.
    assert len(what_changed(*Weighing.objects.filter(position=2))) == 1


def test_topped_up_cup_holds_what_it_brought_along(bench):
    first, second = make_cups(bench, cups=2)
    candidate = make_candidate()
    low, high = dose(first, candidate, dosage_pct="0.5"), dose(second, candidate, dosage_pct="1.0", planned_g="0.61")
    Trial.objects.filter(pk=second.pk).update(topped_up_from=first, batch_mass_g=g("61"))
    second.refresh_from_db()
    weigh_one(
        bench,
        first,
        Reading("A", reading_g=g(100)),
        Reading("B", reading_g=g(22)),
        Reading(dosage=low, reading_g=g("0.61")),
    )
    # Half the mix is left: 61 g with 0.305 g of additive; to 1.0 % another 0.305 g.
    before = weighed_cups([second])[second.pk].doses[0]
    assert (before.carried_g, before.real_pct) == (g("0.305"), None)
    assert before.to_add_g == pytest.approx(0.305)
    weigh_one(bench, second, Reading(dosage=high, reading_g=g("0.32")))
    after = weighed_cups([second])[second.pk].doses[0]
    assert after.weighed_g == g("0.625")
    assert after.real_pct == pytest.approx(100 * 0.625 / 61)
    # The first cup is put right: what it left behind follows.
    weigh_one(
        bench,
        first,
        Reading("A", reading_g=g(100)),
        Reading("B", reading_g=g(22)),
        Reading(dosage=low, reading_g=g("0.63")),
    )
    assert weighed_cups([second])[second.pk].doses[0].weighed_g == g("0.635")


@pytest.mark.parametrize("cups", [1, 3])
def test_cups_are_reckoned_in_a_fixed_number_of_queries(bench, django_assert_num_queries, cups):
    made = make_cups(bench, cups=cups)
    candidate = make_candidate()
    for cup in made:
        weigh_one(
            bench, cup, Reading("A", reading_g=g(100)), Reading(dosage=dose(cup, candidate), reading_g=g("0.6"))
        )
    with django_assert_num_queries(10):
        weighed_cups(made)


@pytest.mark.parametrize("cups", [1, 4])
def test_many_cups_are_weighed_and_worked_in_as_many_statements_as_one(bench, django_assert_num_queries, cups):
    made = make_cups(bench, cups=cups)
    candidate = make_candidate()
    readings = [
        CupReadings(cup, (Reading("A", reading_g=g(100)), Reading(dosage=dose(cup, candidate), reading_g=g("0.6"))))
        for cup in made
    ]
    with django_assert_num_queries(10):
        weigh(actor=bench, now=NOW, entries=readings)
    workings = [CupWorkings(cup, (WorkingEntry("disperse", rpm=g(1500)),), mixed_at=NOW) for cup in made]
    with django_assert_num_queries(9):
        work(actor=bench, now=NOW, entries=workings)


def test_workings_are_kept_in_order_and_mixing_has_its_time(bench):
    (cup,) = make_cups(bench)
    later = NOW + timedelta(hours=20)
    workings = (
        WorkingEntry("disperse", blade_mm=g(40), rpm=g(2000), minutes=g("1.5")),
        WorkingEntry("rest", minutes=g(960)),
        WorkingEntry("mix", minutes=g(3), remark="into a fresh cup, mixed again"),
    )
    work(actor=bench, now=NOW, entries=[CupWorkings(cup, workings, mixed_at=later)])
    cup.refresh_from_db()
    assert list(cup.workings.order_by("position").values_list("kind", flat=True)) == ["disperse", "rest", "mix"]
    assert (cup.state, cup.mixed_at) == ("mixed", later)


def test_impossible_working_names_cup_and_row(bench):
    (cup,) = make_cups(bench)
    workings = (WorkingEntry("rest"), WorkingEntry("mix", blade_mm=g(0)))
    with pytest.raises(Refused, match="417-1, row 2: Blade or disc must be above 0; got 0 mm") as refused:
        work(actor=bench, now=NOW, entries=[CupWorkings(cup, workings)])
    assert refused.value.field == "blade_mm"


def test_silicone_stays_on_the_disc_it_was_stirred_with(bench):
    silicone, free = make_cups(bench, cups=2)
    dose(silicone, make_candidate("AR-01", silicone=True))
    dose(free, make_candidate("AR-02", silicone=False))
    discs = [Equipment.objects.create(name=name) for name in ("Disc 1", "Disc 2", "Oven")]
    work(
        actor=bench,
        now=NOW,
        entries=[
            CupWorkings(silicone, (WorkingEntry("disperse", discs[0]), WorkingEntry("rest", discs[2]))),
            CupWorkings(free, (WorkingEntry("disperse", discs[1]),)),
        ],
    )
    assert list(Equipment.objects.order_by("name").values_list("last_silicone", flat=True)) == [NOW, None, None]


def test_made_as_planned_later_with_its_climate(bench, colleague):
    cups = make_cups(bench, cups=2)
    yesterday = NOW - timedelta(days=1)
    entries = [MadeEntry(cup, made_at=yesterday, air_c=g("22.5"), humidity_pct=g(48)) for cup in cups]
    mark_made(actor=colleague, now=NOW, entries=entries)
    assert set(Trial.objects.values_list("made_at", "made_by", "air_c", "state")) == {
        (yesterday, colleague.pk, g("22.5"), "mixed")
    }


def test_state_never_goes_back(bench):
    (cup,) = make_cups(bench)
    Trial.objects.update(state="read")
    weigh_one(bench, cup, Reading("A", reading_g=g(100)))
    cup.refresh_from_db()
    assert cup.state == "read"


def test_nobody_weighs_over_what_they_have_not_seen(bench, colleague):
    (cup,) = make_cups(bench)
    seen = version(cup, parts=("weighings",))
    weigh_one(colleague, cup, Reading("A", reading_g=g("100.0")), seen=seen)
    with pytest.raises(Refused, match="Bench Two changed this") as refused:
        weigh_one(bench, cup, Reading("A", reading_g=g("99.0")), seen=seen)
    assert refused.value.field == "seen"


def test_signed_cup_takes_nothing_more(bench):
    (cup,) = make_cups(bench)
    weigh_one(bench, cup, Reading("A", reading_g=g(100)))
    signed(cup.series, bench)
    with pytest.raises(Refused, match="This is signed"):
        weigh_one(bench, cup, Reading("A", reading_g=g(101)))
    with pytest.raises(Refused, match="This is signed"):
        work(actor=bench, now=NOW, entries=[CupWorkings(cup, (WorkingEntry("rest"),))])
    with pytest.raises(Refused, match="This is signed"):
        set_remark(actor=bench, trial=cup, remark="later")
    assert (Weighing.objects.get().reading_g, Working.objects.count()) == (100, 0)


def test_reader_logs_nothing(bench, reader):
    (cup,) = make_cups(bench)
    with pytest.raises(PermissionDenied):
        weigh_one(reader, cup, Reading("A", reading_g=g(100)))
    with pytest.raises(PermissionDenied):
        mark_made(actor=reader, now=NOW, entries=[MadeEntry(cup)])
