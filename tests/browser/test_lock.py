"""The screen locks over the page, and comes back to the same field with what was typed."""

import pytest

from trials.demo.sign_ins import SIGN_INS

pytestmark = [pytest.mark.browser, pytest.mark.slow]
PASSWORD = next(password for role, _, password in SIGN_INS if role == "bench")


def test_lock_hides_the_page_and_gives_it_back(visit):
    window = visit("bench")
    page = window.page
    window.go("/bases/new/")
    name = window.field("Name")
    name.fill("Half a na")
    page.get_by_role("button", name="lock", exact=True).click()
    screen = page.locator("#lock-screen")
    screen.wait_for(state="visible")
    assert not name.is_visible()

    screen.locator("#lock-password").fill("not my password")
    screen.get_by_role("button", name="Go on").click()
    screen.get_by_text("do not go together").wait_for()
    assert not name.is_visible()

    screen.locator("#lock-password").fill(PASSWORD)
    screen.get_by_role("button", name="Go on").click()
    screen.wait_for(state="hidden")
    assert name.input_value() == "Half a na"
    (refused,) = window.complaints  # the one wrong password, which the browser notes
    assert "403 (Forbidden)" in refused


def test_locked_session_shows_nothing_elsewhere(visit):
    window = visit("bench")
    window.go("/bases/")
    window.page.get_by_role("button", name="lock", exact=True).click()
    window.page.locator("#lock-screen").wait_for(state="visible")
    window.go("/bases/")
    assert window.page.url.startswith(f"{window.notebook}/locked/")
    assert "EF-21" not in window.page.content()


def test_next_person_finds_nothing_of_the_last(visit):
    window = visit("bench")
    window.go("/bases/new/")
    window.field("Name").fill("Only mine")
    window.page.get_by_role("button", name="change person").first.click()
    window.page.wait_for_url("**/sign-in/**")
    window.page.go_back()
    window.page.wait_for_url("**/sign-in/**")
    assert "Only mine" not in window.page.content()
    # htmx notes the address of the page that it stands on, this one; nothing else is kept.
    kept = window.page.evaluate("({...localStorage, ...sessionStorage})")
    assert kept.keys() <= {"htmx-current-path-for-history"}
    assert all(value.startswith("/sign-in/") for value in kept.values())
