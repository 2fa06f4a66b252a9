"""Raw materials offered as defoamer or air-release agent."""

from django.contrib.postgres.fields import ArrayField
from django.db import models

from .fields import not_negative, one_of, positive, quantity, words
from .history import recorded
from .materials import RawMaterial


class Chemistry(models.TextChoices):
    CONCENTRATE = "concentrated polysiloxane", "concentrated polysiloxane"
    SOLUTION = "polysiloxane solution", "polysiloxane solution"
    MODIFIED = "modified polysiloxane", "modified polysiloxane"
    POLYMER = "silicone-free polymer", "silicone-free polymer"
    MINERAL_OIL = "mineral oil", "mineral oil"
    FLUORINATED = "fluorinated", "fluorinated"
    WAX = "wax or particle dispersion", "wax or particle dispersion"


class Carrier(models.TextChoices):
    NONE = "none", "none"
    SOLVENT = "solvent", "solvent"
    PLASTICISER = "plasticiser", "plasticiser"
    REACTIVE = "reactive", "reactive"


class Stage(models.TextChoices):
    GRIND = "grind", "grind"
    LET_DOWN = "let-down", "let-down"
    POST = "post-addition", "post-addition"


@recorded()
class Candidate(models.Model):
    """A raw material on the map of strength × ease of incorporation, with its window of dosages.

    Dosages are per cent on the total, on top, as supplied. ``strength``, ``macro_foam`` and ``air_release`` run
    from 1 (mild) to 5 (strong); ``tip_speed_m_s`` and ``minutes`` are the working that it asks for.
    """

    material = models.OneToOneField(RawMaterial, models.PROTECT, related_name="candidate")
    chemistry = models.CharField(max_length=28, choices=Chemistry)
    carrier = models.CharField(max_length=12, choices=Carrier)
    carrier_pct = quantity(verbose_name="share of carrier", unit="%", help_text="of the additive as supplied")
    silicone = models.BooleanField("contains silicone")
    strength = models.PositiveSmallIntegerField(help_text="1 mild to 5 strong")
    macro_foam = models.PositiveSmallIntegerField("against macro-foam", help_text="1 to 5")
    air_release = models.PositiveSmallIntegerField("for air release", help_text="1 to 5")
    tip_speed_m_s = quantity(verbose_name="tip speed asked for", unit="m/s", help_text="at least")
    minutes = quantity(verbose_name="time asked for", unit="min", help_text="at least")
    from_pct = quantity(verbose_name="window from", unit="%", help_text="on total, on top, as supplied")
    to_pct = quantity(verbose_name="window to", unit="%", help_text="on total, on top, as supplied")
    highest_tried_pct = quantity(verbose_name="highest tried", unit="%", help_text="on total, on top, as supplied")
    stages = ArrayField(models.CharField(max_length=16, choices=Stage), default=list, blank=True)
    diluted_in = words(help_text="what it may be diluted in; empty: never dilute")
    cautions = words()

    class Meta:
        constraints = [
            one_of("chemistry", Chemistry, table="candidate"),
            one_of("carrier", Carrier, table="candidate"),
            *(
                models.CheckConstraint(
                    condition=models.Q(**{f"{name}__gte": 1, f"{name}__lte": 5}),
                    name=f"candidate_{name}_1_to_5",
                )
                for name in ("strength", "macro_foam", "air_release")
            ),
            *positive("tip_speed_m_s", "minutes", "from_pct", "to_pct", table="candidate"),
            *not_negative("highest_tried_pct", "carrier_pct", table="candidate"),
            models.CheckConstraint(
                condition=models.Q(from_pct__isnull=True)
                | models.Q(to_pct__isnull=True)
                | models.Q(to_pct__gte=models.F("from_pct")),
                name="candidate_window_in_order",
            ),
        ]

    def __str__(self):
        return str(self.material)
