"""Photographs side by side at one scale: references left, dosage rising to the right, fresh above, stored below."""

from collections.abc import Sequence
from dataclasses import dataclass
from statistics import median_low

from trials.access import photos as photos_of
from trials.models import Photo, Series
from trials.queries.conditions import FRESH, storage
from trials.queries.groups import Group
from trials.queries.reductions import SAME_AGE

from .parts import joined, unbroken

PAPER_MM = 178.0
WIDEST_MM = 56.0
GAP_MM = 2.5
MOST_COLUMNS = 6
MOST_REFERENCES = 3
PX_PER_MM = 96 / 25.4


@dataclass(frozen=True, slots=True)
class Tile:
    """A photograph and the piece of it that is shown, in its own pixels; on paper ``paper_mm`` wide and high.

    ``photo`` of None: the group has none under this condition.
    """

    photo: int | None
    picture: str
    alt: str
    said: str
    size_px: tuple[int, int] = (0, 0)
    piece_px: tuple[float, float, float, float] = (0.0, 0.0, 0.0, 0.0)
    paper_mm: tuple[float, float] = (0.0, 0.0)

    @property
    def view_box(self) -> str:
        return " ".join(f"{part:.2f}" for part in self.piece_px)

    @property
    def width(self) -> int:
        """On screen, at the size of the paper."""
        return round(self.paper_mm[0] * PX_PER_MM)

    @property
    def height(self) -> int:
        return round(self.paper_mm[1] * PX_PER_MM)


@dataclass(frozen=True, slots=True)
class StripRow:
    name: str
    tiles: tuple[Tile, ...]


@dataclass(frozen=True, slots=True)
class Strip:
    """``bar_mm`` of film are ``bar_paper_mm`` on paper; 0 where the photographs have no scale."""

    title: str
    heads: tuple[str, ...]
    rows: tuple[StripRow, ...]
    said: str
    bar_mm: float = 0.0
    bar_paper_mm: float = 0.0
    column_mm: float = WIDEST_MM

    @property
    def bar_px(self) -> int:
        return round(self.bar_paper_mm * PX_PER_MM)


def strips(groups: Sequence[Group], series: Series, person) -> tuple[Strip, ...]:
    """One query. Photographs without a scale stand in strips of their own."""
    seen = photos_of(person).filter(panel__trial__series=series).select_related("panel__trial", "panel__stored_tin")
    photos = list(seen.order_by("panel__trial__position", "taken_at", "pk"))
    scaled = [photo for photo in photos if photo.mm_per_px]
    without = [photo for photo in photos if not photo.mm_per_px]
    found, alone = [], []
    for title, members in _lines(groups):
        for one, drawn in ((scaled, _to_scale), (without, _without_scale)):
            chosen = {group.key: _by_condition(group, one) for group in members}
            shown = [group for group in members if chosen[group.key]]
            if any(not group.reference for group in shown):
                found += [drawn(title, chunk, chosen) for chunk in _chunks(shown)]
            elif shown:
                alone.append(drawn("", _chunks(shown)[0], chosen))
    # References alone are no strip, unless there is nothing else.
    return tuple(found or alone[:1])


def _lines(groups: Sequence[Group]) -> list[tuple[str, list[Group]]]:
    """References with each candidate's ladder; all in one line where there is room, or one dosage of each."""
    found = []
    for number in sorted({group.block.number for group in groups}):
        here = [group for group in groups if group.block.number == number]
        references = [group for group in here if group.reference]
        by_name: dict[str, list[Group]] = {}
        for group in here:
            if not group.reference:
                by_name.setdefault(group.name, []).append(group)
        if len(here) <= MOST_COLUMNS or all(len(rungs) == 1 for rungs in by_name.values()):
            found.append(("", [*references, *(rung for rungs in by_name.values() for rung in rungs)]))
        else:
            found += [(name, [*references, *rungs]) for name, rungs in by_name.items()]
    return found


def _chunks(groups: Sequence[Group]) -> list[list[Group]]:
    """Six to a row at most, the references repeated."""
    references = [group for group in groups if group.reference][:MOST_REFERENCES]
    others = [group for group in groups if not group.reference]
    if not others:
        return [references]
    room = MOST_COLUMNS - len(references)
    return [[*references, *others[first : first + room]] for first in range(0, len(others), room)]


def _by_condition(group: Group, photos: Sequence[Photo]) -> dict[str, list[Photo]]:
    """Of the cups that count where one of them has a photograph, else of those set apart."""
    found: dict[str, list[Photo]] = {}
    for cups in (group.counted, group.apart):
        keys = {cup.pk for cup in cups}
        here = [photo for photo in photos if photo.panel.trial_id in keys]
        for name in dict.fromkeys(storage(photo.panel) for photo in here):
            found.setdefault(name, [photo for photo in here if storage(photo.panel) == name])
    return found


