"""Every list takes the same number of queries for one row and for three."""

from datetime import date

import pytest
from django.urls import reverse

from tests.cup_making import make_candidate
from tests.making import make_epoxy_base, make_material
from tests.people import make_person
from trials.models import Lot, Paper, Role

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


# Address, what fills it, and the one number of queries; two of them are session and person.
LISTS = [
    ("today", _materials, 4),
    ("materials", _materials, 5),
    ("candidates", _candidates, 4),
    ("bases", _bases, 3),
    ("people", _people, 3),
]


@pytest.mark.parametrize("rows", [1, 3])
@pytest.mark.parametrize(("name", "fill", "queries"), LISTS, ids=[row[0] for row in LISTS])
def test_list_takes_as_many_queries_for_three_rows_as_for_one(
    name, fill, queries, rows, client, administrator, django_assert_num_queries
):
    fill(administrator, rows)
    client.force_login(administrator)
    client.get(reverse("own_password"))  # the first request of a session writes when it was seen
    with django_assert_num_queries(queries):
        assert client.get(reverse(name)).status_code == 200
