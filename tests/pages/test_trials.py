from decimal import Decimal

import pytest
from django.urls import reverse

from tests.cup_making import dose, make_candidate, make_cups, make_panel, signed
from tests.people import PASSWORD
from trials.models import (
    Balance,
    Equipment,
    Panel,
    Retain,
    Signature,
    StoredTin,
    Trial,
    Weighing,
    WetReading,
    Working,
)

pytestmark = pytest.mark.django_db


def at(name, *args):
    return reverse(name, args=args)


def lines(prefix, *rows, initial=0):
    sent = {f"{prefix}-TOTAL_FORMS": len(rows), f"{prefix}-INITIAL_FORMS": initial}
    for number, row in enumerate(rows):
        sent |= {f"{prefix}-{number}-{name}": value for name, value in row.items()}
    return sent


def errors(response) -> str:
    page = response.content.decode()
    return page[page.index("error-summary") :]


@pytest.fixture
def page(client, bench):
    client.force_login(bench)
    return client


def test_page_of_a_cup_that_is_only_planned(page, bench):
    make_cups(bench)
    shown = page.get(at("trial", "417-1")).content.decode()
    assert "Not made yet." in shown
    assert "film not read yet" in shown


def test_weighing_offers_what_goes_in_and_takes_commas_units_and_words(page, bench):
    (cup,) = make_cups(bench)
    additive = dose(cup, make_candidate())
    balance = Balance.objects.create(name="Bench balance", step_g=Decimal("0.01"))
    shown = page.get(at("trial_weighings", "417-1")).content.decode()
    assert "Component A, 100.00 g planned" in shown
    assert "AR-01, 0.610 g planned" in shown
    rows = (
        {"what": "A", "reading": "100,20 g", "balance": balance.pk},
        {"what": f"d{additive.pk}", "reading": "100.83", "cumulative": "on"},
        {"what": "B", "reading": "spilled"},
        {},
    )
    answer = page.post(at("trial_weighings", "417-1"), lines("readings", *rows, initial=3))
    assert answer["Location"] == at("trial", "417-1")
    found = Weighing.objects.order_by("position").values_list("letter", "reading_g", "word", "balance")
    assert list(found) == [
        ("A", Decimal("100.20"), "", balance.pk),
        ("", Decimal("100.83"), "", None),
        ("B", None, "spilled", None),
    ]
    shown = page.get(at("trial", "417-1")).content.decode()
    assert "Component B: spilled" in shown


@pytest.mark.parametrize(
    ("row", "message"),
    [
        ({"what": "A", "reading": "1O2.3"}, "Row 1, Reading, or a word: Enter the number in g, not “1O2.3”."),
        ({"what": "A", "reading": "100 kg"}, "Enter the number in g, not “100 kg”"),
        ({"what": "A", "reading": "spilled 2 g"}, "“spilled 2 g” is not a number"),
        ({"reading": "100"}, "Say what “100” is the reading of"),
        ({"what": "A", "reading": "-3"}, "417-1, reading 1: Reading must be 0 or more; got -3 g"),
    ],
)
def test_slip_of_the_pen_is_told_and_what_was_typed_stays(page, bench, row, message):
    make_cups(bench)
    answer = page.post(at("trial_weighings", "417-1"), lines("readings", row))
    assert message in errors(answer)
    assert f'value="{row["reading"]}"' in answer.content.decode()
    assert not Weighing.objects.exists()


def test_somebody_elses_readings_are_not_written_over_unseen(client, page, bench, colleague):
    make_cups(bench)
    shown = page.get(at("trial_weighings", "417-1"))
    seen = shown.context["form"]["seen"].value()
    row = {"what": "A", "reading": "99"}
    client.force_login(colleague)
    client.post(at("trial_weighings", "417-1"), lines("readings", {"what": "A", "reading": "100"}))
    client.force_login(bench)
    answer = client.post(at("trial_weighings", "417-1"), {**lines("readings", row), "seen": seen})
    assert "Bench Two changed this" in errors(answer)
    again = answer.context["form"]["seen"].value()
    client.post(at("trial_weighings", "417-1"), {**lines("readings", row), "seen": again})
    assert Weighing.objects.get().reading_g == 99


