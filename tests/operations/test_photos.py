import hashlib
import os
import struct
import zlib
from datetime import timedelta
from decimal import Decimal
from io import BytesIO
from pathlib import Path

import pytest
from django.core.exceptions import PermissionDenied
from PIL import Image

from tests.cup_making import make_cups, make_panel, signed
from tests.making import NOW
from trials.models import Photo
from trials.operations import pictures
from trials.operations.acting import Refused
from trials.operations.photos import PhotoEntry, add_photos, change_photo, small_of

pytestmark = pytest.mark.django_db

ORIENTATION, GPS, SHUTTER_MAKER = 0x0112, 0x8825, 0x010F


@pytest.fixture
def files(settings, tmp_path):
    storage = {"BACKEND": "django.core.files.storage.FileSystemStorage", "OPTIONS": {"location": tmp_path}}
    settings.STORAGES = {**settings.STORAGES, "default": storage}
    return tmp_path


@pytest.fixture
def panel(bench):
    return make_panel(make_cups(bench)[0], "K7F")


def picture(kind="JPEG", size=(60, 40), mode="RGB", colour="grey", **options) -> bytes:
    out = BytesIO()
    Image.new(mode, size, colour).save(out, kind, **options)
    return out.getvalue()


def bomb(side=20_000) -> bytes:
    """A small PNG that unpacks to 400 million pixels."""

    def chunk(kind, data):
        return struct.pack(">I", len(data)) + kind + data + struct.pack(">I", zlib.crc32(kind + data))

    rows = zlib.compress(bytes((side // 8 + 1) * side), 9)
    head = struct.pack(">IIBBBBB", side, side, 1, 0, 0, 0, 0)
    return b"\x89PNG\r\n\x1a\n" + chunk(b"IHDR", head) + chunk(b"IDAT", rows) + chunk(b"IEND", b"")


def take(actor, panel, content, name="film.jpg", **more):
    (photo,) = add_photos(actor=actor, now=NOW, entries=[PhotoEntry(panel, content, name, **more)])
    return photo


def test_original_is_kept_as_it_came_and_two_pictures_are_made(bench, panel, files):
    content = picture(size=(3000, 1500))
    photo = take(bench, panel, content, age_h=Decimal(24))
    kept = (files / photo.original).read_bytes()
    full = (files / photo.picture).read_bytes()
    assert kept == content
    assert photo.original == f"originals/{hashlib.sha256(content).hexdigest()}"
    assert photo.original_sha256 == hashlib.sha256(kept).hexdigest()
    assert photo.picture_sha256 == hashlib.sha256(full).hexdigest()
    sizes = [Image.open(BytesIO((files / name).read_bytes())).size for name in (photo.picture, small_of(photo))]
    assert sizes == [(2000, 1000), (400, 200)]
    assert (photo.width_px, photo.height_px, photo.age_h) == (2000, 1000, 24)


def test_scale_is_that_of_the_picture_as_kept(bench, panel, files):
    # 0.05 mm per pixel of 3000 are 150 mm; over 2000 pixels that is 0.075 mm each
    assert take(bench, panel, picture(size=(3000, 1500)), mm_per_px=Decimal("0.05")).mm_per_px == Decimal("0.075")
    assert take(bench, panel, picture(size=(3000, 1500)), shows_mm=Decimal(150)).mm_per_px == Decimal("0.075")
    assert str(take(bench, panel, picture(), mm_per_px=Decimal("0.050")).mm_per_px) == "0.050"
    with pytest.raises(Refused, match="the scale must be above 0; got 0") as refused:
        take(bench, panel, picture(), mm_per_px=Decimal(0))
    assert refused.value.field == "mm_per_px"


def test_place_and_maker_of_the_camera_are_gone(bench, panel, files):
    exif = Image.Exif()
    exif[SHUTTER_MAKER] = "Invented Optics"
    exif.get_ifd(GPS)[1] = "N"
    exif.get_ifd(GPS)[2] = (52.0, 31.0, 12.0)
    content = picture(exif=exif.tobytes(), comment=b"bench three")
    assert b"Invented Optics" in content
    photo = take(bench, panel, content)
    for name in (photo.picture, small_of(photo)):
        shown = (files / name).read_bytes()
        with Image.open(BytesIO(shown)) as image:
            assert not image.getexif()
            assert not {"exif", "comment", "icc_profile", "xmp"} & set(image.info)
        assert b"Invented" not in shown
        assert b"bench three" not in shown
    assert b"Invented Optics" in (files / photo.original).read_bytes()


def test_picture_stands_upright(bench, panel, files):
    upright = Image.new("RGB", (40, 60), "white")
    upright.paste("black", (0, 0, 40, 30))
    exif = Image.Exif()
    exif[ORIENTATION] = 6  # the camera lay on its side: turn by 90° to the right to see it
    out = BytesIO()
    upright.rotate(90, expand=True).save(out, "JPEG", exif=exif, quality=95)
    photo = take(bench, panel, out.getvalue())
    shown = Image.open(BytesIO((files / photo.picture).read_bytes())).convert("L")
    assert (photo.width_px, photo.height_px, shown.size) == (40, 60, (40, 60))
    assert shown.getpixel((20, 8)) < 40
    assert shown.getpixel((20, 52)) > 215


@pytest.mark.parametrize(
    "content",
    [
        picture("PNG"),
        picture("WEBP"),
        picture("PNG", mode="RGBA", colour=(0, 0, 0, 0)),
        picture("PNG", mode="P", colour=3),
        picture("PNG", mode="I;16", colour=65_535),
        picture("PNG", mode="1", colour=1),
        picture("PNG", mode="LA", colour=(0, 0)),
        picture("JPEG", mode="CMYK", colour=(0, 0, 0, 0)),
        picture("PNG", size=(1, 1), colour="white"),
    ],
)
def test_what_cameras_and_scanners_give_is_taken(bench, panel, files, content):
    photo = take(bench, panel, content, "scan.png")
    with Image.open(files / photo.picture) as shown:
        assert (shown.format, shown.mode) == ("JPEG", "RGB")


def test_nothing_that_hides_behind_a_picture_is_shown(bench, panel, files):
    content = picture() + b"<script>alert(1)</script>"
    photo = take(bench, panel, content)
    assert b"<script>" not in (files / photo.picture).read_bytes()


@pytest.mark.parametrize(
    ("name", "content", "why"),
    [
        ("bomb.png", bomb(), "has more than 50 million pixels"),
        (
            "film.svg",
            b'<svg xmlns="http://www.w3.org/2000/svg"><script>1</script></svg>',
            "is not a JPEG, PNG or WebP",
        ),
        ("film.jpg", b"%PDF-1.7 not a picture", "is not a JPEG, PNG or WebP"),
        ("film.gif", picture("GIF", mode="P", colour=0), "is not a JPEG, PNG or WebP"),
        ("film.tif", picture("TIFF"), "is not a JPEG, PNG or WebP"),
        ("half.jpg", picture(size=(800, 800))[:3000], "is broken"),
        ("half.png", picture("PNG", size=(800, 800))[:600], "is broken"),
        ("none.jpg", b"", "is empty"),
        ("large.jpg", bytes(25 * 1024 * 1024 + 1), "has 25.0 MB; up to 25 MB are taken"),
    ],
)
def test_refused_by_the_name_of_the_file(bench, panel, files, name, content, why):
    entries = [PhotoEntry(panel, picture(), "good.jpg"), PhotoEntry(panel, content, name)]
    with pytest.raises(Refused, match=f"“{name}” {why}") as refused:
        add_photos(actor=bench, now=NOW, entries=entries)
    assert refused.value.field == "photos"
    assert not Photo.objects.exists()
    assert not list(files.rglob("*.*"))


def test_picture_between_one_and_two_limits_of_pixels_is_refused_too():
    with pytest.raises(Refused, match=r"“wide\.png” has more than 50 million pixels"):
        pictures.derive(bomb(side=8_000), "wide.png")


def test_a_path_in_the_name_leads_nowhere(bench, panel, files):
    photo = take(bench, panel, picture(), "../../etc/K7F..jpg")
    assert photo.original_name == "K7F..jpg"
    assert all(Path(files, name).resolve().is_relative_to(files) for name in (photo.original, photo.picture))


def test_age_follows_from_when_it_was_taken(bench, panel, files):
    assert take(bench, panel, picture(), taken_at=NOW + timedelta(hours=24, minutes=30)).age_h == Decimal("24.5")
    assert take(bench, panel, picture(), taken_at=NOW - timedelta(hours=1)).age_h is None


def test_same_photograph_twice_is_kept_once(bench, panel, files):
    first, second = (take(bench, panel, picture()) for _ in range(2))
    assert first.original == second.original
    assert len([path for path in (files / "originals").iterdir() if path.is_file()]) == 1


def test_file_that_cannot_be_written_leaves_no_row(bench, panel, files, monkeypatch):
    def full(_):
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(os, "fsync", full)
    with pytest.raises(OSError, match="No space left"):
        take(bench, panel, picture())
    assert not Photo.objects.exists()
    assert not [path for path in files.rglob("*") if path.is_file()]


def test_signed_panel_takes_no_photograph(bench, panel, files):
    photo = take(bench, panel, picture())
    signed(panel.trial.series, bench)
    with pytest.raises(Refused, match="This is signed"):
        take(bench, panel, picture(colour="white"))
    with pytest.raises(Refused, match="This is signed"):
        change_photo(actor=bench, photo=photo, remark="later")
    assert len(list((files / "originals").iterdir())) == 1


def test_reader_adds_no_photograph(panel, reader, files):
    with pytest.raises(PermissionDenied):
        take(reader, panel, picture())
