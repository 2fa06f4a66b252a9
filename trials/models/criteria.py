"""What is rated: on which scale, after which standard, which way is better."""

from django.db import models

from .fields import Number, one_of, quantity, words
from .history import recorded


class Scale(models.TextChoices):
    STEPS = "steps", "steps"
    QUANTITY = "quantity", "quantity"


class Better(models.TextChoices):
    LOWER = "lower", "lower is better"
    HIGHER = "higher", "higher is better"


class Concern(models.TextChoices):
    EFFICIENCY = "efficiency", "efficiency"
    COMPATIBILITY = "compatibility", "compatibility"


@recorded()
class Criterion(models.Model):
    """A change of scale is a new version under the same key; ratings keep the version that they were made on."""

    key = models.SlugField(max_length=30)
    version = models.PositiveSmallIntegerField(default=1)
    current = models.BooleanField(default=True)
    name = models.CharField(max_length=60)
    position = models.PositiveSmallIntegerField(help_text="order in lists")
    scale = models.CharField(max_length=10, choices=Scale)
    unit = models.CharField(max_length=20, blank=True, default="")
    low = Number("lowest value of the scale")
    high = quantity(verbose_name="highest value of the scale")
    better = models.CharField(max_length=8, choices=Better)
    concern = models.CharField(max_length=16, choices=Concern)
    standard = models.CharField(max_length=120, blank=True, default="")
    how = words(help_text="how it is read, in a sentence or two")

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["key", "version"], name="criterion_version_once"),
            models.UniqueConstraint(fields=["key"], condition=models.Q(current=True), name="criterion_one_current"),
            one_of("scale", Scale, table="criterion"),
            one_of("better", Better, table="criterion"),
            one_of("concern", Concern, table="criterion"),
            models.CheckConstraint(
                condition=models.Q(scale=Scale.QUANTITY) | models.Q(high__isnull=False),
                name="criterion_steps_have_an_end",
            ),
        ]

    def __str__(self):
        return self.name


@recorded()
class Step(models.Model):
    """One step of a scale, described."""

    criterion = models.ForeignKey(Criterion, models.CASCADE, related_name="steps")
    value = Number()
    says = models.CharField(max_length=160)

    class Meta:
        constraints = [models.UniqueConstraint(fields=["criterion", "value"], name="step_value_once")]
