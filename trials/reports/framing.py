"""What series and trial reports say alike: the head, what was asked, the base, what to beware of."""

from dataclasses import dataclass
from datetime import datetime

from django.conf import settings

from trials import access
from trials.models import Enquiry, Series
from trials.queries.bases import base_sheet, load_revision, mix_facts
from trials.queries.bench_cautions import BenchCautions, bench_cautions
from trials.queries.enquiries import limit_rows
from trials.queries.signatures import Signing
from trials.queries.weighing import WeighingSheet

from .parts import Cell, Fact, Head, Row, Table, columns, joined, moment, words, written

# Figures of the mix that a reader outside the laboratory may ask for; prices stay inside.
_TOLD = ("Density, free of air", "Volume solids", "Pigment volume concentration", "VOC, ready to use")


@dataclass(frozen=True, slots=True)
class Asked:
    """The enquiry, where the person may see it."""

    lines: tuple[str, ...]
    asked: str
    limits: Table | None


@dataclass(frozen=True, slots=True)
class Cautions:
    """GHS pictograms by their numbers, statements with their codes, and the usual cautions."""

    pictograms: tuple[str, ...]
    signal_word: str
    statements: tuple[tuple[str, str], ...]
    lines: tuple[str, ...]


def head(
    *, kind: str, code: str, title: str, over: tuple[str, ...], signing: Signing, outside: bool, withheld: bool,
    now: datetime,
) -> Head:  # fmt: skip
    names = "names withheld" if withheld else "for outside readers" if outside else ""
    return Head(
        kind=kind,
        code=code,
        title=title,
        over=over,
        record=joined((code, signing.word, names), " · "),
        signing=signing.word,
        outside=outside,
        withheld=withheld,
        made=moment(now),
        file=f"{code.lower().replace(' ', '-')}-report" + ("-outside" if outside else ""),
    )


def asked_of(enquiry: Enquiry | None) -> Asked | None:
    if enquiry is None:
        return None
    today = joined(
        (
            enquiry.incumbent.material.code if enquiry.incumbent else "",
            f"{written(enquiry.incumbent_pct)} % (on total, on top, as supplied)" if enquiry.incumbent_pct else "",
            enquiry.incumbent_note,
        )
    )
    lines = (
        f"Enquiry {enquiry.number}: {enquiry.subject}",
        f"From {enquiry.customer}" if enquiry.customer else "",
        f"Film thickness {written(enquiry.film_um)} µm" if enquiry.film_um else "",
        f"Used today: {today}" if today else "",
    )
    return Asked(tuple(line for line in lines if line), enquiry.asked, _limits(enquiry))


def _limits(enquiry: Enquiry) -> Table | None:
    rows = [
        Row(
            (
                words(limit.criterion),
                words(limit.force),
                words(limit.direction),
                Cell(written(limit.limit), float(limit.limit), 2),
                words(joined((limit.unit, limit.step), ": ")),
                words(limit.standard),
            )
        )
        for limit in limit_rows(enquiry)
    ]
    heads = columns("Criterion", "Force", "Has to be", ("Limit", ""), "Unit or step", "Standard")
    return Table("Limits", heads, tuple(rows)) if rows else None


def base_facts(series: Series, person) -> tuple[Fact, ...]:
    """Figures of the mix with their definitions, where the person may see the base; its recipe stays where it is."""
    revision = load_revision(person, series.revision.base.code, series.revision.number)
    if revision is None:
        return ()
    facts = mix_facts(base_sheet(revision).mix, settings.CURRENCY)
    return tuple(
        Fact(fact.label, fact.text, fact.unit, fact.source)
        for fact in facts
        if fact.label in _TOLD and fact.value is not None
    )


def base_named(series: Series, person) -> str:
    """Its name only where the person may see it."""
    base, number = series.revision.base, series.revision.number
    seen = access.bases(person).filter(pk=base.pk).exists()
    return f"{base.code} {base.name}, revision {number}" if seen else f"{base.code}, revision {number}"


def cautions_for(sheet: WeighingSheet) -> Cautions:
    found: BenchCautions = bench_cautions(sheet)
    return Cautions(found.label.pictograms, found.label.signal_word or "", found.statements, found.lines)
