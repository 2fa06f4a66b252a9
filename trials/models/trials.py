"""One cup, made once: what went in, what was done to it, what was read before cure, how it failed."""

import pgtrigger
from django.db import models

from .bases import Letter
from .candidates import Candidate, Stage
from .equipment import Balance, Equipment
from .fields import Number, not_negative, one_of, per_cent, positive, quantity, words
from .frozen import EVERY_WRITE, frozen_trial, frozen_with_batch, frozen_with_trial
from .history import Guard, recorded, refusal
from .materials import Lot
from .people import Person
from .series import Basis, CommonBatch, Counting, Outcome, Series, Supplied


class Part(models.TextChoices):
    TREATED = "treated", "treated"
    BLANK = "blank", "blank"
    INCUMBENT = "incumbent", "incumbent"
    VACUUM = "vacuum reference", "vacuum reference"
    CLEAN = "clean check", "clean check"


WITHOUT_ADDITIVE = (Part.BLANK, Part.CLEAN)


class State(models.TextChoices):
    PLANNED = "planned", "planned"
    MIXED = "mixed", "mixed"
    APPLIED = "applied", "applied"
    READ = "read", "read"
    CLOSED = "closed", "closed"


@recorded()
class Trial(models.Model):
    """The unit of analysis. ``code`` is series and cup, 417-5; ``position`` its place in the order of working."""

    series = models.ForeignKey(Series, models.CASCADE, related_name="trials")
    number = models.PositiveSmallIntegerField("cup")
    code = models.CharField(max_length=16, unique=True)
    position = models.PositiveSmallIntegerField()
    part = models.CharField(max_length=18, choices=Part)
    topped_up_from = models.ForeignKey("self", models.PROTECT, null=True, blank=True, related_name="top_ups")
    common_batch = models.ForeignKey(CommonBatch, models.PROTECT, null=True, blank=True, related_name="trials")
    batch_mass_g = quantity(verbose_name="mix of this cup", unit="g", help_text="free of additive")
    state = models.CharField(max_length=8, choices=State, default=State.PLANNED)
    made_by = models.ForeignKey(Person, models.PROTECT, null=True, blank=True, related_name="+")
    made_at = models.DateTimeField(null=True, blank=True)
    mixed_at = models.DateTimeField("A and B together at", null=True, blank=True)
    air_c = quantity(verbose_name="air", unit="°C")
    humidity_pct = quantity(verbose_name="humidity", unit="%")
    remark = words()
    outcome = models.CharField(max_length=20, choices=Outcome, blank=True, default="")
    unfair_because = words(verbose_name="not a fair test because")
    lesson = words()

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["series", "number"], name="trial_number_once"),
            one_of("part", Part, table="trial"),
            one_of("state", State, table="trial"),
            models.CheckConstraint(condition=models.Q(outcome__in=["", *Outcome.values]), name="trial_outcome_known"),
            models.CheckConstraint(
                condition=~models.Q(outcome=Outcome.UNFAIR) | ~models.Q(unfair_because=""),
                name="trial_unfair_says_why",
            ),
            *positive("batch_mass_g", table="trial"),
            *per_cent("humidity_pct", table="trial"),
        ]
        triggers = [frozen_trial("trial_frozen")]

    def __str__(self):
        return self.code


@recorded()
class Dosage(models.Model):
    """How much additive as decided, with its basis and counting, and as weighed; both are kept."""

    trial = models.ForeignKey(Trial, models.CASCADE, related_name="dosages")
    candidate = models.ForeignKey(Candidate, models.PROTECT, related_name="dosages")
    lot = models.ForeignKey(Lot, models.PROTECT, null=True, blank=True, related_name="+")
    dosage_pct = Number("dosage", unit="%")
    basis = models.CharField(max_length=14, choices=Basis)
    basis_component = models.CharField(max_length=1, choices=Letter, blank=True, default="")
    counting = models.CharField(max_length=8, choices=Counting)
    supplied = models.CharField("dosage of", max_length=12, choices=Supplied, default=Supplied.SUPPLIED)
    stage = models.CharField(max_length=16, choices=Stage)
    into = models.CharField("goes into", max_length=1, choices=Letter, default=Letter.A)
    counts_in_ratio = models.BooleanField("counts as part of its component", default=False)
    planned_g = Number("planned", unit="g")
    weighed_g = quantity(verbose_name="weighed", unit="g")

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["trial", "candidate", "stage"], name="dosage_once_a_stage"),
            one_of("basis", Basis, table="dosage"),
            one_of("counting", Counting, table="dosage"),
            one_of("supplied", Supplied, table="dosage"),
            one_of("stage", Stage, table="dosage"),
            *not_negative("dosage_pct", "planned_g", "weighed_g", table="dosage"),
        ]
        triggers = [
            frozen_with_trial("dosage_frozen", "row.trial_id", EVERY_WRITE),
            Guard(
                name="no_dosage_on_a_blank",
                when=pgtrigger.Before,
                operation=pgtrigger.Insert | pgtrigger.Update,
                func=(
                    "IF EXISTS (SELECT 1 FROM trials_trial t WHERE t.id = NEW.trial_id"
                    " AND t.part IN ('blank', 'clean check')) THEN "
                    + refusal("no_dosage_on_a_blank", "a blank or clean check takes no additive")
                    + " END IF; RETURN NEW;"
                ),
            ),
        ]

    def __str__(self):
        return f"{self.candidate} {self.dosage_pct:f} %"


