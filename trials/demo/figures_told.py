"""The figures that a sentence may speak of; what is not known is left out, and the sentence with it."""

import math
from statistics import mean

from . import truth
from .facts import Facts, good_per_dm2, limit_per_dm2
from .hidden_wet import air_mix, bubble_free_min, head_mm
from .imagined import BLANK, ROWS, ImaginedCup, film_um, imagine, tip_speed_m_s
from .round_rows import SECOND, STORED, THICK

BASE_WORDS = {
    "EF-21": "grey epoxy floor", "EC-12": "clear epoxy casting", "UF-33": "polyurethane floor",
    "PF-41": "white polyaspartic top coat", "BB-61": "customer's epoxy floor", "EM-52": "tank coating",
    "BB-62": "coil casting resin",
}  # fmt: skip
KINDS = {
    "AR-01": "The vinyl polymer", "AR-02": "The acrylic copolymer", "AR-03": "The thin siloxane solution",
    "AR-04": "The polyether siloxane", "AR-05": "The amide wax", "AR-06": "The oil with silica",
    "AR-07": "The polymer in polyol", "AR-08": "The long-chain siloxane", "AR-09": "The alkyl siloxane",
    "AR-10": "The fluorinated acrylate", "AR-11": "The aryl siloxane", "AR-12": "The neat siloxane",
    "AR-13": "The siloxane with silica", "AR-14": "The polymer with particles", "AR-15": "The fluorosilicone",
    "AR-16": "The modified siloxane with particles",
}  # fmt: skip


def figures(cup: ImaginedCup, facts: Facts, made: dict) -> dict[str, str]:
    """By the name that sentences use."""
    found = {
        **_of_the_cup(cup, facts),
        **_of_the_film(facts),
        **_of_the_ladder(facts, made),
        **_conditions(cup, facts),
    }
    return {name: text for name, text in found.items() if text is not None}


def counted(value: float) -> str:
    """A count per dm² as one would say it."""
    if value < 0.3:
        return "none"
    return f"{value:.0f}" if value >= 9.5 or abs(value - round(value)) < 0.05 else f"{value:.1f}"


def grade(value: float) -> str:
    return f"{value:.1f}".removesuffix(".0")


def thickness(um: float) -> str:
    return f"{um / 1000:g} mm" if um >= 1000 else f"{um:g} µm"


def _of_the_cup(cup: ImaginedCup, facts: Facts) -> dict:
    row, (asked, asked_min) = cup.row, ROWS[cup.code].shear
    planned = float(cup.dosage)
    panel = cup.panel()
    white = row.tint == "white" and row.base == "UF-33"
    return {
        "cand": cup.code,
        "kind": KINDS[cup.code],
        "pct": f"{cup.dosage} %",
        "base": f"white {BASE_WORDS[row.base]}" if white else BASE_WORDS[row.base],
        "film": thickness(film_um(row)),
        "own_film": thickness(panel.laid.film_um) if panel else None,
        "grams": row.grams,
        "mg": f"{planned * cup.weighed * float(row.grams) * 10:.0f}",
        "slip": f"{planned * abs(cup.weighed - 1) * float(row.grams) * 10:.0f}",
        "much": "much" if cup.weighed > 1 else "little",
        "real": f"{planned * cup.weighed:.2g}",
        "off": f"{abs(100 * (cup.weighed - 1)):.0f}",
        "way": "more" if cup.weighed > 1 else "less",
        "rpm": f"{row.shear[0]}",
        "min": row.shear[1],
        "tip": f"{tip_speed_m_s(row):.2g}",
        "asked": f"{float(asked):g}",
        "asked_min": asked_min,
        "asked_rpm": f"{round(float(asked) * 60 / (math.pi * 0.04), -2):.0f}",
        "air_c": f"{cup.air_c:.0f}",
        "rh": f"{cup.humidity_pct:.0f}",
        "recoat": "4" if row.base == "PF-41" else "24",
        "life": f"{cup.nature.system.pot_life_min:g}",
        "spiked": f"{panel.laid.spiked_min:g}" if panel and panel.laid.spiked_min else None,
    }


