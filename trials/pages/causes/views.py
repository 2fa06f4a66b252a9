from django.http import Http404
from django.shortcuts import redirect, render
from django.utils import timezone

from trials import access
from trials.operations.causes import store_finding
from trials.pages.parts import told_at, writing
from trials.queries.bases import load_revision
from trials.queries.findings import findings_of, known_answers
from trials.queries.trials import load_trial, signed_record
from trials.science.causes import weigh

from .forms import AskForm, FindingForm


def bubbles(request):
    return _shown(request, AskForm(request.GET), {"ask_url": request.path})


def trial_cause(request, code):
    trial = load_trial(request.user, code)
    if trial is None:
        raise Http404
    known = _known(request.user, trial)
    posted = request.method == "POST"
    ask = AskForm(request.POST if posted else {**known, **request.GET.dict()})
    form = FindingForm(request.POST if posted else None)
    if posted and ask.is_valid() and form.is_valid():
        with told_at(form), writing(request, signed_record(trial) or trial.series):
            store_finding(
                actor=request.user, now=timezone.now(), trial=trial, answers=ask.answers(), **form.cleaned_data
            )
            return redirect("trial_cause", code)
    context = {
        "trial": trial,
        "ask_url": request.path,
        "form": form,
        "from_base": [key for key in known if key not in request.GET and not posted],
        "findings": findings_of(trial),
        "may_write": access.may_write(request.user),
    }
    return _shown(request, ask, context)


def _known(person, trial) -> dict[str, str]:
    """What the base says, where the person may see it."""
    standing = trial.series.revision
    revision = load_revision(person, standing.base.code, standing.number)
    return known_answers(revision) if revision else {}


def _shown(request, ask, context):
    """The page, or for htmx what was found alone."""
    context |= {"ask": ask, "weighed": weigh(ask.answers())}
    return render(request, "causes/_result.html" if request.htmx else "causes/bubbles.html", context)
