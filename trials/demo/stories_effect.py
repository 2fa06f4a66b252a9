"""Sentences for how much it helped: not at all, too little, perhaps, up to a point, or as it should."""

NO_EFFECT = {
    "seen": (
        "{cand} at {pct} does nothing in the {base}: {count} bubbles per dm², blank {blank}.",
        "No difference from the blank with {cand} ({count} against {blank} per dm²).",
        "As if nothing had been put in: {count} per dm².",
    ),
    "because": (
        "It was dispersed at {tip} m/s for {min} min, so the shear was there; it is too much at home in this resin.",
        "Too compatible: what dissolves does not break a bubble.",
    ),
    "next": ("Leave {cand} out of this base.", "Something less at home in the resin; {cand} is not it."),
    "how": ("like the blank, {count} and {blank} per dm²", "no difference to be seen from the blank"),
}
TOO_LITTLE = {
    "seen": (
        "{cand} at {pct} takes {cut} % of the bubbles: {count} per dm² against {blank}. Not enough for anybody.",
        "{count} bubbles per dm² with {cand} at {pct}, blank {blank}: a difference, and no answer.",
        "Half measures: {cand} at {pct} leaves {count} of {blank} per dm².",
        "The {base} with {pct} of {cand} is better than the blank only if one knows which is which ({count},"
        " {blank}).",
        "{if_air}From {blank} to {count} per dm² in {film}. The air content in the cup looked more promising than"
        " the film.",
        "{if_head}{kind} at {pct}: the cup foams less, the film hardly knows it ({count} per dm²).",
        "Bubbles of {size} mm stay in the film, {count} per dm²; the largest have burst, the small ones have not"
        " moved.",
        "I counted twice. {count} per dm² with {cand}, {blank} without: too little at {pct}.",
    ),
    "because": (
        "Shear was there ({tip} m/s, {min} min), so it is the dosage or the candidate.",
        "It is at the foot of its curve at {pct}.",
        "{if_head}Good against the head on the cup, weak in the film: two different things.",
        "A mild one in a thick mix: bubbles below half a millimetre do not rise in time.",
        "With cups a third apart from each other, {cut} % is barely more than scatter.",
    ),
    "next": (
        "Go up or leave it; {pct} is not worth another panel.",
        "Next cup at twice {pct}, and craters to be read first.",
        "As a partner for a strong one perhaps; alone no.",
        "Do not report a percentage here: the customer counts bubbles.",
        "Look at the density of the mix as well as the film before deciding on {cand}.",
        "Try it in the thin coat, where the way up is short.",
        "Skip this step of the ladder in later rounds.",
    ),
    "how": (
        "{count} bubbles per dm² of {size} mm, blank {blank}",
        "bubbles evenly over the panel, {count} per dm²",
        "{if_head}small bubbles stay, {count} per dm²; head on the cup was gone",
        "film full of bubbles below 1 mm, {count} per dm²",
    ),
}
SCATTER = {
    "seen": (
        "{cand} at {pct}: {count} per dm² against {blank}. Better, I think; {n} cups do not prove it.",
        "Somewhere between: {count} bubbles per dm², blank {blank}.",
        "The cups of {cand} at {pct} lie so far apart that {count} per dm² against {blank} says little.",
        "{count} against {blank} per dm² with {cand}: worth an argument, not a recommendation.",
        "{cut} % fewer bubbles in the {base} at {pct}, with {n} cups and a third of scatter between equal ones.",
        "Not good, not bad: {pct} of {cand} leaves {count} per dm².",
    ),
    "because": (
        "Equal cups differ by thirty to forty per cent here; this difference is not much more.",
        "{if_two}Two cups are enough to find a factor of five and not a factor of two.",
        "It stands on the steep part of the curve, where a hundredth more or less of additive counts.",
    ),
    "next": (
        "Four cups of {pct} beside four blanks, or let it be.",
        "{if_ladder}Decide on the next dosage, not on {pct}.",
        "Repeat only if the price speaks for {cand}.",
        "Make it again from one batch with three cups each before telling anybody.",
        "Read it once more blind; the grades say less than the count.",
    ),
}
MISSES = {
    "seen": (
        "{cand} at {pct} takes away {cut} % of the bubbles and leaves {count} per dm², where {limit} are allowed.",
        "{if_quarter}{count} per dm² instead of {blank}: a good halving twice over, and the customer wants {limit}"
        " at most.",
        "{if_floor}Much better than the blank ({blank}), still {count} per dm². The floor would be sent back.",
        "Much better than the blank ({blank}) with {pct}, still {count} per dm²: it would be refused.",
        "In the {base} {pct} of {cand} gets as far as {count} per dm². The limit is {limit}.",
        "Everybody in the room liked the panel until we counted: {count} per dm², limit {limit}.",
        "{kind}: from {blank} down to {count} per dm² at {pct} in {film}, and there it stops.",
        "{cut} % gone sounds fine in a talk. On the panel it is {count} bubbles in every square decimetre.",
        "{cand}, {pct}, {film}: {count} per dm². The large bubbles burst, those of {size} mm stay.",
    ),
    "because": (
        "{if_flat_above}The curve is flat from here: the next step of the ladder gains little.",
        "It is not the shear, {tip} m/s for {min} min; it is as far as this candidate goes at {pct}.",
        "Small bubbles need longer than the pot life to come up.",
        "The limit counts bubbles, not per cent.",
        "{if_head}It acts on the head more than in the film.",
    ),
    "next": (
        "Not an answer for a limit of {limit} per dm².",
        "{if_higher}Go one step up if craters allow, else another candidate.",
        "Judge by the limit from the start; a blank is easy to beat.",
        "{if_floor}Thinner coats or a spiked roller at five minutes could do the rest. Test it before saying so.",
        "{if_floor}Keep {cand} for where twenty bubbles do not matter, under a broadcast for instance.",
        "A stronger one at a tenth of the dosage is the next cup.",
        "Compare with what they use today before giving it up.",
    ),
    "how": (
        "{count} bubbles per dm² where {limit} are allowed",
        "bubbles of {size} mm left, {count} per dm²",
        "limit missed: {count} per dm² (blank {blank})",
        "evenly spread small bubbles, {count} per dm²",
    ),
}
BETTER = {
    "seen": (
        "{if_floor}{cand} at {pct}: {count} per dm², blank {blank}. Good enough for a store room, not for a"
        " showroom.",
        "{if_just}{count} bubbles per dm² in the {base}, {cut} % fewer than the blank; {good} would be good, and that"
        " is just missed.",
        "Nearly there with {pct} of {cand}: {count} per dm² in {film}.",
        "{if_no_craters}A clear step from {blank} to {count} per dm², no craters, and a few too many bubbles left.",
        "{kind} at {pct} leaves {count} per dm² of about {size} mm.",
        "Flat, closed, {count} bubbles per dm² with {cand} at {pct}. One sees them only against the light.",
        "{if_grade}Both readers gave it a good grade; the count of {count} per dm² is above {good} all the same.",
    ),
    "because": (
        "Dispersed as it asks for ({tip} m/s, {min} min), so there is no more to be had from stirring.",
        "{if_flat}The gain from the dosage below was small: the curve bends here.",
        "What is left of {blank} are the small ones.",
    ),
    "next": (
        "Works where up to {count3} per dm² are taken; say that number when recommending it.",
        "{if_higher}One step higher may close the gap; look for craters there.",
        "{if_floor}With a spiked roller in the first ten minutes {pct} of {cand} would pass, I expect. To be shown.",
        "Good value if the price of {cand} at {pct} is looked at first.",
        "Within limits: no oblique light, and somebody who accepts {count} per dm².",
        "Offer {cand} at {pct} with the photograph, so that nobody expects none.",
        "Ask the customer what he calls free of bubbles: {count} per dm² is what {pct} gives.",
    ),
}
WORKS = {
    "seen": (
        "{cand} at {pct} brings the {base} from {blank} to {count} bubbles per dm² in {film}, craters {craters}.",
        "{count} per dm², flat and closed. {pct} of {cand} is enough here.",
        "Blank {blank}, this one {count} per dm², and nothing else the matter with it.",
        "{kind} at {pct}: {cut} % of the bubbles gone and no price paid on the surface.",
        "{if_no_craters}I looked for craters for ten minutes and found none; bubbles {count} per dm².",
        "In {film} of {base} {pct} of {cand} leaves {count} per dm².",
        "{if_free}The last bubble had burst well before the mix began to draw threads; {count} per dm² are in the"
        " cured film.",
        "{if_best}Best of its round: {count} per dm² against {blank}.",
    ),
    "because": (
        "It had what it asks for: {tip} m/s for {min} min, then a rest.",
        "Strong enough to break the small ones, at home enough not to open the surface.",
        "{if_air}Air content of the mix and film say the same.",
        "Cup to cup it holds within a third.",
    ),
    "next": (
        "{if_early}Take {pct} into the next round.",
        "{if_early}Now the oven and the second coat.",
        "{if_early}Worth a thicker film and a cold day before anybody is told.",
        "Do not go lower without four cups.",
        "Note the shear with the dosage: one is nothing without the other.",
        "{if_early}Still to be shown stored.",
        "As a working dosage a little above {pct}, away from the steep part.",
        "{if_none}None found on a square decimetre only says fewer than three: count a larger panel.",
        "Keep the panel as the picture of what good looks like here.",
    ),
}
THIN_ONLY = {
    "seen": (
        "Good at {film} ({count} per dm²), full at {thick_film}: {thick} per dm².",
        "{cand} at {pct} lets {film} out of its air and gives up at {thick_film}: {count} and {thick} per dm².",
        "Foam-free, or nearly, at {film}. At {thick_film} {thick} bubbles per dm² stay below the surface.",
    ),
    "because": (
        "The way up through {thick_film} is twice as long and the pot life is the same.",
        "Micro-foam can't rise through {thick_film} before it sets.",
    ),
    "next": (
        "Say the thickness with the dosage: {pct} at {film}, not more.",
        "Two coats, or a stronger one than {pct} of {cand} against small bubbles.",
        "Every candidate for a thick floor gets a panel at twice the film.",
    ),
}
WARM_ONLY = {
    "seen": (
        "Holds at 23 and 30 °C, not at 10 °C: {cold} per dm² there with {pct} of {cand}, {count} over all.",
        "At 10 °C the mix is three times as thick and {cold} bubbles per dm² stay, cold blank {cold_blank}.",
    ),
    "because": (
        "Cold resin holds small bubbles, and no dosage changes the viscosity.",
        "The effect of {cand} is there, {cold} against {cold_blank}; there is simply more to be let out.",
    ),
    "next": (
        "From 15 °C upwards only, or warm the tins overnight.",
        "Put a lower limit of temperature into the recommendation.",
        "Warm A to 20 °C before mixing on cold sites, and try again.",
    ),
}
WEAKER_STORED = {
    "seen": (
        "Fresh {count}, from the stored tin {stored} per dm² with {pct} of {cand}: weaker, not gone.",
        "After 28 days at 50 °C {cand} still helps ({stored} per dm², stored blank {stored_blank}), less than"
        " fresh ({count}).",
    ),
    "because": ("Some of it has gone into the resin or onto the lid.", "Stirring up the tin helped a little."),
    "next": (
        "Add a third to the dosage if it has to stand for a summer.",
        "Shelf life with the additive: three months, then look again.",
    ),
}
FIRST_CRATERS = {
    "seen": (
        "{count} bubbles per dm² and the first craters (grade {craters}) with {cand} at {pct}.",
        "At {pct} a crater here and there, {craters}; bubbles {count} per dm².",
        "{pct} of {cand} is the edge: single craters at the rim of the panel, grade {craters}.",
    ),
    "because": (
        "{if_next_over}This is the onset; the next step up is over-dosed.",
        "Fewer bubbles than at {lower_worse}, but not by as much as the craters cost.",
    ),
    "next": (
        "Take {pct} as where the window ends, not as part of it.",
        "Work below it: a balance on site is not ours.",
        "{if_floor}For dull filled floors acceptable, not for gloss.",
    ),
}
SLIGHTLY_HAZY = {
    "seen": (
        "Bubbles {count} per dm², and a slight haze of {haze} over black at {pct} of {cand}.",
        "{cand} at {pct}: one sees the veil only in {film} and over black ({haze}). {count} per dm².",
        "Haze {haze}, the blank none. Bubbles {count} per dm².",
    ),
    "because": (
        "It is at the border of what the resin takes in.",
        "The veil is the additive: warming did not clear it.",
    ),
    "next": (
        "For thin layers and tinted casts.",
        "Show the cast over black before offering {cand}.",
        "Half of it would be clear; whether it is enough is for the next round.",
    ),
}
ONE_CUP = {
    "seen": (
        "Only one cup of {cand} at {pct} is left to judge by ({count} per dm², blank {blank}); the other was"
        " no fair test.",
        "{count} per dm² from a single cup of {pct}. It looks good, and one cup is one cup.",
    ),
    "because": ("Equal cups differ by a third here.", "The batch is the unit, two panels of it are not two."),
    "next": ("Make it again beside a new blank.", "Repeat {pct} in the next series; do not pool it with this one."),
}
TOO_FEW = {
    "seen": ("No cup of {cand} at {pct} was a fair test.",),
    "because": ("Nothing to judge by.",),
    "next": ("Repeat {pct}.",),
}
TOPPED_UP = {
    "seen": (
        "Topped up from the cup before to {pct} of {cand}: good for finding the region, not for the table.",
        "One cup, taken up to {pct} step by step; the head went down each time.",
    ),
    "because": (
        "It has been stirred more often than the others and is not independent of them.",
        "Each step adds shear as well as additive.",
    ),
    "next": ("Use it to choose the ladder, then make the steps fresh.", "Never count topped-up cups as cups."),
}
