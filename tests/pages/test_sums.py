"""Sums: what the page shows is what ``science`` answers, told at the field where it refuses."""

import re
from decimal import Decimal
from html import unescape

import pytest
from django.urls import reverse

from tests.cup_making import dose, make_candidate, make_cups
from tests.making import make_epoxy_base
from trials.models import BaseShare, SeriesShare, WetReading, Working
from trials.pages.sums.every import SUMS
from trials.pages.sums.lines import work_out
from trials.queries.bases import load_revision
from trials.queries.recipes import components_of
from trials.queries.shift import Added, shift_of
from trials.science import dosage

pytestmark = pytest.mark.django_db
LIVE = {"HX-Request": "true"}

# One address for each sum with everything typed, and some of the figures that must come of it. The checks against
# the outside stand in tests/standards; these say that the page asks the right function with the right numbers.
TYPED = {
    "dosage": (
        {"dosage_pct": "0,5", "a_g": "1000", "b_g": "250", "strength_pct": "10"},
        {
            "Mass that the per cent are of": "1250 g",
            "Additive to weigh": "6.25 g as supplied",
            "Rounding of the balance": "0.08 % of the dose, up or down",
            "The same, counted the other way": "0.4975 %",
            "The same, on top of the component chosen": "0.625 %",
            "Dilution to weigh instead": "62.5 g",
            "Carrier that it brings in": "56.25 g",
        },
    ),
    "weighed": (
        {"additive_g": "6.25", "a_g": "1000", "b_g": "250"},
        {"Dosage as weighed": "0.5 %", "The same, counted the other way": "0.4975 %"},
    ),
    "top-up": ({"from_pct": "0.2", "to_pct": "0.5", "a_g": "1000"}, {"Additive to add": "3 g as supplied"}),
    "dilution": (
        {"additive_g": "0.15", "strength_pct": "10", "balance_step_g": "0.01"},
        {
            "Dilution to weigh": "1.5 g",
            "Rounding of the balance, undiluted": "3.3 % of the dose, up or down",
            "Rounding of the balance, diluted": "0.33 % of the dose, up or down",
        },
    ),
    "ratio": (
        {
            "a_g": "100",
            "parts_a": "100",
            "parts_b": "22,41",
            "parts_c": "10",
            "chemistry": "epoxy-amine",
            "resin_equivalent_g": "190",
            "hardener_equivalent_g": "42.574",
        },
        {"Component B to weigh": "22.41 g", "Component C to weigh": "10 g", "Index as sold": "1"},
    ),
    "heat": (
        {"known_min": "60", "known_c": "20", "at_c": "30", "resin_equivalent_g": "190", "parts_b": "22.4211"},
        {
            "Pot life there": "30 min",
            "Mix that holds one equivalent": "232.6 g",
            "Rise in temperature at most": "226 K",
        },
    ),
    "tip-speed": (
        {"blade_mm": "40", "rpm": "2000", "vessel_mm": "120", "tip_speed_m_s": "5", "to_blade_mm": "300"},
        {
            "Tip speed": "4.189 m/s",
            "Speed for the tip speed wanted": "2387 rpm",
            "Blade over vessel": "0.33",
            "Speed in the other vessel": "266.7 rpm",
        },
    ),
    "air": (
        {
            "density_g_ml": "1.180",
            "air_free_g_ml": "1.250",
            "u_density_g_ml": "0.002",
            "u_air_free_g_ml": "0.001",
            "blank_g_ml": "1.05",
        },
        {
            "Air content": "5.6 % by volume",
            "Its standard uncertainty": "0.18 % by volume",
            "Defoaming efficiency": "65 %",
        },
    ),
    "rise": (
        {
            "diameter_um": "100",
            "film_um": "2000",
            "viscosity_mpa_s": "800",
            "mix_g_ml": "1.1",
            "doubling_min": "13.862944",
            "gel_min": "40",
            "yield_pa": "0.001",
        },
        {
            "Escapes or trapped": "escapes",
            "Time to the surface": "302 s",
            "Risen by gel": "7764 µm",
            "Smallest bubble that escapes": "50.8 µm",
            "Held by the yield value": "1.95 µm and below",
        },
    ),
    "film": (
        {
            "dry_film_um": "2000",
            "volume_solids_pct": "100",
            "mix_g_ml": "1.45",
            "loss_pct": "10",
            "price_per_kg": "20",
            "total_pct": "0,5",
        },
        {"Wet film": "2000 µm", "Spreading rate": "0.5 m²/L", "Consumption": "3222 g/m²"},
    ),
    "cups": (
        {"difference": "0.5", "standard_deviation": "1", "cups": "64"},
        {"Cups of each kind": "64 and as many blanks", "before rounding up": "63.77"},
    ),
}


