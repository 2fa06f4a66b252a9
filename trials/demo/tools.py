"""What cups are weighed and stirred with."""

from trials.operations.equipment import add_balance, add_equipment

from .laboratory import Laboratory, number

BALANCES = (("bench balance", "0.01"), ("fine balance", "0.0001"), ("floor scale", "1"))
EQUIPMENT = (
    ("dissolver 1, 40 mm disc", "40"),
    ("dissolver 2, 60 mm disc", "60"),
    ("pilot dissolver, 200 mm disc", "200"),
    ("wire whisk for beating in air", "50"),
    ("paddle mixer", "70"),
    ("spatula", "25"),
    ("vacuum cabinet", None),
    ("roller, 25 cm", None),
)
DISSOLVER, PILOT, WHISK, PADDLE, SPATULA, CABINET = (
    EQUIPMENT[place][0] for place in (0, 2, 3, 4, 5, 6)
)  # fmt: skip
BENCH, FINE, FLOOR_SCALE = (name for name, _ in BALANCES)


def set_up_bench(laboratory: Laboratory) -> str:
    keeper = laboratory.people["tibor"]
    for name, step in BALANCES:
        laboratory.balances[name] = add_balance(actor=keeper, name=name, step_g=number(step))
    for name, blade in EQUIPMENT:
        laboratory.equipment[name] = add_equipment(actor=keeper, name=name, blade_mm=number(blade))
    return f"{len(BALANCES)} balances and {len(EQUIPMENT)} pieces of equipment"
