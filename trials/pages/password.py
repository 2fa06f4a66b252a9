"""Asking for the password: at the door, at the lock, and again for every signature."""

from allauth.account.adapter import get_adapter
from django.core.exceptions import ValidationError

TOO_MANY = "Too many attempts with this name. Wait five minutes, or ask an administrator."


def authenticated(request, form, name: str):
    """The person, or None and an error in the form that does not tell which half was wrong."""
    try:
        person = get_adapter(request).authenticate(request, username=name, password=form.cleaned_data["password"])
    except ValidationError:
        form.add_error(None, TOO_MANY)
        return None
    # allauth leaves it to its own pages to turn away who may not sign in.
    if person is None or not person.is_active:
        form.add_error(None, "The name and the password do not go together. Check both.")
        return None
    return person


def is_own_password(request, password: str) -> str:
    """Empty when it is the password of who is signed in, else the reason to show at the field."""
    try:
        person = get_adapter(request).authenticate(request, username=request.user.sign_in_name, password=password)
    except ValidationError:
        return TOO_MANY
    return "" if person == request.user else "This is not your password."
