"""A series as the bench leaves it, made straight in the record: blanks, a ladder, densities, panels, grades."""

from datetime import timedelta
from decimal import Decimal
from itertools import count

from tests.making import NOW, make_epoxy_base
from tests.series_making import make_candidate
from trials.models import (
    CommonBatch,
    Criterion,
    Dosage,
    Layer,
    Panel,
    Rating,
    Series,
    Trial,
    WetReading,
    Working,
)

# Air, per cent by volume, four cups each: made-up numbers in the style of published ladders.
LADDER = {
    "0": ("9.8", "10.4", "9.5", "10.7"),
    "0.1": ("8.9", "9.6", "9.1", "9.9"),
    "0.2": ("7.0", "6.4", "7.3", "6.8"),
    "0.3": ("4.1", "4.6", "3.9", "4.4"),
    "0.5": ("3.8", "4.2", "3.6", "4.1"),
}
AIR_FREE = Decimal("1.500")
_codes = count(1)


def empty_series(actor, number=417, **values) -> Series:
    revision = make_epoxy_base(actor, code=f"EP-{number}")
    revision.air_free_density_g_ml = AIR_FREE
    revision.air_free_method = "degassed, pyknometer"
    revision.save()
    batch = CommonBatch.objects.create(
        revision=revision, number=f"CB-{number}", made_at=NOW, made_by=actor, density_g_ml=AIR_FREE
    )
    return Series.objects.create(
        number=number, title="Less foam", round="ladder", revision=revision, common_batch=batch,
        batch_mass_g=Decimal(150), planned_at=NOW, owner=actor, **values,
    )  # fmt: skip


def add_cup(
    series, part="treated", candidate=None, dosage_pct=None, *, air_pct=None, stirred=True, **values
) -> Trial:
    """One cup, stirred at 4.2 m/s for 5 min, made ten minutes after the one before; its density from ``air_pct``."""
    number = series.trials.count() + 1
    usual = {"made_at": NOW + timedelta(minutes=10 * number), "air_c": Decimal(23), "humidity_pct": Decimal(50)}
    cup = Trial.objects.create(
        series=series, number=number, code=f"{series.number}-{number}", position=number, part=part,
        common_batch=values.pop("common_batch", series.common_batch),
        **{**usual, **values},
    )  # fmt: skip
    if candidate is not None:
        Dosage.objects.create(
            trial=cup, candidate=candidate, dosage_pct=Decimal(dosage_pct), basis="total", counting="on top",
            stage="let-down", planned_g=Decimal(dosage_pct) * Decimal("1.5"),
        )  # fmt: skip
    if stirred:
        stir(cup)
    if air_pct is not None:
        density = AIR_FREE * (1 - Decimal(air_pct) / 100)
        WetReading.objects.create(trial=cup, quantity="density", where="A", value=density, minutes=Decimal(2))
    return cup


def stir(cup, *, rpm=2000, minutes=5, **values) -> Working:
    return Working.objects.create(
        trial=cup, position=cup.workings.count() + 1, kind="disperse", blade_mm=Decimal(40), rpm=Decimal(rpm),
        minutes=Decimal(minutes), **values,
    )  # fmt: skip


def rate(cup, person, key, value, *, age_h=24, wet_um="2000", area_dm2="3", **panel) -> Rating:
    """One reading on a panel of its own."""
    made = Panel.objects.create(trial=cup, code=f"J{next(_codes):04d}", area_dm2=area_dm2, applied_at=NOW, **panel)
    Layer.objects.create(panel=made, position=1, wet_um=Decimal(wet_um))
    return Rating.objects.create(
        panel=made, criterion=Criterion.objects.get(key=key, current=True), person=person,
        age_h=Decimal(str(age_h)), value=Decimal(str(value)), at=NOW, blind=True,
    )  # fmt: skip


def ladder_series(actor, *, ladder=LADDER, candidate=None, **values) -> Series:
    """The ladder above as densities of component A."""
    series = empty_series(actor, **values)
    candidate = candidate or make_candidate()
    for dosage, cups in ladder.items():
        for air in cups:
            if dosage == "0":
                add_cup(series, "blank", air_pct=air)
            else:
                add_cup(series, "treated", candidate, dosage, air_pct=air)
    return series
