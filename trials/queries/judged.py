"""What a judged series is made of: tables by criterion, lines by group, and the whole with its windows and marks."""

from dataclasses import dataclass

from django.utils.text import slugify

from trials.figures.swatch import Film
from trials.models import Enquiry, Failure, Series, Trial

from .contrasts import Cell
from .groups import Group
from .limits import Held, Wanted
from .marks import Mark
from .suggesting import Suggestion
from .windows import Judged, Suggested

COUNTS_SCATTER = (
    "Counts scatter more where there are many: the one spread that Dunnett takes for all groups is rough here."
)


@dataclass(frozen=True, slots=True)
class Row:
    """One group in one table: its cell, how it stands to the limit, and what a count of it still allows."""

    cell: Cell
    held: Held | None
    bound: str
    places: int


@dataclass(frozen=True, slots=True)
class Table:
    """One criterion under one condition, or one quantity read wet."""

    judged: Judged
    wanted: Wanted | None
    rows: tuple[Row, ...]

    @property
    def key(self) -> str:
        return f"{self.judged.measure.key}:{self.judged.column.condition.key}"

    @property
    def slug(self) -> str:
        """For the identifiers of a page."""
        return slugify(self.key.replace(":", "-"))

    @property
    def apart(self) -> bool:
        """Whether a cup is shown that is not counted."""
        return any(not cup.counts for row in self.rows for cup, _ in row.cell.values)

    def row(self, key: str) -> Row | None:
        return next((row for row in self.rows if row.cell.group.key == key), None)

    @property
    def remarks(self) -> tuple[str, ...]:
        """Of the column, and notes that hold for several groups, each once."""
        notes = [row.cell.blank.note for row in self.rows if row.cell.blank and row.cell.blank.note]
        if self.judged.measure.counted:
            notes.append(COUNTS_SCATTER)
        return tuple(dict.fromkeys((*self.judged.column.remarks, *notes)))


@dataclass(frozen=True, slots=True)
class Line:
    """One group as a whole. ``marks`` are told with the cups that they hold for."""

    group: Group
    marks: tuple[tuple[Mark, tuple[str, ...]], ...]
    suggestion: Suggestion | None
    outcomes: tuple[str, ...]
    failures: tuple[Failure, ...]
    films: tuple[tuple[Trial, Film], ...]

    @property
    def outcome(self) -> str:
        """What was decided, where it is the same for every cup."""
        return self.outcomes[0] if len(self.outcomes) == 1 else ""


@dataclass(frozen=True, slots=True)
class Judgement:
    """``declared``: one-sided, because it was decided before the cups were read. ``enquiry`` only where seen."""

    series: Series
    enquiry: Enquiry | None
    declared: bool
    lines: tuple[Line, ...]
    tables: tuple[Table, ...]
    marks: tuple[Mark, ...]
    windows: tuple[Suggested, ...]
    incumbent: str

    @property
    def shown(self) -> Table | None:
        """What the figure opens with: the first efficiency quantity, else the first grade, fresh."""
        return min(self.tables, key=_opens_with, default=None)

    @property
    def overview(self) -> tuple[tuple[Line, tuple[Row | None, ...]], ...]:
        """Every group with its row in each table, None where it was not read."""
        return tuple((line, tuple(table.row(line.group.key) for table in self.tables)) for line in self.lines)

    @property
    def several_blocks(self) -> bool:
        return len({line.group.block.number for line in self.lines}) > 1

    def table(self, key: str) -> Table | None:
        return next((table for table in self.tables if table.key == key), self.shown)


def _opens_with(table: Table) -> tuple[bool, bool, bool]:
    return not table.judged.measure.efficiency, table.judged.column.condition.stored, table.judged.measure.graded
