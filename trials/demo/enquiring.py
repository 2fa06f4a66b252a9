"""Enquiries come in, are shared where they are restricted, and the old ones are answered."""

from trials.models import Criterion
from trials.models.enquiries import Force
from trials.operations.enquiries import LimitEntry, add_enquiry, close_enquiry, share_enquiry

from .enquiry_rows import ENQUIRIES, EnquiryRow
from .laboratory import Laboratory, number


def take_enquiries(laboratory: Laboratory) -> str:
    laboratory.criteria.update({criterion.key: criterion for criterion in Criterion.objects.filter(current=True)})
    for row in ENQUIRIES:
        laboratory.enquiries[row.key] = _take(laboratory, row)
    return f"{len(ENQUIRIES)} enquiries"


def _take(laboratory: Laboratory, row: EnquiryRow):
    actor, days = laboratory.people[row.by], laboratory.days
    code, pct = [*row.incumbent.split(), "", ""][:2]
    enquiry = add_enquiry(
        actor=actor,
        now=days.at(row.received, "08:50"),
        subject=row.subject,
        customer=row.customer,
        withheld=row.withheld,
        field=row.field,
        base=laboratory.bases.get(row.base),
        asked=row.asked,
        film_um=number(row.film_um),
        incumbent=laboratory.candidates.get(code),
        incumbent_pct=number(pct or None),
        incumbent_note=row.note,
        received=days.workday(row.received),
        due=days.workday(row.due),
        restricted=row.shared is not None,
        limits=[_limit(laboratory, text) for text in row.limits.split("|") if text.strip()],
    )
    if row.shared is not None:
        share_enquiry(actor=actor, enquiry=enquiry, people=[laboratory.people[name] for name in row.shared])
    if row.closed is not None:
        close_enquiry(actor=actor, enquiry=enquiry, on=days.workday(row.closed))
    return enquiry


def _limit(laboratory: Laboratory, text: str) -> LimitEntry:
    key, limit, *force = text.split()
    return LimitEntry(laboratory.criteria[key], number(limit), Force.SHOULD if force else Force.MUST)
