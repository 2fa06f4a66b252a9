from decimal import Decimal

import pytest
from django.urls import reverse

from trials.models import Candidate
from trials.operations.candidates import add_candidate
from trials.operations.materials import add_material

pytestmark = pytest.mark.django_db

TYPED = {
    "chemistry": "polysiloxane solution",
    "silicone": "on",
    "carrier": "solvent",
    "strength": "4",
    "macro_foam": "3",
    "air_release": "3",
    "tip_speed_m_s": "5,2 m/s",
    "minutes": "3",
    "from_pct": "0,1",
    "to_pct": "0.50",
    "stages": ["let-down", "post-addition"],
}


@pytest.fixture
def material(bench):
    return add_material(
        actor=bench, code="AR-01", name="Release", function="air-release candidate", price_per_kg=Decimal(24)
    )


@pytest.fixture
def candidate(bench, material):
    return add_candidate(
        actor=bench,
        material=material,
        chemistry="modified polysiloxane",
        carrier="none",
        silicone=True,
        strength=2,
        macro_foam=2,
        air_release=4,
        tip_speed_m_s=Decimal(2),
        from_pct=Decimal("0.1"),
        to_pct=Decimal("0.5"),
        stages=["let-down"],
    )


def test_material_is_offered_as_an_additive(client, bench, material):
    client.force_login(bench)
    response = client.post(reverse("candidate_new", args=["AR-01"]), TYPED)
    assert response.url == "/additives/AR-01/"
    made = Candidate.objects.get()
    assert (str(made.tip_speed_m_s), str(made.to_pct), made.silicone) == ("5.2", "0.50", True)
    assert made.stages == ["let-down", "post-addition"]
    page = " ".join(client.get(response.url).content.decode().split())
    assert "in 100 kg of mix 2.40 to 12.00 EUR" in page
    assert "The carrier is solvent" in page


@pytest.mark.parametrize(
    ("typed", "field", "told"),
    [
        ({"strength": "6"}, "strength", "6"),
        ({"to_pct": "0,05"}, "to_pct", "0.05"),
        ({"silicone": ""}, "silicone", "polysiloxane solution"),
        ({"carrier": "none", "carrier_pct": "50"}, "carrier", "50"),
    ],
)
def test_error_stands_at_the_field_with_the_value(client, bench, material, typed, field, told):
    client.force_login(bench)
    response = client.post(reverse("candidate_new", args=["AR-01"]), {**TYPED, "cautions": "keep warm", **typed})
    assert told in response.context["form"].errors[field][0]
    assert "keep warm" in response.content.decode()
    assert not Candidate.objects.exists()


def test_change_writes_what_was_changed(client, bench, candidate):
    client.force_login(bench)
    address = reverse("candidate_change", args=["AR-01"])
    assert client.get(address).context["form"]["stages"].value() == ["let-down"]
    typed = {**TYPED, "chemistry": "modified polysiloxane", "carrier": "none"}
    assert client.post(address, typed).url == "/additives/AR-01/"
    candidate.refresh_from_db()
    assert candidate.strength == 4


def test_list_shows_the_map_with_a_way_to_each(client, bench, candidate):
    client.force_login(bench)
    page = client.get(reverse("candidates")).content.decode()
    assert "<svg" in page
    assert "AR-01: strength 2, 2 m/s, with silicone" in page
    assert page.count('href="/additives/AR-01/"') == 2


@pytest.mark.parametrize(
    ("asked", "codes"), [({}, ["AR-01"]), ({"silicone": "no"}, []), ({"silicone": "yes", "sort": "x"}, ["AR-01"])]
)
def test_list_is_asked_by_silicone(client, bench, candidate, asked, codes):
    client.force_login(bench)
    found = client.get(reverse("candidates"), asked).context["found"]
    assert [row.code for row in found.rows] == codes


def test_reader_sees_and_does_not_write(client, reader, candidate):
    client.force_login(reader)
    page = client.get(reverse("candidate", args=["AR-01"])).content.decode()
    assert "/change/" not in page
    assert "/new/" not in page
    for name in ("candidate_new", "candidate_change"):
        assert client.post(reverse(name, args=["AR-01"]), TYPED).status_code == 403


@pytest.mark.parametrize("name", ["candidate", "candidate_change", "candidate_new"])
def test_unknown_code_is_not_there(client, bench, name):
    client.force_login(bench)
    assert client.get(reverse(name, args=["XX-1"])).status_code == 404


def test_material_that_is_no_additive_is_not_one(client, bench, material):
    client.force_login(bench)
    assert client.get(reverse("candidate", args=["AR-01"])).status_code == 404
