"""How the people of the demonstration conclude from what they read, dosage by dosage."""

from dataclasses import dataclass

from .facts import Facts, good_per_dm2, limit_per_dm2
from .imagined import THREE_CLIMATES, ImaginedCup
from .round_rows import CONCRETE, SPIKED
from .truth import WET

WORKS, LIMITS, FAILS = "works", "works within limits", "fails"
UNDECIDED, UNFAIR = "undecided", "not a fair test"
# Against the blank: more left than this is no effect worth having. Against the limit: nearer than this can't be told.
HALVED, NEAR = 0.45, (0.85, 1.15)
# In storage: so many times as many bubbles, against the blank of each.
LOST = 1.8


@dataclass(frozen=True, slots=True)
class Verdict:
    """``why`` names the story that is told of it; the rest is the failure where it is one."""

    outcome: str
    why: str
    mode: str = ""
    cause: str = ""
    severity: int = 0


def verdict(facts: Facts) -> Verdict:
    """Of the cups of a dosage that were fair tests."""
    if facts.cups[0].topped_up:
        return Verdict(UNDECIDED, "topped up")
    if facts.n == 0:
        return Verdict(UNDECIDED, "too few")
    for judge in (_gas, _harm, _circumstances, _storage, _effect):
        found = judge(facts)
        if found:
            return found
    return _good(facts)


def spiked_late(cup: ImaginedCup) -> bool:
    panel = cup.panel()
    return bool(SPIKED in cup.row.twists and panel and panel.seen.pinholes > 2)


def _gas(facts: Facts) -> Verdict | None:
    if (facts.row.base, facts.row.revision) != WET or facts.cups[0].nature.righted:
        return None
    return Verdict(FAILS, "gas", "bubbles", "carbon dioxide", 4 if facts.count > 90 else 3)


def _harm(facts: Facts) -> Verdict | None:
    craters, haze = facts.worst("craters"), facts.worst("haze")
    if craters >= 2:
        return Verdict(FAILS, "over-dosed", "craters", "over-dosed", _severity(craters))
    if haze >= 2:
        return Verdict(FAILS, "hazy", "haze", "additive haze", _severity(haze))
    if facts.worst("bleeding") >= 1.5:
        return Verdict(FAILS, "bleeds", "bleeding", "incompatible", _severity(facts.worst("bleeding")))
    return None


def _circumstances(facts: Facts) -> Verdict | None:
    if facts.worst("crawling") >= 2:
        return Verdict(FAILS, "crawls", "crawling", "incompatible", _severity(facts.worst("crawling")))
    if facts.quantities.get("adhesion", 9) < 1.5:
        return Verdict(FAILS, "sheds", "recoat adhesion", "incompatible", 4)
    if facts.worst("blush") >= 2:
        return Verdict(FAILS, "blushes", "amine blush", "", _severity(facts.worst("blush")))
    if CONCRETE in facts.row.twists and facts.worst("pinholes") >= 2:
        return Verdict(FAILS, "outgasses", "pinholes", "outgassing", _severity(facts.worst("pinholes")))
    if facts.worst("pinholes") >= 1.5 and SPIKED not in facts.row.twists:
        return Verdict(FAILS, "solvent", "pinholes", "solvent", _severity(facts.worst("pinholes") + 0.5))
    return None


def _storage(facts: Facts) -> Verdict | None:
    stored = facts.other("stored 28")
    if stored is not None and stored > HALVED and facts.ratio < stored / LOST:
        return Verdict(FAILS, "dies stored", "lost in storage", "", 4)
    return None


def _effect(facts: Facts) -> Verdict | None:
    low, high = (share * limit_per_dm2(facts.row) for share in NEAR)
    if low < facts.count <= high:
        return Verdict(UNDECIDED, "in the scatter")
    if facts.count <= low:
        return Verdict(UNDECIDED, "one cup") if facts.n == 1 else None
    if facts.ratio > 0.8:
        return Verdict(FAILS, "no effect", "no effect", "", 3)
    if facts.ratio > HALVED:
        return Verdict(FAILS, "too little", "bubbles", "entrained air", 3)
    return Verdict(FAILS, "misses the limit", "bubbles", "entrained air", 2)


def _good(facts: Facts) -> Verdict:
    """Works, unless one of these holds; the first of them is named."""
    good = good_per_dm2(facts.row)
    thick, cold = facts.others.get("thick"), facts.others.get(f"{THREE_CLIMATES[0]:g} °C")
    stored = facts.other("stored 28") or 0.0
    limits = {
        "thin only": thick is not None and thick[0] > good_per_dm2(facts.row, thicker=2),
        "warm only": cold is not None and cold[0] > good,
        "weaker stored": stored > 1.6 * facts.ratio and stored > 0.2,
        "first craters": facts.worst("craters") >= 0.75,
        "slightly hazy": facts.worst("haze") >= 1,
        "better, not good": facts.count > good,
    }
    why = next((name for name, holds in limits.items() if holds), "")
    return Verdict(LIMITS, why) if why else Verdict(WORKS, "works")


def _severity(grade: float) -> int:
    return min(5, max(1, round(grade)))
