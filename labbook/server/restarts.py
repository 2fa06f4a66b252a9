"""How often something may end before starting it again is no help."""

import time
from collections import deque
from pathlib import Path

from .errors import CannotStartError

MOST = 5
WITHIN_SECONDS = 60


class Restarts:
    def __init__(self, name: str, *, log: Path | None = None):
        self._name = name
        self._where = f" Its log: {log}" if log else ""
        self._times = deque(maxlen=MOST)

    def note(self) -> None:
        now = time.monotonic()
        if len(self._times) == MOST and now - self._times[0] < WITHIN_SECONDS:
            raise CannotStartError(f"{self._name} ended {MOST + 1} times within a minute.{self._where}")
        self._times.append(now)
