"""The content of a series or trial in the form that is signed: RFC 8785 JSON, so that anybody can prove it again.

Numbers typed by people are strings as they were typed (0.30 stays 0.30), times are UTC, people and things stand under
their codes. ``CANON`` counts the versions of this form; a signature keeps its own. What a form leaves out on purpose
is named in ``OUTSIDE``, so that no field is forgotten.
"""

import hashlib
from datetime import UTC, date, datetime
from decimal import Decimal

import rfc8785
from django.db.models import Prefetch

from trials.models import CommonBatch, Panel, Rating, Series, Signature, Trial
from trials.models.panels import Layer, Photo

CANON = 1

FIELDS = {
    "series": (
        "number", "title", "question", "round", "revision", "enquiry", "follows", "common_batch", "batch_mass_g",
        "film_um", "basis", "basis_component", "counting", "supplied", "stage", "into", "ratio", "ladder_pct",
        "replicates", "order_rule", "seed", "planned_at", "owner", "outcome", "conclusion", "lesson", "not_tested",
        "window_from_pct", "window_to_pct", "working_pct", "recommended",
    ),
    "commonbatch": (
        "number", "letter", "revision", "made_at", "made_by", "mass_g", "water_pct", "viscosity_mpa_s",
        "density_g_ml", "remarks",
    ),
    "trial": (
        "number", "code", "position", "part", "topped_up_from", "common_batch", "batch_mass_g", "state", "made_by",
        "made_at", "mixed_at", "air_c", "humidity_pct", "remark", "outcome", "unfair_because", "lesson",
    ),
    "dosage": (
        "candidate", "lot", "dosage_pct", "basis", "basis_component", "counting", "supplied", "stage", "into",
        "counts_in_ratio", "planned_g", "weighed_g",
    ),
    "weighing": ("position", "letter", "dosage", "reading_g", "cumulative", "word", "balance", "at"),
    "working": (
        "position", "kind", "equipment", "blade_mm", "vessel_mm", "rpm", "minutes", "temperature_c", "vacuum_mbar",
        "remark",
    ),
    "wetreading": ("quantity", "where", "value", "word", "minutes", "method", "person", "at"),
    "panel": (
        "code", "substrate", "area_dm2", "mass_g", "applied_at", "air_c", "humidity_pct", "substrate_c",
        "material_c", "remark", "stored_tin",
    ),
    "layer": ("position", "coat", "wet_um", "method", "spiked_after_min", "recoated_after_h", "sanded"),
    "rating": ("criterion", "person", "instrument", "age_h", "value", "word", "blind", "at"),
    "photo": ("original_sha256", "picture_sha256", "taken_at", "age_h", "mm_per_px", "person", "remark"),
    "failure": ("mode", "severity", "how", "cause"),
    "finding": ("person", "at", "answers", "cause", "remark"),
}  # fmt: skip

OUTSIDE = {
    "series": ("id", "restricted"),
    "commonbatch": ("id",),
    "trial": ("id", "series"),
    "dosage": ("id", "trial"),
    "weighing": ("id", "trial"),
    "working": ("id", "trial"),
    "wetreading": ("id", "trial", "common_batch_id"),
    "panel": ("id", "trial"),
    "layer": ("id", "panel"),
    "rating": ("id", "panel"),
    "photo": ("id", "panel", "original", "original_name", "picture", "width_px", "height_px"),
    "failure": ("id", "trial"),
    "finding": ("id", "trial"),
}


def canonical(record: Series | Trial) -> str:
    """The signed form of a series with all its trials, or of one trial."""
    trials = _trials().filter(series=record) if isinstance(record, Series) else _trials().filter(pk=record.pk)
    trials = list(trials)
    batches = {trial.common_batch_id for trial in trials} | {getattr(record, "common_batch_id", None)}
    content = {
        "canon": CANON,
        "trials": [_trial(trial) for trial in trials],
        "common_batches": [_batch(batch) for batch in _batches(batches - {None})],
    }
    if isinstance(record, Series):
        fresh = Series.objects.select_related(
            "revision__base", "enquiry", "follows", "common_batch", "owner", "recommended__material"
        ).get(pk=record.pk)
        content["series"] = _row(fresh) | {"criteria": _criteria(fresh)}
    return rfc8785.dumps(content).decode()


def digest(signature: Signature) -> str:
    """SHA-256 over the content, who signed it in which meaning, when and why, and the signatures before."""
    return hashlib.sha256(signed_text(signature).encode()).hexdigest()


