import re

import pytest
from django.urls import reverse

from tests.judged_series import ladder_series
from tests.reports.paper import text_of
from trials.models import Enquiry

pytestmark = pytest.mark.django_db
ADDRESSES = [
    ("series_report", 417),
    ("series_report_pdf", 417),
    ("trial_report", "417-9"),
    ("trial_report_pdf", "417-9"),
]
ALERT = "<script>alert(1)</script>"


@pytest.fixture
def series(client, bench):
    client.force_login(bench)
    enquiry = Enquiry.objects.create(
        number=31, subject="Foam", customer="Halden Quay Floors", withheld=True, field="floor", received="2026-02-01",
        owner=bench,
    )  # fmt: skip
    return ladder_series(bench, enquiry=enquiry, question=ALERT)


def test_page_shows_the_figures_and_what_people_typed_as_text(client, series):
    page = client.get(reverse("series_report", args=[417])).content.decode()
    row = re.search(r'<th scope="row">AR-01 0.3\xa0%</th>.*?</tr>', page[page.index("Compared") :], re.DOTALL)[0]
    cells = [re.sub(r"<[^>]+>", "", cell) for cell in re.findall(r"<td.*?</td>", row)]
    assert cells[:4] == ["4.10; 4.60; 3.90; 4.40", "4", "4.25", "\u22125.85"]
    assert ALERT not in page
    assert "&lt;script&gt;alert(1)" in page
    assert " style=" not in page
    assert 'data-record="Series 417 · not signed"' in page


def test_page_of_a_cup_shows_its_group_and_its_film(client, series):
    page = client.get(reverse("trial_report", args=["417-9"])).content.decode()
    assert "Cup 417-9 · not signed" in page
    assert 'class="swatch"' in page
    assert "against the blank" in page


def test_outside_readers_get_no_names_on_page_and_paper(client, series):
    inside = client.get(reverse("series_report", args=[417])).content.decode()
    article = re.compile("<article>.*</article>", re.DOTALL)
    assert "Halden Quay Floors" in article.search(inside)[0]
    assert "Bench One" in article.search(inside)[0]
    outside = client.get(reverse("series_report", args=[417]), {"for": "outside"}).content.decode()
    told = article.search(outside)[0]
    assert "Halden" not in told
    assert "Bench One" not in told
    assert "names withheld" in told
    assert "Read it through before it leaves" in outside
    links = re.findall(r'href="([^"]*report.pdf[^"]*)"', outside)
    assert links == [f"/series/417/report.pdf?paper={paper}&amp;for=outside" for paper in ("a4", "letter")]
    for link in links:
        assert "Halden" not in text_of(client.get(link.replace("&amp;", "&")).content)


def test_pdf_is_named_after_the_record_alone(client, series):
    answer = client.get(reverse("series_report_pdf", args=[417]))
    assert answer["Content-Type"] == "application/pdf"
    assert answer["Content-Disposition"] == 'attachment; filename="series-417-report.pdf"'
    assert answer.content.startswith(b"%PDF-")
    outside = client.get(reverse("trial_report_pdf", args=["417-9"]), {"for": "outside", "paper": "letter"})
    assert outside["Content-Disposition"] == 'attachment; filename="cup-417-9-report-outside.pdf"'


@pytest.mark.parametrize(
    ("address", "arg", "asked"),
    [(name, arg, {"for": "Outside"}) for name, arg in ADDRESSES]
    + [(name, arg, {"paper": "a3"}) for name, arg in ADDRESSES if name.endswith("pdf")],
)
def test_a_slip_in_the_address_gives_nothing_away(client, series, address, arg, asked):
    answer = client.get(reverse(address, args=[arg]), asked)
    assert answer.status_code == 400
    assert b"Halden" not in answer.content


@pytest.mark.parametrize(("address", "arg"), ADDRESSES)
def test_a_restricted_series_is_not_there_for_others(client, series, colleague, address, arg):
    series.restricted = True
    series.save()
    client.force_login(colleague)
    assert client.get(reverse(address, args=[arg])).status_code == 404


@pytest.mark.parametrize(("address", "arg"), ADDRESSES)
def test_readers_may_take_a_report_along(client, series, reader, address, arg):
    client.force_login(reader)
    assert client.get(reverse(address, args=[arg])).status_code == 200


@pytest.mark.parametrize("place", ["series", "trial"])
def test_the_record_links_to_its_report(client, series, place):
    arg = 417 if place == "series" else "417-9"
    page = client.get(reverse(place, args=[arg])).content.decode()
    assert f'href="{reverse(f"{place}_report", args=[arg])}"' in page
