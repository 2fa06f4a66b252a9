from datetime import date
from decimal import Decimal

import pytest
from django.core.exceptions import PermissionDenied

from trials.models import Lot, Paper, RawMaterial, ReactiveGroup
from trials.operations.acting import Refused
from trials.operations.equivalents import GroupEntry
from trials.operations.materials import (
    add_lot,
    add_material,
    add_paper,
    change_lot,
    change_material,
    change_paper,
    remove_paper,
)
from trials.queries.history import what_changed

pytestmark = pytest.mark.django_db

EPOXIDE = GroupEntry("epoxide", "equivalent weight", Decimal("187.0"))
NCO = GroupEntry("isocyanate", "NCO content", Decimal("31.0"))
AMINE = GroupEntry("amine hydrogen", "amine value", Decimal("658.9"), Decimal(2))


def _resin(actor, groups=(EPOXIDE,), **more):
    return add_material(
        actor=actor, groups=groups, **{"code": "EP-104", "name": "Resin", "function": "binder", **more}
    )


def _groups(material):
    return list(
        ReactiveGroup.objects.filter(material=material)
        .order_by("pk")
        .values_list("group", "entered_as", "entered", "equivalent_g")
    )


class TestMaterial:
    def test_is_kept_with_its_groups_as_entered_and_as_reckoned(self, bench):
        material = _resin(bench, groups=[EPOXIDE, NCO], density_g_ml=Decimal("1.160"), hazards=["H319", "H315"])
        material.refresh_from_db()
        assert str(material.density_g_ml) == "1.160"
        assert material.hazards == ["H315", "H319"]
        assert _groups(material) == [
            ("epoxide", "equivalent weight", Decimal("187.0"), Decimal("187.0")),
            ("isocyanate", "NCO content", Decimal("31.0"), Decimal("135.484")),
        ]

    def test_combined_hazard_statements_are_kept_apart(self, bench):
        assert _resin(bench, hazards=["H302+H312", "H302"]).hazards == ["H302", "H312"]

    def test_history_says_who(self, bench, colleague):
        material = _resin(bench)
        change_material(actor=colleague, material=material, price_per_kg=Decimal("4.20"))
        change, added = what_changed(material)
        assert (change.who, change.changes) == ("Bench Two", (("Price", None, Decimal("4.20")),))
        assert added.who == "Bench One"
        assert [row.who for row in what_changed(material, parts=("groups",))] == [
            "Bench One",
            "Bench Two",
            "Bench One",
        ]

    def test_change_writes_the_given_fields_only(self, bench):
        material = _resin(bench)
        RawMaterial.objects.update(name="renamed meanwhile")
        change_material(actor=bench, material=material, withdrawn=True)
        material.refresh_from_db()
        assert (material.name, material.withdrawn) == ("renamed meanwhile", True)

    def test_groups_are_left_when_none_are_given_and_replaced_when_some_are(self, bench):
        material = _resin(bench, groups=[EPOXIDE, NCO])
        change_material(actor=bench, material=material, name="Resin, filled")
        assert [row[0] for row in _groups(material)] == ["epoxide", "isocyanate"]
        lighter = GroupEntry("epoxide", "equivalent weight", Decimal("184.0"))
        change_material(actor=bench, material=material, groups=[lighter])
        assert _groups(material) == [("epoxide", "equivalent weight", Decimal("184.0"), Decimal("184.0"))]
        whats = [change.what for change in what_changed(material, parts=("groups",))]
        assert whats[:2] == ["Reactive group epoxide changed", "Reactive group isocyanate removed"]

    @pytest.mark.parametrize(
        ("values", "field", "told"),
        [
            ({"hazards": ["H315", "H999"]}, "hazards", "H999"),
            ({"code": "EP 104"}, "code", "EP 104"),
            ({"code": "new"}, "code", "new"),
            ({"code": ""}, "code", ""),
            ({"density_g_ml": Decimal("-1.16")}, "density_g_ml", "-1.16"),
            ({"non_volatile_pct": Decimal(101)}, "non_volatile_pct", "101"),
            ({"function": "glue"}, "function", "glue"),
            ({"groups": [EPOXIDE, EPOXIDE]}, "group", "epoxide"),
            ({"groups": [GroupEntry("glue", "equivalent weight", Decimal(1))]}, "entered_as", "glue"),
        ],
    )
    def test_is_refused_at_the_field_and_nothing_is_kept(self, bench, values, field, told):
        with pytest.raises(Refused) as refused:
            _resin(bench, **values)
        assert (refused.value.field, told in refused.value.message) == (field, True)
        assert not RawMaterial.objects.exists()

    def test_code_that_differs_by_capitals_only_is_taken(self, bench):
        _resin(bench)
        with pytest.raises(Refused, match=r"The code EP-104 is taken: Resin\.") as refused:
            _resin(bench, code="ep-104")
        assert refused.value.field == "code"

    def test_reader_may_not_write(self, reader, bench):
        with pytest.raises(PermissionDenied):
            _resin(reader)
        with pytest.raises(PermissionDenied):
            change_material(actor=reader, material=_resin(bench), name="x")


