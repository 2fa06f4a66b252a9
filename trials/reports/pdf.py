"""A report as PDF, set by Typst.

What people typed travels as JSON and is set as text; nothing of it is ever read as Typst.
"""

import json
import subprocess
import sys
from dataclasses import fields, is_dataclass
from datetime import datetime
from io import BytesIO
from pathlib import Path
from tempfile import TemporaryDirectory

from django.contrib.staticfiles import finders
from django.core.files.storage import default_storage
from PIL import Image

from trials.figures.swatch import Film, describe, swatch

from .parts import Cell, Figure
from .photographs import Tile
from .series import SeriesReport
from .trial import TrialReport

SOURCES = Path(__file__).parent / "typst"
TYPESETTER = Path(__file__).parent / "typesetting.py"
PAPERS = {"a4": "a4", "letter": "us-letter"}
LONGEST_S = 60
PRINT_PX_PER_MM = 300 / 25.4


class NotTypeset(RuntimeError):
    """The typesetter gave up; the message is its own."""


def pdf(report: SeriesReport | TrialReport, *, now: datetime, paper: str = "a4") -> bytes:
    """``paper`` is "a4" or "letter".

    Raises
    ------
    ValueError
        At any other paper.
    NotTypeset
        If the typesetter gives up.
    """
    if paper not in PAPERS:
        raise ValueError(f"paper must be one of {', '.join(PAPERS)}; got {paper!r}")
    with TemporaryDirectory() as folder:
        root = Path(folder)
        for source in SOURCES.glob("*.typ"):
            (root / source.name).write_bytes(source.read_bytes())
        _pictograms(report, root)
        content = plain(report) | {"paper": PAPERS[paper], "photographs": _photographs(report, root)}
        name = "series.typ" if isinstance(report, SeriesReport) else "trial.typ"
        return _typeset(root / name, content, now)


def plain(value):
    """The report as JSON has it; films and figures are drawn."""
    if isinstance(value, Cell):
        return {"text": value.text, "figure": value.places is not None, "hidden": value.hidden}
    if isinstance(value, Film):
        return {"svg": swatch(value, size_px=48), "alt": describe(value)}
    if isinstance(value, Figure):
        return {"svg": value.svg, "label": value.label, "caption": value.caption}
    if is_dataclass(value):
        return {field.name: plain(getattr(value, field.name)) for field in fields(value)}
    if isinstance(value, tuple | list):
        return [plain(item) for item in value]
    return value


def _typeset(source: Path, content: dict, now: datetime) -> bytes:
    done = subprocess.run(  # noqa: S603 - our own program with two paths and a number, no shell
        [sys.executable, "-I", TYPESETTER, source, str(int(now.timestamp()))],
        input=json.dumps(content).encode(),
        capture_output=True,
        timeout=LONGEST_S,
        check=False,
    )
    if done.returncode:
        raise NotTypeset(done.stderr.decode(errors="replace"))
    return done.stdout


def _pictograms(report, root: Path) -> None:
    for code in report.cautions.pictograms:
        drawing = Path(finders.find(f"img/ghs/{code}.svg"))
        (root / drawing.name).write_bytes(drawing.read_bytes())


def _photographs(report, root: Path) -> dict[str, str]:
    """The piece of every photograph that is shown, as a file beside the sources, by the number of the photograph."""
    found = {}
    for tile in (tile for strip in report.strips for row in strip.rows for tile in row.tiles if tile.photo):
        name = f"photo-{tile.photo}.jpg"
        if str(tile.photo) not in found and _cut(tile, root / name):
            found[str(tile.photo)] = name
    return found


def _cut(tile: Tile, place: Path) -> bool:
    """Cut out and brought to 300 pixels an inch; False where the file is gone or broken: the page says so."""
    left, top, wide, high = tile.piece_px
    try:
        with default_storage.open(tile.picture) as file, Image.open(BytesIO(file.read()), formats=["JPEG"]) as image:
            piece = image.crop((round(left), round(top), round(left + wide), round(top + high))).convert("RGB")
    except OSError:
        return False
    piece.thumbnail([max(1, round(side * PRINT_PX_PER_MM)) for side in tile.paper_mm], Image.Resampling.LANCZOS)
    piece.save(place, "JPEG", quality=88)
    return True
