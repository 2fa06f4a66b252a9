"""Collecting the static files once per change: compressing them takes longer than all else at a start."""

import hashlib
from importlib.metadata import version
from pathlib import Path

from django.conf import settings
from django.contrib.staticfiles.finders import get_finders
from django.core.management import call_command


def collect_changed() -> bool:
    """Collect and compress, unless what was collected last is still what there is; says whether it did."""
    mark = Path(settings.STATIC_ROOT) / ".collected"
    state = _state_of_sources()
    if mark.exists() and mark.read_text() == state:
        return False
    mark.unlink(missing_ok=True)
    call_command("collectstatic", verbosity=0, interactive=False, clear=True)
    mark.write_text(state)
    return True


def _state_of_sources() -> str:
    digest = hashlib.sha256()
    for package in ("django", "whitenoise"):
        digest.update(f"{package} {version(package)}\n".encode())
    for finder in get_finders():
        for name, storage in sorted(finder.list([]), key=lambda found: found[0]):
            kept = Path(storage.path(name)).stat()
            digest.update(f"{name} {kept.st_size} {kept.st_mtime_ns}\n".encode())
    return digest.hexdigest()
