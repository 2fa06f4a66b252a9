import pytest
from django.urls import reverse

from tests.cup_making import dose, make_candidate, make_cups, make_panel, rated
from trials.models import Failure, Series, Trial
from trials.queries import search

pytestmark = pytest.mark.django_db


@pytest.fixture
def cup(bench):
    """417-1: AR-01 at 0.30 % fails by craters, with a panel that shows them."""
    trial = make_cups(bench)[0]
    Series.objects.update(title="Less foam")
    Trial.objects.update(lesson="Craters from <0.3 %> on: stay below", outcome="fails")
    Failure.objects.create(trial=trial, mode="craters", severity=3)
    dose(trial, make_candidate(), dosage_pct="0.30")
    rated(make_panel(trial, "K7F"), bench, "craters", 4)
    return trial


@pytest.fixture
def page(client, bench):
    client.force_login(bench)

    def get(**asked):
        return client.get(reverse("find"), asked)

    return get


def text(response) -> str:
    return " ".join(response.content.decode().split())


def test_trial_found_is_told_in_a_row(page, cup):
    found = text(page(q="craters"))
    assert ">1 trial.</p>" in found
    assert f'<a href="{reverse("trial", args=["417-1"])}">417-1</a>' in found
    assert "EP-417 Floor · AR-01 0.30 % on total, on top, as supplied · let-down" in found
    assert "fails</span>" in found
    assert 'class="swatch"' in found


def test_words_found_are_marked_and_everything_typed_is_escaped(page, cup):
    assert "<mark>Craters</mark> from &lt;0.3 %&gt; on: stay below" in text(page(q="craters"))
    Trial.objects.update(lesson="<script>alert(1)</script> craters <mark>x</mark>")
    found = text(page(q="crater"))
    assert "&lt;script&gt;alert(1)&lt;/script&gt; <mark>craters</mark> &lt;mark&gt;x&lt;/mark&gt;" in found
    assert "<script>alert" not in found


def test_box_and_filters_keep_what_was_asked(page, cup):
    asked = {"q": "foam", "base": "EP-417", "candidate": "AR-01", "failure": "craters", "outcome": "fails"}
    found = text(page(**asked, since="2026-03-01", until="2026-03-31"))
    assert ">1 trial.</p>" in found
    assert 'name="q" value="foam"' in found
    for chosen in ("EP-417", "AR-01", "craters", "fails"):
        assert f'<option value="{chosen}" selected>' in found
    assert 'name="since" value="2026-03-01"' in found


@pytest.mark.parametrize(
    ("typed", "name", "key"),
    [
        ("417-1", "trial", "417-1"),
        (" series 417 ", "series", 417),
        ("k7f", "panel", "K7F"),
        ("EP-417", "base", "EP-417"),
        ("ar-01", "candidate", "AR-01"),
        ("EP-417-R", "material", "EP-417-R"),
    ],
)
def test_code_goes_straight_to_its_record(typed, name, key, page, cup):
    assert page(q=typed).url == reverse(name, args=[key])


def test_code_beside_a_filter_is_looked_for(page, cup):
    assert ">1 trial.</p>" in text(page(q="AR-01", outcome="fails"))


def test_code_of_what_is_not_to_be_seen_finds_nothing(client, colleague, cup):
    Series.objects.update(restricted=True)
    client.force_login(colleague)
    response = client.get(reverse("find"), {"q": "417-1"})
    assert response.status_code == 200
    assert ">0 trials.</p>" in text(response)


@pytest.mark.parametrize(
    ("asked", "said"),
    [
        ({"since": "31.3."}, "From: Enter a day such as 2026-03-31, not “31.3.”."),
        (
            {"since": "2026-03-31", "until": "2026-03-01"},
            "To: 2026-03-01 is before 2026-03-31, the day to begin with.",
        ),
        ({"base": "XX-9"}, "Base: Select a valid choice. XX-9 is not one of the available choices."),
        ({"after": "nowhere"}, "“nowhere” is no place in this list: begin at its first page."),
    ],
)
def test_what_cannot_be_understood_is_named(asked, said, page, cup):
    found = text(page(q="foam", **asked))
    assert said in found
    assert "<title>Error: " in found
    assert 'name="q" value="foam"' in found
    assert "trial.</p>" not in found
    assert "trials.</p>" not in found


def test_restricted_base_is_not_offered(client, colleague, cup):
    base = cup.series.revision.base
    base.restricted = True
    base.save()
    client.force_login(colleague)
    assert "EP-417" not in text(client.get(reverse("find"), {"q": "nothing", "base": ""}))


def test_next_page_keeps_the_question(page, bench, monkeypatch):
    monkeypatch.setattr(search, "A_PAGE", 2)
    make_cups(bench, cups=3)
    first = text(page(q="scout", order="best"))
    link = first.split('<a rel="next" href="')[1].split('"')[0].replace("&amp;", "&")
    assert link.startswith("?q=scout&order=best&after=")
    second = page().client.get(reverse("find") + link)
    assert [row.trial.code for row in second.context["found"].rows] == ["417-1"]
    assert "first page</a>" in text(second)


def test_nothing_is_written_here(client, bench):
    client.force_login(bench)
    assert client.post(reverse("find")).status_code == 405


@pytest.mark.parametrize("cups", [1, 3])
def test_queries_are_fixed_in_number(cups, client, bench, django_assert_num_queries):
    candidate = make_candidate()
    for trial in make_cups(bench, cups=cups):
        dose(trial, candidate)
        rated(make_panel(trial), bench, "craters", 1)
        Trial.objects.filter(pk=trial.pk).update(made_by=bench, lesson="Scout")
    client.force_login(bench)
    client.get(reverse("own_password"))  # the first request of a session writes when it was seen
    # Session and person, the two lists to choose from, a look for such a code (3), and the search itself.
    with django_assert_num_queries(2 + 2 + 3 + 8):
        client.get(reverse("find"), {"q": "scout"})
