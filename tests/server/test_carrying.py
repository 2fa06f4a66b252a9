"""Carrying data over from an older PostgreSQL, with a real one where the machine has it."""

import os
from contextlib import contextmanager
from dataclasses import replace
from pathlib import Path

import pytest

from labbook.database import kept_secret
from labbook.server import cluster, places, processes, programs, roles
from tests.server.running import Place, is_one_line

pytestmark = pytest.mark.slow

OLDER = sorted(Path("/usr/lib/postgresql").glob("1[567]/bin/postgres"))


@pytest.fixture
def place(monkeypatch):
    made = Place()
    monkeypatch.setenv("LABBOOK_STATE", str(made.root / "state"))
    yield made
    made.remove()


@contextmanager
def running(which):
    socket = which.make_socket_folder()
    server = which.start(socket)
    try:
        yield socket
    finally:
        cluster.stop(server)
        socket.rmdir()


def made_by(programs_folder, place):
    """A cluster as an earlier notebook left it, made by the programs of another version."""
    places.make_writable(place.data)
    made = replace(places.cluster_of(place.data), programs=programs_folder)
    password = made.data.with_name("password")
    password.write_text(kept_secret(made.secrets / "keeper"))
    if made.account:
        made.data.mkdir(0o700)
        os.chown(made.data, made.account.uid, made.account.gid)
        os.chown(password, made.account.uid, made.account.gid)
    command = [
        programs_folder / "initdb", "--pgdata", made.data, "--username", cluster.KEEPER, "--pwfile", password,
        "--auth=scram-sha-256", "--encoding=UTF8", "--locale=C.UTF-8", "--no-sync",
    ]  # fmt: skip
    ended, said = processes.run_to_end(command, account=made.account)
    assert ended == 0, said
    password.unlink()
    return made


def write_record(made):
    with running(made) as socket:
        roles.make_all(made, socket)
        with made.connect(socket, roles.DATABASE) as connection:
            connection.execute(f"SET ROLE {roles.OWNER}")
            connection.execute("CREATE TABLE lesson (id int PRIMARY KEY, said text NOT NULL)")
            connection.execute("INSERT INTO lesson VALUES (1, 'Öl schwimmt auf'), (2, 'stir slowly')")
            connection.execute(f"GRANT SELECT ON lesson TO {roles.APPLICATION}")


@pytest.mark.skipif(not OLDER, reason="no older PostgreSQL on this machine to carry data over from")
def test_record_is_the_same_after_it(place):
    old_programs = OLDER[0].parent
    version = programs.major_version(old_programs)
    write_record(made_by(old_programs, place))

    done = place.command("carry_over", "--data", place.data, "--old-binaries", old_programs)
    ended, said = processes.run_to_end(done, env=place.environment())
    assert ended == 0, said
    assert "Carried over 2 rows in 1 tables." in said

    new = places.cluster_of(place.data)
    new.check_version()
    assert new.data.with_name(f"postgres-{version}").is_dir()
    assert (place.data / f"carried-over-from-{version}.dump").stat().st_size > 0
    with running(new) as socket, new.connect(socket, roles.DATABASE) as connection:
        assert connection.execute("SELECT * FROM lesson ORDER BY id").fetchall() == [
            (1, "Öl schwimmt auf"),
            (2, "stir slowly"),
        ]
        rights = (
            "SELECT tableowner, has_table_privilege(%s, 'lesson', 'SELECT') FROM pg_tables WHERE tablename = 'lesson'"
        )
        assert connection.execute(rights, [roles.APPLICATION]).fetchone() == (roles.OWNER, True)


def refused(place, *arguments):
    ended, said = processes.run_to_end(
        place.command("carry_over", "--data", place.data, *arguments), env=place.environment()
    )
    assert ended == 2
    assert is_one_line(said), said
    return said


def test_nothing_to_carry_over(place):
    places.make_writable(place.data)
    assert "There is no database in" in refused(place, "--old-binaries", "/usr/bin")


def test_folder_without_the_programs(place):
    places.make_writable(place.data)
    data = places.cluster_of(place.data).data
    data.mkdir()
    (data / "PG_VERSION").write_text("15\n")
    assert "there is no program named postgres in it" in refused(place, "--old-binaries", place.root)


def test_data_of_this_version(place):
    places.make_writable(place.data)
    own = places.cluster_of(place.data)
    own.data.mkdir()
    (own.data / "PG_VERSION").write_text(programs.major_version(own.programs) + "\n")
    assert "nothing to carry over" in refused(place, "--old-binaries", own.programs)
