import pytest
from django.core.cache import cache
from django.urls import reverse

from tests.people import PASSWORD

pytestmark = pytest.mark.django_db


@pytest.fixture(autouse=True)
def _memory(settings):
    settings.CACHES = {"default": {"BACKEND": "django.core.cache.backends.locmem.LocMemCache"}}
    cache.clear()


def _sign_in(client, person, password=PASSWORD, **more):
    return client.post(reverse("sign_in"), {"sign_in_name": person.sign_in_name, "password": password, **more})


def test_sign_in_goes_on_to_where_one_wanted(client, bench):
    response = _sign_in(client, bench, next="/bases/?a=1")
    assert response["Location"] == "/bases/?a=1"


@pytest.mark.parametrize("elsewhere", ["https://example.org/", "//example.org/", "javascript:alert(1)"])
def test_sign_in_goes_nowhere_else(client, bench, elsewhere):
    assert _sign_in(client, bench, next=elsewhere)["Location"] == "/"


def test_wrong_password_does_not_tell_which_half_was_wrong(client, bench):
    wrong = _sign_in(client, bench, "wrong")
    unknown = client.post(reverse("sign_in"), {"sign_in_name": "nobody", "password": "wrong"})
    said = "The name and the password do not go together. Check both."
    assert said in wrong.content.decode()
    assert said in unknown.content.decode()
    assert "Error: " in wrong.content.decode()
    assert 'value="bench_one"' in wrong.content.decode()


def test_person_who_may_not_sign_in_does_not(client, bench):
    bench.is_active = False
    bench.save()
    assert _sign_in(client, bench).status_code == 200


def test_five_wrong_passwords_lock_that_name_alone(client, bench, colleague):
    for _ in range(5):
        _sign_in(client, bench, "wrong")
    assert "Too many attempts" in _sign_in(client, bench).content.decode()
    assert _sign_in(client, colleague).status_code == 302


def test_signing_in_changes_the_session_key(client, bench):
    client.force_login(bench)
    before = client.session.session_key
    _sign_in(client, bench)
    assert client.session.session_key != before


@pytest.mark.parametrize("way", ["sign_out", "change_person"])
def test_nothing_of_the_last_person_stays(client, bench, way):
    _sign_in(client, bench)
    response = client.post(reverse(way), {"next": "/bases/"})
    assert response["Clear-Site-Data"] == '"cache", "storage"'
    assert response["Location"].startswith("/sign-in/")
    assert client.get(reverse("bases")).status_code == 302


def test_change_of_person_comes_back_to_the_same_page(client, bench, colleague):
    _sign_in(client, bench)
    response = client.post(reverse("change_person"), {"next": "/bases/?a=1&b=2"})
    assert _sign_in(client, colleague, next=client.get(response["Location"]).context["next"])["Location"] == (
        "/bases/?a=1&b=2"
    )


def _idle(client, seconds):
    session = client.session
    session["seen"] = session["seen"] - seconds
    session.save()


def test_idle_session_is_locked_and_comes_back(client, bench, settings):
    _sign_in(client, bench)
    _idle(client, settings.IDLE_SECONDS + 1)
    response = client.get("/bases/?a=1")
    assert response["Location"] == reverse("locked", query={"next": "/bases/?a=1"})
    wrong = client.post(reverse("locked"), {"password": "wrong", "next": "/bases/?a=1"})
    assert wrong.status_code == 200
    assert client.get("/bases/").status_code == 302
    right = client.post(reverse("locked"), {"password": PASSWORD, "next": "/bases/?a=1"})
    assert right["Location"] == "/bases/?a=1"
    assert client.get("/bases/").status_code == 200


def test_idle_write_is_refused_not_done(client, bench, settings):
    _sign_in(client, bench)
    _idle(client, settings.IDLE_SECONDS + 1)
    response = client.post(reverse("base_new"), {"code": "X"}, headers={"HX-Request": "true"})
    assert (response.status_code, response.content) == (423, b"locked")


def test_session_in_use_stays_open(client, bench, settings):
    _sign_in(client, bench)
    _idle(client, settings.IDLE_SECONDS - 1)
    assert client.get("/bases/").status_code == 200
    _idle(client, settings.IDLE_SECONDS - 1)
    assert client.get("/bases/").status_code == 200


def test_unlock_within_the_page(client, bench):
    _sign_in(client, bench)
    client.post(reverse("lock"))
    wrong = client.post(reverse("unlock"), {"password": "wrong"})
    assert (wrong.status_code, "do not go together" in wrong.json()["error"]) == (403, True)
    assert client.post(reverse("unlock"), {"password": PASSWORD}).status_code == 204
    assert client.get("/bases/").status_code == 200


def test_another_persons_password_does_not_unlock(client, bench, colleague):
    colleague.set_password("another-password-entirely")
    colleague.save()
    _sign_in(client, bench)
    client.post(reverse("lock"))
    assert client.post(reverse("unlock"), {"password": "another-password-entirely"}).status_code == 403
