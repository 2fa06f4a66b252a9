"""What a person does on any page of the notebook: choose, fill in, keep, and read off a table."""

import re

_ROWS = """table => {
  const text = cell => cell.textContent.replace(/\\s+/g, " ").trim();
  const heads = [...table.tHead.rows[0].cells].map(text);
  const named = row => Object.fromEntries([...row.cells].map((cell, place) => [heads[place], text(cell)]));
  return [...table.tBodies[0].rows].map(named);
}"""


def choose(window, label: str, starts: str, within=None) -> None:
    """Take the first choice whose words begin so."""
    field = window.field(label, within)
    fits = [o for o in field.locator("option").all() if o.text_content().strip().startswith(starts)]
    assert fits, f"{label} offers nothing that begins with “{starts}”: {field.inner_text()}"
    field.select_option(fits[0].get_attribute("value"))


def fill(window, typed: dict[str, str], within=None) -> None:
    for label, text in typed.items():
        window.field(label, within).fill(text)


def press(window, button: str, within=None) -> None:
    """Press it; the page that follows must not come back with a problem."""
    submit(window, button, within)
    problem = window.page.locator("[data-error-summary]")
    assert not problem.count(), f"{window.page.url}: {problem.inner_text()}"


def submit(window, button: str, within=None) -> None:
    place = within or window.page.get_by_role("main")
    with window.page.expect_navigation():
        place.get_by_role("button", name=button, exact=True).click()


def follow(window, link: str, within=None) -> None:
    place = within or window.page.get_by_role("main")
    with window.page.expect_navigation():
        place.get_by_role("link", name=link, exact=True).first.click()


def rows_of(table) -> list[dict[str, str]]:
    """A table's rows by the heads of its columns, those folded away too."""
    return table.evaluate(_ROWS)


def table_called(window, name: str):
    return window.page.locator(f'table[aria-label="{name}"]')


def region(window, name: str):
    return window.page.get_by_role("region", name=name)


def content(window) -> str:
    return re.sub(r"\s+", " ", window.page.get_by_role("main").inner_text())


def figure(text: str) -> float | None:
    """A number as the pages print it; None for a dash."""
    plain = text.replace("\u2212", "-").replace("\u2009", "").replace("\u00a0", "").strip()
    return None if plain in ("", "–") else float(plain)
