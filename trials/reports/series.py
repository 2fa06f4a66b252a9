"""The report of a series: what was asked, what was found, how sure that is, and what it rests on."""

from dataclasses import dataclass
from datetime import datetime

from trials.models import Person, Series
from trials.queries.fairness import Mark
from trials.queries.judging import Judgement, judgement
from trials.queries.judging import Table as Judged
from trials.queries.ladders import caption, ladder_of
from trials.queries.masses import Reckoning
from trials.queries.series import series_sheet
from trials.queries.signatures import signing_of
from trials.queries.weighing import weighing_sheet

from .compared import comparison_tables, group_table, limit_table, window_table
from .definitions import definitions
from .framing import Asked, Cautions, asked_of, base_facts, base_named, cautions_for, head
from .parts import Fact, Figure, Head, Remark, Table, day, joined, sentence, written
from .photographs import Strip, strips
from .proof import Proof, proof_of
from .untested import not_read
from .withheld import names_withheld, without_names
from .worked import working_table


@dataclass(frozen=True, slots=True)
class Answer:
    """What people decided; ``window`` carries its basis."""

    outcome: str
    recommended: str
    window: str
    conclusion: str


@dataclass(frozen=True, slots=True)
class SeriesReport:
    head: Head
    answer: Answer
    question: str
    asked: Asked | None
    limits: Table | None
    figures: tuple[Figure, ...]
    strips: tuple[Strip, ...]
    groups: Table
    windows: Table | None
    unfair: tuple[Remark, ...]
    not_tested: str
    not_read: tuple[str, ...]
    lesson: str
    compared: tuple[Table, ...]
    made: tuple[Fact, ...]
    workings: Table | None
    definitions: tuple[Fact, ...]
    cautions: Cautions
    proof: Proof


def series_report(series: Series, person: Person, *, now: datetime, outside: bool = False) -> SeriesReport:
    """Everything as it stands now. Expects what ``load_series`` fetched; a number of queries that no cup adds to."""
    judged, sheet, signing = judgement(series.pk, person), series_sheet(person, series), signing_of(series)
    reckoning, base = Reckoning.of(series), base_facts(series, person)
    names = names_withheld(series.enquiry, outside=outside)
    report = SeriesReport(
        head=head(
            kind="Series report",
            code=f"Series {series.number}",
            title=series.title,
            over=(
                f"Base {base_named(series, person)}",
                series.get_round_display(),
                f"planned {day(series.planned_at)}",
                f"kept by {series.owner.full_name}",
            ),
            signing=signing,
            outside=outside,
            withheld=bool(names),
            now=now,
        ),
        answer=_answer(series, reckoning),
        question=series.question,
        asked=asked_of(judged.enquiry),
        limits=limit_table(judged),
        figures=_figures(judged),
        strips=strips([line.group for line in judged.lines], series, person),
        groups=group_table(judged),
        windows=window_table(judged),
        unfair=unfair(judged),
        not_tested=series.not_tested,
        not_read=not_read(judged),
        lesson=series.lesson,
        compared=comparison_tables(judged),
        made=tuple(Fact(fact.label, written(fact.value), fact.unit, fact.source) for fact in sheet.facts) + base,
        workings=working_table(sheet.workings),
        definitions=definitions(judged, reckoning, [_defined(fact) for fact in base if fact.source]),
        cautions=cautions_for(weighing_sheet(series, None)),
        proof=proof_of(series, signing),
    )
    return without_names(report, names)


def _answer(series: Series, reckoning: Reckoning) -> Answer:
    given = [end for end in (series.window_from_pct, series.window_to_pct) if end is not None]
    ends = [written(end) for end in dict.fromkeys(given)]
    window = " to ".join(ends) + " %" if ends else ""
    working = f"worked at {written(series.working_pct)} %" if series.working_pct is not None else ""
    said = joined((window, working))
    return Answer(
        outcome=series.outcome,
        recommended=series.recommended.material.code if series.recommended else "",
        window=f"{said}, {reckoning}" if said else "",
        conclusion=series.conclusion,
    )


def _figures(judged: Judgement) -> tuple[Figure, ...]:
    """What leads, and what the ends of the windows were judged by."""
    wanted = [judged.shown] if judged.shown else []
    for one in judged.windows:
        wanted += [table for table in judged.tables if table.judged.name in (one.judged_by, one.harmed)]
    telling = [table for nth, table in enumerate(wanted) if nth == 0 or _differ(table)]
    return tuple(figure_of(table) for table in {table.key: table for table in telling}.values())


def _differ(table: Judged) -> bool:
    """A figure of cups that are all alike says less than the sentence that they are."""
    return len({value for row in table.rows for _, value in row.cell.values}) > 1


def figure_of(table: Judged) -> Figure:
    return Figure(ladder_of(table), table.judged.name, caption(table))


def unfair(judged: Judgement) -> tuple[Remark, ...]:
    """Of the series, then of its cups: each remark once, with the codes of all cups that it holds for."""
    cups: dict[Mark, list[str]] = {}
    for line in judged.lines:
        for mark, codes in line.marks:
            cups.setdefault(mark, []).extend(codes)
    of_cups = [
        Remark(sentence(f"{', '.join(sorted(codes, key=_place))}: {mark.text}"), mark.heavy)
        for mark, codes in cups.items()
    ]
    return (*(Remark(sentence(mark.text), mark.heavy) for mark in judged.marks), *of_cups)


def _place(code: str) -> tuple[int, str]:
    """417-9 before 417-10."""
    return len(code), code


def _defined(fact: Fact) -> Fact:
    return Fact(fact.label, sentence(fact.source))
