"""Fill an empty notebook with an invented laboratory, through the operations that everybody uses."""

import time
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


def parts(series: int | None):
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


def fill(*, until: date, say=print, series: int | None = None) -> Laboratory:
    """Two years that end on ``until``; the same records each time. All of it or nothing.

    Parameters
    ----------
    series
        Only so many of the series: the oldest, and the newest one. Everything else is the same.

    Raises
    ------
    trials.operations.acting.Refused
        If the notebook has people already.
    """
    laboratory = Laboratory(Days(until))
    with transaction.atomic():
        for part in parts(series):
            started = time.monotonic()
            did = part(laboratory)
            say(f"{did} ({time.monotonic() - started:.1f} s).")
    return laboratory
