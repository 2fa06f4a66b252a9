from decimal import Decimal

import pytest
from django.db import connection
from django.test.utils import CaptureQueriesContext
from django.urls import reverse

from tests.making import NOW, make_epoxy_base, make_material
from tests.series_making import make_candidate, make_series
from trials.models import Balance, CommonBatch, Criterion, Equipment, Lot, Series, Trial
from trials.operations.enquiries import LimitEntry, add_enquiry
from trials.operations.series import change_series

pytestmark = pytest.mark.django_db


def _rows(prefix, rows):
    typed = {f"{prefix}-TOTAL_FORMS": len(rows), f"{prefix}-INITIAL_FORMS": 0}
    return typed | {f"{prefix}-{n}-{name}": value for n, row in enumerate(rows) for name, value in row.items()}


def _typed(revision, **more):
    workings = [
        {"kind": "disperse", "blade_mm": "40", "rpm": "1500", "minutes": "5"},
        {"kind": "mix", "minutes": "3"},
    ]
    return {
        "title": "Less foam at 2 mm",
        "revision": revision.pk,
        "round": "ladder",
        "batch_mass_g": "150 g",
        "basis": "total",
        "counting": "on top",
        "supplied": "as supplied",
        "stage": "let-down",
        "into": "A",
        "ratio": "as sold",
        "replicates": "2",
        "blanks": "2",
        "clean_check": "on",
        "order_rule": "blanks first, dosage ascending",
        **_rows("candidates", [{"candidate": "ar-01", "dosages_pct": "0,1 0.3; 0.5 %"}, {"candidate": ""}]),
        **_rows("workings", workings),
        **_rows("criteria", [{"criterion": "bubbles", "weight": "2"}, {"criterion": "craters", "weight": ""}]),
        **more,
    }


@pytest.fixture
def revision(bench):
    make_candidate("AR-01")
    return make_epoxy_base(bench)


def test_series_is_planned_as_typed(client, bench, revision):
    client.force_login(bench)
    response = client.post(reverse("series_new"), _typed(revision))
    assert response.status_code == 302, response.context["problems"]
    series = Series.objects.get()
    assert response.url == reverse("series", args=[series.number])
    assert [str(pct) for pct in series.ladder_pct] == ["0.1", "0.3", "0.5"]
    weights = {row.criterion.key: row.weight for row in series.criteria.all()}
    assert weights == {"bubbles": 2, "craters": 1}
    page = client.get(response.url).content.decode()
    for code in Trial.objects.values_list("code", flat=True):
        assert f'id="cup-{code}"' in page


@pytest.mark.parametrize(
    ("more", "said"),
    [
        ({"candidates-0-dosages_pct": "0.1,0.3,0.5"}, "“0.1,0.3,0.5” is no dosage"),
        ({"candidates-0-dosages_pct": "-0.1"}, "got -0.1"),
        ({"candidates-0-dosages_pct": ""}, "Give the dosages of AR-01"),
        ({"candidates-0-candidate": "AR-77"}, "There is no additive “AR-77”"),
        ({"candidates-0-lot": "9"}, "AR-01 has no lot “9”"),
        ({"blanks": "0"}, "got 0"),
        ({"batch_mass_g": "0"}, "got 0 g"),
        ({"batch_mass_g": "many"}, "“many” is not a number"),
        ({"basis": "component"}, "Say which component"),
        ({"supplied": "active"}, "active content of AR-01 is not known"),
        ({"incumbent": "AR-01"}, "at what dosage AR-01 is used today"),
        ({"workings-0-blade_mm": "0"}, "must be above 0 mm; got 0"),
        ({"criteria-1-criterion": "bubbles"}, "Bubbles: one row for each criterion"),
    ],
)
def test_what_cannot_be_is_told_and_the_rest_is_kept(client, bench, revision, more, said):
    client.force_login(bench)
    response = client.post(reverse("series_new"), _typed(revision, **more))
    page = response.content.decode()
    assert response.status_code == 200
    assert said in page
    assert "Less foam at 2 mm" in page
    assert not Series.objects.exists()


