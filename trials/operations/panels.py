"""Writing about what is applied and kept: panels with their layers, stored tins, retains."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime
from decimal import Decimal

from trials.models import Layer, Panel, Person, Retain, StoredTin, Trial
from trials.models.panels import Coat, Method, Substrate
from trials.models.trials import State

from .acting import Refused, assign, operation
from .panel_codes import free_codes, typed_code
from .rows import hold_row, write_lists
from .states import advance, made


@dataclass(frozen=True, slots=True)
class LayerEntry:
    """One coat of a build-up."""

    wet_um: Decimal | None = None
    coat: str = Coat.BODY
    method: str = Method.POUR
    spiked_after_min: Decimal | None = None
    recoated_after_h: Decimal | None = None
    sanded: bool = False


@dataclass(frozen=True, slots=True)
class PanelEntry:
    """One panel of a cup, or of a tin stored from it. Without a code it is given a neutral one."""

    trial: Trial
    layers: tuple[LayerEntry, ...]
    substrate: str = Substrate.GLASS
    area_dm2: Decimal | None = None
    mass_g: Decimal | None = None
    applied_at: datetime | None = None
    air_c: Decimal | None = None
    humidity_pct: Decimal | None = None
    substrate_c: Decimal | None = None
    material_c: Decimal | None = None
    remark: str = ""
    stored_tin: StoredTin | None = None
    code: str = ""


@dataclass(frozen=True, slots=True)
class TinEntry:
    """A closed full tin put into storage."""

    trial: Trial
    days: int
    temperature_c: Decimal
    stored_at: datetime | None = None


@dataclass(frozen=True, slots=True)
class OpenedEntry:
    """A tin opened, with what stood in it before anybody stirred."""

    tin: StoredTin
    opened_at: datetime
    appearance: str


@dataclass(frozen=True, slots=True)
class RetainEntry:
    """A panel, cup or tin that is kept, and where."""

    trial: Trial
    place: str
    until: date | None = None
    panel: Panel | None = None
    what: str = ""


_OF_PANEL = (
    "substrate", "area_dm2", "mass_g", "applied_at", "air_c", "humidity_pct", "substrate_c", "material_c", "remark",
)  # fmt: skip
_OF_LAYER = ("wet_um", "coat", "method", "spiked_after_min", "recoated_after_h", "sanded")


@operation()
def apply_panels(*, actor: Person, now: datetime, entries: Sequence[PanelEntry]) -> list[Panel]:
    """Panels with their layers, of any number of cups; each gets a code that says nothing of its cup."""
    given = [typed_code(entry.code) for entry in entries]
    _refuse_taken([code for code in given if code])
    drawn = iter(free_codes(given.count(""), taken=given))
    panels = [_panel(entry, code or next(drawn), now) for entry, code in zip(entries, given, strict=True)]
    Panel.objects.bulk_create(panels)
    Layer.objects.bulk_create(
        layer for panel, entry in zip(panels, entries, strict=True) for layer in _layers(panel, entry.layers)
    )
    cups = {entry.trial.pk for entry in entries}
    made(cups, actor=actor, now=now)
    advance(cups, State.APPLIED)
    return panels


@operation()
def change_panel(*, actor: Person, panel: Panel, layers: Sequence[LayerEntry] | None = None, **values) -> Panel:
    """Put right what was noted of a panel; its code and its cup stay."""
    if extra := set(values) - {*_OF_PANEL, "stored_tin"}:
        raise TypeError(f"a panel's {', '.join(sorted(extra))} stays as it is")
    assign(panel, values)
    _hold_panel(panel)
    panel.save()
    if layers is not None:
        write_lists(Layer, "panel", [panel.pk], _layers(panel, layers))
    return panel


@operation()
def store_tins(*, actor: Person, now: datetime, entries: Sequence[TinEntry]) -> list[StoredTin]:
    """Put closed full tins into storage; a blank's too, or there is nothing to compare with."""
    rows = [
        StoredTin(
            trial=entry.trial,
            days=entry.days,
            temperature_c=entry.temperature_c,
            stored_at=entry.stored_at or now,
        )
        for entry in entries
    ]
    for row in rows:
        if not 1 <= row.days <= 3650:
            raise Refused(f"{row.trial.code}: a tin is stored for 1 to 3650 days; got {row.days}.", field="days")
        hold_row(row, f"{row.trial.code}, stored tin")
    return StoredTin.objects.bulk_create(rows)


