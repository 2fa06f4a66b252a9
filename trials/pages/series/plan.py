"""The page on which a series is planned: its form and three tables of rows, and what they start from."""

from trials import access
from trials.models import Series
from trials.models.trials import Part
from trials.operations.acting import Refused

from .forms import PlanForm
from .ladders import CandidateFormSet
from .rows import USUAL_CRITERIA, USUAL_KINDS, criterion_rows, working_rows

COPIED = (
    "round", "revision", "enquiry", "common_batch", "batch_mass_g", "film_um", "basis", "basis_component",
    "counting", "supplied", "stage", "into", "ratio", "replicates", "order_rule", "restricted",
)  # fmt: skip
WORKED = ("kind", "equipment", "blade_mm", "vessel_mm", "rpm", "minutes", "temperature_c", "vacuum_mbar")


class Plan:
    """Everything that is typed for a new series."""

    def __init__(self, person, data, start: dict):
        self.form = PlanForm(data, person=person, initial=start.get("form"))
        self.candidates = CandidateFormSet(data, prefix="candidates", initial=start.get("candidates"))
        self.workings = working_rows(data, initial=start.get("workings", [{"kind": kind} for kind in USUAL_KINDS]))
        criteria = start.get("criteria") or [(key, 1) for key in USUAL_CRITERIA]
        self.criteria = criterion_rows(data, initial=criteria)
        self.refusal = ""

    def is_valid(self) -> bool:
        parts = (self.form, self.candidates, self.workings, self.criteria)
        checked = [part.is_valid() for part in parts]  # every part, so that all errors show at once
        return all(checked)

    def values(self) -> dict:
        """What ``plan_series`` takes."""
        candidates = tuple(entry for row in self.candidates.forms if (entry := row.entry()))
        workings = tuple(entry for row in self.workings.forms if (entry := row.entry()))
        return {
            **self.form.values(),
            **self.criteria.chosen(),
            "candidates": candidates,
            "workings": workings,
        }

    def refused(self, refusal: Refused) -> None:
        """Tell it at the field, if the form has one of that name."""
        if refusal.field in self.form.fields:
            self.form.add_error(refusal.field, refusal.message)
        else:
            self.refusal = refusal.message

    def problems(self) -> list[tuple[str, str]]:
        """Every error with the id of its input."""
        found = [(self.refusal, "")] if self.refusal else []
        found += _errors(self.form, "")
        for rows, where in ((self.candidates, "Additive"), (self.workings, "Working"), (self.criteria, "Criterion")):
            found += [(str(error), f"{rows.prefix}-errors") for error in rows.non_form_errors()]
            for number, row in enumerate(rows.forms, 1):
                found += _errors(row, f"{where} row {number}, ")
        return found


def start_of(person, query) -> dict:
    """What the page begins with: an enquiry, an earlier series, or a base that the person may see."""
    if number := _whole(query.get("like")):
        earlier = access.series(person).filter(number=number).first()
        if earlier:
            return _like(earlier)
    if number := _whole(query.get("enquiry")):
        enquiry = access.enquiries(person).select_related("incumbent__material").filter(number=number).first()
        if enquiry:
            return _for_enquiry(person, enquiry)
    revision = access.revisions(person).filter(base__code=query.get("base", "")).order_by("-number").first()
    return {"form": {"revision": revision, "film_um": revision.base.film_um}} if revision else {}


def _whole(text: str | None) -> int | None:
    return int(text) if text and text.isascii() and text.isdigit() and len(text) < 10 else None


def _for_enquiry(person, enquiry) -> dict:
    revision = access.revisions(person).filter(base=enquiry.base_id).order_by("-number").first()
    limits = enquiry.limits.select_related("criterion").order_by("force", "criterion__position", "pk")
    return {
        "form": {
            "enquiry": enquiry,
            "title": enquiry.subject,
            "revision": revision,
            "film_um": enquiry.film_um or (revision and revision.base.film_um),
            "incumbent": enquiry.incumbent,
            "incumbent_pct": enquiry.incumbent_pct,
            "restricted": enquiry.restricted,
        },
        "criteria": [(limit.criterion.key, 1) for limit in limits],
    }


def _like(earlier: Series) -> dict:
    """A new series that follows an earlier one: the same in everything, to be changed where it is meant to differ."""
    trials = list(
        earlier.trials.prefetch_related("dosages__candidate__material", "dosages__lot", "workings").order_by(
            "position", "pk"
        )
    )
    parts = [trial.part for trial in trials]
    form = {name: getattr(earlier, name) for name in COPIED} | {
        "follows": earlier,
        "title": earlier.title,
        "blanks": parts.count(Part.BLANK) or 2,
        "clean_check": Part.CLEAN in parts,
        "vacuum": Part.VACUUM in parts,
    }
    ladders: dict = {}
    for trial in trials:
        for dose in list(trial.dosages.all())[:1]:
            if trial.part == Part.INCUMBENT:
                form |= {"incumbent": dose.candidate, "incumbent_pct": dose.dosage_pct}
            elif trial.part == Part.TREATED:
                row = ladders.setdefault(dose.candidate_id, {"candidate": dose.candidate, "dosages_pct": []})
                row["dosages_pct"] = sorted({*row["dosages_pct"], dose.dosage_pct})
                row["lot"] = dose.lot.number if dose.lot else ""
    first = next((trial for trial in trials if trial.part in (Part.BLANK, Part.TREATED)), None)
    rows = sorted(first.workings.all(), key=lambda row: row.position) if first else []
    judged = earlier.criteria.select_related("criterion").order_by("criterion__position", "pk")
    return {
        "form": form,
        "candidates": list(ladders.values()),
        "workings": [{name: getattr(row, name) for name in WORKED} for row in rows],
        "criteria": [(row.criterion.key, row.weight) for row in judged],
    }


def _errors(form, where: str) -> list[tuple[str, str]]:
    found = []
    for name, errors in form.errors.items():
        field = form[name] if name != "__all__" else None
        label = f"{field.label}: " if field else ""
        found += [(f"{where}{label}{error}", field.id_for_label if field else "") for error in errors]
    return found
