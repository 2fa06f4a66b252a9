from decimal import Decimal
from io import BytesIO

import pytest
from django.core.files.uploadedfile import SimpleUploadedFile
from django.urls import reverse
from PIL import Image

from tests.cup_making import make_cups, make_panel, rated, signed
from tests.making import NOW
from tests.people import PASSWORD
from trials.models import Criterion, Photo, Rating, Signature
from trials.operations.photos import PhotoEntry, add_photos

pytestmark = pytest.mark.django_db


def at(name, *args):
    return reverse(name, args=args)


def cell(panel, key):
    return f"v-{panel.pk}-{Criterion.objects.get(key=key, current=True).pk}"


def errors(response) -> str:
    page = response.content.decode()
    return page[page.index("error-summary") :]


def picture(size=(60, 40)) -> bytes:
    out = BytesIO()
    Image.new("RGB", size, "grey").save(out, "JPEG")
    return out.getvalue()


@pytest.fixture
def page(client, bench):
    client.force_login(bench)
    return client


@pytest.fixture(autouse=True)
def files(settings, tmp_path):
    storage = {"BACKEND": "django.core.files.storage.FileSystemStorage", "OPTIONS": {"location": tmp_path}}
    settings.STORAGES = {**settings.STORAGES, "default": storage}
    return tmp_path


def test_whole_series_is_rated_in_one_go_by_codes_alone(page, bench):
    cups = make_cups(bench, cups=2)
    late, early = make_panel(cups[0], "W7F"), make_panel(cups[1], "A3K")
    shown = page.get(at("series_rate", 417)).content.decode()
    assert "417-1" not in shown
    assert "417-2" not in shown
    assert shown.index("A3K") < shown.index("W7F")
    sent = {
        "age_h": "24",
        "blind": "on",
        cell(late, "bubbles"): "2,5",
        cell(late, "craters"): "0",
        cell(early, "bubbles"): "4",
        cell(early, "crawling"): "not read",
    }
    page.post(at("series_rate", 417), sent)
    found = Rating.objects.order_by("panel__code", "criterion__key")
    assert list(found.values_list("panel__code", "criterion__key", "value", "word", "person", "blind")) == [
        ("A3K", "bubbles", 4, "", bench.pk, True),
        ("A3K", "crawling", None, "not read", bench.pk, True),
        ("W7F", "bubbles", Decimal("2.5"), "", bench.pk, True),
        ("W7F", "craters", 0, "", bench.pk, True),
    ]


def test_table_shows_own_ratings_of_that_age_and_nobody_elses(page, bench, colleague):
    (cup,) = make_cups(bench)
    panel = make_panel(cup, "K7F")
    rated(panel, bench, "bubbles", 2)
    rated(panel, bench, "haze", 3, age_h=168)
    rated(panel, colleague, "craters", 5)
    form = page.get(at("series_rate", 417) + "?age=24").context["form"]
    assert form[cell(panel, "bubbles")].value() == "2"
    assert not form[cell(panel, "haze")].value()
    assert not form[cell(panel, "craters")].value()


@pytest.mark.parametrize(
    ("typed", "message"),
    [
        ("6", "K7F, Bubbles: Bubbles must be from 0 to 5; got 6."),
        ("2.3", "graded in whole or half steps from 0 to 5; got 2.3."),
        ("5 of 5", "not “5 of 5”"),
    ],
)
def test_off_scale_is_told_at_its_cell_and_nothing_is_lost(page, bench, typed, message):
    panel = make_panel(make_cups(bench)[0], "K7F")
    sent = {"age_h": "24", cell(panel, "bubbles"): typed, cell(panel, "haze"): "1"}
    answer = page.post(at("panel_rate", "K7F"), sent)
    assert message in errors(answer)
    assert f'href="#id_{cell(panel, "bubbles")}"' in errors(answer)
    assert f'value="{typed}"' in answer.content.decode()
    assert not Rating.objects.exists()


def test_cup_whose_code_is_on_the_page_is_not_read_blind(page, bench):
    panel = make_panel(make_cups(bench)[0], "K7F")
    page.post(at("trial_rate", "417-1"), {"age_h": "24", "blind": "on", cell(panel, "bubbles"): "1"})
    assert not Rating.objects.get().blind


def test_instrument_reads_beside_the_eyes(page, bench):
    panel = make_panel(make_cups(bench)[0], "K7F")
    for instrument, value in (("", "12"), ("camera 2", "15")):
        sent = {"age_h": "24", "instrument": instrument, cell(panel, "bubble-count"): value}
        page.post(at("panel_rate", "K7F"), sent)
    assert dict(Rating.objects.values_list("instrument", "value")) == {"": 12, "camera 2": 15}


def test_what_others_read_stays_covered_until_one_has_read(page, bench, colleague):
    panel = make_panel(make_cups(bench)[0], "K7F")
    rated(panel, colleague, "bubbles", 4)
    shown = page.get(at("panel", "k7f")).content.decode()
    assert '<details><summary><h2 id="others">' in shown
    assert "417-1" not in shown[: shown.index("Whose panel it is")]
    rated(panel, bench, "bubbles", 2)
    assert '<details open><summary><h2 id="others">' in page.get(at("panel", "K7F")).content.decode()


