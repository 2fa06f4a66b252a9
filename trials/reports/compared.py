"""The comparison of a series as tables: criteria, limits, groups of cups, windows."""

from collections.abc import Iterable, Sequence

from trials.models import Failure
from trials.queries.contrasts import Contrast
from trials.queries.judging import Judgement, Line
from trials.queries.judging import Row as Group
from trials.queries.judging import Table as Judged

from .parts import NOTHING, Cell, Column, Row, Table, columns, number, sentence, unbroken, words, written


def comparison_tables(judged: Judgement, *, only: frozenset[str] | None = None) -> tuple[Table, ...]:
    """Every criterion in its order. ``only`` keeps groups by their keys."""
    found = []
    for table in judged.tables:
        rows = [row for row in table.rows if only is None or row.cell.group.key in only]
        if rows:
            found.append(_against_blank(judged, table, rows))
            found += [made(judged, table, rows) for made in (_against_incumbent, _against_limit) if made]
    return tuple(table for table in found if table.rows)


def limit_table(judged: Judgement) -> Table | None:
    """How each group stands to each limit; None where the enquiry has none that anything was read by."""
    limited = [table for table in judged.tables if table.wanted]
    if not limited:
        return None
    rows = []
    for line in judged.lines:
        held = [_held(table, line) for table in limited]
        if any(held):
            cells = (words(_label(judged, line.group)), *(words(one.verdict if one else "") for one in held))
            rows.append(Row(cells, line.group.reference))
    heads = [Column(table.judged.name, table.wanted.said) for table in limited]
    note = "Why, with the figures, stands at each criterion below."
    return Table("The limits, group by group", (Column("Group"), *heads), tuple(rows), (note,))


def group_table(judged: Judgement) -> Table:
    """Every group with its films, what was decided of it and how it failed."""
    rows = []
    for line in judged.lines:
        cells = (
            words(_label(judged, line.group)),
            words(line.group.codes),
            number(float(len(line.group.counted)), 0),
            words("; ".join(outcome or "not decided" for outcome in line.outcomes)),
            words(line.suggestion.outcome if line.suggestion else ""),
            words(*failures_said(line.failures)),
        )
        films = tuple((trial.code, film) for trial, film in line.films)
        rows.append(Row(cells, line.group.reference, films))
    heads = columns("Group", "Cups", ("Counted", "n"), "Decided", "The figures suggest", "Failures")
    return Table("Groups of cups", heads, tuple(rows))


def failures_said(failures: Iterable[Failure]) -> tuple[str, ...]:
    return tuple(
        f"{one.get_mode_display()}, {one.severity} of 5"
        + (f", cause: {one.get_cause_display()}" if one.cause else "")
        + (f": {one.how}" if one.how else "")
        for one in failures
    )


def window_table(judged: Judgement) -> Table | None:
    if not judged.windows:
        return None
    rows = []
    for one in judged.windows:
        onset = f"{one.harmed}: {one.onset.reason}" if one.harmed else one.onset.reason
        others = [
            f"{sentence(reach.said)[:-1]}: {_per_cent(reach.lowest.dosage_pct)}. {reach.lowest.reason}"
            for reach in one.reaches
            if reach.rule != one.reach.rule
        ]
        window = one.window
        ends = (number(end, 3) for end in (window.from_pct, window.to_pct, window.working_pct))
        name = f"{one.name}, {one.block}" if judged.several_blocks else one.name
        rows.append(Row((words(name), *ends, words(one.reach.lowest.reason, window.reason, onset), words(*others))))
    heads = columns("Additive", ("From", "%"), ("To", "%"), ("Working", "%"), "Why", "By other rules")
    by = "; ".join(dict.fromkeys(one.judged_by for one in judged.windows))
    notes = (
        f"From: the {judged.windows[0].reach.said}, by {by} ({judged.windows[0].side}).",
        "To: the highest dosage tested below the onset of over-dosing. What is suggested is no decision.",
    )
    return Table("Windows that the figures allow", heads, tuple(rows), notes)


