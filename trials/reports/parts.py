"""What reports are put together from: tables, facts, figures. Plain values, so that any paper can be made of one."""

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date, datetime
from decimal import Decimal

from django.utils import timezone

from trials.figures.ladder import Ladder
from trials.figures.ladder_svg import ladder_svg
from trials.figures.swatch import Film

MINUS, NOTHING = "\u2212", "–"


@dataclass(frozen=True, slots=True)
class Cell:
    """``text`` as it is read; a figure has its ``value`` too, and the decimals that its column shows."""

    text: str
    value: float | None = None
    places: int | None = None

    @property
    def hidden(self) -> str:
        """What stands unseen behind a figure, so that its column is aligned on the decimal point."""
        if not self.places or self.value is None:
            return ""
        _, point, decimals = self.text.partition(".")
        return ("" if point else ".") + "0" * max(0, self.places - len(decimals))


@dataclass(frozen=True, slots=True)
class Column:
    head: str
    unit: str = ""
    figure: bool = False


@dataclass(frozen=True, slots=True)
class Row:
    """``films`` are drawn before the first cell; a reference is marked at its edge."""

    cells: tuple[Cell, ...]
    reference: bool = False
    films: tuple[tuple[str, Film], ...] = ()


@dataclass(frozen=True, slots=True)
class Table:
    caption: str
    columns: tuple[Column, ...]
    rows: tuple[Row, ...]
    notes: tuple[str, ...] = ()

    @property
    def films(self) -> bool:
        return any(row.films for row in self.rows)


@dataclass(frozen=True, slots=True)
class Fact:
    label: str
    text: str
    unit: str = ""
    source: str = ""

    @property
    def value(self) -> str:
        """As the list of facts on a page asks for it."""
        return self.text


@dataclass(frozen=True, slots=True)
class Remark:
    text: str
    heavy: bool = False


@dataclass(frozen=True, slots=True)
class Figure:
    """``label`` says what it shows to who can't see it."""

    ladder: Ladder
    label: str
    caption: str

    @property
    def svg(self) -> str:
        return ladder_svg(self.ladder)


@dataclass(frozen=True, slots=True)
class Head:
    """``record`` stands on every page: the code and the state of signing."""

    kind: str
    code: str
    title: str
    over: tuple[str, ...]
    record: str
    signing: str
    outside: bool
    withheld: bool
    made: str
    file: str


def written(value, places: int | None = None) -> str:
    """A number as typed where it was typed, else at ``places``; a word as it is."""
    if value is None or value == "":
        return NOTHING
    if isinstance(value, Decimal):
        return format(value, "f").replace("-", MINUS)
    if isinstance(value, float):
        text = f"{value:.6g}" if places is None else f"{value:.{places}f}"
        return text.replace("-", MINUS)
    if isinstance(value, date):
        return moment(value) if isinstance(value, datetime) else day(value)
    return str(value)


def number(value, places: int) -> Cell:
    """A cell of a column of figures."""
    if value is None:
        return Cell(NOTHING, places=places)
    return Cell(written(value, places), float(value), places)


def words(*lines: str) -> Cell:
    """A cell of words, one line under the other."""
    return Cell("\n".join(line for line in lines if line) or NOTHING)


def columns(*heads) -> tuple[Column, ...]:
    """Each a head alone (words), or a head with its unit (figures)."""
    return tuple(Column(head) if isinstance(head, str) else Column(*head, figure=True) for head in heads)


def day(when: date | None) -> str:
    return NOTHING if when is None else f"{when.day} {when:%b %Y}"


def moment(when: datetime | None) -> str:
    """In the laboratory's zone."""
    if when is None:
        return NOTHING
    local = timezone.localtime(when)
    return f"{day(local)}, {local:%H:%M}"


def unbroken(label: str) -> str:
    """A dosage stays with its per cent at the end of a line."""
    return label.replace(" %", "\u00a0%")


def sentence(text: str) -> str:
    """With its capital and its full stop."""
    text = text.strip()
    if not text:
        return ""
    return text[:1].upper() + text[1:] + ("" if text.endswith((".", "?", "!", "…")) else ".")


def joined(parts: Iterable[str], between: str = ", ") -> str:
    return between.join(part for part in parts if part)
