"""Hazards: the open UN system (GHS) as Regulation (EC) No 1272/2008 applies it, and REACH annex XVII entry 74."""

from datetime import date

import pytest

from trials.science import hazards


@pytest.mark.parametrize(
    ("statements", "pictograms", "signal_word"),
    [
        # sets as printed on public safety data sheets; precedence by article 26
        ("H315 H319 H317 H411", ("GHS07", "GHS09"), "Warning"),  # bisphenol A epoxy resin, CAS 25068-38-6
        ("H302 H312 H314 H317 H412", ("GHS05", "GHS07"), "Danger"),  # isophorone diamine
        ("H332 H315 H319 H334 H317 H335 H351 H373", ("GHS07", "GHS08"), "Danger"),  # MDI type
        ("H334 H317 H315 H319", ("GHS08",), "Danger"),
        ("H315 H319 H317 H412", ("GHS07",), "Warning"),  # hexanediol diglycidyl ether
        ("H302 H312 H314 H318 H317 H412 H290", ("GHS05", "GHS07"), "Danger"),  # isophorone diamine, in full
        ("H314 H318 H317 H290", ("GHS05", "GHS07"), "Danger"),  # 1,2-diaminocyclohexane, gischem.de
        ("H332 H317 H335", ("GHS07",), "Warning"),  # aliphatic polyisocyanate oligomer
        ("H331 H335 H315 H319 H334 H317 H411", ("GHS06", "GHS08", "GHS09"), "Danger"),  # isophorone diisocyanate
        # from memory
        ("H226 H312 H332 H315", ("GHS02", "GHS07"), "Warning"),  # xylene
        ("H226 H312 H332 H315 H304 H373", ("GHS02", "GHS07", "GHS08"), "Danger"),  # xylene, newer lists
        ("H226 H336 EUH066", ("GHS02", "GHS07"), "Warning"),  # butyl acetate
        ("H302 H332 H319", ("GHS07",), "Warning"),  # benzyl alcohol
    ],
)
def test_label_of_common_raw_materials(statements, pictograms, signal_word):
    assert hazards.label(statements.split()) == hazards.Label(pictograms, signal_word)


@pytest.mark.parametrize(
    ("codes", "word"),
    [("H334 H314", "Danger"), ("H317 H315 H319", "Warning")],  # regulation, annex I, tables 3.2.5, 3.3.5 and 3.4.7
)
def test_signal_words(codes, word):
    for code in codes.split():
        assert hazards.label([code]).signal_word == word


@pytest.mark.parametrize(
    ("codes", "pictogram"),
    [
        # annex V, from memory
        ("H314 H318 H290", "GHS05"),
        ("H302 H312 H332 H315 H319 H317 H335 H336", "GHS07"),
        ("H334 H351 H373 H304", "GHS08"),
        ("H330 H331", "GHS06"),
        ("H400 H410 H411", "GHS09"),
        ("H225 H226", "GHS02"),
    ],
)
def test_pictograms(codes, pictogram):
    for code in codes.split():
        assert hazards.label([code]).pictograms == (pictogram,)


def test_no_pictogram_for_the_lesser_aquatic_hazard():
    assert hazards.label(["H412"]) == hazards.Label((), None)


@pytest.mark.parametrize(
    ("percentages", "needed"),
    [
        # REACH annex XVII entry 74, Regulation (EU) 2020/1149: below 0.1 % "individually and in combination"
        ([0.09], False),
        ([0.10], True),
        ({"HDI": 0.06, "IPDI": 0.05}, True),
        ([0.06, 0.04], True),
        (["0.07", "0.02", "0.01"], True),
        ([], False),
    ],
)
def test_training_for_diisocyanates(percentages, needed):
    assert hazards.diisocyanate_training_needed(percentages) is needed


def test_training_expires_after_five_years():
    # same entry: renewal at least every five years
    assert not hazards.training_valid(date(2021, 5, 3), date(2026, 5, 4))
    assert hazards.training_valid(date(2021, 5, 3), date(2026, 5, 3))
