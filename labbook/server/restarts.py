"""When starting something again is no help any more."""

from pathlib import Path

from .errors import CannotStartError

MOST_IN_A_ROW = 10


class Restarts:
    """Counts the starts that failed in a row; however often what did run is killed, it is started again."""

    def __init__(self, name: str, *, log: Path):
        self._name = name
        self._log = log
        self._failed = 0

    def failed(self) -> None:
        self._failed += 1
        if self._failed > MOST_IN_A_ROW:
            raise CannotStartError(
                f"{self._name} did not stay up {self._failed} times in a row; its log: {self._log}"
            )

    def succeeded(self) -> None:
        self._failed = 0
