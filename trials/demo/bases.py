"""The bases of the demonstration, in the order in which they came to the laboratory."""

from . import black_boxes, epoxies, isocyanates

BASES = (
    epoxies.FLOOR,
    epoxies.CASTING,
    isocyanates.FLOOR,
    isocyanates.TOP_COAT,
    black_boxes.FLOOR,
    epoxies.TANK,
    black_boxes.COIL,
)
