"""What is reckoned one way and back is what one began with."""

import math

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from trials.science import air, bubbles, composition, desirability, dosage, hazards, shear, stoichiometry
from trials.science.hazard_statements import STATEMENTS

UNHURRIED = settings(deadline=None)  # the machine is shared, and time is not what is tested

dosages = st.floats(0.0, 20.0)
active = st.floats(30.0, 100.0)
grams = st.floats(0.1, 1e5)
countings = st.sampled_from(dosage.COUNTINGS)
equivalents = st.floats(10.0, 5000.0)
densities = st.floats(0.7, 3.0)


def near(value):
    return pytest.approx(value, rel=1e-9, abs=1e-9)


@UNHURRIED
@given(dosages, grams, countings, active)
def test_dosage_to_grams_and_back(pct, basis, counting, strength):
    weighed = dosage.additive_g(pct, basis, counting=counting, active_pct=strength)
    assert dosage.dosage_pct(weighed, basis, counting=counting, active_pct=strength) == near(pct)


@UNHURRIED
@given(dosages, dosages, grams, countings, active)
def test_two_steps_of_topping_up_are_one(first, second, basis, counting, strength):
    low, high = sorted((first, second))
    options = {"counting": counting, "active_pct": strength}
    step = dosage.top_up_g(low, high, basis, **options)
    begun = dosage.additive_g(low, basis, **options)
    assert begun + step == near(dosage.additive_g(high, basis, **options))


@UNHURRIED
@given(st.floats(0.0, 100.0), grams, grams)
def test_restating_there_and_back(pct, one, other):
    there = pct * one / other
    assume(there <= 100.0)
    assert dosage.restate_pct(pct, from_basis_g=one, to_basis_g=other) == near(there)
    assert dosage.restate_pct(there, from_basis_g=other, to_basis_g=one) == near(pct)


@UNHURRIED
@given(st.floats(0.0, 99.0))
def test_recounting_there_and_back(pct):
    assert dosage.recount_pct(dosage.recount_pct(pct, to="within"), to="on top") == near(pct)
    within = dosage.recount_pct(pct, to="within")
    assert within <= pct or within == near(pct)


@UNHURRIED
@given(dosages, grams, st.floats(1.0, 100.0))
def test_a_dilution_brings_the_dose_it_was_made_for(pct, basis, strength):
    dose = dosage.additive_g(pct, basis)
    diluted = dosage.dilution(dose, strength)
    assert diluted.weighed_g - diluted.carrier_g == near(dose)
    assert diluted.weighed_g * strength / 100.0 == near(dose)


@UNHURRIED
@given(st.lists(st.tuples(grams, densities), min_size=1, max_size=6))
def test_a_mixture_is_as_dense_as_its_densest_and_lightest_allow(lines):
    mass, density = zip(*lines, strict=True)
    mixed = composition.mixture_density_g_ml(mass, density)
    assert min(density) * (1 - 1e-9) <= mixed <= max(density) * (1 + 1e-9)
    assert composition.volume_solids_pct(mass, density, [100.0] * len(mass)) == near(100.0)
    assert composition.mixture_voc_g_l(mass, density, [100.0] * len(mass)) == near(1000.0 * mixed)


@UNHURRIED
@given(st.floats(1.0, 1e4), st.floats(1.0, 100.0), densities)
def test_film_coverage_and_consumption_agree(dry, solids, density):
    rate = composition.spreading_rate_m2_l(dry, solids)
    assert composition.wet_film_um(dry, solids) * rate == near(1000.0)
    assert composition.consumption_g_m2(dry, solids, density) * rate == near(1000.0 * density)


@UNHURRIED
@given(grams, equivalents, equivalents, st.floats(0.5, 1.5))
def test_hardener_for_an_index_and_the_index_of_it(resin, resin_equivalent, hardener_equivalent, index):
    hardener = stoichiometry.hardener_g(resin, resin_equivalent, hardener_equivalent, index=index)
    assert stoichiometry.index(resin, resin_equivalent, hardener, hardener_equivalent) == near(index)


@UNHURRIED
@given(st.lists(st.tuples(grams, equivalents), min_size=1, max_size=6), grams)
def test_an_inert_part_dilutes_and_takes_no_groups(parts, inert):
    mass, equivalent = zip(*parts, strict=True)
    alone = stoichiometry.equivalent_of_blend(mass, equivalent)
    assert min(equivalent) * (1 - 1e-9) <= alone <= max(equivalent) * (1 + 1e-9)
    diluted = stoichiometry.equivalent_of_blend((*mass, inert), (*equivalent, math.inf))
    assert (sum(mass) + inert) / diluted == near(sum(mass) / alone)


@UNHURRIED
@given(st.floats(1.0, 1000.0), st.floats(0.0, 30.0))
def test_tip_speed_and_turns(blade, speed):
    assert shear.tip_speed_m_s(blade, shear.rpm_for_tip_speed(speed, blade)) == near(speed)


@UNHURRIED
@given(st.floats(1.0, 1000.0), st.floats(1.0, 1000.0), st.floats(1.0, 1e4))
def test_scaling_keeps_what_it_says(blade, other, rpm):
    scaled = shear.scale_up_rpm(blade, rpm, other)
    assert shear.tip_speed_m_s(other, scaled) == near(shear.tip_speed_m_s(blade, rpm))
    scaled = shear.scale_up_rpm(blade, rpm, other, rule="power per volume")
    first = shear.power(blade, rpm, 1.2, 0.01, power_number=0.3).watts / blade**3
    assert shear.power(other, scaled, 1.2, 0.01, power_number=0.3).watts / other**3 == pytest.approx(first)


