"""What only a browser shows of sums: figures while typing, the address that follows, and nothing typed lost."""

import pytest

pytestmark = [pytest.mark.browser, pytest.mark.slow]


@pytest.fixture
def window(visit):
    opened = visit("bench")
    yield opened
    assert opened.complaints == []


def _result(page):
    return page.get_by_role("region", name="Result")


def test_figure_follows_the_typing_and_the_address_can_be_passed_on(window, visit):
    page = window.page
    window.go("/sums/air/")
    page.get_by_label("Density with its air", exact=True).press_sequentially("1,180", delay=20)
    page.get_by_label("Density free of air", exact=True).press_sequentially("1,250", delay=20)
    _result(page).get_by_text("5.6 % by volume").first.wait_for()
    assert page.get_by_role("status").inner_text() == "Air content: 5.6 % by volume"
    assert page.evaluate("document.activeElement.id") == "id_air_free_g_ml"

    other = visit("supervisor")
    other.go(page.url.removeprefix(window.notebook))
    assert other.page.get_by_label("Density with its air", exact=True).input_value() == "1,180"
    assert "5.6 % by volume" in _result(other.page).inner_text()


def test_error_comes_and_goes_at_its_field_and_the_caret_stays(window):
    page = window.page
    window.go("/sums/air/?air_free_g_ml=1.25")
    field = page.get_by_label("Density with its air", exact=True)
    field.press_sequentially("1.3", delay=20)
    page.locator("#id_density_g_ml[aria-invalid=true]").wait_for()
    assert "must not exceed density free of air (1.25)" in page.locator("#error-density_g_ml").inner_text()
    # Typing goes on while answers come: none of them may take the caret or a letter away.
    field.fill("")
    field.press_sequentially("1.2000001", delay=60)
    _result(page).get_by_text("4 % by volume").first.wait_for()
    assert field.input_value() == "1.2000001"
    assert page.evaluate("document.activeElement.id") == "id_density_g_ml"
    assert page.locator("[aria-invalid]").count() == 0


def test_choice_counts_at_once(window):
    page = window.page
    window.go("/sums/dosage/?dosage_pct=0,5&a_g=100&b_g=25")
    assert "0.625 g as supplied" in _result(page).inner_text()
    page.get_by_label("Per cent of", exact=True).select_option("component")
    _result(page).get_by_text("0.5 g as supplied").wait_for()
    assert "basis=component" in page.url


def test_what_a_base_fills_in_stays_in_the_address_while_typing(window):
    page = window.page
    window.go("/sums/ratio/")
    start = page.get_by_role("form", name="Fill in from the record")
    start.get_by_label("Base").select_option(index=1)
    start.get_by_role("button", name="Fill in").click()
    page.get_by_text("Filled in from").wait_for()
    page.get_by_label("Component A weighed").fill("200")
    page.wait_for_url("**a_g=200*")
    assert "base=" in page.url
    page.reload()
    assert page.get_by_label("Component A weighed").input_value() == "200"
    assert page.get_by_text("Filled in from").is_visible()


def test_without_script_a_button_works_it_out(visit):
    window = visit("bench", java_script_enabled=False)
    page = window.page
    window.go("/sums/tip-speed/")
    page.get_by_label("Blade", exact=True).fill("40")
    page.get_by_label("Speed", exact=True).fill("2000")
    page.get_by_role("button", name="Work it out").click()
    assert "4.189 m/s" in _result(page).inner_text()


def test_on_paper_stand_what_was_typed_and_what_came_of_it_and_no_button(window):
    page = window.page
    window.go("/sums/tip-speed/?blade_mm=40&rpm=2000")
    page.emulate_media(media="print")
    assert _result(page).get_by_text("4.189 m/s").is_visible()
    assert page.get_by_label("Blade", exact=True).is_visible()
    assert [b.inner_text() for b in page.get_by_role("button").all() if b.is_visible()] == []
