"""Who may do what: one predicate per right, one query per noun. Pages, API, search and reports ask here."""

from .models import Base, Enquiry, Panel, Photo, Revision, Role, Series, Trial

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


def enquiries(person):
    return Enquiry.objects.visible_to(person)


def series(person):
    return Series.objects.visible_to(person)


def trials(person):
    return Trial.objects.filter(series__in=series(person))


def panels(person):
    return Panel.objects.filter(trial__series__in=series(person))


def photos(person):
    return Photo.objects.filter(panel__trial__series__in=series(person))


def may_sign(person, record) -> bool:
    """Sign as performed: who keeps the series, or made a cup of it."""
    if not may_write(person):
        return False
    if isinstance(record, Trial):
        return person.pk in (record.made_by_id, record.series.owner_id)
    return record.owner_id == person.pk or record.trials.filter(made_by=person).exists()
