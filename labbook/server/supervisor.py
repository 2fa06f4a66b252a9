"""``manage.py up``: the parent that starts the database and the pages, watches both and ends both."""

import ipaddress
import signal
import time
from collections.abc import Callable
from contextlib import ExitStack, suppress
from dataclasses import dataclass
from pathlib import Path

from labbook.database import secret_key

from . import lock, places, steps
from .embedded import EmbeddedDatabase
from .errors import StoppedError
from .first_person import first_person
from .given import GivenDatabase, is_given
from .sealing import Sealing
from .web import Web, refuse_taken_port

WATCH_SECONDS = 0.2


@dataclass(frozen=True)
class Wanted:
    data: Path
    host: str
    port: int
    demo: bool


class Stop:
    """Set by Ctrl-C, SIGTERM and the closing of the terminal; asking again changes nothing."""

    def __init__(self):
        self.asked = False
        for number in (signal.SIGINT, signal.SIGTERM, signal.SIGHUP):
            signal.signal(number, self._ask)

    def _ask(self, *_signal):
        self.asked = True

    def is_asked(self) -> bool:
        return self.asked


def run(wanted: Wanted, *, say: Callable[[str], None], announce: Callable[[], None]) -> None:
    """Run the notebook until it is told to stop; ``announce`` is called once the pages answer.

    Raises CannotStartError, with nothing left running, when it cannot start or cannot be kept running.
    """
    stop = Stop()
    with ExitStack() as running, suppress(StoppedError):
        database, web = _start(wanted, running, stop=stop, say=say)
        if not stop.asked:
            announce()
        while not stop.asked:
            database.tend()
            web.tend()
            time.sleep(WATCH_SECONDS)


def _start(wanted: Wanted, running: ExitStack, *, stop: Stop, say):
    """Start in order; each that started is ended by ``running``, the last one first."""
    places.make_writable(wanted.data)
    own = None if is_given() else places.cluster_of(wanted.data)
    lock_file = places.lock_file(own) if own else wanted.data / "up.lock"
    held = running.enter_context(lock.held(lock_file, data=wanted.data))
    lock.end_earlier(held.earlier)
    held.tell()
    refuse_taken_port(wanted.host, wanted.port)
    secret_key()  # made now, before two workers could each make one
    shared = {"say": say, "cancelled": stop.is_asked}
    database = running.enter_context(
        EmbeddedDatabase(own, folder=wanted.data, lock=held, **shared) if own else GivenDatabase()
    )
    environment = steps.pages_environment(wanted.data)
    _prepare(wanted, database, environment, stop=stop, say=say)
    running.enter_context(Sealing(database.connection_options(), say=say))
    web = running.enter_context(
        Web(
            host=wanted.host,
            port=wanted.port,
            log=wanted.data / "web.log",
            environment=environment,
            lock=held,
            **shared,
        )
    )
    return database, web


def _prepare(wanted: Wanted, database, environment: dict, *, stop: Stop, say) -> None:
    owners = environment | database.owner_environment | {"LABBOOK_APPLICATION_ROLE": database.application_role}
    if steps.people_after_preparing(environment=owners, cancelled=stop.is_asked) > 0:
        return
    if wanted.demo:
        say("Filling the notebook with the demonstration's laboratory; this happens once.")
        steps.run_step("fill_demo", environment=environment, cancelled=stop.is_asked)
    else:
        person = first_person(say)
        steps.run_step("first_person", environment=environment | person, cancelled=stop.is_asked)


def is_loopback(host: str) -> bool:
    try:
        return ipaddress.ip_address(host).is_loopback
    except ValueError:
        return host == "localhost"


def address(host: str, port: int) -> str:
    return f"http://[{host}]:{port}/" if ":" in host else f"http://{host}:{port}/"
