"""Every series from plan to conclusion, as far as its days have come."""

from collections.abc import Callable

from .at_the_bench import make_cups, read_cups
from .concluding import conclude
from .laboratory import Laboratory
from .on_the_panel import apply_and_read
from .planning import plan
from .rounds import ROUNDS


def work_through(series: int | None = None) -> Callable[[Laboratory], str]:
    """The part that makes the series: all of them, or the first so many and the newest one."""
    rows = ROUNDS if series is None else (*ROUNDS[: series - 1], ROUNDS[-1])

    def work_through_rounds(laboratory: Laboratory) -> str:
        for row in rows:
            worked = laboratory.worked[row.key] = plan(laboratory, row)
            if laboratory.days.happened(laboratory.days.moment(worked.day, "12:30")):
                make_cups(laboratory, row, worked)
                read_cups(laboratory, row, worked)
                apply_and_read(laboratory, row, worked)
                conclude(laboratory, row, worked)
        cups = sum(len(worked.trials) for worked in laboratory.worked.values())
        return f"{len(rows)} series with {cups} cups"

    return work_through_rounds
