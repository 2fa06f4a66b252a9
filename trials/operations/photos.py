"""Photographs of panels: the original is kept as it came and never served, a picture without metadata is shown."""

import hashlib
import os
import tempfile
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from decimal import Decimal
from pathlib import Path

from django.core.files.storage import default_storage

from trials.models import Panel, Person, Photo

from .acting import Refused, operation
from .pictures import Picture, derive
from .rows import hold_row

ORIGINALS, PICTURES = "originals", "pictures"


@dataclass(frozen=True, slots=True)
class PhotoEntry:
    """A photograph as bytes. The scale is that of the photograph as taken: ``mm_per_px``, or what it shows across."""

    panel: Panel
    content: bytes
    name: str
    mm_per_px: Decimal | None = None
    shows_mm: Decimal | None = None
    age_h: Decimal | None = None
    taken_at: datetime | None = None
    remark: str = ""


@operation()
def add_photos(*, actor: Person, now: datetime, entries: Sequence[PhotoEntry]) -> list[Photo]:
    """Take photographs in. Their age follows from when they were taken, where none is given.

    Raises
    ------
    Refused
        At the field "photos", naming the file; or at the scale. Nothing of the entries is kept then.
    """
    derived = [derive(entry.content, entry.name) for entry in entries]
    photos = [_photo(entry, one, actor=actor, now=now) for entry, one in zip(entries, derived, strict=True)]
    Photo.objects.bulk_create(photos)
    for entry, photo, one in zip(entries, photos, derived, strict=True):
        _keep(photo.original, entry.content)
        _keep(photo.picture, one.full)
        _keep(small_of(photo), one.small)
    return photos


@operation()
def change_photo(*, actor: Person, photo: Photo, mm_per_px=None, age_h=None, remark: str = "") -> Photo:
    """Put right the scale (of the picture as kept), the age or the remark."""
    photo.mm_per_px, photo.age_h, photo.remark = mm_per_px, age_h, remark
    hold_row(photo, f"Photograph of {photo.panel.code}")
    photo.save(update_fields=["mm_per_px", "age_h", "remark"])
    return photo


def small_of(photo: Photo) -> str:
    """Where the small picture for lists lies."""
    return f"{photo.picture.removesuffix('.jpg')}-small.jpg"


def _photo(entry: PhotoEntry, one: Picture, *, actor: Person, now: datetime) -> Photo:
    original, picture = hashlib.sha256(entry.content).hexdigest(), hashlib.sha256(one.full).hexdigest()
    taken_at = entry.taken_at or now
    photo = Photo(
        panel=entry.panel,
        person=actor,
        taken_at=taken_at,
        age_h=entry.age_h if entry.age_h is not None else _age_h(entry.panel, taken_at),
        original=f"{ORIGINALS}/{original}",
        original_sha256=original,
        original_name=Path(entry.name.replace("\\", "/")).name[:200],
        picture=f"{PICTURES}/{picture}.jpg",
        picture_sha256=picture,
        width_px=one.width_px,
        height_px=one.height_px,
        mm_per_px=_scale(entry, one),
        remark=entry.remark,
    )
    return hold_row(photo, f"“{entry.name}”")


def _scale(entry: PhotoEntry, one: Picture) -> Decimal | None:
    """Millimetres per pixel of the picture that is kept."""
    for name, value in (("mm_per_px", entry.mm_per_px), ("shows_mm", entry.shows_mm)):
        if value is not None and value <= 0:
            raise Refused(f"“{entry.name}”: the scale must be above 0; got {value}.", field=name)
    if entry.mm_per_px is not None:
        return _short(float(entry.mm_per_px) * one.shrunk) if one.shrunk != 1 else entry.mm_per_px
    if entry.shows_mm is not None:
        return _short(float(entry.shows_mm) / one.width_px)
    return None


def _short(value: float) -> Decimal:
    return Decimal(f"{value:.6g}")


def _age_h(panel: Panel, taken_at: datetime) -> Decimal | None:
    if panel.applied_at is None or taken_at < panel.applied_at:
        return None
    return Decimal(f"{(taken_at - panel.applied_at).total_seconds() / 3600:.1f}")


def _keep(name: str, content: bytes) -> None:
    """Write a file under the digest of its content: whole or not at all, and once."""
    place = Path(default_storage.path(name))
    if place.exists():
        return
    place.parent.mkdir(mode=0o700, parents=True, exist_ok=True)
    handle, written = tempfile.mkstemp(dir=place.parent)
    try:
        with os.fdopen(handle, "wb") as file:
            file.write(content)
            file.flush()
            os.fsync(file.fileno())
        Path(written).replace(place)
    except BaseException:
        Path(written).unlink(missing_ok=True)
        raise
