"""Every half minute the parent asks the database to seal the history since the last seal."""

import logging
import threading

import psycopg

SECONDS = 30
# A seal over a large import takes its time; one that waits for a lock must not wait for ever.
OPTIONS = "-c statement_timeout=120s"

logger = logging.getLogger(__name__)


class Sealing(threading.Thread):
    """A thread, so that a slow seal never delays the watch over the servers."""

    def __init__(self, connection_options: dict, *, say):
        super().__init__(name="sealing", daemon=True)
        self._options = connection_options
        self._say = say
        self._stopping = threading.Event()
        self._connection = None
        self._last_failure = None

    def __enter__(self):
        self.start()
        return self

    def __exit__(self, *_error):
        self._stopping.set()
        self.join(timeout=2)

    def run(self) -> None:
        while not self._stopping.wait(SECONDS):
            self.seal()
        if self._connection:
            self._connection.close()

    def seal(self) -> None:
        try:
            if self._connection is None or self._connection.closed:
                self._connection = psycopg.connect(
                    **self._options, autocommit=True, connect_timeout=5, options=OPTIONS
                )
            self._connection.execute("SELECT trials_seal_history()")
        except psycopg.errors.UndefinedFunction:
            logger.debug("The database has no trials_seal_history() yet.")
        except psycopg.Error as error:
            self._report(" ".join(str(error).split()))
        else:
            self._last_failure = None

    def _report(self, failure: str) -> None:
        # Once per cause: a server that is down for an hour is one line, not a hundred and twenty.
        if failure != self._last_failure:
            self._say(f"The history could not be sealed: {failure}")
        self._last_failure = failure
