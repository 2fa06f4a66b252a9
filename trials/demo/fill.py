"""Fill an empty notebook with an invented laboratory, through the operations that everybody uses."""

import time
from collections.abc import Collection
from datetime import date

from django.db import transaction

from .days import Days
from .enquiring import take_enquiries
from .laboratory import Laboratory
from .photographing import take_photographs
from .signing_off import sign_off
from .staff import say_goodbye, take_on
from .stock import stock_the_shelf
from .systems import set_up_bases
from .tools import set_up_bench
from .working_through import work_through


def parts(series: Collection[str] = ()):
    """In this order: each finds in the laboratory what those before it made, and says in a line what it did."""
    return (
        take_on,
        stock_the_shelf,
        set_up_bases,
        set_up_bench,
        take_enquiries,
        work_through(series),
        take_photographs,
        sign_off,
        say_goodbye,
    )


def fill(*, until: date, say=print, series: Collection[str] = ()) -> Laboratory:
    """Two years that end on ``until``; the same records each time. All of it or nothing.

    Parameters
    ----------
    series
        Keys of the series to make, for a quicker look; all of them unless given.

    Raises
    ------
    trials.operations.acting.Refused
        If the notebook has people already.
    ValueError
        For a key that no series has.
    """
    laboratory = Laboratory(Days(until))
    with transaction.atomic():
        for part in parts(series):
            started = time.monotonic()
            did = part(laboratory)
            say(f"{did} ({time.monotonic() - started:.1f} s).")
    return laboratory
