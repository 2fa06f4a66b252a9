from datetime import date
from decimal import Decimal

import pytest

from tests.making import make_epoxy_base, make_material
from trials.models import Base, Component, Line, Lot, RawMaterial, Revision
from trials.operations.bases import copy_revision
from trials.queries.base_doubts import remarks
from trials.queries.bases import base_sheet, load_revision
from trials.queries.comparing import compare

pytestmark = pytest.mark.django_db
TODAY = date(2026, 3, 2)


def _sheet(person, code="EP-F1", number=None):
    return base_sheet(load_revision(person, code, number))


def _said(sheet, kind):
    return [remark.text for remark in remarks(sheet, TODAY) if remark.kind == kind]


def test_figures_of_the_mix_by_hand(bench):
    """Worked by hand: A is 60 resin (1.16 g/mL) and 40 quartz (2.65), B is amine (1.00), mixed 100 to 22."""
    make_epoxy_base(bench)
    mix = _sheet(bench).mix
    a_ml = 60 / 1.16 + 40 / 2.65
    total_ml = a_ml + 22 / 1.00
    assert mix.density_g_ml == pytest.approx(122 / total_ml)
    assert mix.volume_solids_pct == pytest.approx(100)
    assert mix.pigment_volume_pct == pytest.approx(100 * (40 / 2.65) / total_ml)
    assert mix.index.value == pytest.approx((22 / 60) / (60 / 190))
    assert mix.volume_ratio == pytest.approx(a_ml / 22)
    assert mix.price_per_kg == pytest.approx((60 * 5 + 40 * 0.4 + 22 * 5) / 122)
    assert mix.voc_g_l == 0
    assert mix.water is None


def test_index_far_off_can_not_be_right(bench):
    make_epoxy_base(bench, b_parts="10")
    (wrong,) = _said(_sheet(bench), "wrong")
    assert wrong.startswith("The index (amine hydrogen over epoxide) is 0.528; such systems stand at 0.85 to 1.05.")


def test_index_in_its_band_is_no_remark(bench):
    make_epoxy_base(bench, b_parts="18.5")
    sheet = _sheet(bench)
    assert sheet.mix.index.place == "usual"
    assert not [text for kind in ("wrong", "warning", "note") for text in _said(sheet, kind) if "index" in text]


def test_side_without_groups_is_told(bench):
    make_epoxy_base(bench)
    RawMaterial.objects.get(code="EP-F1-R").groups.all().delete()
    assert _said(_sheet(bench), "wrong") == [
        "The index (amine hydrogen over epoxide) cannot be formed: one side has no reactive group."
    ]


def test_air_can_only_make_it_lighter(bench):
    revision = make_epoxy_base(bench, b_parts="18.5")
    Revision.objects.filter(pk=revision.pk).update(air_free_density_g_ml=Decimal("1.60"), air_free_method="cup")
    (wrong,) = _said(_sheet(bench), "wrong")
    assert "Air can only make it lighter" in wrong


def test_more_than_all_of_a_material(bench):
    make_epoxy_base(bench, b_parts="18.5")
    RawMaterial.objects.filter(code="EP-F1-R").update(voc_pct=Decimal(5))
    assert _said(_sheet(bench), "wrong") == ["EP-F1-R: 100 % stays and 5 % is volatile, together more than 100 %."]


def test_defoamer_in_a_base_said_to_hold_none(bench):
    make_epoxy_base(bench, b_parts="18.5")
    RawMaterial.objects.filter(code="EP-F1-Q").update(function="air-release candidate", density_g_ml=Decimal(1))
    assert _said(_sheet(bench), "wrong") == ["The base is said to hold no defoamer, but EP-F1-Q is on its lines."]


def test_expired_lot_is_told(bench):
    make_epoxy_base(bench, b_parts="18.5")
    line = Line.objects.get(material__code="EP-F1-R")
    line.lot = Lot.objects.create(material=line.material, number="2201", expires=date(2026, 1, 31))
    line.save()
    assert "EP-F1-R lot 2201 is past its date." in _said(_sheet(bench), "warning")


