"""Chance that falls the same way each time: every draw has a name, and the name decides it."""

import hashlib
import math
from random import Random


def chance(*name: object) -> Random:
    """A source of its own for what is named, so that one cup more changes nothing for the others."""
    digest = hashlib.sha256("/".join(map(str, name)).encode()).digest()
    return Random(int.from_bytes(digest[:8], "big"))  # noqa: S311 - a demonstration, nothing secret


def scatter(relative_sd: float, *name: object) -> float:
    """A factor around 1, log-normal: cups of one kind differ by so much, and never fall below nought."""
    return math.exp(chance(*name).gauss(0, relative_sd) - relative_sd**2 / 2)
