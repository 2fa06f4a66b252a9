"""One or two sentences that people took away from a whole series, in their own words."""

SERIES_LESSONS = {
    "ef-1": "Three mild ones, three films full of bubbles. A grey floor of 2 mm needs something stronger than"
    " what goes in with a spatula, and the head on the cup tells nothing about the film.",
    "ef-2": "Wax and oil were given six metres a second and ask for more: we learnt about our stirring, not about"
    " them. AR-04 asked for little and did best.",
    "ef-3": "Above 0.4 % AR-04 gains little. AR-02 needs 1.2 % for what AR-04 does at a third of that.",
    "ef-4": "Oil rings in the tin after the oven: AR-04 is dead after four weeks at 50 °C. Store before you ladder.",
    "ef-5": "AR-08 and AR-09 do at 0.2 and 0.3 % what AR-04 does, and have not yet seen the oven. AR-07 is dead"
    " weight in epoxy: its polyol has nobody to react with.",
    "ef-6": "AR-08 goes from too little to craters within a factor of four; AR-09 has room on both sides.",
    "ef-7": "The second coat crawls on AR-08, every cup, while AR-09 lets it lie flat. One panel more in the"
    " scout would have told us six weeks earlier.",
    "ef-8": "How many rpm to stir in? Not a spatula's. At a third of a metre per second strong candidates look"
    " like duds, and none of these cups may be counted.",
    "ef-9": "The same five on the 40 mm disc at 5800 rpm: what did nothing with the spatula clears the film.",
    "ef-10": "Neat siloxanes: AR-12 from 0.1 %, craters at 0.15 %; AR-13 from 0.2 %, craters at 0.4 %. Weigh them"
    " into the grind, from a dilution.",
    "ef-11": "Silicone-free is possible: AR-14 does at 1 % what AR-09 does at a third to a half of it, and wants"
    " its ten minutes.",
    "ef-12": "At 10 °C the mix is three times as thick, and bubbles stay that would have risen. Warm the tins.",
    "ef-13": "Both come out of the oven as they went in.",
    "ef-14": "Pinholes only on concrete, in rows, more as the slab warms, none on glass: outgassing. Prime it and"
    " pour in the afternoon; the additive is innocent.",
    "ef-15": "Same tip speed, same film: the pilot repeats the cup. A spiked roller at 28 min leaves needle holes"
    " that no additive closes.",
    "ef-16": "Fish-eyes with a speck in the blank and in every other cup: contamination from the wash-up. Nothing"
    " here says anything about a candidate. Blanks first, silicone last, clean check always.",
    "ef-17": "Boiled-out vessels, silicone last, clean check clean: the fish-eyes are gone and the order of"
    " candidates is plain.",
    "ef-18": "Lot R-7730 of the resin is thicker, and its blank holds half as many bubbles again. Compare with the"
    " blank of the same batch, never with the blank in your memory.",
    "ef-19": "With the ratio set right the blank stays where the new lot put it, and AR-09 needs 0.6 % for what"
    " 0.4 % did before.",
    "ef-20": "White sticky floor after a cold night: amine blush, in the blank too, gone with warm water. Send the"
    " layer the dew-point table.",
    "ef-21": "What is good at 2 mm is not yet good at 4 mm. Twice the way up, the same pot life.",
    "ec-1": "Milky epoxy, blank included: crystals of the resin. Look into the drum before looking for haze of an"
    " additive.",
    "ec-2": "Warmed to 60 °C until clear, the same resin casts clear, and what is milky now is the additive.",
    "ec-3": "In clear systems haze decides first and bubbles second. AR-13 is out at sight, AR-09 and AR-10 stay"
    " clear.",
    "ec-4": "Craters from over-dosing come earlier in clear than in filled systems. Stop AR-09 at 0.4 %: a veil"
    " at 0.6 %, the first craters at 0.8 %.",
    "ec-5": "Silicone-free in a clear casting: AR-02 is clear and slow, AR-14 is quick and cloudy. Between them"
    " one has to choose what to be unhappy about.",
    "ec-6": "A new resin does not change the order of the candidates, only the haze of the blank.",
    "ec-7": "AR-15 by hundredths: 0.04 % is nearly enough, 0.08 % leaves a veil, 0.12 % craters. AR-09 at 0.4 %"
    " is the easier way.",
    "ec-8": "Stored casts tell AR-04 from the others at a glance: oil rings on the tin, bubbles in the cast.",
    "ec-9": "The casting hall in winter is a different base: blank and treated hold two to three times what they"
    " hold at 30 °C.",
    "bc-1": "Half a millimetre of bubble is a breakdown. AR-15, AR-11 and AR-07 come nearest; none is below three"
    " per dm² yet.",
    "bc-2": "AR-15 at 0.1 % in the coil resin, craters from 0.15 %. AR-07 comes near at 1.5 % and costs more per"
    " kilogram of resin.",
    "uf-1": "Bubbles that come back after an hour are carbon dioxide. They are in the degassed cup too, so no"
    " additive can have them.",
    "uf-2": "Strong ones do not cure it either. The density of the mix falls as it should, and the film fills all"
    " the same: gas, not air.",
    "uf-3": "More of it does not help: the ladder is flat at the level of the degassed cup. Measure the water of"
    " the filler.",
    "uf-4": "Filler lot F-3308 had 0.34 % of water. Dried overnight, the late bubbles are gone from the blank as"
    " well.",
    "uf-5": "Dry recipe, the usual order again: now it is worth comparing additives in this floor.",
    "uf-6": "AR-11 and AR-07 suit polyurethane. Hardness still rises from the first week to the fourth; AR-07"
    " costs a point or two of it, because its polyol reacts.",
    "uf-7": "Craters in white polyurethane at 0.15 % of a neat siloxane, none at 0.1 %: over-dosed, nothing else."
    " The customer's balance reads to a gram.",
    "uf-8": "Second coat crawls on AR-08, at half the dosage too. AR-11 takes the second coat.",
    "uf-9": "Foam-free at 2 mm, full at 4 mm. Ask for the film thickness before the dosage.",
    "uf-10": "A drill with a paddle gives less than a metre a second: nothing that needs shear can be judged after"
    " it.",
    "uf-11": "AR-11 survives the oven, AR-04 does not: it floats on top of the tin in rings.",
    "uf-12": "The plant's batch is as good as the cup, before and after the filter.",
    "pf-1": "With nine minutes of pot life only what is quick has a chance under the roller.",
    "pf-2": "AR-08 works under the roller at 0.4 % and craters from 0.6 %; AR-01 can be doubled without harm or use.",
    "pf-3": "Two coats in one day: on AR-08 the second crawls, on AR-10 it peels. Polymers let it lie.",
    "pf-4": "Slow aspartate: the blank hardly moves, the candidates gain because they have the time.",
    "pf-5": "AR-14 from 0.8 %, AR-15 from 0.05 %: the same film, and per kilogram of coating the dear one is the"
    " cheaper.",
    "pf-6": "After a summer in the van AR-14 is as on the first day.",
    "bb-1": "There may be a defoamer in Hallsby's A already; there is room for more.",
    "bb-2": "Dosed on component A the window looks a fifth higher than on the total. Write the basis beside the"
    " number.",
    "bb-3": "Blanks beaten for a minute, the rest for three: a calm blank has fewer bubbles, and every additive"
    " looks worse than it is. All of it again.",
    "bb-4": "Hallsby's new batches hold more air than the old ones, blank against blank. And the additive in use"
    " fades in the tin, which no batch of theirs explains.",
    "em-1": "Pinholes after flash-off are solvent. Candidates that come in solvent make them, candidates without"
    " do not.",
    "em-2": "Sprayed at 250 µm AR-16 works from 0.5 % and craters at 1.2 %; AR-11 stays at thirty bubbles.",
}