def _rows(groups: Sequence[Group], chosen) -> list[tuple[str, list[Photo | None]]]:
    names = {name for group in groups for name in chosen[group.key]}
    rows = []
    for name in sorted(names, key=lambda name: (name != FRESH, name)):
        age = _shared_age([chosen[group.key].get(name, []) for group in groups])
        rows.append((name, [_nearest(chosen[group.key].get(name, []), age) for group in groups]))
    return rows


def _shared_age(candidates: Sequence[Sequence[Photo]]) -> float | None:
    """The age at which most groups have a photograph; of those the latest."""
    ages = {float(photo.age_h) for photos in candidates for photo in photos if photo.age_h is not None}

    def reached(age: float) -> tuple[int, float]:
        return sum(any(_near(photo, age) for photo in photos) for photos in candidates), age

    return max(ages, key=reached, default=None)


def _near(photo: Photo, age: float) -> bool:
    return photo.age_h is not None and age / SAME_AGE <= float(photo.age_h) <= age * SAME_AGE


def _nearest(photos: Sequence[Photo], age: float | None) -> Photo | None:
    if age is None:
        return photos[0] if photos else None
    return min(
        photos, key=lambda photo: abs(float(photo.age_h) - age) if photo.age_h is not None else 1e9, default=None
    )


def _to_scale(title: str, groups: Sequence[Group], chosen) -> Strip:
    rows = _rows(groups, chosen)
    shown = [photo for _, row in rows for photo in row if photo]
    field = tuple(median_low(side) for side in zip(*map(_sides_mm, shown), strict=True))
    column = _column_mm(len(groups))
    scale = column / field[0]
    bar = _bar_mm(field[0])
    return Strip(
        title=title,
        heads=tuple(unbroken(group.label) for group in groups),
        rows=tuple(
            StripRow(name, tuple(_cut(photo, group, field, scale) for photo, group in zip(row, groups, strict=True)))
            for name, row in rows
        ),
        said=f"All at one scale; of larger photographs the middle {field[0]:.3g} × {field[1]:.3g} mm.",
        bar_mm=bar,
        bar_paper_mm=bar * scale,
        column_mm=column,
    )


def _without_scale(title: str, groups: Sequence[Group], chosen) -> Strip:
    column = _column_mm(len(groups))
    rows = tuple(
        StripRow(name, tuple(_whole(photo, group, column) for photo, group in zip(row, groups, strict=True)))
        for name, row in _rows(groups, chosen)
    )
    said = "Photographs without a scale: sizes in them can't be compared."
    return Strip(title, tuple(unbroken(group.label) for group in groups), rows, said, column_mm=column)


def _sides_mm(photo: Photo) -> tuple[float, float]:
    return photo.width_px * float(photo.mm_per_px), photo.height_px * float(photo.mm_per_px)


def _column_mm(groups: int) -> float:
    return min(WIDEST_MM, (PAPER_MM - GAP_MM * (groups - 1)) / groups)


def _cut(photo: Photo | None, group: Group, field: tuple[float, float], scale: float) -> Tile:
    """The middle of the photograph, as large as the field or as it is."""
    if photo is None:
        return _none(group)
    sides = [min(side, most) for side, most in zip(_sides_mm(photo), field, strict=True)]
    wide, high = (side / float(photo.mm_per_px) for side in sides)
    piece = ((photo.width_px - wide) / 2, (photo.height_px - high) / 2, wide, high)
    return _tile(photo, group, piece, (sides[0] * scale, sides[1] * scale))


def _whole(photo: Photo | None, group: Group, column: float) -> Tile:
    if photo is None:
        return _none(group)
    piece = (0.0, 0.0, float(photo.width_px), float(photo.height_px))
    return _tile(photo, group, piece, (column, column * photo.height_px / photo.width_px))


def _tile(photo: Photo, group: Group, piece, paper) -> Tile:
    age = f"{photo.age_h.normalize():f} h" if photo.age_h is not None else "age not noted"
    counts = photo.panel.trial_id in {cup.pk for cup in group.counted}
    where = joined((photo.panel.trial.code, f"panel {photo.panel.code}", age, "" if counts else "not counted"))
    return Tile(
        photo=photo.pk,
        picture=photo.picture,
        alt=f"Photograph of {group.label}, {storage(photo.panel)}: {where}",
        said=where,
        size_px=(photo.width_px, photo.height_px),
        piece_px=piece,
        paper_mm=paper,
    )


def _none(group: Group) -> Tile:
    return Tile(None, "", f"No photograph of {group.label}", "no photograph")


def _bar_mm(field_mm: float) -> float:
    """A round length of up to two fifths of what is shown."""
    most, size = 0.4 * field_mm, 1e-3
    best = size
    while size <= most:
        best = max([best, *(size * step for step in (1, 2, 5) if size * step <= most)])
        size *= 10
    return round(best, 6)
