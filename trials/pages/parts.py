"""What views have in common: the right to a page, and errors of the record told at the field."""

from contextlib import contextmanager
from functools import wraps

from django.core.exceptions import PermissionDenied
from django.utils import timezone

from trials.operations.acting import Refused
from trials.operations.signing import amending

from .password import is_own_password


def needs(predicate):
    """View decorator: the signed-in person must pass the predicate, else 403."""

    def decorate(view):
        @wraps(view)
        def checked(request, *args, **kwargs):
            if not predicate(request.user):
                raise PermissionDenied
            return view(request, *args, **kwargs)

        return checked

    return decorate


@contextmanager
def told_at(form):
    """Turn a refusal of the operation into an error of the form, at the field it names."""
    try:
        yield
    except Refused as refusal:
        form.add_error(refusal.field if refusal.field in form.fields else None, refusal.message)
        form.signed = refusal.signed


@contextmanager
def writing(request, record):
    """A write to a series or trial, inside ``told_at``: an amendment where the page sends a reason for it.

    After a refusal because the record is signed ``form.signed`` is true, and ``components/amendment.html`` asks for
    the reason and the password inside the same form, so that nothing typed is lost.
    """
    reason = request.POST.get("amend_reason", "").strip()
    if not reason:
        yield
        return
    wrong = is_own_password(request, request.POST.get("amend_password", ""))
    if wrong:
        raise Refused(wrong, signed=True)
    with amending(actor=request.user, now=timezone.now(), record=record, reason=reason):
        yield
