import re
from html import unescape

import pytest
from django.urls import reverse

from tests.cup_making import make_cups
from tests.making import NOW, make_epoxy_base
from tests.people import PASSWORD
from trials.models import Finding, Signature
from trials.operations.signing import sign

pytestmark = pytest.mark.django_db
LIVE = {"HX-Request": "true"}
GAS = {"when": "growing", "degassed": "yes", "humidity": "yes", "isocyanate": "yes"}
KEPT = {"when": "at once", "degassed": "no", "cause": "entrained air", "remark": "poured from high up"}


@pytest.fixture
def cup(bench):
    return make_cups(bench)[0]


@pytest.fixture
def at_bench(client, bench):
    client.force_login(bench)
    return client


def _address(cup) -> str:
    return reverse("trial_cause", args=[cup.code])


def _page(client, address, *args, **more) -> str:
    return unescape(client.get(address, *args, **more).content.decode())


def _chosen(page: str) -> dict[str, str]:
    """Answers whose radio button is on, except "not known"."""
    return dict(re.findall(r'<input type="radio" name="([^"]+)" value="([^"]+)" id="[^"]+" checked>', page))


def test_answers_in_the_address_lead_to_the_cause_with_its_reasons(at_bench):
    page = _page(at_bench, reverse("bubbles"), GAS)
    assert "No defoamer will help against carbon dioxide." in page
    assert "What forms after degassing, on glass, is gas of a reaction." in page
    assert "Never close a tin of isocyanate that may have met water: it can burst." in page
    assert "Not known: 8 of 12 questions." in page
    assert _chosen(page) == GAS


def test_nothing_answered_says_what_to_try_and_every_question_may_stay_open(at_bench):
    page = _page(at_bench, reverse("bubbles"))
    assert "The answers do not tell a cause yet." in page
    assert "Pour a fresh panel and look at it at 0, 20, 60 and 120 minutes." in page
    assert page.count("not known</label>") == 12
    assert _chosen(page) == {}


def test_while_answering_the_result_alone_comes(at_bench):
    part = _page(at_bench, reverse("bubbles"), GAS, headers=LIVE)
    assert part.startswith('<p class="lead"><strong>No defoamer will help against carbon dioxide.</strong></p>')
    assert "<form" not in part
    assert "kept-answers" not in part


def test_contradiction_is_told(at_bench):
    page = _page(at_bench, reverse("bubbles"), {"where": "rows", "substrate": "alike"})
    assert "speaks for outgassing, “On glass and on the porous block or concrete? – on both alike” against it" in page


def test_answer_that_is_none_is_told_at_its_question_and_does_not_count(at_bench):
    page = _page(at_bench, reverse("bubbles"), {"when": "noon", "degassed": "yes"})
    assert "Select a valid choice. noon is not one of the available choices." in page
    assert "Not known: 11 of 12 questions." in page


def test_cup_starts_from_what_its_base_says(at_bench, cup):
    page = _page(at_bench, _address(cup))
    assert _chosen(page) == {"isocyanate": "no"}
    assert "Filled in from base EP-417: whether it cures with isocyanate." in page
    assert "ruled out" in page


def test_answer_typed_goes_before_what_the_base_says(at_bench, cup):
    assert _chosen(_page(at_bench, _address(cup), {"isocyanate": ""})) == {}


@pytest.mark.parametrize(("chemistry", "answer"), [("polyurethane", {"isocyanate": "yes"}), ("other", {})])
def test_chemistry_says_whether_it_cures_with_isocyanate(at_bench, bench, chemistry, answer):
    (cup,) = make_cups(bench, revision=make_epoxy_base(bench, chemistry=chemistry))
    assert _chosen(_page(at_bench, _address(cup))) == answer


def test_answers_given_while_looking_go_with_the_finding(at_bench, cup):
    part = _page(at_bench, _address(cup), GAS, headers=LIVE)
    slot = part[part.index('<div id="kept-answers" hx-swap-oob="true"') :]
    assert dict(re.findall(r'name="([^"]+)" value="([^"]+)"', slot)) == GAS


def test_finding_is_kept_and_shown_on_the_page_of_its_cup(at_bench, bench, cup):
    assert at_bench.post(_address(cup), KEPT).url == _address(cup)
    kept = Finding.objects.get()
    assert (kept.trial, kept.person, kept.cause) == (cup, bench, "entrained air")
    assert kept.answers == {"when": "at once", "degassed": "no"}
    for address in (_address(cup), reverse("trial", args=[cup.code])):
        page = _page(at_bench, address)
        assert "When do they appear? there from the first minute" in page
        assert "poured from high up" in page


def test_empty_finding_is_refused_at_the_cause(at_bench, cup):
    page = unescape(at_bench.post(_address(cup), {}).content.decode())
    assert "You take it for: Answer a question, choose a cause or write a remark" in page
    assert not Finding.objects.exists()


def test_cause_that_is_none_is_refused_and_what_was_answered_stays(at_bench, cup):
    page = unescape(at_bench.post(_address(cup), KEPT | {"cause": "bad luck"}).content.decode())
    assert "Select a valid choice. bad luck is not one of the available choices." in page
    assert _chosen(page) == {"when": "at once", "degassed": "no"}
    assert "poured from high up" in page
    assert not Finding.objects.exists()


@pytest.mark.parametrize("signed_by_itself", [False, True])
def test_signed_cup_takes_a_finding_as_an_amendment(at_bench, bench, cup, signed_by_itself):
    cup.made_by = bench
    cup.save()
    sign(actor=bench, now=NOW, record=cup if signed_by_itself else cup.series, meaning="performed")
    page = unescape(at_bench.post(_address(cup), KEPT).content.decode())
    assert "This is signed: amend it" in page
    assert "poured from high up" in page
    assert not Finding.objects.exists()
    reason = {"amend_reason": "looked at the panels again", "amend_password": PASSWORD}
    assert at_bench.post(_address(cup), KEPT | reason).status_code == 302
    assert Finding.objects.get().remark == "poured from high up"
    amended = Signature.objects.order_by("pk").last()
    assert (amended.meaning, amended.reason) == ("amended", "looked at the panels again")
    assert "poured from high up" in amended.canonical


def test_reader_looks_but_keeps_nothing(client, reader, cup):
    client.force_login(reader)
    assert "Keep the finding" not in _page(client, _address(cup))
    assert client.post(_address(cup), KEPT).status_code == 403
    assert not Finding.objects.exists()


def test_cup_that_is_not_seen_is_not_there(client, bench, colleague):
    (cup,) = make_cups(bench, restricted=True)
    client.force_login(colleague)
    assert client.get(_address(cup)).status_code == 404
    assert client.post(_address(cup), KEPT).status_code == 404
