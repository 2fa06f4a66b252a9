import re
from datetime import UTC, date, datetime
from decimal import Decimal

import pytest

from trials.science import hazards
from trials.science.hazard_statements import STATEMENTS


@pytest.mark.parametrize("code", ["H999", "h317", "", "H360fd", "317", None, 317])
def test_unknown_codes_are_refused_by_value(code):
    with pytest.raises(ValueError, match=re.escape(f"got {code!r}")):
        hazards.label([code])
    with pytest.raises(ValueError, match=re.escape(f"got {code!r}")):
        hazards.statement(code)


def test_nothing_to_label():
    assert hazards.label([]) == hazards.Label((), None)


def test_combined_codes_are_taken_apart():
    assert hazards.label(["H302+H312 + H332"]) == hazards.label(["H302", "H312", "H332"])


def test_order_and_repetition_do_not_matter():
    codes = ["H317", "H411", "H315", "H319", "H317"]
    assert hazards.label(codes) == hazards.label(reversed(codes))


def test_the_skull_leaves_no_exclamation_mark():
    assert hazards.label(["H301", "H317", "H335", "H315"]).pictograms == ("GHS06",)


def test_corrosion_replaces_the_mark_for_irritation_only():
    assert hazards.label(["H314", "H315", "H319"]).pictograms == ("GHS05",)
    assert hazards.label(["H314", "H335"]).pictograms == ("GHS05", "GHS07")


def test_a_health_hazard_other_than_sensitised_airways_replaces_nothing():
    assert hazards.label(["H351", "H317"]).pictograms == ("GHS07", "GHS08")


def test_every_statement_has_sound_entries():
    for code, entry in STATEMENTS.items():
        assert re.fullmatch(r"(H[234]\d\d[iFfDd]{0,2}|EUH\d{3})", code)
        assert entry.wording
        assert not entry.wording.endswith(".")
        assert entry.pictogram is None or re.fullmatch("GHS0[1-9]", entry.pictogram)
        assert entry.signal_word in {None, "Danger", "Warning"}
        assert not (code.startswith("EUH") and entry.pictogram)


@pytest.mark.parametrize(
    ("percentages", "message"),
    [
        ([-0.1], r"percentages\[0\] .*got -0.1"),
        ([0.1, 101], r"percentages\[1\] .*got 101"),
        (["x"], r"percentages\[0\] must be a number; got 'x'"),
        ([None], r"percentages\[0\] .*None"),
        ([float("nan")], r"percentages\[0\] .*nan"),
        ([60, 60], r"percentages .*got 120"),
    ],
)
def test_impossible_percentages(percentages, message):
    with pytest.raises(ValueError, match=message):
        hazards.diisocyanate_training_needed(percentages)


def test_a_mix_of_which_one_part_holds_none():
    assert not hazards.diisocyanate_training_needed([0, 0.05])
    assert hazards.diisocyanate_training_needed([0, 100])


def test_percentages_are_summed_as_decimals():
    assert sum([0.01] * 10) < 0.1
    assert hazards.diisocyanate_training_needed([0.01] * 10)
    assert not hazards.diisocyanate_training_needed([Decimal("0.0999999999")])


def test_training_in_the_future_does_not_count():
    assert not hazards.training_valid(date(2026, 1, 2), date(2026, 1, 1))
    assert hazards.training_valid(date(2026, 1, 2), date(2026, 1, 2))


def test_training_on_a_leap_day():
    assert hazards.training_valid(date(2024, 2, 29), date(2029, 2, 28))
    assert not hazards.training_valid(date(2024, 2, 29), date(2029, 3, 1))


def test_times_of_day_are_taken_as_days():
    assert hazards.training_valid(datetime(2021, 5, 3, 17, tzinfo=UTC), date(2026, 5, 3))


@pytest.mark.parametrize("day", [None, "2021-05-03", 2021])
def test_what_is_no_date(day):
    with pytest.raises(ValueError, match=re.escape(f"trained_on must be a date; got {day!r}")):
        hazards.training_valid(day, date(2026, 1, 1))
