"""A series judged: every group against the blank, the incumbent and the limits, and what was unfair about it."""

from collections.abc import Mapping, Sequence

from trials.access import series as series_of
from trials.models import Enquiry, Series
from trials.models.series import Outcome
from trials.models.trials import Part

from .blocks import places
from .contrasts import cells
from .cup_values import CupValues, cup_values
from .fairness import cup_marks, series_marks
from .films import films
from .groups import Group, groups
from .judged import Judgement, Line, Row, Table
from .limits import Wanted, count_bound, counted, enquiry_seen, held, wanted
from .marks import Mark
from .suggesting import suggest
from .weighed import weighed_cups
from .windows import Judged, windows

__all__ = ["Judgement", "Line", "Row", "Table", "judgement"]


def judgement(series_id: int, person, *, declared: bool = False, age_h: float | None = None) -> Judgement | None:
    """None where the person may not see the series. A number of queries that no cup adds to."""
    series = load(series_of(person).filter(pk=series_id))
    if series is None:
        return None
    trials = sorted(series.trials.all(), key=lambda trial: (trial.position, trial.pk))
    made = groups(trials, places(trials))
    values = cup_values(series, trials, age_h=age_h)
    enquiry = enquiry_seen(series, person)
    incumbents = _incumbents(made, enquiry)
    judged = tuple(
        Judged(column, cells(column, made, incumbents=incumbents, declared=declared)) for column in values.columns
    )
    limits = wanted(enquiry)
    marks = cup_marks(made, weighed_cups(trials), too_early=values.too_early)
    tables = tuple(_table(one, limits.get(one.measure.key)) for one in judged)
    drawn = films(trials)
    lines = tuple(_line(group, judged, tables, marks, drawn) for group in made)
    unfair = {line.group.key for line in lines if line.suggestion and line.suggestion.outcome == Outcome.UNFAIR}
    return Judgement(
        series=series,
        enquiry=enquiry,
        declared=declared,
        lines=lines,
        tables=tables,
        marks=_series_marks(made, values),
        windows=windows(judged, limits, unfair=unfair, declared=declared),
        incumbent=next((group.label for group in made if group.key in incumbents.values()), ""),
    )


def load(found) -> Series | None:
    """The series with all that judging it asks for."""
    return (
        found.select_related("revision__base", "common_batch", "owner", "recommended__material")
        .prefetch_related(
            "revision__components__lines__material__groups",
            "revision__components__lines__lot",
            "common_batch__wet_readings",
            "trials__common_batch__wet_readings",
            "trials__topped_up_from",
            "trials__dosages__candidate__material",
            "trials__dosages__lot",
            "trials__workings__equipment",
            "trials__wet_readings",
            "trials__panels__layers",
            "trials__panels__stored_tin",
            "trials__failures",
        )
        .first()
    )


def _incumbents(made: Sequence[Group], enquiry: Enquiry | None) -> dict[int, str]:
    """The incumbent's group by block: the dosage that the customer uses today, else the lowest."""
    today = float(enquiry.incumbent_pct) if enquiry and enquiry.incumbent_pct is not None else 0.0
    found: dict[int, Group] = {}
    for group in made:
        if group.part != Part.INCUMBENT or not group.counted:
            continue
        standing = found.get(group.block.number)
        if standing is None or abs(group.dosage_pct - today) < abs(standing.dosage_pct - today):
            found[group.block.number] = group
    return {number: group.key for number, group in found.items()}


def _table(one: Judged, limit: Wanted | None) -> Table:
    against = held(one.column, one.cells, limit) if limit else {}
    rows = tuple(
        Row(
            cell=cell,
            held=against.get(cell.group.key),
            bound=count_bound(counted(one.column, cell)) if one.measure.counted else "",
            places=one.measure.loose_places,
        )
        for cell in one.cells
    )
    return Table(one, limit, rows)


def _line(group: Group, judged, tables: Sequence[Table], marks: Mapping[int, Sequence[Mark]], drawn) -> Line:
    by_group = {
        (table.judged.measure.key, table.judged.column.condition.key): {
            row.cell.group.key: row.held for row in table.rows if row.held
        }
        for table in tables
    }
    dosed = group.part in (Part.TREATED, Part.INCUMBENT)
    return Line(
        group=group,
        marks=_told_once(group, marks),
        suggestion=suggest(group, judged, by_group, marks) if dosed else None,
        outcomes=tuple(sorted({cup.trial.outcome for cup in group.cups})),
        failures=tuple(
            sorted(
                (failure for cup in group.cups for failure in cup.trial.failures.all()),
                key=lambda failure: (-failure.severity, failure.mode, failure.pk),
            )
        ),
        films=tuple((cup.trial, drawn[cup.pk]) for cup in group.cups),
    )


def _told_once(group: Group, marks: Mapping[int, Sequence[Mark]]) -> tuple[tuple[Mark, tuple[str, ...]], ...]:
    """Each mark of the group once, with the codes of its cups."""
    cups: dict[Mark, list[str]] = {}
    for cup in group.cups:
        for mark in marks[cup.pk]:
            cups.setdefault(mark, []).append(cup.trial.code)
    return tuple((mark, tuple(codes)) for mark, codes in cups.items())


def _series_marks(made: Sequence[Group], values: CupValues) -> tuple[Mark, ...]:
    read = [value for column in values.columns if column.condition.panels for value in column.values.values()]
    return series_marks(
        made,
        readers=max((value.readers for value in read), default=0),
        blind=all(value.blind for value in read),
        read=bool(read),
    )
