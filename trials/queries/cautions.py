"""What is usual for a chemistry of additive, and what to look out for. All of it common practice, no source."""

from trials.models import Candidate
from trials.models.candidates import Carrier, Chemistry
from trials.science.ranges import Range

USUAL_WINDOW_PCT = {
    Chemistry.CONCENTRATE: Range(0.02, 0.2),
    Chemistry.SOLUTION: Range(0.1, 1.0),
    Chemistry.POLYMER: Range(0.3, 1.5),
}

_SILICONE = (
    "Contains silicone: work the silicone-free cups first, give it a disc of its own, and prove by a clean check"
    " that nothing stayed behind.",
    "Too much of it craters and crawls, and the second coat may not wet the first: try recoating.",
)
_OF_CHEMISTRY = {
    Chemistry.CONCENTRATE: (
        "At a few hundredths of a per cent one drop is a step: weigh a dilution, where one is allowed.",
    ),
    Chemistry.POLYMER: ("Works by not dissolving: look at component A for haze after a day.",),
    Chemistry.MINERAL_OIL: ("May bleed: look for a greasy film that smears and returns.",),
    Chemistry.FLUORINATED: (
        "Some regions restrict fluorinated substances: ask the person responsible before it leaves the laboratory.",
        "Wets at very low dosage and spoils the adhesion of the next coat: try recoating.",
    ),
    Chemistry.WAX: (
        "Settles: shake or roll the bottle. Particles lower the gloss, and a fine filter takes them out.",
    ),
}
_OF_CARRIER = {
    Carrier.SOLVENT: (
        "The carrier is solvent: it counts as VOC, it may ignite, and it has to leave before the cure.",
    ),
    Carrier.PLASTICISER: ("The carrier stays in the film as plasticiser: it may soften it, bleed and emit.",),
    Carrier.REACTIVE: ("The carrier counts in the index where its group reacts; elsewhere it stays in the film.",),
}


def cautions_of(candidate: Candidate) -> tuple[str, ...]:
    """Its own caution first, then those of chemistry and carrier."""
    own = (candidate.cautions,) if candidate.cautions else ()
    undiluted = () if candidate.diluted_in else ("Not to be diluted: nothing is known that it may be diluted in.",)
    return (
        *own,
        *(_SILICONE if candidate.silicone else ()),
        *_OF_CHEMISTRY.get(candidate.chemistry, ()),
        *_OF_CARRIER.get(candidate.carrier, ()),
        *undiluted,
    )


def unusual_window(candidate: Candidate) -> tuple[str, ...]:
    """Dosages that are taken and still worth a question."""
    found = []
    usual = USUAL_WINDOW_PCT.get(candidate.chemistry)
    ends = [float(end) for end in (candidate.from_pct, candidate.to_pct) if end is not None]
    if usual and any(not usual.holds(end) for end in ends):
        window = " to ".join(f"{end:g}" for end in ends)
        found.append(f"Window {window} %: a {candidate.chemistry} mostly wants {usual.low:g} to {usual.high:g} %.")
    tried, end = candidate.highest_tried_pct, candidate.to_pct
    if tried is not None and end is not None and tried < end:
        found.append(f"The window ends at {end} %, and the highest tried is {tried} %.")
    return tuple(found)
