"""One embedded PostgreSQL server: made, started, probed and stopped."""

import os
import shutil
import signal
import subprocess
import tempfile
from dataclasses import dataclass
from pathlib import Path

import psutil
import psycopg

from labbook.database import kept_secret

from . import logs, processes, programs
from .accounts import Account
from .configuration import ACCESS, LOCAL, configuration
from .errors import CannotStartError, StoppedError

KEEPER = "labbook_keeper"  # the superuser; neither the owner nor the application
# Crash recovery on a slow disk may take minutes; a server that died is noticed at once.
START_SECONDS = 300
# A socket's whole path must stay under about 107 bytes.
LONGEST_SOCKET_FOLDER = 80


@dataclass(frozen=True)
class Cluster:
    data: Path
    programs: Path
    secrets: Path
    account: Account | None = None
    durable: bool = True

    @property
    def log(self) -> Path:
        return self.data.with_name("postgres.log")

    def made_by(self) -> str:
        """The major version of the server that made the data."""
        return (self.data / "PG_VERSION").read_text().strip()

    def check_version(self) -> None:
        made_by = self.made_by()
        runs = programs.major_version(self.programs)
        if made_by != runs:
            raise CannotStartError(
                f"The data in {self.data} was made by PostgreSQL {made_by}, this notebook runs {runs}: "
                f"carry it over with manage.py carry_over --old-binaries DIR (the bin folder of version {made_by})."
            )

    def check_secrets(self) -> None:
        """Data without the password of its superuser cannot be opened; a fresh password would not fit it."""
        kept = self.secrets / "keeper"
        if not kept.exists():
            raise CannotStartError(
                f"The data in {self.data} stands there without its passwords ({kept} is gone): "
                f"put that folder back, or move {self.data} away to begin anew."
            )

    def create(self) -> None:
        """Make the data folder under another name first, so that an interrupted start leaves no half of one."""
        aside = Path(tempfile.mkdtemp(prefix="new-", dir=self.data.parent))
        password = aside / "password"
        password.write_text(kept_secret(self.secrets / "keeper"))
        password.chmod(0o600)
        self._give_away(aside, password)
        command = [
            self.programs / "initdb", "--pgdata", aside / "data", "--username", KEEPER,
            "--pwfile", password, "--auth=scram-sha-256", "--encoding=UTF8", "--data-checksums",
            # Both are fixed for the life of the data: another provider lets trigram search lose umlauts,
            # and the usual 16 MB segments make an archive of every minute grow by 23 GB a day.
            "--locale-provider=builtin", "--locale=C.UTF-8", "--wal-segsize=1",
        ]  # fmt: skip
        if not self.durable:
            command.append("--no-sync")
        ended, said = processes.run_to_end(command, account=self.account)
        if ended != 0:
            shutil.rmtree(aside, ignore_errors=True)
            raise CannotStartError(f"The database could not be made in {self.data}: {logs.last_line(said)}")
        (aside / "data").rename(self.data)
        shutil.rmtree(aside)

    def start(self, socket: Path, *, cancelled=lambda: False) -> subprocess.Popen:
        """Start the server and wait until it answers; raises CannotStartError when it ends instead."""
        self._write("postgresql.conf", configuration(socket=socket, durable=self.durable))
        self._write("pg_hba.conf", ACCESS)
        if not (self.data / LOCAL).exists():
            self._write(LOCAL, "")
        with logs.opened(self.log) as log:
            said_before = log.tell()
            server = processes.launch(
                [self.programs / "postgres", "-D", self.data],
                account=self.account,
                end_with=signal.SIGINT,
                cwd="/",
                stdout=log,
                stderr=log,
                # A Ctrl-C in the terminal is for the parent, which ends the pages before the database.
                start_new_session=True,
            )
        answered = processes.wait_until(
            lambda: cancelled() or server.poll() is not None or self.answers(socket), seconds=START_SECONDS
        )
        if cancelled():
            stop(server)
            raise StoppedError
        if not answered or server.poll() is not None:
            stop(server)
            raise CannotStartError(
                f"The database did not start: {logs.last_line(self.log.read_text()[said_before:])}"
            )
        return server

    def answers(self, socket: Path) -> bool:
        try:
            with self.connect(socket) as connection:
                connection.execute("SELECT 1")
        except psycopg.OperationalError:
            return False
        return True

    def connect(self, socket: Path, dbname: str = "postgres") -> psycopg.Connection:
        return psycopg.connect(
            host=str(socket),
            port=5432,
            user=KEEPER,
            password=kept_secret(self.secrets / "keeper"),
            dbname=dbname,
            autocommit=True,
            connect_timeout=5,
        )

    def make_socket_folder(self) -> Path:
        base = Path(tempfile.gettempdir())
        if len(os.fsencode(base)) > LONGEST_SOCKET_FOLDER:
            base = Path("/tmp")  # noqa: S108 - mkdtemp makes a private folder of a new name in it
        folder = Path(tempfile.mkdtemp(prefix="labbook-", dir=base))
        self._give_away(folder)
        return folder

    def end_remains(self) -> None:
        """End what an earlier, killed parent or server left running on this data, and wait until it is gone."""
        left = self._postmaster_left()
        if left is not None:
            processes.send([left], signal.SIGINT)
            processes.wait_until(lambda: not psutil.pid_exists(left) or is_zombie(left), seconds=60)
            # Whoever inherited the dead server may take a moment to collect it; until then its number counts.
            if not processes.wait_until(lambda: not psutil.pid_exists(left), seconds=30):
                raise CannotStartError(
                    f"An earlier database server (process {left}) does not end: end it, then start again."
                )
        workers = processes.working_in(self.data.resolve())
        if not processes.wait_until(lambda: not any(map(processes.is_alive, workers)), seconds=1):
            # Without their parent they can only be in the way of recovery.
            processes.send(workers, signal.SIGKILL)
            processes.wait_until(lambda: not any(map(processes.is_alive, workers)), seconds=10)
        # The number in it may by now belong to any other program, which would keep the server from starting.
        (self.data / "postmaster.pid").unlink(missing_ok=True)

    def _postmaster_left(self) -> int | None:
        try:
            pid = int((self.data / "postmaster.pid").read_text().split("\n", 1)[0])
        except (FileNotFoundError, ValueError):
            return None
        works_here = pid in processes.working_in(self.data.resolve())
        return pid if works_here or is_zombie(pid) else None

    def _write(self, name: str, text: str) -> None:
        path = self.data / name
        path.write_text(text)
        self._give_away(path)

    def _give_away(self, *paths: Path) -> None:
        if self.account:
            for path in paths:
                os.chown(path, self.account.uid, self.account.gid)


def stop(server: subprocess.Popen) -> None:
    """Stop the server cleanly; after a minute without its checkpoint, so that the next start recovers."""
    for number, seconds in ((signal.SIGINT, 60), (signal.SIGQUIT, 10), (signal.SIGKILL, 10)):
        if server.poll() is not None:
            return
        server.send_signal(number)
        processes.wait_until(lambda: server.poll() is not None, seconds=seconds)


def is_zombie(pid: int) -> bool:
    try:
        process = psutil.Process(pid)
        return process.status() == psutil.STATUS_ZOMBIE and process.name() == "postgres"
    except psutil.NoSuchProcess:
        return False
