"""What the standards of rating leave to arithmetic: size classes, gloss angle and cross-cut.

Limits marked "from memory" are to be checked against one's own copy of the standard, and can be given instead.
"""

from collections.abc import Sequence
from itertools import pairwise

from trials.science._refuse import not_negative, numbers, percent, positive

ISO_4628_SIZE_LIMITS_MM = (0.2, 0.5, 5.0)
FLOOR_SIZE_CLASSES = ("<0.2 mm", "0.2–0.5 mm", "0.5–1 mm", "1–2 mm", ">2 mm")
CROSS_CUT_LIMITS_PCT = (0.0, 5.0, 15.0, 35.0, 65.0)


def size_class(diameter_mm: float, *, limits_mm: Sequence[float] = ISO_4628_SIZE_LIMITS_MM) -> int:
    """Size class of a defect seen without a lens.

    Parameters
    ----------
    diameter_mm : float
        mm, above 0. Classes 0 and 1 need a lens and have no diameter here.
    limits_mm : sequence of three rising floats
        Largest diameters of classes 2, 3 and 4, mm, each inclusive.

    Returns
    -------
    int
        2 to 5; larger is worse.

    Raises
    ------
    ValueError
        Where a number is impossible or the limits do not rise.

    Notes
    -----
    ISO 4628-1, limits from memory: up to 0.2, 0.5 and 5 mm, and above. The blister sizes of ASTM D714 run the
    other way.

    Examples
    --------
    >>> size_class(0.15), size_class(0.5), size_class(0.51), size_class(5.1)
    (2, 3, 4, 5)
    """
    limits = numbers("limits_mm", limits_mm, positive, min_size=3)
    if len(limits) != 3 or any(low >= high for low, high in pairwise(limits)):
        raise ValueError(f"limits_mm must be three rising diameters; got {limits_mm}")
    diameter = positive("diameter_mm", diameter_mm)
    return 2 + sum(diameter > limit for limit in limits)


def floor_size_class(diameter_mm: float) -> str:
    """Size class used for bubbles in floor coats.

    Parameters
    ----------
    diameter_mm : float
        mm, above 0.

    Returns
    -------
    str
        One of ``FLOOR_SIZE_CLASSES``. Limits of 0.2, 0.5 and 1 mm belong to the class above, 2 mm to the one below.

    Raises
    ------
    ValueError
        Where the diameter is impossible.

    Notes
    -----
    Common practice, no source.

    Examples
    --------
    >>> floor_size_class(0.19), floor_size_class(0.2), floor_size_class(2.0)
    ('<0.2 mm', '0.2–0.5 mm', '1–2 mm')
    """
    diameter = positive("diameter_mm", diameter_mm)
    return FLOOR_SIZE_CLASSES[sum(diameter >= limit for limit in (0.2, 0.5, 1.0)) + (diameter > 2.0)]


def gloss_angle(gloss_60: float) -> int:
    """Angle to read gloss at, from the reading at 60°.

    Parameters
    ----------
    gloss_60 : float
        Gloss units at 60°, 0 or more. Plane, opaque films without texture only.

    Returns
    -------
    int
        Degrees: 20 above 70 units, 85 below 10, else 60.

    Raises
    ------
    ValueError
        Where the reading is impossible.

    Notes
    -----
    ISO 2813 as ASTM D523 words it.

    Examples
    --------
    >>> gloss_angle(70.0), gloss_angle(70.1), gloss_angle(9.9)
    (60, 20, 85)
    """
    gloss = not_negative("gloss_60", gloss_60)
    return 20 if gloss > 70.0 else 85 if gloss < 10.0 else 60


def cross_cut_spacing_mm(dry_film_um: float, *, soft: bool = False) -> int:
    """Distance of the cuts of a cross-cut test.

    Parameters
    ----------
    dry_film_um : float
        µm, above 0 up to 250.
    soft : bool
        Soft substrate, such as wood or plaster.

    Returns
    -------
    int
        mm.

    Raises
    ------
    ValueError
        Where the thickness is impossible or beyond the test, naming what to do instead.

    Notes
    -----
    ISO 2409: up to 60 µm 1 mm on hard and 2 mm on soft substrates, up to 120 µm 2 mm, up to 250 µm 3 mm; its scope
    ends there.

    Examples
    --------
    >>> cross_cut_spacing_mm(50.0), cross_cut_spacing_mm(50.0, soft=True), cross_cut_spacing_mm(200.0)
    (1, 2, 3)
    """
    film = positive("dry_film_um", dry_film_um)
    if film > 250.0:
        raise ValueError(
            "dry_film_um must not exceed 250 for the cross-cut of ISO 2409; use pull-off (ISO 4624) or the X-cut"
            f" (ISO 16276-2); got {dry_film_um}"
        )
    if film > 120.0:
        return 3
    return 2 if soft or film > 60.0 else 1


def cross_cut_class(affected_pct: float) -> int:
    """Class of a cross-cut from the area that came off.

    Parameters
    ----------
    affected_pct : float
        Per cent of the lattice, 0 to 100.

    Returns
    -------
    int
        0 to 5; larger is worse. The classes 5B to 0B of ASTM D3359 run the other way.

    Raises
    ------
    ValueError
        Where the share is impossible.

    Notes
    -----
    ISO 2409 as quoted by an instrument maker: none, up to 5, 15, 35, 65 per cent, worse.

    Examples
    --------
    >>> cross_cut_class(0.0), cross_cut_class(5.0), cross_cut_class(66.0)
    (0, 1, 5)
    """
    affected = percent("affected_pct", affected_pct)
    return sum(affected > limit for limit in CROSS_CUT_LIMITS_PCT)