def test_certificate_of_the_lot_overrides_the_material(bench):
    make_epoxy_base(bench)
    line = Line.objects.get(material__code="EP-F1-R")
    line.lot = Lot.objects.create(
        material=line.material, number="2202", density_g_ml=Decimal("1.20"), equivalent_g=Decimal(200)
    )
    line.save()
    mix = _sheet(bench).mix
    assert mix.density_g_ml == pytest.approx(122 / (60 / 1.20 + 40 / 2.65 + 22))
    assert mix.index.value == pytest.approx((22 / 60) / (60 / 200))


def _polyurethane(bench, water=None):
    revision = make_epoxy_base(bench, "PU-1", chemistry="polyurethane")
    RawMaterial.objects.get(code="PU-1-R").groups.update(group="hydroxyl", equivalent_g=Decimal("350.625"))
    RawMaterial.objects.get(code="PU-1-H").groups.update(group="isocyanate", equivalent_g=Decimal("182.608"))
    Component.objects.filter(letter="A").update(water_pct=water)
    return revision


def test_water_in_polyurethane_by_hand(bench):
    """0.1 % of water in A: 0.082 g in 100 g of mix, 0.0091 mol of isocyanate, half as much carbon dioxide."""
    _polyurethane(bench, water=Decimal("0.1"))
    water = _sheet(bench, "PU-1").mix.water
    grams = 0.1 * 100 / 122
    hydroxyl = 60 / 350.625 * 100 / 122
    assert water.water_g == pytest.approx(grams)
    assert water.shift_pct == pytest.approx(100 * grams / 9.008 / hydroxyl)
    assert water.carbon_dioxide_ml == pytest.approx(67.4 * grams / 0.05, rel=1e-3)
    assert not water.assumed


def test_water_not_measured_is_assumed_and_said(bench):
    _polyurethane(bench)
    sheet = _sheet(bench, "PU-1")
    assert sheet.mix.water.assumed
    assert any("assumed: none is measured" in text for text in _said(sheet, "note"))


def test_black_box_says_what_is_not_known(bench):
    make_epoxy_base(bench, "BB-1")
    Line.objects.all().delete()
    Base.objects.update(kind="black box")
    Component.objects.filter(letter="A").update(density_g_ml=Decimal("1.52"))
    Component.objects.filter(letter="B").update(density_g_ml=Decimal("1.01"))
    sheet = _sheet(bench, "BB-1")
    assert sheet.mix.density_g_ml == pytest.approx(122 / (100 / 1.52 + 22 / 1.01))
    assert sheet.mix.index is None
    assert any(text.startswith("A black box") for text in _said(sheet, "note"))


def test_hazards_of_what_is_weighed(bench):
    make_epoxy_base(bench)
    a, b = _sheet(bench).cautions
    assert (a.label.pictograms, a.label.signal_word) == (("GHS07",), "Warning")
    assert (b.label.pictograms, b.label.signal_word) == (("GHS05", "GHS07"), "Danger")


def test_comparison_names_what_differs(bench):
    revision = make_epoxy_base(bench)
    copy = copy_revision(actor=bench, now=revision.made_at, revision=revision, why="less quartz")
    line = Line.objects.get(component__revision=copy, material__code="EP-F1-Q")
    line.material = make_material("TI-1", "pigment", density_g_ml=Decimal("4.1"))
    line.save()
    changes = compare(_sheet(bench, number=1), _sheet(bench, number=2), "EUR")
    assert [(c.code, c.said) for c in changes.lines if c.said] == [("EP-F1-Q", "gone"), ("TI-1", "new")]
    density = next(f for f in changes.figures if f.label == "Density, free of air")
    assert density.difference == pytest.approx(density.right - density.left)
    assert density.difference > 0
