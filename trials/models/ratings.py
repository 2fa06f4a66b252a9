"""One person's (or instrument's) value of one criterion on one panel at one age."""

import pgtrigger
from django.db import models

from .criteria import Criterion
from .fields import Number
from .frozen import frozen_with_panel
from .history import Guard, recorded, refusal
from .panels import Panel
from .people import Person


@recorded()
class Rating(models.Model):
    panel = models.ForeignKey(Panel, models.CASCADE, related_name="ratings")
    criterion = models.ForeignKey(Criterion, models.PROTECT, related_name="ratings")
    person = models.ForeignKey(Person, models.PROTECT, related_name="+")
    instrument = models.CharField(max_length=60, blank=True, default="")
    age_h = Number("age", unit="h")
    value = Number(null=True, blank=True)
    word = models.CharField("instead of a figure", max_length=60, blank=True, default="")
    blind = models.BooleanField("read blind", default=False)
    at = models.DateTimeField()

    class Meta:
        constraints = [
            models.UniqueConstraint(
                fields=["panel", "criterion", "person", "instrument", "age_h"], name="rating_once"
            ),
            models.CheckConstraint(
                condition=models.Q(value__isnull=False) | ~models.Q(word=""), name="rating_says_something"
            ),
            models.CheckConstraint(condition=models.Q(age_h__gte=0), name="rating_age_not_negative"),
        ]
        triggers = [
            frozen_with_panel("rating_frozen", "row.panel_id"),
            Guard(
                name="rating_on_its_scale",
                when=pgtrigger.Before,
                operation=pgtrigger.Insert | pgtrigger.Update,
                condition=pgtrigger.Condition("NEW.value IS NOT NULL"),
                func=(
                    "IF EXISTS (SELECT 1 FROM trials_criterion c WHERE c.id = NEW.criterion_id"
                    " AND (NEW.value < c.low OR NEW.value > c.high)) THEN "
                    + refusal("rating_on_its_scale", "the value is off the scale of its criterion")
                    + " END IF; RETURN NEW;"
                ),
            ),
        ]
