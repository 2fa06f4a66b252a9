from datetime import date
from decimal import Decimal

import pytest
from django.urls import reverse

from trials.models import Lot, Paper, RawMaterial
from trials.operations.equivalents import GroupEntry
from trials.operations.materials import add_lot, add_material, add_paper, change_material

pytestmark = pytest.mark.django_db

NCO = GroupEntry("isocyanate", "NCO content", Decimal("31.0"))


@pytest.fixture
def material(bench):
    return add_material(
        actor=bench,
        code="HD-210",
        name="Hardener",
        function="hardener",
        density_g_ml=Decimal("1.12"),
        hazards=["H317"],
        groups=[NCO],
    )


def _groups(*rows):
    data = {"groups-TOTAL_FORMS": str(len(rows)), "groups-INITIAL_FORMS": "0"}
    for number, (group, entered_as, entered, hydrogens) in enumerate(rows):
        data |= {
            f"groups-{number}-group": group,
            f"groups-{number}-entered_as": entered_as,
            f"groups-{number}-entered": entered,
            f"groups-{number}-hydrogens_per_nitrogen": hydrogens,
        }
    return data


def _typed(*rows, **more):
    return {"code": "EP-104", "name": "Resin", "function": "binder", **_groups(*rows), **more}


def _as_shown(response):
    """What the browser would send back: every field of the form and of its lines as they stand on the page."""
    form, lines = response.context["form"], response.context["formset"]
    rows = [field for row in lines for field in row]
    fields = [*form, *lines.management_form, *rows]
    values = {field.html_name: form_value for field in fields if (form_value := field.value()) not in (None, False)}
    return {name: "on" if value is True else _prepared(value) for name, value in values.items()}


def _prepared(value):
    return ", ".join(value) if isinstance(value, list) else str(value)


class TestNew:
    def test_is_kept_with_groups_decimal_comma_and_units(self, client, bench):
        client.force_login(bench)
        rows = [("epoxide", "equivalent weight", "187,5 g/eq", ""), ("", "equivalent weight", "", "")]
        response = client.post(
            reverse("material_new"), _typed(*rows, density_g_ml="1,160", voc_pct="0.5 %", hazards="H319, H315 H317")
        )
        assert response.url == "/materials/EP-104/"
        made = RawMaterial.objects.get(code="EP-104")
        assert (str(made.density_g_ml), str(made.voc_pct)) == ("1.160", "0.5")
        assert made.hazards == ["H315", "H317", "H319"]
        assert [(group.group, str(group.equivalent_g)) for group in made.groups.all()] == [("epoxide", "187.5")]
        assert "187.5" in client.get(response.url).content.decode()

    @pytest.mark.parametrize(
        ("typed", "field", "told"),
        [
            ({"hazards": "H315 H999"}, "hazards", "“H999”"),
            ({"density_g_ml": "-1,2"}, "density_g_ml", "-1.2"),
            ({"density_g_ml": "heavy"}, "density_g_ml", "“heavy”"),
            ({"density_g_ml": "1160 kg/m³"}, "density_g_ml", "“1160 kg/m³”"),
            ({"non_volatile_pct": "101"}, "non_volatile_pct", "101"),
            ({"code": "EP 104"}, "code", "“EP 104”"),
            ({"code": "hd-210"}, "code", "HD-210"),
        ],
    )
    def test_error_stands_at_the_field_with_the_value_and_the_input_is_kept(
        self, client, bench, material, typed, field, told
    ):
        client.force_login(bench)
        response = client.post(reverse("material_new"), _typed(remarks="typed with care", **typed))
        assert response.status_code == 200
        assert told in response.context["form"].errors[field][0]
        page = response.content.decode()
        assert 'role="alert"' in page
        assert "typed with care" in page
        assert RawMaterial.objects.count() == 1

    @pytest.mark.parametrize(
        ("row", "field", "told"),
        [
            (("amine hydrogen", "amine value", "600", ""), "hydrogens_per_nitrogen", "600"),
            (("epoxide", "NCO content", "31", ""), "entered_as", "epoxide"),
            (("epoxide", "equivalent weight", "", ""), "entered", "epoxide"),
            (("", "equivalent weight", "187", ""), "group", "187"),
            (("isocyanate", "NCO content", "31 g/eq", ""), "entered", "“31 g/eq”"),
            (("isocyanate", "NCO content", "140", ""), "entered", "140"),
        ],
    )
    def test_error_of_a_group_stands_in_its_row(self, client, bench, row, field, told):
        client.force_login(bench)
        response = client.post(reverse("material_new"), _typed(row))
        assert told in response.context["formset"].forms[0].errors[field][0]
        assert not RawMaterial.objects.exists()

    def test_group_typed_twice_names_the_rows(self, client, bench):
        client.force_login(bench)
        row = ("epoxide", "equivalent weight", "187", "")
        response = client.post(reverse("material_new"), _typed(row, row))
        assert response.context["formset"].non_form_errors() == [
            "A group stands once in a material: epoxide stands in rows 1 and 2."
        ]


