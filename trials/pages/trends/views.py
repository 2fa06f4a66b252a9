from django.http import Http404, HttpResponse
from django.shortcuts import render
from django.views.decorators.http import require_safe

from .context import part_of


@require_safe
def trends(request):
    return render(request, "trends/trends.html", part_of(request.user, request.GET))


@require_safe
def trends_csv(request):
    part = part_of(request.user, request.GET)
    if "table" not in part:
        raise Http404
    answer = HttpResponse(part["table"].csv(), content_type="text/csv; charset=utf-8")
    answer["Content-Disposition"] = f'attachment; filename="trends-{part["show"]}.csv"'
    return answer
