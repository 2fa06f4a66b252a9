"""Writing about series: planning one with its references, its common batch, and what may still change."""

from collections.abc import Iterable
from datetime import datetime
from decimal import Decimal

from django.db import connection

from trials.access import may_restrict
from trials.models import (
    CommonBatch,
    CommonBatchLot,
    Criterion,
    Dosage,
    Lot,
    Person,
    Revision,
    Series,
    SeriesCriterion,
    SeriesShare,
    Trial,
)
from trials.models.series import Basis
from trials.models.trials import State
from trials.queries.masses import Reckoning, cup_masses
from trials.queries.recipes import components_of, with_recipe

from . import layout
from .acting import Refused, assign, operation
from .bases import freeze_revision
from .layout import DEGASSED, CandidateEntry, DoseEntry, References, WorkingEntry
from .limits import hold_to_limits
from .numbering import next_number
from .seen import refuse_unseen

__all__ = [
    "CandidateEntry",
    "DoseEntry",
    "WorkingEntry",
    "add_common_batch",
    "change_series",
    "plan_series",
    "refuse_signed",
    "share_series",
]

# What decides on the grams of a cup: it changes only while no cup is mixed.
WEIGHED_BY = ("revision", "batch_mass_g", "basis", "basis_component", "counting", "supplied", "stage", "into")
LINKED = ("common_batch",)


@operation()
def add_common_batch(
    *, actor: Person, now: datetime, revision: Revision, number: str, lots: Iterable[Lot] = (), **values
) -> CommonBatch:
    """One making of a component; the revision freezes with it."""
    freeze_revision(actor=actor, now=now, revision=revision)
    values = {"made_at": now, "made_by": actor, **values}
    batch = assign(CommonBatch(revision=revision, number=number.strip()), values)
    _component(revision, batch.letter, field="letter")
    hold_to_limits(batch)
    batch.save()
    CommonBatchLot.objects.bulk_create(CommonBatchLot(batch=batch, lot=lot) for lot in dict.fromkeys(lots))
    return batch


@operation()
def plan_series(
    *,
    actor: Person,
    now: datetime,
    title: str,
    round: str,
    revision: Revision,
    batch_mass_g: Decimal,
    candidates: tuple[CandidateEntry, ...] = (),
    blanks: int = 2,
    clean_check: bool = True,
    incumbent: CandidateEntry | None = None,
    vacuum: bool | WorkingEntry = False,
    replicates: int = 2,
    workings: tuple[WorkingEntry, ...] = (),
    criteria: Iterable[Criterion] = (),
    weights: dict[str, Decimal] | None = None,
    counts_in_ratio: bool = False,
    no_blank_because: str = "",
    restricted: bool = False,
    **values,
) -> Series:
    """A series with all its cups in the order of working; the revision freezes.

    Parameters
    ----------
    blanks, clean_check, incumbent, vacuum
        The references; all of them get the same workings as the treated cups, the degassed one a rest under
        vacuum more. No blank only with ``no_blank_because``.
    weights
        By the criterion's key; 1 where none is given.
    restricted
        A series of a restricted base or enquiry always is, and is shared with those who may see both.
    **values
        Other fields of the series.
    """
    freeze_revision(actor=actor, now=now, revision=revision)
    series = Series(title=title, round=round, revision=revision, batch_mass_g=batch_mass_g, replicates=replicates)
    series.number = next_number(Series)
    series.seed = series.number
    assign(series, {"owner": actor, "planned_at": now, **values})
    _check(series, candidates, incumbent, blanks=blanks, no_blank_because=no_blank_because)
    if no_blank_because and not blanks:
        series.question = f"{series.question}\n\nNo blank: {no_blank_because}".strip()
    series.ladder_pct = sorted({pct for entry in candidates for pct in entry.dosages_pct})
    closed = _closed(series)
    series.restricted = closed or restricted
    references = References(blanks, clean_check, incumbent, DEGASSED if vacuum is True else vacuum or None)
    planned = layout.cups(candidates, references, replicates=replicates, workings=tuple(workings))
    planned = layout.in_order(planned, seed=series.seed, rule=series.order_rule)
    made = layout.rows(series, planned, _figures(series), counts_in_ratio=counts_in_ratio)
    series.save()
    made.save()
    _judge_by(series, criteria, weights or {})
    if closed:
        SeriesShare.objects.bulk_create(
            SeriesShare(series=series, person_id=key) for key in sorted(_who_sees_both(series) - {series.owner_id})
        )
    return series