@recorded()
class Weighing(models.Model):
    """One balance reading as it stood on the display; cumulative readings in one cup go on from the one before."""

    trial = models.ForeignKey(Trial, models.CASCADE, related_name="weighings")
    position = models.PositiveSmallIntegerField()
    letter = models.CharField("component", max_length=1, choices=Letter, blank=True, default="")
    dosage = models.ForeignKey(Dosage, models.CASCADE, null=True, blank=True, related_name="weighings")
    reading_g = quantity(verbose_name="reading", unit="g")
    cumulative = models.BooleanField(default=False)
    word = models.CharField("instead of a figure", max_length=60, blank=True, default="")
    balance = models.ForeignKey(Balance, models.PROTECT, null=True, blank=True, related_name="+")
    at = models.DateTimeField(null=True, blank=True)

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["trial", "position"], name="weighing_position_once"),
            models.CheckConstraint(
                condition=models.Q(letter="", dosage__isnull=False) | models.Q(dosage__isnull=True, letter__gt=""),
                name="weighing_of_one_thing",
            ),
            models.CheckConstraint(
                condition=models.Q(reading_g__isnull=False) | ~models.Q(word=""), name="weighing_says_something"
            ),
            *not_negative("reading_g", table="weighing"),
        ]
        triggers = [frozen_with_trial("weighing_frozen", "row.trial_id")]


class WorkingKind(models.TextChoices):
    DISPERSE = "disperse", "disperse"
    REST = "rest", "rest"
    AERATE = "aerate", "aerate"
    MIX = "mix", "mix A and B"


@recorded()
class Working(models.Model):
    """One piece of shear (or rest) on a cup, in its order."""

    trial = models.ForeignKey(Trial, models.CASCADE, related_name="workings")
    position = models.PositiveSmallIntegerField()
    kind = models.CharField(max_length=10, choices=WorkingKind)
    equipment = models.ForeignKey(Equipment, models.PROTECT, null=True, blank=True, related_name="workings")
    blade_mm = quantity(verbose_name="blade or disc", unit="mm")
    vessel_mm = quantity(verbose_name="vessel", unit="mm")
    rpm = quantity(verbose_name="speed", unit="1/min")
    minutes = quantity(verbose_name="time", unit="min")
    temperature_c = quantity(verbose_name="temperature", unit="°C")
    vacuum_mbar = quantity(verbose_name="vacuum, absolute", unit="mbar")
    remark = models.CharField(max_length=160, blank=True, default="")

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["trial", "position"], name="working_position_once"),
            one_of("kind", WorkingKind, table="working"),
            *positive("blade_mm", "vessel_mm", table="working"),
            *not_negative("rpm", "minutes", "vacuum_mbar", table="working"),
        ]
        triggers = [frozen_with_trial("working_frozen", "row.trial_id")]


class WetQuantity(models.TextChoices):
    DENSITY = "density", "density, g/mL"
    AIR_FREE = "air-free density", "air-free density, g/mL"
    LEVEL = "level", "level in a marked cup, mm"
    BUBBLE_FREE = "bubble-free after", "film bubble-free after, min"
    VISCOSITY = "viscosity", "viscosity, mPa·s"
    POT_LIFE = "pot life", "pot life, min"
    TEMPERATURE = "temperature", "temperature, °C"
    CLARITY = "clarity", "clarity, in words"
    APPEARANCE = "appearance", "appearance, in words"


