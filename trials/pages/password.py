"""Asking for the password: at the door, at the lock, and again for every signature."""

from allauth.account.adapter import get_adapter
from django.core.exceptions import ValidationError

TOO_MANY = "Too many attempts with this name. Wait five minutes, or ask an administrator."


def authenticated(request, form, name: str):
    """The person, or None and an error in the form that does not tell which half was wrong."""
    person, too_many = _person(request, name, form.cleaned_data["password"])
    if person is None:
        form.add_error(None, too_many or "The name and the password do not go together. Check both.")
    return person


def is_own_password(request, password: str) -> str:
    """Empty when it is the password of who is signed in, else the reason to show at the field."""
    person, too_many = _person(request, request.user.sign_in_name, password)
    return too_many or ("" if person == request.user else "This is not your password.")


def _person(request, name: str, password: str):
    """Who signs in so, if they may; and what to say where too many have tried."""
    try:
        person = get_adapter(request).authenticate(request, username=name, password=password)
    except ValidationError:
        return None, TOO_MANY
    # allauth leaves it to its own pages to turn away who may not sign in.
    return (person if person and person.is_active else None), ""