@operation()
def open_tins(*, actor: Person, entries: Sequence[OpenedEntry]) -> list[StoredTin]:
    """Note when tins were opened and what stood in them before stirring."""
    rows = []
    for entry in entries:
        tin, code = entry.tin, entry.tin.trial.code
        if entry.opened_at < tin.stored_at:
            raise Refused(
                f"{code}: opened {entry.opened_at:%Y-%m-%d %H:%M}, before it was stored on"
                f" {tin.stored_at:%Y-%m-%d %H:%M}.",
                field="opened_at",
            )
        if not entry.appearance.strip():
            raise Refused(f"{code}: say what stood in the tin before stirring, “even” included.", field="appearance")
        tin.opened_at, tin.appearance = entry.opened_at, entry.appearance.strip()
        rows.append(tin)
    StoredTin.objects.bulk_update(rows, ["opened_at", "appearance"])
    return rows


@operation()
def retain(*, actor: Person, entries: Sequence[RetainEntry]) -> list[Retain]:
    """Note what is kept, where and until when."""
    rows = []
    for entry in entries:
        code = entry.trial.code
        if entry.panel and entry.panel.trial_id != entry.trial.pk:
            raise Refused(f"Panel {entry.panel.code} is not of {code}.", field="panel")
        if not entry.place.strip():
            raise Refused(f"{code}: say where it is kept.", field="place")
        rows.append(
            Retain(
                trial=entry.trial, panel=entry.panel, what=entry.what, place=entry.place.strip(), until=entry.until
            )
        )
    return Retain.objects.bulk_create(rows)


@operation()
def change_retain(*, actor: Person, record: Retain, **values) -> Retain:
    """Move, lend or take back what is kept."""
    assign(record, values)
    if record.lent_on and record.returned_on and record.returned_on < record.lent_on:
        raise Refused(
            f"Returned on {record.returned_on}, before it was lent on {record.lent_on}.", field="returned_on"
        )
    if record.lent_on and not record.lent_to.strip():
        raise Refused("Say whom it was lent to.", field="lent_to")
    record.save()
    return record


def _panel(entry: PanelEntry, code: str, now: datetime) -> Panel:
    panel = Panel(trial=entry.trial, code=code, stored_tin=entry.stored_tin)
    assign(panel, {name: getattr(entry, name) for name in _OF_PANEL})
    panel.applied_at = entry.applied_at or now
    if not entry.layers:
        raise Refused(f"{entry.trial.code}: a panel has at least one layer.", field="layers")
    _hold_panel(panel)
    return panel


def _hold_panel(panel: Panel) -> None:
    tin = panel.stored_tin
    if tin and tin.trial_id != panel.trial_id:
        raise Refused(f"{panel.trial.code}: the tin was stored from another cup.", field="stored_tin")
    if tin and tin.opened_at is None:
        raise Refused(
            f"{panel.trial.code}: the tin of {tin.days} d is still closed: say what stood in it, then apply.",
            field="stored_tin",
        )
    hold_row(panel, f"{panel.trial.code}, panel")


def _layers(panel: Panel, layers: Sequence[LayerEntry]) -> list[Layer]:
    rows = [
        Layer(panel=panel, position=place, **{name: getattr(entry, name) for name in _OF_LAYER})
        for place, entry in enumerate(layers, 1)
    ]
    return [hold_row(row, f"{panel.trial.code}, layer {row.position}") for row in rows]


def _refuse_taken(codes: list[str]) -> None:
    taken = {code for code in codes if codes.count(code) > 1}
    taken |= set(Panel.objects.filter(code__in=codes).values_list("code", flat=True)) if codes else set()
    if taken:
        raise Refused(f"There is a panel {', '.join(sorted(taken))} already.", field="code")
