"""Candidates for air release: the list beside its map, and everything that is known of one."""

from dataclasses import dataclass
from datetime import date
from decimal import Decimal

from django.db.models import Prefetch

from trials.models import Candidate, Paper, RawMaterial
from trials.science import hazards
from trials.science.composition import cost_in_use

from .cautions import cautions_of, unusual_window
from .expiry import Standing, in_all, standing
from .listing import Found, found, with_words
from .materials import PaperView
from .stated import StatedFact, stated

FACTS = (
    "strength",
    "macro_foam",
    "air_release",
    "tip_speed_m_s",
    "minutes",
    "from_pct",
    "to_pct",
    "highest_tried_pct",
    "carrier_pct",
)
SORTS = {
    "strength": ("-strength", "tip_speed_m_s"),
    "ease": ("tip_speed_m_s", "minutes"),
    "price": ("material__price_per_kg",),
    "code": (),
}


@dataclass(frozen=True, slots=True)
class CandidateRow:
    """``cost_from`` and ``cost_to``: the additive in 100 kg of mix at both ends of the window; None: not known."""

    code: str
    name: str
    chemistry: str
    silicone: bool
    carrier: str
    strength: int
    macro_foam: int
    air_release: int
    tip_speed_m_s: Decimal | None
    minutes: Decimal | None
    from_pct: Decimal | None
    to_pct: Decimal | None
    highest_tried_pct: Decimal | None
    price_per_kg: Decimal | None
    cost_from: float | None
    cost_to: float | None
    papers: Standing
    withdrawn: bool

    @property
    def silicone_said(self) -> str:
        return "silicone" if self.silicone else "silicone-free"


@dataclass(frozen=True, slots=True)
class CandidateSheet:
    candidate: Candidate
    row: CandidateRow
    facts: tuple[StatedFact, ...]
    papers: tuple[PaperView, ...]
    label: hazards.Label
    statements: tuple[tuple[str, str], ...]
    cautions: tuple[str, ...]
    unusual: tuple[str, ...]


def find_candidates(
    *,
    today: date,
    words: str = "",
    chemistry: str = "",
    silicone: bool | None = None,
    withdrawn: bool = False,
    sort: str = "strength",
) -> Found:
    """By words in code or name, chemistry and silicone; the strongest first unless sorted otherwise."""
    candidates = with_words(Candidate.objects.all(), words, "material__code", "material__name")
    if chemistry:
        candidates = candidates.filter(chemistry=chemistry)
    if silicone is not None:
        candidates = candidates.filter(silicone=silicone)
    if not withdrawn:
        candidates = candidates.filter(material__withdrawn=False)
    papers = Prefetch("material__papers", Paper.objects.only("material_id", "expires"))
    candidates = candidates.select_related("material").prefetch_related(papers)
    order = (*SORTS.get(sort, SORTS["strength"]), "material__code", "pk")
    return found(candidates.order_by(*order), lambda candidate: _row(candidate, today))


def candidate_sheet(candidate: Candidate, *, today: date) -> CandidateSheet:
    """``candidate`` comes with its material."""
    material: RawMaterial = candidate.material
    papers = tuple(material.papers.order_by("subject", "title", "pk"))
    codes = sorted(material.hazards)
    return CandidateSheet(
        candidate=candidate,
        row=_row(candidate, today, papers),
        facts=stated(candidate, *FACTS),
        papers=tuple(PaperView(paper, standing(paper.expires, today)) for paper in papers),
        label=hazards.label(codes),
        statements=tuple((code, hazards.statement(code).wording) for code in codes),
        cautions=cautions_of(candidate),
        unusual=unusual_window(candidate),
    )


def cost_per_100_kg(price_per_kg: Decimal | None, dosage_pct: Decimal | None) -> float | None:
    """The additive in 100 kg of mix; None where price or dosage is not known."""
    if price_per_kg is None or dosage_pct is None:
        return None
    return cost_in_use(price_per_kg, dosage_pct, 0.0).per_100_kg


def _row(candidate: Candidate, today: date, papers=None) -> CandidateRow:
    material = candidate.material
    papers = material.papers.all() if papers is None else papers
    return CandidateRow(
        code=material.code,
        name=material.name,
        chemistry=candidate.get_chemistry_display(),
        silicone=candidate.silicone,
        carrier=candidate.get_carrier_display(),
        strength=candidate.strength,
        macro_foam=candidate.macro_foam,
        air_release=candidate.air_release,
        tip_speed_m_s=candidate.tip_speed_m_s,
        minutes=candidate.minutes,
        from_pct=candidate.from_pct,
        to_pct=candidate.to_pct,
        highest_tried_pct=candidate.highest_tried_pct,
        price_per_kg=material.price_per_kg,
        cost_from=cost_per_100_kg(material.price_per_kg, candidate.from_pct),
        cost_to=cost_per_100_kg(material.price_per_kg, candidate.to_pct),
        papers=in_all((paper.expires for paper in papers), today),
        withdrawn=material.withdrawn,
    )
