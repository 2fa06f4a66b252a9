"""People come, and one leaves."""

from trials.operations.people import add_person, change_person, first_person

from .laboratory import Laboratory
from .people import PEOPLE


def take_on(laboratory: Laboratory) -> str:
    keeper, *others = PEOPLE
    first = first_person(sign_in_name=keeper.sign_in_name, full_name=keeper.full_name, password=keeper.password)
    laboratory.people[keeper.sign_in_name] = first
    for row in others:
        laboratory.people[row.sign_in_name] = add_person(
            actor=first,
            sign_in_name=row.sign_in_name,
            full_name=row.full_name,
            initials=row.initials,
            role=row.role,
            password=row.password,
        )
    return f"{len(PEOPLE)} people"


def say_goodbye(laboratory: Laboratory) -> str:
    """The last part of all: who has left can write nothing any more."""
    keeper = laboratory.people[PEOPLE[0].sign_in_name]
    gone = [row for row in PEOPLE if row.left]
    for row in gone:
        change_person(actor=keeper, person=laboratory.people[row.sign_in_name], is_active=False)
    return f"{len(gone)} of the people has left" if len(gone) == 1 else f"{len(gone)} of the people have left"
