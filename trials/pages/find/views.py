from django.shortcuts import redirect, render
from django.urls import reverse
from django.views.decorators.http import require_safe

from trials.queries.exact import Record, exact_record
from trials.queries.search import find_trials

from .forms import FindForm


@require_safe
def find(request):
    form = FindForm(request.GET, person=request.user)
    record = exact_record(request.user, form.typed_alone) if form.typed_alone else None
    if record:
        return redirect(_address(record))
    found = None
    if form.is_valid():
        found = find_trials(request.user, form.asked(), after=form.cleaned_data["after"])
    return render(request, "find/find.html", {"form": form, "found": found})


def _address(record: Record) -> str:
    return reverse(record.kind, args=[record.key])
