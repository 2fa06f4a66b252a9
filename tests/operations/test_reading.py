from decimal import Decimal

import pytest
from django.core.exceptions import PermissionDenied

from tests.cup_making import make_cups, make_panel, signed
from tests.making import NOW
from trials.models import Criterion, Rating
from trials.operations.acting import Refused
from trials.operations.reading import RatingEntry, rate, take_back

pytestmark = pytest.mark.django_db


def criterion(key):
    return Criterion.objects.get(key=key, current=True)


def entry(panel, key="bubbles", value="2", age_h="24", **more):
    value = None if value is None else Decimal(value)
    return RatingEntry(panel, criterion(key), Decimal(age_h), value, **more)


def test_panels_criteria_and_ages_in_one_go(bench):
    cups = make_cups(bench, cups=2)
    panels = [make_panel(cup) for cup in cups]
    ratings = [
        entry(panel, key, "1.5", age, blind=True)
        for panel in panels
        for key in ("bubbles", "haze")
        for age in ("24", "168")
    ]
    ratings.append(entry(panels[0], "bubble-count", "12", instrument="camera"))
    ratings.append(entry(panels[1], "crawling", None, word="not read"))
    assert rate(actor=bench, now=NOW, ratings=ratings) == 10
    assert set(Rating.objects.values_list("person", flat=True)) == {bench.pk}
    assert Rating.objects.filter(blind=True).count() == 8
    assert {cup.state for cup in type(cups[0]).objects.all()} == {"read"}


def test_words_alone_do_not_make_a_cup_read(bench):
    (cup,) = make_cups(bench)
    rate(actor=bench, now=NOW, ratings=[entry(make_panel(cup), value=None, word="dust on it")])
    cup.refresh_from_db()
    assert cup.state == "planned"


def test_same_reading_again_replaces_and_other_readers_stay(bench, colleague):
    (cup,) = make_cups(bench)
    panel = make_panel(cup)
    rate(actor=bench, now=NOW, ratings=[entry(panel, value="2")])
    rate(actor=colleague, now=NOW, ratings=[entry(panel, value="4")])
    assert rate(actor=bench, now=NOW, ratings=[entry(panel, value="2")]) == 0
    assert rate(actor=bench, now=NOW, ratings=[entry(panel, value="3", age_h="24.0")]) == 1
    assert list(Rating.objects.order_by("person").values_list("value", flat=True)) == [3, 4]


@pytest.mark.parametrize(
    ("given", "message", "field"),
    [
        ({"value": "6"}, "K7F, Bubbles must be from 0 to 5; got 6", "value"),
        ({"value": "-1"}, "K7F, Bubbles must be from 0 to 5; got -1", "value"),
        ({"value": "2.3"}, "K7F, Bubbles is graded in whole or half steps from 0 to 5; got 2.3", "value"),
        ({"key": "gloss", "value": "201"}, "K7F, Gloss must be from 0 to 200 GU at 60°; got 201", "value"),
        ({"value": None}, "K7F, Bubbles: enter a value, or a word", "value"),
        ({"age_h": "-1"}, "K7F, Bubbles: the age must be 0 h or more; got -1", "age_h"),
    ],
)
def test_off_scale_is_refused_with_the_range(bench, given, message, field):
    panel = make_panel(make_cups(bench)[0], "K7F")
    with pytest.raises(Refused, match=message) as refused:
        rate(actor=bench, now=NOW, ratings=[entry(panel, "haze"), entry(panel, **given)])
    assert refused.value.field == field
    assert not Rating.objects.exists()


def test_quantities_are_read_between_the_steps(bench):
    rate(actor=bench, now=NOW, ratings=[entry(make_panel(make_cups(bench)[0]), "gloss", "82.3")])
    assert Rating.objects.get().value == Decimal("82.3")


def test_one_panel_twice_in_one_go_is_refused(bench):
    panel = make_panel(make_cups(bench)[0], "K7F")
    with pytest.raises(Refused, match="K7F, Bubbles at 24 h is given twice"):
        rate(actor=bench, now=NOW, ratings=[entry(panel), entry(panel, value="3")])


@pytest.mark.parametrize("panels", [1, 6])
def test_many_panels_in_as_many_statements_as_one(bench, django_assert_num_queries, panels):
    (cup,) = make_cups(bench)
    ratings = [entry(make_panel(cup), key) for _ in range(panels) for key in ("bubbles", "haze")]
    with django_assert_num_queries(5):
        rate(actor=bench, now=NOW, ratings=ratings)


def test_signed_panel_takes_no_rating(bench):
    (cup,) = make_cups(bench)
    panel = make_panel(cup)
    signed(cup.series, bench)
    with pytest.raises(Refused, match="This is signed"):
        rate(actor=bench, now=NOW, ratings=[entry(panel)])


def test_only_the_reader_takes_a_rating_back(bench, colleague):
    panel = make_panel(make_cups(bench)[0])
    rate(actor=bench, now=NOW, ratings=[entry(panel)])
    with pytest.raises(Refused, match="Only Bench One takes back"):
        take_back(actor=colleague, rating=Rating.objects.get())
    take_back(actor=bench, rating=Rating.objects.get())
    assert not Rating.objects.exists()


def test_person_with_the_right_to_read_only_rates_nothing(bench, reader):
    panel = make_panel(make_cups(bench)[0])
    with pytest.raises(PermissionDenied):
        rate(actor=reader, now=NOW, ratings=[entry(panel)])
