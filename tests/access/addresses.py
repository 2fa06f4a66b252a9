"""Every address with what each kind of person gets there. An address that is not listed fails the test."""

from dataclasses import dataclass, field

from .world import KINDS

TO_SIGN_IN, FORBIDDEN, HIDDEN = 302, 403, 404


def _each(**answers) -> dict[str, int]:
    everybody = answers.pop("everybody")
    return {kind: answers.get(kind, everybody) for kind in KINDS}


OPEN = _each(everybody=200)
SIGNED_IN = _each(everybody=200, anonymous=TO_SIGN_IN)
WRITERS = _each(everybody=200, anonymous=TO_SIGN_IN, named=FORBIDDEN, reader=FORBIDDEN)
WRITERS_GO_ON = WRITERS | {"owner": 302, "stranger": 302, "supervisor": 302, "administrator": 302}
MANAGERS = _each(everybody=FORBIDDEN, anonymous=TO_SIGN_IN, administrator=200)
NAMED = _each(everybody=HIDDEN, anonymous=TO_SIGN_IN, owner=200, named=200)
# A reader is refused before anything is looked up, whether or not the record is theirs to see.
NAMED_WRITERS = _each(everybody=HIDDEN, anonymous=TO_SIGN_IN, owner=200, named=FORBIDDEN, reader=FORBIDDEN)
NAMED_WRITERS_GO_ON = NAMED_WRITERS | {"owner": 302}
GO_ON = _each(everybody=302)
REFUSED_WORD = _each(everybody=403, anonymous=TO_SIGN_IN)


@dataclass(frozen=True)
class Address:
    """``expected`` by kind of person; ``args`` name what the world holds; POST where GET is not an answer."""

    expected: dict[str, int]
    args: dict = field(default_factory=dict)
    method: str = "get"