def _text(fragment: str) -> str:
    return " ".join(unescape(re.sub("<[^>]+>", "", fragment)).split())


def figures(response) -> dict[str, str]:
    """Label and value with its unit of every line that came out."""
    found = re.findall(r'<dt>([^<]*)</dt>\s*<dd class="value">(.*?)</dd>', response.content.decode(), re.DOTALL)
    return {_text(label): _text(value) for label, value in found}


def error_at(response, name: str) -> str:
    slot = re.search(rf'<div id="error-{name}"[^>]*>(.*?)</div>', response.content.decode(), re.DOTALL)
    return _text(slot[1]).removeprefix("Error: ")


def wrong_fields(response) -> list[str]:
    slots = re.findall(r'id="error-(\w+)"', response.content.decode())
    return [name for name in slots if error_at(response, name)]


@pytest.fixture
def at_bench(client, bench):
    client.force_login(bench)
    return client


def ask(client, slug, typed, **more):
    return client.get(reverse("sum", args=[slug]), typed, **more)


def test_every_sum_is_tried_here():
    assert {one.slug for one in SUMS} == set(TYPED)


@pytest.mark.parametrize("slug", TYPED)
def test_figures_follow_from_what_is_typed(at_bench, slug):
    typed, expected = TYPED[slug]
    found = figures(ask(at_bench, slug, typed))
    assert {label: found.get(label) for label in expected} == expected


@pytest.mark.parametrize("one", SUMS, ids=lambda one: one.slug)
def test_every_line_comes_out_with_its_formula_and_source(at_bench, one):
    page = ask(at_bench, one.slug, TYPED[one.slug][0])
    assert len(re.findall('<dd class="value">', page.content.decode())) == len(one.lines)
    for line in one.lines:
        assert line.formula
        assert line.source
        assert unescape(page.content.decode()).count(line.formula) >= 1
    assert wrong_fields(page) == []


@pytest.mark.parametrize("one", SUMS, ids=lambda one: one.slug)
def test_while_typing_the_same_address_answers_with_the_result_alone(at_bench, one):
    whole, part = (ask(at_bench, one.slug, TYPED[one.slug][0], headers=sent) for sent in ({}, LIVE))
    assert figures(part) == figures(whole)
    assert "<form" in whole.content.decode()
    assert "<form" not in part.content.decode()
    slots = re.findall(r'id="error-(\w+)" data-error-slot="id_\w+" hx-swap-oob="true"', part.content.decode())
    assert slots == list(one.form().fields)


@pytest.mark.parametrize("one", SUMS, ids=lambda one: one.slug)
def test_empty_sum_says_what_to_type_and_blames_nobody(at_bench, one):
    page = ask(at_bench, one.slug, {})
    assert "– enter “" in unescape(page.content.decode())
    assert wrong_fields(page) == []


