"""Sentences for what went wrong with the film. ``seen`` says what was there, ``because`` why, ``next`` what to do."""

GAS = {
    "seen": (
        "Clear at pouring, full of bubbles within the hour: {count} per dm² after a week, blank {blank}.",
        "Bubbles came back after about forty minutes, from below, {size} mm across, in {cand} at {pct} as in the"
        " blank.",
        "{if_air}The air content fell with {cand}, yet the film shows {count} bubbles per dm²; the blank {blank}.",
        "{cand} at {pct}: quiet at ten minutes, foam like bread at sixty.",
        "Large round bubbles of {size} mm, the more the longer one waits; {count} per dm² in the end.",
        "Looked fine when I left for half an hour. When I came back: {count} bubbles per dm² with {cand}, {blank}"
        " without.",
        "The degassed cup foams just the same, so it is not beaten-in air: {count} per dm² with {cand} at {pct}.",
    ),
    "because": (
        "That is carbon dioxide from water and isocyanate, and no defoamer cures it.",
        "Gas that is made in the film can't be let out by what works on the air that was stirred in.",
        "Filler lot F-3308 holds 0.34 % of water: by weight it makes more gas than stirring beats in.",
        "Bubbles that grow after half an hour are made there; bubbles from the whisk are there from the start.",
        "{if_air}{cand} did its own work, the density of the mix says so; the rest is water.",
        "{rh} % of humidity that day did not help; air from the stirrer would not care.",
    ),
    "next": (
        "Karl Fischer on every filler lot before the next cup of polyurethane.",
        "Dry the filler at 110 °C overnight, repeat the blank, and only then talk about {cand}.",
        "Do not raise the dosage of {cand}; measure the water.",
        "Watch a cast for an hour before judging any additive in polyurethane.",
        "Put a degassed cup on glass beside it: if that one foams too, leave the additive alone.",
        "More molecular sieve, dry filler, closed bags. Then {cand} at {pct} again.",
        "Stop at {cand} {pct}; no more additives here until the water of the batch is below 0.03 %.",
    ),
    "how": (
        "bubbles from 20 min on, growing; {count} per dm² after 7 d",
        "fine for half an hour, then bubbles of {size} mm from below",
        "foams in the degassed cup too; {count} per dm²",
        "round bubbles of {size} mm, more every time one looked",
        "surface domed up by gas, {count} open bubbles per dm²",
    ),
}
OVER_DOSED = {
    "seen": (
        "{cand} at {pct}: bubbles down to {count} per dm², and craters of grade {craters} in their place.",
        "Craters all over in the {base} at {pct} of {cand}; no speck in any of them.",
        "Round hollows with a rim, grade {craters}, from {pct} of {cand}. At {lower} there was nothing of the kind.",
        "The {base} is nearly free of bubbles at {pct} and looks like the moon: craters {craters}.",
        "At {pct} the surface opens within two minutes of pouring and never closes: craters {craters}.",
        "Fine foam gone, {count} per dm², but one would need a second coat to hide craters of grade {craters}.",
        "{kind} at {pct}: craters by the dozen, each with a drop of oil to be seen under the lens.",
        "Craters in the {base}: {craters} at {pct}, and it is the dosage, since {lower} has hardly any.",
    ),
    "because": (
        "Too much of an incompatible thing: what lies in the surface pulls the film open.",
        "No speck, so it is not dirt; the number grows with the dosage, so it is {cand} itself.",
        "In {grams} g of mix that is {mg} mg of additive: a drop more or less is the whole ladder.",
        "Bubbles level off long before the craters start. Everything above {lower} is paid for with craters.",
        "The strong ones have a narrow window; this is its far end.",
        "It was dispersed properly ({tip} m/s, {min} min), so shear is not the excuse.",
    ),
    "next": (
        "Stay below {pct} in this base; {lower} is where to look.",
        "Weigh {cand} from a dilution: at this size of batch nobody hits a hundredth of a per cent from the bottle.",
        "For this film take half of it, and read craters before bubbles.",
        "Next time start the ladder lower and stop at {lower}.",
        "If a customer reports craters at {pct}, ask for his balance before asking for his recipe.",
        "Keep the panel: it is what over-dosing of {cand} looks like.",
        "Do not repair this with a levelling additive, it only hides the onset; lower the dosage.",
    ),
    "how": (
        "craters grade {craters}, without a speck, from wall to wall",
        "hollows of 1–2 mm with a raised rim, grade {craters}",
        "craters at once after pouring, still there after 7 d ({craters})",
        "surface pulled open, craters {craters}; {lower} is closed",
        "craters {craters}; rim shines in oblique light, centre down to the substrate",
    ),
}
HAZY = {
    "seen": (
        "{cand} at {pct} clouds the clear cast: haze {haze} over black, and the blank is clear.",
        "Free of most bubbles ({count} per dm²) and milky: haze {haze} with {cand} at {pct}.",
        "{if_cloudy}A of the cup was cloudy after a day on the bench already; the cast of {film} has haze {haze}.",
        "Haze {haze} at {pct}. Nobody buys a clear table that looks like weak tea.",
        "Clear in a drop, milky in {film}: haze {haze} from {cand}.",
    ),
    "because": (
        "It is the additive: the blank from the same warmed resin is clear.",
        "Haze of this kind stays after a night at 60 °C, where crystals would have gone.",
        "What makes {cand} strong, that it does not dissolve, makes it visible here.",
        "Under the microscope droplets, no crystals and no bubbles.",
    ),
    "next": (
        "Not for anything clear. In filled systems nobody will see it.",
        "Clarity of A after a day is the cheap test: do it before pouring a single panel.",
        "Look among the mild polymers, or at AR-15 by hundredths.",
        "Half of {pct} may pass in a thin layer; in {film} it will not.",
        "Tell haze of the additive from crystals by warming: crystals go, this stays.",
    ),
    "how": (
        "milky over black, haze {haze}; blank clear",
        "cloud in the whole cast, haze {haze}, between the bubbles too",
        "{if_cloudy}A cloudy after a day, cast of {film} milky ({haze})",
    ),
}
BLEEDS = {
    "seen": (
        "A greasy film on the {base} with {cand} at {pct}, which smears and is back the next morning.",
        "{cand} at {pct} sweats out: wiped off twice, back twice.",
    ),
    "because": (
        "That is bleeding of the oil, not amine blush: there is no amine here and water does not take it off.",
        "Soft polyurethane lets paraffin oil out again.",
    ),
    "next": ("No mineral oil in soft polyurethane.", "Wipe, wait a night, look again: only bleeding comes back."),
    "how": ("greasy, smears, comes back after wiping", "oily film after 7 d"),
}
CRAWLS = {
    "seen": (
        "Lovely first coat with {cand} at {pct}, and the second coat crawls: grade {crawling}.",
        "The second coat of the {base} draws back from the first within minutes, down to bare islands ({crawling}).",
        "First coat {count} bubbles per dm², nothing to complain of. Recoated after {recoat} h the second one"
        " crawls, {crawling}.",
        "{kind} at {pct}: the second coat beads up like water on wax.",
    ),
    "because": (
        "The siloxane has come up through the first coat while it cured and lies on it.",
        "{if_other_ok}The blank and the other candidate took the second coat without a mark, so it is {cand}.",
        "{if_ladder}It grows with the dosage, and sanding helps only where one sands everything.",
    ),
    "next": (
        "Never {cand} in a first coat that is to be recoated unsanded.",
        "Ask how many coats before offering {cand}.",
        "Put a second coat on every candidate of a scout: one panel more, a complaint less.",
        "For two coats take AR-09 or a polymer; keep {cand} for the last coat.",
    ),
    "how": (
        "second coat crawls from the edges, grade {crawling}",
        "second coat draws back into islands ({crawling})",
        "wet second coat beads on the first, bare spots of a centimetre",
    ),
}
SHEDS = {
    "seen": (
        "The second coat on {cand} at {pct} looks perfect and pulls off at {adhesion} N/mm², between the coats.",
        "Pull-off {adhesion} N/mm² with {cand}, all of it between first and second coat.",
    ),
    "because": (
        "The fluorinated one levels everything and leaves nothing to hold on to.",
        "It lies on the surface, which is what it is made for.",
    ),
    "next": (
        "Only as a last coat. Say so in the offer.",
        "Pull-off on the second coat before anybody is told of {cand}.",
    ),
    "how": ("pull-off {adhesion} N/mm², plane of failure between the coats", "second coat peels in sheets after 7 d"),
}
BLUSHES = {
    "seen": (
        "White and sticky after the night at {air_c} °C and {rh} % of humidity, with {cand} as in the blank; washes"
        " off with warm water.",
        "Amine blush {blush} on every panel of the cold night; {cand} at {pct} neither makes nor mends it.",
        "A white film that comes off with warm water and does not come back: blush, grade {blush}.",
    ),
    "because": (
        "Hardener, moisture and carbon dioxide of the air make carbamate below the dew point margin; the additive"
        " has no part in it.",
        "The floor was within three degrees of the dew point half the night.",
        "Bleeding would smear and return. This is washed off once and stays away.",
    ),
    "next": (
        "Answer the customer with the weather of that night, not with another additive.",
        "Not below 12 °C with this hardener, or with fans and a dry heater until it is tack-free.",
        "Wash with warm water, sand lightly, then recoat. And note the dew-point margin on site.",
    ),
    "how": (
        "white, sticky, washed off with warm water ({blush})",
        "greyish white in the morning, grade {blush}, tacky",
    ),
}
OUTGASSES = {
    "seen": (
        "Pinholes in rows along the pores of the concrete, {pinholes} with {cand} as without; the degassed cup on"
        " glass has none.",
        "On the slab {cand} at {pct} shows pinholes of grade {pinholes}, only on the porous block and more as it"
        " warmed.",
        "Needle-fine holes that open again and again over the same pore, pinholes {pinholes}.",
    ),
    "because": (
        "The slab warmed from the morning on and breathed out through the film: outgassing, not entrained air.",
        "Same mix on glass is closed. What comes out of the concrete can't be let out by an additive.",
    ),
    "next": (
        "Prime and scratch-coat the concrete, pour in the falling temperature of the afternoon.",
        "Seal the slab first; {cand} stays at its dosage.",
        "Pinholes only on concrete: ask for the primer and for the hour of pouring.",
    ),
    "how": (
        "pinholes in rows on concrete only ({pinholes})",
        "pores of the slab drawn through the film, none on glass",
        "holes open again over the same pore while the slab warms",
    ),
}
SOLVENT = {
    "seen": (
        "Pinholes {pinholes} after flash-off with {cand} at {pct}; fresh from the gun the film was closed.",
        "{cand} brings the bubbles to {count} per dm² and leaves solvent pinholes of grade {pinholes}.",
        "Small holes that appear when the skin has formed: pinholes {pinholes} with {cand}.",
    ),
    "because": (
        "The solvent of the additive leaves last, through a skin.",
        "They come after flash-off and not before, which air does not do.",
        "At {film} the way out is long and the solution carries most of its weight as solvent.",
    ),
    "next": (
        "Thinner passes, longer flash-off, or a candidate free of solvent.",
        "Look at the film at five minutes and at forty: the difference is the solvent.",
        "Not above 2 mm with a candidate in white spirit.",
    ),
    "how": (
        "pinholes after flash-off ({pinholes}), closed before",
        "fine holes once the skin had formed, {pinholes}",
    ),
}
DIES_STORED = {
    "seen": (
        "Fresh {count} bubbles per dm² with {cand} at {pct}; after 28 days at 50 °C {stored}, and the stored blank"
        " has {stored_blank}.",
        "{if_oil}Oil rings in the tin after the oven, and the effect is gone: {stored} per dm² against {count}"
        " fresh.",
        "{if_best}{cand} was the best of the round until the tins came out of the oven: {stored} per dm², next to"
        " nothing left.",
        "Fine fresh, dead after storage: {pct} of {cand} goes from {count} to {stored} per dm².",
    ),
    "because": (
        "{if_oil}It floats out of the resin when warm; the oil on top is what was meant to work inside.",
        "{if_blank_same}The stored blank did not move much, so it is the additive and not the resin.",
        "Stirring the tin for five minutes did not bring it back.",
        "{if_fortnight}A fortnight had taken half of it already.",
    ),
    "next": (
        "Never again a recommendation of {cand} without the oven.",
        "Only where the customer adds it himself on the day.",
        "{if_oil}Look into every tin before stirring: rings on the surface are the answer.",
        "Store first, ladder afterwards: four weeks of bench time went into a dead one.",
        "28 days, not 14, and a stored blank beside it.",
    ),
    "how": (
        "{if_oil}{stored} per dm² from the stored tin, {count} fresh; oil rings on top",
        "{if_oil}effect gone after 28 d at 50 °C, oil on the surface of the tin",
        "stored film like the stored blank ({stored} and {stored_blank} per dm²)",
    ),
}
LATE_SPIKES = {
    "seen": (
        "Needle holes of the spiked roller stand in the film: rolled at {spiked} min, they no longer closed.",
        "Spiked roller at {spiked} min was too late: rows of holes as from a comb.",
        "At {spiked} min the spikes only drew holes; the cup rolled at 8 min is closed.",
    ),
    "because": (
        "With a pot life of {life} min the mix is too thick to flow back after {spiked}.",
        "{cand} had done its part; the holes are ours.",
    ),
    "next": (
        "Spiked roller within the first ten minutes or not at all.",
        "Write the minute of the roller on the sheet, and keep off the floor after fifteen.",
        "On site: one man pours, one rolls at once.",
    ),
    "how": ("needle holes in rows, roller at {spiked} min", "holes of the spikes stayed open ({pinholes})"),
}
