from pathlib import Path

import pytest

from labbook.server.errors import CannotStartError
from labbook.server.restarts import Restarts


@pytest.fixture
def restarts():
    return Restarts("The web server", log=Path("web.log"))


def test_eleventh_failure_in_a_row_is_one_too_many(restarts):
    for _ in range(10):
        restarts.failed()
    with pytest.raises(
        CannotStartError, match=r"The web server did not stay up 11 times in a row; its log: web\.log"
    ):
        restarts.failed()


def test_one_success_forgives(restarts):
    for _ in range(5):
        for _ in range(10):
            restarts.failed()
        restarts.succeeded()
