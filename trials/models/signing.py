"""What proves that the record was not touched: signatures over content, seals over history."""

import pgtrigger
from django.db import models

from .bases import Revision
from .fields import one_of
from .history import CurrentTransaction, Guard, guard, recorded, refusal
from .people import Person
from .series import Series
from .trials import Trial


class Meaning(models.TextChoices):
    PERFORMED = "performed", "performed"
    COUNTERSIGNED = "countersigned", "countersigned"
    AMENDED = "amended", "amended"


@recorded()
class Signature(models.Model):
    """Who signed what content, in which meaning. ``canonical`` is the signed content as RFC 8785 JSON.

    ``previous`` is the digest of the signature before on this record, ``previous_all`` of the one before on any.
    """

    series = models.ForeignKey(Series, models.PROTECT, null=True, blank=True, related_name="signatures")
    trial = models.ForeignKey(Trial, models.PROTECT, null=True, blank=True, related_name="signatures")
    revision = models.ForeignKey(Revision, models.PROTECT, null=True, blank=True, related_name="signatures")
    person = models.ForeignKey(Person, models.PROTECT, related_name="signatures")
    meaning = models.CharField(max_length=14, choices=Meaning)
    at = models.DateTimeField()
    reason = models.TextField(blank=True, default="")
    canon = models.PositiveSmallIntegerField("version of the canonical form")
    canonical = models.TextField()
    digest = models.CharField(max_length=64)
    previous = models.CharField(max_length=64, blank=True, default="")
    previous_all = models.CharField(max_length=64, blank=True, default="")
    xid = models.BigIntegerField(db_default=CurrentTransaction(), editable=False)

    class Meta:
        constraints = [
            one_of("meaning", Meaning, table="signature"),
            models.CheckConstraint(
                condition=models.Q(series__isnull=False, trial__isnull=True, revision__isnull=True)
                | models.Q(series__isnull=True, trial__isnull=False, revision__isnull=True)
                | models.Q(series__isnull=True, trial__isnull=True, revision__isnull=False),
                name="signature_of_one_record",
            ),
            models.CheckConstraint(
                condition=~models.Q(meaning=Meaning.AMENDED) | ~models.Q(reason=""),
                name="amendment_says_why",
            ),
        ]
        triggers = [
            # An amendment is written first, so that the guards let the changes through, and gets its content last.
            guard(
                "signature_stays",
                "a signature stays",
                operation=pgtrigger.Update,
                condition=pgtrigger.Condition(
                    "OLD.digest <> '' OR OLD.xid <> NEW.xid OR OLD.xid <> (pg_current_xact_id()::text)::bigint"
                    " OR OLD.person_id <> NEW.person_id OR OLD.meaning <> NEW.meaning OR OLD.reason <> NEW.reason"
                    " OR OLD.series_id IS DISTINCT FROM NEW.series_id OR OLD.trial_id IS DISTINCT FROM NEW.trial_id"
                    " OR OLD.revision_id IS DISTINCT FROM NEW.revision_id OR OLD.at <> NEW.at"
                ),
            ),
            guard("signature_is_never_taken_back", "a signature stays", operation=pgtrigger.Delete),
            Guard(
                name="signature_has_content",
                when=pgtrigger.After,
                operation=pgtrigger.Insert,
                timing=pgtrigger.Deferred,
                func=(
                    "IF EXISTS (SELECT 1 FROM trials_signature s WHERE s.id = NEW.id AND s.digest = '') THEN "
                    + refusal("signature_has_content", "a signature without content is none")
                    + " END IF; RETURN NEW;"
                ),
            ),
            guard(
                "signatures_stay",
                "a signature stays",
                operation=pgtrigger.Truncate,
                level=pgtrigger.Statement,
            ),
            Guard(
                name="countersigned_by_another",
                when=pgtrigger.Before,
                operation=pgtrigger.Insert,
                condition=pgtrigger.Condition("NEW.meaning = 'countersigned'"),
                func=(
                    "IF NOT EXISTS (SELECT 1 FROM trials_signature s WHERE s.meaning = 'performed'"
                    " AND s.person_id <> NEW.person_id AND s.series_id IS NOT DISTINCT FROM NEW.series_id"
                    " AND s.trial_id IS NOT DISTINCT FROM NEW.trial_id"
                    " AND s.revision_id IS NOT DISTINCT FROM NEW.revision_id) THEN "
                    + refusal("countersigned_by_another", "another person than the performer countersigns")
                    + " END IF; RETURN NEW;"
                ),
            ),
        ]


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
