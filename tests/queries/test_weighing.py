"""Sums of the weighing sheet. Every expected figure is worked by hand beside it; the bases are invented."""

from decimal import Decimal

import pytest

from tests.making import NOW, make_epoxy_base, make_material
from tests.series_making import make_candidate, make_series
from trials.models import Balance, Lot, ReactiveGroup, Series
from trials.operations.bases import ComponentEntry, LineEntry, add_base
from trials.operations.cups import add_cup
from trials.operations.series import CandidateEntry, add_common_batch
from trials.queries.bench_cautions import bench_cautions
from trials.queries.series import load_series
from trials.queries.series_doubts import weighing_doubts
from trials.queries.weighing import weighing_sheet

pytestmark = pytest.mark.django_db
HALF = Decimal("0.5")


def _sheet(person, series, balance=None):
    return weighing_sheet(load_series(person, series.number), balance)


def _grams(cup):
    return {portion.what: portion.expected_g for portion in cup.portions}


def _treated(sheet):
    return next(cup for cup in sheet.cups if cup.trial.part == "treated")


def _polyurethane(actor, **b_values):
    """A: a polyol of 500 g/eq; B: an isocyanate of 140 g/eq, 100 to 30: index (30/140)/(100/500) = 1.0714."""
    polyol = make_material("PU-P", group="hydroxyl", equivalent="500")
    hard = make_material(
        "PU-H", "hardener", group="isocyanate", equivalent="140", hazards=["H334", "H317"],
        diisocyanate_pct=Decimal("0.4"),
    )  # fmt: skip
    return add_base(
        actor=actor, now=NOW, code="PU-F1", name="Floor", chemistry="polyurethane", field="floor", kind="recipe",
        components=(
            ComponentEntry("A", Decimal(100), lines=(LineEntry(polyol, Decimal(100)),)),
            ComponentEntry("B", Decimal(30), lines=(LineEntry(hard, Decimal(100)),)),
        ),
    )  # fmt: skip


def test_grams_of_a_cup_by_hand(bench):
    """122 g of mix at 100 to 22: A 100, B 22; 0.5 % of 122 on top is 0.61 g."""
    series = make_series(bench, batch_mass_g=Decimal(122), candidates=(CandidateEntry(make_candidate(), (HALF,)),))
    grams = _grams(_treated(_sheet(bench, series)))
    assert grams == {
        "Component A": pytest.approx(100),
        "AR-01": pytest.approx(0.61),
        "Component B": pytest.approx(22),
    }
    shown = [portion.display_g for portion in _treated(_sheet(bench, series)).portions]
    assert shown == [pytest.approx(100), pytest.approx(100.61), pytest.approx(122.61)]


@pytest.mark.parametrize(
    ("meant", "expected"),
    [
        # A is 100 g of 122; its resin is 60 of 100 parts with nothing volatile, B is all binder: 60 + 22 = 82 g.
        ({"basis": "component", "basis_component": "A"}, 0.5),
        ({"basis": "binder solids"}, 0.41),
        # 0.5 % within: 122 * 0.005 / 0.995.
        ({"counting": "within"}, 0.613065),
        # Half of the additive is active matter: twice as much of it as supplied.
        ({"supplied": "active"}, 1.22),
    ],
)
def test_grams_by_basis_counting_and_strength(bench, meant, expected):
    candidate = make_candidate(material={"active_pct": Decimal(50)})
    series = make_series(bench, batch_mass_g=Decimal(122), candidates=(CandidateEntry(candidate, (HALF,)),), **meant)
    assert _grams(_treated(_sheet(bench, series)))["AR-01"] == pytest.approx(expected, abs=1e-6)


def test_additive_that_counts_as_a_asks_for_more_b(bench):
    """A 100 g and 0.61 g of additive that counts as A: B is 100.61 * 22/100 = 22.1342 g."""
    series = make_series(
        bench, batch_mass_g=Decimal(122), candidates=(CandidateEntry(make_candidate(), (HALF,)),),
        counts_in_ratio=True,
    )  # fmt: skip
    assert _grams(_treated(_sheet(bench, series)))["Component B"] == pytest.approx(22.1342)


