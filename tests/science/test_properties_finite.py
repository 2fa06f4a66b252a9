"""Whatever number comes in: a finite answer comes out, or a ValueError that names an argument and its value."""

import dataclasses
import inspect
import math
from decimal import Decimal

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from trials.science import (
    air,
    bubbles,
    composition,
    cure,
    desirability,
    dosage,
    emissions,
    ratings,
    shear,
    stoichiometry,
)

UNHURRIED = settings(deadline=None)  # the machine is shared, and time is not what is tested
SCALARS = [
    *(dosage.additive_g, dosage.dosage_pct, dosage.top_up_g, dosage.restate_pct, dosage.pct_from_ppm),
    *(dosage.pct_in_component, dosage.dilution, dosage.half_step_pct, dosage.partner_g),
    *(composition.voc_by_difference_g_l, composition.voc_less_water_kg_l, composition.volume_ratio),
    *(composition.pigment_volume_concentration_pct, composition.wet_film_um, composition.spreading_rate_m2_l),
    *(composition.consumption_g_m2, composition.cost_in_use),
    *(stoichiometry.equivalent_from_nco_pct, stoichiometry.equivalent_from_hydroxyl_value),
    *(stoichiometry.equivalent_from_amine_value, stoichiometry.hardener_g, stoichiometry.index),
    *(stoichiometry.shift_pct, stoichiometry.epoxide_mol_kg, stoichiometry.epoxide_pct),
    *(stoichiometry.oxirane_oxygen_pct, stoichiometry.carbon_dioxide_ml),
    *(shear.tip_speed_m_s, shear.rpm_for_tip_speed, shear.scale_up_rpm, shear.blade_ratio, shear.usual_blade),
    *(shear.reynolds, shear.power, shear.specific_energy_kj_kg, shear.gap_shear_rate_s, shear.metzner_otto_s),
    *(air.air_pct, air.air_pct_uncertainty, air.density_at_air_g_ml, air.defoaming_efficiency_pct),
    *(air.retention_pct, air.pyknometer_ml, air.pyknometer_density_g_ml, air.water_g_ml),
    *(bubbles.stokes_m_s, bubbles.rise_m_s, bubbles.risen_um, bubbles.growth_from_doubling_s),
    *(bubbles.escape, bubbles.smallest_escaping_um, bubbles.held_by_yield_um, bubbles.laplace_pa),
    *(bubbles.entering, bubbles.spreading, bubbles.bridging, cure.pot_life_min, cure.adiabatic_rise_k),
    *(ratings.size_class, ratings.gloss_angle, ratings.cross_cut_spacing_mm, ratings.cross_cut_class),
    *(emissions.room_concentration_ug_m3, desirability.larger, desirability.smaller, desirability.target),
]
COLUMNS = [
    *(composition.mixture_density_g_ml, composition.mixture_non_volatile_pct, composition.volume_solids_pct),
    *(composition.mixture_voc_g_l, stoichiometry.equivalent_of_blend, air.release, emissions.risk_index),
    desirability.overall,
]
WORDS = {"counting": dosage.COUNTINGS, "rule": shear.SCALE_UP_RULES}
FLAGS = {"clean", "soft", "additive_counts"}
MAY_BE_INF = {bubbles.growth_from_doubling_s, stoichiometry.equivalent_of_blend}

ordinary = st.floats(1e-3, 100.0)
wild = st.one_of(
    st.floats(),
    st.sampled_from([0.0, -0.0, 5e-324, 1e-308, 1e308, math.inf, -math.inf, math.nan]),
    st.integers(-(10**6), 10**6),
    st.decimals(allow_nan=False, allow_infinity=False, min_value=-1000, max_value=1000, places=3),
)
number = st.one_of(ordinary, wild)


def arguments(function, value):
    drawn = {}
    for name, parameter in inspect.signature(function).parameters.items():
        if name in WORDS:
            drawn[name] = st.sampled_from(WORDS[name])
        elif name in FLAGS:
            drawn[name] = st.booleans()
        elif name not in {"limits_mm", "weights"}:
            drawn[name] = (
                value if parameter.default is inspect.Parameter.empty else st.just(parameter.default) | value
            )
    return st.fixed_dictionaries(drawn)


def numbers_in(answer):
    if dataclasses.is_dataclass(answer):
        return [part for field in dataclasses.fields(answer) for part in numbers_in(getattr(answer, field.name))]
    return [] if answer is None or isinstance(answer, str) else [answer]


def values_in(argument):
    parts = list(argument) if isinstance(argument, list) else [argument]
    return {str(part) for part in parts} | {str(float(part)) for part in parts if isinstance(part, (int, Decimal))}


def call(function, given_arguments):
    positional, named = [], {}
    for name, parameter in inspect.signature(function).parameters.items():
        if name in given_arguments:
            if parameter.kind is inspect.Parameter.KEYWORD_ONLY:
                named[name] = given_arguments[name]
            else:
                positional.append(given_arguments[name])
    return function(*positional, **named)


def check(function, given_arguments):
    try:
        answer = call(function, given_arguments)
    except ValueError as refusal:
        message = str(refusal)
        assert any(
            name in message and (any(value in message for value in values_in(argument)) or "equally long" in message)
            for name, argument in given_arguments.items()
        ), message
        return
    for part in numbers_in(answer):
        allowed_inf = function in MAY_BE_INF and part == math.inf
        assert math.isfinite(part) or allowed_inf, (function.__name__, given_arguments, answer)


@pytest.mark.parametrize("function", SCALARS, ids=lambda function: function.__name__)
@UNHURRIED
@given(data=st.data())
def test_scalars(function, data):
    check(function, data.draw(arguments(function, number)))


@pytest.mark.parametrize("function", COLUMNS, ids=lambda function: function.__name__)
@UNHURRIED
@given(data=st.data())
def test_columns(function, data):
    size = data.draw(st.integers(2, 4))
    columns = st.lists(number, min_size=size, max_size=size)
    names = [name for name in inspect.signature(function).parameters if name not in {"weights", "smallest_ug_m3"}]
    check(function, data.draw(st.fixed_dictionaries(dict.fromkeys(names, columns))))


def reached(start_pct, rate_per_min, air_pct):
    return air.minutes_to(air.Release(start_pct, rate_per_min, None, None), air_pct)


@UNHURRIED
@given(start=st.floats(0.0, exclude_min=True, allow_infinity=False), rate=st.floats(-1e300, 1e300), target=number)
def test_minutes_to(start, rate, target):
    # any release that `release` itself can give
    check(reached, {"start_pct": start, "rate_per_min": rate, "air_pct": target})
