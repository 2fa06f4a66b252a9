"""Two revisions of a base, line by line and figure by figure."""

from dataclasses import dataclass

from .bases import BaseSheet, mix_facts


@dataclass(frozen=True, slots=True)
class LineChange:
    """One material of one component; parts of None: it is not on that side."""

    letter: str
    code: str
    name: str
    left: float | None
    right: float | None
    left_pct: float | None
    right_pct: float | None

    @property
    def said(self) -> str:
        if self.left is None:
            return "new"
        if self.right is None:
            return "gone"
        return "" if self.left == self.right else "changed"


@dataclass(frozen=True, slots=True)
class FigureChange:
    label: str
    unit: str
    left: float | None
    right: float | None

    @property
    def difference(self) -> float | None:
        return None if None in (self.left, self.right) else self.right - self.left


@dataclass(frozen=True, slots=True)
class Comparison:
    lines: tuple[LineChange, ...]
    figures: tuple[FigureChange, ...]


def compare(left: BaseSheet, right: BaseSheet, currency: str) -> Comparison:
    """What differs from the left revision to the right one."""
    return Comparison(lines=_lines(left, right), figures=_figures(left, right, currency))


def _parts(sheet: BaseSheet) -> dict[tuple[str, str], tuple]:
    found = {}
    for component in sheet.components:
        for line in component.lines:
            parts, share, name = found.get((component.letter, line.facts.code), (0.0, 0.0, line.facts.name))
            found[component.letter, line.facts.code] = (parts + line.parts, share + line.share_pct, name)
    return found


def _lines(left, right) -> tuple[LineChange, ...]:
    before, after = _parts(left), _parts(right)
    nothing = (None, None, "")
    changes = []
    for key in sorted(before.keys() | after.keys()):
        (a, a_pct, a_name), (b, b_pct, b_name) = before.get(key, nothing), after.get(key, nothing)
        changes.append(LineChange(*key, a_name or b_name, a, b, a_pct, b_pct))
    return tuple(changes)


def _figures(left, right, currency) -> tuple[FigureChange, ...]:
    pairs = zip(mix_facts(left.mix, currency), mix_facts(right.mix, currency), strict=True)
    figures = [FigureChange(a.label, a.unit, a.value, b.value) for a, b in pairs]
    ratios = {component.letter for sheet in (left, right) for component in sheet.components}
    for letter in sorted(ratios):
        parts = [next((c.parts for c in s.components if c.letter == letter), None) for s in (left, right)]
        figures.append(FigureChange(f"Mixing parts of {letter}", "by mass", *parts))
    indexes = [sheet.mix.index.value if sheet.mix.index else None for sheet in (left, right)]
    over = next((s.mix.index.band.over for s in (left, right) if s.mix.index), "")
    return (*figures, FigureChange("Index", over, *indexes))
