"""The typesetter, a program of its own: what it remembers from page to page, some 300 MB, goes with it.

``python typesetting.py SOURCE SECONDS``: the content as JSON comes in, the PDF goes out, a PDF/A-2b and PDF/UA-1.
"""

import json
import re
import sys
from pathlib import Path

import typst

STANDARDS = ["a-2b", "ua-1"]
# What the typefaces that come with Typst can show; anything else is named by its number where no font has it.
SHOWN = re.compile(
    r"[^\n -~\u00a0-\u017f\u0391-\u03a1\u03a3-\u03c9\u0410-\u044f"
    r"\u2009\u2013\u2014\u2018-\u201e\u2026\u2212\u2264\u2265\u00d7]"
)


def typeset(source: Path, content: dict, *, seconds: int) -> bytes:
    """``seconds`` since 1970 are when it was made."""
    # Typst's own typefaces come first, those of the machine only for scripts that they do not have.
    fonts = typst.Fonts(include_system_fonts=True)

    def compiled(content):
        return typst.compile(
            source,
            root=source.parent,
            font_paths=fonts,
            sys_inputs={"report": json.dumps(content)},
            pdf_standards=STANDARDS,
            timestamp=seconds,
        )

    try:
        return compiled(content)
    except typst.TypstError as error:
        if "could not be displayed" not in error.message:
            raise
        return compiled(showable(content))


def showable(value):
    """Every character that may have no shape is told by its number: archivable PDF refuses a page with a hole."""
    if isinstance(value, str):
        return SHOWN.sub(lambda match: f"[U+{ord(match[0]):04X}]", value)
    if isinstance(value, dict):
        return {key: showable(item) for key, item in value.items()}
    if isinstance(value, list):
        return [showable(item) for item in value]
    return value


if __name__ == "__main__":
    sys.stdout.buffer.write(typeset(Path(sys.argv[1]), json.load(sys.stdin), seconds=int(sys.argv[2])))
