"""How long a lot or a paper still holds, in words."""

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date

from .today import NOTICE_DAYS


@dataclass(frozen=True, slots=True)
class Standing:
    """``urgent``: it has expired or will within the notice."""

    words: str
    urgent: bool


def standing(expires: date | None, today: date) -> Standing:
    if expires is None:
        return Standing("no end stated", urgent=False)
    days = (expires - today).days
    if days < 0:
        return Standing(f"expired {_days(-days)} ago", urgent=True)
    if days == 0:
        return Standing("expires today", urgent=True)
    if days <= NOTICE_DAYS:
        return Standing(f"expires in {_days(days)}", urgent=True)
    return Standing(f"until {expires.day} {expires:%b %Y}", urgent=False)


def in_all(ends: Iterable[date | None], today: date) -> Standing:
    """Several at once: how many there are, and how many of them are urgent."""
    ends = list(ends)
    expired = sum(end is not None and end < today for end in ends)
    soon = sum(end is not None and 0 <= (end - today).days <= NOTICE_DAYS for end in ends)
    if not ends:
        return Standing("none", urgent=False)
    if len(ends) == 1:
        said = ["expired"] * expired + [f"within {NOTICE_DAYS} days"] * soon
    else:
        said = [f"{expired} expired"] * bool(expired) + [f"{soon} within {NOTICE_DAYS} days"] * bool(soon)
    return Standing(f"{len(ends)}: {', '.join(said)}" if said else str(len(ends)), urgent=bool(said))


def _days(count: int) -> str:
    return "1 day" if count == 1 else f"{count} days"
