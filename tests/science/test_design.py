import pytest

from trials.science.design import Cup, detectable_difference, power, run_order, trials_per_arm

CUPS = [
    Cup("1", part="treated", dosage_pct=0.5, silicone=True),
    Cup("2", part="blank"),
    Cup("3", part="treated", dosage_pct=0.1, silicone=True),
    Cup("4", part="clean check"),
    Cup("5", part="incumbent", dosage_pct=0.3),
    Cup("6", part="blank"),
    Cup("7", part="treated", dosage_pct=0.8),
    Cup("8", part="vacuum reference"),
]


def codes(cups):
    return "".join(cup.code for cup in cups)


def test_cups_and_detectable_difference_are_each_others_inverse():
    n = trials_per_arm(1.2, 0.8, arms=5, side="less")
    assert detectable_difference(n, 0.8, arms=5, side="less") == pytest.approx(1.2, rel=1e-6)
    assert power(n, 1.2, 0.8, arms=5, side="less") == pytest.approx(0.8, abs=1e-7)


def test_more_arms_need_more_cups_and_one_side_needs_fewer():
    assert trials_per_arm(1, 1, arms=6) > trials_per_arm(1, 1) > trials_per_arm(1, 1, side="less")


def test_two_cups_are_the_least():
    assert trials_per_arm(1000, 1) == 2.0


def test_the_same_seed_gives_the_same_order():
    assert run_order(CUPS, 417) == run_order(CUPS, 417)
    assert len({codes(run_order(CUPS, seed)) for seed in range(50)}) > 40


def test_the_draw_outlives_its_program():
    # The seed is kept with the series: in every later version too, the order is that of the SHA-256 of "417/0",
    # "417/1" and so on, as the shell's sha256sum gives it.
    assert codes(run_order(CUPS, 417)) == "73625841"


def test_each_place_is_equally_likely():
    # 800 draws of eight cups: 100 expected at each place, ±5 standard deviations of a binomial count is ±47.
    first = [run_order(CUPS, seed)[0].code for seed in range(800)]
    assert all(abs(first.count(cup.code) - 100) < 47 for cup in CUPS)


def test_blanks_first_then_dosage_ascending_and_the_clean_check_last():
    order = run_order(CUPS, 417, rule="blanks first, dosage ascending")
    assert set(codes(order[:3])) == {"2", "6", "8"}
    assert codes(order[3:]) == "35174"


def test_silicone_free_before_silicone():
    order = run_order(CUPS, 417, rule="silicone-free before silicone")
    assert set(codes(order[:5])) == {"2", "5", "6", "7", "8"}
    assert set(codes(order[5:7])) == {"1", "3"}
    assert order[7].code == "4"


def test_all_three_wishes_together():
    order = run_order(CUPS, 417, rule="blanks first, silicone-free before silicone, dosage ascending")
    assert set(codes(order[:3])) == {"2", "6", "8"}
    assert codes(order[3:]) == "57314"


@pytest.mark.parametrize(
    ("call", "words"),
    [
        (lambda: trials_per_arm(0, 1), "difference.*0"),
        (lambda: trials_per_arm(1, 0), "standard_deviation.*0"),
        (lambda: trials_per_arm(1, 1, arms=0), "arms.*0"),
        (lambda: trials_per_arm(1, 1, power=80), "power.*80"),
        (lambda: trials_per_arm(1, 1, alpha=0), "alpha.*0"),
        (lambda: trials_per_arm(1, 1, side="up"), "side.*'up'"),
        (lambda: trials_per_arm(1e-4, 1), "difference is too small.*0.0001"),
        (lambda: detectable_difference(1, 1), "n must be between.*1"),
        (lambda: run_order(CUPS, 417, rule="by weight"), "rule.*'by weight'"),
        (lambda: run_order(CUPS, 0.5), "seed.*0.5"),
        (
            lambda: run_order([Cup("1", dosage_pct=-1)], 1, rule="blanks first, dosage ascending"),
            r"trials\[0\].dosage_pct.*-1",
        ),
    ],
)
def test_refusals_name_what_they_refuse(call, words):
    with pytest.raises(ValueError, match=words):
        call()


@pytest.mark.parametrize("arms", [101, 10**9])
def test_more_arms_than_a_plan_has_are_refused(arms):
    with pytest.raises(ValueError, match=f"arms must be at most 100; got {arms}"):
        trials_per_arm(1.0, 1.0, arms=arms)
