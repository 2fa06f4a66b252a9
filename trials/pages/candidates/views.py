from django.shortcuts import get_object_or_404, redirect, render
from django.urls import reverse
from django.utils import timezone
from django.utils.safestring import mark_safe

from trials import access
from trials.figures.candidate_map import MapPoint, candidate_map
from trials.models import Candidate, RawMaterial
from trials.operations.candidates import add_candidate, change_candidate
from trials.pages.parts import needs, told_at
from trials.queries.candidates import candidate_sheet, find_candidates
from trials.queries.history import what_changed

from .forms import CandidateFilter, CandidateForm


def candidates(request):
    asked = CandidateFilter(request.GET)
    found = find_candidates(today=timezone.localdate(), **asked.asked())
    context = {
        "filter": asked,
        "found": found,
        "map": _map(found.rows),
        "off_map": [row.code for row in found.rows if row.tip_speed_m_s is None],
    }
    return render(request, "candidates/list.html", context)


def candidate(request, code):
    record = _candidate(code)
    context = {
        "sheet": candidate_sheet(record, today=timezone.localdate()),
        "candidate": record,
        "material": record.material,
        "events": what_changed(record),
        "may_write": access.may_write(request.user),
    }
    return render(request, "candidates/candidate.html", context)


@needs(access.may_write)
def candidate_new(request, code):
    material = get_object_or_404(RawMaterial, code=code)
    form = CandidateForm(request.POST or None)
    if request.method == "POST" and form.is_valid():
        with told_at(form):
            add_candidate(actor=request.user, material=material, **form.cleaned_data)
            return redirect("candidate", code)
    return _typing(request, form, f"Offer {code} as an additive", reverse("material", args=[code]))


@needs(access.may_write)
def candidate_change(request, code):
    record = _candidate(code)
    form = CandidateForm(request.POST or None, instance=record)
    if request.method == "POST" and form.is_valid():
        with told_at(form):
            change_candidate(actor=request.user, candidate=record, **form.changed())
            return redirect("candidate", code)
    return _typing(request, form, f"Change {code} as an additive", reverse("candidate", args=[code]))


def _candidate(code):
    return get_object_or_404(Candidate.objects.select_related("material"), material__code=code)


def _typing(request, form, heading, back):
    return render(request, "candidates/form.html", {"form": form, "heading": heading, "back": back})


def _map(rows) -> str:
    points = [
        MapPoint(
            code=row.code,
            strength=row.strength,
            tip_speed_m_s=None if row.tip_speed_m_s is None else float(row.tip_speed_m_s),
            minutes=None if row.minutes is None else float(row.minutes),
            silicone=row.silicone,
            href=reverse("candidate", args=[row.code]),
        )
        for row in rows
    ]
    return mark_safe(candidate_map(points))  # noqa: S308 - candidate_map() escapes codes and addresses
