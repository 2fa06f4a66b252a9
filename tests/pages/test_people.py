import pytest
from django.urls import reverse

from tests.people import PASSWORD
from trials.models import Person
from trials.queries.history import what_changed

pytestmark = pytest.mark.django_db

NEW = "seven-barges-in-the-fog"
TYPED = {
    "sign_in_name": "Mara ",
    "full_name": "Mara Lind",
    "initials": "ML",
    "role": "bench",
    "password": NEW,
}


class TestKeeping:
    @pytest.fixture(autouse=True)
    def _signed_in(self, client, administrator):
        client.force_login(administrator)

    def test_person_is_added_and_can_sign_in(self, client):
        assert client.post(reverse("person_new"), TYPED).url == "/people/"
        made = Person.objects.get(sign_in_name="mara")
        assert made.check_password(NEW)
        assert "Mara Lind" in client.get(reverse("people")).content.decode()

    @pytest.mark.parametrize(
        ("typed", "field", "told"),
        [
            ({"sign_in_name": "BENCH_ONE"}, "sign_in_name", "“bench_one”"),
            ({"password": "short"}, "password", "10 characters"),
            ({"role": "king"}, "role", "king"),
        ],
    )
    def test_error_stands_at_the_field_and_no_password_comes_back(self, client, bench, typed, field, told):
        response = client.post(reverse("person_new"), {**TYPED, **typed})
        assert told in response.context["form"].errors[field][0]
        page = response.content.decode()
        assert 'value="Mara Lind"' in page
        assert NEW not in page
        assert Person.objects.count() == 2

    def test_role_is_changed_with_history(self, client, bench, administrator):
        typed = {"full_name": "Bench One", "initials": "BE", "role": "supervisor", "is_active": "on", "password": ""}
        assert client.post(reverse("person_change", args=[bench.pk]), typed).url == "/people/"
        bench.refresh_from_db()
        assert (bench.role, bench.check_password(PASSWORD)) == ("supervisor", True)
        change = what_changed(bench)[0]
        assert (change.who, change.changes) == ("Administrator", (("Role", "bench", "supervisor"),))

    def test_own_rights_are_not_taken_away(self, client, administrator):
        typed = {"full_name": "Administrator", "initials": "AD", "role": "bench", "is_active": "on"}
        response = client.post(reverse("person_change", args=[administrator.pk]), typed)
        assert "another administrator" in response.context["form"].errors["role"][0]

    def test_who_may_no_longer_sign_in_is_out(self, client, bench):
        typed = {"full_name": "Bench One", "initials": "BE", "role": "bench"}
        client.post(reverse("person_change", args=[bench.pk]), typed)
        client.force_login(bench)
        assert client.get(reverse("today")).status_code == 302

    def test_forgotten_password_is_set(self, client, bench):
        typed = {"full_name": "Bench One", "initials": "BE", "role": "bench", "is_active": "on", "password": NEW}
        client.post(reverse("person_change", args=[bench.pk]), typed)
        bench.refresh_from_db()
        assert bench.check_password(NEW)


@pytest.mark.parametrize("name", ["people", "person_new"])
def test_only_an_administrator_keeps_people(client, supervisor, name):
    client.force_login(supervisor)
    assert client.get(reverse(name)).status_code == 403
    assert client.post(reverse("person_change", args=[supervisor.pk]), {"role": "administrator"}).status_code == 403


class TestOwnPassword:
    @pytest.fixture(autouse=True)
    def _signed_in(self, client, reader):
        client.force_login(reader)

    def test_is_changed_and_the_session_goes_on(self, client, reader):
        typed = {"old": PASSWORD, "password": NEW, "again": NEW}
        assert "is changed" in client.post(reverse("own_password"), typed).content.decode()
        reader.refresh_from_db()
        assert reader.check_password(NEW)
        assert client.get(reverse("today")).status_code == 200

    @pytest.mark.parametrize(
        ("typed", "field"),
        [
            ({"old": "wrong-wrong-wrong"}, "old"),
            ({"again": "something-else-entirely"}, "again"),
            ({"password": "short", "again": "short"}, "password"),
        ],
    )
    def test_is_not_changed_when_something_is_wrong(self, client, reader, typed, field):
        response = client.post(reverse("own_password"), {"old": PASSWORD, "password": NEW, "again": NEW, **typed})
        assert field in response.context["form"].errors
        reader.refresh_from_db()
        assert reader.check_password(PASSWORD)
