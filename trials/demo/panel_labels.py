"""Codes of panels as the laboratory would draw them by lot, the same each time."""

from collections.abc import Iterator
from itertools import product

from trials.operations.panel_codes import FIGURES, LETTERS

from .chance import chance


def labels() -> Iterator[str]:
    """Every code of three signs with letters and figures in it, shuffled."""
    every = ["".join(signs) for signs in product(LETTERS + FIGURES, repeat=3)]
    mixed = [code for code in every if set(code) & set(LETTERS) and set(code) & set(FIGURES)]
    chance("labels").shuffle(mixed)
    return iter(mixed)
