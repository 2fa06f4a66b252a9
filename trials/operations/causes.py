"""Keeping with a trial what was found out about the cause of its bubbles."""

from collections.abc import Mapping
from datetime import datetime

from trials.models import Finding, Person, Trial
from trials.science import causes

from .acting import Refused, operation


@operation()
def store_finding(
    *, actor: Person, now: datetime, trial: Trial, answers: Mapping[str, str], cause: str = "", remark: str = ""
) -> Finding:
    """One more finding; those before stay, since what was thought earlier explains what was tried.

    Raises
    ------
    Refused
        If nothing at all was answered or said, or a question or answer is none that is asked.
    """
    known = {key: answer for key, answer in answers.items() if answer}
    try:
        causes.weigh(known)
    except ValueError as error:
        raise Refused(str(error)) from None
    if not (known or cause or remark.strip()):
        raise Refused("Answer a question, choose a cause or write a remark: there is nothing to keep.", field="cause")
    return Finding.objects.create(
        trial=trial, person=actor, at=now, answers=known, cause=cause, remark=remark.strip()
    )
