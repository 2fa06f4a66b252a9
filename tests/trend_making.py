"""Series in which one additive was tried, made straight in the record for tests of what is watched over time."""

from datetime import timedelta
from decimal import Decimal

from tests.cup_making import dose, make_candidate, make_panel, rated
from tests.making import NOW
from trials.models import Candidate, CommonBatch, CommonBatchLot, Lot, Series, Trial, Working

FIRST = ([80, 90, 100], {"0.3": [20, 30]})
SECOND = ([60, 70], {"0.3": [25, 15], "0.5": [5, 9]})
THIRD = ([120, 100], {"0.3": [60, 50]})


def make_series(actor, revision, number, blanks, treated, *, key="bubble-count", resin="2201", lot="A7", **values):
    """A series in the week of its number: one panel for each cup, read at 24 h.

    ``treated`` are the values by dosage of AR-01; all cups come of one common batch with this lot of the resin.
    """
    made_at = NOW + timedelta(weeks=number - 417)
    series = Series.objects.create(
        number=number,
        title="Ladder",
        round="ladder",
        revision=revision,
        batch_mass_g=Decimal(122),
        planned_at=made_at,
        owner=actor,
        common_batch=make_batch(actor, revision, number, resin, made_at),
        **values,
    )
    cups = [("blank", "", value) for value in blanks]
    cups += [("treated", pct, value) for pct, found in treated.items() for value in found]
    for place, (part, pct, value) in enumerate(cups, 1):
        trial = Trial.objects.create(
            series=series,
            number=place,
            code=f"{number}-{place}",
            position=place,
            part=part,
            made_at=made_at,
            state="read",
        )
        if pct:
            dose(trial, candidate(), dosage_pct=pct, lot=additive_lot(lot))
        Working.objects.create(trial=trial, position=1, kind="disperse", blade_mm=40, rpm=1500, minutes=5)
        rated(make_panel(trial), actor, key, value)
    return series


def candidate():
    return Candidate.objects.filter(material__code="AR-01").first() or make_candidate("AR-01")


def additive_lot(number):
    return Lot.objects.get_or_create(material=candidate().material, number=number)[0]


def make_batch(actor, revision, number, resin, made_at):
    batch = CommonBatch.objects.create(revision=revision, number=f"A-{number}", made_at=made_at, made_by=actor)
    material = revision.components.get(letter="A").lines.order_by("position").first().material
    CommonBatchLot.objects.create(batch=batch, lot=Lot.objects.get_or_create(material=material, number=resin)[0])
    return batch
