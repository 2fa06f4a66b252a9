"""Every address is tried by every kind of person."""

import pytest
from django.urls import get_resolver, reverse

from .addresses import ADDRESSES
from .world import KINDS

pytestmark = pytest.mark.django_db


def _names(resolver) -> set[str]:
    found = set()
    for pattern in resolver.url_patterns:
        found |= _names(pattern) if hasattr(pattern, "url_patterns") else {pattern.name}
    return found


def test_every_address_is_listed():
    assert _names(get_resolver()) == set(ADDRESSES)


@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize("name", sorted(ADDRESSES))
def test_address(name, kind, world, client):
    address = ADDRESSES[name]
    person = world["people"][kind]
    if person.is_authenticated:
        client.force_login(person)
    arguments = {key: value(world) if callable(value) else value for key, value in address.args.items()}
    response = getattr(client, address.method)(reverse(name, kwargs=arguments))
    assert response.status_code == address.expected[kind]
    if kind == "anonymous" and response.status_code == 302:
        assert response["Location"].startswith(reverse("sign_in"))
    assert response["Cache-Control"] == "no-store"
    assert "default-src 'none'" in response["Content-Security-Policy"]
