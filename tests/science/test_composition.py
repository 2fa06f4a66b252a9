import pytest

from trials.science import composition as c


@pytest.mark.parametrize(
    ("call", "message"),
    [
        (lambda: c.mixture_density_g_ml([], []), "mass_g needs at least 1"),
        (lambda: c.mixture_density_g_ml([1.0], [1.0, 2.0]), "mass_g has 1, density_g_ml has 2"),
        (lambda: c.mixture_density_g_ml([1.0, -1.0], [1.0, 1.0]), r"mass_g\[1\] must not be negative; got -1.0"),
        (lambda: c.mixture_density_g_ml([1.0], [0.0]), r"density_g_ml\[0\] must be above 0; got 0.0"),
        (lambda: c.mixture_density_g_ml([0.0], [1.0]), r"mass_g must add up .*\[0.0\]"),
        (lambda: c.mixture_non_volatile_pct([1.0], [101.0]), r"non_volatile_pct\[0\] .*got 101.0"),
        (lambda: c.mixture_non_volatile_pct([1.0], [1.0, 1.0]), "mass_g has 1, non_volatile_pct has 2"),
        (lambda: c.volume_solids_pct([1.0], [1.0], [-1.0]), r"non_volatile_pct\[0\] .*got -1.0"),
        (lambda: c.mixture_voc_g_l([1.0], [1.0], [100.1]), r"voc_pct\[0\] .*got 100.1"),
        (lambda: c.voc_by_difference_g_l(60.0, 41.0, 1.0), r"non_volatile_pct \(60.0\).*got 41.0"),
        (lambda: c.voc_less_water_kg_l(0.1, 1.0), r"water_kg_l .*leave room.*got 1.0"),
        (lambda: c.voc_less_water_kg_l(0.0, 1.0, water_density=1.0), r"water_kg_l .*leave room.*got 1.0"),
        (lambda: c.voc_less_water_kg_l(0.1, 0.5, exempt_kg_l=0.6), r"exempt_kg_l \(0.6\)"),
        (lambda: c.pigment_volume_concentration_pct(0.0, 0.0), r"pigment_ml and binder_ml .*0.0"),
        (lambda: c.volume_ratio(1.0, 1.0, 0.0, 1.0), "b_g must be above 0; got 0.0"),
        (lambda: c.wet_film_um(100.0, 0.0), "volume_solids_pct must be above 0; got 0.0"),
        (lambda: c.spreading_rate_m2_l(0.0, 50.0), "dry_film_um must be above 0; got 0.0"),
        (lambda: c.consumption_g_m2(100.0, 50.0, 1.0, loss_pct=100.0), "loss_pct .*got 100.0"),
        (lambda: c.cost_in_use(-1.0, 0.5, 100.0), "price_per_kg must not be negative; got -1.0"),
    ],
)
def test_refusals(call, message):
    with pytest.raises(ValueError, match=message):
        call()


def test_a_line_of_no_mass_changes_nothing():
    assert c.mixture_density_g_ml([100.0, 0.0], [1.2, 9.0]) == pytest.approx(1.2)


def test_a_coating_without_volatiles():
    assert c.voc_by_difference_g_l(100.0, 0.0, 1.4) == 0.0
    assert c.mixture_voc_g_l([1.0, 2.0], [1.0, 1.5], [0.0, 0.0]) == 0.0
    assert c.volume_solids_pct([1.0, 2.0], [1.0, 1.5], [100.0, 100.0]) == pytest.approx(100.0)


def test_no_pigment_and_no_binder():
    assert c.pigment_volume_concentration_pct(0.0, 1.0) == 0.0
    assert c.pigment_volume_concentration_pct(1.0, 0.0) == 100.0


def test_a_free_sample_costs_nothing():
    assert c.cost_in_use(0.0, 0.5, 3000.0) == c.CostInUse(0.0, 0.0)
