"""What only a browser can show of every page: the content policy, foreign requests, accessibility, small screens."""

from pathlib import Path
from urllib.parse import urldefrag, urlparse

import axe_playwright_python
import pytest

pytestmark = [pytest.mark.browser, pytest.mark.slow]
AXE = Path(axe_playwright_python.__file__).parent / "axe.min.js"
MOST_OF_A_KIND = 2


def _kind(path: str) -> str:
    """Addresses that differ only in a code or number are one kind of page."""
    return "/".join("*" if any(map(str.isdigit, part)) else part for part in path.strip("/").split("/"))


def _pages(window) -> list[str]:
    """Every page that links lead to, a few of each kind."""
    seen: dict[str, int] = {}
    waiting, found = ["/"], []
    while waiting:
        path = waiting.pop(0)
        window.go(path)
        found.append(path)
        for link in window.page.eval_on_selector_all("a[href]", "all => all.map(a => a.href)"):
            address = urlparse(urldefrag(link).url)
            if not link.startswith(window.notebook) or address.path in found + waiting:
                continue
            if address.path.endswith((".csv", ".pdf", ".jpg", ".json")) or address.query:
                continue
            kind = _kind(address.path)
            seen[kind] = seen.get(kind, 0) + 1
            if seen[kind] <= MOST_OF_A_KIND:
                waiting.append(address.path)
    return found


def test_no_page_breaks_the_content_policy_or_calls_elsewhere(visit):
    window = visit("administrator")
    pages = _pages(window)
    assert len(pages) > 15
    assert window.complaints == []


def test_no_page_has_an_accessibility_fault(visit):
    """axe-core, WCAG 2.2 A and AA. The policy forbids foreign script, so axe comes in through the debugger."""
    window = visit("administrator")
    faults = {}
    for path in _pages(window):
        window.go(path)
        window.page.evaluate(AXE.read_text())
        answer = window.page.evaluate(
            "axe.run({runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']})"
            ".then(found => found.violations.map(v => v.id + ': ' + v.nodes[0].html.slice(0, 160)))"
        )
        if answer:
            faults[path] = answer
    assert faults == {}


@pytest.mark.parametrize("width", [360, 1280, 3840])
def test_no_page_scrolls_sideways(visit, width):
    window = visit("administrator")
    pages = _pages(window)
    window.page.set_viewport_size({"width": width, "height": 900})
    wide = []
    for path in pages:
        window.go(path)
        if window.page.evaluate("document.documentElement.scrollWidth > document.documentElement.clientWidth"):
            wide.append(path)
    assert wide == []
