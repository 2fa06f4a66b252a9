"""Reports to print and to take along: ``?for=outside`` withholds names, ``?paper=letter`` is for the PDF."""

from django.core.exceptions import BadRequest
from django.http import Http404, HttpResponse
from django.shortcuts import render
from django.utils import timezone
from django.utils.http import content_disposition_header

from trials.queries.series import load_series
from trials.queries.trials import load_trial
from trials.reports.pdf import PAPERS, pdf
from trials.reports.series import SeriesReport, series_report
from trials.reports.trial import TrialReport, trial_report


def series_report_page(request, number):
    return render(request, "reports/series.html", {"report": _series(request, number), "number": number})


def series_report_pdf(request, number):
    return _pdf(request, _series(request, number))


def trial_report_page(request, code):
    return render(request, "reports/trial.html", {"report": _trial(request, code), "code": code})


def trial_report_pdf(request, code):
    return _pdf(request, _trial(request, code))


def _series(request, number) -> SeriesReport:
    found = load_series(request.user, number)
    if found is None:
        raise Http404
    return series_report(found, request.user, now=timezone.now(), outside=_outside(request))


def _trial(request, code) -> TrialReport:
    found = load_trial(request.user, code)
    if found is None:
        raise Http404
    return trial_report(found, request.user, now=timezone.now(), outside=_outside(request))


def _outside(request) -> bool:
    """A reader that nobody has heard of gets nothing: a slip of the pen must not give names away."""
    reader = request.GET.get("for", "")
    if reader not in ("", "outside"):
        raise BadRequest(f"for has to be “outside” or left out; got “{reader}”.")
    return reader == "outside"


def _pdf(request, report) -> HttpResponse:
    paper = request.GET.get("paper", "a4")
    if paper not in PAPERS:
        raise BadRequest(f"paper has to be {' or '.join(PAPERS)}; got “{paper}”.")
    response = HttpResponse(pdf(report, now=timezone.now(), paper=paper), content_type="application/pdf")
    response["Content-Disposition"] = content_disposition_header(
        as_attachment=True, filename=f"{report.head.file}.pdf"
    )
    return response
