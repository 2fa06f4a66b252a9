"""Records that only named people may see."""

from django.db import models
from django.db.models import Exists, OuterRef, Q


class RestrictedQuerySet(models.QuerySet):
    def visible_to(self, person):
        """What this person may see: everything open, what they own, and what was shared with them by name."""
        if not person.is_authenticated or not person.is_active:
            return self.none()
        shares = self.model._meta.get_field("shares")
        shared = shares.related_model._base_manager.filter(**{shares.field.name: OuterRef("pk"), "person": person.pk})
        return self.filter(Q(restricted=False) | Q(owner=person.pk) | Exists(shared))


class Restricted(models.Model):
    """Open by default. A subclass has an ``owner`` and ``shares`` (rows that name a person)."""

    restricted = models.BooleanField("only for named people", default=False)

    objects = RestrictedQuerySet.as_manager()

    class Meta:
        abstract = True
