"""A two-component base entered by hand, with a deliberate mistake that the page must name."""

import pytest

pytestmark = [pytest.mark.browser, pytest.mark.slow]


def _material(page, code, name, function, density, group=None, equivalent=None):
    page.get_by_label("Code").fill(code)
    page.get_by_label("Name", exact=True).fill(name)
    page.get_by_label("Function").select_option(function)
    page.get_by_label("Density").fill(density)
    page.get_by_label("Non-volatile content").fill("100")
    page.get_by_label("VOC").fill("0")
    if group:
        page.get_by_label("Group, row 1").select_option(group)
        page.get_by_label("Value, row 1").fill(equivalent)
    page.get_by_role("button", name="Keep").click()
    page.get_by_role("heading", level=1, name=code).wait_for()


def test_mistake_in_the_mixing_ratio_is_reported(visit):
    window = visit("bench")
    page = window.page
    for row in (
        ("EP-901", "Liquid epoxy resin", "binder", "1,16", "epoxide", "190"),
        ("FI-901", "Quartz flour", "filler", "2.65"),
        ("HD-901", "Amine hardener", "hardener", "1.00", "amine hydrogen", "60"),
    ):
        window.go("/materials/new/")
        _material(page, *row)

    window.go("/bases/new/")
    page.get_by_label("Code").fill("EP-T9")
    page.get_by_label("Name", exact=True).fill("Floor by hand")
    page.get_by_label("Binder chemistry").select_option("epoxy-amine")
    page.get_by_label("Application field").select_option("floor")
    page.get_by_label("Known as").select_option("recipe")
    page.get_by_role("button", name="Go on").click()

    a, b = page.get_by_role("region", name="Component A"), page.get_by_role("region", name="Component B")
    a.get_by_label("Mixing parts by mass").fill("100")
    for row, (code, parts) in enumerate((("EP-901", "60"), ("FI-901", "40")), 1):
        a.get_by_label(f"Material, row {row}").fill(code)
        a.get_by_label(f"Parts by mass, row {row}").fill(parts)
    b.get_by_label("Mixing parts by mass").fill("81")  # 18 was meant
    b.get_by_label("Material, row 1").fill("HD-9O1")  # the letter O for a nought
    b.get_by_label("Parts by mass, row 1").fill("100 %")
    page.get_by_role("button", name="Keep the components").click()

    problem = page.get_by_role("alert")
    assert "There is no raw material “HD-9O1”" in problem.inner_text()
    assert "Enter the number without a unit, not “100 %”" in problem.inner_text()
    assert page.title().startswith("Error: ")
    assert a.get_by_label("Material, row 2").input_value() == "FI-901"

    b.get_by_label("Material, row 1").fill("HD-901")
    b.get_by_label("Parts by mass, row 1").fill("100")
    page.get_by_role("button", name="Keep the components").click()

    said = page.get_by_role("region", name="What to look at").inner_text()
    assert "Cannot be right" in said
    assert "The index (amine hydrogen over epoxide) is 4.275; such systems stand at 0.85 to 1.05." in said

    page.get_by_role("link", name="Components").click()
    b.get_by_label("Mixing parts by mass").fill("18")
    page.get_by_role("button", name="Keep the components").click()
    assert "Cannot be right" not in page.get_by_role("main").inner_text()
    assert "0.950" in page.get_by_role("region", name="The mix").inner_text()
