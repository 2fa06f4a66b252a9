"""Writing about people: only an administrator adds or changes one."""

from django.contrib.auth.password_validation import validate_password
from django.core.exceptions import ValidationError
from django.db import connection, transaction

from trials.access import may_manage
from trials.models import Person, Role

from .acting import Refused, assign, operation


def _set_password(person: Person, password: str) -> None:
    try:
        validate_password(password, person)
    except ValidationError as error:
        raise Refused(" ".join(error.messages), field="password") from error
    person.set_password(password)


@operation(needs=may_manage)
def add_person(*, actor, sign_in_name, full_name, initials, role, password) -> Person:
    person = Person(sign_in_name=sign_in_name.strip().lower(), full_name=full_name, initials=initials, role=role)
    _set_password(person, password)
    person.save()
    return person


@operation(needs=may_manage)
def change_person(*, actor, person, password="", **values) -> Person:
    """Change name, initials, role or whether the person may sign in; a password only when one is given."""
    if person == actor and (values.get("role", actor.role) != actor.role or values.get("is_active") is False):
        raise Refused("You cannot take your own rights away: ask another administrator.", field="role")
    assign(person, values)
    if password:
        _set_password(person, password)
    person.save()
    return person


@operation(needs=lambda actor: actor.is_active)
def change_own_password(*, actor, old, new) -> None:
    if not actor.check_password(old):
        raise Refused("This is not your password.", field="old")
    _set_password(actor, new)
    actor.save(update_fields=["password"])


def first_person(*, sign_in_name: str, full_name: str, password: str) -> Person:
    """The first administrator: the one write without an actor, refused as soon as anybody exists.

    Raises
    ------
    Refused
        If the notebook has people already, or the password is too weak.
    """
    with transaction.atomic():
        with connection.cursor() as cursor:
            cursor.execute("SELECT pg_advisory_xact_lock(7246002)")
        if Person.objects.exists():
            raise Refused("The notebook has people already: an administrator adds the next.")
        initials = "".join(word[0] for word in full_name.split())[:4].upper() or "A"
        person = Person(
            sign_in_name=sign_in_name.strip().lower(),
            full_name=full_name.strip(),
            initials=initials,
            role=Role.ADMINISTRATOR,
        )
        _set_password(person, password)
        person.save()
    return person