@operation()
def change_series(
    *,
    actor: Person,
    series: Series,
    criteria: Iterable[Criterion] | None = None,
    weights: dict[str, Decimal] | None = None,
    seen: str = "",
    **values,
) -> Series:
    """Change what was decided. What the grams depend on changes only while no cup is mixed; they follow."""
    series = Series.objects.select_for_update().get(pk=series.pk)
    refuse_signed(series)
    refuse_unseen(series, seen, parts=("criteria",))
    if values.get("restricted", series.restricted) != series.restricted and not may_restrict(actor, series):
        raise Refused("Only who keeps a series or a supervisor decides who sees it.", field="restricted")
    before = {name: getattr(series, name) for name in (*WEIGHED_BY, *LINKED)}
    assign(series, values)
    _check_fields(series)
    if _closed(series) and not series.restricted:
        raise Refused("Its base or enquiry is only for named people, so the series is too.", field="restricted")
    changed = [name for name, value in before.items() if getattr(series, name) != value]
    series.save()
    if changed:
        _follow(series, changed)
    if criteria is not None:
        _judge_by(series, criteria, weights or {})
    return series


@operation()
def share_series(*, actor: Person, series: Series, people: list[Person]) -> None:
    """Name the people who may see a restricted series."""
    if not may_restrict(actor, series):
        raise Refused("Only who keeps a series or a supervisor decides who sees it.", field="people")
    SeriesShare.objects.filter(series=series).exclude(person__in=people).delete()
    named = set(SeriesShare.objects.filter(series=series).values_list("person", flat=True))
    SeriesShare.objects.bulk_create(
        SeriesShare(series=series, person=person) for person in people if person.pk not in named
    )


def refuse_signed(series: Series) -> None:
    """Rows added to a signed series are told before the database does, unless an amendment is being made."""
    with connection.cursor() as cursor:
        cursor.execute("SELECT trials_series_frozen(%s)", [series.pk])
        if cursor.fetchone()[0]:
            raise Refused(f"Series {series.number} is signed: it changes only by an amendment with its reason.")


def figures(series: Series):
    """The components of a series' revision."""
    return components_of(with_recipe(Revision.objects.filter(pk=series.revision_id)).get())


def _figures(series: Series):
    found = figures(series)
    if not found:
        raise Refused(
            f"{series.revision} has no components: enter them, then plan from it.",
            field="revision",
        )
    letters = [component.letter for component in found]
    if series.into not in letters:
        raise Refused(
            f"The additive goes into one of {', '.join(letters)}; got “{series.into}”.",
            field="into",
        )
    return found


def _component(revision: Revision, letter: str, *, field: str) -> None:
    if not revision.components.filter(letter=letter).exists():
        raise Refused(f"{revision} has no component “{letter}”.", field=field)


def _check_fields(series: Series) -> None:
    if not series.title.strip():
        raise Refused("Give the series a title.", field="title")
    if series.basis != Basis.COMPONENT:
        series.basis_component = ""
    elif not series.basis_component:
        raise Refused("Say which component the per cent are of.", field="basis_component")
    hold_to_limits(series)
    batch = series.common_batch
    if batch and batch.revision_id != series.revision_id:
        raise Refused(f"Common batch {batch.number} was made from another revision.", field="common_batch")


