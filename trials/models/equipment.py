"""What cups are weighed and stirred with."""

from django.db import models

from .fields import Number, positive, quantity
from .history import recorded


@recorded()
class Balance(models.Model):
    name = models.CharField(max_length=60, unique=True)
    step_g = Number("reads to", unit="g")
    retired = models.BooleanField(default=False)

    class Meta:
        constraints = positive("step_g", table="balance")

    def __str__(self):
        return self.name


@recorded()
class Equipment(models.Model):
    """A dissolver, mixer or roller; silicone that stays on it craters the next silicone-free cup."""

    name = models.CharField(max_length=60, unique=True)
    blade_mm = quantity(verbose_name="blade or disc", unit="mm")
    last_cleaned = models.DateTimeField(null=True, blank=True)
    last_silicone = models.DateTimeField("last used with silicone", null=True, blank=True)
    retired = models.BooleanField(default=False)

    class Meta:
        constraints = positive("blade_mm", table="equipment")

    def __str__(self):
        return self.name