class Where(models.TextChoices):
    A = "A", "component A"
    B = "B", "component B"
    MIX = "mix", "the mix"


@recorded()
class WetReading(models.Model):
    """A value before cure, or a word instead ("spilled"), so many minutes after stirring or mixing."""

    trial = models.ForeignKey(Trial, models.CASCADE, null=True, blank=True, related_name="wet_readings")
    common_batch = models.ForeignKey(CommonBatch, models.CASCADE, null=True, blank=True, related_name="wet_readings")
    quantity = models.CharField(max_length=20, choices=WetQuantity)
    where = models.CharField(max_length=4, choices=Where, default=Where.A)
    value = Number(null=True, blank=True)
    word = models.CharField("instead of a figure", max_length=160, blank=True, default="")
    minutes = Number("after", unit="min", null=True, blank=True, help_text="since stirring, or since mixing A and B")
    method = models.CharField(max_length=120, blank=True, default="")
    person = models.ForeignKey(Person, models.PROTECT, null=True, blank=True, related_name="+")
    at = models.DateTimeField(null=True, blank=True)

    class Meta:
        constraints = [
            one_of("quantity", WetQuantity, table="wet_reading"),
            one_of("where", Where, table="wet_reading"),
            models.CheckConstraint(
                condition=models.Q(trial__isnull=False, common_batch__isnull=True)
                | models.Q(trial__isnull=True, common_batch__isnull=False),
                name="wet_reading_of_one_thing",
            ),
            models.CheckConstraint(
                condition=models.Q(value__isnull=False) | ~models.Q(word=""), name="wet_reading_says_something"
            ),
            *not_negative("minutes", table="wet_reading"),
        ]
        triggers = [
            frozen_with_trial("wet_reading_frozen", "row.trial_id"),
            frozen_with_batch("batch_reading_frozen", "row.common_batch_id"),
        ]


class Mode(models.TextChoices):
    BUBBLES = "bubbles", "bubbles stay in the film"
    MICRO_FOAM = "micro-foam", "micro-foam"
    PINHOLES = "pinholes", "pinholes"
    CRATERS = "craters", "craters"
    FISH_EYES = "fish-eyes", "fish-eyes"
    CRAWLING = "crawling", "second coat crawls"
    LEVELLING = "poor levelling", "poor levelling"
    FLOATING = "floating", "floating"
    HAZE = "haze", "haze"
    BLEEDING = "bleeding", "bleeding"
    BLUSH = "amine blush", "amine blush"
    RECOAT = "recoat adhesion", "no adhesion of the second coat"
    STORAGE = "lost in storage", "effect lost in storage"
    SEPARATION = "separation", "separates in the tin"
    NO_EFFECT = "no effect", "no effect"
    YELLOWING = "yellowing", "yellowing"
    OTHER = "other", "other"


class Cause(models.TextChoices):
    AIR = "entrained air", "entrained air"
    GAS = "carbon dioxide", "carbon dioxide"
    OUTGASSING = "outgassing", "outgassing of the substrate"
    SOLVENT = "solvent", "solvent"
    MIXING = "mixing", "mixing"
    CONTAMINATION = "contamination", "contamination"
    CRYSTALS = "crystals", "crystals of the resin"
    ADDITIVE_HAZE = "additive haze", "haze of the additive"
    OVER_DOSED = "over-dosed", "over-dosed"
    UNDER_SHEARED = "under-sheared", "under-sheared"
    INCOMPATIBLE = "incompatible", "incompatible with this binder"


@recorded()
class Failure(models.Model):
    """How a trial failed, in the trade's terms, and its cause where it is known."""

    trial = models.ForeignKey(Trial, models.CASCADE, related_name="failures")
    mode = models.CharField(max_length=20, choices=Mode)
    severity = models.PositiveSmallIntegerField(help_text="1 slight to 5 severe")
    how = words(verbose_name="how it showed")
    cause = models.CharField(max_length=20, choices=Cause, blank=True, default="")

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["trial", "mode"], name="failure_mode_once"),
            one_of("mode", Mode, table="failure"),
            models.CheckConstraint(condition=models.Q(cause__in=["", *Cause.values]), name="failure_cause_known"),
            models.CheckConstraint(
                condition=models.Q(severity__gte=1, severity__lte=5), name="failure_severity_1_to_5"
            ),
        ]
        triggers = [frozen_with_trial("failure_frozen", "row.trial_id")]
