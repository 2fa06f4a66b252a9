"""Series for tests, planned through the operation."""

from decimal import Decimal

from tests.making import NOW, make_epoxy_base, make_material
from trials.models import Base, Candidate, Criterion, Series
from trials.operations.series import CandidateEntry, WorkingEntry, plan_series

STIRRED = (
    WorkingEntry("disperse", blade_mm=Decimal(40), vessel_mm=Decimal(80), rpm=Decimal(1500), minutes=Decimal(5)),
    WorkingEntry("aerate", blade_mm=Decimal(40), vessel_mm=Decimal(80), rpm=Decimal(2500), minutes=Decimal(2)),
    WorkingEntry("mix", rpm=Decimal(400), minutes=Decimal(3)),
)


def make_candidate(code="AR-01", *, silicone=False, **values) -> Candidate:
    """An air-release candidate with its material; ``material`` holds fields of the material."""
    material = make_material(code, "air-release candidate", **values.pop("material", {}))
    defaults = {
        "chemistry": "polysiloxane solution" if silicone else "silicone-free polymer",
        "carrier": "solvent" if silicone else "none",
        "strength": 3,
        "macro_foam": 3,
        "air_release": 3,
        "from_pct": Decimal("0.1"),
        "to_pct": Decimal("1.0"),
    }
    return Candidate.objects.create(material=material, silicone=silicone, **{**defaults, **values})


def make_series(actor, *, candidates=None, revision=None, now=NOW, **values) -> Series:
    """Two blanks, two cups each of AR-01 at 0.1, 0.3 and 0.5 %, a clean check, unless something else is given."""
    if revision is None:
        base = Base.objects.filter(code="EP-F1").first()
        revision = base.revisions.get(number=1) if base else make_epoxy_base(actor)
    if candidates is None:
        found = Candidate.objects.filter(material__code="AR-01").first() or make_candidate()
        candidates = (CandidateEntry(found, (Decimal("0.1"), Decimal("0.3"), Decimal("0.5"))),)
    chosen = {
        "title": "Less foam",
        "round": "ladder",
        "batch_mass_g": Decimal(150),
        "workings": STIRRED,
        "criteria": Criterion.objects.filter(key__in=["bubbles", "craters"], current=True),
        **values,
    }
    return plan_series(actor=actor, now=now, revision=revision, candidates=candidates, **chosen)