def test_dosage_outside_the_window_is_taken_with_a_warning(client, bench, revision):
    client.force_login(bench)
    response = client.post(reverse("series_new"), _typed(revision, **{"candidates-0-dosages_pct": "3"}))
    page = client.get(response.url).content.decode()
    assert "AR-01 at 3 % on the total is outside its usual window of 0.1 to 1.0 %" in page


def test_plan_starts_from_what_the_enquiry_asks(client, bench, revision):
    enquiry = add_enquiry(
        actor=bench,
        now=NOW,
        subject="Pinholes at 2 mm",
        field="floor",
        base=revision.base,
        film_um=Decimal(2000),
        incumbent=make_candidate("AR-09"),
        incumbent_pct=Decimal("0.40"),
        limits=[LimitEntry(Criterion.objects.get(key="pinholes"), Decimal(1))],
    )
    client.force_login(bench)
    page = client.get(reverse("series_new"), {"enquiry": enquiry.number})
    plan = page.context["plan"]
    assert [form.initial["criterion"] for form in plan.criteria.initial_forms] == ["pinholes"]
    text = page.content.decode()
    assert 'value="AR-09"' in text
    assert 'value="0.40"' in text
    assert 'value="2000"' in text


def test_plan_like_an_earlier_series_has_its_candidates_and_workings(client, bench):
    earlier = make_series(bench)
    client.force_login(bench)
    page = client.get(reverse("series_new"), {"like": earlier.number}).content.decode()
    assert 'value="AR-01"' in page
    assert 'value="0.1 0.3 0.5"' in page
    assert 'value="2500"' in page


def test_one_more_cup_from_the_foot_of_the_list(client, bench):
    series = make_series(bench)
    client.force_login(bench)
    like = series.trials.filter(part="treated").first()
    response = client.post(reverse("series_cup", args=[series.number]), {"like": like.code, "dosage_pct": "0,7 %"})
    assert response.url == f"/series/{series.number}/#cup-{series.number}-10"
    assert str(Trial.objects.get(number=10).dosages.get().dosage_pct) == "0.7"


@pytest.mark.parametrize(
    ("typed", "said"),
    [
        ({"dosage_pct": "-1"}, "greater than or equal to 0"),
        ({"candidate": "AR-77", "dosage_pct": "1"}, "no additive “AR-77”"),
        ({"batch_mass_g": "0"}, "got 0"),
        ({"lot": "12"}, "AR-01 has no lot “12”"),
        ({"topped_up": "on", "dosage_pct": "0.05"}, "holds 0.1 % already"),
    ],
)
def test_impossible_cup_is_told_and_kept(client, bench, typed, said):
    series = make_series(bench)
    client.force_login(bench)
    like = series.trials.filter(part="treated").first()
    response = client.post(reverse("series_cup", args=[series.number]), {"like": like.code, **typed})
    assert response.status_code == 200
    assert said in response.content.decode()
    assert Trial.objects.count() == 9


def test_cup_is_taken_out_unless_it_was_made(client, bench):
    series = make_series(bench)
    client.force_login(bench)
    first, second = series.trials.filter(part="treated")[:2]
    Trial.objects.filter(pk=second.pk).update(state="mixed")
    assert client.post(reverse("series_cup_remove", args=[series.number, first.code])).status_code == 302
    refused = client.post(reverse("series_cup_remove", args=[series.number, second.code]))
    assert "no longer only planned" in refused.content.decode()
    assert Trial.objects.count() == 8


def test_change_carries_what_was_typed_and_the_cups_follow(client, bench):
    series = make_series(bench)
    client.force_login(bench)
    url = reverse("series_change", args=[series.number])
    start = client.get(url).context["form"]
    typed = {name: start[name].value() for name in start.fields}
    typed = {name: value for name, value in typed.items() if value not in (None, False)}
    typed |= {"batch_mass_g": "300", **_rows("criteria", [{"criterion": "craters", "weight": "1"}])}
    response = client.post(url, typed)
    assert response.status_code == 302, response.context["form"].errors
    assert set(Trial.objects.values_list("batch_mass_g", flat=True)) == {Decimal(300)}
    assert [row.criterion.key for row in series.criteria.all()] == ["craters"]


