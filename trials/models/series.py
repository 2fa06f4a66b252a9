"""Trials planned together against shared references."""

import pgtrigger
from django.contrib.postgres.fields import ArrayField
from django.db import models

from .bases import Letter, Revision
from .candidates import Candidate, Stage
from .criteria import Criterion
from .enquiries import Enquiry
from .fields import Number, not_negative, one_of, per_cent, positive, quantity, words
from .frozen import EVERY_WRITE, frozen_with_batch, frozen_with_series
from .history import recorded
from .materials import Lot
from .people import Person
from .restricted import Restricted


class Round(models.TextChoices):
    SCOUT = "scout", "scout"
    LADDER = "ladder", "ladder"
    CONFIRM = "confirm", "confirm"
    PILOT = "pilot", "pilot"
    PLANT = "plant", "plant"
    FIELD = "field", "field"
    COMPLAINT = "complaint", "complaint"


class Basis(models.TextChoices):
    TOTAL = "total", "total"
    COMPONENT = "component", "component"
    SOLIDS = "binder solids", "binder solids"


class Counting(models.TextChoices):
    ON_TOP = "on top", "on top"
    WITHIN = "within", "within"


class Supplied(models.TextChoices):
    SUPPLIED = "as supplied", "as supplied"
    ACTIVE = "active", "active"


class Ratio(models.TextChoices):
    SOLD = "as sold", "as sold"
    CORRECTED = "corrected", "corrected for the shift"


class OrderRule(models.TextChoices):
    BLANKS_FIRST = "blanks first, dosage ascending", "blanks first, dosage ascending"
    SILICONE_LAST = "silicone-free before silicone", "silicone-free before silicone"
    RANDOM = "random", "random"


class Outcome(models.TextChoices):
    WORKS = "works", "works"
    LIMITS = "works within limits", "works within limits"
    FAILS = "fails", "fails"
    UNDECIDED = "undecided", "undecided"
    UNFAIR = "not a fair test", "not a fair test"


@recorded()
class CommonBatch(models.Model):
    """One making of a component, divided into cups."""

    revision = models.ForeignKey(Revision, models.PROTECT, related_name="common_batches")
    letter = models.CharField("component", max_length=1, choices=Letter, default=Letter.A)
    number = models.CharField(max_length=30, unique=True)
    made_at = models.DateTimeField()
    made_by = models.ForeignKey(Person, models.PROTECT, related_name="+")
    mass_g = quantity(verbose_name="mass", unit="g")
    water_pct = quantity(verbose_name="water", unit="%", help_text="Karl Fischer")
    viscosity_mpa_s = quantity(verbose_name="viscosity", unit="mPa·s", help_text="at 23 °C")
    density_g_ml = quantity(verbose_name="density", unit="g/mL", help_text="free of air")
    remarks = words()

    class Meta:
        constraints = [
            one_of("letter", Letter, table="common_batch"),
            *positive("mass_g", "viscosity_mpa_s", "density_g_ml", table="common_batch"),
            *per_cent("water_pct", table="common_batch"),
        ]
        triggers = [frozen_with_batch("common_batch_frozen", "row.id", pgtrigger.Update | pgtrigger.Delete)]

    def __str__(self):
        return self.number


@recorded()
class CommonBatchLot(models.Model):
    """A lot that went into a common batch."""

    batch = models.ForeignKey(CommonBatch, models.CASCADE, related_name="lots")
    lot = models.ForeignKey(Lot, models.PROTECT, related_name="+")

    class Meta:
        constraints = [models.UniqueConstraint(fields=["batch", "lot"], name="common_batch_lot_once")]
        triggers = [frozen_with_batch("common_batch_lot_frozen", "row.batch_id")]


