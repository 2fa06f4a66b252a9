"""Old series are signed by who did them and by another; of some a value a month later came as an amendment."""

from datetime import datetime

from trials.models.signing import Meaning
from trials.operations.reading import rate
from trials.operations.signing import amending, sign

from .concluding import concluded_at
from .imagined import imagine
from .laboratory import Laboratory, Worked
from .on_the_panel import rating
from .readers import MONTH, readings
from .round_rows import AMENDED, RoundRow
from .rounds import ROUNDS

COUNTERSIGNED_BEFORE = 60
# Signed by one only: nobody has found the time to look at them again.
ONCE = ("bb-3", "ec-9")
SUPERVISORS = ("maren", "caspar")
REASON = "Hardness after 28 d, as planned; nothing else was changed."


def sign_off(laboratory: Laboratory) -> str:
    """In the order in which people came to sign, which is that of the chain."""
    turns = []
    for row in ROUNDS:
        worked = laboratory.worked.get(row.key)
        if worked and worked.series.pk in laboratory.concluded:
            turns += _turns(laboratory, row, worked)
    turns.sort(key=lambda turn: turn[0])
    for at, write in turns:
        write(at)
    return f"{len(turns)} signatures"


def _turns(laboratory: Laboratory, row: RoundRow, worked: Worked):
    at, days = concluded_at(laboratory, row, worked), laboratory.days
    owner, other = laboratory.people[row.owner], laboratory.people[_other(row)]
    moments = [(days.moment(at.date(), "16:20"), _signing(worked, owner, Meaning.PERFORMED))]
    if row.ago >= COUNTERSIGNED_BEFORE and row.key not in ONCE:
        later = days.before(days.moment(at.date(), "09:10", hours=24 * 4).date())
        moments.append((days.moment(later, "09:10"), _signing(worked, other, Meaning.COUNTERSIGNED)))
    if AMENDED in row.twists:
        moments.append((days.moment(worked.day, "14:00", hours=float(MONTH)), _amending(laboratory, row, worked)))
    return [turn for turn in moments if days.happened(turn[0])]


def _other(row: RoundRow) -> str:
    """Whoever countersigns must be allowed to see it."""
    if row.base == "EM-52":
        return "ruth" if row.owner == "caspar" else "caspar"
    return next(name for name in (SUPERVISORS[row.ago % 2], *SUPERVISORS) if name != row.owner)


def _signing(worked: Worked, person, meaning: Meaning):
    def write(at: datetime) -> None:
        sign(actor=person, now=at, record=worked.series, meaning=meaning)

    return write


def _amending(laboratory: Laboratory, row: RoundRow, worked: Worked):
    reader = laboratory.people[row.seen_by[0]]

    def write(at: datetime) -> None:
        ratings = [
            rating(laboratory, worked, cup, panel, one, at=at)
            for cup in imagine(row)
            for panel in cup.panels
            for one in readings(cup, panel)
            if one.age_h == MONTH and not cup.topped_up
        ]
        with amending(actor=reader, now=at, record=worked.series, reason=REASON):
            rate(actor=reader, now=at, ratings=ratings)

    return write
