import os
from pathlib import Path

import pytest

from labbook.static_files import collect_changed


@pytest.fixture
def style_sheet(tmp_path, settings):
    source = tmp_path / "source"
    source.mkdir()
    (source / "page.css").write_text("a{color:red}")
    settings.STATICFILES_DIRS = [source]
    settings.STATICFILES_FINDERS = ["django.contrib.staticfiles.finders.FileSystemFinder"]
    settings.STATIC_ROOT = tmp_path / "collected"
    # The finder of the settings before would otherwise be asked again.
    from django.contrib.staticfiles import finders

    finders.get_finder.cache_clear()
    yield source / "page.css"
    finders.get_finder.cache_clear()


def test_collects_once(style_sheet, settings):
    assert collect_changed() is True
    assert collect_changed() is False
    assert Path(settings.STATIC_ROOT, "page.css").read_text() == "a{color:red}"


def test_collects_again_after_a_change(style_sheet, settings):
    collect_changed()
    style_sheet.write_text("a{color:tan}")
    # Same length: only the time tells.
    os.utime(style_sheet, ns=(0, 1_000_000_000))
    assert collect_changed() is True
    assert Path(settings.STATIC_ROOT, "page.css").read_text() == "a{color:tan}"


def test_collects_again_after_an_interruption(style_sheet, settings):
    collect_changed()
    Path(settings.STATIC_ROOT, ".collected").unlink()
    assert collect_changed() is True
