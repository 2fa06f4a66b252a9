"""The report of one cup: what went in, what was done to it, what was read, and how its group stands to the blank."""

from dataclasses import dataclass
from datetime import datetime

from trials.figures.swatch import Film
from trials.models import Person, Trial
from trials.models.trials import Part
from trials.queries.judging import Judgement, Line, judgement
from trials.queries.masses import Reckoning
from trials.queries.signatures import signing_of
from trials.queries.trials import trial_sheet
from trials.queries.weighing import weighing_sheet

from .compared import comparison_tables, failures_said
from .definitions import definitions
from .framing import Cautions, base_facts, base_named, cautions_for, head
from .logged import (
    component_table,
    dosage_table,
    panel_table,
    rated_table,
    rating_table,
    reading_table,
    tin_table,
    wet_table,
)
from .parts import Fact, Head, Remark, Table, joined, moment, sentence, written
from .photographs import Strip, strips
from .proof import Proof, proof_of
from .withheld import names_withheld, without_names
from .worked import working_table


@dataclass(frozen=True, slots=True)
class TrialReport:
    """``logged`` are the tables of what went in and what was done and read, in that order."""

    head: Head
    outcome: str
    unfair_because: str
    failures: tuple[str, ...]
    lesson: str
    remark: str
    films: tuple[tuple[str, Film], ...]
    made: tuple[Fact, ...]
    unfair: tuple[Remark, ...]
    logged: tuple[Table, ...]
    asked: tuple[str, ...]
    strips: tuple[Strip, ...]
    compared: tuple[Table, ...]
    definitions: tuple[Fact, ...]
    cautions: Cautions
    proof: Proof


def trial_report(trial: Trial, person: Person, *, now: datetime, outside: bool = False) -> TrialReport:
    """As it stands now. Expects what ``load_trial`` fetched; a number of queries that no row adds to."""
    series = trial.series
    sheet, judged, signing = trial_sheet(trial), judgement(series.pk, person), signing_of(trial)
    line = next(line for line in judged.lines if trial.pk in {cup.pk for cup in line.group.cups})
    base = base_facts(series, person)
    names = names_withheld(series.enquiry, outside=outside)
    report = TrialReport(
        head=head(
            kind="Trial report",
            code=f"Cup {trial.code}",
            title=line.group.label,
            over=(
                f"Series {series.number} {series.title}",
                f"base {base_named(series, person)}",
                trial.get_state_display(),
            ),
            signing=signing,
            outside=outside,
            withheld=bool(names),
            now=now,
        ),
        outcome=trial.outcome,
        unfair_because=trial.unfair_because,
        failures=failures_said(sheet.trial.failures.order_by("-severity", "mode", "pk")),
        lesson=trial.lesson,
        remark=trial.remark,
        films=tuple(
            (name, film) for name, film in (("fresh", sheet.film), ("stored", sheet.stored_film)) if film.is_read
        )
        or (("fresh", sheet.film),),
        made=_made(sheet.trial, series) + base,
        unfair=tuple(Remark(sentence(mark.text), mark.heavy) for mark in sheet.marks),
        logged=_logged(sheet),
        asked=sheet.asked,
        strips=strips(_beside(judged, line), series, person),
        compared=comparison_tables(judged, only=_with_blank(judged, line)),
        definitions=definitions(
            judged, Reckoning.of(series), [Fact(fact.label, sentence(fact.source)) for fact in base if fact.source]
        ),
        cautions=cautions_for(weighing_sheet(series, None)),
        proof=proof_of(trial, signing),
    )
    return without_names(report, names)


def _made(trial: Trial, series) -> tuple[Fact, ...]:
    batch = trial.common_batch or series.common_batch
    facts = (
        Fact("Made", joined((moment(trial.made_at), f"by {trial.made_by.full_name}" if trial.made_by else ""), " ")),
        Fact("A and B together", moment(trial.mixed_at)),
        Fact("Common batch", batch.number if batch else "none noted"),
        Fact("Mix of this cup", written(trial.batch_mass_g or series.batch_mass_g), "g", "free of additive"),
        Fact("Air", written(trial.air_c), "°C"),
        Fact("Humidity", written(trial.humidity_pct), "%"),
        Fact("Place in the order of working", str(trial.position)),
    )
    if trial.topped_up_from:
        return (*facts, Fact("Topped up from", trial.topped_up_from.code, source="not independent of it"))
    return facts


def _logged(sheet) -> tuple[Table, ...]:
    made = (
        dosage_table(sheet),
        component_table(sheet),
        reading_table(sheet),
        working_table(sheet.workings, "What was done to it"),
        wet_table(sheet),
        panel_table(sheet),
        tin_table(sheet),
        rated_table(sheet),
        rating_table(sheet),
    )
    return tuple(table for table in made if table and table.rows)


def _with_blank(judged: Judgement, line: Line) -> frozenset[str]:
    here = [one.group for one in judged.lines if one.group.block.number == line.group.block.number]
    return frozenset({line.group.key, *(group.key for group in here if group.part == Part.BLANK)})


def _beside(judged: Judgement, line: Line) -> list:
    """Its group beside the references of its block."""
    here = [one.group for one in judged.lines if one.group.block.number == line.group.block.number]
    return [group for group in here if group.reference or group.key == line.group.key]