@UNHURRIED
@given(densities, st.floats(0.0, 90.0))
def test_air_to_density_and_back(free, pct):
    assert air.air_pct(air.density_at_air_g_ml(free, pct), free) == near(pct)


@UNHURRIED
@given(densities, st.floats(1.0, 90.0), st.floats(0.0, 100.0))
def test_efficiency_is_the_share_of_the_blanks_air_kept_out(free, blank_air, kept_out):
    blank = air.density_at_air_g_ml(free, blank_air)
    treated = air.density_at_air_g_ml(free, blank_air * (1.0 - kept_out / 100.0))
    assert air.defoaming_efficiency_pct(treated, blank, free) == pytest.approx(kept_out, abs=1e-6)


@UNHURRIED
@given(st.floats(0.5, 20.0), st.floats(0.001, 0.5), st.lists(st.integers(0, 60), min_size=2, max_size=8, unique=True))
def test_release_finds_the_decay_it_was_given(start, rate, minutes):
    readings = [start * math.exp(-rate * t) for t in minutes]
    assume(min(readings) > 1e-12)
    found = air.release(minutes, readings)
    assert found.rate_per_min == pytest.approx(rate, rel=1e-6)
    assert found.start_pct == pytest.approx(start, rel=1e-6)
    assert air.minutes_to(found, found.start_pct / 2.0) == pytest.approx(found.half_life_min)


@UNHURRIED
@given(grams, st.floats(0.95, 1.0), st.floats(0.0, 0.0013))
def test_a_pyknometer_gives_back_the_water_it_was_calibrated_with(water_g, water, air_g_ml):
    volume = air.pyknometer_ml(water_g, water, air_g_ml=air_g_ml)
    assert air.pyknometer_density_g_ml(water_g, volume, air_g_ml=air_g_ml) == near(water)


films = st.floats(100.0, 5000.0)
viscosities = st.floats(0.1, 20.0)
times = st.floats(60.0, 1e5)


@UNHURRIED
@given(st.floats(10.0, 1000.0), films, viscosities, densities, times, times)
def test_a_bubble_has_crossed_the_film_when_it_is_out(diameter, film, viscosity, density, growth, gel):
    found = bubbles.escape(diameter, film, viscosity, density, growth_s=growth, gel_s=gel)
    if found.seconds is None:
        assert bubbles.risen_um(100.0 * growth, diameter, viscosity, density, growth_s=growth) <= film * (1 + 1e-9)
    else:
        risen = bubbles.risen_um(found.seconds, diameter, viscosity, density, growth_s=growth)
        assert risen == pytest.approx(film, rel=1e-6)
        assert found.escapes is (found.seconds <= gel)
    if found.escapes:
        assert found.risen_by_gel_um >= film * (1 - 1e-9)


@UNHURRIED
@given(films, viscosities, densities, times, times)
def test_the_smallest_to_escape_just_does(film, viscosity, density, growth, gel):
    smallest = bubbles.smallest_escaping_um(film, viscosity, density, growth_s=growth, gel_s=gel)
    options = {"growth_s": growth, "gel_s": gel}
    assert bubbles.escape(1.001 * smallest, film, viscosity, density, **options).escapes
    assert not bubbles.escape(0.999 * smallest, film, viscosity, density, **options).escapes


@UNHURRIED
@given(st.floats(10.0, 3000.0), viscosities, densities)
def test_drag_never_makes_a_bubble_faster(diameter, viscosity, density):
    with_drag = bubbles.rise_m_s(diameter, viscosity, density)
    assert with_drag <= bubbles.stokes_m_s(diameter, viscosity, density) * (1 + 1e-2)


@UNHURRIED
@given(st.floats(20.0, 80.0), st.floats(15.0, 40.0), st.floats(0.0, 50.0))
def test_what_spreads_bridges_and_what_bridges_enters(liquid, defoamer, interface):
    # N. D. Denkov, Langmuir 20 (2004) 9463
    tensions = (liquid, defoamer, interface)
    if bubbles.spreading(*tensions) > 0.0:
        assert bubbles.bridging(*tensions) > 0.0
    if bubbles.bridging(*tensions) > 0.0:
        assert bubbles.entering(*tensions) > 0.0


@UNHURRIED
@given(st.floats(-100.0, 100.0), st.floats(-100.0, 100.0), st.floats(0.1, 10.0))
def test_small_is_good_where_large_is_bad(y, low, weight):
    mirrored = desirability.larger(-y, -low - 10.0, -low, weight=weight)
    assert desirability.smaller(y, low, low + 10.0, weight=weight) == pytest.approx(mirrored, abs=1e-9)


@UNHURRIED
@given(st.lists(st.floats(0.0, 1.0), min_size=1, max_size=6))
def test_the_mark_lies_between_the_worst_and_the_best_part(parts):
    mark = desirability.overall(parts)
    assert min(parts) * (1 - 1e-9) <= mark <= max(parts) * (1 + 1e-9)


@UNHURRIED
@given(st.lists(st.sampled_from(sorted(STATEMENTS)), max_size=8), st.sampled_from(sorted(STATEMENTS)))
def test_another_statement_never_softens_the_signal_word(codes, more):
    rank = {None: 0, "Warning": 1, "Danger": 2}
    assert rank[hazards.label([*codes, more]).signal_word] >= rank[hazards.label(codes).signal_word]


@UNHURRIED
@given(st.lists(st.sampled_from(sorted(STATEMENTS)), max_size=8))
def test_no_exclamation_mark_beside_a_skull(codes):
    pictograms = hazards.label(codes).pictograms
    assert not {"GHS06", "GHS07"} <= set(pictograms)
    assert list(pictograms) == sorted(set(pictograms))
