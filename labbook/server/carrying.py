"""Carrying the data of an older major version of the embedded PostgreSQL over to this one."""

import os
import shutil
from contextlib import contextmanager
from dataclasses import replace
from pathlib import Path

from psycopg import sql

from labbook.database import kept_secret

from . import cluster, lock, logs, places, processes, programs, roles
from .cluster import Cluster
from .errors import CannotStartError


def carry_over(data: Path, *, old_binaries: Path, say) -> None:
    """Dump the old data, restore it into new data, compare, and only then change places.

    The old data and the dump stay beside the new data. Raises CannotStartError with the old data untouched.
    """
    own = places.cluster_of(data)
    old = replace(own, programs=old_binaries)
    new = replace(own, data=own.data.with_name("postgres.new"))
    with lock.held(places.lock_file(own), data=data):
        made_by = _check(own, old)
        own.end_remains()
        dump = data / f"carried-over-from-{made_by}.dump"
        say(f"Carrying the notebook over from PostgreSQL {made_by}.")
        before = _read(old, dump)
        after = _write(new, dump)
        if before != after:
            raise CannotStartError(f"The rows differ after carrying over; the old data is untouched, see {new.data}.")
        kept = own.data.with_name(f"postgres-{made_by}")
        own.data.rename(kept)
        new.data.rename(own.data)
    say(f"Carried over {sum(after.values())} rows in {len(after)} tables.")
    say(f"The old data stays in {kept}, a dump of it in {dump}.")


def _read(old: Cluster, dump: Path) -> dict[str, int]:
    with _running(old) as socket:
        # The old server's own program, although a newer one is usually advised: a security fix of 15 (15.20) keeps
        # an inner mark on every column, which the pg_dump of 18.6 takes for an option and no server accepts.
        _tool(old, old.programs / "pg_dump", socket, "--format=custom", "--file", dump)
        return _rows(old, socket)


def _write(new: Cluster, dump: Path) -> dict[str, int]:
    shutil.rmtree(new.data, ignore_errors=True)
    new.create()
    with _running(new) as socket:
        roles.make_all(new, socket)
        _tool(new, new.programs / "pg_restore", socket, "--exit-on-error", "--single-transaction", dump)
        return _rows(new, socket)


def _check(own: Cluster, old: Cluster) -> str:
    if not own.data.exists():
        raise CannotStartError(f"There is no database in {own.data} to carry over.")
    made_by = own.made_by()
    if made_by == programs.major_version(own.programs):
        raise CannotStartError(f"The data in {own.data} is of version {made_by} already: nothing to carry over.")
    for needed in ("postgres", "pg_dump"):
        if not (old.programs / needed).exists():
            raise CannotStartError(f"--old-binaries {old.programs}: there is no program named {needed} in it.")
    if programs.major_version(old.programs) != made_by:
        found = programs.major_version(old.programs)
        raise CannotStartError(
            f"--old-binaries {old.programs} is PostgreSQL {found}; the data was made by {made_by}."
        )
    return made_by


@contextmanager
def _running(which: Cluster):
    socket = which.make_socket_folder()
    try:
        server = which.start(socket)
        try:
            yield socket
        finally:
            cluster.stop(server)
    finally:
        shutil.rmtree(socket, ignore_errors=True)


def _tool(which: Cluster, program: Path, socket: Path, *arguments) -> None:
    command = [program, "--host", socket, "--username", cluster.KEEPER, "--dbname", roles.DATABASE]
    password = {"PGPASSWORD": kept_secret(which.secrets / "keeper")}
    ended, said = processes.run_to_end([*command, *arguments], env=os.environ | password)
    if ended != 0:
        raise CannotStartError(f"{program.name} failed, the old data is untouched: {logs.last_line(said)}")


def _rows(which: Cluster, socket: Path) -> dict[str, int]:
    with which.connect(socket, roles.DATABASE) as connection:
        tables = connection.execute("SELECT tablename FROM pg_tables WHERE schemaname = 'public'").fetchall()
        count = sql.SQL("SELECT count(*) FROM public.{}")
        return {name: connection.execute(count.format(sql.Identifier(name))).fetchone()[0] for (name,) in tables}