ADDRESSES = {
    "today": Address(SIGNED_IN),
    "sign_in": Address(OPEN | {kind: 302 for kind in KINDS if kind != "anonymous"}),
    "sign_out": Address(GO_ON, method="post"),
    "change_person": Address(GO_ON, method="post"),
    "lock": Address(GO_ON, method="post"),
    "locked": Address(SIGNED_IN),
    "unlock": Address(REFUSED_WORD, method="post"),
    "people": Address(MANAGERS),
    "person_new": Address(MANAGERS),
    "person_change": Address(MANAGERS, {"pk": lambda world: world["people"]["reader"].pk}),
    "own_password": Address(SIGNED_IN),
    "materials": Address(SIGNED_IN),
    "material": Address(SIGNED_IN, {"code": "EP-104"}),
    "material_new": Address(WRITERS),
    "material_change": Address(WRITERS, {"code": "EP-104"}),
    "material_lot_new": Address(WRITERS, {"code": "EP-104"}),
    "material_lot_change": Address(WRITERS, {"pk": lambda world: world["lot"].pk}),
    "material_paper_new": Address(WRITERS, {"code": "EP-104"}),
    "material_paper_change": Address(WRITERS, {"pk": lambda world: world["paper"].pk}),
    "material_paper_remove": Address(WRITERS_GO_ON, {"pk": lambda world: world["paper"].pk}, "post"),
    "candidates": Address(SIGNED_IN),
    "candidate": Address(SIGNED_IN, {"code": "AR-01"}),
    "candidate_change": Address(WRITERS, {"code": "AR-01"}),
    "candidate_new": Address(WRITERS, {"code": "AR-99"}),
    "enquiries": Address(SIGNED_IN),
    "enquiry_new": Address(WRITERS),
    "enquiry": Address(NAMED, {"number": 31}),
    "enquiry_change": Address(NAMED_WRITERS, {"number": 31}),
    "enquiry_share": Address(NAMED_WRITERS, {"number": 31}),
    "enquiry_close": Address(NAMED_WRITERS_GO_ON, {"number": 31}, "post"),
    "equipment": Address(SIGNED_IN),
    "equipment_new": Address(WRITERS),
    "equipment_change": Address(WRITERS, {"pk": lambda world: world["equipment"].pk}),
    "equipment_clean": Address(WRITERS_GO_ON, {"pk": lambda world: world["equipment"].pk}, "post"),
    "balance_new": Address(WRITERS),
    "balance_change": Address(WRITERS, {"pk": lambda world: world["balance"].pk}),
    "common_batches": Address(SIGNED_IN),
    "common_batch_new": Address(NAMED_WRITERS, {"code": "EP-F1", "number": 1}),
    "series_list": Address(SIGNED_IN),
    "series_new": Address(WRITERS),
    "series": Address(NAMED, {"number": 417}),
    "series_change": Address(NAMED_WRITERS, {"number": 417}),
    "series_share": Address(NAMED_WRITERS, {"number": 417}),
    "series_weighing": Address(NAMED, {"number": 417}),
    "series_cup": Address(NAMED_WRITERS, {"number": 417}),
    # The owner is told that a cup with a panel stays.
    "series_cup_remove": Address(NAMED_WRITERS, {"number": 417, "code": "417-1"}, "post"),
    "find": Address(SIGNED_IN),
    "sums": Address(SIGNED_IN),
    "sum": Address(SIGNED_IN, {"slug": "dosage"}),
    "bubbles": Address(SIGNED_IN),
    "trial_cause": Address(NAMED, {"code": "417-1"}),
    "series_report": Address(NAMED, {"number": 417}),
    "series_report_pdf": Address(NAMED, {"number": 417}),
    "trial_report": Address(NAMED, {"code": "417-1"}),
    "trial_report_pdf": Address(NAMED, {"code": "417-1"}),
    "trends": Address(SIGNED_IN),
    "trends_csv": Address(SIGNED_IN),
    "series_sign": Address(NAMED_WRITERS, {"number": 417}),
    "series_signed": Address(NAMED, {"number": 417}),
    "trial_sign": Address(NAMED_WRITERS, {"code": "417-1"}),
    "trial_signed": Address(NAMED, {"code": "417-1"}),
    "series_judge": Address(NAMED_WRITERS, {"number": 417}),
    "series_comparison_csv": Address(NAMED, {"number": 417}),
    "trial_judge": Address(NAMED_WRITERS, {"code": "417-1"}),
    "series_rate": Address(NAMED_WRITERS, {"number": 417}),
    "trial": Address(NAMED, {"code": "417-1"}),
    "trial_weighings": Address(NAMED_WRITERS, {"code": "417-1"}),
    "trial_workings": Address(NAMED_WRITERS, {"code": "417-1"}),
    "trial_wet": Address(NAMED_WRITERS, {"code": "417-1"}),
    "trial_made": Address(NAMED_WRITERS, {"code": "417-1"}),
    "trial_panels": Address(NAMED_WRITERS, {"code": "417-1"}),
    "trial_tins": Address(NAMED_WRITERS, {"code": "417-1"}),
    "trial_retains": Address(NAMED_WRITERS, {"code": "417-1"}),
    "trial_top_up": Address(NAMED_WRITERS, {"code": "417-1"}),
    "trial_rate": Address(NAMED_WRITERS, {"code": "417-1"}),
    "trial_tin": Address(NAMED_WRITERS, {"pk": lambda world: world["tin"].pk}),
    "trial_retain": Address(NAMED_WRITERS, {"pk": lambda world: world["retain"].pk}),
    "panel": Address(NAMED, {"code": "K7F"}),
    "panel_change": Address(NAMED_WRITERS, {"code": "K7F"}),
    "panel_rate": Address(NAMED_WRITERS, {"code": "K7F"}),
    "panel_photos": Address(NAMED_WRITERS, {"code": "K7F"}),
    "panel_rating_back": Address(NAMED_WRITERS_GO_ON, {"pk": lambda world: world["rating"].pk}, "post"),
    "photo": Address(NAMED, {"pk": lambda world: world["photo"].pk}),
    "photo_small": Address(NAMED, {"pk": lambda world: world["photo"].pk}),
    "photo_change": Address(NAMED_WRITERS, {"pk": lambda world: world["photo"].pk}),
    "bases": Address(SIGNED_IN),
    "base_new": Address(WRITERS),
    "base": Address(NAMED, {"code": "EP-F1"}),
    "base_revision": Address(NAMED, {"code": "EP-F1", "number": 1}),
    "base_compare": Address(NAMED, {"code": "EP-F1"}),
    "base_change": Address(NAMED_WRITERS, {"code": "EP-F1"}),
    "base_share": Address(NAMED_WRITERS, {"code": "EP-F1"}),
    "base_recipe": Address(NAMED_WRITERS, {"code": "EP-F1", "number": 1}),
    "base_measured": Address(NAMED_WRITERS, {"code": "EP-F1", "number": 1}),
    "base_next": Address(NAMED_WRITERS, {"code": "EP-F1", "number": 1}),
    "base_copy": Address(NAMED_WRITERS, {"code": "EP-F1", "number": 1}),
    "base_freeze": Address(NAMED_WRITERS_GO_ON, {"code": "EP-F1", "number": 1}, "post"),
}
