"""The people of the tests: one of each kind, made without surprises."""

from functools import cache

import pytest
from django.contrib.auth.hashers import make_password

from trials.models import Person, Role

PASSWORD = "grey-heron-on-the-quay"


@cache
def _hash() -> str:
    # Hashing is slow on purpose; once is enough.
    return make_password(PASSWORD)


def make_person(sign_in_name: str, role: Role, **more) -> Person:
    person = Person(
        sign_in_name=sign_in_name,
        full_name=sign_in_name.replace("_", " ").title(),
        initials=sign_in_name[:2].upper(),
        role=role,
        **more,
    )
    person.password = _hash()
    person.save()
    return person


@pytest.fixture
def bench(db):
    return make_person("bench_one", Role.BENCH)


@pytest.fixture
def colleague(db):
    return make_person("bench_two", Role.BENCH)


@pytest.fixture
def supervisor(db):
    return make_person("supervisor", Role.SUPERVISOR)


@pytest.fixture
def reader(db):
    return make_person("reader", Role.READER)


@pytest.fixture
def administrator(db):
    return make_person("administrator", Role.ADMINISTRATOR)