class TestChange:
    def test_page_sent_back_as_it_is_changes_nothing(self, client, bench, material):
        from trials.queries.history import version

        client.force_login(bench)
        before = version(material, parts=("groups",))
        address = reverse("material_change", args=["HD-210"])
        response = client.post(address, _as_shown(client.get(address)))
        assert response.url == "/materials/HD-210/"
        assert version(material, parts=("groups",)) == before

    def test_emptied_line_takes_the_group_away(self, client, bench, material):
        client.force_login(bench)
        address = reverse("material_change", args=["HD-210"])
        typed = _as_shown(client.get(address)) | {"groups-0-group": "", "groups-0-entered": ""}
        assert client.post(address, typed).status_code == 302
        assert not material.groups.exists()

    def test_colleagues_change_is_told_once_and_then_written_over(self, client, bench, colleague, material):
        client.force_login(bench)
        address = reverse("material_change", args=["HD-210"])
        typed = _as_shown(client.get(address)) | {"name": "Mine"}
        change_material(actor=colleague, material=material, name="Theirs")
        told = client.post(address, typed)
        assert "changed this at" in told.content.decode()
        assert told.context["form"]["name"].value() == "Mine"
        material.refresh_from_db()
        assert material.name == "Theirs"
        assert client.post(address, typed | {"seen": told.context["form"]["seen"].value()}).status_code == 302
        material.refresh_from_db()
        assert material.name == "Mine"

    def test_unknown_code_is_not_there(self, client, bench):
        client.force_login(bench)
        assert client.get(reverse("material_change", args=["XX-1"])).status_code == 404
        assert client.get(reverse("material", args=["XX-1"])).status_code == 404


class TestLot:
    def test_certificate_typed_with_its_unit_becomes_an_equivalent(self, client, bench, material):
        client.force_login(bench)
        typed = {
            "number": "22-1",
            "certificate_as": "NCO content",
            "certificate_value": "30,8 %",
            "water_pct": "0,05",
            "received": "2026-01-05",
            "shaken": "unknown",
            "warmed": "true",
        }
        assert client.post(reverse("material_lot_new", args=["HD-210"]), typed).url == "/materials/HD-210/"
        lot = Lot.objects.get()
        assert (str(lot.equivalent_g), str(lot.water_pct), lot.shaken, lot.warmed) == ("136.364", "0.05", None, True)
        page = client.get("/materials/HD-210/").content.decode()
        assert "from NCO content 30.8 %, in place of 135.484" in page

    def test_refusal_of_the_record_stands_at_the_field(self, client, bench, material):
        client.force_login(bench)
        lot = add_lot(actor=bench, material=material, number="22-1")
        typed = {"number": "22-1", "certificate_as": "hydroxyl value", "certificate_value": "30"}
        response = client.post(reverse("material_lot_change", args=[lot.pk]), typed)
        assert "isocyanate" in response.context["form"].errors["certificate_as"][0]
        assert response.context["form"]["certificate_value"].value() == "30"

    def test_unknown_lot_is_not_there(self, client, bench):
        client.force_login(bench)
        assert client.get(reverse("material_lot_change", args=[4711])).status_code == 404


class TestPaper:
    def test_is_filed_and_taken_off(self, client, bench, material):
        client.force_login(bench)
        typed = {"subject": "emissions", "title": "Chamber test", "issued": "2026-01-01", "expires": "2027-01-01"}
        client.post(reverse("material_paper_new", args=["HD-210"]), typed)
        paper = Paper.objects.get()
        assert paper.expires == date(2027, 1, 1)
        address = reverse("material_paper_remove", args=[paper.pk])
        assert client.get(address).status_code == 405
        assert client.post(address).url == "/materials/HD-210/"
        assert not Paper.objects.exists()

    def test_dates_in_the_wrong_order_are_told_at_the_field(self, client, bench, material):
        client.force_login(bench)
        typed = {"subject": "emissions", "title": "Chamber test", "issued": "2026-02-01", "expires": "2026-01-01"}
        response = client.post(reverse("material_paper_new", args=["HD-210"]), typed)
        assert "2026-01-01" in response.context["form"].errors["expires"][0]


class TestReader:
    @pytest.fixture(autouse=True)
    def _signed_in(self, client, reader):
        client.force_login(reader)

    def test_sees_everything_and_no_way_to_write(self, client, bench, material):
        add_lot(actor=bench, material=material, number="22-1")
        add_paper(actor=bench, material=material, subject="emissions", title="Chamber test")
        for address in (reverse("materials"), reverse("material", args=["HD-210"])):
            page = client.get(address).content.decode()
            assert "HD-210" in page
            assert "/change/" not in page
            assert "/new/" not in page

    def test_is_kept_from_the_pages_that_write(self, client, bench, material):
        lot = add_lot(actor=bench, material=material, number="22-1")
        paper = add_paper(actor=bench, material=material, subject="emissions", title="Chamber test")
        for name, args in (
            ("material_new", []),
            ("material_change", ["HD-210"]),
            ("material_lot_new", ["HD-210"]),
            ("material_lot_change", [lot.pk]),
            ("material_paper_new", ["HD-210"]),
            ("material_paper_change", [paper.pk]),
            ("material_paper_remove", [paper.pk]),
        ):
            assert client.post(reverse(name, args=args)).status_code == 403


class TestList:
    def test_asks_by_words_and_function(self, client, bench, material):
        add_material(actor=bench, code="EP-104", name="Resin", function="binder")
        client.force_login(bench)
        shown = [
            [row.code for row in client.get(reverse("materials"), asked).context["found"].rows]
            for asked in ({}, {"q": "harden"}, {"function": "binder"}, {"function": "nonsense"})
        ]
        assert shown == [["EP-104", "HD-210"], ["HD-210"], ["EP-104"], ["EP-104", "HD-210"]]
