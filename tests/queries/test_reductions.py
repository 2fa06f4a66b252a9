from decimal import Decimal

import pytest
from django.db.models import Q

from tests.cup_making import make_cups, make_panel, rated
from tests.making import NOW
from trials.figures.swatch import Film
from trials.models import Criterion, StoredTin
from trials.queries.films import films
from trials.queries.reductions import reduced_values, reductions

pytestmark = pytest.mark.django_db


def test_quantities_give_their_mean_and_steps_their_median(bench, colleague):
    (cup,) = make_cups(bench)
    first, second = make_panel(cup), make_panel(cup)
    for panel, person, count, grade in (
        (first, bench, 10, 1),
        (first, colleague, 20, 1),
        (second, bench, 40, 4),
        (second, colleague, 30, 2),
    ):
        rated(panel, person, "bubble-count", count)
        rated(panel, person, "bubbles", grade)
    # (10 + 20 + 40 + 30) / 4 = 25; the middle of 1, 1, 2, 4 is 1.5
    found = reductions([cup])[cup.pk]
    assert (found["bubble-count"].value, found["bubbles"].value) == (25, 1.5)
    assert (found["bubbles"].ratings, found["bubbles"].panels, found["bubbles"].readers) == (4, 2, 2)


def test_latest_cured_age_counts_and_ages_stay_apart(bench):
    (cup,) = make_cups(bench)
    panel = make_panel(cup)
    for age_h, value in ((4, 5), (24, 2), (168, 3)):
        rated(panel, bench, "bubbles", value, age_h=age_h)
    assert reduced_values([cup])[cup.pk] == {"bubbles": 3}
    assert reduced_values([cup], age_h=24)[cup.pk] == {"bubbles": 2}
    assert reduced_values([cup], age_h=4)[cup.pk] == {"bubbles": 5}
    assert reduced_values([cup], age_h=72)[cup.pk] == {}


def test_before_20_h_nothing_is_cured_unless_asked_for(bench):
    (cup,) = make_cups(bench)
    rated(make_panel(cup), bench, "bubbles", 2, age_h="19.9")
    assert reduced_values([cup]) == {cup.pk: {}}


def test_readers_of_about_one_age_are_read_together_and_each_counts_once(bench, colleague):
    (cup,) = make_cups(bench)
    panel = make_panel(cup)
    rated(panel, bench, "bubble-count", 10, age_h="23.5")
    rated(panel, bench, "bubble-count", 90, age_h=28)
    rated(panel, colleague, "bubble-count", 20, age_h=24)
    # At 24 h: the 10 of the first reader is nearer than the 90, the other reads 20.
    assert reduced_values([cup], age_h=24)[cup.pk] == {"bubble-count": 15}


def test_words_have_no_value(bench):
    (cup,) = make_cups(bench)
    rated(make_panel(cup), bench, "bubbles", None, word="dust on it")
    assert reduced_values([cup]) == {cup.pk: {}}


def test_stored_panels_stay_apart_from_fresh_ones(bench):
    (cup,) = make_cups(bench)
    tins = [StoredTin.objects.create(trial=cup, temperature_c=50, days=days, stored_at=NOW) for days in (14, 28)]
    rated(make_panel(cup), bench, "bubbles", 1)
    rated(make_panel(cup, stored_tin=tins[0]), bench, "bubbles", 3)
    rated(make_panel(cup, stored_tin=tins[1]), bench, "bubbles", 5)
    assert reduced_values([cup])[cup.pk] == {"bubbles": 1}
    assert reduced_values([cup], stored=True)[cup.pk] == {"bubbles": 4}
    assert reduced_values([cup], stored=True, panels=Q(stored_tin__days=28))[cup.pk] == {"bubbles": 5}


def test_build_ups_are_told_apart_by_a_condition(bench):
    (cup,) = make_cups(bench)
    rated(make_panel(cup, wet_um="2000"), bench, "bubbles", 0)
    rated(make_panel(cup, wet_um="4000"), bench, "bubbles", 4)
    assert reduced_values([cup], panels=Q(layers__wet_um=4000))[cup.pk] == {"bubbles": 4}


def test_newer_version_of_a_scale_counts(bench):
    (cup,) = make_cups(bench)
    panel = make_panel(cup)
    rated(panel, bench, "bubbles", 4)
    Criterion.objects.filter(key="bubbles").update(current=False)
    Criterion.objects.create(
        key="bubbles", version=2, name="Bubbles", position=1, scale="steps", low=0, high=10,
        better="lower", concern="efficiency",
    )  # fmt: skip
    rated(panel, bench, "bubbles", 8)
    assert reduced_values([cup])[cup.pk] == {"bubbles": 8}
    # 8 of 10 is drawn as 4 of 5
    assert films([cup])[cup.pk] == Film(bubbles=4)


def test_films_are_drawn_from_what_was_read(bench):
    cups = make_cups(bench, cups=2)
    panel = make_panel(cups[0])
    for key, value in (("bubble-count", "12.5"), ("craters", 1), ("fish-eyes", 3), ("gloss", 85), ("haze", 0)):
        rated(panel, bench, key, Decimal(value))
    assert films(cups) == {cups[0].pk: Film(bubbles_per_dm2=12.5, craters=3, haze=0), cups[1].pk: Film()}


@pytest.mark.parametrize("cups", [1, 3])
def test_one_query_however_many_cups(bench, django_assert_num_queries, cups):
    made = make_cups(bench, cups=cups)
    for cup in made:
        rated(make_panel(cup), bench, "bubbles", 1)
    with django_assert_num_queries(1):
        films(made)