def test_own_rating_is_taken_back_and_anothers_is_not_found(page, bench, colleague):
    panel = make_panel(make_cups(bench)[0], "K7F")
    mine, theirs = rated(panel, bench, "bubbles", 4), rated(panel, colleague, "bubbles", 2)
    page.post(at("panel_rating_back", mine.pk))
    assert page.post(at("panel_rating_back", theirs.pk)).status_code == 404
    assert list(Rating.objects.all()) == [theirs]


def test_later_reading_of_a_signed_series_is_an_amendment(page, bench):
    (cup,) = make_cups(bench)
    panel = make_panel(cup, "K7F")
    signed(cup.series, bench)
    sent = {"age_h": "168", "blind": "on", cell(panel, "bubbles"): "1"}
    assert "Why this comes after signing" in errors(page.post(at("series_rate", 417), sent))
    page.post(at("series_rate", 417), {**sent, "amend_reason": "read at 7 d", "amend_password": PASSWORD})
    assert Rating.objects.get().age_h == 168
    assert Signature.objects.get(meaning="amended").reason == "read at 7 d"


def test_panel_is_put_right(page, bench):
    panel = make_panel(make_cups(bench)[0], "K7F")
    layers = {"layers-TOTAL_FORMS": 1, "layers-INITIAL_FORMS": 1, "layers-0-coat": "body coat",
              "layers-0-wet_um": "1800", "layers-0-method": "drawdown"}  # fmt: skip
    page.post(at("panel_change", "K7F"), {"substrate": "steel", "mass_g": "62,5", **layers})
    panel.refresh_from_db()
    assert (panel.substrate, panel.mass_g, panel.layers.get().wet_um) == ("steel", Decimal("62.5"), 1800)


def test_photographs_are_sent_in_and_served_as_pictures_alone(page, bench):
    make_panel(make_cups(bench)[0], "K7F")
    files = [SimpleUploadedFile(name, picture(), "image/jpeg") for name in ("a.jpg", "b.jpg")]
    answer = page.post(at("panel_photos", "K7F"), {"photos": files, "shows_mm": "30", "age_h": "24"})
    assert answer["Location"] == at("panel", "K7F")
    first, second = Photo.objects.order_by("pk")
    assert (first.mm_per_px, first.original_name, second.original_name) == (Decimal("0.5"), "a.jpg", "b.jpg")
    for name in ("photo", "photo_small"):
        served = page.get(at(name, first.pk))
        assert Image.open(BytesIO(served.content)).format == "JPEG"
        assert served["Content-Type"] == "image/jpeg"
        assert served["Content-Disposition"] == f'inline; filename="K7F-{first.pk}.jpg"'
        assert served["Content-Security-Policy"] == "default-src 'none'; sandbox"
        assert served["X-Content-Type-Options"] == "nosniff"
        assert served["Cache-Control"] == "no-store"
    shown = page.get(at("trial", "417-1")).content.decode()
    assert at("photo_small", second.pk) in shown


@pytest.mark.parametrize(
    ("name", "content", "message"),
    [
        ("film.svg", b"<svg xmlns='http://www.w3.org/2000/svg'/>", "“film.svg” is not a JPEG, PNG or WebP picture."),
        ("half.jpg", picture((900, 900))[:2000], "“half.jpg” is broken"),
        ("large.jpg", bytes(25 * 1024 * 1024 + 1), "“large.jpg” has 25.0 MB; up to 25 MB are taken."),
    ],
)
def test_refused_photograph_is_named_and_none_is_kept(page, bench, name, content, message):
    make_panel(make_cups(bench)[0], "K7F")
    files = [SimpleUploadedFile("good.jpg", picture()), SimpleUploadedFile(name, content)]
    answer = page.post(at("panel_photos", "K7F"), {"photos": files, "remark": "with a ruler"})
    assert message in errors(answer)
    assert "with a ruler" in answer.content.decode()
    assert not Photo.objects.exists()


def test_original_has_no_address_and_a_stranger_gets_no_picture(client, bench, colleague, files):
    panel = make_panel(make_cups(bench, restricted=True)[0])
    (photo,) = add_photos(actor=bench, now=NOW, entries=[PhotoEntry(panel, picture(), "a.jpg")])
    client.force_login(colleague)
    assert client.get(at("photo", photo.pk)).status_code == 404
    assert client.get(at("photo_small", photo.pk)).status_code == 404
    client.force_login(bench)
    assert client.get(f"/{photo.original}").status_code == 404
    assert client.get(f"/files/{photo.original}").status_code == 404
    (files / photo.picture).unlink()
    assert client.get(at("photo", photo.pk)).status_code == 404


@pytest.mark.parametrize("panels", [1, 4])
def test_as_many_queries_for_many_panels_as_for_one(page, bench, django_assert_num_queries, panels):
    for cup in make_cups(bench, cups=panels):
        rated(make_panel(cup), bench, "bubbles", 1)
    with django_assert_num_queries(13):
        page.get(at("series_rate", 417) + "?age=24")


def test_scale_of_a_photograph_is_put_right(page, bench):
    panel = make_panel(make_cups(bench)[0], "K7F")
    (photo,) = add_photos(actor=bench, now=NOW, entries=[PhotoEntry(panel, picture(), "a.jpg")])
    assert "must be above 0" in errors(page.post(at("photo_change", photo.pk), {"mm_per_px": "0"}))
    page.post(at("photo_change", photo.pk), {"mm_per_px": "0,05", "age_h": "24"})
    photo.refresh_from_db()
    assert (photo.mm_per_px, photo.age_h) == (Decimal("0.05"), 24)
