"""What is to be seen to now."""

from datetime import date, timedelta

from trials.models import Lot, Paper

NOTICE_DAYS = 60


def papers_expiring(today: date, *, most: int = 20):
    """Papers that have expired or will within the notice, the most urgent first."""
    until = today + timedelta(days=NOTICE_DAYS)
    return Paper.objects.filter(expires__lte=until).select_related("material").order_by("expires", "pk")[:most]


def lots_expiring(today: date, *, most: int = 20):
    """Lots that have expired or will within the notice, of materials still in use, the most urgent first."""
    until = today + timedelta(days=NOTICE_DAYS)
    lots = Lot.objects.filter(expires__lte=until, material__withdrawn=False).select_related("material")
    return lots.order_by("expires", "pk")[:most]
