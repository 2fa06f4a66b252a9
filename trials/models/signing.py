"""What proves that the record was not touched."""

import pgtrigger
from django.db import models

from .history import guard


class Seal(models.Model):
    """A digest over the events of a span of transactions and the seal before; written by the database alone."""

    sealed_at = models.DateTimeField()
    from_xid = models.BigIntegerField()
    to_xid = models.BigIntegerField()
    events = models.BigIntegerField()
    previous = models.CharField(max_length=64)
    digest = models.CharField(max_length=64, unique=True)

    class Meta:
        constraints = [
            models.CheckConstraint(condition=models.Q(to_xid__gt=models.F("from_xid")), name="seal_span"),
            models.UniqueConstraint(fields=["from_xid"], name="seal_from_once"),
        ]
        triggers = [
            guard("seal_stays", "a seal stays as it is", operation=pgtrigger.Update | pgtrigger.Delete),
            guard("seals_stay", "a seal stays as it is", operation=pgtrigger.Truncate, level=pgtrigger.Statement),
        ]
