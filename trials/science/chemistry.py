"""Which reactive groups meet in which chemistry, and the index that is usual there.

A carrier or an impurity counts only where its group reacts at the temperature of a floor or a casting: a
glycidyl ether counts with amines, a hydroxyl or water counts with isocyanates, and elsewhere they stay in
the film as inert mass. Common practice, no source.
"""

from collections.abc import Mapping
from dataclasses import dataclass

from trials.science._refuse import answer, not_negative, one_of, positive

GROUPS = (
    "epoxide",
    "amine hydrogen",
    "isocyanate",
    "hydroxyl",
    "aspartate amine",
    "thiol",
    "anhydride",
    "acrylate",
    "water",
)

# Amines add to acrylates and open anhydrides at room temperature, and take isocyanate before anything else
# does, so those three use up hardener as epoxide does. Hindered aspartates do not cure epoxide without heat.
_EPOXY_AMINE = {
    "epoxide": "resin",
    "acrylate": "resin",
    "anhydride": "resin",
    "isocyanate": "resin",
    "amine hydrogen": "hardener",
    "thiol": "hardener",
}
# Isocyanate opens neither epoxide nor anhydride nor acrylate at room temperature.
_ISOCYANATE = {
    "isocyanate": "hardener",
    "hydroxyl": "resin",
    "amine hydrogen": "resin",
    "aspartate amine": "resin",
    "thiol": "resin",
    "water": "resin",
}
_SIDES = {"epoxy-amine": _EPOXY_AMINE, "polyurethane": _ISOCYANATE, "polyaspartic": _ISOCYANATE}

CHEMISTRIES = tuple(_SIDES)


@dataclass(frozen=True, slots=True)
class Band:
    """Index from low to high; most systems stand between the usual two. ``over``: which over which."""

    low: float
    usual_low: float
    usual_high: float
    high: float
    over: str


@dataclass(frozen=True, slots=True)
class Balance:
    """Equivalents of the hardener's groups over those of the resin's.

    ``index`` leaves water out, as data sheets do; ``index_with_water`` counts it where it reacts. ``inert``
    names the groups that were given and take no part.
    """

    index: float
    index_with_water: float
    numerator_eq: float
    denominator_eq: float
    water_eq: float
    over: str
    inert: tuple[str, ...]


_BANDS = {
    "epoxy-amine": Band(0.85, 0.95, 1.00, 1.05, "amine hydrogen over epoxide"),
    "polyurethane": Band(1.00, 1.00, 1.10, 1.10, "isocyanate over hydroxyl"),
    "polyaspartic": Band(1.05, 1.05, 1.15, 1.15, "isocyanate over aspartate amine"),
}


def index_band(chemistry: str) -> Band:
    """Index at which systems of a chemistry are usually sold.

    Parameters
    ----------
    chemistry : str
        One of ``CHEMISTRIES``.

    Returns
    -------
    Band
        With the words that say which groups stand over which.

    Raises
    ------
    ValueError
        Where the chemistry is unknown.

    Notes
    -----
    Common practice, no source. Excess amine blushes; excess isocyanate is meant to make up for moisture.

    Examples
    --------
    >>> index_band("polyaspartic").over
    'isocyanate over aspartate amine'
    """
    return _BANDS[one_of("chemistry", chemistry, CHEMISTRIES)]


def side(group: str, chemistry: str) -> str | None:
    """The side a group reacts on: "resin", "hardener", or ``None`` where it is inert.

    Parameters
    ----------
    group : str
        One of ``GROUPS``.
    chemistry : str
        One of ``CHEMISTRIES``.

    Returns
    -------
    str or None

    Raises
    ------
    ValueError
        Where the group or the chemistry is unknown.

    Notes
    -----
    Common practice, no source: reactions that run at room temperature.

    Examples
    --------
    >>> side("hydroxyl", "polyurethane"), side("hydroxyl", "epoxy-amine")
    ('resin', None)
    """
    sides = _SIDES[one_of("chemistry", chemistry, CHEMISTRIES)]
    return sides.get(one_of("group", group, GROUPS))


def reacts(group: str, chemistry: str) -> bool:
    """Whether a group takes part in a chemistry; else it is inert there.

    Parameters
    ----------
    group : str
        One of ``GROUPS``.
    chemistry : str
        One of ``CHEMISTRIES``.

    Returns
    -------
    bool

    Raises
    ------
    ValueError
        Where the group or the chemistry is unknown.

    Notes
    -----
    Common practice, no source: reactions that run at room temperature.

    Examples
    --------
    >>> reacts("water", "polyurethane"), reacts("water", "epoxy-amine")
    (True, False)
    """
    return side(group, chemistry) is not None


def balance(equivalents_by_group: Mapping[str, float], chemistry: str) -> Balance:
    """Index of everything in a batch, group by group.

    Parameters
    ----------
    equivalents_by_group : mapping of group to float
        Moles of groups in both components together, 0 or more. For an amine against isocyanate count one per
        nitrogen: the second hydrogen does not react at room temperature.
    chemistry : str
        One of ``CHEMISTRIES``.

    Returns
    -------
    Balance

    Raises
    ------
    ValueError
        Where a group is unknown, a number impossible, or no group of the resin is there to be balanced.

    Notes
    -----
    Ratio of equivalents, as ASTM D7997 defines the index for isocyanates; water takes two isocyanates per
    mole.

    Examples
    --------
    >>> batch = balance({"isocyanate": 1.05, "hydroxyl": 1.0, "water": 0.02, "epoxide": 0.1}, "polyurethane")
    >>> batch.index, round(batch.index_with_water, 3), batch.inert
    (1.05, 1.029, ('epoxide',))
    """
    over = index_band(chemistry).over
    moles = {"resin": 0.0, "hardener": 0.0, None: 0.0}
    water, inert = 0.0, []
    for group, equivalents in equivalents_by_group.items():
        where = side(group, chemistry)
        amount = not_negative(f"equivalents_by_group[{group!r}]", equivalents)
        if where is None:
            inert.append(group)
        elif group == "water":
            water += amount
        else:
            moles[where] += amount
    numerator = moles["hardener"]
    denominator = positive(f"resin equivalents of equivalents_by_group in {chemistry}", moles["resin"])
    given = {"equivalents_by_group": dict(equivalents_by_group)}
    return Balance(
        index=answer(numerator / denominator, **given),
        index_with_water=answer(numerator / answer(denominator + water, **given), **given),
        numerator_eq=numerator,
        denominator_eq=denominator,
        water_eq=water,
        over=over,
        inert=tuple(inert),
    )
