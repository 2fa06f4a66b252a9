"""The stories by the reason that a verdict names."""

from . import stories_effect as effect
from . import stories_harm as harm
from . import stories_unfair as apart

STORIES = {
    "gas": harm.GAS,
    "over-dosed": harm.OVER_DOSED,
    "hazy": harm.HAZY,
    "bleeds": harm.BLEEDS,
    "crawls": harm.CRAWLS,
    "sheds": harm.SHEDS,
    "blushes": harm.BLUSHES,
    "outgasses": harm.OUTGASSES,
    "solvent": harm.SOLVENT,
    "dies stored": harm.DIES_STORED,
    "late spikes": harm.LATE_SPIKES,
    "no effect": effect.NO_EFFECT,
    "too little": effect.TOO_LITTLE,
    "in the scatter": effect.SCATTER,
    "misses the limit": effect.MISSES,
    "better, not good": effect.BETTER,
    "works": effect.WORKS,
    "thin only": effect.THIN_ONLY,
    "warm only": effect.WARM_ONLY,
    "weaker stored": effect.WEAKER_STORED,
    "first craters": effect.FIRST_CRATERS,
    "slightly hazy": effect.SLIGHTLY_HAZY,
    "one cup": effect.ONE_CUP,
    "too few": effect.TOO_FEW,
    "topped up": effect.TOPPED_UP,
}
UNFAIR_STORIES = {
    "misweighed": apart.MISWEIGHED,
    "other film": apart.OTHER_FILM,
    "spilled": apart.SPILLED,
    "stood": apart.STOOD,
    "under-sheared": apart.UNDER_SHEARED,
    "specks": apart.SPECKS,
    "blank stirred less": apart.BLANK_STIRRED_LESS,
    "milky": apart.MILKY,
}
