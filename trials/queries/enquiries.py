"""What was asked: the list by date, and one enquiry with its limits and the series that answer it."""

from dataclasses import dataclass
from datetime import date
from decimal import Decimal

from django.db.models import F, Prefetch

from trials import access
from trials.models import Enquiry, Limit, Series
from trials.models.criteria import Better

from .listing import Found, found, with_words
from .stated import StatedFact, fact


@dataclass(frozen=True, slots=True)
class LimitRow:
    """Where a criterion has to stand, in words as well."""

    criterion: str
    force: str
    limit: Decimal
    unit: str
    at_most: bool
    standard: str
    step: str

    @property
    def direction(self) -> str:
        return "at most" if self.at_most else "at least"


@dataclass(frozen=True, slots=True)
class EnquiryRow:
    enquiry: Enquiry
    series: tuple[Series, ...]
    standing: str

    @property
    def late(self) -> bool:
        return self.standing == "overdue"


@dataclass(frozen=True, slots=True)
class EnquirySheet:
    enquiry: Enquiry
    standing: str
    facts: tuple[StatedFact, ...]
    limits: tuple[LimitRow, ...]
    series: tuple[Series, ...]
    base_visible: bool


def standing(enquiry: Enquiry, today: date) -> str:
    """Answered, overdue or open."""
    if enquiry.closed:
        return "answered"
    return "overdue" if enquiry.due and enquiry.due < today else "open"


def find_enquiries(person, *, today: date, words: str = "", answered: bool = False) -> Found:
    """Those the person may see: the open ones, the most urgent first; answered ones only if asked for."""
    wanted = with_words(access.enquiries(person), words, "subject", "customer", "asked")
    if not answered:
        wanted = wanted.filter(closed__isnull=True)
    visible = access.series(person).order_by("number", "pk").only("number", "title", "enquiry_id", "outcome")
    wanted = wanted.select_related("owner").prefetch_related(Prefetch("series", visible))
    order = (F("closed").asc(nulls_first=True), F("due").asc(nulls_last=True), "number", "pk")
    return found(wanted.order_by(*order), lambda one: EnquiryRow(one, tuple(one.series.all()), standing(one, today)))


def load_enquiry(person, number: int) -> Enquiry | None:
    """One that the person may see, with everything its page names."""
    wanted = access.enquiries(person).select_related("owner", "base", "incumbent__material")
    return wanted.filter(number=number).first()


def enquiry_sheet(person, enquiry: Enquiry, *, today: date) -> EnquirySheet:
    field = Enquiry._meta.get_field
    today_used = enquiry.incumbent.material.code if enquiry.incumbent else ""
    used = ", ".join(filter(None, (today_used, enquiry.incumbent_note))) or None
    facts = (
        fact(field("customer"), enquiry.customer or None, "withheld outside" if enquiry.withheld else ""),
        fact(field("field"), enquiry.get_field_display()),
        fact(field("film_um"), enquiry.film_um),
        fact(field("incumbent"), used),
        fact(field("incumbent_pct"), enquiry.incumbent_pct),
        fact(field("received"), enquiry.received),
        fact(field("due"), enquiry.due),
        fact(field("closed"), enquiry.closed),
    )
    base = enquiry.base
    return EnquirySheet(
        enquiry=enquiry,
        standing=standing(enquiry, today),
        facts=facts,
        limits=limit_rows(enquiry),
        series=tuple(access.series(person).filter(enquiry=enquiry).order_by("number", "pk")),
        base_visible=base is not None and access.bases(person).filter(pk=base.pk).exists(),
    )


def limit_rows(enquiry: Enquiry) -> tuple[LimitRow, ...]:
    """In the order of the criteria, musts before shoulds."""
    limits = enquiry.limits.select_related("criterion").prefetch_related("criterion__steps")
    return tuple(_row(limit) for limit in limits.order_by("force", "criterion__position", "pk"))


def _row(limit: Limit) -> LimitRow:
    criterion = limit.criterion
    steps = {step.value: step.says for step in criterion.steps.all()}
    return LimitRow(
        criterion=criterion.name,
        force=limit.get_force_display(),
        limit=limit.limit,
        unit=criterion.unit,
        at_most=criterion.better == Better.LOWER,
        standard=criterion.standard,
        step=steps.get(limit.limit, ""),
    )
