"""What only a browser shows of the questions about bubbles: the answer while asking, and what goes with a finding."""

import pytest

pytestmark = [pytest.mark.browser, pytest.mark.slow]


@pytest.fixture
def window(visit):
    opened = visit("bench")
    yield opened
    assert opened.complaints == []


def _answer(page, question: str, answer: str):
    page.get_by_role("group", name=question).get_by_label(answer, exact=True).check()


def _plan_blanks(window) -> None:
    """The smallest series there can be: two blanks and a clean check."""
    window.go("/series/new/")
    main = window.page.get_by_role("main")
    main.get_by_label("Title").fill("Where do the bubbles come from?")
    for label in ("Base and revision", "Round"):
        main.get_by_label(label).select_option(index=1)
    main.get_by_label("Mix of").fill("150")
    main.get_by_role("button", name="Plan it").click()
    main.get_by_role("heading", level=1, name="Where do the bubbles come from?").wait_for()


def _found(page):
    return page.get_by_role("region", name="What it may be")


def test_cause_follows_the_answers_and_back_again(window):
    page = window.page
    window.go("/bubbles/")
    _answer(page, "When do they appear?", "there from the first minute")
    _found(page).get_by_text("tell the causes apart first").wait_for()
    _answer(page, "Is A free of them until B is mixed in?", "yes")
    _found(page).get_by_text("No defoamer will help against mixing.").wait_for()
    assert page.get_by_role("status").inner_text() == "No defoamer will help against mixing."
    # The same button a second time counts as well.
    _answer(page, "Is A free of them until B is mixed in?", "no")
    _found(page).get_by_text("A defoamer or air-release additive is worth trying.").wait_for()
    _answer(page, "Is A free of them until B is mixed in?", "yes")
    _found(page).get_by_text("No defoamer will help against mixing.").wait_for()
    page.reload()
    assert "No defoamer will help against mixing." in _found(page).inner_text()


def test_without_script_a_button_weighs_the_answers(visit):
    page = visit("bench", java_script_enabled=False).page
    page.goto(page.url + "bubbles/")
    _answer(page, "How do they look?", "craters, with a speck in the middle")
    page.get_by_role("button", name="Weigh the answers").click()
    assert "No defoamer will help against contamination." in _found(page).inner_text()


def test_finding_is_kept_with_a_cup(window):
    """The answers given a moment ago go along, though the form that keeps them was there before."""
    page = window.page
    _plan_blanks(window)
    page.locator("a[href^='/trials/']").first.click()
    page.get_by_role("link", name="Find the cause of bubbles").click()
    _answer(page, "Where are they?", "in rows or spots, over pores and cracks")
    _found(page).get_by_text("No defoamer will help against outgassing.").wait_for()
    keep = page.get_by_role("form", name="Keep it with cup")
    keep.get_by_label("You take it for").select_option("outgassing")
    keep.get_by_label("Remark").fill("follows the joints of the slab")
    keep.get_by_role("button", name="Keep the finding").click()
    row = page.get_by_role("row").filter(has_text="follows the joints of the slab")
    assert "Where are they? in rows or spots, over pores and cracks" in row.inner_text()
    assert "outgassing of the substrate" in row.inner_text()
