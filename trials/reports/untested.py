"""What a series leaves open, as far as the notebook can tell; people say the rest."""

from trials.models.trials import State
from trials.queries.judging import Judgement
from trials.queries.limits import wanted


def not_read(judged: Judgement) -> tuple[str, ...]:
    read = {table.judged.measure.key for table in judged.tables}
    found = []
    if judged.enquiry:
        names = {limit.criterion.key: limit.criterion.name for limit in judged.enquiry.limits.all()}
        found += [
            f"{names[key]}: the enquiry asks for it ({limit.said}), and nothing was read."
            for key, limit in wanted(judged.enquiry).items()
            if key not in read
        ]
    planned = [
        cup.trial.code
        for line in judged.lines
        for cup in line.group.cups
        if cup.trial.state == State.PLANNED and not cup.trial.made_at
    ]
    if planned:
        found.append(f"Planned and not made: {', '.join(planned)}.")
    rated = [table.judged.column.condition for table in judged.tables if table.judged.column.condition.panels]
    if not any(condition.stored for condition in rated):
        found.append("Nothing was read after storage.")
    if len({condition.film_um for condition in rated}) < 2:
        found.append("One film thickness only.")
    return tuple(found)
