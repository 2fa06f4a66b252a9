"""What only a browser can show of every page: the content policy, foreign requests, accessibility, small screens."""

from pathlib import Path
from urllib.parse import urldefrag, urlparse

import axe_playwright_python
import pytest

from .conftest import Visit

pytestmark = [pytest.mark.browser, pytest.mark.slow]
AXE = Path(axe_playwright_python.__file__).parent / "axe.min.js"
MOST_OF_A_KIND = 2
WIDTHS = (360, 1280, 3840)  # a telephone, the lab PC, the screen on the wall


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
        for link in window.page.eval_on_selector_all(
            "a[href]", "all => all.map(a => new URL(a.getAttribute('href'), location).href)"
        ):
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


@pytest.fixture(scope="module")
def crawled(browser, notebook):
    """The pages an administrator reaches, and what their window complained of on the way."""
    window = Visit(browser, notebook).sign_in("administrator")
    yield _pages(window), window
    window.context.close()


def test_no_page_breaks_the_content_policy_or_calls_elsewhere(crawled):
    pages, window = crawled
    assert len(pages) > 30
    assert window.complaints == []


def test_no_page_has_an_accessibility_fault(crawled):
    """axe-core, WCAG 2.2 A and AA. The policy forbids foreign script, so axe comes in through the debugger."""
    pages, window = crawled
    faults = {}
    for path in pages:
        window.go(path)
        window.page.evaluate(AXE.read_text())
        answer = window.page.evaluate(
            "axe.run({runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']})"
            ".then(found => found.violations.map(v => v.id + ': ' + v.nodes[0].html.slice(0, 160)))"
        )
        if answer:
            faults[path] = answer
    assert faults == {}


def test_no_page_scrolls_sideways_on_any_screen(crawled):
    pages, window = crawled
    wide = []
    for path in pages:
        window.go(path)
        for width in WIDTHS:
            window.page.set_viewport_size({"width": width, "height": 900})
            if window.page.evaluate("document.documentElement.scrollWidth > document.documentElement.clientWidth"):
                wide.append((path, width))
    assert wide == []
