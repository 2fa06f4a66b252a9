"""Science and figures stand alone: every module imports in a fresh interpreter that has no Django and no database."""

import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]
FORBIDDEN = ("django", "rest_framework", "psycopg", "labbook")

SCRIPT = """
import importlib, pkgutil, sys
forbidden = {forbidden!r}
class Blocked:
    def find_spec(self, name, path=None, target=None):
        if name.partition(".")[0] in forbidden:
            raise ImportError("blocked: " + name)
sys.meta_path.insert(0, Blocked())
package = importlib.import_module({package!r})
names = [module.name for module in pkgutil.walk_packages(package.__path__, package.__name__ + ".")]
for name in names:
    importlib.import_module(name)
print(len(names))
"""


def run(script):
    return subprocess.run(
        [sys.executable, "-c", script], cwd=ROOT, capture_output=True, text=True, check=False, timeout=120
    )


@pytest.mark.parametrize("package", ["trials.science", "trials.figures"])
def test_imports_with_django_blocked(package):
    done = run(SCRIPT.format(forbidden=FORBIDDEN, package=package))
    assert done.returncode == 0, done.stderr
    modules = [path for path in (ROOT / package.replace(".", "/")).rglob("*.py") if path.name != "__init__.py"]
    assert int(done.stdout) == len(modules)


def test_the_block_blocks():
    done = run(SCRIPT.format(forbidden=FORBIDDEN, package="trials.science") + "\nimport django\n")
    assert done.returncode != 0
    assert "blocked: django" in done.stderr
