"""The calendar of the demonstration: every day is so many days before the one that it ends on."""

from dataclasses import dataclass
from datetime import date, datetime, time, timedelta

from django.utils import timezone

SATURDAY = 5


@dataclass(frozen=True, slots=True)
class Days:
    """Counts back from ``until``; a number below 0 lies ahead of it."""

    until: date

    def day(self, ago: int) -> date:
        return self.until - timedelta(days=ago)

    def workday(self, ago: int) -> date:
        """That day, or the Friday before it: nobody works at the weekend."""
        day = self.day(ago)
        return day - timedelta(days=max(0, day.weekday() - SATURDAY + 1))

    def at(self, ago: int, clock: str) -> datetime:
        """A moment of a working day, at the laboratory's own time: ``at(30, "09:40")``."""
        return timezone.make_aware(datetime.combine(self.workday(ago), time.fromisoformat(clock)))
