"""Photographs: taken in, and served to those who may see the panel, as pictures that can do nothing."""

from django.core.files.storage import default_storage
from django.http import Http404, HttpResponse
from django.shortcuts import get_object_or_404, redirect, render
from django.utils import timezone
from django.utils.http import content_disposition_header

from trials import access
from trials.operations.photos import PhotoEntry, add_photos, change_photo, small_of
from trials.pages.parts import needs, told_at
from trials.pages.trials.writing import writing
from trials.queries.trials import signed_record

from .photo_forms import PhotoForm, PhotosForm
from .views import found

# A picture stays a picture even where a browser is talked into opening it as a page.
NO_SCRIPTS = "default-src 'none'; sandbox"


@needs(access.may_write)
def panel_photos(request, code):
    panel = found(request, code)
    signed = signed_record(panel.trial)
    form = PhotosForm(request.POST or None, request.FILES or None, signed=signed)
    if request.method == "POST" and form.is_valid():
        with told_at(form), writing(request, signed, form):
            add_photos(actor=request.user, now=timezone.now(), entries=_entries(panel, form.cleaned_data))
            return redirect("panel", panel.code)
    context = {"form": form, "heading": f"Panel {panel.code}: photographs", "panel": panel, "files": True}
    return render(request, "panels/typing.html", context)


def _entries(panel, typed) -> list[PhotoEntry]:
    same = {name: typed[name] for name in ("shows_mm", "mm_per_px", "age_h", "taken_at", "remark")}
    return [PhotoEntry(panel, file.read(), file.name, **same) for file in typed["photos"]]


@needs(access.may_write)
def photo_change(request, pk):
    record = get_object_or_404(access.photos(request.user).select_related("panel__trial__series"), pk=pk)
    signed = signed_record(record.panel.trial)
    start = {name: getattr(record, name) for name in ("mm_per_px", "age_h", "remark")}
    form = PhotoForm(request.POST or None, signed=signed, initial=start)
    if request.method == "POST" and form.is_valid():
        with told_at(form), writing(request, signed, form):
            change_photo(actor=request.user, photo=record, **form.figures())
            return redirect("panel", record.panel.code)
    context = {"form": form, "heading": f"Panel {record.panel.code}: a photograph", "panel": record.panel}
    return render(request, "panels/typing.html", context)


def photo(request, pk):
    return _served(request, pk, lambda record: record.picture)


def photo_small(request, pk):
    return _served(request, pk, small_of)


def _served(request, pk, place):
    record = get_object_or_404(access.photos(request.user).select_related("panel"), pk=pk)
    try:
        with default_storage.open(place(record)) as file:
            content = file.read()
    except FileNotFoundError:
        raise Http404 from None
    response = HttpResponse(content, content_type="image/jpeg")
    # Named by the panel: the name that a camera or a person gave stays with the original.
    named = f"{record.panel.code}-{record.pk}.jpg"
    response["Content-Disposition"] = content_disposition_header(as_attachment=False, filename=named)
    response["Content-Security-Policy"] = NO_SCRIPTS
    response["X-Content-Type-Options"] = "nosniff"
    return response
