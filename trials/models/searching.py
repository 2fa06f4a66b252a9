"""The words of every trial, ready to be searched: derived from the record by triggers, never written by hand."""

from django.contrib.postgres.indexes import GinIndex
from django.contrib.postgres.search import SearchVectorField
from django.db import models

from .series import Series
from .trials import Trial

CONFIGURATION = "labbook"


class TrialSearch(models.Model):
    """One row for each trial. ``at`` is when it was made, else when its series was planned.

    ``tsv`` weighs title and lessons A, question, remarks, failures and conclusion B, names and codes C. The rows
    go and come with their trials in the database itself, so Django has nothing to cascade.
    """

    trial = models.OneToOneField(Trial, models.DO_NOTHING, primary_key=True, related_name="+")
    series = models.ForeignKey(Series, models.DO_NOTHING, related_name="+")
    at = models.DateTimeField()
    tsv = SearchVectorField()

    class Meta:
        indexes = [
            # Pending entries would be looked through by every search until the next vacuum.
            GinIndex(fields=["tsv"], name="trial_search_words", fastupdate=False),
            models.Index(fields=["-at", "-trial"], name="trial_search_newest"),
        ]