WRONG = [
    ("dosage", {"dosage_pct": "half"}, "dosage_pct", "Enter a number: “half” is not a number."),
    ("dosage", {"dosage_pct": "0.5 g", "a_g": "1"}, "dosage_pct", "Enter the number in %, not “0.5 g”."),
    ("dosage", {"dosage_pct": "101", "a_g": "100"}, "dosage_pct", "Dosage must be between 0 and 100; got 101.0"),
    ("dosage", {"dosage_pct": "1", "a_g": "-3"}, "a_g", "Component A must not be negative; got -3.0"),
    (
        "dosage",
        {"dosage_pct": "1", "a_g": "100", "basis": "binder solids"},
        "a_solids_pct",
        "Binder solids in A must be known for a dosage on binder solids; got None",
    ),
    (
        "dosage",
        {"dosage_pct": "50", "a_g": "100", "counting": "within", "supplied": "active", "active_pct": "40"},
        "dosage_pct",
        "Dosage counted within must stay below active matter (40.0), or no room is left for the basis; got 50.0",
    ),
    ("dosage", {"basis": "everything"}, "basis", "Select a valid choice. everything is not one of"),
    (
        "air",
        {"density_g_ml": "1,30", "air_free_g_ml": "1,25"},
        "density_g_ml",
        "Density with its air must not exceed density free of air (1.25)",
    ),
    (
        "top-up",
        {"from_pct": "0.5", "to_pct": "0.2", "a_g": "10"},
        "to_pct",
        "Dosage wanted must not be below dosage it has (0.5); got 0.2",
    ),
    (
        "tip-speed",
        {"blade_mm": "90", "vessel_mm": "80"},
        "blade_mm",
        "Blade must be smaller than vessel (80.0); got 90.0",
    ),
    ("rise", {"viscosity_mpa_s": "-800"}, "viscosity_mpa_s", "Enter a number above 0, not -800."),
    ("ratio", {"a_g": "100", "parts_b": "0"}, "parts_b", "Parts of B must be above 0; got 0.0"),
    (
        "ratio",
        TYPED["ratio"][0] | {"additive_g": "-1"},
        "additive_g",
        "Additive in A must not be negative; got -1.0",
    ),
    ("cups", {"difference": "1", "standard_deviation": "1", "arms": "1.5"}, "arms", "Kinds of treated cup must be a"),
    ("cups", {"difference": "1", "standard_deviation": "1", "arms": "101"}, "arms", "Enter 1 to 100, not 101."),
    ("film", {"dry_film_um": "10", "mix_g_ml": "0"}, "mix_g_ml", "Density of the mix must be above 0; got 0.0"),
]


@pytest.mark.parametrize(("slug", "typed", "field", "words"), WRONG)
@pytest.mark.parametrize("sent", [{}, LIVE], ids=["page", "live"])
def test_what_cannot_be_is_told_at_its_field_with_the_value(at_bench, slug, typed, field, words, sent):
    page = ask(at_bench, slug, typed, headers=sent)
    assert error_at(page, field).startswith(words)
    assert wrong_fields(page) == [field]


ODD = ["", "0", "-1", "1e9", "abc", "1" * 400, "9" * 30, "0,0000000000001", "\u0663", "1,2,3", "nothing\x00"]


@pytest.mark.parametrize("text", ODD, ids=lambda text: repr(text[:12]))
@pytest.mark.parametrize("one", SUMS, ids=lambda one: one.slug)
def test_no_input_breaks_a_sum(one, text):
    """Every number is taken, left out or told at a field; whatever it is, there is an answer."""
    standing = {name: field.initial for name, field in one.form.base_fields.items() if field.initial is not None}
    for name in one.form.base_fields:
        form = one.form(standing | TYPED[one.slug][0] | {name: text})
        found = work_out(one, form)
        assert len(found.facts) == len(one.lines)
        assert all(bool(fact.value) is not bool(fact.lacking) for fact in found.facts)
        assert not any("nan" in fact.value or "inf" in fact.value for fact in found.facts)
        assert form.errors or not any("error" in fact.lacking for fact in found.facts)
    assert work_out(one, one.form(dict.fromkeys(one.form.base_fields, text)))


def test_figures_that_do_not_need_the_wrong_number_still_come(at_bench):
    found = figures(ask(at_bench, "tip-speed", {"blade_mm": "40", "rpm": "2000", "vessel_mm": "big"}))
    assert found == {"Tip speed": "4.189 m/s"}


