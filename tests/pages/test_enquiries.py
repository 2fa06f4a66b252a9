from decimal import Decimal

import pytest
from django.urls import reverse

from tests.making import NOW
from tests.series_making import make_candidate, make_series
from trials.models import Enquiry
from trials.operations.enquiries import add_enquiry

pytestmark = pytest.mark.django_db


def _typed(limits=(), **more):
    typed = {"subject": "Pinholes at 2 mm", "customer": "Harbour Floors", "field": "floor", "received": "2026-03-02"}
    rows = [*limits, {"force": "must"}, {"force": "must"}]
    typed |= {"limits-TOTAL_FORMS": len(rows), "limits-INITIAL_FORMS": 0}
    typed |= {f"limits-{n}-{name}": value for n, row in enumerate(rows) for name, value in row.items()}
    return typed | more


def test_enquiry_with_limits_date_and_incumbent(client, bench):
    incumbent = make_candidate("AR-09")
    client.force_login(bench)
    limits = [
        {"criterion": "bubbles", "limit": "1", "force": "must"},
        {"criterion": "gloss", "limit": "80,0", "force": "should"},
    ]
    more = {
        "incumbent": incumbent.pk,
        "incumbent_pct": "0,40 %",
        "film_um": "2000",
        "due": "2026-03-20",
        "withheld": "on",
    }
    response = client.post(reverse("enquiry_new"), _typed(limits, **more))
    assert response.status_code == 302, response.context["form"].errors
    enquiry = Enquiry.objects.get()
    assert str(enquiry.incumbent_pct) == "0.40"
    assert sorted(str(limit.limit) for limit in enquiry.limits.all()) == ["1", "80.0"]
    page = client.get(response.url).content.decode()
    for said in ("AR-09", "Harbour Floors", "withheld outside", "at most", "at least", "20 Mar 2026"):
        assert said in page


@pytest.mark.parametrize(
    ("limits", "more", "said"),
    [
        ([{"criterion": "bubbles", "limit": "7", "force": "must"}], {}, "from 0 to 5; got 7"),
        ([{"criterion": "bubbles", "limit": "", "force": "must"}], {}, "Say where Bubbles has to stand"),
        ([{"criterion": "", "limit": "3", "force": "must"}], {}, "Say what 3 is the limit of"),
        ([{"criterion": "bubbles", "limit": "few", "force": "must"}], {}, "“few” is not a number"),
        ([{"criterion": "bubbles", "limit": "1", "force": "must"}] * 2, {}, "Bubbles: one limit for each criterion"),
        ([], {"due": "2026-03-01"}, "Due 2026-03-01 is before it was received"),
        ([], {"incumbent_pct": "0.4"}, "what is used today at 0.4 %"),
        ([], {"film_um": "-2"}, "got -2"),
    ],
)
def test_what_cannot_be_is_told_and_the_rest_is_kept(client, bench, limits, more, said):
    client.force_login(bench)
    page = client.post(reverse("enquiry_new"), _typed(limits, **more)).content.decode()
    assert said in page
    assert "Harbour Floors" in page
    assert not Enquiry.objects.exists()


def test_an_emptied_row_is_no_limit(client, bench):
    client.force_login(bench)
    client.post(reverse("enquiry_new"), _typed([{"criterion": "bubbles", "limit": "1", "force": "must"}]))
    enquiry = Enquiry.objects.get()
    url = reverse("enquiry_change", args=[enquiry.number])
    form = client.get(url).context["form"]
    typed = _typed([{"criterion": "", "limit": "", "force": "must"}], seen=form["seen"].value(), subject="Other")
    assert client.post(url, typed | {"limits-INITIAL_FORMS": 1}).status_code == 302
    enquiry.refresh_from_db()
    assert (enquiry.subject, enquiry.limits.count()) == ("Other", 0)


def test_overdue_stands_first_and_answered_only_when_asked(client, bench):
    client.force_login(bench)
    for subject, due in (("Later", None), ("Past", "2026-03-05")):
        client.post(reverse("enquiry_new"), _typed(subject=subject, **({"due": due} if due else {})))
    rows = client.get(reverse("enquiries")).context["found"].rows
    assert [(row.enquiry.subject, row.standing) for row in rows] == [("Past", "overdue"), ("Later", "open")]
    client.post(reverse("enquiry_close", args=[rows[0].enquiry.number]))
    assert [row.enquiry.subject for row in client.get(reverse("enquiries")).context["found"].rows] == ["Later"]
    assert len(client.get(reverse("enquiries"), {"answered": "on"}).context["found"].rows) == 2


def test_restricted_enquiry_is_not_there_for_others(client, bench, colleague):
    enquiry = add_enquiry(actor=bench, now=NOW, subject="Secret", field="floor", restricted=True)
    client.force_login(colleague)
    for name in ("enquiry", "enquiry_change", "enquiry_share"):
        assert client.get(reverse(name, args=[enquiry.number])).status_code == 404
    assert "Secret" not in client.get(reverse("enquiries")).content.decode()
    assert "Secret" not in client.get(reverse("series_new"), {"enquiry": enquiry.number}).content.decode()


def test_enquiry_names_only_series_that_may_be_seen(client, bench, colleague):
    enquiry = add_enquiry(
        actor=bench, now=NOW, subject="Open", field="floor", incumbent=make_candidate("AR-09"),
        incumbent_pct=Decimal("0.3"),
    )  # fmt: skip
    series = make_series(bench, enquiry=enquiry, title="For two eyes", restricted=True)
    url = reverse("enquiry", args=[enquiry.number])
    client.force_login(bench)
    assert "For two eyes" in client.get(url).content.decode()
    client.force_login(colleague)
    assert "For two eyes" not in client.get(url).content.decode()
    assert f'href="/series/{series.number}/"' not in client.get(reverse("enquiries")).content.decode()


def test_reader_sees_no_way_to_write(client, bench, reader):
    enquiry = add_enquiry(actor=bench, now=NOW, subject="Open", field="floor")
    client.force_login(reader)
    page = client.get(reverse("enquiry", args=[enquiry.number])).content.decode()
    for name in ("enquiry_change", "enquiry_close"):
        assert reverse(name, args=[enquiry.number]) not in page
    assert client.get(reverse("enquiry_new")).status_code == 403
