"""Records for tests, made through the operations and without surprises."""

from datetime import UTC, datetime
from decimal import Decimal

from trials.models import RawMaterial, ReactiveGroup
from trials.operations.bases import ComponentEntry, LineEntry, add_base

NOW = datetime(2026, 3, 2, 9, 30, tzinfo=UTC)


def make_material(code, function="binder", *, group=None, equivalent=None, **values):
    defaults = {
        "name": code,
        "density_g_ml": Decimal("1.16"),
        "non_volatile_pct": Decimal(100),
        "voc_pct": Decimal(0),
        "price_per_kg": Decimal("5.00"),
    }
    material = RawMaterial.objects.create(code=code, function=function, **{**defaults, **values})
    if group:
        ReactiveGroup.objects.create(
            material=material, group=group, entered=Decimal(equivalent), equivalent_g=Decimal(equivalent)
        )
    return material


def make_epoxy_base(actor, code="EP-F1", *, b_parts="22", **values):
    """A filled epoxy floor base: A is 60 parts of resin (190 g/eq) and 40 of quartz, B an amine of 60 g/eq."""
    resin = make_material(f"{code}-R", group="epoxide", equivalent="190", hazards=["H315", "H317"])
    quartz = make_material(f"{code}-Q", "filler", density_g_ml=Decimal("2.65"), price_per_kg=Decimal("0.40"))
    amine = make_material(
        f"{code}-H",
        "hardener",
        group="amine hydrogen",
        equivalent="60",
        density_g_ml=Decimal("1.00"),
        hazards=["H314", "H317"],
    )
    chosen = {"name": "Floor", "chemistry": "epoxy-amine", "field": "floor", "kind": "recipe", **values}
    return add_base(
        actor=actor,
        now=NOW,
        code=code,
        components=(
            ComponentEntry(
                "A",
                Decimal(100),
                lines=(LineEntry(resin, Decimal(60), "let-down"), LineEntry(quartz, Decimal(40), "grind")),
            ),
            ComponentEntry("B", Decimal(b_parts), lines=(LineEntry(amine, Decimal(100)),)),
        ),
        **chosen,
    )