def _check(series, candidates, incumbent, *, blanks: int, no_blank_because: str) -> None:
    _check_fields(series)
    if blanks < 1 and not no_blank_because.strip():
        raise Refused(f"Plan at least one blank, or say why there is none; got {blanks}.", field="blanks")
    if not 1 <= series.replicates <= 20:
        raise Refused(f"Cups of each dosage must be from 1 to 20; got {series.replicates}.", field="replicates")
    every = (*candidates, *((incumbent,) if incumbent else ()))
    for entry in every:
        _check_entry(series, entry)
    twice = {e.candidate.material.code for e in candidates if sum(e.candidate == o.candidate for o in candidates) > 1}
    if twice and not any(entry.beside for entry in candidates):
        raise Refused(f"{', '.join(sorted(twice))} stands there twice: put all its dosages on one row.")


def _check_entry(series: Series, entry: CandidateEntry) -> None:
    code = entry.candidate.material.code
    if not entry.dosages_pct:
        raise Refused(f"{code} has no dosage.", field="dosages_pct")
    if len(set(entry.dosages_pct)) < len(entry.dosages_pct):
        raise Refused(f"{code} has one dosage twice.", field="dosages_pct")
    for dose in (*(DoseEntry(entry.candidate, pct, entry.lot) for pct in entry.dosages_pct), *entry.beside):
        if dose.dosage_pct < 0:
            raise Refused(f"{code}: a dosage must not be below 0; got {dose.dosage_pct} %.", field="dosages_pct")
        if dose.lot and dose.lot.material_id != dose.candidate.material_id:
            raise Refused(f"Lot {dose.lot.number} is not a lot of {dose.candidate.material.code}.", field="lot")


def _follow(series: Series, changed: list[str]) -> None:
    """The planned cups follow what was decided anew; refused where one is mixed already."""
    cups = list(Trial.objects.select_for_update().filter(series=series).order_by("position", "pk"))
    mixed = [cup.code for cup in cups if cup.state != State.PLANNED]
    weighed_by = [name for name in changed if name in WEIGHED_BY]
    if mixed and weighed_by:
        name = Series._meta.get_field(weighed_by[0]).verbose_name
        raise Refused(
            f"{', '.join(mixed)} is mixed already, so “{name}” stays: plan another series.", field=weighed_by[0]
        )
    planned = [cup for cup in cups if cup.state == State.PLANNED]
    for cup in planned:
        cup.batch_mass_g, cup.common_batch = series.batch_mass_g, series.common_batch
    Trial.objects.bulk_update(planned, ["batch_mass_g", "common_batch"])
    if weighed_by:
        _reckon_anew(series, changed)


def _reckon_anew(series: Series, changed: list[str]) -> None:
    reckoning, masses = Reckoning.of(series), cup_masses(_figures(series), series.batch_mass_g)
    dosages = list(Dosage.objects.filter(trial__series=series).select_related("candidate__material"))
    same = [name for name in ("basis", "basis_component", "counting", "supplied", "stage", "into") if name in changed]
    for dosage in dosages:
        for name in {*same, "basis_component"}:
            setattr(dosage, name, getattr(series, name))
        dosage.planned_g = layout.planned_g(dosage.dosage_pct, reckoning, masses, dosage.candidate)
    Dosage.objects.bulk_update(dosages, [*{*same, "basis_component", "planned_g"}])


def _judge_by(series: Series, criteria: Iterable[Criterion], weights: dict[str, Decimal]) -> None:
    wanted = {criterion.pk: weights.get(criterion.key, Decimal(1)) for criterion in criteria}
    standing = {row.criterion_id: row for row in series.criteria.all()}
    series.criteria.exclude(criterion__in=wanted).delete()
    for key, row in standing.items():
        if key in wanted and row.weight != wanted[key]:
            row.weight = wanted[key]
            row.save()
    SeriesCriterion.objects.bulk_create(
        SeriesCriterion(series=series, criterion_id=key, weight=weight)
        for key, weight in wanted.items()
        if key not in standing
    )


def _closed(series: Series) -> bool:
    return series.revision.base.restricted or bool(series.enquiry and series.enquiry.restricted)


def _who_sees_both(series: Series) -> set[int]:
    """Who may see the restricted among base and enquiry."""
    found = [
        {record.owner_id, *record.shares.values_list("person", flat=True)}
        for record in (series.revision.base, series.enquiry)
        if record and record.restricted
    ]
    return set.intersection(*found) if found else set()