class TestLot:
    @pytest.mark.parametrize(
        ("groups", "certificate_as", "value", "expected"),
        [
            ([EPOXIDE], "equivalent weight", Decimal("189.4"), Decimal("189.4")),
            ([NCO], "NCO content", Decimal("30.8"), Decimal("136.364")),
            ([AMINE], "amine value", Decimal(660), Decimal("42.5")),
        ],
    )
    def test_certificate_becomes_an_equivalent_weight(self, bench, groups, certificate_as, value, expected):
        material = _resin(bench, groups=groups)
        lot = add_lot(
            actor=bench,
            material=material,
            number="22-114",
            certificate_as=certificate_as,
            certificate_value=value,
            water_pct=Decimal("0.05"),
        )
        lot.refresh_from_db()
        assert lot.equivalent_g == expected

    def test_equivalent_follows_the_certificate_and_goes_with_it(self, bench):
        lot = add_lot(
            actor=bench,
            material=_resin(bench, groups=[NCO]),
            number="1",
            certificate_as="NCO content",
            certificate_value=Decimal(30),
        )
        assert change_lot(actor=bench, lot=lot, certificate_value=Decimal(42)).equivalent_g == Decimal(100)
        assert change_lot(actor=bench, lot=lot, certificate_as="", certificate_value=None).equivalent_g is None

    def test_equivalent_follows_the_hydrogens_of_the_material(self, bench):
        material = _resin(bench, groups=[AMINE])
        lot = add_lot(
            actor=bench,
            material=material,
            number="1",
            certificate_as="amine value",
            certificate_value=Decimal(561),
        )
        secondary = GroupEntry("amine hydrogen", "amine value", Decimal(561), Decimal(1))
        change_material(actor=bench, material=material, groups=[secondary])
        lot.refresh_from_db()
        assert lot.equivalent_g == Decimal(100)

    def test_group_that_a_certificate_needs_stays(self, bench):
        material = _resin(bench, groups=[NCO])
        add_lot(
            actor=bench,
            material=material,
            number="22-1",
            certificate_as="NCO content",
            certificate_value=Decimal(30),
        )
        with pytest.raises(Refused, match=r"Lot 22-1 stands against it"):
            change_material(actor=bench, material=material, groups=[])
        assert len(_groups(material)) == 1

    @pytest.mark.parametrize(
        ("groups", "values", "field", "told"),
        [
            ([NCO], {"certificate_as": "NCO content"}, "certificate_value", "NCO content"),
            ([NCO], {"certificate_value": Decimal(30)}, "certificate_as", "30"),
            (
                [NCO],
                {"certificate_as": "hydroxyl value", "certificate_value": Decimal(30)},
                "certificate_as",
                "isocyanate",
            ),
            ([NCO], {"certificate_as": "NCO content", "certificate_value": Decimal(101)}, "certificate_value", "101"),
            ([], {"certificate_as": "NCO content", "certificate_value": Decimal(30)}, "certificate_value", "EP-104"),
            (
                [NCO, EPOXIDE],
                {"certificate_as": "NCO content", "certificate_value": Decimal(30)},
                "certificate_value",
                "has 2",
            ),
            ([], {"water_pct": Decimal(101)}, "water_pct", "101"),
            ([], {"on_hand_kg": Decimal(-1)}, "on_hand_kg", "-1"),
            ([], {"received": date(2026, 5, 2), "expires": date(2026, 5, 1)}, "expires", "2026-05-01"),
        ],
    )
    def test_is_refused_at_the_field(self, bench, groups, values, field, told):
        material = _resin(bench, groups=groups)
        with pytest.raises(Refused) as refused:
            add_lot(actor=bench, material=material, number="1", **values)
        assert (refused.value.field, told in refused.value.message) == (field, True)
        assert not Lot.objects.exists()

    def test_number_is_taken_once_per_material(self, bench):
        material = _resin(bench)
        add_lot(actor=bench, material=material, number="a1")
        with pytest.raises(Refused, match="EP-104 has a lot A1 already") as refused:
            add_lot(actor=bench, material=material, number="A1")
        assert refused.value.field == "number"
        add_lot(actor=bench, material=_resin(bench, code="EP-105"), number="a1")

    def test_reader_may_not_write(self, reader, bench):
        with pytest.raises(PermissionDenied):
            add_lot(actor=reader, material=_resin(bench), number="1")


class TestPaper:
    def _paper(self, actor, **more):
        values = {"subject": "food contact", "title": "Statement of composition", **more}
        return add_paper(actor=actor, material=_resin(actor), **values)

    def test_is_filed_changed_and_taken_away_and_the_history_keeps_it(self, bench):
        paper = self._paper(bench, issued=date(2025, 1, 1), expires=date(2027, 1, 1))
        material = paper.material
        change_paper(actor=bench, paper=paper, expires=date(2028, 1, 1))
        paper.refresh_from_db()
        assert paper.expires == date(2028, 1, 1)
        remove_paper(actor=bench, paper=paper)
        assert not Paper.objects.exists()
        whats = [change.what for change in what_changed(material, parts=("papers",))]
        assert whats[0] == "Paper Statement of composition removed"

    @pytest.mark.parametrize(
        ("values", "field", "told"),
        [
            ({"subject": "gossip"}, "subject", "gossip"),
            ({"title": ""}, "title", ""),
            ({"issued": date(2026, 2, 1), "expires": date(2026, 1, 1)}, "expires", "2026-01-01"),
        ],
    )
    def test_is_refused_at_the_field(self, bench, values, field, told):
        with pytest.raises(Refused) as refused:
            self._paper(bench, **values)
        assert (refused.value.field, told in refused.value.message) == (field, True)

    def test_reader_may_not_take_one_away(self, bench, reader):
        with pytest.raises(PermissionDenied):
            remove_paper(actor=reader, paper=self._paper(bench))
