"""How far a cup has come: a state follows from what was logged, and never goes back."""

from collections.abc import Iterable
from datetime import datetime

from django.db.models import F
from django.db.models.functions import Coalesce

from trials.models import Person, Trial
from trials.models.trials import State

_ORDER = (State.PLANNED, State.MIXED, State.APPLIED, State.READ, State.CLOSED)


def advance(trials: Iterable[int], to: State) -> None:
    """Move the trials of these keys on to a state; one that is there or further stays untouched."""
    earlier = _ORDER[: _ORDER.index(to)]
    Trial.objects.filter(pk__in=list(trials), state__in=earlier).update(state=to)


def made(trials: Iterable[int], *, actor: Person, now: datetime) -> None:
    """Who logs a cup first made it, then; either may be put right with ``mark_made``."""
    Trial.objects.filter(pk__in=list(trials), made_at__isnull=True).update(
        made_at=now, made_by_id=Coalesce(F("made_by_id"), actor.pk)
    )
