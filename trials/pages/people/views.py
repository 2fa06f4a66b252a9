import time

from django.contrib import auth
from django.contrib.auth.decorators import login_not_required
from django.http import HttpResponse, HttpResponseRedirect, JsonResponse
from django.shortcuts import redirect, render, resolve_url
from django.urls import reverse
from django.utils.http import url_has_allowed_host_and_scheme
from django.views.decorators.debug import sensitive_post_parameters
from django.views.decorators.http import require_POST

from trials.pages.password import authenticated

from .forms import SignInForm, UnlockForm


def _next(request) -> str:
    """Where to go on: only ever an address of this notebook."""
    wanted = request.POST.get("next") or request.GET.get("next") or ""
    safe = url_has_allowed_host_and_scheme(wanted, {request.get_host()}, require_https=request.is_secure())
    return wanted if wanted and safe else resolve_url("today")


@login_not_required
@sensitive_post_parameters("password")
def sign_in(request):
    if request.method == "GET" and request.user.is_authenticated:
        return redirect(_next(request))
    form = SignInForm(request.POST or None)
    if request.method == "POST" and form.is_valid():
        person = authenticated(request, form, form.cleaned_data["sign_in_name"])
        if person:
            auth.login(request, person)
            request.session.cycle_key()  # Django keeps the key where the same person signs in again
            request.session["seen"] = int(time.time())
            return HttpResponseRedirect(_next(request))
    return render(request, "people/sign_in.html", {"form": form, "next": _next(request)})


def _gone(response):
    """Nothing of the last person stays in the browser."""
    response["Clear-Site-Data"] = '"cache", "storage"'
    return response


@require_POST
def sign_out(request):
    auth.logout(request)
    return _gone(redirect("sign_in"))


@require_POST
def change_person(request):
    """Out in one step, and the next person comes to the same page."""
    back = _next(request)
    auth.logout(request)
    return _gone(HttpResponseRedirect(reverse("sign_in", query={"next": back})))


@require_POST
def lock(request):
    request.session["locked"] = True
    return redirect("locked")


@sensitive_post_parameters("password")
def locked(request):
    """The locked screen as a page of its own, for a browser that comes back to a locked session."""
    form = UnlockForm(request.POST or None)
    if request.method == "POST" and form.is_valid():
        person = authenticated(request, form, request.user.sign_in_name)
        if person:
            _unlock(request)
            return HttpResponseRedirect(_next(request))
    request.session["locked"] = True
    return render(request, "people/locked.html", {"form": form, "next": _next(request)})


def _unlock(request):
    request.session["locked"] = False
    request.session["seen"] = int(time.time())
    request.session.cycle_key()


@require_POST
@sensitive_post_parameters("password")
def unlock(request):
    """The same from within a page, so that what was typed stays: 204, or 403 with the reason."""
    form = UnlockForm(request.POST)
    if form.is_valid() and authenticated(request, form, request.user.sign_in_name):
        _unlock(request)
        return HttpResponse(status=204)
    reasons = [message for messages in form.errors.values() for message in messages]
    return JsonResponse({"error": " ".join(reasons)}, status=403)
