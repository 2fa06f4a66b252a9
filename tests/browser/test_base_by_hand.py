"""A two-component base entered by hand, with a deliberate mistake that the page must name."""

import secrets

import pytest

pytestmark = [pytest.mark.browser, pytest.mark.slow]


def _material(window, code, name, function, density, group=None, equivalent=None):
    window.go("/materials/new/")
    window.field("Code").fill(code)
    window.field("Name").fill(name)
    window.field("Function").select_option(function)
    window.field("Density").fill(density)
    window.field("Non-volatile content").fill("100")
    window.field("VOC").fill("0")
    if group:
        window.field("Group, row 1").select_option(group)
        window.field("Value, row 1").fill(equivalent)
    window.page.get_by_role("button", name="Keep").click()
    window.page.get_by_role("heading", level=1, name=code).wait_for()


def _base(window, code):
    window.go("/bases/new/")
    window.field("Code").fill(code)
    window.field("Name").fill("Floor by hand")
    window.field("Binder chemistry").select_option("epoxy-amine")
    window.field("Application field").select_option("floor")
    window.field("Known as").select_option("recipe")
    window.page.get_by_role("button", name="Go on").click()


def test_mistake_in_the_mixing_ratio_is_reported(visit):
    tag = secrets.token_hex(2).upper()
    resin, quartz, amine = f"EP-{tag}", f"FI-{tag}", f"HD-{tag}"
    window = visit("bench")
    page = window.page
    _material(window, resin, "Liquid epoxy resin", "binder", "1,16", "epoxide", "190")
    _material(window, quartz, "Quartz flour", "filler", "2.65")
    _material(window, amine, "Amine hardener", "hardener", "1.00", "amine hydrogen", "60")
    _base(window, f"EF-{tag}")

    a, b = page.get_by_role("region", name="Component A"), page.get_by_role("region", name="Component B")
    window.field("Mixing parts by mass", a).fill("100")
    for row, (code, parts) in enumerate(((resin, "60"), (quartz, "40")), 1):
        window.field(f"Material, row {row}", a).fill(code)
        window.field(f"Parts by mass, row {row}", a).fill(parts)
    window.field("Mixing parts by mass", b).fill("81")  # 18 was meant
    window.field("Material, row 1", b).fill("HD-none")
    window.field("Parts by mass, row 1", b).fill("100 %")
    page.get_by_role("button", name="Keep the components").click()

    problem = page.get_by_role("alert").first.inner_text()
    assert "There is no raw material “HD-none”" in problem
    assert "Enter the number without a unit, not “100 %”" in problem
    assert page.title().startswith("Error: ")
    assert window.field("Material, row 2", a).input_value() == quartz

    window.field("Material, row 1", b).fill(amine)
    window.field("Parts by mass, row 1", b).fill("100")
    page.get_by_role("button", name="Keep the components").click()

    said = page.get_by_role("region", name="What to look at").inner_text()
    assert "Cannot be right" in said
    assert "The index (amine hydrogen over epoxide) is 4.275; such systems stand at 0.85 to 1.05." in said

    page.get_by_role("link", name="Components").click()
    window.field("Mixing parts by mass", b).fill("18")
    page.get_by_role("button", name="Keep the components").click()
    page.get_by_role("region", name="The mix").wait_for()
    assert "Cannot be right" not in page.get_by_role("main").inner_text()
    assert "0.950" in page.get_by_role("region", name="The mix").inner_text()
    assert window.complaints == []
