from django.shortcuts import get_object_or_404, redirect, render
from django.utils import timezone
from django.views.decorators.http import require_POST

from trials import access
from trials.operations.acting import Refused
from trials.operations.cups import add_cup, remove_cup
from trials.pages.parts import needs, told_at

from .forms import CupForm
from .views import cup_form, cups_of, found_series, offered


@needs(access.may_write)
def series_cup(request, number):
    """One more cup: posted from the foot of the list of cups, or from a page of its own."""
    found = found_series(request, number)
    posted = request.method == "POST"
    form = CupForm(request.POST, cups=cups_of(found)) if posted else cup_form(found, request.GET.get("like", ""))
    if posted and form.is_valid():
        with told_at(form):
            cup = add_cup(actor=request.user, now=timezone.now(), series=found, **form.cleaned_data)
            return redirect(f"/series/{number}/#cup-{cup.code}")
    return _typing(request, form, found)


@require_POST
@needs(access.may_write)
def series_cup_remove(request, number, code):
    found = found_series(request, number)
    cup = get_object_or_404(found.trials, code=code)
    try:
        remove_cup(actor=request.user, trial=cup)
    except Refused as refusal:
        return _typing(request, cup_form(found, code), found, problems=[(refusal.message, "")])
    return redirect("series", number)


def _typing(request, form, found, problems=()):
    context = {"form": form, "series": found, "candidates": offered(), "problems": problems}
    return render(request, "series/cup.html", context)
