from django.shortcuts import get_object_or_404, redirect, render
from django.utils import timezone

from trials import access
from trials.models import RawMaterial
from trials.operations.materials import add_material, change_material
from trials.pages.parts import needs, told_at
from trials.queries.history import what_changed
from trials.queries.materials import find_materials, material_sheet

from .forms import MaterialFilter, MaterialForm
from .groups import group_lines


def materials(request):
    asked = MaterialFilter(request.GET)
    found = find_materials(today=timezone.localdate(), **asked.asked())
    context = {"filter": asked, "found": found, "may_write": access.may_write(request.user)}
    return render(request, "materials/list.html", context)


def material(request, code):
    record = get_object_or_404(RawMaterial, code=code)
    context = {
        "sheet": material_sheet(record, person=request.user, today=timezone.localdate()),
        "material": record,
        "events": what_changed(record, parts=("groups", "lots", "papers")),
        "may_write": access.may_write(request.user),
    }
    return render(request, "materials/material.html", context)


@needs(access.may_write)
def material_new(request):
    form, groups = MaterialForm(request.POST or None), group_lines(request.POST or None)
    if request.method == "POST" and form.is_valid() & groups.is_valid():
        with told_at(form):
            made = add_material(actor=request.user, groups=groups.entries(), **form.cleaned_data)
            return redirect("material", made.code)
    return _typing(request, form, groups, "A new raw material")


@needs(access.may_write)
def material_change(request, code):
    record = get_object_or_404(RawMaterial, code=code)
    form = MaterialForm(request.POST or None, instance=record)
    groups = group_lines(request.POST or None, record)
    if request.method == "POST" and form.is_valid() & groups.is_valid():
        with told_at(form):
            changed = change_material(actor=request.user, material=record, groups=groups.entries(), **form.changed())
            return redirect("material", changed.code)
    return _typing(request, form, groups, f"Change {record.code}", record)


def _typing(request, form, groups, heading, record=None):
    context = {"form": form, "formset": groups, "heading": heading, "material": record}
    return render(request, "materials/form.html", context)
