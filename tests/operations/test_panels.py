import re
from datetime import timedelta
from decimal import Decimal

import pytest
from django.core.exceptions import PermissionDenied

from tests.cup_making import make_cups, make_panel, signed
from tests.making import NOW
from trials.models import Layer, Panel, Retain, StoredTin
from trials.operations import panel_codes
from trials.operations.acting import Refused
from trials.operations.panels import (
    LayerEntry,
    OpenedEntry,
    PanelEntry,
    RetainEntry,
    TinEntry,
    apply_panels,
    change_panel,
    change_retain,
    open_tins,
    retain,
    store_tins,
)

pytestmark = pytest.mark.django_db
BODY = (LayerEntry(Decimal(2000)),)


def test_build_up_is_kept_layer_by_layer(bench):
    (cup,) = make_cups(bench)
    layers = (
        LayerEntry(Decimal(300), "primer", "roller"),
        LayerEntry(Decimal(2000), "body coat", "notched trowel", spiked_after_min=Decimal(10)),
        LayerEntry(Decimal(200), "second coat", "roller", recoated_after_h=Decimal(24), sanded=True),
    )
    entry = PanelEntry(
        cup, layers, "concrete", area_dm2=Decimal(3), air_c=Decimal(20), humidity_pct=Decimal(70),
        substrate_c=Decimal("16.0"),
    )  # fmt: skip
    (panel,) = apply_panels(actor=bench, now=NOW, entries=[entry])
    found = panel.layers.order_by("position").values_list("coat", "spiked_after_min", "recoated_after_h", "sanded")
    assert list(found) == [
        ("primer", None, None, False),
        ("body coat", Decimal(10), None, False),
        ("second coat", None, Decimal(24), True),
    ]
    cup.refresh_from_db()
    assert (panel.applied_at, str(panel.substrate_c), cup.state) == (NOW, "16.0", "applied")


def test_codes_say_nothing_and_confuse_nobody(bench):
    cups = make_cups(bench, cups=2)
    entries = [PanelEntry(cup, BODY) for cup in cups for _ in range(100)]
    panels = apply_panels(actor=bench, now=NOW, entries=entries)
    codes = [panel.code for panel in panels]
    assert len(set(codes)) == 200
    assert not set("".join(codes)) & set("01OIL9GBSZQUVE")
    assert all(re.search("[A-Z]", code) and re.search("[0-9]", code) and len(code) == 3 for code in codes)
    # Drawn by lot: the codes of the first cup are not the lower half.
    assert sorted(codes) != codes


def test_taken_code_is_drawn_again(bench):
    (cup,) = make_cups(bench)
    make_panel(cup, "K7F")
    drawn = iter(["K7F", "K7F", "M4T", "M4T", "R3W"])
    assert panel_codes.free_codes(2, drawn=lambda: next(drawn, "R3W")) in (["M4T", "R3W"], ["R3W", "M4T"])


def test_when_hardly_a_code_is_left_it_says_so(bench):
    (cup,) = make_cups(bench)
    make_panel(cup, "K7F")
    with pytest.raises(Refused, match="codes of four"):
        panel_codes.free_codes(1, drawn=lambda: "K7F")


def test_code_of_a_label_made_before_is_taken(bench):
    (cup,) = make_cups(bench)
    assert apply_panels(actor=bench, now=NOW, entries=[PanelEntry(cup, BODY, code=" k7f ")])[0].code == "K7F"
    with pytest.raises(Refused, match="There is a panel K7F already"):
        apply_panels(actor=bench, now=NOW, entries=[PanelEntry(cup, BODY, code="K7F")])


@pytest.mark.parametrize("code", ["417", "K7", "K7F-1", "KKKKKKK"])
def test_code_that_is_none_is_refused(bench, code):
    (cup,) = make_cups(bench)
    with pytest.raises(Refused, match=f"got “{code}”") as refused:
        apply_panels(actor=bench, now=NOW, entries=[PanelEntry(cup, BODY, code=code)])
    assert refused.value.field == "code"


@pytest.mark.parametrize(
    ("entry", "message", "field"),
    [
        ({"layers": ()}, "417-1: a panel has at least one layer", "layers"),
        ({"layers": (LayerEntry(Decimal(0)),)}, "417-1, layer 1: Wet film must be above 0; got 0 µm", "wet_um"),
        ({"area_dm2": Decimal(-3)}, "417-1, panel: Area must be above 0; got -3 dm²", "area_dm2"),
        ({"humidity_pct": Decimal(101)}, "Humidity must be from 0 to 100; got 101 %", "humidity_pct"),
        ({"substrate": "paper"}, "paper", "substrate"),
    ],
)
def test_impossible_panels_are_refused(bench, entry, message, field):
    (cup,) = make_cups(bench)
    with pytest.raises(Refused, match=message) as refused:
        apply_panels(actor=bench, now=NOW, entries=[PanelEntry(cup, **{"layers": BODY, **entry})])
    assert refused.value.field == field
    assert not Panel.objects.exists()


