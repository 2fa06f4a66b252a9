"""What was acknowledged before a crash is there after it, and no half of anything."""

import logging
import threading
import time
from itertools import pairwise

import psycopg
import pytest

from tests.server.running import Place, Up

pytestmark = pytest.mark.slow

WRITERS = 4
CRASHES = 3
ROWS_TOGETHER = 4


class Writer(threading.Thread):
    """Writes transactions of several rows, remembers those acknowledged, and goes on after each crash."""

    def __init__(self, up, number: int):
        super().__init__(daemon=True)
        self._up = up
        self._number = number
        self.acknowledged = []
        self.stop = False

    def run(self) -> None:
        connection, count = None, 0
        while not self.stop:
            try:
                connection = connection or self._up.connect("owner")
                count += 1
                key = self._number * 1_000_000 + count
                with connection.transaction():
                    for part in range(ROWS_TOGETHER):
                        connection.execute("INSERT INTO written VALUES (%s, %s)", [key, part])
                self.acknowledged.append(key)
            except (psycopg.OperationalError, OSError):
                if connection:
                    connection.close()
                connection = None
                time.sleep(0.02)
        if connection:
            connection.close()


def test_nothing_acknowledged_is_lost_when_the_database_is_killed():
    place = Place()
    try:
        with Up(place) as up:
            with up.connect("owner") as connection:
                connection.execute("CREATE TABLE written (id bigint, part int, PRIMARY KEY (id, part))")
            writers = [Writer(up, number) for number in range(WRITERS)]
            for writer in writers:
                writer.start()
            counts = [0]
            for _ in range(CRASHES):
                time.sleep(1)
                counts.append(sum(len(writer.acknowledged) for writer in writers))
                before = up.postmaster()
                for process in (before, *before.children()):
                    process.kill()
                before.wait(timeout=5)
                up.seconds_until_it_answers(5)
            time.sleep(1)
            for writer in writers:
                writer.stop = True
            for writer in writers:
                writer.join(timeout=10)
            counts.append(sum(len(writer.acknowledged) for writer in writers))
            with up.connect("owner") as connection:
                found = dict(connection.execute("SELECT id, count(*) FROM written GROUP BY id").fetchall())
    finally:
        place.remove()

    # Otherwise nothing was tested: each crash must fall into writing, and writing must go on after it.
    assert all(later > earlier for earlier, later in pairwise(counts)), counts
    acknowledged = {key for writer in writers for key in writer.acknowledged}
    logging.getLogger(__name__).info("%d acknowledged transactions over %d crashes", len(acknowledged), CRASHES)
    assert acknowledged - found.keys() == set()
    assert set(found.values()) == {ROWS_TOGETHER}
