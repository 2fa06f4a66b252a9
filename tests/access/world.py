"""A notebook with one of everything, all of it restricted to its owner and one named reader."""

from decimal import Decimal
from io import BytesIO

import pytest
from django.contrib.auth.models import AnonymousUser
from PIL import Image

from tests.cup_making import dose, make_candidate, make_cups, make_panel, rated
from tests.making import NOW, make_epoxy_base, make_material
from tests.people import make_person
from trials.models import (
    Balance,
    BaseShare,
    Enquiry,
    EnquiryShare,
    Equipment,
    Lot,
    Paper,
    Retain,
    Role,
    SeriesShare,
    StoredTin,
)
from trials.operations.photos import PhotoEntry, add_photos

KINDS = ("anonymous", "owner", "named", "stranger", "supervisor", "reader", "administrator")


@pytest.fixture
def people(db):
    return {
        "anonymous": AnonymousUser(),
        "owner": make_person("owner", Role.BENCH),
        "named": make_person("named", Role.READER),
        "stranger": make_person("stranger", Role.BENCH),
        "supervisor": make_person("supervisor", Role.SUPERVISOR),
        "reader": make_person("reader", Role.READER),
        "administrator": make_person("administrator", Role.ADMINISTRATOR),
    }


@pytest.fixture
def world(people, settings, tmp_path):
    """Everything an address can name, by its argument."""
    revision = make_epoxy_base(people["owner"], "EP-F1", restricted=True)
    BaseShare.objects.create(base=revision.base, person=people["named"])
    material = make_material("EP-104")
    lot = Lot.objects.create(material=material, number="2201")
    paper = Paper.objects.create(material=material, subject="other", title="Statement")
    make_candidate("AR-01")
    make_material("AR-99", "air-release candidate")
    cup = make_cups(people["owner"], revision=revision, restricted=True)[0]
    SeriesShare.objects.create(series=cup.series, person=people["named"])
    enquiry = Enquiry.objects.create(
        number=31, subject="Foam at 2 mm", field="floor", received=NOW.date(), owner=people["owner"], restricted=True
    )
    EnquiryShare.objects.create(enquiry=enquiry, person=people["named"])
    return {
        "equipment": Equipment.objects.create(name="Dissolver 1"),
        "balance": Balance.objects.create(name="Balance 1", step_g=Decimal("0.01")),
        "material": material,
        "lot": lot,
        "paper": paper,
        "revision": revision,
        "people": people,
        **_of_cup(cup, people["owner"], settings, tmp_path),
    }


def _of_cup(cup, owner, settings, files) -> dict:
    """A dosage, a panel read by its owner, a photograph in a folder of the test's own, a stored tin, a retain."""
    storage = {"BACKEND": "django.core.files.storage.FileSystemStorage", "OPTIONS": {"location": files}}
    settings.STORAGES = {**settings.STORAGES, "default": storage}
    content = BytesIO()
    Image.new("RGB", (8, 8)).save(content, "PNG")
    panel = make_panel(cup, "K7F")
    (photo,) = add_photos(actor=owner, now=NOW, entries=[PhotoEntry(panel, content.getvalue(), "film.png")])
    dose(cup, make_candidate("AR-02"))
    return {
        "rating": rated(panel, owner, "bubbles", 1),
        "photo": photo,
        "tin": StoredTin.objects.create(trial=cup, temperature_c=50, days=28, stored_at=NOW),
        "retain": Retain.objects.create(trial=cup, place="box 12"),
    }
