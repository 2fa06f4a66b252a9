"""One thing that was unfair about a cup or a series."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Mark:
    """``heavy``: by itself enough to suggest that this was not a fair test."""

    text: str
    heavy: bool = False
