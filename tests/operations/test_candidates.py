from decimal import Decimal

import pytest
from django.core.exceptions import PermissionDenied

from trials.models import Candidate
from trials.operations.acting import Refused
from trials.operations.candidates import add_candidate, change_candidate
from trials.operations.materials import add_material
from trials.queries.history import what_changed

pytestmark = pytest.mark.django_db

VALUES = {
    "chemistry": "concentrated polysiloxane",
    "carrier": "none",
    "silicone": True,
    "strength": 5,
    "macro_foam": 4,
    "air_release": 3,
    "tip_speed_m_s": Decimal("6"),
    "minutes": Decimal("5"),
    "from_pct": Decimal("0.02"),
    "to_pct": Decimal("0.20"),
    "stages": ["grind"],
}


@pytest.fixture
def material(bench):
    return add_material(actor=bench, code="AR-01", name="Defoamer", function="air-release candidate")


def test_candidate_is_kept_and_changed_with_history(bench, colleague, material):
    candidate = add_candidate(actor=bench, material=material, **VALUES)
    change_candidate(actor=colleague, candidate=candidate, to_pct=Decimal("0.30"))
    candidate.refresh_from_db()
    assert str(candidate.to_pct) == "0.30"
    change, added = what_changed(candidate)
    assert (change.who, change.changes) == ("Bench Two", (("Window to, %", Decimal("0.20"), Decimal("0.30")),))
    assert added.who == "Bench One"


@pytest.mark.parametrize(
    ("values", "field", "told"),
    [
        ({"strength": 6}, "strength", "6"),
        ({"macro_foam": 0}, "macro_foam", "0"),
        ({"from_pct": Decimal("0.5")}, "to_pct", "0.5"),
        ({"highest_tried_pct": Decimal(101)}, "highest_tried_pct", "101"),
        ({"to_pct": Decimal(101)}, "to_pct", "101"),
        ({"tip_speed_m_s": Decimal(0)}, "tip_speed_m_s", "0"),
        ({"carrier_pct": Decimal(50)}, "carrier", "50"),
        ({"silicone": False}, "silicone", "concentrated polysiloxane"),
        ({"chemistry": "silicone-free polymer"}, "silicone", "silicone-free polymer"),
        ({"chemistry": "soap"}, "chemistry", "soap"),
        ({"stages": ["never"]}, "stages", "never"),
    ],
)
def test_candidate_is_refused_at_the_field(bench, material, values, field, told):
    with pytest.raises(Refused) as refused:
        add_candidate(actor=bench, material=material, **{**VALUES, **values})
    assert (refused.value.field, told in refused.value.message) == (field, True)
    assert not Candidate.objects.exists()


def test_material_is_one_candidate_at_most(bench, material):
    add_candidate(actor=bench, material=material, **VALUES)
    with pytest.raises(Refused, match="AR-01 is a candidate already"):
        add_candidate(actor=bench, material=material, **VALUES)


def test_reader_may_not_write(bench, reader, material):
    candidate = add_candidate(actor=bench, material=material, **VALUES)
    with pytest.raises(PermissionDenied):
        change_candidate(actor=reader, candidate=candidate, strength=1)
    with pytest.raises(PermissionDenied):
        add_candidate(actor=reader, material=material, **VALUES)
