"""What was unfair is said with its figures, at the cup; what is alike or not known sets no cup apart."""

from datetime import timedelta
from decimal import Decimal

import pytest

from tests.judged_series import add_cup, empty_series, rate, stir
from tests.making import NOW
from tests.series_making import make_candidate
from trials.models import CommonBatch, Equipment, Lot
from trials.operations.judging import conclude_trial
from trials.queries.judging import judgement

pytestmark = pytest.mark.django_db


@pytest.fixture
def series(bench):
    """Two blanks at 23 °C and 50 % RH, stirred at 4.2 m/s for 5 min."""
    made = empty_series(bench)
    add_cup(made, "blank", air_pct="9.8")
    add_cup(made, "blank", air_pct="10.4")
    return made


def _said(series, bench):
    """Marks of the last group, and whether its last cup counts."""
    line = judgement(series.pk, bench).lines[-1]
    return [mark.text for mark, _ in line.marks], line.group.cups[-1].counts


def test_a_cup_made_like_the_blanks_has_no_mark(series, bench):
    add_cup(series, "treated", make_candidate(), "0.3", air_pct="4.1")
    assert _said(series, bench) == ([], True)
    assert [mark.text for mark in judgement(series.pk, bench).marks] == []


def test_other_batch_day_and_climate_set_a_cup_apart(series, bench):
    batch = CommonBatch.objects.create(revision=series.revision, number="CB-2", made_at=NOW, made_by=bench)
    add_cup(
        series, "treated", make_candidate(), "0.3", air_pct="4.1", common_batch=batch,
        made_at=NOW + timedelta(days=3), air_c=Decimal(28), humidity_pct=Decimal(70),
    )  # fmt: skip
    marks, counts = _said(series, bench)
    assert marks == [
        "other common batch: CB-2, blank CB-417",
        "other day: 5 Mar 2026, blank 2 Mar 2026",
        "other climate: air 28 °C, blank 23 °C",
        "other climate: humidity 70 % RH, blank 50 % RH",
    ]
    assert not counts
    line = judgement(series.pk, bench).lines[-1]
    assert (line.suggestion.outcome, line.suggestion.reasons) == ("not a fair test", tuple(marks))


def test_climate_is_that_of_the_panel_where_the_cup_has_none(series, bench):
    cup = add_cup(series, "treated", make_candidate(), "0.3", air_c=None)
    rate(cup, bench, "bubbles", 1, air_c=Decimal(28))
    assert _said(series, bench) == (["other climate: air 28 °C, blank 23 °C"], False)


def test_a_climate_within_three_degrees_and_fifteen_per_cent_is_the_same(series, bench):
    add_cup(series, "treated", make_candidate(), "0.3", air_c=Decimal(26), humidity_pct=Decimal(65))
    assert _said(series, bench) == ([], True)


def test_blank_stirred_otherwise_sets_a_cup_apart(series, bench):
    cup = add_cup(series, "treated", make_candidate(), "0.3", stirred=False)
    stir(cup, rpm=3000, minutes=5)
    assert _said(series, bench) == (
        ["blank stirred differently (disperse): 6.3 m/s, 5 min, blank 4.2 m/s, 5 min"],
        False,
    )


def test_a_blank_stirred_like_the_strong_cups_is_their_control(series, bench):
    for part in ("blank", "treated"):
        dosed = {"candidate": make_candidate(), "dosage_pct": "0.3"} if part == "treated" else {}
        stir(add_cup(series, part, **dosed, air_pct="5", stirred=False), rpm=3000)
    found = judgement(series.pk, bench)
    line = found.lines[-1]
    assert line.group.counted
    assert line.group.block.number == 2
    assert [mark.text for mark in found.marks] == [
        "one blank only (batch CB-417, 2 Mar 2026): two show how far equal cups scatter"
    ]


def test_nothing_noted_of_the_stirring_is_said_of_the_series(series, bench):
    cup = add_cup(series, "treated", make_candidate(), "0.3", stirred=False)
    assert _said(series, bench) == ([], True)
    marks = [mark.text for mark in judgement(series.pk, bench).marks]
    assert marks == [f"stirring not noted for {cup.code}: it can't be checked against the blank"]


@pytest.mark.parametrize(
    ("asked", "mark"),
    [
        ({"tip_speed_m_s": Decimal(8)}, "dispersed 4.2 m/s; AR-01 asks for 8 m/s"),
        ({"minutes": Decimal(10)}, "dispersed 5 min; AR-01 asks for 10 min"),
        ({"tip_speed_m_s": Decimal(4), "minutes": Decimal(5)}, None),
    ],
)
def test_less_working_than_the_candidate_asks_for(series, bench, asked, mark):
    add_cup(series, "treated", make_candidate(**asked), "0.3")
    assert _said(series, bench) == ([mark] if mark else [], True)


@pytest.mark.parametrize(
    ("grams", "mark"),
    [
        # 0.3 % on 150 g is 0.45 g; 0.39 g is 0.26 %, 13 % less
        ("0.39", "AR-01 weighed at 0.26 % instead of 0.3 %: 13 % less"),
        ("0.51", "AR-01 weighed at 0.34 % instead of 0.3 %: 13 % more"),
        ("0.41", None),
    ],
)
def test_weighed_more_than_a_tenth_off_what_was_decided(series, bench, grams, mark):
    cup = add_cup(series, "treated", make_candidate(), "0.3", batch_mass_g=Decimal(150))
    cup.dosages.update(weighed_g=Decimal(grams))
    assert _said(series, bench)[0] == ([mark] if mark else [])


