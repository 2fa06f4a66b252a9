"""What the form components ask of a bound field: its unit, and where its error can be reached."""

from django import template

register = template.Library()

# The record puts units into names; the longest ending wins ("density_g_ml" is not in grams).
UNITS = {
    "_g_ml": "g/mL",
    "_mpas": "mPa·s",
    "_mpa_s": "mPa·s",
    "_per_kg": "per kg",
    "_per_dm2": "per dm²",
    "_equivalent_g": "g/eq",
    "_g_m2": "g/m²",
    "_m_s": "m/s",
    "_dm2": "dm²",
    "_cm2": "cm²",
    "_pct": "%",
    "_vol_pct": "vol %",
    "_rh_pct": "% RH",
    "_ppm": "ppm",
    "_rpm": "rpm",
    "_kpa": "kPa",
    "_mbar": "mbar",
    "_mm": "mm",
    "_um": "µm",
    "_cm": "cm",
    "_ml": "mL",
    "_kg": "kg",
    "_mg": "mg",
    "_g": "g",
    "_c": "°C",
    "_days": "d",
    "_hours": "h",
    "_h": "h",
    "_minutes": "min",
    "_min": "min",
    "_s": "s",
}
BY_LENGTH = sorted(UNITS, key=len, reverse=True)


@register.filter
def unit(field):
    """The unit behind an input: the field's own ``unit``, its widget's ``data-unit``, or its name's ending."""
    told = getattr(field.field, "unit", None)
    if told is None:
        told = field.field.widget.attrs.get("data-unit")
    if told is None:
        ending = next((end for end in BY_LENGTH if f"_{field.name}".endswith(end)), None)
        told = UNITS.get(ending, "")
    return told


def _target(field):
    """The first input of a field: groups of radio buttons have no label of their own to point at."""
    return field.id_for_label or (f"{field.auto_id}_0" if field.auto_id else "")


def _of_form(form, where=""):
    links = []
    for name, errors in form.errors.items():
        for error in errors:
            if name == "__all__":
                links.append(
                    {"text": where + error, "target": f"{form.prefix or 'form'}-errors" if not where else ""}
                )
            else:
                field = form[name]
                links.append({"text": f"{where}{field.label}: {error}", "target": _target(field)})
    return links


@register.simple_tag
def error_links(form=None, formset=None, problems=None):
    """Every error of a page in its order, each with the id of the input it belongs to."""
    links = [{"text": text, "target": target} for text, target in problems or []]
    if form:
        links += _of_form(form)
    if formset:
        links += [{"text": error, "target": f"{formset.prefix}-errors"} for error in formset.non_form_errors()]
        for number, row in enumerate(formset.forms, start=1):
            links += _of_form(row, where=f"Row {number}, ")
    return links
