"""What the demonstration holds. Ranges and bands are common practice, no source."""

from datetime import timedelta
from itertools import product

import pytest
from django.contrib.auth.hashers import check_password

from tests.demo.conftest import UNTIL
from trials.access import bases
from trials.demo.fill import fill
from trials.demo.people import PEOPLE
from trials.demo.sign_ins import SIGN_INS
from trials.models import (
    Base,
    BaseShare,
    Candidate,
    Component,
    Line,
    Lot,
    Paper,
    Person,
    RawMaterial,
    ReactiveGroup,
    Revision,
    Role,
)
from trials.models.candidates import Carrier, Chemistry
from trials.models.history import history_models
from trials.operations.acting import Refused
from trials.queries.base_doubts import remarks
from trials.queries.bases import base_sheet, load_revision
from trials.queries.cautions import unusual_window
from trials.queries.history import what_changed
from trials.queries.today import NOTICE_DAYS
from trials.science.hazards import label

pytestmark = pytest.mark.django_db

RECIPES = [(code, number) for code, last in (("EF-21", 3), ("EC-12", 2), ("UF-33", 2), ("PF-41", 2), ("EM-52", 1))
           for number in range(1, last + 1)]  # fmt: skip
BLACK_BOXES = [("BB-61", 1), ("BB-61", 2), ("BB-62", 1)]
# Component A, component B, the mix, in g/mL.
DENSITIES = {
    "EF-21": ((1.45, 1.70), (0.98, 1.05), (1.35, 1.60)),
    "EC-12": ((1.08, 1.14), (0.98, 1.05), (1.06, 1.12)),
    "UF-33": ((1.35, 1.55), (1.20, 1.24), (1.35, 1.60)),
    "PF-41": ((1.20, 1.45), (1.12, 1.16), (1.20, 1.45)),
    "EM-52": ((1.45, 1.70), (0.98, 1.05), (1.35, 1.60)),
    "BB-61": ((1.45, 1.70), (0.98, 1.05), (1.35, 1.60)),
    "BB-62": ((1.35, 1.55), (1.20, 1.24), (1.35, 1.60)),
}
# Viscosity of the mix in mPa·s at 23 °C, pot life of 100 g in minutes.
FLOW = {
    "EF-21": ((1200, 3000), (20, 45)),
    "EC-12": ((500, 1200), (20, 45)),
    "UF-33": ((1500, 4000), (20, 40)),
    "PF-41": ((300, 1200), (8, 30)),
    "EM-52": ((1200, 3000), (20, 45)),
    "BB-61": ((1200, 3000), (20, 45)),
    "BB-62": ((600, 5000), (20, 40)),
}


@pytest.fixture
def sheet_of(laboratory):
    def sheet(code, number):
        sees_all = laboratory.people["caspar"]
        return base_sheet(load_revision(sees_all, code, number))

    return sheet


def test_as_many_of_each_as_a_laboratory_of_this_kind_has(laboratory):
    assert Person.objects.count() == len(PEOPLE) == 12
    assert RawMaterial.objects.exclude(function="air-release candidate").count() == 45
    assert list(Candidate.objects.order_by("material__code").values_list("material__code", flat=True)) == [
        f"AR-{number:02}" for number in range(1, 17)
    ]
    assert Base.objects.count() == 7
    assert sorted(laboratory.revisions) == sorted([*RECIPES, *BLACK_BOXES])


def test_one_of_each_role_can_sign_in(laboratory):
    assert {role for role, _, _ in SIGN_INS} == set(Role.values)
    for role, sign_in, password in SIGN_INS:
        person = Person.objects.get(sign_in_name=sign_in)
        assert (person.role, person.is_active) == (role, True)
        assert check_password(password, person.password)
        assert len(password) >= 10


def test_who_has_left_keeps_what_they_wrote(laboratory):
    gone = Person.objects.get(is_active=False)
    assert gone.full_name == "Peer Holmquade"
    assert Revision.objects.filter(made_by=gone).exists()


@pytest.mark.parametrize(("code", "number"), RECIPES)
def test_index_stands_in_the_usual_part_of_its_band(sheet_of, code, number):
    index = sheet_of(code, number).mix.index
    assert index.band.usual_low <= index.value <= index.band.usual_high


@pytest.mark.parametrize(("code", "number"), [*RECIPES, *BLACK_BOXES])
def test_densities_viscosity_and_pot_life_make_sense(sheet_of, code, number):
    sheet = sheet_of(code, number)
    found = [component.density_g_ml for component in sheet.components] + [sheet.mix.density_g_ml]
    for value, (low, high) in zip(found, DENSITIES[code], strict=True):
        assert low <= value <= high
    for value, (low, high) in zip(
        (sheet.revision.viscosity_mpa_s, sheet.revision.pot_life_min), FLOW[code], strict=True
    ):
        assert low <= value <= high