def _of_the_film(facts: Facts) -> dict:
    others = facts.others
    stored, thick, cold = others.get("stored 28"), others.get("thick"), others.get("10 °C")
    limit = limit_per_dm2(facts.row)
    return {
        "n": str(facts.n),
        "count": counted(facts.count) if facts.count else None,
        "count3": f"{math.ceil(facts.count * 1.3)}",
        "blank": counted(facts.blank),
        "limit": counted(limit),
        "good": counted(good_per_dm2(facts.row)),
        "cut": f"{100 * (1 - facts.ratio):.0f}" if facts.ratio < 1 else None,
        "size": f"{facts.size_mm:.1f}",
        "craters": grade(facts.worst("craters")),
        "haze": grade(facts.worst("haze")),
        "crawling": grade(facts.worst("crawling")),
        "blush": grade(facts.worst("blush")),
        "pinholes": grade(facts.worst("pinholes")),
        "adhesion": f"{facts.quantities['adhesion']:.1f}" if "adhesion" in facts.quantities else None,
        "stored": counted(stored[0]) if stored else None,
        "stored_blank": counted(stored[1]) if stored else None,
        "thick": counted(thick[0]) if thick else None,
        "thick_film": thickness(2 * film_um(facts.row)),
        "cold": counted(cold[0]) if cold else None,
        "cold_blank": counted(cold[1]) if cold else None,
    }


def _of_the_ladder(facts: Facts, made: dict) -> dict:
    """The steps beside this one, and what holds of them."""
    steps = sorted((one for one in made.values() if (one.part, one.code) == (facts.part, facts.code)),
                   key=lambda one: float(one.dosage))  # fmt: skip
    place = steps.index(facts)
    lower = steps[place - 1] if place else None
    higher = steps[place + 1] if place + 1 < len(steps) else None
    others = [one for one in made.values() if one.code != facts.code and one.n]
    best = min((one for one in made.values() if one.n), key=lambda one: one.count, default=facts)
    holds = {
        "if_ladder": len(steps) > 1,
        "if_higher": higher is None or higher.worst("craters") < 2,
        "if_next_over": higher is not None and higher.worst("craters") >= 2,
        "if_flat": lower is not None and lower.count < 1.5 * facts.count,
        "if_flat_above": higher is not None and higher.count > 0.65 * facts.count,
        "if_best": best is facts and len(made) > 2,
        "if_other_ok": any(one.worst("crawling") < 1 for one in others),
    }
    closed = lower is not None and lower.worst("craters") < 1
    worse = lower is not None and lower.count > 1.15 * facts.count
    return {
        "lower": f"{lower.dosage} %" if closed else None,
        "lower_worse": f"{lower.dosage} %" if worse else None,
        **{name: "" for name, true in holds.items() if true},
    }


def _conditions(cup: ImaginedCup, facts: Facts) -> dict:
    blanks = [one.nature for one in imagine(cup.row) if one.part == BLANK]
    natures = [one.nature for one in facts.cups]
    stored, fortnight = facts.others.get("stored 28"), facts.other("stored 14")
    panel = cup.panel()
    quiet = [bubble_free_min(nature) for nature in natures]
    early = facts.row.round in ("scout", "ladder") and not {STORED, THICK, SECOND} & set(facts.row.twists)
    holds = {
        "if_floor": cup.row.base in ("EF-21", "UF-33", "BB-61"),
        "if_more": cup.weighed > 1,
        "if_less": cup.weighed < 1,
        "if_air": mean(map(air_mix, natures)) < 0.75 * mean(map(air_mix, blanks)),
        "if_head": mean(map(head_mm, natures)) < 0.55 * mean(map(head_mm, blanks)),
        "if_two": facts.n == 2,
        "if_quarter": 0.15 < facts.ratio < 0.30,
        "if_just": facts.count < 1.4 * good_per_dm2(facts.row),
        "if_grade": facts.worst("bubbles") <= 2,
        "if_no_craters": facts.worst("craters") < 0.25,
        "if_free": all(one is not None and one < 0.6 * natures[0].system.pot_life_min for one in quiet),
        "if_none": facts.count < 1.5,
        "if_early": early,
        "if_cloudy": bool(panel and panel.seen.haze >= 2),
        "if_oil": cup.code == truth.DIES_IN_STORAGE,
        "if_blank_same": bool(stored and facts.blank and abs(stored[1] / facts.blank - 1) < 0.3),
        "if_fortnight": bool(fortnight and fortnight > 1.5 * facts.ratio),
    }
    return {name: "" for name, true in holds.items() if true}
