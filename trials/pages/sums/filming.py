"""What a square metre takes, and what the additive in it costs."""

from django.conf import settings

from trials.science import composition

from .form import SumForm, number
from .lines import Given, Line, Sum


class FilmForm(SumForm):
    called = {"density_g_ml": "mix_g_ml", "dosage_pct": "total_pct"}
    dry_film_um = number("Dry film", "µm")
    volume_solids_pct = number("Volume solids", "%", initial=100)
    mix_g_ml = number("Density of the mix", "g/mL")
    loss_pct = number("Loss", "%", initial=0, help_text="of what is taken")
    price_per_kg = number("Price of the additive", f"{settings.CURRENCY}/kg", help_text="as supplied")
    total_pct = number("Dosage", "%", help_text="as supplied, on top of the mix")


_FILM = ("dry_film_um", "volume_solids_pct", "mix_g_ml", "loss_pct")


def _consumption(given: Given) -> float:
    return composition.consumption_g_m2(
        given.dry_film_um, given.volume_solids_pct, given.mix_g_ml, loss_pct=given.loss_pct
    )


def _per_100_kg(given: Given) -> float:
    return composition.cost_in_use(given.price_per_kg, given.total_pct, 0.0).per_100_kg


def _per_m2(given: Given) -> float:
    return composition.cost_in_use(given.price_per_kg, given.total_pct, _consumption(given)).per_m2


FILM = Sum(
    "film",
    "Film and cost in use",
    "How much of the mix a square metre takes, and what the additive costs there.",
    FilmForm,
    (
        Line(
            "Wet film",
            "µm",
            "dry film · 100/volume solids",
            "the usual formula of coverage guides",
            ("dry_film_um", "volume_solids_pct"),
            lambda g: composition.wet_film_um(g.dry_film_um, g.volume_solids_pct),
        ),
        Line(
            "Spreading rate",
            "m²/L",
            "10 · volume solids/dry film",
            "theoretical, without loss",
            ("dry_film_um", "volume_solids_pct"),
            lambda g: composition.spreading_rate_m2_l(g.dry_film_um, g.volume_solids_pct),
        ),
        Line(
            "Consumption",
            "g/m²",
            "wet film · density/(1 − loss)",
            "one µm on one m² is one mL; a loss is a share of what is taken, so it divides",
            _FILM,
            _consumption,
        ),
        Line(
            "Cost of the additive",
            f"{settings.CURRENCY} for 100 kg of mix",
            "price · dosage",
            "the additive alone, at its dosage",
            ("price_per_kg", "total_pct"),
            _per_100_kg,
        ),
        Line(
            "Cost of the additive",
            f"{settings.CURRENCY}/m²",
            "price · dosage · consumption",
            "the additive alone, at its dosage",
            (*_FILM, "price_per_kg", "total_pct"),
            _per_m2,
        ),
    ),
)
