from datetime import date

import pytest
from django.conf import settings
from django.db import transaction
from django.test import override_settings

from trials.demo.fill import fill

UNTIL = date(2026, 3, 2)
# A password that is meant to be slow to try is slow to set: two thirds of the time, for nothing that is tested here.
QUICK = ["django.contrib.auth.hashers.MD5PasswordHasher"]


# The oldest one; from the oven; countersigned and amended; for named people only; unfinished; planned.
FEW = ("ef-1", "ef-4", "ef-19", "em-1", "ef-22", "ef-23")


def files_in(folder) -> dict:
    """Storage of photographs in a folder of the test's own."""
    options = {"location": folder}
    backend = "django.core.files.storage.FileSystemStorage"
    return {**settings.STORAGES, "default": {"BACKEND": backend, "OPTIONS": options}}


@pytest.fixture(scope="module")
def laboratory(django_db_setup, django_db_blocker, tmp_path_factory):
    """Filled once for a module whose tests only read; taken back after it."""
    with django_db_blocker.unblock(), transaction.atomic(), override_settings(**_quick(tmp_path_factory)):
        yield fill(until=UNTIL, say=lambda line: None, series=FEW)
        transaction.set_rollback(True)


def _quick(tmp_path_factory) -> dict:
    return {"PASSWORD_HASHERS": QUICK, "STORAGES": files_in(tmp_path_factory.mktemp("photographs"))}
