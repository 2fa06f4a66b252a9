from django.shortcuts import render

from trials import access
from trials.queries.bench_cautions import bench_cautions
from trials.queries.series_doubts import series_doubts, weighing_doubts
from trials.queries.signatures import signing_of
from trials.queries.weighing import balances, weighing_sheet

from .views import found_series


def series_weighing(request, number):
    """The sheet for the bench, on screen and on paper."""
    found = found_series(request, number)
    known = list(balances())
    chosen = request.GET.get("balance", "")
    balance = next((one for one in known if str(one.pk) == chosen), known[0] if known else None)
    sheet = weighing_sheet(found, balance)
    context = {
        "series": found,
        "sheet": sheet,
        "balances": known,
        "remarks": weighing_doubts(sheet),
        "plan_remarks": series_doubts(found),
        "safety": bench_cautions(sheet),
        "signing": signing_of(found),
        "may_correct": access.may_write(request.user) and sheet.offers_correction,
    }
    return render(request, "series/weighing.html", context)
