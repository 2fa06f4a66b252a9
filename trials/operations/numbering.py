"""The next number of a kind of record, without two people getting the same one."""

from django.db import connection
from django.db.models import Max, Model

_LOCKS = {"Series": 7246013, "Enquiry": 7246014}


def next_number(model: type[Model]) -> int:
    """One above the highest; held until the transaction ends."""
    with connection.cursor() as cursor:
        cursor.execute("SELECT pg_advisory_xact_lock(%s)", [_LOCKS[model.__name__]])
    return 1 + (model.objects.aggregate(last=Max("number"))["last"] or 0)
