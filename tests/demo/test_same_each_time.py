import pytest
from django.db import transaction

from tests.demo.conftest import FEW, QUICK, UNTIL, files_in
from tests.demo.dump import dump
from trials.demo.fill import fill

pytestmark = pytest.mark.django_db


def filled_and_taken_back() -> str:
    with transaction.atomic():
        fill(until=UNTIL, say=lambda line: None, series=FEW)
        found = dump()
        transaction.set_rollback(True)
    return found


def test_two_fillings_hold_the_same_record_and_history(settings, tmp_path):
    settings.STORAGES = files_in(tmp_path)
    settings.PASSWORD_HASHERS = QUICK
    first, second = filled_and_taken_back(), filled_and_taken_back()
    assert '"by": "Jonna Harrel"' in first
    assert "EP-104" in first
    assert [(a, b) for a, b in zip(first.splitlines(), second.splitlines(), strict=True) if a != b] == []
