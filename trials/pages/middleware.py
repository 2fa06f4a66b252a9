"""What every request passes: nothing of a page is stored, the screen locks, history knows who."""

import time

import pghistory
from django.conf import settings
from django.http import HttpResponse
from django.shortcuts import redirect
from django.urls import reverse


class NeverStored:
    """The bench PC is shared: the back button and the cache must show nothing of the last person."""

    def __init__(self, get_response):
        self.get_response = get_response

    def __call__(self, request):
        response = self.get_response(request)
        if not request.path.startswith(f"/{settings.STATIC_URL.strip('/')}/"):
            response.setdefault("Cache-Control", "no-store")
        response.setdefault("Permissions-Policy", "camera=(self), microphone=(), geolocation=()")
        return response


class IdleLock:
    """After a while without a request the session is locked until the same person gives the password again."""

    OPEN_WHILE_LOCKED = ("sign_in", "sign_out", "locked", "unlock", "change_person")

    def __init__(self, get_response):
        self.get_response = get_response

    def __call__(self, request):
        return self.get_response(request)

    def process_view(self, request, view, args, kwargs):
        if not request.user.is_authenticated:
            return None
        now = int(time.time())
        session = request.session
        if now - session.get("seen", now) > settings.IDLE_SECONDS:
            session["locked"] = True
        if request.resolver_match.url_name in self.OPEN_WHILE_LOCKED:
            return None
        if session.get("locked"):
            return _locked(request)
        # Writing the session on every request would cost a query each time; half a minute is close enough.
        if now - session.get("seen", 0) > min(30, settings.IDLE_SECONDS / 4):
            session["seen"] = now
        return None


def _locked(request):
    if request.htmx or request.headers.get("Accept") == "application/json":
        return HttpResponse("locked", status=423, content_type="text/plain")
    return redirect(reverse("locked", query={"next": request.get_full_path()}))


class HistoryContext:
    """Every event row carries who was signed in and at which address."""

    def __init__(self, get_response):
        self.get_response = get_response

    def __call__(self, request):
        if request.method in ("GET", "HEAD", "OPTIONS") or not request.user.is_authenticated:
            return self.get_response(request)
        with pghistory.context(person=request.user.pk, address=request.path):
            return self.get_response(request)
