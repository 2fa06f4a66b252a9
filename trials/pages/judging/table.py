"""The comparison as a table of text: one row for each group in each criterion."""

import csv
from collections.abc import Iterator
from io import StringIO

from trials.queries.judging import Judgement, Row, Table

HEAD = (
    "series", "criterion", "unit", "condition", "age_h", "block", "group", "part", "dosage_pct", "basis", "cups",
    "n", "middle_is", "middle", "values",
    "difference_from_blank", "low", "high", "p", "n_blank", "change_pct",
    "difference_from_incumbent", "incumbent_low", "incumbent_high", "incumbent_p",
    "compared", "limit", "verdict", "reason", "count", "not_counted",
)  # fmt: skip
# What a spreadsheet would take for the start of a formula.
FORMULA = ("=", "+", "-", "@", "\t", "\r")


def comparison_csv(judged: Judgement) -> str:
    """Comma-separated text with a byte order mark, so that spreadsheets read the units."""
    out = StringIO()
    writer = csv.writer(out, lineterminator="\r\n")
    writer.writerow(HEAD)
    writer.writerows(rows(judged))
    return "\ufeff" + out.getvalue()


def rows(judged: Judgement) -> Iterator[list]:
    for table in judged.tables:
        for row in table.rows:
            yield [safe(value) for value in _row(judged, table, row)]


def safe(value):
    """Text that no spreadsheet runs; numbers stay numbers, nothing is an empty cell."""
    if value is None:
        return ""
    if isinstance(value, str) and value.startswith(FORMULA):
        return f"'{value}"
    return value


def _row(judged: Judgement, table: Table, row: Row) -> list:
    measure, column, cell = table.judged.measure, table.judged.column, row.cell
    group, blank, incumbent, held = cell.group, cell.blank, cell.incumbent, row.held
    bases = "; ".join(dict.fromkeys(dose.basis for dose in group.doses))
    apart = "; ".join(f"{cup.trial.code}: {', '.join(cup.apart)}" for cup, _ in cell.values if not cup.counts)
    return [
        judged.series.number, measure.name, measure.unit, column.condition.key, column.age_h, group.block.label,
        group.label, group.part, group.dosage_pct if group.doses else None, bases, group.codes,
        cell.n, measure.middle_word, cell.middle, "; ".join(f"{value:.6g}" for _, value in cell.values),
        *([*_contrast(blank), blank.n_control, blank.change_pct] if blank else [None] * 6),
        *(_contrast(incumbent) if incumbent else [None] * 4),
        blank.side if blank else cell.lone, held.wanted.said if held else None, held.verdict if held else None,
        held.reason if held else None, row.bound or None, apart or None,
    ]  # fmt: skip


def _contrast(one) -> list:
    return [one.estimate, one.low, one.high, one.p]
