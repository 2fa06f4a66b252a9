"""Trials found by words, base, candidate, failure, outcome and date; only those of series that the person may see."""

from dataclasses import dataclass
from datetime import date, datetime, time, timedelta

from django.contrib.postgres.search import SearchQuery, SearchRank
from django.db.models import Exists, F, FloatField, Func, OuterRef, Q, QuerySet, Value
from django.db.models.functions import Cast
from django.utils import timezone

from trials import access
from trials.models import Dosage, Failure, TrialSearch
from trials.models.searching import CONFIGURATION

from .trial_rows import TrialRow, trial_rows

A_PAGE = 20
# Beyond this, counting and ranking them all takes longer than anybody reads: the newest of them are ranked.
COUNTED = 1000


@dataclass(frozen=True, slots=True)
class Asked:
    """What is looked for; everything that is given has to hold. ``base`` and ``candidate`` are codes."""

    words: str = ""
    base: str = ""
    candidate: str = ""
    failure: str = ""
    outcome: str = ""
    since: date | None = None
    until: date | None = None
    best_first: bool = False

    @property
    def ranked(self) -> bool:
        return self.best_first and bool(self.words)


@dataclass(frozen=True, slots=True)
class Place:
    """Where a page of the list ends: the next one begins behind it, whatever was added in the meantime."""

    at: datetime
    trial: int
    rank: float | None = None

    def __str__(self):
        parts = [self.at.isoformat(), str(self.trial), *([] if self.rank is None else [repr(self.rank)])]
        return "~".join(parts)

    @classmethod
    def read(cls, text: str) -> "Place":
        """Of what ``str`` made.

        Raises
        ------
        ValueError
            For any other text.
        """
        at, trial, *rank = text.split("~")
        if len(rank) > 1:
            raise ValueError(f"“{text}” has too many parts")
        moment, key = datetime.fromisoformat(at), int(trial)
        if timezone.is_naive(moment):
            raise ValueError(f"“{text}” has no time zone")
        if not 0 <= key < 2**63:
            raise ValueError(f"“{text}” names no trial")
        return cls(moment, key, float(rank[0]) if rank else None)


@dataclass(frozen=True, slots=True)
class FoundTrials:
    """One page. ``count`` stops at ``COUNTED`` where there are ``more``; ``after`` is empty on the last page."""

    rows: tuple[TrialRow, ...]
    count: int
    more: bool
    after: str


def find_trials(person, asked: Asked, *, after: Place | None = None) -> FoundTrials:
    """One page of what was asked for, the newest or the best first, in a fixed number of queries."""
    found = hits(person, asked)
    count = found.order_by()[: COUNTED + 1].count()
    found = _in_order(found, asked, window=count > COUNTED)
    page = list(_behind(found, after, ranked=asked.ranked).defer("tsv")[: A_PAGE + 1])
    last = page[A_PAGE - 1] if len(page) > A_PAGE else None
    return FoundTrials(
        rows=trial_rows([hit.pk for hit in page[:A_PAGE]], words=asked.words),
        count=min(count, COUNTED),
        more=count > COUNTED,
        after=str(Place(last.at, last.pk, last.rank if asked.ranked else None)) if last else "",
    )


def hits(person, asked: Asked) -> QuerySet[TrialSearch]:
    """The search rows of the trials asked for, in no order."""
    found = TrialSearch.objects.filter(series__in=access.series(person))
    if asked.words:
        found = found.filter(tsv=query_of(asked.words))
    if asked.base:
        found = found.filter(series__revision__base__code=asked.base)
    if asked.candidate:
        dosed = Dosage.objects.filter(trial=OuterRef("pk"), candidate__material__code=asked.candidate)
        found = found.filter(Exists(dosed))
    if asked.failure:
        found = found.filter(Exists(Failure.objects.filter(trial=OuterRef("pk"), mode=asked.failure)))
    if asked.outcome:
        found = found.filter(trial__outcome=asked.outcome)
    if asked.since:
        found = found.filter(at__gte=_begin(asked.since))
    if asked.until:
        found = found.filter(at__lt=_begin(asked.until + timedelta(days=1)))
    return found


def query_of(words: str) -> SearchQuery:
    """Words typed into the box, folded as the record is; quotes, “or” and a minus are understood."""
    folded = Func(Value(words), function="trials_folded")
    return SearchQuery(folded, config=CONFIGURATION, search_type="websearch")


def _in_order(found: QuerySet, asked: Asked, *, window: bool) -> QuerySet:
    if not asked.ranked:
        return found.order_by("-at", "-pk")
    if window:
        newest = found.order_by("-at", "-pk").values("pk")[:COUNTED]
        found = TrialSearch.objects.filter(pk__in=newest)
    # F, not the name: a name would have the words parsed again for every row. Double precision, so that the rank
    # that ends a page is the same number when it comes back.
    rank = Cast(SearchRank(F("tsv"), query_of(asked.words)), FloatField())
    return found.annotate(rank=rank).order_by("-rank", "-at", "-pk")


def _behind(found: QuerySet, place: Place | None, *, ranked: bool) -> QuerySet:
    if place is None or ranked != (place.rank is not None):
        return found
    later = Q(at__lte=place.at) & (Q(at__lt=place.at) | Q(pk__lt=place.trial))
    if not ranked:
        return found.filter(later)
    return found.filter(Q(rank__lt=place.rank) | Q(rank=place.rank) & later)


def _begin(day: date) -> datetime:
    return timezone.make_aware(datetime.combine(day, time.min))
