"""What a whole series amounts to: outcome, conclusion, window and working dosage, and what was not tested."""

from dataclasses import dataclass
from functools import cache

from .chance import chance
from .facts import Facts, groups, limit_per_dm2, unfair
from .figures_told import BASE_WORDS, counted, thickness
from .imagined import TREATED, film_um
from .round_rows import CLIMATES, CONCRETE, SECOND, STORED, THICK, RoundRow
from .series_lessons import SERIES_LESSONS
from .verdicts import FAILS, LIMITS, UNDECIDED, UNFAIR, WORKS, verdict

# A window goes up to the first craters; a single dosage has no upper end.
UP_TO = ("works", "one cup", "better, not good", "first craters")
HARMS = {
    "over-dosed": "craters",
    "hazy": "haze",
    "bleeds": "bleeding",
    "crawls": "the second coat crawls",
    "sheds": "the second coat comes off",
    "solvent": "solvent pinholes",
    "outgasses": "pinholes from the concrete",
    "dies stored": "lost in storage",
    "blushes": "amine blush",
}
NOT_IN_A_SERIES = (
    (STORED, "storage at 50 °C"),
    (SECOND, "a second coat"),
    (CLIMATES, "10 and 30 °C"),
    (CONCRETE, "concrete"),
    (THICK, "films thicker than {film}"),
)


@dataclass(frozen=True, slots=True)
class Summary:
    outcome: str
    conclusion: str
    lesson: str
    not_tested: str
    recommended: str = ""
    window_from: str | None = None
    window_to: str | None = None
    working: str | None = None


@dataclass(frozen=True, slots=True)
class _Window:
    code: str
    low: str
    high: str | None
    working: str
    count: float


@cache
def sum_up(row: RoundRow) -> Summary:
    treated = {key: facts for key, facts in groups(row).items() if facts.part == TREATED}
    window = None if row.round == "scout" else _window(treated)
    outcome = _outcome(treated)
    ends = (window.code, window.low, window.high, window.working) if window else ("", None, None, None)
    return Summary(outcome, _conclusion(row, treated, window, outcome), _lesson(row), _not_tested(row), *ends)


def _outcome(treated: dict[tuple, Facts]) -> str:
    cups = [cup for facts in treated.values() for cup in facts.cups]
    if sum(bool(unfair(cup)) for cup in cups) > len(cups) / 2:
        return UNFAIR
    found = {verdict(facts).outcome for facts in treated.values()}
    return next(outcome for outcome in (WORKS, LIMITS, UNDECIDED, FAILS) if outcome in found)


def _window(treated: dict[tuple, Facts]) -> _Window | None:
    """Of the candidate that works with the fewest bubbles: from its lowest dosage that does to the onset."""
    found = []
    for code in dict.fromkeys(code for _, code, _ in treated):
        steps = [facts for facts in treated.values() if facts.code == code and not facts.cups[0].topped_up]
        good = [facts for facts in steps if verdict(facts).outcome == WORKS]
        if not good:
            continue
        usable = [facts for facts in steps if verdict(facts).why in UP_TO]
        low = min(good, key=lambda facts: float(facts.dosage))
        high = max(usable, key=lambda facts: float(facts.dosage))
        working = sorted(good, key=lambda facts: float(facts.dosage))[len(good) // 2 if len(good) > 2 else 0]
        ends = None if high is low else high.dosage
        found.append(_Window(code, low.dosage, ends, working.dosage, working.count))
    return min(found, key=lambda one: one.count, default=None)


def _conclusion(row: RoundRow, treated: dict[tuple, Facts], window: _Window | None, outcome: str) -> str:
    drawn = chance(row.key, "conclusion")
    blank = next(iter(treated.values())).blank
    per = [_told(code, [facts for facts in treated.values() if facts.code == code]) for code in _codes(treated)]
    opening = drawn.choice((
        f"In the {BASE_WORDS[row.base]} at {thickness(film_um(row))} the blank has {counted(blank)} bubbles per dm².",
        f"Blank {counted(blank)} per dm² at {thickness(film_um(row))}.",
        f"Against a blank of {counted(blank)} bubbles per dm² in {thickness(film_um(row))}:",
    ))  # fmt: skip
    return " ".join((opening, *per, _closing(row, window, outcome, drawn)))


def _closing(row: RoundRow, window: _Window | None, outcome: str, drawn) -> str:
    if window is not None:
        return drawn.choice(_recommended(window))
    limit = counted(limit_per_dm2(row))
    return drawn.choice({
        UNFAIR: ("Not a fair test: to be made again.", "Nothing of this may be counted; the reasons stand at the"
        " cups."),
        FAILS: ("No dosage to be recommended from this series.", f"None of it stays below {limit} per dm² unharmed."),
        LIMITS: ("Usable within limits only; they stand at the cups.", "Better than the blank, each with its but."),
        UNDECIDED: ("Not decided: more cups before a dosage is named.", "Too near to the limit or too few cups to"
        " say."),
        WORKS: ("The best go into a ladder.", "Worth a ladder, not yet a recommendation."),
    }[outcome])  # fmt: skip


def _recommended(window: _Window) -> tuple[str, ...]:
    code, low, high, working = window.code, window.low, window.high, window.working
    if high is None:
        return (
            f"Recommended: {code} at {working} %, the only dosage of it shown to work here.",
            f"Working dosage {working} % of {code}; below it nothing is shown to be enough.",
        )
    return (
        f"{code} from {low} to {high} %; we would work at {working} %.",
        f"Recommended: {code} at {working} %, within {low} to {high} %.",
    )


def _codes(treated: dict[tuple, Facts]) -> list[str]:
    return list(dict.fromkeys(code for _, code, _ in treated))


def _told(code: str, steps: list[Facts]) -> str:
    steps = sorted((one for one in steps if one.n), key=lambda one: float(one.dosage))
    if not steps:
        return f"{code}: no cup that was a fair test."
    counts = " – ".join(counted(one.count) for one in steps)
    dosages = " – ".join(one.dosage for one in steps)
    failed = [(one, verdict(one)) for one in steps]
    harms = [f"{HARMS[told.why]} at {one.dosage} %" for one, told in failed if told.why in HARMS]
    stored = next((one.others["stored 28"] for one in steps if "stored 28" in one.others), None)
    said = f"{code} at {dosages} %: {counts} per dm²"
    said += f", {harms[0]}" if harms else ""
    said += f", stored {counted(stored[0])} (stored blank {counted(stored[1])})" if stored else ""
    return said + "."


def _lesson(row: RoundRow) -> str:
    return SERIES_LESSONS.get(row.key, "")


def _not_tested(row: RoundRow) -> str:
    film = thickness(film_um(row))
    missing = [text.format(film=film) for twist, text in NOT_IN_A_SERIES if twist not in row.twists]
    return f"Not tested: {', '.join(missing)}."
