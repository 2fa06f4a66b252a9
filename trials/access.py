"""Who may do what: one predicate per right, one query per noun. Pages, API, search and reports ask here."""

from .models import Base, Revision, Role

WRITERS = frozenset({Role.BENCH, Role.SUPERVISOR, Role.ADMINISTRATOR})


def may_write(person) -> bool:
    """Log and change what is not signed."""
    return person.is_authenticated and person.is_active and person.role in WRITERS


def may_manage(person) -> bool:
    """Keep people, criteria and word lists."""
    return person.is_authenticated and person.is_active and person.role == Role.ADMINISTRATOR


def may_restrict(person, record) -> bool:
    """Decide who sees a restricted record: its owner, or a supervisor who may see it already."""
    return may_write(person) and (record.owner_id == person.pk or person.role == Role.SUPERVISOR)


def bases(person):
    return Base.objects.visible_to(person)


def revisions(person):
    return Revision.objects.filter(base__in=bases(person))
