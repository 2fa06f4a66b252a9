from django.http import Http404
from django.shortcuts import redirect, render
from django.utils import timezone

from trials import access
from trials.models import CommonBatch
from trials.operations.series import add_common_batch
from trials.pages.parts import needs, told_at
from trials.queries.bases import load_revision

from .forms import CommonBatchForm


def common_batches(request):
    """Those made of bases that the person may see, the newest first."""
    wanted = CommonBatch.objects.filter(revision__in=access.revisions(request.user))
    wanted = wanted.select_related("revision__base", "made_by").prefetch_related("lots__lot__material")
    context = {"batches": wanted.order_by("-made_at", "-pk")[:500], "may_write": access.may_write(request.user)}
    return render(request, "series/batches.html", context)


@needs(access.may_write)
def common_batch_new(request, code, number):
    revision = load_revision(request.user, code, number)
    if revision is None:
        raise Http404
    start = {"made_at": timezone.localtime(), "letter": "A"}
    form = CommonBatchForm(request.POST or None, revision=revision, initial=start)
    if request.method == "POST" and form.is_valid():
        with told_at(form):
            add_common_batch(actor=request.user, now=timezone.now(), revision=revision, **form.cleaned_data)
            return redirect("common_batches")
    context = {"form": form, "heading": f"A common batch of {code} revision {number}", "back": "common_batches"}
    return render(request, "series/form.html", context)
