from django.shortcuts import render
from django.utils import timezone

from trials.queries.today import lots_expiring, papers_expiring


def today(request):
    day = timezone.localdate()
    return render(request, "today/today.html", {"expiring": papers_expiring(day), "lots": lots_expiring(day)})
