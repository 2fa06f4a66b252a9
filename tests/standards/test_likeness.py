"""Likeness: J. C. Gower, Biometrics 27 (1971) 857, held to SciPy's distances where it has them."""

import numpy as np
import pytest
from scipy.spatial.distance import cityblock, hamming

from trials.science.likeness import nearest

NUMBERS = {"K1": (1.10, 65.0), "K2": (1.45, 100.0), "K3": (1.30, 82.0)}
WORDS = {
    "K1": ("epoxy", "clear", "floor"),
    "K2": ("polyurethane", "clear", "floor"),
    "K3": ("epoxy", "filled", "tank"),
}


def test_numbers_are_a_city_block_over_the_ranges():
    names = ("density_g_ml", "volume_solids_pct")
    bases = {key: dict(zip(names, values, strict=True)) for key, values in NUMBERS.items()}
    asked = {"density_g_ml": 1.20, "volume_solids_pct": 90.0}
    table = np.array([*NUMBERS.values(), tuple(asked.values())])
    scaled = (table - table.min(axis=0)) / np.ptp(table, axis=0)
    expected = {key: cityblock(scaled[i], scaled[-1], w=[0.25, 0.75]) for i, key in enumerate(NUMBERS)}
    found = nearest(bases, asked, weights={"density_g_ml": 1.0, "volume_solids_pct": 3.0})
    assert {one.base: one.distance for one in found} == pytest.approx(expected)
    assert [one.base for one in found] == sorted(expected, key=expected.get)


def test_words_are_a_hamming_distance():
    names = ("binder", "look", "use")
    bases = {key: dict(zip(names, values, strict=True)) for key, values in WORDS.items()}
    asked = {"binder": "epoxy", "look": "clear", "use": "tank"}
    found = nearest(bases, asked, weights={"binder": 2.0, "look": 1.0, "use": 1.0})
    expected = {key: hamming(values, tuple(asked.values()), w=[2.0, 1.0, 1.0]) for key, values in WORDS.items()}
    assert {one.base: one.distance for one in found} == pytest.approx(expected)
