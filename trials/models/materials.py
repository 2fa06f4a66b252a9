"""What goes into a batch: raw materials, their reactive groups, their lots and their papers."""

from django.contrib.postgres.fields import ArrayField
from django.db import models

from .fields import Number, not_negative, one_of, per_cent, positive, quantity, words
from .history import recorded


class Function(models.TextChoices):
    BINDER = "binder", "binder"
    DILUENT = "reactive diluent", "reactive diluent"
    HARDENER = "hardener", "hardener"
    PIGMENT = "pigment", "pigment"
    FILLER = "filler", "filler"
    SOLVENT = "solvent", "solvent"
    PLASTICISER = "plasticiser", "plasticiser"
    CATALYST = "catalyst", "catalyst"
    WATER = "water", "water"
    SCAVENGER = "water scavenger", "water scavenger"
    ADDITIVE = "additive", "additive"
    DEFOAMER = "air-release candidate", "air-release candidate"


@recorded()
class RawMaterial(models.Model):
    code = models.CharField(max_length=20, unique=True)
    name = models.CharField(max_length=120)
    supplier = models.CharField(max_length=120, blank=True, default="")
    function = models.CharField(max_length=24, choices=Function)
    density_g_ml = quantity(verbose_name="density", unit="g/mL", help_text="at 23 °C")
    non_volatile_pct = quantity(verbose_name="non-volatile content", unit="%", help_text="by mass")
    voc_pct = quantity(verbose_name="VOC", unit="%", help_text="by mass; boiling point up to 250 °C")
    active_pct = quantity(verbose_name="active content", unit="%", help_text="of the material as supplied")
    diisocyanate_pct = quantity(verbose_name="monomeric diisocyanate", unit="%", help_text="by mass")
    price_per_kg = quantity(verbose_name="price", help_text="per kg")
    hazards = ArrayField(models.CharField(max_length=8), default=list, blank=True, verbose_name="hazard statements")
    sheet_issued = models.DateField("safety data sheet of", null=True, blank=True)
    remarks = words()
    withdrawn = models.BooleanField("no longer used", default=False)

    class Meta:
        constraints = [
            one_of("function", Function, table="raw_material"),
            *positive("density_g_ml", table="raw_material"),
            *per_cent("non_volatile_pct", "voc_pct", "active_pct", "diisocyanate_pct", table="raw_material"),
            *not_negative("price_per_kg", table="raw_material"),
        ]

    def __str__(self):
        return f"{self.code} {self.name}"


class Group(models.TextChoices):
    EPOXIDE = "epoxide", "epoxide"
    AMINE_HYDROGEN = "amine hydrogen", "amine hydrogen"
    ISOCYANATE = "isocyanate", "isocyanate"
    HYDROXYL = "hydroxyl", "hydroxyl"
    ASPARTATE = "aspartate amine", "aspartate amine"
    THIOL = "thiol", "thiol"
    ANHYDRIDE = "anhydride", "anhydride"
    ACRYLATE = "acrylate", "acrylate"
    WATER = "water", "water"


class EnteredAs(models.TextChoices):
    EQUIVALENT = "equivalent weight", "equivalent weight, g/eq"
    NCO = "NCO content", "NCO content, %"
    HYDROXYL_VALUE = "hydroxyl value", "hydroxyl value, mg KOH/g"
    AMINE_VALUE = "amine value", "amine value, mg KOH/g"


@recorded()
class ReactiveGroup(models.Model):
    """A group that takes part in the cure, as it was entered and as the equivalent weight that it amounts to."""

    material = models.ForeignKey(RawMaterial, models.CASCADE, related_name="groups")
    group = models.CharField(max_length=16, choices=Group)
    entered_as = models.CharField(max_length=20, choices=EnteredAs, default=EnteredAs.EQUIVALENT)
    entered = Number("value")
    hydrogens_per_nitrogen = quantity(help_text="2 for a primary amine, 1 for an aspartate")
    equivalent_g = Number("equivalent weight", unit="g/eq")

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["material", "group"], name="reactive_group_once"),
            one_of("group", Group, table="reactive_group"),
            one_of("entered_as", EnteredAs, table="reactive_group"),
            *positive("entered", "equivalent_g", "hydrogens_per_nitrogen", table="reactive_group"),
        ]


@recorded()
class Lot(models.Model):
    """One delivery. Values of its certificate override those of the material."""

    material = models.ForeignKey(RawMaterial, models.PROTECT, related_name="lots")
    number = models.CharField(max_length=40)
    received = models.DateField(null=True, blank=True)
    expires = models.DateField(null=True, blank=True)
    density_g_ml = quantity(verbose_name="density", unit="g/mL", help_text="certificate")
    non_volatile_pct = quantity(verbose_name="non-volatile content", unit="%", help_text="certificate")
    certificate_as = models.CharField("certificate gives", max_length=20, choices=EnteredAs, blank=True, default="")
    certificate_value = quantity(verbose_name="certificate value")
    equivalent_g = quantity(verbose_name="equivalent weight", unit="g/eq", help_text="from the certificate")
    water_pct = quantity(verbose_name="water", unit="%", help_text="Karl Fischer")
    opened = models.DateField("opened on", null=True, blank=True)
    appearance = words(help_text="what stood in the bottle")
    shaken = models.BooleanField("shaken before use", null=True, blank=True)
    warmed = models.BooleanField("warmed before use", null=True, blank=True)
    on_hand_kg = quantity(verbose_name="on hand", unit="kg")

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["material", "number"], name="lot_number_once"),
            *positive("density_g_ml", "certificate_value", "equivalent_g", table="lot"),
            *per_cent("non_volatile_pct", "water_pct", table="lot"),
            *not_negative("on_hand_kg", table="lot"),
            models.CheckConstraint(
                condition=models.Q(expires__isnull=True)
                | models.Q(received__isnull=True)
                | models.Q(expires__gte=models.F("received")),
                name="lot_expires_after_received",
            ),
        ]

    def __str__(self):
        return f"{self.material.code} lot {self.number}"


class Subject(models.TextChoices):
    FOOD = "food contact", "food contact"
    EMISSIONS = "emissions", "emissions"
    SILOXANES = "cyclic siloxanes", "cyclic siloxanes"
    MINERAL_OIL = "mineral oil", "mineral oil"
    SAFETY = "safety data sheet", "safety data sheet"
    OTHER = "other", "other"


@recorded()
class Paper(models.Model):
    """A document filed with its dates. The notebook files papers; it certifies nothing."""

    material = models.ForeignKey(RawMaterial, models.CASCADE, related_name="papers")
    subject = models.CharField(max_length=20, choices=Subject)
    title = models.CharField(max_length=200)
    region = models.CharField(max_length=60, blank=True, default="")
    issued = models.DateField(null=True, blank=True)
    expires = models.DateField(null=True, blank=True)
    says = words(help_text="in a sentence")

    class Meta:
        constraints = [
            one_of("subject", Subject, table="paper"),
            models.CheckConstraint(
                condition=models.Q(expires__isnull=True)
                | models.Q(issued__isnull=True)
                | models.Q(expires__gte=models.F("issued")),
                name="paper_expires_after_issued",
            ),
        ]
