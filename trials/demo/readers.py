"""What people write down of a film: each reads a little higher or lower than the others, and not always the same."""

from dataclasses import dataclass

from .chance import chance, scatter
from .imagined import ImaginedCup, Panel
from .round_rows import AMENDED, CLIMATES, COLD_NIGHT, DIRTY, SECOND
from .truth import POLYASPARTIC, POLYURETHANE, READERS

DAY, WEEK, MONTH, HOURS = "24", "168", "672", "4"
GLOSS, SHORE, PULL = "gloss meter 60°", "Shore D, five readings", "pull-off tester, 20 mm"


@dataclass(frozen=True, slots=True)
class Reading:
    """One value of one criterion, or a word for it."""

    criterion: str
    reader: str
    age_h: str
    value: str | None
    word: str = ""
    instrument: str = ""


def readings(cup: ImaginedCup, panel: Panel) -> list[Reading]:
    """All that is read of a panel, whoever reads it, in the order of ages."""
    row, found = cup.row, []
    for reader in row.seen_by:
        for age_h, keys in _wanted(cup, panel).items():
            found += [_graded(cup, panel, key, reader, age_h) for key in keys]
    if panel.kind.startswith("fresh"):
        found += _by_instrument(cup, panel)
    return sorted(found, key=lambda one: float(one.age_h))


def _wanted(cup: ImaginedCup, panel: Panel) -> dict[str, list[str]]:
    """Criteria by age: the first look after a day, the whole list after a week."""
    base, twists = cup.nature.system, cup.row.twists
    also = ["haze"] if base.clear else []
    if panel.kind.startswith("stored"):
        return {DAY: ["bubbles", "bubble-count", "craters", *also]}
    if SECOND in twists and panel.kind == "second coat":
        return {DAY: ["crawling"], WEEK: ["crawling", "craters", "bubbles", "bubble-count"]}
    week = ["bubbles", "bubble-count", "craters", "levelling", *also]
    week.append("pinholes" if not base.clear else "micro-foam")
    week += ["fish-eyes"] if DIRTY in twists else []
    week += ["blush"] if COLD_NIGHT in twists or (CLIMATES in twists and base.chemistry not in ISOCYANATES) else []
    week += ["bleeding"] if cup.row.base == "UF-33" and cup.row.round == "scout" else []
    wanted = {DAY: ["bubbles", "craters", *also], WEEK: week}
    if base.chemistry == POLYASPARTIC:
        wanted = {HOURS: ["bubbles"], **wanted}
    return wanted


ISOCYANATES = (POLYURETHANE, POLYASPARTIC)


def _graded(cup: ImaginedCup, panel: Panel, key: str, reader: str, age_h: str) -> Reading:
    name = (cup.nature.name, panel.kind, key, reader, age_h)
    if chance(*name, "word").random() < 0.004:
        return Reading(
            key, reader, age_h, None, chance(*name).choice(("not read", "panel stuck", "lid not taken off"))
        )
    if key == "bubble-count":
        return Reading(key, reader, age_h, str(counted(cup, panel, reader)))
    return Reading(key, reader, age_h, grade(getattr(panel.seen, key.replace("-", "_")), reader, *name))


def counted(cup: ImaginedCup, panel: Panel, reader: str) -> int:
    """The first reader counts on the photograph, the others on the panel."""
    if reader == cup.row.seen_by[0]:
        return panel.seen.count
    off = scatter(0.06, cup.nature.name, panel.kind, reader, "count")
    return round(panel.seen.count * READERS[reader].finds * off)


def grade(true: float, reader: str, *name: object) -> str:
    """In half steps; what is not there nobody sees."""
    if true < 0.15:
        return "0"
    one = READERS[reader]
    seen = true + one.bias + chance(*name).gauss(0, one.spread)
    half_steps = round(2 * min(max(seen, 0.0), 5.0))
    return f"{half_steps / 2:g}"


def _by_instrument(cup: ImaginedCup, panel: Panel) -> list[Reading]:
    seen, reader = panel.seen, cup.row.seen_by[0]
    drawn = chance(cup.nature.name, panel.kind, "instruments")
    hardness = seen.hardness + drawn.gauss(0, 0.7)
    found = [Reading("hardness", reader, WEEK, f"{hardness:.0f}", instrument=SHORE)]
    if not cup.nature.system.clear:
        found.append(Reading("gloss", reader, WEEK, f"{seen.gloss + drawn.gauss(0, 1):.0f}", instrument=GLOSS))
    second = cup.panel("second coat")
    if second and panel.kind == "fresh":
        adhesion = second.seen.adhesion + drawn.gauss(0, 0.15)
        found.append(Reading("adhesion", reader, WEEK, f"{max(adhesion, 0.2):.1f}", instrument=PULL))
    if AMENDED in cup.row.twists and panel.kind == "fresh":
        later = hardness + 1.5 + drawn.gauss(0, 0.5)
        found.append(Reading("hardness", reader, MONTH, f"{later:.0f}", instrument=SHORE))
    return found
