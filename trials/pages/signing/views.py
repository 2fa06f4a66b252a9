from django.http import HttpResponse
from django.shortcuts import get_object_or_404, redirect, render
from django.utils import timezone
from django.views.decorators.debug import sensitive_post_parameters

from trials import access
from trials.operations import signing as operations
from trials.pages.parts import needs, told_at
from trials.pages.password import is_own_password
from trials.queries.signatures import live_as_signed, signing_of, still_as_signed

from .forms import SignForm


@sensitive_post_parameters("password")
@needs(access.may_write)
def series_sign(request, number):
    return _sign(request, get_object_or_404(access.series(request.user), number=number), ("series", number))


@sensitive_post_parameters("password")
@needs(access.may_write)
def trial_sign(request, code):
    trials = access.trials(request.user).select_related("series")
    return _sign(request, get_object_or_404(trials, code=code), ("trial", code))


def _sign(request, record, back):
    signing = signing_of(record)
    form = SignForm(
        request.POST or None,
        ask=lambda password: is_own_password(request, password),
        initial={"meaning": "countersigned" if signing.performed else "performed"},
    )
    if request.method == "POST" and form.is_valid():
        with told_at(form):
            operations.sign(
                actor=request.user, now=timezone.now(), record=record, meaning=form.cleaned_data["meaning"]
            )
            return redirect(*back)
    context = {"record": record, "signing": signing, "form": form, "back": back}
    return render(request, "signing/sign.html", context)


def series_signed(request, number):
    """What was signed, word for word, and whether it still holds."""
    return _signed(request, get_object_or_404(access.series(request.user), number=number))


def trial_signed(request, code):
    trials = access.trials(request.user).select_related("series")
    return _signed(request, get_object_or_404(trials, code=code))


def _signed(request, record):
    signing = signing_of(record)
    if request.GET.get("form") == "json" and signing.signatures:
        return HttpResponse(signing.signatures[-1].canonical, content_type="application/json")
    checked = [(signature, still_as_signed(signature)) for signature in signing.signatures]
    own = [signature for signature in signing.signatures if (signature.series or signature.trial) == record]
    live = live_as_signed(record, signing) if own else None
    return render(
        request, "signing/signed.html", {"record": record, "signing": signing, "checked": checked, "live": live}
    )
