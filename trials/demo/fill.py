"""Fill an empty notebook with an invented laboratory, through the operations that everybody uses."""

from datetime import date

from django.db import transaction

from .days import Days
from .laboratory import Laboratory
from .staff import say_goodbye, take_on
from .stock import stock_the_shelf
from .systems import set_up_bases

# In this order: each part finds in the laboratory what the parts before it made, and says in a line what it did.
PARTS = (
    take_on,
    stock_the_shelf,
    set_up_bases,
    say_goodbye,
)


def fill(*, until: date, say=print) -> Laboratory:
    """Two years that end on ``until``; the same records each time. All of it or nothing.

    Raises
    ------
    trials.operations.acting.Refused
        If the notebook has people already.
    """
    laboratory = Laboratory(Days(until))
    with transaction.atomic():
        for part in PARTS:
            say(f"{part(laboratory)}.")
    return laboratory
