"""Raw materials as people look for them, and everything that is known of one."""

from dataclasses import dataclass
from datetime import date
from decimal import Decimal

from django.db.models import F, Prefetch

from trials import access
from trials.models import Base, Candidate, Lot, Paper, RawMaterial, ReactiveGroup
from trials.models.materials import EnteredAs, Function
from trials.science import hazards
from trials.science.ranges import DENSITY_OF_FUNCTION_G_ML, EQUIVALENT_OF_GROUP_G

from .expiry import Standing, in_all, standing
from .listing import Found, found, with_words
from .stated import StatedFact, as_entered, fact, stated

FACTS = (
    "density_g_ml",
    "non_volatile_pct",
    "voc_pct",
    "active_pct",
    "diisocyanate_pct",
    "price_per_kg",
    "sheet_issued",
)


@dataclass(frozen=True, slots=True)
class MaterialRow:
    code: str
    name: str
    function: str
    supplier: str
    price_per_kg: Decimal | None
    on_hand_kg: Decimal | None
    lots: Standing
    papers: Standing
    withdrawn: bool


@dataclass(frozen=True, slots=True)
class LotView:
    """``overrides``: what the certificate says in place of the material's own figure."""

    lot: Lot
    standing: Standing
    overrides: tuple[StatedFact, ...]
    bottle: str


@dataclass(frozen=True, slots=True)
class GroupView:
    group: ReactiveGroup
    entered: str


@dataclass(frozen=True, slots=True)
class PaperView:
    paper: Paper
    standing: Standing


@dataclass(frozen=True, slots=True)
class MaterialSheet:
    material: RawMaterial
    facts: tuple[StatedFact, ...]
    groups: tuple[GroupView, ...]
    lots: tuple[LotView, ...]
    papers: tuple[PaperView, ...]
    label: hazards.Label
    statements: tuple[tuple[str, str], ...]
    bases: tuple[Base, ...]
    candidate: Candidate | None
    may_be_candidate: bool
    unusual: tuple[str, ...]


def find_materials(*, today: date, words: str = "", function: str = "", withdrawn: bool = False) -> Found:
    """By words in code, name or supplier and by function; those no longer used only when asked for."""
    materials = with_words(RawMaterial.objects.all(), words, "code", "name", "supplier")
    if function:
        materials = materials.filter(function=function)
    if not withdrawn:
        materials = materials.filter(withdrawn=False)
    materials = materials.prefetch_related(
        Prefetch("lots", Lot.objects.only("material_id", "expires", "on_hand_kg")),
        Prefetch("papers", Paper.objects.only("material_id", "expires")),
    )
    return found(materials.order_by("code", "pk"), lambda material: _row(material, today))


def material_sheet(material: RawMaterial, *, person, today: date) -> MaterialSheet:
    """Everything known of a material; only bases which the person may see."""
    groups = tuple(material.groups.order_by("group", "pk"))
    lots = material.lots.order_by(F("received").desc(nulls_last=True), "-pk")
    papers = material.papers.order_by("subject", "title", "pk")
    uses = access.bases(person).filter(revisions__components__lines__material=material)
    codes = sorted(material.hazards)
    return MaterialSheet(
        material=material,
        facts=stated(material, *FACTS),
        groups=tuple(GroupView(group, as_entered(group.entered_as, group.entered)) for group in groups),
        lots=tuple(_lot(lot, material, groups, today) for lot in lots),
        papers=tuple(PaperView(paper, standing(paper.expires, today)) for paper in papers),
        label=hazards.label(codes),
        statements=tuple((code, hazards.statement(code).wording) for code in codes),
        bases=tuple(uses.distinct().order_by("code", "pk")),
        candidate=Candidate.objects.filter(material=material).first(),
        may_be_candidate=material.function in (Function.DEFOAMER, Function.ADDITIVE),
        unusual=_unusual(material, groups),
    )


def _row(material: RawMaterial, today: date) -> MaterialRow:
    lots = material.lots.all()
    weighed = [lot.on_hand_kg for lot in lots if lot.on_hand_kg is not None]
    return MaterialRow(
        code=material.code,
        name=material.name,
        function=material.get_function_display(),
        supplier=material.supplier,
        price_per_kg=material.price_per_kg,
        on_hand_kg=sum(weighed) if weighed else None,
        lots=in_all((lot.expires for lot in lots), today),
        papers=in_all((paper.expires for paper in material.papers.all()), today),
        withdrawn=material.withdrawn,
    )


def _lot(lot: Lot, material: RawMaterial, groups, today: date) -> LotView:
    said = [(name, getattr(material, name)) for name in ("density_g_ml", "non_volatile_pct")]
    overrides = [_override(lot, name, own) for name, own in said if getattr(lot, name) is not None]
    if lot.equivalent_g is not None:
        own = groups[0].equivalent_g if len(groups) == 1 else None
        reckoned = lot.certificate_as != EnteredAs.EQUIVALENT
        entered = f"from {as_entered(lot.certificate_as, lot.certificate_value)}, " if reckoned else ""
        overrides.append(_override(lot, "equivalent_g", own, entered))
    return LotView(lot, standing(lot.expires, today), tuple(overrides), _bottle(lot))


def _bottle(lot: Lot) -> str:
    done = [(lot.shaken, "shaken"), (lot.warmed, "warmed")]
    said = [word if was else f"not {word}" for was, word in done if was is not None]
    return ", ".join([*said, lot.appearance] if lot.appearance else said)


def _override(lot: Lot, name: str, own, how: str = "") -> StatedFact:
    said = "the material states none" if own is None else f"in place of {own}"
    return fact(lot._meta.get_field(name), getattr(lot, name), how + said)


def _unusual(material: RawMaterial, groups) -> tuple[str, ...]:
    """What is taken and still worth a question; ranges are common practice."""
    questions = []
    usual = DENSITY_OF_FUNCTION_G_ML.get(material.function)
    if usual and material.density_g_ml is not None and not usual.holds(float(material.density_g_ml)):
        questions.append(
            f"Density {material.density_g_ml} g/mL: a {material.function} mostly has {usual.low:g} to {usual.high:g}."
        )
    for group in groups:
        usual = EQUIVALENT_OF_GROUP_G.get(group.group)
        if usual and not usual.holds(float(group.equivalent_g)):
            questions.append(
                f"Equivalent weight of {group.group} {group.equivalent_g} g/eq:"
                f" mostly {usual.low:g} to {usual.high:g}."
            )
    return tuple(questions)