def test_workings_are_taken_from_the_cup_before_until_they_are_kept(page, bench):
    first, second = make_cups(bench, cups=2)
    disc = Equipment.objects.create(name="Disc 40", blade_mm=Decimal(40))
    row = {"kind": "disperse", "equipment": disc.pk, "rpm": "1500", "minutes": "5"}
    page.post(at("trial_workings", "417-1"), {**lines("workings", row), "mixed_at": "2026-03-02T11:15"})
    working = Working.objects.get()
    assert (working.trial, working.blade_mm) == (first, 40)  # the blade is that of the disc
    first.refresh_from_db()
    assert (first.state, first.mixed_at.isoformat()) == ("mixed", "2026-03-02T10:15:00+00:00")
    shown = page.get(at("trial_workings", "417-2"))
    assert "Taken from 417-1, not kept yet" in shown.content.decode()
    assert shown.context["formset"].forms[0].initial["rpm"] == 1500
    assert not second.workings.exists()
    page.post(at("trial_workings", "417-1"), lines("workings", {**row, "kind": ""}, initial=1))
    assert not first.workings.exists()


def test_wet_readings_are_added_put_right_and_taken_out(page, bench):
    make_cups(bench)
    rows = (
        {"quantity": "density", "where": "mix", "reading": "1,18", "minutes": "0"},
        {"quantity": "appearance", "where": "A", "reading": "3 mm clear on top"},
    )
    page.post(at("trial_wet", "417-1"), lines("wet", *rows))
    density, look = WetReading.objects.order_by("pk")
    assert (density.value, look.word, look.value) == (Decimal("1.18"), "3 mm clear on top", None)
    rows = ({**rows[0], "reading": "1.19", "row": density.pk}, {"quantity": "", "row": look.pk})
    page.post(at("trial_wet", "417-1"), lines("wet", *rows, initial=2))
    assert WetReading.objects.get().value == Decimal("1.19")


def test_row_of_another_cup_is_not_touched(page, bench):
    _, second = make_cups(bench, cups=2)
    other = WetReading.objects.create(trial=second, quantity="density", where="mix", value=Decimal("1.2"))
    page.post(at("trial_wet", "417-1"), lines("wet", {"quantity": "", "row": other.pk}, initial=1))
    assert WetReading.objects.filter(pk=other.pk).exists()


def test_session_is_noted_for_several_cups_at_once(page, bench):
    _first, second, third = make_cups(bench, cups=3)
    sent = {
        "made_at": "2026-03-02T09:00",
        "air_c": "22,5",
        "humidity_pct": "48",
        "remark": "smelt",
        "cups": [second.pk],
    }
    page.post(at("trial_made", "417-1"), sent)
    found = Trial.objects.order_by("pk").values_list("air_c", "remark", "state")
    assert list(found) == [
        (Decimal("22.5"), "smelt", "mixed"),
        (Decimal("22.5"), "", "mixed"),
        (None, "", "planned"),
    ]
    assert third.made_at is None


def test_cups_of_another_series_cannot_be_logged_along(page, bench):
    make_cups(bench)
    (other,) = make_cups(bench, number=418)
    answer = page.post(at("trial_made", "417-1"), {"air_c": "20", "cups": [other.pk]})
    assert "There is a problem" in errors(answer)
    assert not Trial.objects.filter(air_c=20).exists()


def test_build_up_is_applied_to_several_cups(page, bench):
    first, second = make_cups(bench, cups=2)
    sent = {"count": "2", "substrate": "concrete", "air_c": "20", "cups": [second.pk]}
    layers = lines(
        "layers",
        {"coat": "primer", "wet_um": "300", "method": "roller"},
        {"coat": "body coat", "wet_um": "2000", "method": "notched trowel", "spiked_after_min": "10"},
    )
    answer = page.post(at("trial_panels", "417-1"), {**sent, **layers})
    assert answer["Location"] == at("trial", "417-1") + "#panels"
    assert [first.panels.count(), second.panels.count()] == [2, 2]
    assert {panel.layers.count() for panel in Panel.objects.all()} == {2}
    shown = page.get(at("trial_panels", "417-2"))
    assert shown.context["formset"].forms[1].initial["wet_um"] == 2000
    assert shown.context["form"].initial["substrate"] == "concrete"


def test_tins_are_stored_opened_and_applied(page, bench):
    _first, blank = make_cups(bench, cups=2, parts=("treated", "blank"))
    page.post(at("trial_tins", "417-1"), {"days": "28", "temperature_c": "50", "cups": [blank.pk]})
    tin, _ = StoredTin.objects.order_by("trial__position")
    page.post(at("trial_tin", tin.pk), {"opened_at": "2126-03-30T09:00", "appearance": "sediment, soft"})
    tin.refresh_from_db()
    assert tin.appearance == "sediment, soft"
    sent = {"count": "1", "substrate": "glass", "stored_tin": tin.pk}
    layer = lines("layers", {"coat": "body coat", "wet_um": "2000", "method": "poured"})
    page.post(at("trial_panels", "417-1"), {**sent, **layer})
    assert Panel.objects.get().stored_tin == tin


