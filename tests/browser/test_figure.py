"""The figure in a real browser: drawn under the content policy, in the colours of the scheme, and on paper as well.

The page is put together here and served with the policy of the settings, so that no notebook has to be started.
"""

import http.server
import json
import threading
from functools import partial
from pathlib import Path

import pytest
from django.conf import settings
from django.template.loader import render_to_string

from trials.figures.ladder import Cup, Ladder, Line, Rung, ladder_figure
from trials.figures.ladder_svg import ladder_svg

pytestmark = [pytest.mark.browser, pytest.mark.slow]

STATIC = Path(__file__).resolve().parents[2] / "static"
SHEETS = "".join(f'<link rel="stylesheet" href="/static/css/{name}.css">' for name in ("tokens", "base"))
PRINT = '<link rel="stylesheet" href="/static/css/print.css" media="print">'
LADDER = Ladder(
    "Dosage, %",
    "Air, % by volume",
    (Cup(0.0, 9.8, "417-1: 9.8"), Cup(0.0, 10.4, "417-2: 10.4")),
    10.1,
    (Line("AR-01", (Cup(0.3, 4.1, "417-5: 4.1"),), (Rung(0.3, 4.1, 3.0, 5.2, "AR-01 0.3 %"),)),),
)


class Answer(http.server.SimpleHTTPRequestHandler):
    """The page at /, its figure at /figure.json, the static files below /static."""

    def __init__(self, *args, page: str, **kwargs):
        self.page = page
        super().__init__(*args, directory=str(STATIC), **kwargs)

    def do_GET(self):
        if self.path == "/":
            return self._say(self.page, "text/html; charset=utf-8")
        if self.path == "/figure.json":
            return self._say(json.dumps(ladder_figure(LADDER)), "application/json")
        self.path = self.path.removeprefix("/static")
        return super().do_GET()

    def _say(self, text: str, kind: str):
        self.send_response(200)
        self.send_header("Content-Type", kind)
        self.end_headers()
        self.wfile.write(text.encode())

    def end_headers(self):
        policy = settings.CONTENT_SECURITY_POLICY["DIRECTIVES"]
        self.send_header("Content-Security-Policy", "; ".join(f"{name} {' '.join(v)}" for name, v in policy.items()))
        super().end_headers()

    def log_message(self, *args):
        pass


@pytest.fixture
def opened(browser, settings):
    """Serve a page with this component and open it: ``opened(figure=…)`` gives the page and its complaints."""
    settings.STORAGES = settings.STORAGES | {
        "staticfiles": {"BACKEND": "django.contrib.staticfiles.storage.StaticFilesStorage"}
    }
    settings.STATIC_URL = "/static/"
    running, contexts = [], []

    def open_page(*, window=None, block=None, **inputs):
        component = render_to_string("components/figure.html", {"id": "figure", "label": "Air", **inputs})
        head = f"<head><title>Air</title>{SHEETS}{PRINT}</head>"
        html = f'<!doctype html><html lang="en">{head}<body>{component}</body></html>'
        server = http.server.ThreadingHTTPServer(("127.0.0.1", 0), partial(Answer, page=html))
        running.append(server)
        threading.Thread(target=server.serve_forever, daemon=True).start()
        context = browser.new_context(**(window or {}))
        contexts.append(context)
        page, complaints = context.new_page(), []
        page.on("console", lambda m: complaints.append(m.text) if m.type in ("error", "warning") else None)
        page.on("pageerror", lambda error: complaints.append(str(error)))
        if block:
            page.route(block, lambda route: route.abort())
        page.goto(f"http://127.0.0.1:{server.server_port}/")
        return page, complaints

    yield open_page
    for context in contexts:
        context.close()
    for server in running:
        server.shutdown()
        server.server_close()


def _drawn(page):
    page.wait_for_selector("[data-figure] .main-svg", timeout=20_000)


def _faults(complaints):
    """Without the icon of the tab, which this page has none of."""
    return [one for one in complaints if "404" not in one]


def test_it_is_drawn_under_the_policy_and_sends_nothing_away(opened):
    page, complaints = opened(figure=ladder_figure(LADDER), paper=ladder_svg(LADDER))
    _drawn(page)
    assert _faults(complaints) == []
    titles = page.eval_on_selector_all(".modebar-btn", "all => all.map(one => one.dataset.title)")
    assert "Download plot as a PNG" in titles
    assert not [title for title in titles if "share" in title.lower() or "cloud" in title.lower()]
    assert page.locator("[data-figure] .errorbar").count() == 1


def test_it_takes_its_figure_from_an_address(opened):
    page, complaints = opened(url="/figure.json")
    _drawn(page)
    assert _faults(complaints) == []
    assert page.locator(".legendtext").all_text_contents() == ["blank", "AR-01"]


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_it_has_the_colours_of_the_scheme_and_follows_a_change(opened, scheme):
    page, _ = opened(figure=ladder_figure(LADDER), window={"color_scheme": scheme})
    _drawn(page)
    fill = "() => getComputedStyle(document.querySelector('.legendtext')).fill"
    body = "() => getComputedStyle(document.body).color"
    assert page.evaluate(fill) == page.evaluate(body)
    page.emulate_media(color_scheme="dark" if scheme == "light" else "light")
    # The policy forbids the evaluation that waiting for a function would need.
    for _ in range(20):
        page.wait_for_timeout(100)
        if page.evaluate(fill) == page.evaluate(body):
            break
    assert page.evaluate(fill) == page.evaluate(body)


def test_paper_gets_the_drawing_and_the_screen_the_figure(opened):
    page, _ = opened(figure=ladder_figure(LADDER), paper=ladder_svg(LADDER))
    _drawn(page)
    assert not page.locator("svg.ladder").is_visible()
    page.emulate_media(media="print")
    assert page.locator("svg.ladder").is_visible()
    assert not page.locator("[data-figure]").is_visible()


def test_without_script_the_drawing_stands_in_its_place(opened):
    page, _ = opened(figure=ladder_figure(LADDER), paper=ladder_svg(LADDER), window={"java_script_enabled": False})
    assert page.locator("svg.ladder").is_visible()
    assert not page.locator("[data-figure]").is_visible()


def test_where_the_library_does_not_load_the_drawing_stays(opened):
    page, complaints = opened(
        figure=ladder_figure(LADDER), paper=ladder_svg(LADDER), block="**/plotly-cartesian.min.js"
    )
    page.wait_for_timeout(800)
    assert page.locator("svg.ladder").is_visible()
    assert [one for one in complaints if "did not load" in one]
