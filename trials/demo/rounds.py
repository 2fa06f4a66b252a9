"""All series of the demonstration, in the order in which they were worked."""

from . import rounds_clear, rounds_epoxy_floor, rounds_isocyanate, rounds_sold

ROUNDS = tuple(
    sorted(
        (
            *rounds_epoxy_floor.ROUNDS,
            *rounds_clear.ROUNDS,
            *rounds_isocyanate.ROUNDS,
            *rounds_sold.ROUNDS,
        ),
        key=lambda row: -row.ago,
    )
)
