"""The system under test: a recipe, or a black box of which only properties are known."""

import pgtrigger
from django.db import models
from django.db.models import Q

from .candidates import Stage
from .fields import Number, one_of, positive, quantity, words
from .history import Guard, recorded, refusal
from .materials import Lot, RawMaterial
from .people import Person
from .restricted import Restricted


class BinderChemistry(models.TextChoices):
    EPOXY = "epoxy-amine", "epoxy"
    POLYURETHANE = "polyurethane", "polyurethane"
    POLYASPARTIC = "polyaspartic", "polyaspartic"
    OTHER = "other", "other"


class Field(models.TextChoices):
    FLOOR = "floor", "floor coating"
    CASTING = "casting resin", "casting resin"
    MARINE = "marine", "marine and protective"
    ADHESIVE = "adhesive", "adhesive or sealant"


class Kind(models.TextChoices):
    RECIPE = "recipe", "recipe"
    BLACK_BOX = "black box", "black box"


class HasAdditive(models.TextChoices):
    NO = "no", "no"
    MAY = "may", "may contain one"
    YES = "yes", "contains one already"


@recorded()
class Base(Restricted):
    code = models.CharField(max_length=20, unique=True)
    name = models.CharField(max_length=120)
    chemistry = models.CharField("binder chemistry", max_length=16, choices=BinderChemistry)
    field = models.CharField("application field", max_length=16, choices=Field)
    kind = models.CharField("known as", max_length=10, choices=Kind)
    film_um = quantity(verbose_name="film thickness meant", unit="µm")
    additive = models.CharField("defoamer in it", max_length=4, choices=HasAdditive, default=HasAdditive.NO)
    additive_note = words(verbose_name="which, and why it stays in")
    owner = models.ForeignKey(Person, models.PROTECT, related_name="bases")
    remarks = words()

    class Meta:
        constraints = [
            one_of("chemistry", BinderChemistry, table="base"),
            one_of("field", Field, table="base"),
            one_of("kind", Kind, table="base"),
            one_of("additive", HasAdditive, table="base"),
            *positive("film_um", table="base"),
        ]

    def __str__(self):
        return f"{self.code} {self.name}"


@recorded()
class BaseShare(models.Model):
    """A person who may see a restricted base."""

    base = models.ForeignKey(Base, models.CASCADE, related_name="shares")
    person = models.ForeignKey(Person, models.CASCADE, related_name="+")

    class Meta:
        constraints = [models.UniqueConstraint(fields=["base", "person"], name="base_share_once")]


def _frozen(name: str, message: str, *, query: str, operation=pgtrigger.Insert | pgtrigger.Update | pgtrigger.Delete):
    """Refuse the row when the query (over ``row``) finds a frozen revision."""
    return Guard(
        name=name,
        when=pgtrigger.Before,
        operation=operation,
        declare=[("row", "RECORD")],
        func=(
            "IF TG_OP = 'DELETE' THEN row := OLD; ELSE row := NEW; END IF; "
            f"IF EXISTS ({query}) THEN {refusal(name, message)} END IF; RETURN row;"
        ),
    )


@recorded()
class Revision(models.Model):
    """One state of a base. Frozen once something was made from it; then its lines hold copies of what they meant."""

    base = models.ForeignKey(Base, models.PROTECT, related_name="revisions")
    number = models.PositiveSmallIntegerField()
    why = words()
    air_free_density_g_ml = quantity(verbose_name="air-free density of the mix", unit="g/mL", help_text="measured")
    air_free_method = models.CharField("how measured", max_length=120, blank=True, default="")
    viscosity_mpa_s = quantity(verbose_name="viscosity of the mix", unit="mPa·s", help_text="at 23 °C")
    yield_pa = quantity(verbose_name="yield value", unit="Pa")
    pot_life_min = quantity(verbose_name="pot life of 100 g", unit="min", help_text="at 23 °C")
    made_by = models.ForeignKey(Person, models.PROTECT, related_name="+")
    made_at = models.DateTimeField()
    frozen_at = models.DateTimeField(null=True, blank=True)

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["base", "number"], name="revision_number_once"),
            *positive("air_free_density_g_ml", "viscosity_mpa_s", "yield_pa", "pot_life_min", table="revision"),
        ]
        triggers = [
            Guard(
                name="revision_frozen",
                when=pgtrigger.Before,
                operation=pgtrigger.Update | pgtrigger.Delete,
                condition=pgtrigger.Condition("OLD.frozen_at IS NOT NULL"),
                func=refusal("revision_frozen", "a frozen revision does not change: copy it"),
            )
        ]

    def __str__(self):
        return f"{self.base.code} revision {self.number}"


