from django.shortcuts import get_object_or_404, redirect, render

from trials import access
from trials.models import Lot, RawMaterial
from trials.operations.materials import add_lot, change_lot
from trials.pages.parts import needs, told_at

from .forms import LotForm


@needs(access.may_write)
def material_lot_new(request, code):
    material = get_object_or_404(RawMaterial, code=code)
    form = LotForm(request.POST or None)
    if request.method == "POST" and form.is_valid():
        with told_at(form):
            add_lot(actor=request.user, material=material, **form.cleaned_data)
            return redirect("material", code)
    return _typing(request, form, material, f"A new lot of {code}")


@needs(access.may_write)
def material_lot_change(request, pk):
    lot = get_object_or_404(Lot.objects.select_related("material"), pk=pk)
    form = LotForm(request.POST or None, instance=lot)
    if request.method == "POST" and form.is_valid():
        with told_at(form):
            change_lot(actor=request.user, lot=lot, **form.changed())
            return redirect("material", lot.material.code)
    return _typing(request, form, lot.material, f"Change lot {lot.number} of {lot.material.code}")


def _typing(request, form, material, heading):
    groups = material.groups.order_by("pk")
    return render(
        request,
        "materials/lot_form.html",
        {"form": form, "heading": heading, "material": material, "groups": groups},
    )
