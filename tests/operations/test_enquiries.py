from datetime import date
from decimal import Decimal

import pytest
from django.apps import apps
from django.core.exceptions import PermissionDenied

from tests.making import NOW
from tests.series_making import make_candidate, make_series
from trials import access
from trials.models import Criterion, Enquiry, Series, Trial
from trials.operations.acting import Refused
from trials.operations.enquiries import LimitEntry, add_enquiry, change_enquiry, close_enquiry, share_enquiry
from trials.operations.series import change_series

LimitEvent = apps.get_model("trials", "LimitEvent")
pytestmark = pytest.mark.django_db


def _criterion(key="bubbles"):
    return Criterion.objects.get(key=key, current=True)


def _enquiry(actor, **values):
    return add_enquiry(actor=actor, now=NOW, **{"subject": "Pinholes at 2 mm", "field": "floor", **values})


def test_enquiry_is_numbered_dated_and_kept_by_who_took_it(bench):
    first, second = _enquiry(bench), _enquiry(bench)
    assert (second.number - first.number, first.received, first.owner) == (1, date(2026, 3, 2), bench)


def test_reader_may_not_take_one(reader):
    with pytest.raises(PermissionDenied):
        _enquiry(reader)


def test_limits_stay_as_typed(bench):
    limits = [LimitEntry(_criterion(), Decimal("1.0")), LimitEntry(_criterion("gloss"), Decimal(80), "should")]
    found = _enquiry(bench, limits=limits).limits.order_by("force").values_list("criterion__key", "limit", "force")
    assert [(key, str(limit), force) for key, limit, force in found] == [
        ("bubbles", "1.0", "must"),
        ("gloss", "80", "should"),
    ]


@pytest.mark.parametrize(
    ("values", "field", "said"),
    [
        ({"subject": " "}, "subject", "line"),
        ({"field": "sea"}, "field", "sea"),
        ({"due": date(2026, 3, 1)}, "due", "2026-03-01"),
        ({"film_um": Decimal(-1)}, "film_um", "got -1"),
        ({"incumbent_pct": Decimal("0.4")}, "incumbent", r"0\.4"),
    ],
)
def test_impossible_enquiry_is_refused_at_its_field(bench, values, field, said):
    with pytest.raises(Refused, match=said) as refused:
        _enquiry(bench, **values)
    assert refused.value.field == field
    assert not Enquiry.objects.exists()


@pytest.mark.parametrize("limit", ["-1", "6"])
def test_limit_off_the_scale_is_refused_with_the_scale(bench, limit):
    with pytest.raises(Refused, match=f"from 0 to 5; got {limit}"):
        _enquiry(bench, limits=[LimitEntry(_criterion(), Decimal(limit))])


def test_criterion_twice_is_refused(bench):
    with pytest.raises(Refused, match="twice"):
        _enquiry(bench, limits=[LimitEntry(_criterion(), Decimal(1)), LimitEntry(_criterion(), Decimal(2))])


def test_limits_are_replaced_and_unchanged_ones_are_not_written(bench):
    kept, gone = LimitEntry(_criterion(), Decimal(1)), LimitEntry(_criterion("craters"), Decimal(0))
    enquiry = _enquiry(bench, limits=[kept, gone])
    row = enquiry.limits.get(criterion__key="bubbles").pk
    change_enquiry(actor=bench, enquiry=enquiry, limits=[kept, LimitEntry(_criterion("gloss"), Decimal(80))])
    assert set(enquiry.limits.values_list("criterion__key", flat=True)) == {"bubbles", "gloss"}
    assert enquiry.limits.get(criterion__key="bubbles").pk == row
    assert LimitEvent.objects.filter(pgh_obj_id=row).count() == 1


def test_answered_before_it_was_received_is_refused(bench):
    enquiry = _enquiry(bench)
    with pytest.raises(Refused, match="before it was received"):
        close_enquiry(actor=bench, enquiry=enquiry, on=date(2026, 3, 1))
    assert close_enquiry(actor=bench, enquiry=enquiry, on=date(2026, 3, 9)).closed == date(2026, 3, 9)


def test_restricted_enquiry_is_for_its_owner_and_the_named(bench, colleague, supervisor):
    enquiry = _enquiry(bench, restricted=True)
    assert not access.enquiries(colleague).exists()
    with pytest.raises(Refused):
        share_enquiry(actor=colleague, enquiry=enquiry, people=[colleague])
    share_enquiry(actor=bench, enquiry=enquiry, people=[colleague])
    assert access.enquiries(colleague).exists()
    assert not access.enquiries(supervisor).exists()
    with pytest.raises(Refused):
        change_enquiry(actor=colleague, enquiry=enquiry, restricted=False)


def test_series_of_a_restricted_enquiry_and_its_trials_are_as_restricted(bench, colleague, supervisor):
    enquiry = _enquiry(bench, restricted=True, incumbent=make_candidate("AR-09"), incumbent_pct=Decimal("0.3"))
    share_enquiry(actor=bench, enquiry=enquiry, people=[colleague])
    series = make_series(bench, enquiry=enquiry)
    seen = {person: access.trials(person).count() for person in (bench, colleague, supervisor)}
    assert seen == {bench: 9, colleague: 9, supervisor: 0}
    assert Trial.objects.count() == 9
    with pytest.raises(Refused, match="named people"):
        change_series(actor=bench, series=series, restricted=False)
    assert Series.objects.get().restricted
