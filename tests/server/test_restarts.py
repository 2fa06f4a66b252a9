import time

import pytest

from labbook.server.errors import CannotStartError
from labbook.server.restarts import Restarts


def test_sixth_end_within_a_minute_is_one_too_many():
    restarts = Restarts("The web server")
    for _ in range(5):
        restarts.note()
    with pytest.raises(CannotStartError, match="The web server ended 6 times within a minute"):
        restarts.note()


def test_ends_far_apart_are_forgiven(monkeypatch):
    restarts = Restarts("The web server")
    for minute in range(20):
        monkeypatch.setattr(time, "monotonic", lambda at=minute * 13.0: at)
        restarts.note()
