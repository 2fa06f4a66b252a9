"""Any finite numbers give finite answers, a None that is explained, or a refusal that names what it refuses."""

import dataclasses
import inspect
import math

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from trials.science import (
    agreement,
    comparison,
    control_chart,
    design,
    dose_response,
    evidence,
    precision,
    steps,
)

FEW = settings(max_examples=60, deadline=None, suppress_health_check=[HealthCheck.too_slow])
ANY = st.floats(allow_nan=False, allow_infinity=False)
LAB = st.floats(-100, 100).map(lambda value: round(value, 1))
NUMBER = st.one_of(LAB, ANY, st.sampled_from([0.0, 1.0, 5e-324, 1e-160, 1e99, -1e99, 1e308]))
CUPS = st.lists(NUMBER, min_size=1, max_size=5)
LADDERS = st.dictionaries(st.floats(0.001, 5), CUPS, min_size=1, max_size=4)
SIDES = st.sampled_from(["two-sided", "less", "greater"])
GRADES = st.lists(st.sampled_from([0, 0.5, 1, 1.5, 2, 3, 4.5, 5]), min_size=1, max_size=6)


def check(answer, explained=False):
    """Fails for nan, infinity, and a None in a result without a word of why."""
    if isinstance(answer, tuple):
        for part in answer:
            check(part, explained)
    elif dataclasses.is_dataclass(answer):
        words = getattr(answer, "note", "") or getattr(answer, "reason", "")
        for field in dataclasses.fields(answer):
            check(getattr(answer, field.name), explained=bool(words))
    elif answer is None:
        assert explained
    elif isinstance(answer, float):
        assert math.isfinite(answer)


def ask(function, *arguments, none_is_an_answer=False, **options):
    """The answer, held to the rule; None where the function refused by naming one of its arguments."""
    try:
        answer = function(*arguments, **options)
    except ValueError as caught:
        refusal = str(caught)
    else:
        refusal = ""
    if refusal:
        assert any(name in refusal for name in inspect.signature(function).parameters), refusal
        assert "got" in refusal or "no finite answer for" in refusal, refusal
        return None
    check(answer, explained=none_is_an_answer)
    return answer


@FEW
@given(CUPS, st.lists(CUPS, min_size=1, max_size=4), SIDES)
def test_against_control(control, treatments, side):
    found = ask(comparison.against_control, control, treatments, side=side)
    for one in found or ():
        assert one.p is None or 0.0 <= one.p <= 1.0
        assert one.low is None or one.low <= one.estimate
        assert one.high is None or one.high >= one.estimate


@FEW
@given(GRADES, st.lists(GRADES, min_size=1, max_size=3), SIDES)
def test_ordinal_against_control(control, treatments, side):
    found = ask(comparison.ordinal_against_control, control, treatments, side=side, steps=range(6))
    for one in found or ():
        assert one.smallest_p <= one.p * (1 + 1e-9)
        assert one.p <= one.p_adjusted <= 1.0
        assert 0.0 <= one.superiority <= 1.0


@FEW
@given(st.lists(CUPS, min_size=2, max_size=4), SIDES)
def test_trend(groups, side):
    ask(comparison.trend, groups, side=side)


@settings(FEW, max_examples=25)
@given(st.lists(CUPS, min_size=2, max_size=3))
def test_pairwise(groups):
    ask(comparison.pairwise, groups)


@FEW
@given(st.one_of(st.integers(-3, 10**9), ANY), NUMBER)
def test_upper_bound_per_dm2(count, area_dm2):
    bound = ask(comparison.upper_bound_per_dm2, count, area_dm2)
    assert bound is None or bound * area_dm2 > count


@FEW
@given(st.lists(st.tuples(st.one_of(st.sampled_from([0, 0.1, 0.2, 0.3, 0.5]), ANY), NUMBER), min_size=1, max_size=12))
def test_curve_and_what_is_read_from_it(cups):
    dosage, response = zip(*cups, strict=True)
    found = ask(dose_response.fit, dosage, response)
    if found is not None:
        ask(dose_response.dosage_for, found, 50)
        ask(dose_response.lack_of_fit_of, found)


@FEW
@given(st.lists(st.tuples(NUMBER, NUMBER), min_size=1, max_size=10))
def test_lack_of_fit(points):
    ask(dose_response.lack_of_fit, *zip(*points, strict=True))


@FEW
@given(CUPS, LADDERS, SIDES, st.sampled_from(["step down", "no worse than best", "target"]), st.none() | NUMBER)
def test_lowest_effective(control, ladder, side, rule, worthwhile):
    found = ask(
        dose_response.lowest_effective,
        control,
        ladder,
        side=side,
        rule=rule,
        target_change_pct=30,
        worthwhile=worthwhile,
    )
    assert found is None or found.dosage_pct is None or found.dosage_pct in ladder


@FEW
@given(LADDERS, st.none() | CUPS, st.sampled_from(["less", "greater"]), NUMBER)
def test_over_dosing_onset_and_window(ladder, control, side, worthwhile):
    onset = ask(dose_response.over_dosing_onset, ladder, side=side, worthwhile=worthwhile, control=control)
    if onset is not None:
        lowest = dose_response.Lowest(min(ladder), "step down", "for the test")
        found = ask(dose_response.window, lowest, onset, tested_pct=list(ladder))
        if found.from_pct is not None:
            assert found.from_pct <= found.working_pct <= found.to_pct


