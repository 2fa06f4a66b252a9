"""One table of a judged series as the dose-response figure shows it."""

from collections import Counter
from collections.abc import Sequence

from trials.figures.ladder import Cup as Point
from trials.figures.ladder import Ladder, Line, Rung
from trials.models.trials import Part

from .contrasts import Cell, middle
from .judged import Table


def ladder_of(table: Table) -> Ladder:
    """The block with most treated groups: blanks of different blocks are never drawn as one."""
    cells = _one_block([row.cell for row in table.rows])
    measure = table.judged.measure
    blanks = [cell for cell in cells if cell.group.part == Part.BLANK]
    control = [value for cell in blanks for value in cell.counted]
    blank = middle(measure, control)
    dosed = [cell for cell in cells if cell.group.doses]
    names = list(dict.fromkeys(cell.group.name for cell in dosed))
    return Ladder(
        x_title=_x_title(dosed),
        y_title=measure.title,
        blanks=tuple(point for cell in blanks for point in _points(cell, 0.0, measure.unit)),
        blank_middle=blank,
        lines=tuple(
            _line(name, [cell for cell in dosed if cell.group.name == name], blank, measure) for name in names
        ),
        limit=table.wanted.limit if table.wanted else None,
        limit_said=table.wanted.said if table.wanted else "",
    )


def caption(table: Table) -> str:
    """What the marks of the figure stand for."""
    measure = table.judged.measure
    parts = [
        f"Small marks: cups. Large marks: {measure.middle_word} of the cups that count."
        + (" Hollow: shown, not counted." if table.apart else ""),
        "Band: from the lowest to the highest blank.",
    ]
    if measure.graded:
        parts.append("Grades have no interval here: see p in the table.")
    else:
        parts.append(
            "Bars: the 95 % interval of the difference from the blank (Dunnett, all groups together), set on the mean"
            " of the blanks: a bar that stays clear of it shows a difference."
        )
    return " ".join(parts)


def _one_block(cells: Sequence[Cell]) -> list[Cell]:
    treated = Counter(cell.group.block.number for cell in cells if cell.group.doses)
    if not treated:
        return list(cells)
    chosen = min(treated, key=lambda number: (-treated[number], number))
    return [cell for cell in cells if cell.group.block.number == chosen]


def _line(name: str, dosed: Sequence[Cell], blank: float | None, measure) -> Line:
    cells = [cell for cell in dosed if cell.group.name == name]
    return Line(
        name=name,
        cups=tuple(point for cell in cells for point in _points(cell, cell.group.dosage_pct, measure.unit)),
        rungs=tuple(_rung(cell, blank, measure) for cell in cells if cell.middle is not None),
    )


def _rung(cell: Cell, blank: float | None, measure) -> Rung:
    low = high = None
    contrast = cell.blank
    if contrast and blank is not None and contrast.low is not None and contrast.high is not None:
        low, high = blank + contrast.low, blank + contrast.high
    said = f"{cell.group.label}: {measure.middle_word} {cell.middle:.4g} {measure.unit}".rstrip()
    if contrast:
        p = "no p" if contrast.p is None else f"p = {contrast.p:.2g}"
        said += f"<br>{contrast.estimate:+.3g} against the blank, {p}, {cell.n} cups".replace("-", "\u2212")
    return Rung(cell.group.dosage_pct, cell.middle, low, high, said)


def _points(cell: Cell, dosage_pct: float, unit: str) -> list[Point]:
    return [
        Point(
            dosage_pct=dosage_pct,
            value=value,
            said=f"{cup.trial.code}: {value:.4g} {unit}".rstrip()
            + ("" if cup.counts else f"<br>{'; '.join(cup.apart)}"),
            apart=not cup.counts,
        )
        for cup, value in cell.values
    ]


def _x_title(cells: Sequence[Cell]) -> str:
    """The basis belongs to the number; where cups differ in it, the table says which has which."""
    bases = list(dict.fromkeys(dose.basis for cell in cells for dose in cell.group.doses))
    return f"Dosage, % {bases[0]}" if len(bases) == 1 else "Dosage, %, on different bases: see the table"