@recorded()
class Series(Restricted):
    """``batch_mass_g`` is the mix of one cup, all components, free of additive. Outcome and window are the
    person's judgement, after what the comparison says."""

    number = models.PositiveIntegerField(unique=True)
    title = models.CharField(max_length=160)
    question = words()
    round = models.CharField(max_length=10, choices=Round)
    revision = models.ForeignKey(Revision, models.PROTECT, related_name="series")
    enquiry = models.ForeignKey(Enquiry, models.PROTECT, null=True, blank=True, related_name="series")
    follows = models.ForeignKey("self", models.PROTECT, null=True, blank=True, related_name="followed_by")
    common_batch = models.ForeignKey(CommonBatch, models.PROTECT, null=True, blank=True, related_name="series")
    batch_mass_g = Number("mix of a cup", unit="g", help_text="all components, free of additive")
    film_um = quantity(verbose_name="film thickness", unit="µm", help_text="wet")
    basis = models.CharField(max_length=14, choices=Basis, default=Basis.TOTAL)
    basis_component = models.CharField(max_length=1, choices=Letter, blank=True, default="")
    counting = models.CharField(max_length=8, choices=Counting, default=Counting.ON_TOP)
    supplied = models.CharField("dosage of", max_length=12, choices=Supplied, default=Supplied.SUPPLIED)
    stage = models.CharField(max_length=16, choices=Stage, default=Stage.LET_DOWN)
    into = models.CharField("additive goes into", max_length=1, choices=Letter, default=Letter.A)
    ratio = models.CharField(max_length=10, choices=Ratio, default=Ratio.SOLD)
    ladder_pct = ArrayField(Number(), default=list, blank=True)
    replicates = models.PositiveSmallIntegerField(default=2)
    order_rule = models.CharField(max_length=40, choices=OrderRule, default=OrderRule.BLANKS_FIRST)
    seed = models.PositiveIntegerField(default=0)
    planned_at = models.DateTimeField()
    owner = models.ForeignKey(Person, models.PROTECT, related_name="series")
    outcome = models.CharField(max_length=20, choices=Outcome, blank=True, default="")
    conclusion = words()
    lesson = words()
    not_tested = words(verbose_name="what was not tested")
    window_from_pct = quantity(verbose_name="window from", unit="%")
    window_to_pct = quantity(verbose_name="window to", unit="%")
    working_pct = quantity(verbose_name="working dosage", unit="%")
    recommended = models.ForeignKey(Candidate, models.PROTECT, null=True, blank=True, related_name="+")

    class Meta:
        constraints = [
            one_of("round", Round, table="series"),
            one_of("basis", Basis, table="series"),
            one_of("counting", Counting, table="series"),
            one_of("supplied", Supplied, table="series"),
            one_of("stage", Stage, table="series"),
            one_of("ratio", Ratio, table="series"),
            one_of("order_rule", OrderRule, table="series"),
            models.CheckConstraint(
                condition=models.Q(outcome__in=["", *Outcome.values]), name="series_outcome_known"
            ),
            models.CheckConstraint(
                condition=~models.Q(basis=Basis.COMPONENT) | ~models.Q(basis_component=""),
                name="series_basis_names_its_component",
            ),
            models.CheckConstraint(condition=models.Q(batch_mass_g__gt=0), name="series_batch_mass_positive"),
            *positive("film_um", table="series"),
            *not_negative("window_from_pct", "window_to_pct", "working_pct", table="series"),
        ]
        triggers = [frozen_with_series("series_frozen", "row.id")]

    def __str__(self):
        return f"{self.number} {self.title}"


@recorded()
class SeriesShare(models.Model):
    """A person who may see a restricted series."""

    series = models.ForeignKey(Series, models.CASCADE, related_name="shares")
    person = models.ForeignKey(Person, models.CASCADE, related_name="+")

    class Meta:
        constraints = [models.UniqueConstraint(fields=["series", "person"], name="series_share_once")]


@recorded()
class SeriesCriterion(models.Model):
    """A criterion this series is judged by; weight for the overall mark."""

    series = models.ForeignKey(Series, models.CASCADE, related_name="criteria")
    criterion = models.ForeignKey(Criterion, models.PROTECT, related_name="+")
    weight = Number(default=1)

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["series", "criterion"], name="series_criterion_once"),
            *not_negative("weight", table="series_criterion"),
        ]
        triggers = [frozen_with_series("series_criterion_frozen", "row.series_id", EVERY_WRITE)]
