from datetime import date

import pytest
from django.db import transaction
from django.test import override_settings

from trials.demo.fill import fill

UNTIL = date(2026, 3, 2)
# A password that is meant to be slow to try is slow to set: two thirds of the time, for nothing that is tested here.
QUICK = ["django.contrib.auth.hashers.MD5PasswordHasher"]


@pytest.fixture(scope="module")
def laboratory(django_db_setup, django_db_blocker):
    """Filled once for a module whose tests only read; taken back after it."""
    with django_db_blocker.unblock(), transaction.atomic(), override_settings(PASSWORD_HASHERS=QUICK):
        yield fill(until=UNTIL, say=lambda line: None)
        transaction.set_rollback(True)
