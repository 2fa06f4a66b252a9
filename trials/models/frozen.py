"""Signed means frozen: rows of a signed series or trial change only together with an amendment.

An amendment is a signature of that meaning, with its reason, written in the same transaction. The functions that
look for it are made in a migration and belong to the owner of the tables.
"""

import pgtrigger

from .history import Guard, refusal

EVERY_WRITE = pgtrigger.Insert | pgtrigger.Update | pgtrigger.Delete


def _guard(name: str, question: str, operation) -> Guard:
    return Guard(
        name=name,
        when=pgtrigger.Before,
        operation=operation,
        declare=[("row", "RECORD")],
        func=(
            "IF TG_OP = 'DELETE' THEN row := OLD; ELSE row := NEW; END IF; "
            f"IF {question} THEN {refusal(name, 'this is signed: it changes only by an amendment with its reason')}"
            " END IF; RETURN row;"
        ),
    )


def frozen_with_series(name: str, series: str, operation=pgtrigger.Update | pgtrigger.Delete) -> Guard:
    """Refuse while the series is signed; ``series`` is SQL over ``row`` for its key."""
    return _guard(name, f"trials_series_frozen({series})", operation)


def frozen_with_trial(name: str, trial: str, operation=EVERY_WRITE) -> Guard:
    """Refuse while the trial or its series is signed; ``trial`` is SQL over ``row`` for its key."""
    return _guard(name, f"trials_trial_frozen({trial})", operation)


def frozen_trial(name: str) -> Guard:
    """The guard of the trials themselves: also a new cup in a signed series is refused."""
    return _guard(name, "trials_frozen(row.series_id, row.id)", EVERY_WRITE)


def frozen_with_batch(name: str, batch: str, operation=EVERY_WRITE) -> Guard:
    """Refuse while a signed series or trial was made from the common batch; ``batch`` is SQL over ``row``."""
    return _guard(name, f"trials_batch_frozen({batch})", operation)


def frozen_with_panel(name: str, panel: str, operation=EVERY_WRITE) -> Guard:
    """Refuse while the panel's trial is signed; ``panel`` is SQL over ``row`` for its key."""
    return _guard(
        name, f"trials_trial_frozen((SELECT p.trial_id FROM trials_panel p WHERE p.id = {panel}))", operation
    )
