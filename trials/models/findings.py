"""What somebody took bubbles or milkiness in a trial for, after the questions about their cause."""

from django.db import models

from .fields import words
from .frozen import frozen_with_trial
from .history import recorded
from .people import Person
from .trials import Cause, Trial


@recorded()
class Finding(models.Model):
    """``answers`` by question, as ``science.causes`` asks them; ``cause`` is the person's, empty while open."""

    trial = models.ForeignKey(Trial, models.CASCADE, related_name="findings")
    person = models.ForeignKey(Person, models.PROTECT, related_name="+")
    at = models.DateTimeField()
    answers = models.JSONField(default=dict)
    cause = models.CharField(max_length=20, choices=Cause, blank=True, default="")
    remark = words()

    class Meta:
        constraints = [
            models.CheckConstraint(condition=models.Q(cause__in=["", *Cause.values]), name="finding_cause_known")
        ]
        triggers = [frozen_with_trial("finding_frozen", "row.trial_id")]
