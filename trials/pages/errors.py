"""Pages for what went wrong; each says what to do next."""

from django.http import HttpResponseServerError
from django.shortcuts import render
from django.template.loader import render_to_string


def forbidden(request, exception=None):
    return render(request, "403.html", status=403)


def not_found(request, exception=None):
    return render(request, "404.html", status=404)


def broken(request):
    """Stands alone: what broke may be the frame itself."""
    return HttpResponseServerError(render_to_string("500.html"))