def test_blank_weighs_nothing_and_is_no_error(at_bench):
    page = ask(at_bench, "dosage", {"dosage_pct": "0", "a_g": "100"})
    assert figures(page)["Additive to weigh"] == "0 g as supplied"
    assert figures(page)["Rounding of the balance"] == "nothing to weigh"


def test_bubble_that_a_thickening_film_outruns_is_trapped(at_bench):
    typed = TYPED["rise"][0] | {"diameter_um": "20"}
    found = figures(ask(at_bench, "rise", typed))
    assert found["Escapes or trapped"] == "trapped"
    assert found["Time to the surface"] == "never: the film thickens faster"
    assert "is not the open time of a thin film" in ask(at_bench, "rise", typed).content.decode()


def test_bubble_that_the_yield_value_holds_is_trapped_whatever_stokes_says(at_bench):
    found = figures(ask(at_bench, "rise", TYPED["rise"][0] | {"yield_pa": "0.1"}))
    assert found["Escapes or trapped"] == "trapped: the yield value holds it"
    assert found["Time to the surface"] == "never: the yield value holds it"
    assert found["Held by the yield value"] == "195 µm and below"
    assert found["Smallest bubble that escapes"] == "195 µm"


@pytest.mark.parametrize("slug", ["ratio", "heat"])
def test_caution_stands_where_somebody_could_be_hurt(at_bench, slug):
    page = ask(at_bench, slug, {}).content.decode()
    assert "Amine hardeners burn and sensitise" in page
    assert "Safety data sheets, local rules and qualified people take precedence." in page


def test_unknown_sum_is_not_there(at_bench):
    assert ask(at_bench, "horoscope", {}).status_code == 404


ADDED = [("epoxide", 140.0), ("amine hydrogen", 50.0), ("hydroxyl", 60.0)]


@pytest.mark.parametrize(("group", "equivalent"), ADDED)
def test_shift_is_the_one_that_cups_show(at_bench, bench, group, equivalent):
    """The weighing sheet works from the recipe, the sum from equivalents: both ask the same functions."""
    revision = load_revision(bench, make_epoxy_base(bench).base.code)
    components = components_of(revision)
    expected = shift_of(
        "epoxy-amine",
        components,
        {"A": 100.0, "B": 22.0},
        (Added("AR-01", 1.5, {group: equivalent}),),
        {"A": None, "B": None},
    )
    typed = {"a_g": 100, "additive_g": "1.5", "additive_group": group, "additive_equivalent_g": equivalent}
    found = figures(ask(at_bench, "ratio", {"base": "EP-F1", "revision": 1, **typed}))
    shift = float(found["Shift of the demand for B"].removesuffix(" %").replace("\u2212", "-"))
    assert shift == pytest.approx(expected.pct, rel=0.005, abs=1e-9)


def test_water_in_a_polyurethane_shifts_the_index_by_two_per_cent(at_bench):
    """0.05 g of water in 100 g: common practice, no source; the gas is the ideal one, 67.4 mL at 23 °C."""
    typed = {
        "a_g": "80",
        "parts_a": "80",
        "parts_b": "20",
        "chemistry": "polyurethane",
        "resin_equivalent_g": "290",
        "hardener_equivalent_g": "72.5",
        "water_pct": "0.0625",
    }
    page = ask(at_bench, "ratio", typed)
    assert figures(page)["Shift of the demand for B"] == "2.01 %"
    assert figures(page)["Carbon dioxide from the water in A"] == "67.4 mL at 23 °C"
    assert "a closed tin can burst" in page.content.decode()


