"""A sum: what is typed, and one line for each figure that follows from it, computed by ``trials.science``."""

import math
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from types import SimpleNamespace

from django.forms import ChoiceField

from .form import SumForm

Given = SimpleNamespace
NOISE = 1e-12
"""Below this a figure of these sums is what binary fractions leave of nought."""


@dataclass(frozen=True, slots=True)
class Line:
    """A figure with its formula and where formula or definition come from. ``figure`` may answer with a word."""

    label: str
    unit: str
    formula: str
    source: str
    needs: tuple[str, ...]
    figure: Callable[[Given], float | str]
    digits: int = 4


@dataclass(frozen=True, slots=True)
class Sum:
    """``remarks`` are (kind, words) of a notice, for what was typed; ``cautions`` always stand there."""

    slug: str
    title: str
    asks: str
    form: type[SumForm]
    lines: tuple[Line, ...]
    remarks: Callable[[Given], Iterable[tuple[str, str]]] = lambda given: ()
    cautions: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Fact:
    """A line worked out; without ``value`` its ``lacking`` says what to type."""

    label: str
    value: str
    unit: str
    formula: str
    source: str
    lacking: str = ""


@dataclass(frozen=True, slots=True)
class Answer:
    facts: tuple[Fact, ...]
    remarks: tuple[tuple[str, str], ...]

    @property
    def said(self) -> str:
        """What is read out while somebody types: the first figure that came out."""
        return next((f"{one.label}: {one.value} {one.unit}".strip() for one in self.facts if one.value), "")


def work_out(one: Sum, form: SumForm) -> Answer:
    """Every line that can be; what a computation refuses becomes an error of the form."""
    form.is_valid()
    given = Given(**form.given())
    facts = tuple(_fact(line, form, given) for line in one.lines)
    try:
        remarks = tuple(one.remarks(given)) if form.is_valid() else ()
    except ValueError as error:
        form.blame(str(error))
        remarks = ()
    return Answer(facts, remarks)


def _fact(line: Line, form: SumForm, given: Given) -> Fact:
    words = (line.label, "", line.unit, line.formula, line.source)
    wrong = [name for name in form.errors if name in line.needs or isinstance(form.fields.get(name), ChoiceField)]
    if wrong:
        return Fact(*words, lacking=f"see {_labels(form, wrong)}")
    missing = [name for name in line.needs if getattr(given, name) in (None, "")]
    if missing:
        return Fact(*words, lacking=f"enter {_labels(form, missing)}")
    try:
        value = line.figure(given)
    except ValueError as error:
        form.blame(str(error))
        return Fact(*words, lacking="see the error beside its field")
    if isinstance(value, str):
        return Fact(line.label, value, "", line.formula, line.source)
    return Fact(line.label, said(value, line.digits), line.unit, line.formula, line.source)


def _labels(form: SumForm, names: list[str]) -> str:
    return ", ".join(f"“{form.fields[name].label}”" for name in names)


def said(value: float, digits: int) -> str:
    """So many digits that mean something, and never an invented nought behind the point."""
    if abs(value) < NOISE:
        return "0"
    if not 1e-5 <= abs(value) < 1e12:
        text = f"{value:.{digits - 1}e}"
    else:
        places = max(0, digits - 1 - math.floor(math.log10(abs(value))))
        text = f"{value:.{places}f}"
        text = text.rstrip("0").rstrip(".") if "." in text else text
    return text.replace("-", "\u2212")
