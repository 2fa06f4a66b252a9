"""Emissions into rooms: sums and comparisons only.

Nothing here is a verdict of compliance: that takes an accredited test, the scheme's current limits and a qualified
person.
"""

from collections.abc import Mapping, Sequence

from trials.science._refuse import answer, not_negative, numbers, positive, same_length


def risk_index(
    concentrations_ug_m3: Sequence[float], limits_ug_m3: Sequence[float], *, smallest_ug_m3: float = 5.0
) -> float:
    """Sum of each substance's concentration over its lowest concentration of interest (the R value).

    Parameters
    ----------
    concentrations_ug_m3 : sequence of float, n substances
        µg/m³, 0 or more.
    limits_ug_m3 : sequence of float, n substances
        Lowest concentrations of interest, µg/m³, above 0.
    smallest_ug_m3 : float
        Concentrations below this do not count, µg/m³, 0 or more.

    Returns
    -------
    float

    Raises
    ------
    ValueError
        Where a number is impossible or the columns differ in length.

    Notes
    -----
    Σ c/LCI over substances of at least 5 µg/m³: EN 16516 and the indoor-emission schemes built on it.

    Examples
    --------
    >>> risk_index([220.0, 60.0, 4.9], [440.0, 500.0, 100.0])
    0.62
    """
    found = numbers("concentrations_ug_m3", concentrations_ug_m3, not_negative, min_size=0)
    limits = numbers("limits_ug_m3", limits_ug_m3, positive, min_size=0)
    same_length(concentrations_ug_m3=found, limits_ug_m3=limits)
    smallest = not_negative("smallest_ug_m3", smallest_ug_m3)
    index = sum((c / lci for c, lci in zip(found, limits, strict=True) if c >= smallest), 0.0)
    return answer(index, concentrations_ug_m3=concentrations_ug_m3, limits_ug_m3=limits_ug_m3)


def room_concentration_ug_m3(emission_ug_m2_h: float, loading_m2_m3: float, air_change_per_h: float) -> float:
    """Steady concentration in a room.

    Parameters
    ----------
    emission_ug_m2_h : float
        Specific emission rate, µg/(m²·h), 0 or more.
    loading_m2_m3 : float
        Area of the coating per volume of the room, m²/m³, 0 or more; a floor has 0.4 in the reference room.
    air_change_per_h : float
        1/h, above 0; 0.5 in the reference room.

    Returns
    -------
    float
        µg/m³.

    Raises
    ------
    ValueError
        Where a number is impossible.

    Notes
    -----
    SER·L/n; reference room of EN 16516 from memory.

    Examples
    --------
    >>> room_concentration_ug_m3(250.0, 0.4, 0.5)
    200.0
    """
    source = not_negative("emission_ug_m2_h", emission_ug_m2_h) * not_negative("loading_m2_m3", loading_m2_m3)
    concentration = source / positive("air_change_per_h", air_change_per_h)
    return answer(concentration, emission_ug_m2_h=emission_ug_m2_h, air_change_per_h=air_change_per_h)


def above(values: Mapping[str, float], limits: Mapping[str, float]) -> tuple[str, ...]:
    """Names of the values above their limit, in the order of ``values``.

    Parameters
    ----------
    values, limits : mapping of name to float
        In the same unit, 0 or more. A value without a limit and a limit without a value are passed over: an empty
        answer says that nothing measured is above, and never that all is well.

    Returns
    -------
    tuple of str

    Raises
    ------
    ValueError
        Where a number is impossible.

    Notes
    -----
    A value equal to its limit is not above it.

    Examples
    --------
    >>> above({"TVOC 28 d": 0.98, "SVOC 28 d": 0.11}, {"TVOC 28 d": 1.0, "SVOC 28 d": 0.1})
    ('SVOC 28 d',)
    """
    known = {name: not_negative(f"limits[{name!r}]", limit) for name, limit in limits.items()}
    measured = {name: not_negative(f"values[{name!r}]", value) for name, value in values.items()}
    return tuple(name for name, value in measured.items() if name in known and value > known[name])
