"""Time and heat of curing: guides for planning, and reasons to mix small.

A large mixed mass can run away: makers of epoxy systems report that 100 g can pass 200 °C. Mix small, spread it out,
do not seal leftovers, and keep out of the fume. Safety data sheets and qualified people take precedence.
"""

from trials.science._refuse import answer, celsius, positive


def pot_life_min(known_min: float, known_c: float, at_c: float) -> float:
    """Pot life at another temperature: half for every 10 °C more.

    Parameters
    ----------
    known_min : float
        Pot life at ``known_c``, min, above 0.
    known_c, at_c : float
        °C, above −273.15.

    Returns
    -------
    float
        min, of the same mass in the same can; a thin film stays open longer.

    Raises
    ------
    ValueError
        Where a number is impossible.

    Notes
    -----
    Two makers of epoxy systems, public pages (10 °C, printed as 18 °F): a rule of thumb for some ten degrees.

    Examples
    --------
    >>> pot_life_min(60.0, 20.0, 30.0)
    30.0
    """
    minutes = positive("known_min", known_min)
    tens = (celsius("at_c", at_c) - celsius("known_c", known_c)) / 10.0
    try:
        life = minutes * 2.0**-tens
    except OverflowError:
        life = float("inf")
    return answer(life, known_min=known_min, known_c=known_c, at_c=at_c)


def adiabatic_rise_k(
    equivalent_mass_g: float, *, heat_kj_eq: float = 105.0, heat_capacity_j_g_k: float = 2.0
) -> float:
    """Rise in temperature if no heat gets out of the mix.

    Parameters
    ----------
    equivalent_mass_g : float
        Grams of mix that hold one equivalent, resin and hardener together with all that is inert, above 0.
    heat_kj_eq : float
        Heat of reaction, kJ per equivalent, above 0; 105 for epoxide with amine.
    heat_capacity_j_g_k : float
        J/(g·K), above 0.

    Returns
    -------
    float
        K; an upper bound for a large mass.

    Raises
    ------
    ValueError
        Where a number is impossible.

    Notes
    -----
    Heat balance; the two default figures are from memory.

    Examples
    --------
    >>> round(adiabatic_rise_k(190.0 + 42.6))
    226
    """
    heat = 1000.0 * positive("heat_kj_eq", heat_kj_eq) / positive("equivalent_mass_g", equivalent_mass_g)
    rise = heat / positive("heat_capacity_j_g_k", heat_capacity_j_g_k)
    return answer(rise, equivalent_mass_g=equivalent_mass_g, heat_kj_eq=heat_kj_eq)
