"""The calendar of the demonstration: every day is so many days before the one that it ends on."""

from dataclasses import dataclass
from datetime import date, datetime, time, timedelta

from django.utils import timezone

FRIDAY, SATURDAY = 4, 5
SO_FAR = "07:30"  # on the last day: what is later has not happened yet


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

    def bench_day(self, ago: int) -> date:
        """A working day that another one follows, so that films are read a day and a week later.

        What is not worked yet waits for the next such day.
        """
        if ago <= 0:
            ahead = (self.until + timedelta(days=step) for step in range(-ago, 7))
            return next(day for day in ahead if day.weekday() < FRIDAY)
        day = self.workday(ago)
        return day - timedelta(days=day.weekday() == FRIDAY)

    def before(self, day: date) -> date:
        """The working day before it."""
        earlier = day - timedelta(days=1)
        return earlier - timedelta(days=max(0, earlier.weekday() - SATURDAY + 1))

    def moment(self, day: date, clock: str, *, minutes: float = 0, hours: float = 0) -> datetime:
        start = timezone.make_aware(datetime.combine(day, time.fromisoformat(clock)))
        return start + timedelta(minutes=minutes, hours=hours)

    def happened(self, moment: datetime) -> bool:
        return moment <= self.moment(self.until, SO_FAR)