def _against_blank(judged: Judgement, table: Judged, rows: Sequence[Group]) -> Table:
    measure = table.judged.measure
    ends = () if measure.graded else (("from", "95 %"), ("to", "95 %"))
    shift = "Shift" if measure.graded else "Difference"
    heads = columns(
        "Group", "Cups", ("n", ""), (measure.middle_word.capitalize(), ""), (shift, "from blank"), *ends,
        ("p", "adjusted"), "Shown",
    )  # fmt: skip
    age = f", read at {table.judged.column.age_h:g} h" if table.judged.column.age_h else ""
    limit = f"; enquiry {table.wanted.said}" if table.wanted else ""
    caption = f"{_titled(table)}{age}; {measure.better} is better{limit}"
    apart = any(not cup.counts for row in rows for cup, _ in row.cell.values)
    notes = (
        f"Standard: {measure.standard}." if measure.standard else "",
        sentence(measure.note),
        *table.remarks,
        "Cups in brackets are shown, not counted." if apart else "",
    )
    made = (_contrasted(judged, measure, row) for row in rows)
    return Table(caption, heads, tuple(made), tuple(note for note in notes if note))


def _contrasted(judged: Judgement, measure, row: Group) -> Row:
    cell, blank = row.cell, row.cell.blank
    cups = "; ".join(
        written(value, measure.places) if cup.counts else f"({written(value, measure.places)})"
        for cup, value in cell.values
    )
    return Row(
        (
            words(_label(judged, cell.group)),
            words(cups),
            number(float(cell.n), 0),
            number(cell.middle, measure.places),
            *_figures(measure, blank),
            words(_shown(blank) if blank else cell.lone or "control"),
        ),
        cell.group.reference,
    )


def _figures(measure, contrast: Contrast | None) -> tuple[Cell, ...]:
    """Estimate, ends of the interval where there is one, and p."""
    if contrast is None:
        empty = (number(None, measure.places),) * (1 if measure.graded else 3)
        return (*empty, Cell(NOTHING, places=3))
    values = (contrast.estimate,) if measure.graded else (contrast.estimate, contrast.low, contrast.high)
    p = Cell(contrast.p_said or NOTHING, contrast.p, 3)
    return (*(number(value, measure.places) for value in values), p)


def _shown(contrast: Contrast) -> str:
    if contrast.change_pct is None:
        return contrast.says
    return f"{contrast.says}, {written(contrast.change_pct, 0)} %"


def _against_incumbent(judged: Judgement, table: Judged, rows: Sequence[Group]) -> Table:
    measure = table.judged.measure
    made = [
        Row((words(_label(judged, row.cell.group)), *_figures(measure, one), words(_shown(one))))
        for row in rows
        if (one := row.cell.incumbent)
    ]
    ends = () if measure.graded else (("from", "95 %"), ("to", "95 %"))
    head = ("Shift" if measure.graded else "Difference", "from incumbent")
    heads = columns("Group", head, *ends, ("p", "adjusted"), "Shown")
    return Table(f"{_titled(table)}: against {judged.incumbent}", heads, tuple(made))


def _against_limit(judged: Judgement, table: Judged, rows: Sequence[Group]) -> Table:
    """Also what a count proves where no limit was set."""
    if table.wanted:
        said = [(row, row.held.verdict, row.held.reason) for row in rows if row.held]
        heads = columns("Group", "Limit", "Why")
        caption = f"{_titled(table)}: against “{table.wanted.said}”"
    else:
        said = [(row, row.bound) for row in rows if row.bound]
        heads, caption = columns("Group", "What the count proves"), f"{_titled(table)}: what the counts prove"
    made = (
        Row((words(_label(judged, row.cell.group)), *map(words, texts)), row.cell.group.reference)
        for row, *texts in said
    )
    return Table(caption, heads, tuple(made))


def _held(table: Judged, line: Line):
    return next((row.held for row in table.rows if row.cell.group.key == line.group.key), None)


def _titled(table: Judged) -> str:
    measure, where = table.judged.measure, table.judged.column.condition.key
    return measure.title if where == "fresh" else f"{measure.title}, {where}"


def _label(judged: Judgement, group) -> str:
    label = unbroken(group.label)
    return f"{label}, block {group.block.number}" if judged.several_blocks else label


def _per_cent(value: float | None) -> str:
    return "none" if value is None else f"{value:g} %"