def test_glycidyl_ether_carrier_shifts_the_demand_for_amine(bench):
    """A 100 g holds 60/190 = 0.315789 eq of epoxide. 0.61 g of a carrier of 305 g/eq brings 0.002: 0.6333 % more."""
    candidate = make_candidate()
    ReactiveGroup.objects.create(
        material=candidate.material, group="epoxide", entered=Decimal(305), equivalent_g=Decimal(305)
    )
    series = make_series(bench, batch_mass_g=Decimal(122), candidates=(CandidateEntry(candidate, (HALF,)),))
    sheet = _sheet(bench, series)
    shift = _treated(sheet).known_shift
    assert shift.pct == pytest.approx(100 * 0.002 / (60 / 190))
    assert not shift.offer
    assert sheet.cups[0].known_shift.pct == 0


def test_hydroxyl_carrier_is_inert_in_epoxy(bench):
    candidate = make_candidate()
    ReactiveGroup.objects.create(
        material=candidate.material, group="hydroxyl", entered=Decimal(300), equivalent_g=Decimal(300)
    )
    series = make_series(bench, candidates=(CandidateEntry(candidate, (HALF,)),))
    shift = _treated(_sheet(bench, series)).known_shift
    assert (shift.pct, shift.inert) == (0, ("AR-01: hydroxyl",))


def test_hydroxyl_carrier_counts_with_isocyanate(bench):
    """A 100 g: 0.2 eq of hydroxyl. 0.65 g (0.5 % of 130) of a carrier of 325 g/eq: 0.002 eq, 1 % more isocyanate."""
    candidate = make_candidate()
    ReactiveGroup.objects.create(
        material=candidate.material, group="hydroxyl", entered=Decimal(325), equivalent_g=Decimal(325)
    )
    entry = CandidateEntry(candidate, (HALF,))
    series = make_series(bench, revision=_polyurethane(bench), batch_mass_g=Decimal(130), candidates=(entry,))
    assert _treated(_sheet(bench, series)).known_shift.pct == pytest.approx(1.0)


def test_water_of_the_common_batch_shifts_every_cup_and_the_correction_is_offered(bench):
    """A 100 g with 0.05 % water: 0.05/9.008 eq over 0.2 eq of hydroxyl is 2.775 % more isocyanate, in blanks too."""
    revision = _polyurethane(bench)
    batch = add_common_batch(actor=bench, now=NOW, revision=revision, number="CB-1", water_pct=Decimal("0.05"))
    values = {"revision": revision, "batch_mass_g": Decimal(130), "common_batch": batch}
    sold = _sheet(bench, make_series(bench, **values))
    for cup in sold.cups:
        assert cup.known_shift.pct == pytest.approx(100 * (0.05 / 9.008) / 0.2)
        assert cup.known_shift.offer
        b = cup.portions[-1]
        assert (b.expected_g, b.corrected_g) == (pytest.approx(30), pytest.approx(30.8326, abs=1e-4))
    (remark,) = [one for one in weighing_doubts(sold) if one.kind == "warning"]
    assert "every cup" in remark.text
    assert "+2.8 %" in remark.text
    corrected = _sheet(bench, make_series(bench, ratio="corrected", **values))
    assert corrected.cups[0].portions[-1].expected_g == pytest.approx(30.8326, abs=1e-4)


def test_unmeasured_water_is_told_and_not_counted(bench):
    series = make_series(bench, revision=_polyurethane(bench))
    sheet = _sheet(bench, series)
    assert sheet.cups[0].known_shift.pct == 0
    assert any("not measured" in remark.text for remark in weighing_doubts(sheet))


def test_black_box_is_weighed_as_sold_and_says_why(bench):
    revision = make_epoxy_base(bench)
    revision.components.get(letter="B").lines.all().delete()
    sheet = _sheet(bench, make_series(bench, revision=revision))
    assert sheet.cups[0].known_shift is None
    assert "component B are not known" in weighing_doubts(sheet)[0].text
    assert any("Component B" in line or "component B" in line for line in bench_cautions(sheet).lines)


