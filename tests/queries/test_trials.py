from decimal import Decimal

import pytest

from tests.cup_making import dose, make_candidate, make_cups, make_panel, rated
from tests.making import NOW
from trials.models import Revision, StoredTin, Trial, WetReading
from trials.operations.bench import CupReadings, CupWorkings, Reading, WorkingEntry, weigh, work
from trials.queries.panels import load_panel, panel_sheet
from trials.queries.trials import load_trial, trial_sheet

pytestmark = pytest.mark.django_db


def sheet_of(person, code="417-1"):
    return trial_sheet(load_trial(person, code))


def stir(actor, cup, **values):
    work(actor=actor, now=NOW, entries=[CupWorkings(cup, (WorkingEntry("disperse", **values),))])


def test_shear_stands_beside_what_was_asked_for(bench):
    (cup,) = make_cups(bench)
    dose(cup, make_candidate())
    stir(bench, cup, blade_mm=Decimal(40), vessel_mm=Decimal(200), rpm=Decimal(2000), minutes=Decimal(5))
    sheet = sheet_of(bench)
    # pi * 0.040 m * 2000/60 per s = 4.19 m/s; 40/200 is a fifth
    assert sheet.asked == ("AR-01 asks for 8 m/s for 5 min: got 4.2 m/s, 5 min.",)
    assert sheet.workings[0].tip_speed_m_s == pytest.approx(4.18879)
    assert sheet.workings[0].remarks == ("blade 0.20 of the vessel, usual are 0.25 to 0.50",)
    assert any(mark.heavy and "asks for 8 m/s" in mark.text for mark in sheet.marks)


def test_blade_that_does_not_fit_is_remarked(bench):
    (cup,) = make_cups(bench)
    stir(bench, cup, blade_mm=Decimal(90), vessel_mm=Decimal(80))
    assert sheet_of(bench).workings[0].remarks == ("a blade of 90 mm does not fit a vessel of 80 mm",)


def test_air_stands_with_the_density_it_was_reckoned_from(bench):
    (cup,) = make_cups(bench)
    Revision.objects.update(air_free_density_g_ml=Decimal("1.250"), air_free_method="pressure cup")
    for minutes, density in ((0, "1.180"), (30, "1.238"), (60, "1.300")):
        WetReading.objects.create(trial=cup, quantity="density", where="mix", value=Decimal(density), minutes=minutes)
    WetReading.objects.create(trial=cup, quantity="density", where="mix", word="spilled", minutes=90)
    wet = sheet_of(bench).wet
    # (1.250 - 1.180) / 1.250 = 5.6 %; (1.250 - 1.238) / 1.250 = 0.96 %
    assert [row.air_pct and round(row.air_pct, 6) for row in wet] == [5.6, 0.96, None, None]
    assert wet[0].free.source == "measured on the revision: pressure cup"
    assert wet[2].problem.startswith("1.300 g/mL is above 1.25 g/mL, the density free of air")
    assert wet[3].reading.word == "spilled"


def test_air_free_density_of_the_recipe_says_that_it_is_not_measured(bench):
    (cup,) = make_cups(bench)
    WetReading.objects.create(trial=cup, quantity="density", where="mix", value=Decimal("1.30"))
    (row,) = sheet_of(bench).wet
    # 60 g at 1.16, 40 g at 2.65 and 22 g at 1.00 g/mL: 122 / (51.724 + 15.094 + 22) = 1.37359
    assert row.free.density_g_ml == pytest.approx(1.37359, abs=1e-5)
    assert row.air_pct == pytest.approx(100 * (1.37359 - 1.30) / 1.37359, abs=1e-3)
    assert "not measured" in row.free.source


def test_component_off_its_ratio_is_remarked(bench):
    (cup,) = make_cups(bench)
    readings = (Reading("A", reading_g=Decimal(100)), Reading("B", reading_g=Decimal(20)))
    weigh(actor=bench, now=NOW, entries=[CupReadings(cup, readings)])
    assert [mark.text for mark in sheet_of(bench).marks if mark.text.startswith("B ")] == [
        "B weighed 20 g, 22 g at its ratio to A: 9.1 % less"
    ]


def test_stored_cup_without_a_stored_blank_is_remarked(bench):
    cup, blank = make_cups(bench, cups=2, parts=("treated", "blank"))
    StoredTin.objects.create(trial=cup, temperature_c=50, days=28, stored_at=NOW)
    said = "stored, but no blank of the series is: nothing to compare the stored tin with"
    assert said in [mark.text for mark in sheet_of(bench).marks]
    StoredTin.objects.create(trial=blank, temperature_c=50, days=28, stored_at=NOW)
    assert said not in [mark.text for mark in sheet_of(bench).marks]


def test_fresh_and_stored_ratings_stand_apart(bench):
    (cup,) = make_cups(bench)
    tin = StoredTin.objects.create(trial=cup, temperature_c=50, days=28, stored_at=NOW)
    rated(make_panel(cup), bench, "bubbles", 1)
    rated(make_panel(cup, stored_tin=tin), bench, "bubbles", 4)
    sheet = sheet_of(bench)
    assert [(row.name, row.fresh.value, row.stored.value) for row in sheet.rated] == [("Bubbles", 1, 4)]
    assert (sheet.film.bubbles, sheet.stored_film.bubbles) == (1, 4)
    assert [row.storage for row in sheet.panels] == ["fresh", "stored 28 d at 50 °C"]


def test_dew_point_margin_of_a_cold_substrate(bench):
    (cup,) = make_cups(bench)
    Trial.objects.update(air_c=20, humidity_pct=70)
    make_panel(cup, "K7F", substrate_c=Decimal(16))
    sheet = panel_sheet(bench, load_panel(bench, "k7f"))
    # dew point 14.4 °C at 20 °C and 70 %
    assert sheet.row.margin_c == pytest.approx(1.6, abs=0.05)
    assert sheet.row.damp


def test_nobody_sees_a_cup_of_a_series_that_is_not_theirs(bench, colleague):
    (cup,) = make_cups(bench, restricted=True)
    make_panel(cup, "K7F")
    assert load_trial(colleague, "417-1") is None
    assert load_panel(colleague, "K7F") is None


@pytest.mark.parametrize("rows", [1, 3])
def test_as_many_queries_for_three_of_everything_as_for_one(bench, django_assert_num_queries, rows):
    cups = make_cups(bench, cups=rows)
    candidate = make_candidate()
    for cup in cups:
        additive = dose(cup, candidate)
        readings = (Reading("A", reading_g=Decimal(100)), Reading(dosage=additive, reading_g=Decimal("0.6")))
        weigh(actor=bench, now=NOW, entries=[CupReadings(cup, readings)])
        stir(bench, cup, rpm=Decimal(1000))
        WetReading.objects.create(trial=cup, quantity="density", where="mix", value=Decimal("1.30"))
        tin = StoredTin.objects.create(trial=cup, temperature_c=50, days=28, stored_at=NOW)
        for _ in range(rows):
            rated(make_panel(cup), bench, "bubbles", 1)
            rated(make_panel(cup, stored_tin=tin), bench, "bubbles", 1)
    trial = load_trial(bench, "417-1")
    with django_assert_num_queries(30):
        trial_sheet(trial)
