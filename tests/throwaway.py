"""A PostgreSQL server for one run of the tests, begun from a migrated copy that earlier runs kept."""

import hashlib
import os
import shutil
import tempfile
from pathlib import Path

from labbook.database import ROOT, entry
from labbook.server import cluster, places, programs
from labbook.server.accounts import server_account

KEPT_COPIES = 3


class ThrowawayServer:
    """Made by ``start``, gone after ``end``; ``connection`` is its superuser's, ``database`` its settings entry."""

    def __init__(self):
        account = server_account()
        self._folder = Path(tempfile.mkdtemp(prefix="labbook-tests-"))
        if account:
            self._folder.chmod(0o711)
        self._cluster = cluster.Cluster(
            data=self._folder / "data",
            programs=programs.copied_to(places.state_folder()) if account else programs.wheel_folder(),
            secrets=self._folder / "secrets",
            account=account,
            durable=False,
        )
        self._kept = _copies() / _state_of_migrations()
        self._server = self._socket = None

    def start(self) -> None:
        if self._kept.exists():
            self._copy(self._kept, self._folder)
        else:
            self._cluster.create()
        self._socket = self._cluster.make_socket_folder()
        self._run()
        self.database = entry(host=str(self._socket), port=5432, dbname="", user="")

    def keep(self) -> None:
        """Keep what is migrated for the next run: migrating takes longer than most runs."""
        if self._kept.exists():
            return
        self._stop()
        self._kept.parent.mkdir(mode=0o700, parents=True, exist_ok=True)
        aside = Path(tempfile.mkdtemp(dir=self._kept.parent))
        self._copy(self._folder, aside)
        try:
            aside.rename(self._kept)
        except OSError:
            shutil.rmtree(aside)  # another run was first
        by_age = sorted(self._kept.parent.iterdir(), key=lambda path: path.stat().st_mtime)
        for old in by_age[:-KEPT_COPIES]:
            shutil.rmtree(old, ignore_errors=True)
        self._run()

    def end(self) -> None:
        self._stop()
        for folder in (self._socket, self._folder):
            if folder:
                shutil.rmtree(folder, ignore_errors=True)

    def _run(self) -> None:
        self._server = self._cluster.start(self._socket)
        self.connection = self._cluster.connect(self._socket)

    def _stop(self) -> None:
        if self._server:
            self.connection.close()
            cluster.stop(self._server)
            self._server = None

    def _copy(self, source: Path, target: Path) -> None:
        for name in ("data", "secrets"):
            shutil.copytree(source / name, target / name)
        if self._cluster.account:
            data = target / "data"
            for path in (data, *data.rglob("*")):
                os.chown(path, self._cluster.account.uid, self._cluster.account.gid)


def _copies() -> Path:
    return Path(os.environ.get("XDG_CACHE_HOME") or Path.home() / ".cache") / "labbook-tests"


def _state_of_migrations() -> str:
    """A digest over everything that decides what a migrated database contains."""
    digest = hashlib.sha256()
    for path in (ROOT / "requirements.txt", *sorted((ROOT / "trials/migrations").glob("*.py"))):
        digest.update(path.name.encode() + path.read_bytes())
    digest.update((ROOT / "labbook/server/cluster.py").read_bytes())
    return digest.hexdigest()[:16]
