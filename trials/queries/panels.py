"""Panels: how one was built up and in which air, and what was read on it."""

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime
from decimal import Decimal

from django.db.models import Prefetch

from trials import access
from trials.models import Criterion, Layer, Panel, Photo, Rating, Series, Step
from trials.science.climate import LEAST_MARGIN_C, dew_point_margin_c

from .conditions import FRESH, storage


@dataclass(frozen=True, slots=True)
class PanelRow:
    """``margin_c`` is how far the substrate stood above the dew point; None where that can't be told."""

    panel: Panel
    layers: tuple[Layer, ...]
    storage: str
    margin_c: float | None

    @property
    def stored(self) -> bool:
        return self.storage != FRESH

    @property
    def damp(self) -> bool:
        return self.margin_c is not None and self.margin_c < LEAST_MARGIN_C

    @property
    def build_up(self) -> str:
        return "; then ".join(_said(layer) for layer in self.layers) or "layers not noted"


@dataclass(frozen=True, slots=True)
class PanelSheet:
    """``mine`` and ``others`` are ratings; what others read stays covered until one has read oneself."""

    row: PanelRow
    mine: tuple[Rating, ...]
    others: tuple[Rating, ...]
    photos: tuple[Photo, ...]

    @property
    def panel(self) -> Panel:
        return self.row.panel


def load_panel(person, code: str) -> Panel | None:
    """One that the person may see, by its code in any case of letters."""
    wanted = with_build_up(access.panels(person)).select_related("trial__series__revision__base")
    return wanted.filter(code=code.strip().upper()).first()


def with_build_up(panels):
    return panels.select_related("trial", "stored_tin").prefetch_related("layers")


def panel_sheet(person, panel: Panel) -> PanelSheet:
    """Expects what ``load_panel`` fetched."""
    ratings = panel.ratings.select_related("criterion", "person").order_by(
        "criterion__position", "age_h", "person__full_name", "pk"
    )
    rows = list(ratings)
    return PanelSheet(
        row=panel_row(panel),
        mine=tuple(row for row in rows if row.person_id == person.pk),
        others=tuple(row for row in rows if row.person_id != person.pk),
        photos=tuple(panel.photos.select_related("person", "panel").order_by("age_h", "taken_at", "pk")),
    )


def panel_row(panel: Panel) -> PanelRow:
    layers = tuple(sorted(panel.layers.all(), key=lambda layer: layer.position))
    return PanelRow(panel, layers, storage(panel), margin_c(panel))


def margin_c(panel: Panel) -> float | None:
    """With the air noted on the panel, else that of its cup."""
    air = panel.air_c if panel.air_c is not None else panel.trial.air_c
    humidity = panel.humidity_pct if panel.humidity_pct is not None else panel.trial.humidity_pct
    if None in (panel.substrate_c, air, humidity):
        return None
    try:
        return dew_point_margin_c(float(panel.substrate_c), float(air), float(humidity))
    except ValueError:
        return None  # beyond what the formula holds for


def age_h(panel: Panel, now: datetime) -> Decimal | None:
    """Whole hours since it was applied."""
    if panel.applied_at is None or now < panel.applied_at:
        return None
    return Decimal(round((now - panel.applied_at).total_seconds() / 3600))


def criteria_of(series: Series) -> list[Criterion]:
    """What a series is judged by, in order; where nothing was chosen, everything that is rated today."""
    chosen = Criterion.objects.filter(pk__in=series.criteria.values("criterion"))
    wanted = chosen if chosen.exists() else Criterion.objects.filter(current=True)
    return list(wanted.prefetch_related(Prefetch("steps", Step.objects.order_by("value"))).order_by("position", "pk"))


def standing(person, panels: Iterable[Panel], *, age: Decimal | None) -> dict[tuple[int, int], Rating]:
    """What the person noted by eye on these panels at exactly this age, by panel and criterion."""
    if age is None:
        return {}
    found = Rating.objects.filter(panel__in=[panel.pk for panel in panels], person=person, age_h=age, instrument="")
    return {(row.panel_id, row.criterion_id): row for row in found.order_by("pk")}


def _said(layer: Layer) -> str:
    coat = layer.get_coat_display()
    parts = [coat if layer.wet_um is None else f"{coat} {layer.wet_um:f} µm wet", layer.get_method_display()]
    if layer.spiked_after_min is not None:
        parts.append(f"spiked roller after {layer.spiked_after_min:f} min")
    if layer.recoated_after_h is not None:
        parts.append(f"after {layer.recoated_after_h:f} h")
    if layer.sanded:
        parts.append("sanded")
    return ", ".join(parts)