def test_rounding_of_the_balance_above_five_per_cent_is_told_with_ways_out(bench):
    """0.05 % of 150 g is 0.075 g; a balance of 0.01 g loses 0.005 g in its last digit: 6.67 %, 5 % from 200 g on."""
    rough = Balance.objects.create(name="Rough", step_g=Decimal("0.01"))
    stiff = make_candidate("AR-01")
    soluble = make_candidate("AR-02", diluted_in="benzyl alcohol")
    entries = tuple(CandidateEntry(one, (Decimal("0.05"),)) for one in (stiff, soluble))
    sheet = _sheet(bench, make_series(bench, candidates=entries), rough)
    notes = {p.what: p for cup in sheet.cups for p in cup.portions if p.dosage}
    assert notes["AR-01"].rounding_pct == pytest.approx(100 * 0.005 / 0.075)
    assert "a cup of 200 g or more or a finer balance" in notes["AR-01"].advice
    assert "dilution" not in notes["AR-01"].advice
    assert "a dilution in benzyl alcohol" in notes["AR-02"].advice
    fine = _sheet(bench, Series.objects.get(), Balance(name="Fine", step_g=Decimal("0.001")))
    assert not any(portion.coarse for cup in fine.cups for portion in cup.portions)


def test_hazards_of_base_and_additive_together(bench):
    candidate = make_candidate(material={"hazards": ["H226"]})
    series = make_series(bench, candidates=(CandidateEntry(candidate, (HALF,)),))
    cautions = bench_cautions(_sheet(bench, series))
    assert {code for code, _ in cautions.statements} == {"H226", "H314", "H315", "H317"}
    assert cautions.label.signal_word == "Danger"
    assert any("vapours ignite" in line for line in cautions.lines)


def test_training_is_named_where_a_diisocyanate_reaches_a_tenth_of_a_per_cent(bench):
    """0.1 %: Regulation (EC) No 1907/2006, annex XVII, entry 74."""
    isocyanate = bench_cautions(_sheet(bench, make_series(bench, revision=_polyurethane(bench))))
    assert any("training" in line for line in isocyanate.lines)
    epoxy = bench_cautions(_sheet(bench, make_series(bench, revision=make_epoxy_base(bench))))
    assert not any("training" in line for line in epoxy.lines)


def test_topped_up_cup_has_its_components_already(bench):
    """0.3 % of 150 g is 0.45 g; 0.15 g are in the cup before it, weighed: 0.30 g to add."""
    series = make_series(bench)
    like = series.trials.filter(part="treated").order_by("position").first()
    like.dosages.update(weighed_g=Decimal("0.15"))
    top = add_cup(actor=bench, now=NOW, series=series, like=like, dosage_pct=Decimal("0.3"), topped_up=True)
    cup = next(cup for cup in _sheet(bench, series).cups if cup.trial.pk == top.pk)
    assert _grams(cup)["AR-01"] == pytest.approx(0.30)
    assert [portion.note for portion in cup.portions] == ["in it already", "to add", "in it already"]


def test_cups_stand_in_the_order_of_working(bench):
    series = make_series(bench)
    add_cup(actor=bench, now=NOW, series=series, like=series.trials.filter(part="blank").first())
    assert [cup.trial.part for cup in _sheet(bench, series).cups][-2:] == ["blank", "clean check"]


def test_lot_names_its_own_water(bench):
    """Lot of the additive: 1 % water of 0.65 g is 0.0065 g, over 9.008 and 0.2 eq: 0.3608 %."""
    candidate = make_candidate()
    lot = Lot.objects.create(material=candidate.material, number="7", water_pct=Decimal(1))
    entry = CandidateEntry(candidate, (HALF,), lot=lot)
    series = make_series(bench, revision=_polyurethane(bench), batch_mass_g=Decimal(130), candidates=(entry,))
    assert _treated(_sheet(bench, series)).known_shift.pct == pytest.approx(100 * 0.0065 / 9.008 / 0.2)
