"""Sentences for cups that were no fair test: ``why`` is the reason on record, ``next`` the lesson."""

MISWEIGHED = {
    "why": (
        "{real} % of {cand} weighed instead of {pct}",
        "weighed {off} % {way} {cand} than planned: {real} % in the cup",
        "the syringe gave {real} % instead of {pct}",
    ),
    "next": (
        "{cand} at {pct} stands for {real} % here: {off} % {way} than planned. Below a gram weigh from a dilution.",
        "Check the reading of the fine balance against the sheet before the lid goes on: {real} % is not {pct}.",
        "Not repeated yet. {slip} mg of {cand} too {much} in {grams} g were enough to spoil the cup; take a larger"
        " one.",
        "The drop that hung on the syringe was {off} % of the dosage. Wipe, then read.",
        "Weigh {cand} by difference from the syringe. Dripping onto the blade gave {real} % instead of {pct}.",
        "{if_more}Read as it stands it would flatter {cand}: there is {off} % more of it in the cup.",
        "{if_less}Read as it stands it would wrong {cand}: there is {off} % less of it in the cup than {pct}.",
    ),
}
OTHER_FILM = {
    "why": (
        "laid at {own_film} instead of {film}; the blanks are at {film}",
        "film of {own_film}, blank {film}",
        "frame set to {own_film} by mistake",
    ),
    "next": (
        "A film of {own_film} with {cand} beside blanks of {film} compares thickness, not additives. Check the"
        " frame.",
        "Weigh the panel: its mass told us {own_film} of {cand} where {film} was meant.",
        "{cand} at {pct} to be poured again at {film}. Mark the frames, they look alike.",
        "Bubbles and film go together; this panel of {own_film} can't stand beside the others.",
        "Wrong notch, {own_film} for {cand} at {pct}. Write the notch on the sheet.",
    ),
}
SPILLED = {
    "why": ("spilled before pouring", "cup spilled, nothing left to pour", "spilled between balance and paddle"),
    "next": (
        "Spilled with {pct} of {cand} in it. Cups of {grams} g belong into a holder while B goes in.",
        "Cup of {cand} at {pct} lost on the way to the paddle; make it again from the same batch within the week.",
        "Nothing to be learnt of {cand} here; put the cup into the ring before letting go.",
        "Gloves wet with resin, cup gone. One more cup of {cand} at {pct} in the next series.",
    ),
}
STOOD = {
    "why": (
        "stood for 25 min between beating and mixing, the others did not",
        "left standing through the alarm: air had left by itself",
    ),
    "next": (
        "Twenty-five minutes of standing let out more air than {cand} at {pct} would have: not to be compared.",
        "Whatever stands longer looks better. Make {pct} of {cand} again, or let the blank stand as long.",
        "After an alarm note the minutes of every cup, blanks too; {cand} got 25 min for nothing.",
        "Density first, alarm afterwards. This cup of {cand} says nothing of {pct}.",
    ),
}
UNDER_SHEARED = {
    "why": (
        "stirred in at {tip} m/s for {min} min; {cand} asks for {asked} m/s and {asked_min} min",
        "under-sheared: {tip} m/s, {min} min",
        "{rpm} rpm for {min} min is not what {cand} asks for ({asked} m/s)",
    ),
    "next": (
        "How many rpm? {rpm} on this blade are {tip} m/s; {cand} asks for {asked}. It looks like a dud and is none.",
        "“Does nothing” after {min} min at {rpm} rpm says nothing of {cand}. On the 40 mm disc it takes {asked_rpm}"
        " rpm.",
        "Repeat {cand} at {asked_rpm} rpm and {asked_min} min on the 40 mm disc before striking it off.",
        "{cand} at {pct} was hardly broken up at {tip} m/s: strong ones crater like this, mild ones sleep.",
        "Stirred by hand {cand} leaves {count} per dm², and that is our stirring, not the candidate.",
        "A drill on site gives about {tip} m/s. Who offers {cand} there must offer it pre-dispersed.",
        "The sheet says {asked} m/s for {asked_min} min. It got {tip} for {min}. Not a test.",
        "Under-sheared at {rpm} rpm. Do not average this cup into the file of {cand}.",
    ),
}
SPECKS = {
    "why": (
        "fish-eyes with a speck in blank and treated cups alike: contamination",
        "craters with a speck in the centre, in the blank too",
        "vessels not clean: fish-eyes in every cup",
    ),
    "next": (
        "Fish-eyes with a speck, in the blank as in {cand} at {pct}: dirt, not the additive. Boil out the vessels.",
        "A crater with a speck in its centre is contamination. {cand} has nothing to do with these.",
        "Clean check first when even the blank shows fish-eyes. {cand} at {pct} comes again.",
        "Silicone from the day before in the wash-up. Own vessels for silicone-free cups such as {cand}.",
        "Under the lens a fibre in every fish-eye. Take lint-free wipes, and do not blame {cand}.",
        "Order of working was drawn by lot with silicone in it: {cand} went in after it. Silicone-free first.",
        "Craters in blank and treated alike tell you about the equipment. Nothing learnt about {pct} of {cand}.",
    ),
}
BLANK_STIRRED_LESS = {
    "why": (
        "blanks beaten for 1 min at 600 rpm, treated cups 3 min at 1200 rpm",
        "the blank was stirred less than this cup",
    ),
    "next": (
        "The blanks got a minute of the whisk and {cand} three: {blank} and {count} per dm² are not to be compared.",
        "Beat the blank as long as the rest. {cand} at {pct} can't be judged against a calm cup.",
        "Blank {blank} per dm², {cand} {count}: the comparison is of stirring too. All again.",
        "Whoever makes the blanks makes them like the others, at 1200 rpm for 3 min. {cand} comes again.",
        "A blank that was spared flatters nobody: {cand} at {pct} looks worse than it is.",
    ),
}
MILKY = {
    "why": ("resin milky with crystals, blanks too: haze can't be judged", "crystals of the resin in every cup"),
    "next": (
        "Milky epoxy, blank and {cand} alike: crystals of the resin. Warm the drum to 60 °C until clear, cool,"
        " stir, then weigh.",
        "Haze in the blank as with {pct} of {cand}. Crystals are warmed away, haze of an additive is not: try that"
        " first.",
        "Resin below 15 °C goes milky. {cand} was blamed for an hour before anybody looked into the drum.",
        "A drop of the resin on the hot plate went clear in a minute. So it was never {cand}.",
        "White grains on the wall of the drum are the resin itself. Nothing said about {cand} at {pct}.",
        "Turn the drum in the warming cupboard the evening before; then {cand} again.",
    ),
}
