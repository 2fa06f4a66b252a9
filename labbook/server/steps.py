"""The steps between the database and the pages, each a management command of its own."""

import json
import os
import subprocess
import sys
from pathlib import Path

from labbook.database import ROOT

from . import processes
from .errors import CannotStartError, StoppedError

# What only the owner's steps, or only the making of the first person, may know.
KEPT_FROM_THE_PAGES = (
    "LABBOOK_AS",
    "LABBOOK_OWNER_URL",
    "LABBOOK_ADMIN_NAME",
    "LABBOOK_ADMIN_SIGN_IN",
    "LABBOOK_ADMIN_PASSWORD",
)


def pages_environment(data: Path) -> dict:
    kept = {name: value for name, value in os.environ.items() if name not in KEPT_FROM_THE_PAGES}
    return kept | {"LABBOOK_DATA": str(data)}


def run_step(name: str, *, environment: dict, cancelled, read=False) -> str:
    """Run ``manage.py NAME`` to its end; returns what it printed if ``read``."""
    step = processes.launch(
        [sys.executable, ROOT / "manage.py", name],
        cwd=ROOT,
        env=environment,
        stdout=subprocess.PIPE if read else None,
        text=True,
    )
    printed = ""
    while True:
        try:
            printed, _ = step.communicate(timeout=0.2)
            break
        except subprocess.TimeoutExpired:
            if cancelled():
                step.terminate()
    if cancelled():
        raise StoppedError
    if step.returncode != 0:
        raise CannotStartError(f"manage.py {name} failed; its message is above.")
    return printed or ""


def people_after_preparing(*, environment: dict, cancelled) -> int:
    """Bring the database up to date; returns how many people can sign in."""
    printed = run_step("prepare", environment=environment, cancelled=cancelled, read=True)
    return json.loads(printed.strip().splitlines()[-1])["people"]
