"""The record as canonical text, so that two fillings can be compared."""

import json

from django.apps import apps

from trials.models import Seal
from trials.models.history import history_models

# Salted, or of the moment: never the same twice.
LEFT_OUT = {"password", "last_login", "pgh_created_at", "pgh_xid", "pgh_id", "pgh_context", "pgh_context_id", "xid"}
# What is signed names stored tins by their key, which differs from one filling to the next.
SIGNED = {"canonical", "digest", "previous", "previous_all"}


def dump() -> str:
    """Every row of the record and of its history; keys are given as the place of their row in its table."""
    events = history_models()
    models = [model for model in apps.get_app_config("trials").get_models() if model not in (Seal, *events)]
    tables = sorted(models, key=lambda model: model._meta.db_table)
    places = {model: _places(model) for model in tables}
    rows = {model._meta.db_table: _rows(model, places) for model in tables}
    # Row by row: which of the rows of one statement comes first is the database's affair.
    told = {model._meta.db_table: _rows(model, places, "pgh_obj_id") for model in events}
    return json.dumps({"record": rows, "history": told}, default=str, indent=1, ensure_ascii=False)


def _places(model) -> dict:
    return {pk: place for place, pk in enumerate(model._base_manager.order_by("pk").values_list("pk", flat=True))}


def _rows(model, places, *first: str) -> list[dict]:
    return [_row(record, places) for record in model._base_manager.order_by(*first, "pk")]


def _row(record, places) -> dict:
    row = {}
    for field in record._meta.concrete_fields:
        value = getattr(record, field.attname)
        if field.is_relation and field.related_model in places:
            value = places[field.related_model].get(value)
        elif field.primary_key or field.name in LEFT_OUT | SIGNED or field.name == "id":
            continue
        row[field.name] = value
    context = getattr(record, "pgh_context", None)
    return row | ({"by": context["by"]} if context else {})
