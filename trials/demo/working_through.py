"""Every series from plan to conclusion, as far as its days have come."""

from collections.abc import Callable, Collection

from .at_the_bench import make_cups, read_cups
from .concluding import conclude
from .laboratory import Laboratory
from .on_the_panel import apply_and_read
from .planning import plan
from .rounds import ROUNDS


def work_through(series: Collection[str] = ()) -> Callable[[Laboratory], str]:
    """The part that makes the series: those of these keys, or all.

    Raises
    ------
    ValueError
        For a key that no series has.
    """
    rows = [row for row in ROUNDS if not series or row.key in series]
    unknown = sorted(set(series) - {row.key for row in ROUNDS})
    if unknown:
        raise ValueError(f"There is no series {', '.join(unknown)}; there are {', '.join(row.key for row in ROUNDS)}")

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
