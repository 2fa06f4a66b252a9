"""The web server as a child: granian with workers and threads set by hand."""

import http.client
import socket
import sys
import time
from pathlib import Path

from labbook.database import ROOT

from . import logs, processes
from .errors import CannotStartError
from .lock import end_group
from .restarts import Restarts

WORKERS = 2
# Each thread keeps a database connection of its own: workers times threads stays far below the server's limit.
THREADS = 4
# Requests one worker holds at once; those beyond wait in the kernel instead of in memory.
BACKPRESSURE = 64
START_SECONDS = 60
# Whoever ended sooner than this after its start had not really started.
STEADY_SECONDS = 2
ANY_ADDRESS = {"0.0.0.0": "127.0.0.1", "::": "::1"}  # noqa: S104 - a table for asking them, nothing is bound here


class Web:
    def __init__(self, *, host: str, port: int, log: Path, environment: dict, lock, say, cancelled):
        self._host = host
        self._port = port
        self._environment = environment
        self._lock = lock
        self._say = say
        self._cancelled = cancelled
        self._log = log
        self._restarts = Restarts("The web server", log=log)

    def __enter__(self):
        self._start()
        try:
            self._wait_until_it_answers()
        except BaseException:
            self.__exit__()
            raise
        return self

    def __exit__(self, *_error):
        end_group(self._process.pid)
        self._process.wait()

    def tend(self) -> None:
        if self._process.poll() is None:
            return
        end_group(self._process.pid, seconds=1)  # workers that outlived it hold the port
        if time.monotonic() - self._started < STEADY_SECONDS:
            self._restarts.failed()
            time.sleep(1)
        else:
            self._restarts.succeeded()
        self._start()
        self._say("The web server had ended; it was started again.")

    def _start(self) -> None:
        self._started = time.monotonic()
        with logs.opened(self._log) as log:
            self._process = processes.launch(
                self._command(),
                cwd=ROOT,
                env=self._environment,
                # On the terminal a page that failed would bury the few lines of the parent.
                stdout=log,
                stderr=log,
                # A group of its own: by its number the workers are found even when their leader is gone.
                start_new_session=True,
            )
        self._lock.tell(web={"pid": self._process.pid, "started": processes.started_at(self._process.pid)})

    def _command(self) -> list:
        return [
            sys.executable, "-m", "granian", "labbook.wsgi:application", "--interface", "wsgi",
            "--host", self._host, "--port", self._port,
            "--workers", WORKERS, "--blocking-threads", THREADS, "--backpressure", BACKPRESSURE,
            "--respawn-failed-workers", "--respawn-interval", "0.5", "--workers-kill-timeout", "5",
            "--no-ws", "--log-level", "warning",
        ]  # fmt: skip

    def _wait_until_it_answers(self) -> None:
        answered = processes.wait_until(
            lambda: self._cancelled() or self._process.poll() is not None or self._answers(), seconds=START_SECONDS
        )
        if not answered or self._process.poll() is not None:
            raise CannotStartError(f"The web server did not start: see the end of {self._log}")

    def _answers(self) -> bool:
        """Whether any answer comes; what it says is the pages' business."""
        asked = http.client.HTTPConnection(ANY_ADDRESS.get(self._host, self._host), self._port, timeout=5)
        try:
            asked.request("HEAD", "/")
            asked.getresponse()
        except (OSError, http.client.HTTPException):
            return False
        finally:
            asked.close()
        return True


def refuse_taken_port(host: str, port: int) -> None:
    try:
        family, kind, protocol, _, address = socket.getaddrinfo(host, port, type=socket.SOCK_STREAM)[0]
        with socket.socket(family, kind, protocol) as trial:
            trial.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
            trial.bind(address)
    except OSError as error:
        raise CannotStartError(
            f"The notebook cannot listen on {host} port {port} ({error.strerror}): "
            "end what uses it, or give another --port or --host."
        ) from None