def signed_text(signature: Signature) -> str:
    """What the digest is taken over: one line each, the content last."""
    lines = (
        signature.person.sign_in_name,
        signature.meaning,
        signature.at.astimezone(UTC).isoformat(timespec="microseconds"),
        signature.reason,
        signature.previous,
        signature.previous_all,
        signature.canonical,
    )
    return "\n".join(lines)


def _trials():
    ratings = Rating.objects.select_related("criterion", "person").order_by("pk")
    panels = Panel.objects.order_by("code", "pk").prefetch_related(
        Prefetch("ratings", ratings),
        Prefetch("layers", Layer.objects.order_by("position", "pk")),
        Prefetch("photos", Photo.objects.select_related("person").order_by("pk")),
    )
    return (
        Trial.objects.select_related("topped_up_from", "common_batch", "made_by")
        .prefetch_related(
            "dosages__candidate__material",
            "dosages__lot__material",
            "weighings__balance",
            "weighings__dosage__candidate__material",
            "workings__equipment",
            "wet_readings__person",
            "failures",
            "findings__person",
            Prefetch("panels", panels),
        )
        .order_by("number", "pk")
    )


def _batches(keys):
    return (
        CommonBatch.objects.filter(pk__in=keys)
        .select_related("revision__base", "made_by")
        .prefetch_related("lots__lot__material", "wet_readings__person")
        .order_by("number", "pk")
    )


def _batch(batch: CommonBatch) -> dict:
    return _row(batch) | {
        "lots": sorted(_name(row.lot) for row in batch.lots.all()),
        "wet_readings": [_row(row) for row in sorted(batch.wet_readings.all(), key=lambda row: row.pk)],
    }


def _trial(trial: Trial) -> dict:
    by_position = {"key": lambda row: (row.position, row.pk)}
    by_key = {"key": lambda row: row.pk}
    return _row(trial) | {
        "dosages": [_row(row) for row in sorted(trial.dosages.all(), **by_key)],
        "weighings": [_row(row) for row in sorted(trial.weighings.all(), **by_position)],
        "workings": [_row(row) for row in sorted(trial.workings.all(), **by_position)],
        "wet_readings": [_row(row) for row in sorted(trial.wet_readings.all(), **by_key)],
        "failures": [_row(row) for row in sorted(trial.failures.all(), key=lambda row: row.mode)],
        "findings": [_row(row) for row in sorted(trial.findings.all(), **by_key)],
        "panels": [_panel(panel) for panel in trial.panels.all()],
    }


def _panel(panel: Panel) -> dict:
    return _row(panel) | {
        "layers": [_row(row) for row in panel.layers.all()],
        "ratings": [_row(row) for row in panel.ratings.all()],
        "photos": [_row(row) for row in panel.photos.all()],
    }


def _criteria(series: Series) -> list[dict]:
    chosen = series.criteria.select_related("criterion").order_by("criterion__key", "pk")
    return [{"criterion": _said(row.criterion), "weight": _said(row.weight)} for row in chosen]


def _row(row) -> dict:
    return {name: _said(getattr(row, name)) for name in FIELDS[row._meta.model_name]}


def _said(value):
    """A value as JSON that means the same everywhere."""
    if value is None or isinstance(value, bool | int | str):
        return value
    if isinstance(value, Decimal):
        return format(value, "f")
    if isinstance(value, datetime):
        return value.astimezone(UTC).isoformat(timespec="microseconds")
    if isinstance(value, date):
        return value.isoformat()
    if isinstance(value, list | dict):
        return _nested(value)
    return _name(value)


def _nested(value: list | dict):
    if isinstance(value, list):
        return [_said(item) for item in value]
    return {key: _said(item) for key, item in value.items()}


def _name(row) -> str:
    """What a row that is pointed at is called in the signed form."""
    names = {
        "person": lambda: row.sign_in_name,
        "candidate": lambda: row.material.code,
        "lot": lambda: f"{row.material.code} lot {row.number}",
        "revision": lambda: f"{row.base.code} revision {row.number}",
        "enquiry": lambda: f"enquiry {row.number}",
        "series": lambda: f"series {row.number}",
        "trial": lambda: row.code,
        "commonbatch": lambda: row.number,
        "dosage": lambda: f"{row.candidate.material.code} {row.stage}",
        "criterion": lambda: f"{row.key} version {row.version}",
        "balance": lambda: row.name,
        "equipment": lambda: row.name,
        "storedtin": lambda: f"tin {row.pk}",
    }
    return names[row._meta.model_name]()