def test_change_after_somebody_elses_is_told_once(client, bench, colleague):
    series = make_series(bench)
    client.force_login(bench)
    url = reverse("series_change", args=[series.number])
    start = client.get(url).context["form"]
    typed = {name: start[name].value() for name in start.fields}
    typed = {name: value for name, value in typed.items() if value not in (None, False)}
    change_series(actor=colleague, series=series, title="Theirs")
    typed |= {"title": "Mine", **_rows("criteria", [{"criterion": "craters", "weight": "1"}])}
    page = client.post(url, typed).content.decode()
    assert "What you typed is still here" in page
    assert "Mine" in page
    assert Series.objects.get().title == "Theirs"


def test_weighing_sheet_has_every_cup_with_its_grams(client, bench):
    Balance.objects.create(name="Fine", step_g=Decimal("0.001"))
    series = make_series(bench)
    client.force_login(bench)
    page = client.get(reverse("series_weighing", args=[series.number])).content.decode()
    for code in Trial.objects.values_list("code", flat=True):
        assert f">{code}</th>" in page
    assert "<strong>0.450</strong>" in page
    assert "Safety data sheets, local rules and qualified people take precedence" in page
    assert "H314" in page


def test_reader_sees_no_way_to_write(client, reader, bench):
    series = make_series(bench)
    client.force_login(reader)
    page = client.get(reverse("series", args=[series.number])).content.decode()
    for name in ("series_change", "series_cup"):
        assert reverse(name, args=[series.number]) not in page
    assert "/take out" not in page
    assert reverse("series_new") not in client.get(reverse("series_list")).content.decode()


@pytest.mark.parametrize("name", ["series", "series_weighing", "series_change", "series_cup"])
def test_restricted_series_is_not_there_for_others(client, bench, colleague, name):
    series = make_series(bench, restricted=True)
    client.force_login(colleague)
    assert client.get(reverse(name, args=[series.number])).status_code == 404
    assert "Less foam" not in client.get(reverse("series_list")).content.decode()


def test_common_batch_is_made_and_offered(client, bench, revision):
    client.force_login(bench)
    lot = Lot.objects.create(material=revision.components.get(letter="A").lines.first().material, number="22")
    other = Lot.objects.create(material=make_material("ZZ-1"), number="33")
    url = reverse("common_batch_new", args=["EP-F1", 1])
    assert "ZZ-1" not in client.get(url).content.decode()
    typed = {"number": "CB-12", "letter": "A", "made_at": "2026-03-02T10:00", "water_pct": "0,05 %", "lots": [lot.pk]}
    assert client.post(url, typed | {"lots": [other.pk]}).status_code == 200
    assert client.post(url, typed).url == reverse("common_batches")
    batch = CommonBatch.objects.get()
    assert (str(batch.water_pct), batch.lots.get().lot) == ("0.05", lot)
    assert "CB-12" in client.get(reverse("series_new")).content.decode()
    assert "CB-12" in client.get(reverse("common_batches")).content.decode()


def test_equipment_and_balances_are_kept(client, bench):
    client.force_login(bench)
    assert client.post(reverse("balance_new"), {"name": "Fine", "step_g": "0,0001 g"}).status_code == 302
    assert client.post(reverse("equipment_new"), {"name": "Dissolver", "blade_mm": "40"}).status_code == 302
    refused = client.post(reverse("balance_new"), {"name": "None", "step_g": "0"})
    assert "got 0 g" in refused.content.decode()
    stirrer = Equipment.objects.get()
    client.post(reverse("equipment_clean", args=[stirrer.pk]))
    client.post(reverse("equipment_change", args=[stirrer.pk]), {"name": "Dissolver 1", "blade_mm": "40"})
    stirrer.refresh_from_db()
    assert stirrer.last_cleaned is not None
    assert "Dissolver 1" in client.get(reverse("equipment")).content.decode()


@pytest.mark.parametrize("name", ["series_list", "series", "series_weighing"])
def test_as_many_queries_for_three_as_for_one(client, bench, name):
    first = make_series(bench, replicates=1)
    many = make_series(bench, replicates=3)
    client.force_login(bench)
    client.get(reverse("series_list"))
    counts = []
    for series in (first, many):
        with CaptureQueriesContext(connection) as seen:
            client.get(reverse(name, args=[] if name == "series_list" else [series.number]))
        counts.append(len(seen))
    assert counts[0] == counts[1]
