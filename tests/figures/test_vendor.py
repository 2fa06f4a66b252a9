"""The vendored chart library is the file that its note says it is."""

import hashlib
import re
from pathlib import Path

FOLDER = Path(__file__).resolve().parents[2] / "static/vendor/plotly"


def test_file_version_and_digest_are_those_of_the_note():
    note = (FOLDER / "README.md").read_text()
    digest, name = re.search(r"SHA-256 ([0-9a-f]{64})  (\S+)", note).groups()
    content = (FOLDER / name).read_bytes()
    assert hashlib.sha256(content).hexdigest() == digest
    version = re.search(r"Version (\S+),", note)[1]
    assert f"plotly.js (cartesian - minified) v{version}".encode() in content[:200]
    assert "MIT" in (FOLDER / "LICENSE").read_text()
