"""What an answer says about each cause of bubbles or milkiness, and why. Common practice, no source.

``weight``: 2 speaks strongly for a cause, 1 for it, −1 against it, −2 strongly against it; ``RULED_OUT`` excludes it.
"""

from dataclasses import dataclass

AIR = "entrained air"
GAS = "carbon dioxide"
OUTGASSING = "outgassing"
SOLVENT = "solvent"
MIXING = "mixing"
CONTAMINATION = "contamination"
CRYSTALS = "crystals"
HAZE = "additive haze"

CAUSES = (AIR, GAS, OUTGASSING, SOLVENT, MIXING, CONTAMINATION, CRYSTALS, HAZE)
RULED_OUT = -9


@dataclass(frozen=True, slots=True)
class Rule:
    question: str
    answer: str
    cause: str
    weight: int
    reason: str


def _rules(question: str, answer: str, *said: tuple[str, int, str]) -> tuple[Rule, ...]:
    return tuple(Rule(question, answer, *one) for one in said)


RULES = (
    *_rules(
        "when",
        "at once",
        (AIR, 2, "Air that was stirred or poured in is there from the first minute."),
        (MIXING, 1, "Air from mixing B in is there from the first minute."),
        (GAS, -2, "Water and isocyanate take 20 to 60 minutes to show."),
        (OUTGASSING, -1, "A substrate gives its air off while the film lies on it, not at once."),
        (SOLVENT, -2, "Solvent blisters come when a skin has formed."),
    ),
    *_rules(
        "when",
        "growing",
        (GAS, 2, "Gas of the reaction with water comes after 20 to 60 minutes and makes the bubbles grow."),
        (OUTGASSING, 1, "A substrate goes on giving off air while the film is open."),
        (AIR, -2, "Air that was stirred in gets less with time, it does not begin late."),
        (MIXING, -2, "Air from mixing gets less with time, it does not begin late."),
        (CRYSTALS, -1, "Crystals do not grow within an hour of mixing."),
    ),
    *_rules(
        "when",
        "flash-off",
        (SOLVENT, 2, "Solvent that boils or diffuses out under a skin leaves blisters and pinholes."),
        (AIR, -2, "Air that was stirred in is there before the solvent leaves."),
        (MIXING, -2, "Air from mixing is there before the solvent leaves."),
    ),
    *_rules(
        "where",
        "evenly",
        (AIR, 1, "Air that was stirred in is spread evenly."),
        (GAS, 1, "Water in the liquid makes gas everywhere."),
        (OUTGASSING, -2, "A substrate gives air off at its pores, not evenly."),
        (CONTAMINATION, -1, "Dirt acts around itself, not evenly."),
    ),
    *_rules(
        "where",
        "rows",
        (OUTGASSING, 2, "Rows and spots follow the pores and cracks of the substrate."),
        (AIR, -2, "Air that was stirred in knows no pores."),
        (MIXING, -2, "Air from mixing knows no pores."),
        (SOLVENT, -1, "Solvent leaves the film everywhere."),
        (GAS, -1, "Water in the liquid makes gas everywhere; only a damp substrate feeds it in places."),
    ),
    *_rules(
        "where",
        "specks",
        (CONTAMINATION, 2, "A speck in the middle is what pushes the film away."),
        (AIR, -1, "Air that was stirred in needs no speck."),
        (GAS, -1, "Gas of the reaction needs no speck."),
        (OUTGASSING, -1, "A pore is no speck."),
    ),
    *_rules(
        "where",
        "streaks",
        (MIXING, 2, "Streaks and swirls show how it was mixed."),
        (CONTAMINATION, 1, "A dirty disc or vessel leaves streaks."),
        (OUTGASSING, -2, "A substrate does not follow the mixer."),
        (GAS, -1, "Water in the liquid makes gas everywhere; streaks only of a B that was not mixed in."),
    ),
    *_rules(
        "looks",
        "round",
        (AIR, 1, "Stirred-in air is round, in many sizes."),
        (CRYSTALS, -2, "Crystals are no bubbles."),
        (HAZE, -2, "Haze has no bubbles."),
        (CONTAMINATION, -1, "Dirt makes craters rather than bubbles."),
    ),
    *_rules(
        "looks",
        "skin",
        (SOLVENT, 2, "Pinholes and blisters under a skin are what leaves late."),
        (GAS, 1, "Gas that comes late is caught under a skin too."),
        (OUTGASSING, 1, "Air that the substrate gives off late is caught under a skin too."),
        (AIR, -1, "Stirred-in air is gone or caught before there is a skin."),
        (CRYSTALS, -2, "Crystals are no blisters."),
        (HAZE, -2, "Haze has no blisters."),
    ),
    *_rules(
        "looks",
        "craters",
        (CONTAMINATION, 2, "A crater with a speck is dirt, oil or silicone."),
        (AIR, -1, "A burst bubble leaves no speck."),
        (GAS, -2, "Gas leaves no speck."),
        (OUTGASSING, -1, "A pore leaves no speck."),
        (SOLVENT, -1, "Solvent leaves no speck."),
        (CRYSTALS, -1, "Crystals are seen throughout, not in craters."),
    ),
    *_rules(
        "looks",
        "fine",
        (AIR, 1, "Fine bubbles throughout are micro-foam: air that was beaten in."),
        (MIXING, 1, "Fine bubbles throughout may come from mixing too fast."),
        (CRYSTALS, -2, "What is seen under the lens are bubbles."),
        (HAZE, -2, "What is seen under the lens are bubbles."),
        (CONTAMINATION, -2, "Dirt does not make a film milky throughout."),
    ),
    *_rules(
        "looks",
        "milky",
        (CRYSTALS, 1, "Resin that crystallises turns milky without a bubble."),
        (HAZE, 1, "An additive that does not dissolve turns the film milky without a bubble."),
        (AIR, -2, "There is no bubble."),
        (GAS, -2, "There is no bubble."),
        (OUTGASSING, -2, "There is no bubble."),
        (MIXING, -2, "There is no bubble."),
        (SOLVENT, -1, "There is no bubble; solvent may still blush a film."),
        (CONTAMINATION, -2, "Dirt does not make a film milky throughout."),
    ),
    *_rules(
        "degassed",
        "yes",
        (GAS, 2, "What forms after degassing, on glass, is gas of a reaction."),
        (SOLVENT, 1, "Solvent is still there after a short vacuum."),
        (AIR, -2, "Stirred-in air would be gone."),
        (MIXING, -2, "Air from mixing would be gone."),
        (OUTGASSING, -2, "Glass has no pores."),
    ),
    *_rules(
        "degassed",
        "no",
        (AIR, 1, "Vacuum took it out: it was air in the liquid."),
        (MIXING, 1, "Vacuum took it out: it was air in the liquid."),
        (OUTGASSING, 1, "On glass there is nothing that gives off air."),
        (GAS, -2, "Gas of the reaction forms again after degassing."),
        (SOLVENT, -1, "Solvent is still there after a short vacuum."),
        (CRYSTALS, -2, "Vacuum does not take crystals away."),
        (HAZE, -2, "Vacuum does not take haze away."),
    ),
    *_rules(
        "substrate",
        "alike",
        (OUTGASSING, RULED_OUT, "Glass has no pores: what is on glass too does not come from the substrate."),
        (AIR, 1, "It is in the liquid, whatever that lies on."),
        (GAS, 1, "It is in the liquid, whatever that lies on."),
    ),
    *_rules(
        "substrate",
        "porous",
        (OUTGASSING, 2, "Only the porous block can give off air."),
        (GAS, -1, "Water in the liquid makes gas on glass as well; only a damp block feeds it in places."),
        (AIR, -2, "Stirred-in air would be on glass as well."),
        (SOLVENT, -2, "Solvent would blister on glass as well."),
        (MIXING, -2, "Air from mixing would be on glass as well."),
        (CRYSTALS, -2, "Crystals would be on glass as well."),
        (HAZE, -2, "Haze would be on glass as well."),
    ),
    *_rules(
        "blank",
        "alike",
        (CONTAMINATION, 1, "A dirty vessel or substrate does not ask for the additive."),
        (GAS, 1, "Water and isocyanate do not ask for the additive."),
        (OUTGASSING, 1, "A substrate does not ask for the additive."),
        (SOLVENT, 1, "The solvent of the base does not ask for the additive."),
        (CRYSTALS, 1, "Crystals of the resin do not ask for the additive."),
        (HAZE, RULED_OUT, "The blank holds no additive."),
    ),
    *_rules(
        "blank",
        "treated",
        (HAZE, 2, "Only cups with the additive have it."),
        (AIR, -2, "The blank would have it as well, and more of it."),
        (GAS, -1, "The blank would have it as well, unless the additive brought water."),
        (OUTGASSING, -2, "The blank would have it as well."),
        (SOLVENT, -1, "The blank would have it as well, unless the additive brought solvent."),
        (MIXING, -1, "The blank would have it as well, were it mixed alike."),
        (CONTAMINATION, -1, "The blank would have it as well, were it made with the same things."),
        (CRYSTALS, -2, "The blank would have it as well."),
    ),
    *_rules(
        "blank",
        "fewer treated",
        (AIR, 2, "The additive takes it out: it is air in the liquid."),
        (MIXING, 1, "The additive takes some out: it is air in the liquid."),
        (GAS, -1, "The additive would not take out gas that goes on forming."),
        (OUTGASSING, -1, "The additive would not stop a substrate."),
        (SOLVENT, -1, "The additive would not stop solvent."),
        (CONTAMINATION, -1, "The additive would not take dirt away."),
        (CRYSTALS, -2, "The additive would not take crystals away."),
        (HAZE, RULED_OUT, "The blank holds no additive."),
    ),
    *_rules(
        "humidity",
        "yes",
        (GAS, 2, "Isocyanate reacts with the moisture."),
    ),
    *_rules(
        "humidity",
        "no",
        (GAS, -1, "Gas of the reaction gets worse with moisture."),
    ),
    *_rules(
        "warming",
        "yes",
        (OUTGASSING, 2, "Air in the pores expands as the substrate warms."),
        (SOLVENT, 1, "Solvent leaves faster where it is warm."),
        (GAS, 1, "The reaction is faster where it is warm."),
        (AIR, -1, "A warm film is thinner and lets its air out."),
        (CRYSTALS, -2, "Crystals melt where it is warm."),
    ),
    *_rules(
        "warming",
        "no",
        (OUTGASSING, -1, "Air in the pores expands as the substrate warms."),
    ),
    *_rules(
        "warmed",
        "clears",
        (CRYSTALS, 2, "Crystals of the resin melt and stay away for a while."),
        (HAZE, -1, "Haze of an additive comes back as the sample cools."),
    ),
    *_rules(
        "warmed",
        "stays",
        (CRYSTALS, -2, "Crystals of the resin would melt."),
        (HAZE, 1, "An additive that does not dissolve stays milky."),
    ),
    *_rules(
        "mixing",
        "yes",
        (MIXING, 2, "They come with the mixing of A and B."),
        (AIR, -1, "A was free of air."),
        (CRYSTALS, -1, "Crystals of the resin are in A before."),
    ),
    *_rules(
        "mixing",
        "no",
        (AIR, 1, "The air is in A before B comes."),
        (MIXING, -2, "They are in A before B is mixed in."),
        (GAS, -2, "Without B there is nothing that makes gas."),
        (OUTGASSING, -2, "They are in the cup before there is a substrate."),
    ),
    *_rules(
        "isocyanate",
        "no",
        (GAS, RULED_OUT, "Without isocyanate water sets no gas free."),
    ),
    *_rules(
        "solvent",
        "no",
        (SOLVENT, RULED_OUT, "There is no solvent."),
    ),
)
