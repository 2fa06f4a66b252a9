"""What views have in common: the right to a page, and errors of the record told at the field."""

from contextlib import contextmanager
from functools import wraps

from django.core.exceptions import PermissionDenied

from trials.operations.acting import Refused


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
