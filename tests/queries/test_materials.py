from datetime import UTC, date, datetime
from decimal import Decimal

import pytest
from django.db import connection
from django.test.utils import CaptureQueriesContext

from trials.models import Base, Component, Line, Revision
from trials.operations.equivalents import GroupEntry
from trials.operations.materials import add_lot, add_material, add_paper
from trials.queries.materials import find_materials, material_sheet

pytestmark = pytest.mark.django_db

TODAY = date(2026, 3, 10)
EPOXIDE = GroupEntry("epoxide", "equivalent weight", Decimal("187"))


def _material(actor, code="EP-104", name="Epoxy resin, clear", function="binder", **more):
    return add_material(actor=actor, code=code, name=name, function=function, **more)


def _use(material, owner, code, restricted=False):
    base = Base.objects.create(
        code=code,
        name="Floor",
        chemistry="epoxy-amine",
        field="floor",
        kind="recipe",
        owner=owner,
        restricted=restricted,
    )
    for number in (1, 2):
        revision = Revision.objects.create(
            base=base, number=number, made_by=owner, made_at=datetime(2026, 1, 1, tzinfo=UTC)
        )
        component = Component.objects.create(revision=revision, letter="A", parts=100)
        Line.objects.create(component=component, position=1, material=material, parts=100)
    return base


class TestList:
    @pytest.fixture(autouse=True)
    def _some(self, bench):
        _material(bench, supplier="Nordhaven")
        _material(bench, "HD-210", "Hardener", "hardener")
        _material(bench, "EP-100", "Epoxy resin, old", withdrawn=True)

    @pytest.mark.parametrize(
        ("asked", "codes"),
        [
            ({}, ["EP-104", "HD-210"]),
            ({"withdrawn": True}, ["EP-100", "EP-104", "HD-210"]),
            ({"words": "resin epoxy"}, ["EP-104"]),
            ({"words": "ep-10"}, ["EP-104"]),
            ({"words": "nordhaven"}, ["EP-104"]),
            ({"words": "resin hardener"}, []),
            ({"function": "hardener"}, ["HD-210"]),
        ],
    )
    def test_finds(self, asked, codes):
        assert [row.code for row in find_materials(today=TODAY, **asked).rows] == codes

    def test_is_bounded_and_says_so(self, monkeypatch):
        monkeypatch.setattr("trials.queries.listing.MOST", 1)
        found = find_materials(today=TODAY)
        assert ([row.code for row in found.rows], found.more) == (["EP-104"], True)


def test_row_counts_stock_and_what_expires(bench):
    material = _material(bench, price_per_kg=Decimal("4.20"))
    add_lot(actor=bench, material=material, number="1", on_hand_kg=Decimal("2.5"), expires=date(2026, 3, 1))
    add_lot(actor=bench, material=material, number="2", on_hand_kg=Decimal("1.25"))
    add_lot(actor=bench, material=material, number="3")
    add_paper(actor=bench, material=material, subject="emissions", title="Report", expires=date(2026, 3, 30))
    (row,) = find_materials(today=TODAY).rows
    assert (row.on_hand_kg, row.lots.words) == (Decimal("3.75"), "3: 1 expired")
    assert (row.papers.words, row.price_per_kg) == ("1: within 60 days", Decimal("4.20"))


class TestSheet:
    def test_shows_bases_the_person_may_see_once_each(self, bench, colleague):
        material = _material(bench)
        _use(material, bench, "F-2")
        _use(material, bench, "F-1", restricted=True)
        _use(_material(bench, "EP-105"), bench, "F-3")
        seen = {
            person: [base.code for base in material_sheet(material, person=person, today=TODAY).bases]
            for person in (bench, colleague)
        }
        assert seen == {bench: ["F-1", "F-2"], colleague: ["F-2"]}

    def test_lots_stand_newest_first_and_say_what_they_override(self, bench):
        material = _material(bench, density_g_ml=Decimal("1.16"), groups=[EPOXIDE])
        add_lot(actor=bench, material=material, number="undated")
        add_lot(actor=bench, material=material, number="old", received=date(2025, 1, 1))
        add_lot(
            actor=bench,
            material=material,
            number="new",
            received=date(2026, 1, 1),
            density_g_ml=Decimal("1.17"),
            non_volatile_pct=Decimal(99),
            certificate_as="equivalent weight",
            certificate_value=Decimal(189),
        )
        lots = material_sheet(material, person=bench, today=TODAY).lots
        assert [view.lot.number for view in lots] == ["new", "old", "undated"]
        assert [(fact.label, fact.value, fact.source) for fact in lots[0].overrides] == [
            ("Density", Decimal("1.17"), "in place of 1.16"),
            ("Non-volatile content", Decimal(99), "the material states none"),
            ("Equivalent weight", Decimal(189), "in place of 187"),
        ]
        assert lots[1].overrides == ()

    def test_equivalent_says_what_it_was_reckoned_from(self, bench):
        material = _material(bench, groups=[GroupEntry("isocyanate", "NCO content", Decimal(31))])
        add_lot(
            actor=bench,
            material=material,
            number="1",
            certificate_as="NCO content",
            certificate_value=Decimal("30.8"),
            appearance="clear",
            shaken=True,
            warmed=False,
        )
        (view,) = material_sheet(material, person=bench, today=TODAY).lots
        assert view.overrides[0].source == "from NCO content 30.8 %, in place of 135.484"
        assert view.bottle == "shaken, not warmed, clear"

    def test_figures_that_nobody_entered_are_said_to_be_so(self, bench):
        facts = {fact.label: fact for fact in material_sheet(_material(bench), person=bench, today=TODAY).facts}
        assert (facts["Density"].value, facts["Density"].unit) == ("not stated", "")

    def test_hazards_are_labelled_with_their_wording(self, bench):
        sheet = material_sheet(_material(bench, hazards=["H317", "H314"]), person=bench, today=TODAY)
        assert (sheet.label.pictograms, sheet.label.signal_word) == (("GHS05", "GHS07"), "Danger")
        assert sheet.statements[1] == ("H317", "May cause an allergic skin reaction")

    def test_unusual_figures_are_asked_about(self, bench):
        light = GroupEntry("epoxide", "equivalent weight", Decimal(7))
        odd = _material(bench, density_g_ml=Decimal("11.6"), groups=[light])
        assert [
            question.partition(":")[0] for question in material_sheet(odd, person=bench, today=TODAY).unusual
        ] == [
            "Density 11.6 g/mL",
            "Equivalent weight of epoxide 7 g/eq",
        ]
        usual = _material(bench, "EP-105", density_g_ml=Decimal("1.16"), groups=[EPOXIDE])
        assert material_sheet(usual, person=bench, today=TODAY).unusual == ()

    @pytest.mark.parametrize("rows", [1, 3])
    def test_queries_do_not_grow_with_lots_papers_and_bases(self, bench, rows):
        material = _material(bench, groups=[EPOXIDE])
        for number in range(rows):
            add_lot(actor=bench, material=material, number=str(number), density_g_ml=Decimal(1))
            add_paper(actor=bench, material=material, subject="emissions", title=str(number))
            _use(material, bench, f"F-{number}")
        with CaptureQueriesContext(connection) as queries:
            sheet = material_sheet(material, person=bench, today=TODAY)
        assert (len(sheet.lots), len(sheet.papers), len(sheet.bases)) == (rows, rows, rows)
        assert len(queries) == 5
