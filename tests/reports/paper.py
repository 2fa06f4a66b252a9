"""Reading a PDF back, with poppler's programs."""

import os
import shutil
import subprocess

import pytest


def pages_of(pdf: bytes) -> list[str]:
    """The text of each page, lines joined."""
    text = _poppler("pdftotext", "-enc", "UTF-8", "-", "-", pdf=pdf)
    return [" ".join(page.split()) for page in text.removesuffix("\f").split("\f")]


def text_of(pdf: bytes) -> str:
    return " ".join(pages_of(pdf))


def facts_of(pdf: bytes) -> dict[str, str]:
    """What the file says of itself: "Page size", "Tagged", "Title"…"""
    lines = (line.partition(":") for line in _poppler("pdfinfo", "-", pdf=pdf).splitlines())
    return {name: value.strip() for name, _, value in lines}


def pictures_in(pdf: bytes) -> int:
    return len(_poppler("pdfimages", "-list", "-", pdf=pdf).splitlines()) - 2


def _poppler(program: str, *arguments: str, pdf: bytes) -> str:
    if shutil.which(program) is None:
        message = f"{program} (poppler-utils) is not installed: no PDF can be read back"
        if os.environ.get("CI"):
            pytest.fail(message)
        pytest.skip(message)
    return subprocess.run([program, *arguments], input=pdf, capture_output=True, check=True).stdout.decode()