class Letter(models.TextChoices):
    A = "A", "A"
    B = "B", "B"
    C = "C", "C"


@recorded()
class Component(models.Model):
    """A, B or C of a revision, mixed by mass. A component without lines is a black box: its own figures count."""

    revision = models.ForeignKey(Revision, models.CASCADE, related_name="components")
    letter = models.CharField(max_length=1, choices=Letter)
    name = models.CharField(max_length=120, blank=True, default="")
    parts = Number("mixing parts by mass")
    density_g_ml = quantity(verbose_name="density", unit="g/mL", help_text="measured or as stated")
    viscosity_mpa_s = quantity(verbose_name="viscosity", unit="mPa·s", help_text="at 23 °C")
    non_volatile_pct = quantity(verbose_name="non-volatile content", unit="%", help_text="as stated")
    water_pct = quantity(verbose_name="water", unit="%", help_text="Karl Fischer")
    batch = models.CharField("customer's batch", max_length=60, blank=True, default="")
    received = models.DateField(null=True, blank=True)

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["revision", "letter"], name="component_letter_once"),
            one_of("letter", Letter, table="component"),
            models.CheckConstraint(condition=Q(parts__gt=0), name="component_parts_positive"),
            *positive("density_g_ml", "viscosity_mpa_s", table="component"),
        ]
        triggers = [
            _frozen(
                "component_frozen",
                "a frozen revision does not change: copy it",
                query="SELECT 1 FROM trials_revision r WHERE r.id = row.revision_id AND r.frozen_at IS NOT NULL",
            )
        ]

    def __str__(self):
        return f"component {self.letter}"


@recorded()
class Line(models.Model):
    """So many parts of a raw material, at a stage. ``held`` is what the material said when the revision froze."""

    component = models.ForeignKey(Component, models.CASCADE, related_name="lines")
    position = models.PositiveSmallIntegerField()
    material = models.ForeignKey(RawMaterial, models.PROTECT, related_name="+")
    lot = models.ForeignKey(Lot, models.PROTECT, null=True, blank=True, related_name="+")
    parts = Number("parts by mass")
    stage = models.CharField(max_length=16, choices=Stage, blank=True, default="")
    held = models.JSONField(null=True, blank=True)

    class Meta:
        constraints = [
            models.UniqueConstraint(
                fields=["component", "position"],
                name="line_position_once",
                deferrable=models.Deferrable.DEFERRED,
            ),
            models.CheckConstraint(condition=Q(parts__gt=0), name="line_parts_positive"),
            models.CheckConstraint(condition=Q(stage__in=["", *Stage.values]), name="line_stage_known"),
        ]
        triggers = [
            _frozen(
                "line_frozen",
                "a frozen revision does not change: copy it",
                query=(
                    "SELECT 1 FROM trials_component c JOIN trials_revision r ON r.id = c.revision_id"
                    " WHERE c.id = row.component_id AND r.frozen_at IS NOT NULL"
                ),
            ),
            Guard(
                name="line_lot_of_material",
                when=pgtrigger.Before,
                operation=pgtrigger.Insert | pgtrigger.Update,
                condition=pgtrigger.Condition("NEW.lot_id IS NOT NULL"),
                func=(
                    "IF NOT EXISTS (SELECT 1 FROM trials_lot l WHERE l.id = NEW.lot_id"
                    " AND l.material_id = NEW.material_id) THEN "
                    + refusal("line_lot_of_material", "the lot belongs to another material")
                    + " END IF; RETURN NEW;"
                ),
            ),
        ]
