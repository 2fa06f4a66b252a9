from dataclasses import replace
from decimal import Decimal

import pytest

from tests.cup_making import make_cups, signed
from tests.making import NOW
from trials.models import WetReading
from trials.operations.acting import Refused
from trials.operations.wet import WetCorrection, WetEntry, read_wet

pytestmark = pytest.mark.django_db


def test_values_and_words_of_several_cups(bench):
    first, second = make_cups(bench, cups=2)
    read_wet(
        actor=bench,
        now=NOW,
        entries=[
            WetEntry("density", "mix", Decimal("1.180"), minutes=Decimal(0), trial=first),
            WetEntry("density", "mix", word="spilled", trial=second),
            WetEntry("temperature", "mix", Decimal("-2"), trial=second),
        ],
    )
    found = WetReading.objects.order_by("pk").values_list("trial__code", "quantity", "value", "word")
    assert list(found) == [
        ("417-1", "density", Decimal("1.180"), ""),
        ("417-2", "density", None, "spilled"),
        ("417-2", "temperature", Decimal(-2), ""),
    ]
    assert set(WetReading.objects.values_list("person", "at", "trial__state")) == {(bench.pk, NOW, "mixed")}


@pytest.mark.parametrize(
    ("entry", "message", "field"),
    [
        ({"quantity": "density", "value": Decimal(0)}, "417-1, density, g/mL: must be above 0; got 0", "value"),
        ({"quantity": "density"}, "enter a value, or a word", "value"),
        ({"quantity": "weight", "value": Decimal(1)}, "weight", "quantity"),
        ({"quantity": "density", "value": Decimal(1), "minutes": Decimal(-1)}, "got -1 min", "minutes"),
    ],
)
def test_impossible_readings_are_refused(bench, entry, message, field):
    (cup,) = make_cups(bench)
    with pytest.raises(Refused, match=message) as refused:
        read_wet(actor=bench, now=NOW, entries=[WetEntry(where="mix", trial=cup, **entry)])
    assert refused.value.field == field
    assert not WetReading.objects.exists()


def test_a_film_free_of_bubbles_at_once_is_a_value(bench):
    (cup,) = make_cups(bench)
    read_wet(actor=bench, now=NOW, entries=[WetEntry("bubble-free after", "mix", Decimal(0), trial=cup)])
    assert WetReading.objects.get().value == 0


def test_reading_is_put_right_or_taken_out(bench):
    (cup,) = make_cups(bench)
    (reading,) = read_wet(actor=bench, now=NOW, entries=[WetEntry("density", "A", Decimal("11.8"), trial=cup)])
    right = WetEntry("density", "mix", Decimal("1.18"), minutes=Decimal(5))
    read_wet(actor=bench, now=NOW, corrections=[WetCorrection(reading, right)])
    found = WetReading.objects.values_list("where", "value", "minutes", "person")
    assert found.get() == ("mix", Decimal("1.18"), Decimal(5), bench.pk)
    read_wet(actor=bench, now=NOW, entries=[replace(right, trial=cup)], corrections=[WetCorrection(reading, None)])
    reading = WetReading.objects.get()
    signed(cup.series, bench)
    with pytest.raises(Refused, match="This is signed"):
        read_wet(actor=bench, now=NOW, corrections=[WetCorrection(reading, None)])
    with pytest.raises(Refused, match="This is signed"):
        read_wet(actor=bench, now=NOW, entries=[WetEntry("density", "A", Decimal("1.2"), trial=cup)])
