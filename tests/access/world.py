"""A notebook with one of everything, all of it restricted to its owner and one named reader."""

import pytest
from django.contrib.auth.models import AnonymousUser

from tests.cup_making import make_candidate, make_cups
from tests.making import make_epoxy_base, make_material
from tests.people import make_person
from trials.models import BaseShare, Lot, Paper, Role, SeriesShare

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
def world(people):
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
    return {"material": material, "lot": lot, "paper": paper, "revision": revision, "people": people}
