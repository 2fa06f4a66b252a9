"""What is asked about bubbles in a film, how it can be answered, and how to find out. Common practice, no source."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Question:
    """``answers`` maps a key to its words; ``check`` is what to do where nobody knows the answer."""

    key: str
    text: str
    answers: dict[str, str]
    check: str


_YES_NO = {"yes": "yes", "no": "no"}

QUESTIONS = (
    Question(
        "when",
        "When do they appear?",
        {
            "at once": "there from the first minute",
            "growing": "from 20 to 60 minutes on, and growing",
            "flash-off": "as the solvent leaves, or after it",
        },
        "Pour a fresh panel and look at it at 0, 20, 60 and 120 minutes.",
    ),
    Question(
        "where",
        "Where are they?",
        {
            "evenly": "evenly over the whole film",
            "rows": "in rows or spots, over pores and cracks",
            "specks": "single ones around a speck",
            "streaks": "in streaks or swirls, as it was mixed or poured",
        },
        "Look at the film from above and in slanting light, with a lens.",
    ),
    Question(
        "looks",
        "How do they look?",
        {
            "round": "round bubbles of several sizes",
            "skin": "pinholes or blisters under a skin",
            "craters": "craters, with a speck in the middle",
            "fine": "milky, fine bubbles under a lens",
            "milky": "milky, no bubble under a lens",
        },
        "Cut or sand the film and look at it under a lens of ten times or more.",
    ),
    Question(
        "degassed",
        "Does a degassed cup, poured on glass, have them too?",
        _YES_NO,
        "Degas a cup after mixing and pour it on glass. A vacuum vessel can implode: take one made for it, behind"
        " a shield.",
    ),
    Question(
        "substrate",
        "On glass and on the porous block or concrete?",
        {"alike": "on both alike", "porous": "only on the porous one"},
        "Pour the same mix on glass and on a dry porous block, side by side.",
    ),
    Question(
        "blank",
        "In the blank and in the treated cups?",
        {
            "alike": "in both alike",
            "treated": "only in treated cups",
            "fewer treated": "in the blank, fewer or none in treated cups",
        },
        "Make a blank from the same common batch, stirred alike, on the same day.",
    ),
    Question(
        "humidity",
        "Worse when the air or the material is humid?",
        _YES_NO,
        "Pour one panel in dry air and one in humid air, and have the water of A measured.",
    ),
    Question(
        "warming",
        "Worse as the substrate warms (sun, heated floor)?",
        _YES_NO,
        "Pour one panel on a block that cools down and one on a block that warms up.",
    ),
    Question(
        "warmed",
        "Does a milky sample clear when it is warmed?",
        {"clears": "it clears, and stays clear at room temperature", "stays": "it stays milky"},
        "Warm a sample of the milky component to 50 to 60 °C, lid loose, after reading its safety data sheet.",
    ),
    Question(
        "mixing",
        "Is A free of them until B is mixed in?",
        _YES_NO,
        "Let A stand until it is free of bubbles, mix B in slowly by hand, and pour beside one mixed as usual.",
    ),
    Question(
        "isocyanate",
        "Does it cure with isocyanate?",
        _YES_NO,
        "Read the safety data sheet of component B.",
    ),
    Question(
        "solvent",
        "Is there solvent in it, or in the additive?",
        _YES_NO,
        "Read the safety data sheets, or weigh a sample before and after a day in a dish.",
    ),
)
BY_KEY = {question.key: question for question in QUESTIONS}
