import pytest

from trials.science import dosage
from trials.science.dosage import ComponentMass

CUP = {"A": ComponentMass(1000.0, 400.0), "B": ComponentMass(250.0, 175.0)}
BOX = {"A": ComponentMass(10.0), "B": ComponentMass(5.0)}


@pytest.mark.parametrize(
    ("call", "message"),
    [
        (lambda: dosage.additive_g(100.0, 1.0, counting="within"), r"dosage_pct counted within.*got 100.0"),
        (lambda: dosage.additive_g(40.0, 1.0, counting="within", active_pct=40.0), r"active_pct \(40.0\).*got 40.0"),
        (lambda: dosage.additive_g(0.5, 1.0, active_pct=0.0), "active_pct must be above 0; got 0.0"),
        (lambda: dosage.additive_g(0.5, 1.0, active_pct=100.5), "active_pct .*got 100.5"),
        (lambda: dosage.additive_g(0.5, -1.0), "basis_g must be above 0; got -1.0"),
        (lambda: dosage.additive_g(0.5, 0.0), "basis_g must be above 0; got 0.0"),
        (lambda: dosage.additive_g(-0.1, 1.0), "dosage_pct .*got -0.1"),
        (lambda: dosage.additive_g(500, 1.0), "dosage_pct must be between 0 and 100; got 500"),
        (lambda: dosage.additive_g(0.5, 1.0, counting="inside"), "counting .*got 'inside'"),
        (lambda: dosage.additive_g("0.5", 1.0), "dosage_pct must be a number; got '0.5'"),
        (lambda: dosage.dosage_pct(-1.0, 1.0), "additive_g must not be negative; got -1.0"),
        (lambda: dosage.dosage_pct(1.0, 0.0), "basis_g .*got 0.0"),
        (lambda: dosage.dosage_pct(1.0, 1.0, counting=""), "counting .*got ''"),
        (lambda: dosage.top_up_g(0.5, 0.2, 1000.0), r"to_pct must not be below from_pct \(0.5\); got 0.2"),
        (lambda: dosage.top_up_g(0.2, 100.0, 1000.0, counting="within"), "to_pct counted within.*got 100.0"),
        (lambda: dosage.restate_pct(0.5, from_basis_g=0.0, to_basis_g=1.0), "from_basis_g .*got 0.0"),
        (lambda: dosage.recount_pct(100.0, to="on top"), "dosage_pct counted within.*got 100.0"),
        (lambda: dosage.recount_pct(1.0, to="top"), "to must be one of .*got 'top'"),
        (lambda: dosage.pct_from_ppm(-1.0), "ppm .*got -1.0"),
        (lambda: dosage.pct_in_component(10.0, 5.0), r"total_pct must not exceed .* \(5.0\); got 10.0"),
        (lambda: dosage.pct_in_component(0.3, 0.0), "component_share_pct must be above 0; got 0.0"),
        (lambda: dosage.dilution(1.0, 0.0), "strength_pct must be above 0; got 0.0"),
        (lambda: dosage.half_step_pct(0.0, 0.01), "additive_g must be above 0; got 0.0"),
        (lambda: dosage.partner_g(1.0, 0.0, 1.0), "parts_a must be above 0; got 0.0"),
    ],
)
def test_refusals(call, message):
    with pytest.raises(ValueError, match=message):
        call()


@pytest.mark.parametrize(
    ("basis", "components", "component", "message"),
    [
        ("solids", CUP, None, "basis .*got 'solids'"),
        ("component", CUP, None, "component .*got None"),
        ("component", CUP, "C", "component .*'A', 'B'; got 'C'"),
        ("total", {}, None, r"components \(total, g\)"),
        ("total", {"A": ComponentMass(-1.0)}, None, r"components\['A'\].mass_g .*got -1.0"),
        ("binder solids", BOX, None, r"components\['A'\].binder_solids_g must be known .*got None"),
        ("binder solids", {"A": ComponentMass(10.0, 0.0)}, None, r"components \(binder solids, g\) .*0.0"),
        ("binder solids", {"A": ComponentMass(10.0, 11.0)}, None, r"must not exceed mass_g \(10.0\); got 11.0"),
    ],
)
def test_no_basis(basis, components, component, message):
    with pytest.raises(ValueError, match=message):
        dosage.basis_g(basis, components, component)


def test_a_blank_needs_no_division():
    assert dosage.additive_g(0, 150) == 0.0
    assert dosage.dosage_pct(0, 150, counting="within") == 0.0
    assert dosage.top_up_g(0.3, 0.3, 150.0) == 0.0
    assert dosage.dilution(0.0, 10.0) == dosage.Dilution(0.0, 0.0)


def test_the_true_dosage_after_the_mix_was_weighed_short():
    assert dosage.dosage_pct(0.47, 157.3) == pytest.approx(100 * 0.47 / 157.3)


def test_an_undiluted_dilution_has_no_carrier():
    assert dosage.dilution(1.0, 100.0).carrier_g == 0.0


def test_unknown_binder_solids_do_not_matter_for_the_other_bases():
    assert dosage.basis_g("total", BOX) == 15.0
    assert dosage.basis_g("component", BOX, "B") == 5.0


def test_a_component_of_nothing_but_binder():
    assert dosage.basis_g("binder solids", {"A": ComponentMass(10.0, 10.0)}) == 10.0


def test_a_component_without_binder_counts_as_none():
    cup = {"A": ComponentMass(10.0, 4.0), "B": ComponentMass(5.0, 0.0)}
    assert dosage.basis_g("binder solids", cup, "B") == 4.0
