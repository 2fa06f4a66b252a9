"""The comparison is held to SciPy, people conclude, two sign, and what is signed is amended."""

import secrets
from itertools import groupby
from statistics import median

import pytest

from .line_planning import AIR_FREE_A_G_ML
from .reference import dunnett, exact_ranks, median_shift
from .typing_in import choose, content, figure, fill, follow, press, region, rows_of, submit, table_called


def check_the_comparison(window, number: int, sheet) -> None:
    """Dunnett on the air contents and exact Mann–Whitney with Holm on the grades, both on the sheet itself."""
    blank, *treated = (list(cups) for _, cups in groupby(sheet, key=lambda cup: cup.group))
    labels = [f"{cups[0].additive} {cups[0].dosage_pct:g} %" for cups in treated]

    def air(cups):
        return [100 * (1 - cup.density_g_ml / AIR_FREE_A_G_ML) for cup in cups]

    for side, alternative in (("two", "two-sided"), ("one", "less")):
        window.go(f"/series/{number}/?side={side}")
        shown = by_group(window, "Air content of component A")
        expected = dunnett(air(blank), [air(cups) for cups in treated], alternative)
        for label, one in zip(labels, expected, strict=True):
            row = shown[label]
            assert figure(row["Difference from blank"]) == pytest.approx(one.estimate, abs=0.006)
            assert figure(row["from 95 %"]) == pytest.approx(one.low, abs=0.006)
            assert figure(row["to 95 %"]) == pytest.approx(one.high, abs=0.006)
            assert _p(row["p adjusted"]) == pytest.approx(one.p, abs=0.002)
        for criterion, name in (("foam", "Bubbles"), ("craters", "Craters"), ("levelling", "Levelling")):
            shown = by_group(window, name)
            worse = name != "Bubbles"  # where one side is declared, compatibility is tried for harm
            way = "two-sided" if side == "two" else "greater" if worse else "less"
            grades = [[getattr(cup, criterion) for cup in cups] for cups in (blank, *treated)]
            for label, p in zip(labels, exact_ranks(grades[0], grades[1:], way), strict=True):
                assert _p(shown[label]["p adjusted"]) == pytest.approx(p, abs=0.0006)
            for label, cups in zip(labels, grades[1:], strict=True):
                assert figure(shown[label]["Median"]) == median(cups)
                assert figure(shown[label]["Shift from blank"]) == median_shift(grades[0], cups)


def by_group(window, name: str) -> dict[str, dict[str, str]]:
    return {row["Group"]: row for row in rows_of(table_called(window, name))}


def _p(text: str) -> float:
    return 0.0 if text.startswith("<") else float(text)


def conclude(window, number: int, cups) -> str:
    """Outcomes, a failure with its cause, the window, and a lesson; answers a word that no other lesson has."""
    cratered = next(cup for cup in cups if cup.group == ("AR-16", 0.8))
    window.go(f"/trials/{cratered.code}/judge/")
    choose(window, "Failure, row 1", "craters")
    fill(window, {"Severity, 1 slight to 5 severe, row 1": "1"})
    fill(window, {"How it showed, row 1": "small, round, without a speck"})
    choose(window, "Cause, if known, row 1", "over-dosed")
    press(window, "Keep")

    word = f"cratermark{secrets.token_hex(4)}"
    lesson = f"Between 0.3 and 0.8 % the craters begin: {word}."
    window.go(f"/series/{number}/judge/")
    choose(window, "Outcome", "works within limits")
    fill(
        window,
        {
            "Conclusion": "AR-03 takes most of the air at 0.3 %.",
            "Lesson": lesson,
            "What was not tested": "Storage, recoating, 4 mm.",
            "Window from": "0.3",
            "Window to": "0.5",
            "Working dosage": "0.3",
        },
    )
    choose(window, "Additive recommended", "AR-03")
    choose(window, "Outcome, AR-03 0.3 %", "works within limits")
    choose(window, "Outcome, AR-16 0.8 %", "fails")
    press(window, "Keep")

    said = region(window, "Compared").inner_text()
    assert "Recommended: AR-03, 0.3 to 0.5 %, worked at 0.3 %" in said
    assert lesson in said
    groups = {row["Group"]: row for row in rows_of(window.page.locator('table[aria-labelledby="groups"]'))}
    decided = groups["AR-16 0.8 %"]["Decided, with failures"]
    assert "fails" in decided
    assert "craters, 1 of 5, cause: over-dosed: small, round, without a speck" in decided
    return word


def sign_by_two(bench, supervisor, number: int) -> None:
    for window, meaning, word in ((bench, "performed", "signed"), (supervisor, "countersigned", "signed by two")):
        window.go(f"/series/{number}/")
        follow(window, "Sign" if window is bench else "Countersign")
        choose(window, "You sign it as", meaning)
        fill(window, {"Your password": window.password})
        press(window, "Sign")
        assert word in region(window, "Signed").inner_text()
    for window in (bench, supervisor):
        window.go(f"/series/{number}/signed/")
        said = content(window)
        assert said.count("content, signer and chain give this digest") == 2
        assert "The record as it stands is what the newest signature covers." in said


def amend(window, code: str) -> None:
    """What is signed does not change by writing over it, only with a reason and the password again."""
    window.go(f"/trials/{code}/judge/")
    fill(window, {"Lesson": "Craters under the lamp only."})
    submit(window, "Keep")
    assert window.page.title().startswith("Error: ")
    assert window.field("Lesson").input_value() == "Craters under the lamp only."
    window.go(f"/trials/{code}/")
    assert "Craters under the lamp only." not in content(window)

    window.go(f"/trials/{code}/judge/")
    fill(window, {"Lesson": "Craters under the lamp only."})
    submit(window, "Keep")
    fill(window, {"Why it changes": "Looked at again under the lamp.", "Your password": "not-the-password"})
    submit(window, "Keep")
    assert window.page.title().startswith("Error: ")
    fill(window, {"Why it changes": "Looked at again under the lamp.", "Your password": window.password})
    press(window, "Keep")

    window.go(f"/trials/{code}/")
    assert "Craters under the lamp only." in content(window)
    signed = region(window, "Signed").inner_text()
    assert "amended 1 time" in signed
    assert "Looked at again under the lamp." in signed
