"""All sums, in the order of a day at the bench."""

from .airing import AIR
from .dosing import DILUTION, DOSAGE, TOP_UP, WEIGHED
from .filming import FILM
from .mixing import HEAT, RATIO
from .rising import RISE
from .shearing import SHEAR
from .sizing import SIZE

SUMS = (DOSAGE, WEIGHED, TOP_UP, DILUTION, RATIO, HEAT, SHEAR, AIR, RISE, FILM, SIZE)
BY_SLUG = {one.slug: one for one in SUMS}
