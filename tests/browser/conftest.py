"""A real Chromium on a real notebook: started by the command of the README, with the demo, once for all tests here.

Everything is package-scoped: Playwright keeps an event loop of its own, which must be gone before other tests use the
database in this process.
"""

import os
import re
import shutil
import socket
import subprocess
import sys
from pathlib import Path

import pytest
from playwright.sync_api import sync_playwright

from trials.demo.sign_ins import SIGN_INS

ROOT = Path(__file__).resolve().parents[2]
PATIENCE_S = 420
NO_BROWSER = "No Chromium on this machine: the browser tests did NOT run. Install one (Debian: apt install chromium)."


@pytest.fixture(scope="package")
def chromium():
    found = next(filter(None, map(shutil.which, ("chromium", "chromium-browser", "google-chrome"))), None)
    if found:
        return found
    if os.environ.get("CI"):
        pytest.fail(NO_BROWSER)
    pytest.skip(NO_BROWSER)


@pytest.fixture(scope="package")
def notebook(chromium, tmp_path_factory):
    """The address of a demo notebook, started for the tests; LABBOOK_TEST_ADDRESS names a running one instead."""
    if os.environ.get("LABBOOK_TEST_ADDRESS"):
        yield os.environ["LABBOOK_TEST_ADDRESS"].rstrip("/")
        return
    folder = tmp_path_factory.mktemp("notebook")
    command = [
        sys.executable,
        "manage.py",
        "up",
        "--demo",
        "--data",
        str(folder / "data"),
        "--port",
        str(_free_port()),
    ]
    with (folder / "said.txt").open("w+") as said:
        parent = subprocess.Popen(command, cwd=ROOT, stdout=said, stderr=subprocess.STDOUT, env=_environment())
        try:
            yield _address(parent, Path(said.name))
        finally:
            parent.terminate()
            parent.wait(60)


def _environment() -> dict[str, str]:
    inherited = {k: v for k, v in os.environ.items() if not k.startswith(("LABBOOK_", "DATABASE_URL"))}
    return inherited | {"PYTHONUNBUFFERED": "1"}


def _free_port() -> int:
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        return probe.getsockname()[1]


def _address(parent, said: Path) -> str:
    for _ in range(PATIENCE_S * 2):
        found = re.search(r"http://[\w.:]+/", said.read_text())
        if found:
            return found[0].rstrip("/")
        try:
            parent.wait(0.5)
        except subprocess.TimeoutExpired:
            continue
        break
    raise RuntimeError(f"The notebook did not start:\n{said.read_text()}")


@pytest.fixture(scope="package")
def browser(chromium):
    with sync_playwright() as playwright:
        opened = playwright.chromium.launch(
            executable_path=chromium, args=["--no-sandbox", "--disable-gpu", "--disable-background-networking"]
        )
        yield opened
        opened.close()


class Visit:
    """One person's window. Violations of the content policy and requests to elsewhere are collected."""

    def __init__(self, browser, notebook: str, **window):
        self.notebook = notebook
        self.context = browser.new_context(viewport={"width": 1280, "height": 1024}, **window)
        self.page = self.context.new_page()
        self.page.set_default_timeout(20_000)
        self.complaints: list[str] = []
        self.page.on("console", lambda message: self._note(message.text, message.type == "error"))
        self.page.on("pageerror", lambda error: self._note(str(error), True))
        self.page.on("request", lambda request: self._note(request.url, not self._own(request.url)))

    def _own(self, url: str) -> bool:
        return url.startswith((self.notebook, "data:", "blob:"))

    def _note(self, text: str, bad: bool) -> None:
        if bad:
            self.complaints.append(f"{self.page.url}: {text}")

    def field(self, label: str, within=None):
        """The input whose label begins so, in the content of the page or in a part of it."""
        return (within or self.page.get_by_role("main")).get_by_label(re.compile(rf"^{re.escape(label)}")).first

    def go(self, path: str):
        return self.page.goto(self.notebook + path)

    def sign_in(self, role: str) -> "Visit":
        name, password = next((name, password) for known, name, password in SIGN_INS if known == role)
        self.password = password
        self.go("/sign-in/")
        self.page.get_by_label("Sign-in name").first.fill(name)
        self.page.get_by_label("Password").first.fill(password)
        self.page.get_by_role("button", name="Sign in").click()
        self.page.wait_for_url(self.notebook + "/")
        return self


@pytest.fixture
def visit(browser, notebook):
    """Open windows for people: ``visit("bench")``; each is its own browser profile."""
    opened: list[Visit] = []

    def open_window(role: str | None = None, **window) -> Visit:
        opened.append(Visit(browser, notebook, **window))
        return opened[-1].sign_in(role) if role else opened[-1]

    yield open_window
    for one in opened:
        one.context.close()