@FEW
@given(
    st.lists(st.tuples(st.none() | st.integers(0, 5), st.none() | st.integers(0, 5)), min_size=1, max_size=12),
    st.sampled_from(["quadratic", "linear", None]),
)
def test_weighted_kappa(pairs, weights):
    found = ask(agreement.weighted_kappa, *zip(*pairs, strict=True), grades=range(6), weights=weights)
    assert found.value is None or -1.0 - 1e-9 <= found.value <= 1.0


@FEW
@given(
    st.integers(1, 4).flatmap(
        lambda units: st.lists(st.lists(st.none() | NUMBER, min_size=units, max_size=units), min_size=1, max_size=4)
    ),
    st.sampled_from(["nominal", "ordinal", "interval", "ratio"]),
)
def test_krippendorff_alpha(ratings, scale):
    found = ask(agreement.krippendorff_alpha, ratings, scale=scale, none_is_an_answer=True)
    assert found is None or found <= 1.0 + 1e-9


@FEW
@given(st.lists(st.lists(st.integers(0, 4), min_size=3, max_size=3), min_size=1, max_size=6))
def test_fleiss_kappa(table):
    ask(agreement.fleiss_kappa, table, none_is_an_answer=True)


@FEW
@given(
    st.integers(1, 4).flatmap(
        lambda readers: st.lists(st.lists(NUMBER, min_size=readers, max_size=readers), min_size=1, max_size=5)
    )
)
def test_intraclass(ratings):
    ask(agreement.intraclass, ratings)


@FEW
@given(st.lists(CUPS, min_size=1, max_size=5))
def test_precision_and_cochran(groups):
    ask(precision.precision, groups)
    ask(precision.cochran, groups)


@FEW
@given(st.lists(NUMBER, min_size=1, max_size=12))
def test_grubbs_and_individuals(values):
    ask(precision.grubbs, values)
    ask(control_chart.individuals, values)


@FEW
@given(st.lists(st.tuples(NUMBER, NUMBER), min_size=1, max_size=6))
def test_pool(series):
    found = ask(evidence.pool, *zip(*series, strict=True))
    assert found is None or found.low is None or found.low <= found.estimate <= found.high


@settings(FEW, max_examples=25)
@given(NUMBER, NUMBER, st.integers(1, 8), SIDES)
def test_design(difference, standard_deviation, arms, side):
    ask(design.trials_per_arm, difference, standard_deviation, arms=arms, side=side)
    ask(design.power, 3, difference, standard_deviation, arms=arms, side=side)
    ask(design.detectable_difference, 3, standard_deviation, arms=arms, side=side)


@FEW
@given(st.lists(st.none() | NUMBER, max_size=6), st.lists(NUMBER, max_size=6))
def test_describe(grades, given_steps):
    ask(steps.describe, grades, steps=given_steps)


@FEW
@given(st.lists(NUMBER, max_size=6), st.integers())
def test_run_order_loses_no_cup(dosages, seed):
    cups = [design.Cup(str(i), dosage_pct=dosage) for i, dosage in enumerate(dosages)]
    assert sorted(design.run_order(cups, seed), key=lambda cup: int(cup.code)) == cups
    ask(design.run_order, cups, seed, rule="blanks first, dosage ascending")


@pytest.mark.parametrize("bad", [math.nan, math.inf, -math.inf, "a lot", None])
@pytest.mark.parametrize(
    "call",
    [
        lambda bad: comparison.against_control([1.0, bad], [[2.0, 3.0]]),
        lambda bad: comparison.against_control([1.0, 2.0], [[2.0, bad]]),
        lambda bad: comparison.ordinal_against_control([1, bad], [[2, 3]], side="less", steps=range(6)),
        lambda bad: comparison.trend([[1.0, bad], [2.0]], side="less"),
        lambda bad: comparison.pairwise([[1.0, bad], [2.0, 3.0]]),
        lambda bad: comparison.upper_bound_per_dm2(bad, 1.0),
        lambda bad: comparison.upper_bound_per_dm2(1, bad),
        lambda bad: dose_response.fit([0, bad], [1.0, 2.0]),
        lambda bad: dose_response.fit([0, 1], [1.0, bad]),
        lambda bad: dose_response.lack_of_fit([0, 1, bad], [1.0, 2.0, 3.0]),
        lambda bad: dose_response.lowest_effective([1.0, bad], {0.1: [2.0]}, side="less"),
        lambda bad: dose_response.lowest_effective([1.0], {bad: [2.0]}, side="less"),
        lambda bad: dose_response.over_dosing_onset({0.1: [bad], 0.2: [1.0]}, side="less", worthwhile=1.0),
        lambda bad: dose_response.over_dosing_onset({0.1: [1.0], 0.2: [1.0]}, side="less", worthwhile=bad),
        lambda bad: agreement.intraclass([[1.0, bad], [2.0, 3.0]]),
        lambda bad: agreement.fleiss_kappa([[1, bad]]),
        lambda bad: precision.precision([[1.0, bad], [2.0]]),
        lambda bad: precision.grubbs([1.0, 2.0, bad]),
        lambda bad: precision.cochran([[1.0, bad], [2.0, 3.0]]),
        lambda bad: control_chart.individuals([1.0, bad]),
        lambda bad: evidence.pool([1.0, bad], [1.0, 1.0]),
        lambda bad: evidence.pool([1.0, 2.0], [1.0, bad]),
        lambda bad: design.trials_per_arm(bad, 1.0),
        lambda bad: design.trials_per_arm(1.0, bad),
        lambda bad: design.detectable_difference(bad, 1.0),
        lambda bad: design.run_order([], bad),
    ],
)
def test_what_is_no_finite_number_is_refused(call, bad):
    with pytest.raises(ValueError, match="got"):
        call(bad)
