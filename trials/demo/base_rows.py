"""How the bases of the demonstration are written down."""

from typing import NamedTuple


class LineRow(NamedTuple):
    code: str
    parts: str
    stage: str = ""
    lot: str = ""


class ComponentRow(NamedTuple):
    """``lines`` is a small table, one line each: code, parts, and where there is one stage (or -) and lot."""

    letter: str
    parts: str
    name: str = ""
    density: str | None = None
    viscosity: str | None = None
    non_volatile: str | None = None
    water: str | None = None
    batch: str = ""
    received: int | None = None
    lines: str = ""

    def rows(self) -> list[LineRow]:
        return [_line(text) for text in self.lines.splitlines() if text.strip()]


class RevisionRow(NamedTuple):
    """Made so many days ago; ``measured`` holds the figures of the mix as the model names them."""

    ago: int
    clock: str
    by: str
    why: str
    components: tuple[ComponentRow, ...]
    measured: dict[str, str]


class BaseRow(NamedTuple):
    """``shared``: sign-in names of those who may see it; None: everybody."""

    code: str
    name: str
    chemistry: str
    field: str
    film_um: str
    revisions: tuple[RevisionRow, ...]
    black_box: bool = False
    additive: str = "no"
    additive_note: str = ""
    remarks: str = ""
    shared: tuple[str, ...] | None = None


def _line(text: str) -> LineRow:
    code, parts, *rest = text.split()
    stage, lot = (*rest, "", "")[:2]
    return LineRow(code, parts, "" if stage == "-" else stage, lot)
