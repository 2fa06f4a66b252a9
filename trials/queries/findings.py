"""Findings about the cause of bubbles in a trial, and what the record knows of the answers already."""

from dataclasses import dataclass

from trials.models import Finding, Revision, Trial
from trials.models.bases import BinderChemistry
from trials.science.causes import in_words

from .bases import mix_of
from .recipes import components_of


@dataclass(frozen=True, slots=True)
class FindingRow:
    """A finding with its answers as they read."""

    finding: Finding
    answers: tuple[tuple[str, str], ...]


def findings_of(trial: Trial) -> tuple[FindingRow, ...]:
    """Newest first."""
    found = Finding.objects.filter(trial=trial).select_related("person").order_by("-at", "-pk")
    return tuple(FindingRow(one, in_words(one.answers)) for one in found)


def known_answers(revision: Revision) -> dict[str, str]:
    """What the base says of itself. Expects what ``load_revision`` fetched."""
    cures = {
        BinderChemistry.EPOXY: "no",
        BinderChemistry.POLYURETHANE: "yes",
        BinderChemistry.POLYASPARTIC: "yes",
    }
    known = {"isocyanate": cures.get(revision.base.chemistry, "")}
    voc_g_l = mix_of(revision, components_of(revision)).voc_g_l
    if voc_g_l:
        known["solvent"] = "yes"  # none in the base does not say that none came with the additive
    return {key: answer for key, answer in known.items() if answer}
