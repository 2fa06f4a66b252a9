"""What the frame of every page needs."""

from django.conf import settings
from django.urls import reverse

NOTEBOOK = "Last Bubble"
# Label, address, and how the names of the addresses begin that belong there.
PLACES = (
    ("Today", "today", ()),
    ("Series", "series_list", ("series", "common_batch", "trial", "panel", "photo", "equipment", "balance")),
    ("Bases", "bases", ("base",)),
    ("Materials", "materials", ("material",)),
    ("Additives", "candidates", ("candidate",)),
    ("Enquiries", "enquiries", ("enquiry",)),
    ("Find", "find", ()),
    ("Trends", "trends", ()),
)


def frame(request):
    """The places of the top bar, with the one that is open, and how long until the screen locks."""
    here = request.resolver_match.url_name if request.resolver_match else ""
    return {
        "NOTEBOOK": NOTEBOOK,
        "places": [
            {"label": label, "url": reverse(name), "current": here == name or _belongs(here, stems)}
            for label, name, stems in PLACES
        ],
        "idle_seconds": settings.IDLE_SECONDS,
        "currency": settings.CURRENCY,
    }


def _belongs(here: str, stems: tuple[str, ...]) -> bool:
    return any(here == stem or here.startswith(f"{stem}_") for stem in stems)
