"""The usual cautions of a day at the bench, beside the hazards of what is weighed. Common practice, no source.

Safety data sheets, local rules and qualified people take precedence; the sheet says so.
"""

from dataclasses import dataclass

from trials.models import Trial
from trials.models.bases import BinderChemistry
from trials.models.trials import Part, WorkingKind
from trials.science import hazards

from .bases import base_sheet
from .cautions import cautions_of
from .weighing import WeighingSheet

LARGE_MIX_G = 500

_OF_CHEMISTRY = {
    BinderChemistry.EPOXY: (
        "Epoxy resins and reactive diluents sensitise the skin, amine hardeners burn and sensitise: gloves that"
        " stand both, glasses, and no resin on door handles.",
    ),
    BinderChemistry.POLYURETHANE: (
        "Isocyanates sensitise the airways: extraction on, and nobody who is sensitised takes part.",
        "Never close a tin of isocyanate that may have met water: it can burst.",
    ),
    BinderChemistry.POLYASPARTIC: (
        "Isocyanates sensitise the airways: extraction on, and nobody who is sensitised takes part.",
        "Never close a tin of isocyanate that may have met water: it can burst.",
    ),
}
_TRAINING = (
    "A monomeric diisocyanate reaches 0.1 %: in some regions training is required before anybody uses it. Ask the"
    " person responsible."
)
_DISPERSER = "A running disperser catches sleeves, hair and gloves: fix the cup, and stop it before you reach in."
_VACUUM = "A vacuum vessel can implode: look it over for scratches, and work behind a shield."
_LARGE = "A large mix can run away with heat: pour it out before its pot life ends, leave no rest in the cup."
_SOLVENT = "Solvent vapours ignite: no flame or spark, and extraction on."
_BLACK_BOX = "No material of component {} is known here: read its safety data sheet before you open the tin."


@dataclass(frozen=True, slots=True)
class BenchCautions:
    """Hazards of everything that is weighed, together, and the usual cautions."""

    label: hazards.Label
    statements: tuple[tuple[str, str], ...]
    of_what: str
    lines: tuple[str, ...]


def bench_cautions(sheet: WeighingSheet) -> BenchCautions:
    """Of all components of the base and every additive on the sheet."""
    base = base_sheet(sheet.revision)
    candidates = {p.dosage.candidate.pk: p.dosage.candidate for cup in sheet.cups for p in cup.portions if p.dosage}
    codes = {code for component in sheet.components for line in component.lines for code in line.facts.hazards}
    codes |= {code for candidate in candidates.values() for code in candidate.material.hazards}
    lines = [*_OF_CHEMISTRY.get(sheet.revision.base.chemistry, ())]
    if any(caution.training for caution in base.cautions):
        lines.append(_TRAINING)
    lines += [_BLACK_BOX.format(component.letter) for component in sheet.components if component.black_box]
    lines += _doing([cup.trial for cup in sheet.cups], sheet)
    if codes & {"H224", "H225", "H226"}:
        lines.append(_SOLVENT)
    for candidate in sorted(candidates.values(), key=lambda one: one.material.code):
        lines += [f"{candidate.material.code}: {line}" for line in cautions_of(candidate)]
    found = sorted(codes)
    return BenchCautions(
        label=hazards.label(found),
        statements=tuple((code, hazards.statement(code).wording) for code in found),
        of_what="everything on this sheet",
        lines=tuple(lines),
    )


def _doing(trials: list[Trial], sheet: WeighingSheet) -> list[str]:
    found = []
    if any(row.working.kind in (WorkingKind.DISPERSE, WorkingKind.AERATE) for row in sheet.workings):
        found.append(_DISPERSER)
    degassed = any(trial.part == Part.VACUUM for trial in trials)
    if degassed or any(row.working.vacuum_mbar is not None for row in sheet.workings):
        found.append(_VACUUM)
    if any((trial.batch_mass_g or sheet.series.batch_mass_g) >= LARGE_MIX_G for trial in trials):
        found.append(_LARGE)
    return found
