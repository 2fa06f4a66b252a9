"""A printed number stands for itself give or take one in its last digit."""

from decimal import Decimal

import pytest


def printed(number: str):
    """`pytest.approx` for a number as it stands on paper: "52.590" means 52.589 to 52.591."""
    step = Decimal(1).scaleb(Decimal(number).as_tuple().exponent)
    return pytest.approx(float(number), rel=0, abs=float(step) * (1 + 1e-9))
