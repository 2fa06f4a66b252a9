"""Writing about candidates: raw materials offered as defoamer or air-release agent."""

from trials.models import Candidate, Person, RawMaterial
from trials.models.candidates import Carrier, Chemistry

from .acting import Refused, assign, operation
from .limits import hold_to_limits
from .seen import refuse_unseen

SILICONES = (Chemistry.CONCENTRATE, Chemistry.SOLUTION, Chemistry.MODIFIED)
DOSAGES = ("from_pct", "to_pct", "highest_tried_pct", "carrier_pct")


@operation()
def add_candidate(*, actor: Person, material: RawMaterial, **values) -> Candidate:
    """Put a raw material on the map; a material is one candidate at most."""
    if Candidate.objects.filter(material=material).exists():
        raise Refused(f"{material.code} is a candidate already: change it there.")
    candidate = assign(Candidate(material=material), values)
    _check(candidate)
    candidate.save()
    return candidate


@operation()
def change_candidate(*, actor: Person, candidate: Candidate, seen: str = "", **values) -> Candidate:
    """Write the given fields only."""
    candidate = Candidate.objects.select_for_update().get(pk=candidate.pk)
    refuse_unseen(candidate, seen)
    assign(candidate, values)
    _check(candidate)
    if values:
        candidate.save(update_fields=list(values))
    return candidate


def _check(candidate: Candidate) -> None:
    hold_to_limits(candidate)
    for name in DOSAGES:
        value = getattr(candidate, name)
        if value is not None and value > 100:
            label = candidate._meta.get_field(name).verbose_name
            raise Refused(f"{label[:1].upper()}{label[1:]} must be at most 100; got {value} %.", field=name)
    low, high = candidate.from_pct, candidate.to_pct
    if low is not None and high is not None and high < low:
        raise Refused(f"The window runs from {low} % to {high} %: the second must not be the lower.", field="to_pct")
    if candidate.carrier == Carrier.NONE and candidate.carrier_pct:
        raise Refused(f"{candidate.carrier_pct} % of carrier, and the carrier is “none”.", field="carrier")
    silicone = candidate.silicone
    if silicone and candidate.chemistry == Chemistry.POLYMER:
        raise Refused(f"A {candidate.chemistry} does not contain silicone.", field="silicone")
    if not silicone and candidate.chemistry in SILICONES:
        raise Refused(f"A {candidate.chemistry} contains silicone.", field="silicone")