def test_kept_lent_and_back(page, bench):
    (cup,) = make_cups(bench)
    page.post(at("trial_retains", "417-1"), {"place": "box 12", "what": "cup", "until": "2027-03-01"})
    kept = Retain.objects.get()
    sent = {"what": "cup", "place": "box 12", "lent_on": "2026-04-02"}
    answer = page.post(at("trial_retain", kept.pk), sent)
    assert "Say whom it was lent to." in errors(answer)
    page.post(at("trial_retain", kept.pk), {**sent, "lent_to": "the pilot plant"})
    kept.refresh_from_db()
    assert (kept.trial, kept.lent_to) == (cup, "the pilot plant")


def test_more_is_added_to_what_is_left(page, bench):
    (cup,) = make_cups(bench)
    additive = dose(cup, make_candidate())
    rows = (
        {"what": "A", "reading": "100"},
        {"what": f"d{additive.pk}", "reading": "0.61"},
        {"what": "B", "reading": "22"},
    )
    page.post(at("trial_weighings", "417-1"), lines("readings", *rows))
    answer = page.post(at("trial_top_up", "417-1"), {"dosage_pct": "1.0", "left_g": "61"})
    assert answer["Location"] == at("trial", "417-2")
    shown = page.get(at("trial", "417-2")).content.decode()
    # 61 g of mix hold 0.305 g at 0.5 %; at 1.0 % they hold 0.61 g
    assert "add 0.305 g" in shown
    assert "not independent of it" in shown
    assert "AR-01, 0.305 g to add" in page.get(at("trial_weighings", "417-2")).content.decode()


def test_signed_cup_takes_what_comes_later_as_an_amendment(page, bench):
    (cup,) = make_cups(bench)
    signed(cup.series, bench)
    row = lines("wet", {"quantity": "pot life", "where": "mix", "reading": "25"})
    answer = page.post(at("trial_wet", "417-1"), row)
    assert "Why this comes after signing" in errors(answer)
    assert not WetReading.objects.exists()
    reason = {"amend_reason": "read from the paper sheet", "amend_password": "not mine"}
    assert "This is not your password." in errors(page.post(at("trial_wet", "417-1"), {**row, **reason}))
    assert not WetReading.objects.exists()
    answer = page.post(at("trial_wet", "417-1"), {**row, **reason, "amend_password": PASSWORD})
    assert answer["Location"] == at("trial", "417-1")
    assert WetReading.objects.get().value == 25
    amended = Signature.objects.get(meaning="amended")
    assert (amended.person, amended.reason) == (bench, "read from the paper sheet")
    assert '"pot life"' in amended.canonical


def test_signed_cup_refused_keeps_what_was_typed(page, bench, monkeypatch):
    (cup,) = make_cups(bench)
    # Signed by somebody between opening and keeping: the page did not know it yet.
    monkeypatch.setattr("trials.pages.trials.views.signed_record", lambda trial: None)
    signed(cup.series, bench)
    row = lines("readings", {"what": "A", "reading": "100.25"})
    answer = page.post(at("trial_weighings", "417-1"), row)
    assert "This is signed: it changes only by an amendment" in errors(answer)
    assert 'value="100.25"' in answer.content.decode()


def test_stranger_finds_no_cup_and_reader_may_not_log(client, bench, colleague, reader):
    (cup,) = make_cups(bench, restricted=True)
    make_panel(cup)
    client.force_login(colleague)
    row = lines("readings", {"what": "A", "reading": "1"})
    assert client.get(at("trial", "417-1")).status_code == 404
    assert client.post(at("trial_weighings", "417-1"), row).status_code == 404
    client.force_login(reader)
    assert client.post(at("trial_weighings", "417-1"), row).status_code == 403
    assert not Weighing.objects.exists()


def test_sheet_after_sheet_down_the_order_of_working(page, bench):
    make_cups(bench, cups=2)
    row = lines("readings", {"what": "A", "reading": "100"})
    assert "Keep, then 417-2" in page.get(at("trial_weighings", "417-1")).content.decode()
    answer = page.post(at("trial_weighings", "417-1"), {**row, "then": "next"})
    assert answer["Location"] == at("trial_weighings", "417-2")
    answer = page.post(at("trial_weighings", "417-2"), {**row, "then": "next"})
    assert answer["Location"] == at("trial", "417-2")
    assert Weighing.objects.count() == 2