@pytest.mark.parametrize(("code", "number"), [*RECIPES, *BLACK_BOXES])
def test_measured_density_is_that_of_the_recipe_within_half_a_per_cent(sheet_of, code, number):
    sheet = sheet_of(code, number)
    assert sheet.mix.density_source.startswith("measured")
    assert sheet.mix.density_g_ml == pytest.approx(sheet.mix.recipe_density_g_ml, rel=0.005)


@pytest.mark.parametrize(("code", "number"), [*RECIPES, *BLACK_BOXES])
def test_nothing_in_a_base_cannot_be_right(sheet_of, code, number):
    found = remarks(sheet_of(code, number), UNTIL)
    assert found
    assert [remark.text for remark in found if remark.kind == "wrong"] == []


@pytest.mark.parametrize(("code", "number"), RECIPES)
def test_component_a_is_written_to_a_hundred_and_every_figure_is_known(sheet_of, code, number):
    sheet = sheet_of(code, number)
    for component in sheet.components:
        assert sum(line.parts for line in component.lines) == pytest.approx(100)
        assert all(line.lot for line in component.lines)
    mix = sheet.mix
    assert None not in (
        mix.voc_g_l,
        mix.volume_solids_pct,
        mix.pigment_volume_pct,
        mix.price_per_kg,
        mix.volume_ratio,
    )


def test_lots_were_there_and_good_when_a_revision_used_them(laboratory):
    checked = 0
    for revision in Revision.objects.prefetch_related("components__lines__lot"):
        day = revision.made_at.date()
        for component in revision.components.all():
            for lot in (line.lot for line in component.lines.all()):
                assert lot.received <= day, (revision, lot)
                assert lot.expires is None or lot.expires >= day, (revision, lot)
                checked += 1
    assert checked > 100


def test_the_wet_filler_is_warned_of_and_the_next_revision_is_dry(sheet_of):
    wet, dry = sheet_of("UF-33", 1), sheet_of("UF-33", 2)
    assert wet.mix.water.shift_pct > 5
    assert dry.mix.water.shift_pct < 2
    assert any("takes" in remark.text for remark in remarks(wet, UNTIL) if remark.kind == "warning")


def test_resin_lot_whose_certificate_deviates_moves_the_ratio(laboratory, sheet_of):
    lot = Lot.objects.get(number="R-7730")
    usual = lot.material.groups.get().equivalent_g
    assert lot.equivalent_g > usual * 104 / 100
    (a2, b2), (a3, b3) = sheet_of("EF-21", 2).components, sheet_of("EF-21", 3).components
    assert (b2.parts, b3.parts) == (26, 25)
    assert a3.equivalents["epoxide"] < 0.98 * a2.equivalents["epoxide"]
    index = sheet_of("EF-21", 3).mix.index.value
    assert index * b2.parts / b3.parts > 1.0  # with the old ratio amine would be left over


def test_equivalents_are_entered_in_every_way_and_agree_with_the_data_sheet(laboratory):
    groups = {
        group.material.code: group
        for material in RawMaterial.objects.prefetch_related("groups")
        for group in material.groups.all()
    }
    ways = {group.entered_as for group in groups.values()}
    assert ways == {"equivalent weight", "NCO content", "hydroxyl value", "amine value"}
    # From formulae (molmass): isophorone diamine 42.574, m-xylylenediamine 34.049 g/eq; commercial grades within 1 %.
    assert float(groups["HD-201"].equivalent_g) == pytest.approx(42.574, rel=0.01)
    assert float(groups["HD-204"].equivalent_g) == pytest.approx(34.049, rel=0.01)
    # Aspartates of the two cycloaliphatic diamines: 277.36 and 291.39 g/eq.
    assert float(groups["AS-501"].equivalent_g) == pytest.approx(277.36, rel=0.01)
    assert float(groups["AS-504"].equivalent_g) == pytest.approx(291.39, rel=0.01)
    # 21.8 % NCO, the usual trimer of hexamethylene diisocyanate: 192.66 g/eq.
    assert float(groups["NC-407"].equivalent_g) == pytest.approx(192.66, abs=0.01)


def test_candidates_stand_in_all_four_corners_of_the_map(laboratory):
    corners = {
        ("mild" if candidate.strength <= 2 else "strong", "easy" if candidate.tip_speed_m_s <= 3 else "shear")
        for candidate in Candidate.objects.all()
        if candidate.strength != 3 and not 3 < candidate.tip_speed_m_s < 6
    }
    assert corners == set(product(("mild", "strong"), ("easy", "shear")))


