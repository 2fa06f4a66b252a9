"""What was applied: panels with their layers, the tins stored, what is kept of them, and photographs."""

from django.db import models

from .fields import not_negative, one_of, per_cent, positive, quantity, words
from .frozen import frozen_with_panel, frozen_with_trial
from .history import recorded
from .people import Person
from .trials import Trial


@recorded()
class StoredTin(models.Model):
    """A closed full tin of a trial in storage; opened later, so outside the freeze."""

    trial = models.ForeignKey(Trial, models.CASCADE, related_name="stored_tins")
    temperature_c = quantity(verbose_name="stored at", unit="°C")
    days = models.PositiveSmallIntegerField("for", help_text="days")
    stored_at = models.DateTimeField()
    opened_at = models.DateTimeField(null=True, blank=True)
    appearance = words(verbose_name="what stood in it before stirring")

    class Meta:
        constraints = [
            models.CheckConstraint(
                condition=models.Q(opened_at__isnull=True) | models.Q(opened_at__gte=models.F("stored_at")),
                name="tin_opened_after_stored",
            )
        ]

    def __str__(self):
        return f"tin stored {self.days} d"


class Substrate(models.TextChoices):
    GLASS = "glass", "glass"
    BOARD = "fibre board", "fibre board"
    PRIMED = "primed panel", "primed panel"
    CONCRETE = "concrete", "concrete"
    STEEL = "steel", "steel"
    FILM = "film", "film"


@recorded()
class Panel(models.Model):
    """One applied build-up, cured one way. Its neutral code says nothing of its cup, so that it can be read blind."""

    code = models.CharField(max_length=6, unique=True)
    trial = models.ForeignKey(Trial, models.CASCADE, related_name="panels")
    stored_tin = models.ForeignKey(StoredTin, models.PROTECT, null=True, blank=True, related_name="panels")
    substrate = models.CharField(max_length=14, choices=Substrate, default=Substrate.GLASS)
    area_dm2 = quantity(verbose_name="area", unit="dm²")
    mass_g = quantity(verbose_name="mass applied", unit="g")
    applied_at = models.DateTimeField(null=True, blank=True)
    air_c = quantity(verbose_name="air", unit="°C")
    humidity_pct = quantity(verbose_name="humidity", unit="%")
    substrate_c = quantity(verbose_name="substrate", unit="°C")
    material_c = quantity(verbose_name="material", unit="°C")
    remark = words()

    class Meta:
        constraints = [
            one_of("substrate", Substrate, table="panel"),
            *positive("area_dm2", "mass_g", table="panel"),
            *per_cent("humidity_pct", table="panel"),
        ]
        triggers = [frozen_with_trial("panel_frozen", "row.trial_id")]

    def __str__(self):
        return self.code


class Coat(models.TextChoices):
    PRIMER = "primer", "primer"
    SCRATCH = "scratch coat", "scratch coat"
    BODY = "body coat", "body coat"
    TOP = "top coat", "top coat"
    SECOND = "second coat", "second coat of the same"


class Method(models.TextChoices):
    POUR = "poured", "poured"
    TROWEL = "notched trowel", "notched trowel"
    ROLLER = "roller", "roller"
    DRAWDOWN = "drawdown", "drawdown"
    SPRAY = "spray", "spray"


@recorded()
class Layer(models.Model):
    panel = models.ForeignKey(Panel, models.CASCADE, related_name="layers")
    position = models.PositiveSmallIntegerField()
    coat = models.CharField(max_length=14, choices=Coat, default=Coat.BODY)
    wet_um = quantity(verbose_name="wet film", unit="µm")
    method = models.CharField(max_length=14, choices=Method, default=Method.POUR)
    spiked_after_min = quantity(verbose_name="spiked roller after", unit="min")
    recoated_after_h = quantity(verbose_name="recoated after", unit="h")
    sanded = models.BooleanField(default=False)

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["panel", "position"], name="layer_position_once"),
            one_of("coat", Coat, table="layer"),
            one_of("method", Method, table="layer"),
            *positive("wet_um", table="layer"),
            *not_negative("spiked_after_min", "recoated_after_h", table="layer"),
        ]
        triggers = [frozen_with_panel("layer_frozen", "row.panel_id")]


@recorded()
class Retain(models.Model):
    """A panel, cup or tin that is kept; lent and returned later, so outside the freeze."""

    trial = models.ForeignKey(Trial, models.CASCADE, related_name="retains")
    panel = models.ForeignKey(Panel, models.CASCADE, null=True, blank=True, related_name="retains")
    what = models.CharField(max_length=120, blank=True, default="")
    place = models.CharField("where", max_length=120)
    until = models.DateField("keep until", null=True, blank=True)
    lent_to = models.CharField(max_length=120, blank=True, default="")
    lent_on = models.DateField(null=True, blank=True)
    returned_on = models.DateField(null=True, blank=True)


@recorded()
class Photo(models.Model):
    """A photograph of a panel: the original is kept and never served, the derived picture carries no metadata."""

    panel = models.ForeignKey(Panel, models.CASCADE, related_name="photos")
    person = models.ForeignKey(Person, models.PROTECT, related_name="+")
    taken_at = models.DateTimeField()
    age_h = quantity(verbose_name="age", unit="h")
    original = models.CharField(max_length=200)
    original_sha256 = models.CharField(max_length=64)
    original_name = models.CharField(max_length=200, blank=True, default="")
    picture = models.CharField(max_length=200)
    picture_sha256 = models.CharField(max_length=64)
    width_px = models.PositiveIntegerField()
    height_px = models.PositiveIntegerField()
    mm_per_px = quantity(verbose_name="scale", unit="mm per pixel")
    remark = words()

    class Meta:
        constraints = positive("mm_per_px", table="photo")
        triggers = [frozen_with_panel("photo_frozen", "row.panel_id")]
