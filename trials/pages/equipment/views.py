from django.shortcuts import get_object_or_404, redirect, render
from django.utils import timezone
from django.views.decorators.http import require_POST

from trials import access
from trials.models import Balance, Equipment
from trials.operations import equipment as operations
from trials.pages.parts import needs, told_at

from .forms import BalanceForm, EquipmentForm


def equipment(request):
    context = {
        "equipment": Equipment.objects.order_by("retired", "name", "pk"),
        "balances": Balance.objects.order_by("retired", "step_g", "name", "pk"),
        "may_write": access.may_write(request.user),
    }
    return render(request, "equipment/list.html", context)


@needs(access.may_write)
def equipment_new(request):
    form = EquipmentForm(request.POST or None)
    if request.method == "POST" and form.is_valid():
        with told_at(form):
            operations.add_equipment(actor=request.user, **form.cleaned_data)
            return redirect("equipment")
    return _typing(request, form, "A new piece of equipment")


@needs(access.may_write)
def equipment_change(request, pk):
    found = get_object_or_404(Equipment, pk=pk)
    form = EquipmentForm(request.POST or None, instance=found)
    if request.method == "POST" and form.is_valid():
        with told_at(form):
            operations.change_equipment(actor=request.user, equipment=found, **form.changed())
            return redirect("equipment")
    return _typing(request, form, f"Change {found.name}")


@require_POST
@needs(access.may_write)
def equipment_clean(request, pk):
    found = get_object_or_404(Equipment, pk=pk)
    operations.clean_equipment(actor=request.user, now=timezone.now(), equipment=found)
    return redirect("equipment")


@needs(access.may_write)
def balance_new(request):
    form = BalanceForm(request.POST or None)
    if request.method == "POST" and form.is_valid():
        with told_at(form):
            operations.add_balance(actor=request.user, **form.cleaned_data)
            return redirect("equipment")
    return _typing(request, form, "A new balance")


@needs(access.may_write)
def balance_change(request, pk):
    found = get_object_or_404(Balance, pk=pk)
    form = BalanceForm(request.POST or None, instance=found)
    if request.method == "POST" and form.is_valid():
        with told_at(form):
            operations.change_balance(actor=request.user, balance=found, **form.changed())
            return redirect("equipment")
    return _typing(request, form, f"Change {found.name}")


def _typing(request, form, heading):
    return render(request, "equipment/form.html", {"form": form, "heading": heading})
