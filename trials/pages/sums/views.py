from django.http import Http404
from django.shortcuts import render

from .every import BY_SLUG, SUMS
from .lines import work_out
from .start import StartForm


def sums(request):
    start = StartForm(request.GET, person=request.user)
    start.is_valid()
    return render(request, "sums/list.html", {"sums": SUMS, "start": start})


def one_sum(request, slug):
    """The whole page, or for htmx the result with what is wrong at the fields: what was typed stays where it is."""
    found = BY_SLUG.get(slug)
    if found is None:
        raise Http404
    start = StartForm(request.GET, person=request.user)
    start.is_valid()
    fields = found.form.base_fields
    standing = {name: field.initial for name, field in fields.items() if field.initial is not None}
    known = {name: value for name, value in start.start.values.items() if name in fields}
    form = found.form({**standing, **known, **request.GET.dict()})
    context = {"sum": found, "form": form, "answer": work_out(found, form), "sums": SUMS, "start": start}
    return render(request, "sums/_result.html" if request.htmx else "sums/sum.html", context)
