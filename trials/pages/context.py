"""What the frame of every page needs."""

from django.conf import settings
from django.urls import reverse

NOTEBOOK = "Last Bubble"
PLACES = (
    ("Today", "today"),
    ("Bases", "bases"),
    ("Materials", "materials"),
    ("Additives", "candidates"),
)


def frame(request):
    """The places of the top bar, with the one that is open, and how long until the screen locks."""
    here = request.resolver_match.url_name if request.resolver_match else ""
    return {
        "NOTEBOOK": NOTEBOOK,
        "places": [{"label": label, "url": reverse(name), "current": _belongs(here, name)} for label, name in PLACES],
        "idle_seconds": settings.IDLE_SECONDS,
        "currency": settings.CURRENCY,
    }


def _belongs(here: str, place: str) -> bool:
    stem = place.removesuffix("s")
    return here == place or here.startswith((f"{place}_", f"{stem}_"))
