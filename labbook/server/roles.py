"""The two roles of the record: an owner, who migrates, and the application, who cannot alter what is kept."""

from pathlib import Path

import psycopg
from psycopg import sql

from labbook.database import kept_secret

from .cluster import Cluster

DATABASE = "labbook"
OWNER = "labbook_owner"
APPLICATION = "labbook_application"
PLAIN = "LOGIN NOSUPERUSER NOCREATEROLE NOREPLICATION NOBYPASSRLS"


def make_all(cluster: Cluster, socket: Path) -> None:
    """Both roles with the passwords kept in the data folder, and the database; what exists is left as it is."""
    with cluster.connect(socket) as connection:
        for name, kept in ((OWNER, "owner"), (APPLICATION, "application")):
            make_role(connection, name, kept_secret(cluster.secrets / kept))
        make_database(connection)


def make_role(connection: psycopg.Connection, name: str, password: str, *, may_create_databases=False) -> None:
    """Make the role or, when it exists already, give it these rights and this password again."""
    known = connection.execute("SELECT 1 FROM pg_roles WHERE rolname = %s", [name]).fetchone()
    statement = sql.SQL("{verb} ROLE {name} {rights} PASSWORD {password}").format(
        verb=sql.SQL("ALTER" if known else "CREATE"),
        name=sql.Identifier(name),
        rights=sql.SQL(f"{PLAIN} {'CREATEDB' if may_create_databases else 'NOCREATEDB'}"),
        password=sql.Literal(password),
    )
    connection.execute(statement)


def make_database(connection: psycopg.Connection) -> None:
    """The notebook's database: its owner may do all in it, the application only what it is granted."""
    if not connection.execute("SELECT 1 FROM pg_database WHERE datname = %s", [DATABASE]).fetchone():
        connection.execute(sql.SQL("CREATE DATABASE {} OWNER {}").format(*map(sql.Identifier, (DATABASE, OWNER))))
    connection.execute(sql.SQL("REVOKE ALL ON DATABASE {} FROM PUBLIC").format(sql.Identifier(DATABASE)))
    connection.execute(
        sql.SQL("GRANT CONNECT ON DATABASE {} TO {}").format(*map(sql.Identifier, (DATABASE, APPLICATION)))
    )