def test_candidates_are_of_every_chemistry_and_carrier_within_their_usual_windows(laboratory):
    candidates = list(Candidate.objects.select_related("material"))
    assert {candidate.chemistry for candidate in candidates} == set(Chemistry.values)
    assert {candidate.carrier for candidate in candidates} == set(Carrier.values)
    assert [unusual_window(candidate) for candidate in candidates] == [()] * 16
    assert all(candidate.cautions and candidate.stages for candidate in candidates)
    assert {bool(candidate.diluted_in) for candidate in candidates} == {True, False}


def test_reactive_carriers_carry_their_group(laboratory):
    carried = {
        candidate.material.code: [group.group for group in candidate.material.groups.all()]
        for candidate in Candidate.objects.prefetch_related("material__groups")
    }
    assert {code: groups for code, groups in carried.items() if groups} == {
        "AR-07": ["hydroxyl"],
        "AR-09": ["epoxide"],
        "AR-15": ["hydroxyl"],
    }


def test_papers_have_expired_will_soon_and_hold(laboratory):
    ends = list(Paper.objects.exclude(expires=None).values_list("expires", flat=True))
    notice = UNTIL + timedelta(days=NOTICE_DAYS)
    assert sum(end < UNTIL for end in ends) >= 3
    assert sum(UNTIL <= end <= notice for end in ends) >= 3
    assert sum(end > notice for end in ends) >= 10


def test_bottles_were_opened_shaken_and_warmed(laboratory):
    for values in ({"shaken": True}, {"shaken": False}, {"warmed": True}):
        assert Lot.objects.filter(opened__isnull=False, **values).exists()
    assert Lot.objects.filter(material__function="filler", water_pct__gt="0.3", water_pct__lt="0.5").count() == 1


def test_hazards_follow_the_open_system(laboratory):
    signals = {code: label(material.hazards) for code, material in laboratory.materials.items()}
    assert signals["NC-401"].signal_word == signals["HD-210"].signal_word == "Danger"
    assert "GHS08" in signals["NC-401"].pictograms
    assert signals["EP-104"].pictograms == ("GHS07", "GHS09")


def test_restricted_base_is_seen_by_named_people_only(laboratory):
    seen_by = {name for name, person in laboratory.people.items() if bases(person).filter(code="EM-52").exists()}
    assert seen_by == {"caspar", "tibor", "ruth"}
    assert bases(laboratory.people["jonna"]).count() == 6


def test_base_that_holds_an_additive_says_which_and_why(laboratory):
    base = Base.objects.get(code="PF-41")
    assert base.additive == "yes"
    assert "AR-06" in base.additive_note
    assert "without it" in base.additive_note


def test_history_names_who_wrote_it(laboratory):
    changed, added = what_changed(RawMaterial.objects.get(code="PL-040"))
    assert (changed.who, added.who) == ("Jonna Harrel", "Jonna Harrel")
    assert "H317" in str(changed.changes)
    opened, received = what_changed(Lot.objects.get(number="B-0251"))
    assert (opened.who, received.who) == ("Peer Holmquade", "Peer Holmquade")
    for code, number, who in (
        ("EF-21", 1, "Peer Holmquade"),
        ("EF-21", 2, "Jonna Harrel"),
        ("EM-52", 1, "Caspar Delwig"),
    ):
        assert {change.who for change in what_changed(laboratory.revisions[code, number])} == {who}


def test_every_row_of_history_has_its_person_but_the_first(laboratory):
    written = (Person, RawMaterial, ReactiveGroup, Lot, Paper, Candidate, Base, BaseShare, Revision, Component, Line)
    told = [
        event for model in history_models() if model.pgh_tracked_model in written for event in model.objects.all()
    ]
    assert len(told) > 500
    nameless = [event for event in told if not (event.pgh_context or {}).get("by")]
    assert [(event.pgh_tracked_model, event.pgh_obj_id) for event in nameless] == [
        (Person, laboratory.people["runa"].pk)
    ]


def test_days_are_working_days_within_the_two_years(laboratory):
    made = list(Revision.objects.values_list("made_at", flat=True))
    assert all(moment.weekday() < 5 for moment in made)
    assert UNTIL - timedelta(days=732) < min(made).date() < max(made).date() < UNTIL


def test_notebook_with_people_is_left_as_it_is(laboratory):
    people = Person.objects.count()
    with pytest.raises(Refused, match="people already"):
        fill(until=UNTIL, say=lambda line: None)
    assert Person.objects.count() == people
