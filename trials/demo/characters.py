"""What people came to think of each candidate, a sentence at a time; common practice, no source."""

CHARACTERS = {
    "AR-01": (
        "A gentle one: it never hurt a film here and never saved one that was full.",
        "Goes in with a spatula if need be, and does about as much.",
        "Thin and clear is its place.",
    ),
    "AR-02": (
        "Honest and slow: twice the dosage of others, no harm done.",
        "Thick in the cold; from a warm syringe it weighs well.",
        "Without silicone this is where one starts.",
    ),
    "AR-03": (
        "It kills the head on the cup at once, which pleases everybody until the film is looked at.",
        "Mostly solvent, and it smells like it.",
        "For the look of the cup, not of the floor.",
    ),
    "AR-04": (
        "Pleasant to stir in and forgiving by a factor of two.",
        "Its trouble is in the oven, not in the film.",
        "Everybody likes it fresh.",
    ),
    "AR-05": ("A wax wants the grind and warmth; later it is sand.", "It costs gloss before it costs bubbles."),
    "AR-06": (
        "Old-fashioned oil and silica: cheap, and at home in dull filled things.",
        "The head goes, the small ones stay.",
    ),
    "AR-07": (
        "Without shear it sleeps; with it, it is one of the best in polyurethane.",
        "In epoxy its polyol is dead weight.",
        "The polyol counts in the index, a little: hardness falls by a point or two.",
    ),
    "AR-08": (
        "Quick and strong, with a short way to the first crater.",
        "Ask about the second coat before praising it.",
        "A little goes a long way; a little more goes too far.",
    ),
    "AR-09": (
        "It takes the small ones too, which few do.",
        "Its ether counts with amine; in polyurethane it only lies about.",
        "Never the cheapest, seldom wrong.",
    ),
    "AR-10": ("It smooths everything, other people's craters too.", "Dear, and nothing sticks to it afterwards."),
    "AR-11": (
        "The middle of the road, and made for polyurethane.",
        "A first try that is seldom a bad one.",
        "In clear epoxy it leaves a veil.",
    ),
    "AR-12": (
        "A tenth of the dosage of others, and a tenth of their patience.",
        "Into the grind, weighed twice.",
        "Neat siloxane forgives nothing.",
    ),
    "AR-13": (
        "The silica does half of the work: roll the bottle, or you weigh oil.",
        "Strong in everything that is opaque.",
    ),
    "AR-14": (
        "The best without silicone, if it gets its ten minutes of disc.",
        "Needs the dissolver; a paddle leaves it in lumps.",
    ),
    "AR-15": (
        "For what nothing else clears, by hundredths of a per cent, at a price per gram.",
        "Between too little and too much lies a twentieth of a per cent.",
    ),
    "AR-16": ("Shake it: particles below, solvent above.", "Good value against the air of the disc."),
}