def test_other_film_thickness(series, bench):
    for blank in series.trials.all():
        rate(blank, bench, "bubbles", 4)
    rating = rate(add_cup(series, "treated", make_candidate(), "0.3"), bench, "bubbles", 1, wet_um="2300")
    assert _said(series, bench)[0] == [f"panel {rating.panel.code}: 2300 µm wet, blank 2000 µm"]


def test_lot_not_shaken(series, bench):
    candidate = make_candidate()
    lot = Lot.objects.create(material=candidate.material, number="7", shaken=False)
    add_cup(series, "treated", candidate, "0.3").dosages.update(lot=lot)
    assert _said(series, bench)[0] == ["AR-01 lot 7 was not shaken"]
    Lot.objects.update(shaken=None)
    assert _said(series, bench)[0] == []


def test_silicone_left_on_the_disc(series, bench):
    disc = Equipment.objects.create(name="Disc 2", blade_mm=Decimal(40))
    oily, free = make_candidate("AR-01", silicone=True), make_candidate("AR-02")
    first = add_cup(series, "treated", oily, "0.3")
    second = add_cup(series, "treated", free, "0.3")
    for cup in (first, second):
        cup.workings.update(equipment=disc)
    assert _said(series, bench)[0] == [f"Disc 2 had silicone in it for {first.code} and no cleaning is noted since"]
    Equipment.objects.update(last_cleaned=first.made_at + timedelta(minutes=5))
    assert _said(series, bench)[0] == []
    Equipment.objects.update(last_cleaned=second.made_at + timedelta(days=9))
    assert _said(series, bench)[0] == []
    (mark,) = judgement(series.pk, bench).marks
    said = "followed silicone on the same equipment; a cleaning between can't be checked"
    assert mark.text == f"{second.code} {said}"


def test_silicone_from_before_the_series(series, bench):
    disc = Equipment.objects.create(name="Disc 2", last_silicone=NOW - timedelta(days=3))
    add_cup(series, "treated", make_candidate(), "0.3").workings.update(equipment=disc)
    assert _said(series, bench)[0] == ["Disc 2 had silicone in it on 27 Feb 2026 and no cleaning is noted since"]
    Equipment.objects.update(last_cleaned=NOW - timedelta(days=2))
    assert _said(series, bench)[0] == []


def test_a_cup_that_stood_longer_is_set_apart(series, bench):
    for blank in series.trials.all():
        blank.workings.create(position=2, kind="rest", minutes=Decimal(15))
    candidate = make_candidate()
    for dosage, minutes, apart in (("0.1", 40, True), ("0.2", 19, False)):
        cup = add_cup(series, "treated", candidate, dosage)
        cup.workings.create(position=2, kind="rest", minutes=Decimal(minutes))
        marks = ["blank rested differently: 40 min, blank 15 min"] if apart else []
        assert _said(series, bench) == (marks, not apart)


def test_what_people_judged_unfair_is_not_counted(series, bench):
    cup = add_cup(series, "treated", make_candidate(), "0.3", air_pct="4.1")
    conclude_trial(actor=bench, trial=cup, outcome="not a fair test", unfair_because="Spilled before pouring.")
    assert _said(series, bench) == (["judged not a fair test: Spilled before pouring"], False)


def test_a_blank_judged_unfair_is_no_control(series, bench):
    add_cup(series, "treated", make_candidate(), "0.3", air_pct="4.1")
    blank = series.trials.first()
    conclude_trial(actor=bench, trial=blank, outcome="not a fair test", unfair_because="Spilled.")
    found = judgement(series.pk, bench)
    assert found.lines[-1].group.block.blanks == (series.trials.get(number=2).pk,)
    assert found.tables[0].rows[-1].cell.blank.n_control == 1


def test_substrate_near_the_dew_point(series, bench):
    # 23 °C and 80 % RH have their dew point at 19.4 °C (Magnus): 21 °C stands 1.6 °C above
    cup = add_cup(series, "treated", make_candidate(), "0.3")
    rating = rate(cup, bench, "bubbles", 1, substrate_c=Decimal(21), air_c=Decimal(23), humidity_pct=Decimal(80))
    assert _said(series, bench)[0] == [
        f"panel {rating.panel.code}: substrate 1.6 °C above the dew point, 3 °C are asked for"
    ]


def test_read_too_early_is_not_counted(series, bench):
    cup = add_cup(series, "treated", make_candidate(), "0.3", air_pct="4")
    rate(cup, bench, "bubbles", 1, age_h=4)
    found = judgement(series.pk, bench)
    assert _said(series, bench)[0] == ["read at 4 h only: below 20 h a film is not cured, not counted"]
    assert [table.key for table in found.tables] == ["air-a:fresh"]


def test_one_reader_and_unblinded_reading_are_said(series, bench, colleague):
    cup = add_cup(series, "treated", make_candidate(), "0.3")
    rating = rate(cup, bench, "bubbles", 1)
    assert [mark.text for mark in judgement(series.pk, bench).marks] == ["one reader"]
    rating.panel.ratings.create(criterion=rating.criterion, person=colleague, age_h=24, value=2, at=NOW, blind=False)
    assert [mark.text for mark in judgement(series.pk, bench).marks] == ["not everything was read blind to the cup"]