@pytest.mark.parametrize("cups", [1, 5])
def test_panels_of_many_cups_in_as_many_statements_as_of_one(bench, django_assert_num_queries, cups):
    made = make_cups(bench, cups=cups)
    with django_assert_num_queries(7):
        apply_panels(actor=bench, now=NOW, entries=[PanelEntry(cup, BODY) for cup in made for _ in range(2)])


def test_panel_is_put_right_and_keeps_code_and_cup(bench):
    (cup,) = make_cups(bench)
    (panel,) = apply_panels(actor=bench, now=NOW, entries=[PanelEntry(cup, BODY)])
    change_panel(actor=bench, panel=panel, layers=(LayerEntry(Decimal(1800)),), substrate="steel")
    panel.refresh_from_db()
    assert (panel.substrate, Layer.objects.get().wet_um) == ("steel", Decimal(1800))
    with pytest.raises(TypeError, match="trial"):
        change_panel(actor=bench, panel=panel, trial=cup)


def test_stored_tin_is_opened_before_panels_are_made_from_it(bench):
    cup, other = make_cups(bench, cups=2, parts=("treated", "blank"))
    tins = store_tins(actor=bench, now=NOW, entries=[TinEntry(one, 28, Decimal(50)) for one in (cup, other)])
    with pytest.raises(Refused, match="417-1: the tin of 28 d is still closed"):
        apply_panels(actor=bench, now=NOW, entries=[PanelEntry(cup, BODY, stored_tin=tins[0])])
    later = NOW + timedelta(days=28)
    open_tins(actor=bench, entries=[OpenedEntry(tins[0], later, "clear layer of 3 mm on top")])
    with pytest.raises(Refused, match="417-2: the tin was stored from another cup"):
        apply_panels(actor=bench, now=later, entries=[PanelEntry(other, BODY, stored_tin=tins[0])])
    (panel,) = apply_panels(actor=bench, now=later, entries=[PanelEntry(cup, BODY, stored_tin=tins[0])])
    assert panel.stored_tin.appearance == "clear layer of 3 mm on top"


@pytest.mark.parametrize(
    ("opened", "appearance", "field"), [(timedelta(days=-1), "even", "opened_at"), (timedelta(1), " ", "appearance")]
)
def test_tin_is_opened_after_it_was_stored_and_looked_at(bench, opened, appearance, field):
    (tin,) = store_tins(actor=bench, now=NOW, entries=[TinEntry(make_cups(bench)[0], 14, Decimal(50))])
    with pytest.raises(Refused) as refused:
        open_tins(actor=bench, entries=[OpenedEntry(tin, NOW + opened, appearance)])
    assert refused.value.field == field
    assert StoredTin.objects.get().opened_at is None


def test_tin_for_no_days_is_refused(bench):
    with pytest.raises(Refused, match="417-1: a tin is stored for 1 to 3650 days; got 0"):
        store_tins(actor=bench, now=NOW, entries=[TinEntry(make_cups(bench)[0], 0, Decimal(50))])


def test_signed_cup_gets_no_panel_but_its_tin_is_opened_and_its_retain_lent(bench):
    (cup,) = make_cups(bench)
    (tin,) = store_tins(actor=bench, now=NOW, entries=[TinEntry(cup, 14, Decimal(50))])
    (kept,) = retain(actor=bench, entries=[RetainEntry(cup, "box 12", what="cup")])
    signed(cup.series, bench)
    with pytest.raises(Refused, match="This is signed"):
        apply_panels(actor=bench, now=NOW, entries=[PanelEntry(cup, BODY)])
    open_tins(actor=bench, entries=[OpenedEntry(tin, NOW, "even")])
    change_retain(actor=bench, record=kept, lent_to="the pilot plant", lent_on=NOW.date())
    assert (StoredTin.objects.get().appearance, Retain.objects.get().lent_to) == ("even", "the pilot plant")


def test_retain_says_where_and_comes_back_after_it_was_lent(bench):
    first, second = make_cups(bench, cups=2)
    with pytest.raises(Refused, match="say where it is kept"):
        retain(actor=bench, entries=[RetainEntry(first, " ")])
    with pytest.raises(Refused, match="Panel K7F is not of 417-2"):
        retain(actor=bench, entries=[RetainEntry(second, "box 12", panel=make_panel(first, "K7F"))])
    (kept,) = retain(actor=bench, entries=[RetainEntry(first, "box 12")])
    with pytest.raises(Refused, match="before it was lent"):
        change_retain(
            actor=bench, record=kept, lent_to="x", lent_on=NOW.date(), returned_on=NOW.date() - timedelta(days=1)
        )


def test_reader_applies_nothing(bench, reader):
    with pytest.raises(PermissionDenied):
        apply_panels(actor=reader, now=NOW, entries=[PanelEntry(make_cups(bench)[0], BODY)])