def test_base_fills_in_what_it_knows(at_bench, bench):
    make_epoxy_base(bench, film_um=Decimal(2000))
    page = ask(at_bench, "ratio", {"base": "EP-F1", "revision": "1", "a_g": "500"})
    # 60 parts of 190 g/eq in 100 make 316.7 g/eq of A.
    assert {label: figures(page)[label] for label in ("Component B to weigh", "Index as sold")} == {
        "Component B to weigh": "110 g",
        "Index as sold": "1.161",
    }
    assert figures(page)["Shift of the demand for B"] == "0 %"
    assert "EP-F1 revision 1" in page.content.decode()
    assert 'name="revision" value="1"' in page.content.decode()
    assert figures(ask(at_bench, "film", {"base": "EP-F1"}))["Wet film"] == "2000 µm"


def test_what_is_typed_goes_before_what_the_base_knows(at_bench, bench):
    make_epoxy_base(bench)
    typed = {"base": "EP-F1", "a_g": "", "parts_b": "30"}
    page = ask(at_bench, "ratio", typed)
    assert figures(page).get("Component B to weigh") is None
    assert figures(ask(at_bench, "ratio", typed | {"a_g": "100"}))["Component B to weigh"] == "30 g"


def test_cup_fills_in_what_was_planned_stirred_and_read(at_bench, bench):
    (cup,) = make_cups(bench)
    dose(cup, make_candidate(), weighed_g=Decimal("0.70"))
    Working.objects.create(trial=cup, position=1, kind="disperse", blade_mm=40, vessel_mm=80, rpm=2000, minutes=5)
    WetReading.objects.create(trial=cup, quantity="density", where="mix", value=Decimal("1.30"), minutes=0)
    type(cup.series.revision).objects.filter(pk=cup.series.revision_id).update(air_free_density_g_ml="1.40")
    start = {"trial": "417-1"}
    weighed = dosage.dosage_pct(0.70, 122.0)
    assert figures(ask(at_bench, "weighed", start))["Dosage as weighed"] == f"{weighed:.4g} %"
    assert figures(ask(at_bench, "tip-speed", start))["Tip speed"] == "4.189 m/s"
    assert figures(ask(at_bench, "air", start))["Air content"] == "7.14 % by volume"
    assert figures(ask(at_bench, "dosage", start))["Additive to weigh"] == "0.61 g as supplied"


def test_unseen_base_and_cup_are_as_if_they_were_not_there(client, bench, colleague):
    (cup,) = make_cups(bench, restricted=True)
    base = make_epoxy_base(bench, code="EP-S1", restricted=True).base
    client.force_login(colleague)
    for typed, words in (
        ({"base": base.code}, "There is no base “EP-S1” that you may see."),
        ({"trial": cup.code}, f"There is no cup “{cup.code}” that you may see."),
        ({"trial": "999-9"}, "There is no cup “999-9” that you may see."),
    ):
        page = ask(client, "ratio", typed)
        assert words in page.content.decode()
        assert figures(page) == {}
    SeriesShare.objects.create(series=cup.series, person=colleague)
    BaseShare.objects.create(base=base, person=colleague)
    assert "Filled in from" in ask(client, "ratio", {"base": base.code}).content.decode()
    assert "Filled in from" in ask(client, "ratio", {"trial": cup.code}).content.decode()


def test_cup_of_a_base_that_is_not_seen_tells_nothing_of_that_base(client, bench, colleague):
    revision = make_epoxy_base(bench, code="EP-S2", restricted=True)
    (cup,) = make_cups(bench, revision=revision)
    client.force_login(colleague)
    page = ask(client, "ratio", {"trial": cup.code})
    assert "Filled in from" in page.content.decode()
    assert figures(page) == {}


def test_revision_that_is_none_is_told(at_bench, bench):
    make_epoxy_base(bench)
    assert "EP-F1 has no revision 7." in ask(at_bench, "ratio", {"base": "EP-F1", "revision": "7"}).content.decode()


def test_list_leads_to_every_sum_with_what_it_starts_from(at_bench, bench):
    make_epoxy_base(bench)
    page = at_bench.get(reverse("sums"), {"base": "EP-F1"}).content.decode()
    for one in SUMS:
        assert f'href="/sums/{one.slug}/?base=EP-F1&amp;revision=1"' in page
