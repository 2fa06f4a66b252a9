"""What a customer or colleague asks, with limits, a date, and what they use today."""

from django.db import models

from .bases import Base, Field
from .candidates import Candidate
from .criteria import Criterion
from .fields import Number, one_of, positive, quantity, words
from .history import recorded
from .people import Person
from .restricted import Restricted


@recorded()
class Enquiry(Restricted):
    number = models.PositiveIntegerField(unique=True)
    subject = models.CharField(max_length=160)
    customer = models.CharField(max_length=120, blank=True, default="")
    withheld = models.BooleanField("withhold the customer's name outside", default=False)
    field = models.CharField("application field", max_length=16, choices=Field)
    base = models.ForeignKey(Base, models.PROTECT, null=True, blank=True, related_name="enquiries")
    asked = words(verbose_name="what is asked")
    film_um = quantity(verbose_name="film thickness", unit="µm")
    incumbent = models.ForeignKey(
        Candidate, models.PROTECT, null=True, blank=True, related_name="+", verbose_name="used today"
    )
    incumbent_pct = quantity(verbose_name="dosage used today", unit="%", help_text="on total, on top, as supplied")
    incumbent_note = models.CharField("used today, in words", max_length=160, blank=True, default="")
    received = models.DateField()
    due = models.DateField(null=True, blank=True)
    closed = models.DateField("answered on", null=True, blank=True)
    owner = models.ForeignKey(Person, models.PROTECT, related_name="enquiries")

    class Meta:
        constraints = [
            one_of("field", Field, table="enquiry"),
            *positive("film_um", "incumbent_pct", table="enquiry"),
            models.CheckConstraint(
                condition=models.Q(due__isnull=True) | models.Q(due__gte=models.F("received")),
                name="enquiry_due_after_received",
                violation_error_message="Due must not be before received.",
            ),
        ]

    def __str__(self):
        return f"Enquiry {self.number} {self.subject}"


@recorded()
class EnquiryShare(models.Model):
    """A person who may see a restricted enquiry."""

    enquiry = models.ForeignKey(Enquiry, models.CASCADE, related_name="shares")
    person = models.ForeignKey(Person, models.CASCADE, related_name="+")

    class Meta:
        constraints = [models.UniqueConstraint(fields=["enquiry", "person"], name="enquiry_share_once")]


class Force(models.TextChoices):
    MUST = "must", "must"
    SHOULD = "should", "should"


@recorded()
class Limit(models.Model):
    """Where a criterion has to stand, in its own unit or step; the criterion says which way is better."""

    enquiry = models.ForeignKey(Enquiry, models.CASCADE, related_name="limits")
    criterion = models.ForeignKey(Criterion, models.PROTECT, related_name="+")
    limit = Number()
    force = models.CharField(max_length=6, choices=Force, default=Force.MUST)

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["enquiry", "criterion"], name="limit_once"),
            one_of("force", Force, table="limit"),
        ]
