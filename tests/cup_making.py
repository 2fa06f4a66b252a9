"""One cup and its panels, made straight in the record for tests of what comes after the plan."""

from decimal import Decimal
from itertools import count

from tests.making import NOW, make_epoxy_base, make_material
from trials.models import (
    Candidate,
    Criterion,
    Dosage,
    Layer,
    Panel,
    Rating,
    Series,
    Signature,
    Trial,
)

_codes = count(1)


def make_candidate(code="AR-01", **values) -> Candidate:
    """A solution that asks for 8 m/s for 5 min and holds 40 % of active matter."""
    material = make_material(code, "air-release candidate", active_pct=Decimal(40))
    chosen = {
        "chemistry": "polysiloxane solution",
        "carrier": "solvent",
        "silicone": True,
        "strength": 3,
        "macro_foam": 3,
        "air_release": 3,
        "tip_speed_m_s": Decimal(8),
        "minutes": Decimal(5),
        **values,
    }
    return Candidate.objects.create(material=material, **chosen)


def make_cups(actor, *, cups=1, number=417, batch_mass_g="122", parts=(), **values) -> list[Trial]:
    """A series on the epoxy floor (A 100 to B 22 parts) and its cups; by default 122 g of mix, 100 of it A."""
    revision = values.pop("revision", None) or make_epoxy_base(actor, code=f"EP-{number}")
    series = Series.objects.create(
        number=number,
        title="Scout",
        round="scout",
        revision=revision,
        batch_mass_g=Decimal(batch_mass_g),
        planned_at=NOW,
        owner=actor,
        **values,
    )
    return Trial.objects.bulk_create(
        Trial(
            series=series,
            number=cup,
            code=f"{number}-{cup}",
            position=cup,
            part=parts[cup - 1] if parts else "treated",
            batch_mass_g=Decimal(batch_mass_g),
        )
        for cup in range(1, cups + 1)
    )


def dose(trial, candidate, *, dosage_pct="0.5", planned_g="0.61", **values) -> Dosage:
    chosen = {"basis": "total", "counting": "on top", "stage": "let-down", **values}
    return Dosage.objects.create(
        trial=trial,
        candidate=candidate,
        dosage_pct=Decimal(dosage_pct),
        planned_g=Decimal(planned_g),
        **chosen,
    )


def make_panel(trial, code=None, *, wet_um="2000", **values) -> Panel:
    panel = Panel.objects.create(trial=trial, code=code or f"T{next(_codes):03d}", applied_at=NOW, **values)
    Layer.objects.create(panel=panel, position=1, wet_um=Decimal(wet_um))
    return panel


def rated(panel, person, key, value, *, age_h=24, **values) -> Rating:
    criterion = Criterion.objects.get(key=key, current=True)
    return Rating.objects.create(
        panel=panel,
        criterion=criterion,
        person=person,
        age_h=Decimal(str(age_h)),
        value=None if value is None else Decimal(str(value)),
        at=NOW,
        **values,
    )


def signed(series, person) -> Signature:
    """The series as a signature leaves it; what it says is not looked at here."""
    return Signature.objects.create(
        series=series, person=person, meaning="performed", at=NOW, canon=1, canonical="{}", digest="0" * 64
    )
