"""Log files of the children: appended to, and set aside at a start when they have grown large."""

from pathlib import Path

LARGE_BYTES = 10 * 1024 * 1024


def opened(path: Path):
    """The log, to write; ``tell()`` of it is where this start begins."""
    if path.exists() and path.stat().st_size > LARGE_BYTES:
        path.replace(path.with_name(f"{path.name}.1"))
    log = path.open("a")
    path.chmod(0o600)
    return log


def last_line(text: str) -> str:
    """The line that tells most: the last that speaks of an error, else the last."""
    lines = [line.strip() for line in text.splitlines() if line.strip()]
    telling = [line for line in lines if any(word in line.lower() for word in ("fatal", "panic", "error"))]
    return (telling or lines or ["it said nothing"])[-1]
