"""Writing about enquiries: what is asked, where criteria have to stand, until when, and who may see it."""

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date, datetime
from decimal import Decimal

from django.utils import timezone

from trials.access import may_restrict
from trials.models import Criterion, Enquiry, EnquiryShare, Limit, Person
from trials.models.enquiries import Force

from .acting import Refused, assign, operation
from .limits import hold_to_limits
from .numbering import next_number
from .seen import refuse_unseen

PARTS = ("limits",)


@dataclass(frozen=True, slots=True)
class LimitEntry:
    """Where a criterion must or should stand, in its own unit or step."""

    criterion: Criterion
    limit: Decimal
    force: str = Force.MUST


@operation()
def add_enquiry(*, actor: Person, now: datetime, limits: Iterable[LimitEntry] = (), **values) -> Enquiry:
    """An enquiry with its limits, kept by the actor; received today unless said otherwise."""
    values = {"received": timezone.localdate(now), **values}
    enquiry = assign(Enquiry(owner=actor, number=next_number(Enquiry)), values)
    _check(enquiry)
    enquiry.save()
    _write_limits(enquiry, tuple(limits))
    return enquiry


@operation()
def change_enquiry(
    *, actor: Person, enquiry: Enquiry, limits: Iterable[LimitEntry] | None = None, seen: str = "", **values
) -> Enquiry:
    """Change what was noted; ``limits`` replaces all of them. Who sees it only by its owner or a supervisor."""
    enquiry = Enquiry.objects.select_for_update().get(pk=enquiry.pk)
    refuse_unseen(enquiry, seen, parts=PARTS)
    if values.get("restricted", enquiry.restricted) != enquiry.restricted and not may_restrict(actor, enquiry):
        raise Refused("Only who keeps an enquiry or a supervisor decides who sees it.", field="restricted")
    assign(enquiry, values)
    _check(enquiry)
    enquiry.save()
    if limits is not None:
        _write_limits(enquiry, tuple(limits))
    return enquiry


@operation()
def close_enquiry(*, actor: Person, enquiry: Enquiry, on: date | None) -> Enquiry:
    """Note the day of the answer; None opens it again."""
    enquiry = Enquiry.objects.select_for_update().get(pk=enquiry.pk)
    if on and on < enquiry.received:
        raise Refused(f"Answered on {on} is before it was received, {enquiry.received}.", field="closed")
    enquiry.closed = on
    enquiry.save()
    return enquiry


@operation()
def share_enquiry(*, actor: Person, enquiry: Enquiry, people: list[Person]) -> None:
    """Name the people who may see a restricted enquiry."""
    if not may_restrict(actor, enquiry):
        raise Refused("Only who keeps an enquiry or a supervisor decides who sees it.", field="people")
    EnquiryShare.objects.filter(enquiry=enquiry).exclude(person__in=people).delete()
    named = set(EnquiryShare.objects.filter(enquiry=enquiry).values_list("person", flat=True))
    EnquiryShare.objects.bulk_create(
        EnquiryShare(enquiry=enquiry, person=person) for person in people if person.pk not in named
    )


def _check(enquiry: Enquiry) -> None:
    if not enquiry.subject.strip():
        raise Refused("Say in a line what the enquiry is about.", field="subject")
    if enquiry.due and enquiry.due < enquiry.received:
        raise Refused(f"Due {enquiry.due} is before it was received, {enquiry.received}.", field="due")
    if enquiry.incumbent_pct is not None and not (enquiry.incumbent or enquiry.incumbent_note):
        raise Refused(
            f"Say what is used today at {enquiry.incumbent_pct} %: a candidate, or a word for it.", field="incumbent"
        )
    hold_to_limits(enquiry)


def _write_limits(enquiry: Enquiry, limits: tuple[LimitEntry, ...]) -> None:
    wanted: dict[int, LimitEntry] = {}
    for entry in limits:
        if entry.criterion.pk in wanted:
            raise Refused(f"{entry.criterion.name} stands there twice.", field="limits")
        refuse_off_scale(entry.criterion, entry.limit)
        wanted[entry.criterion.pk] = entry
    enquiry.limits.exclude(criterion__in=wanted).delete()
    standing = {limit.criterion_id: limit for limit in enquiry.limits.all()}
    for key, entry in wanted.items():
        limit = standing.get(key) or Limit(enquiry=enquiry, criterion=entry.criterion)
        if limit.pk is None or (str(limit.limit), limit.force) != (str(entry.limit), entry.force):
            limit.limit, limit.force = entry.limit, entry.force
            limit.save()


def refuse_off_scale(criterion: Criterion, limit: Decimal) -> None:
    """Refuse a limit that no rating could reach."""
    low, high = criterion.low, criterion.high
    if limit < low or (high is not None and limit > high):
        scale = f"from {low} to {high}" if high is not None else f"{low} or more"
        raise Refused(
            f"{criterion.name} is read {scale} {criterion.unit}".rstrip() + f"; got {limit}.", field="limit"
        )
