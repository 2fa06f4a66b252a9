"""Every list takes the same number of queries for one row and for three."""

from datetime import date

import pytest
from django.urls import reverse

from tests.cup_making import dose, make_candidate, make_cups, make_panel, rated
from tests.making import NOW, make_epoxy_base, make_material
from tests.people import make_person
from trials.models import Enquiry, Lot, Paper, Role, Working

pytestmark = pytest.mark.django_db


def _materials(actor, rows):
    for number in range(rows):
        material = make_material(f"EP-{number}", group="epoxide", equivalent="190")
        Lot.objects.create(material=material, number="1", expires=date(2020, 1, 1))
        Paper.objects.create(material=material, subject="other", title="Statement", expires=date(2020, 1, 1))


def _candidates(actor, rows):
    for number in range(rows):
        Paper.objects.create(material=make_candidate(f"AR-{number}").material, subject="other", title="Statement")


def _bases(actor, rows):
    for number in range(rows):
        make_epoxy_base(actor, f"EP-F{number}")


def _people(actor, rows):
    for number in range(rows):
        make_person(f"person{number}", Role.BENCH)


def _enquiries(actor, rows):
    for number in range(1, rows + 1):
        Enquiry.objects.create(number=number, subject="Foam", field="floor", received=NOW.date(), owner=actor)


def _cup(cup, actor, candidate):
    dose(cup, candidate)
    Working.objects.create(trial=cup, position=1, kind="disperse", rpm=2000, blade_mm=50, minutes=5)
    rated(make_panel(cup), actor, "bubbles", 1)


def _series(actor, rows):
    for number in range(rows):
        candidate = make_candidate(f"AR-{number}")
        for cup in make_cups(actor, number=410 + number, cups=2, parts=("blank", "treated"))[1:]:
            _cup(cup, actor, candidate)


def _cups(actor, rows):
    candidate = make_candidate("AR-01")
    for cup in make_cups(actor, cups=1 + rows, parts=("blank", *["treated"] * rows))[1:]:
        _cup(cup, actor, candidate)


# Address, what fills it, and the one number of queries; two of them are session and person.
LISTS = [
    ("today", _materials, 4),
    ("materials", _materials, 5),
    ("candidates", _candidates, 4),
    ("bases", _bases, 3),
    ("people", _people, 3),
    ("enquiries", _enquiries, 4),
    ("series_list", _series, 3),
    ("find", _series, 11),
    (("series", 417), _cups, 62),
    (("series_weighing", 417), _cups, 21),
]


@pytest.mark.parametrize("rows", [1, 3])
@pytest.mark.parametrize(("name", "fill", "queries"), LISTS, ids=[str(row[0]) for row in LISTS])
def test_list_takes_as_many_queries_for_three_rows_as_for_one(
    name, fill, queries, rows, client, administrator, django_assert_num_queries
):
    fill(administrator, rows)
    client.force_login(administrator)
    client.get(reverse("own_password"))  # the first request of a session writes when it was seen
    address = reverse(name) if isinstance(name, str) else reverse(name[0], args=name[1:])
    with django_assert_num_queries(queries):
        assert client.get(address).status_code == 200
