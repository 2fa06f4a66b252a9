"""The embedded server's own configuration, written anew at each start."""

import sys
from pathlib import Path

import psutil

MEGABYTE = 1024 * 1024

# Passwords for everybody, the superuser included, and no network at all.
ACCESS = "local all all scram-sha-256\nlocal replication all scram-sha-256\n"

LOCAL = "local.conf"

SETTINGS = """\
# Written by manage.py up at each start. What this machine needs otherwise goes into {local}.
listen_addresses = ''
port = 5432
unix_socket_directories = '{socket}'
unix_socket_permissions = 0700
password_encryption = scram-sha-256
max_connections = 60

shared_buffers = {shared_buffers}MB
work_mem = 16MB
maintenance_work_mem = 128MB
random_page_cost = 1.1
# On the two cores of a laboratory's machine both make web queries slower.
jit = off
max_parallel_workers_per_gather = 0

max_wal_size = 1GB
checkpoint_timeout = 15min
{durability}{recovery}
timezone = 'UTC'
log_timezone = 'UTC'
log_checkpoints = off
include = '{local}'
"""

# For a database that is thrown away, such as that of the tests.
NOT_DURABLE = "fsync = off\nsynchronous_commit = off\nfull_page_writes = off\n"


# After a crash one call instead of one for each of some two thousand files: on a busy disk seconds of waiting.
SYNC_AT_ONCE = "recovery_init_sync_method = syncfs\n"


def configuration(*, socket: Path, durable: bool) -> str:
    return SETTINGS.format(
        local=LOCAL,
        socket=socket,
        shared_buffers=shared_buffers_mb(memory()) if durable else 128,
        durability="" if durable else NOT_DURABLE,
        recovery=SYNC_AT_ONCE if sys.platform == "linux" else "",
    )


def shared_buffers_mb(memory_bytes: int) -> int:
    """A quarter of the memory, at least the server's own default and at most 2 GB."""
    return max(128, min(2048, memory_bytes // 4 // MEGABYTE))


def memory() -> int:
    """The memory this process may use: a container's limit where there is one, else the machine's."""
    total = psutil.virtual_memory().total
    try:
        limit = Path("/sys/fs/cgroup/memory.max").read_text().strip()
    except OSError:
        return total
    return min(total, int(limit)) if limit.isdigit() else total
