"""How much additive: the arithmetic between a dosage in per cent and the grams on a balance.

A dosage means nothing without its basis (what the per cent are of), its counting (is the additive itself
part of the whole) and its strength (as supplied, or of active matter). Masses called ``basis_g`` are always
free of additive. "On top" gives parts per hundred of the basis, as is usual for post-addition; "within" is
the true mass share of the finished mix. The choice among them is trade convention: common practice, no
source.
"""

from collections.abc import Mapping
from dataclasses import dataclass

from trials.science._refuse import answer, between, not_negative, one_of, percent, positive, total

COUNTINGS = ("on top", "within")
BASES = ("total", "component", "binder solids")


@dataclass(frozen=True, slots=True)
class ComponentMass:
    """What one component brings to the charge. Binder solids of ``None`` are unknown, as in a black box."""

    mass_g: float
    binder_solids_g: float | None = None


@dataclass(frozen=True, slots=True)
class Dilution:
    """What to weigh of a diluted additive, and how much of that is the carrier it brings in."""

    weighed_g: float
    carrier_g: float


def additive_g(dosage_pct: float, basis_g: float, *, counting: str = "on top", active_pct: float = 100.0) -> float:
    """Grams of additive, as supplied, that a dosage asks for.

    With p = ``dosage_pct`` / ``active_pct`` and M = ``basis_g``: "on top" p·M, "within" p·M / (1 − p).

    Parameters
    ----------
    dosage_pct : float
        Dosage of active matter in per cent, 0 to 100; 0 is the blank and asks for 0 g.
    basis_g : float
        Mass that the per cent refer to, in grams, free of additive; above 0.
    counting : {"on top", "within"}
        Whether the additive counts into the whole that the per cent are of.
    active_pct : float
        Active matter of the additive as supplied, per cent, above 0 up to 100.

    Returns
    -------
    float
        Grams as supplied.

    Raises
    ------
    ValueError
        Where a number is impossible, or a dosage "within" would leave no room for the basis (p of 1 or more).

    Notes
    -----
    Plain arithmetic of a mass share; which counting is used is common practice, no source.

    Examples
    --------
    >>> additive_g(0.5, 1250.0)
    6.25
    >>> round(additive_g(0.2, 1250.0, counting="within", active_pct=40.0), 6)
    6.281407
    """
    basis = positive("basis_g", basis_g)
    share = _share("dosage_pct", dosage_pct, counting, active_pct)
    grams = basis * share if counting == "on top" else basis * share / (1.0 - share)
    return answer(grams, dosage_pct=dosage_pct, basis_g=basis_g, active_pct=active_pct)


def dosage_pct(additive_g: float, basis_g: float, *, counting: str = "on top", active_pct: float = 100.0) -> float:
    """Dosage that a weighing amounts to: the inverse of `additive_g`.

    Additive given in several portions, or to both components, is summed before it comes here.

    Parameters
    ----------
    additive_g : float
        Grams weighed, as supplied; 0 or more.
    basis_g : float
        Mass that the per cent refer to, in grams, free of additive; above 0.
    counting : {"on top", "within"}
    active_pct : float
        Active matter of the additive as supplied, per cent, above 0 up to 100.

    Returns
    -------
    float
        Per cent of active matter. "On top" may pass 100 where more additive than basis was weighed.

    Raises
    ------
    ValueError
        Where a number is impossible or the counting unknown.

    Notes
    -----
    Plain arithmetic of a mass share; which counting is used is common practice, no source.

    Examples
    --------
    >>> dosage_pct(6.25, 1250.0)
    0.5
    >>> round(dosage_pct(6.25, 1250.0, counting="within"), 6)
    0.497512
    """
    grams = not_negative("additive_g", additive_g)
    basis = positive("basis_g", basis_g)
    active = _active_pct(active_pct)
    whole = basis if one_of("counting", counting, COUNTINGS) == "on top" else basis + grams
    return answer(grams / whole * active, additive_g=additive_g, basis_g=basis_g)


def top_up_g(
    from_pct: float, to_pct: float, basis_g: float, *, counting: str = "on top", active_pct: float = 100.0
) -> float:
    """Grams, as supplied, that lift a cup from one dosage to a higher one.

    Parameters
    ----------
    from_pct, to_pct : float
        Dosages before and after, per cent; ``to_pct`` is not below ``from_pct``.
    basis_g : float
        Mass in grams, free of additive: for "within", a 1000 g batch at 0.2 % has a basis of 998 g.
    counting : {"on top", "within"}
    active_pct : float
        Active matter as supplied, per cent, above 0 up to 100.

    Returns
    -------
    float
        Grams to add.

    Raises
    ------
    ValueError
        Where a number is impossible, or additive would have to be taken out again.

    Notes
    -----
    Difference of two values of `additive_g`.

    Examples
    --------
    >>> round(top_up_g(0.2, 0.5, 1000.0), 6)
    3.0
    >>> round(top_up_g(0.2, 0.5, 998.0, counting="within"), 6)
    3.015075
    """
    before = _share("from_pct", from_pct, counting, active_pct)
    after = _share("to_pct", to_pct, counting, active_pct)
    if after < before:
        raise ValueError(f"to_pct must not be below from_pct ({from_pct}); got {to_pct}")
    more = after - before
    if counting == "within":
        more = more / (1.0 - after) / (1.0 - before)
    return answer(positive("basis_g", basis_g) * more, from_pct=from_pct, to_pct=to_pct, basis_g=basis_g)


def basis_g(basis: str, components: Mapping[str, ComponentMass], component: str | None = None) -> float:
    """Mass that a dosage refers to.

    Parameters
    ----------
    basis : {"total", "component", "binder solids"}
        The mix of all components, one of them, or the solids of the binders in all of them.
    components : mapping of letter to ComponentMass
        Masses in grams, free of additive.
    component : str, optional
        The letter meant by the basis "component".

    Returns
    -------
    float
        Grams.

    Raises
    ------
    ValueError
        Where the basis or the component is unknown, binder solids are unknown or absent, or a mass is
        impossible.

    Notes
    -----
    Common practice, no source.

    Examples
    --------
    >>> cup = {"A": ComponentMass(1000.0, 400.0), "B": ComponentMass(250.0, 175.0)}
    >>> basis_g("total", cup), basis_g("component", cup, "A"), basis_g("binder solids", cup)
    (1250.0, 1000.0, 575.0)
    """
    one_of("basis", basis, BASES)
    if basis == "component":
        letter = one_of("component", component, components)
        return positive(f"components[{letter!r}].mass_g", components[letter].mass_g)
    if basis == "total":
        masses = [not_negative(f"components[{k!r}].mass_g", part.mass_g) for k, part in components.items()]
    else:
        masses = [_binder_solids_g(letter, part) for letter, part in components.items()]
    return total(f"components ({basis}, g)", masses)


def restate_pct(dosage_pct: float, *, from_basis_g: float, to_basis_g: float) -> float:
    """The same grams, counted on top of another basis.

    Parameters
    ----------
    dosage_pct : float
        Dosage on top of the first basis, per cent, 0 to 100.
    from_basis_g, to_basis_g : float
        The two bases in the same batch, grams, free of additive; above 0.

    Returns
    -------
    float
        Per cent on top of the second basis.

    Raises
    ------
    ValueError
        Where a number is impossible.

    Notes
    -----
    Plain arithmetic.

    Examples
    --------
    >>> restate_pct(0.5, from_basis_g=100.0, to_basis_g=125.0)
    0.4
    """
    dosage = percent("dosage_pct", dosage_pct)
    restated = dosage * positive("from_basis_g", from_basis_g) / positive("to_basis_g", to_basis_g)
    return answer(restated, dosage_pct=dosage_pct, from_basis_g=from_basis_g, to_basis_g=to_basis_g)


def recount_pct(dosage_pct: float, *, to: str) -> float:
    """The same grams counted the other way: ``to`` "within" from "on top", or back.

    Parameters
    ----------
    dosage_pct : float
        Per cent in the other counting, 0 to 100 (below 100 where it is "within").
    to : {"on top", "within"}

    Returns
    -------
    float
        Per cent.

    Raises
    ------
    ValueError
        Where the dosage is impossible in its counting.

    Notes
    -----
    p_within = p_on_top / (1 + p_on_top).

    Examples
    --------
    >>> round(recount_pct(1.0, to="within"), 6)
    0.990099
    """
    counted = "on top" if one_of("to", to, COUNTINGS) == "within" else "within"
    share = _share("dosage_pct", dosage_pct, counted, 100.0)
    return 100.0 * (share / (1.0 + share) if to == "within" else share / (1.0 - share))


def pct_from_ppm(ppm: float) -> float:
    """Per cent from parts per million by mass, 0 to 1 000 000.

    Raises
    ------
    ValueError
        Outside that range.

    Notes
    -----
    Definition of the prefix: 1 % is 10 000 ppm.

    Examples
    --------
    >>> pct_from_ppm(500.0)
    0.05
    """
    return between("ppm", ppm, 0.0, 1e6) / 10_000.0


def pct_in_component(total_pct: float, component_share_pct: float) -> float:
    """Mass share a component must carry so that the mix carries ``total_pct``, with additive in it alone.

    Parameters
    ----------
    total_pct : float
        Mass share wanted in the mix, per cent, 0 to 100.
    component_share_pct : float
        Mass share of that component (its additive included) in the mix, per cent, above 0 up to 100.

    Returns
    -------
    float
        Per cent of the component, additive included.

    Raises
    ------
    ValueError
        Where a number is impossible, or the component is smaller than the additive asked for.

    Notes
    -----
    Plain arithmetic.

    Examples
    --------
    >>> round(pct_in_component(0.3, 80.0), 6)
    0.375
    """
    total = percent("total_pct", total_pct)
    share = positive("component_share_pct", percent("component_share_pct", component_share_pct))
    if total > share:
        raise ValueError(f"total_pct must not exceed component_share_pct ({component_share_pct}); got {total_pct}")
    return total / share * 100.0


def dilution(additive_g: float, strength_pct: float) -> Dilution:
    """What to weigh of a dilution, so that small doses can be weighed at all.

    Parameters
    ----------
    additive_g : float
        Grams of additive as supplied that the cup should receive; 0 or more.
    strength_pct : float
        Additive as supplied in the dilution, per cent by mass, above 0 up to 100.

    Returns
    -------
    Dilution
        Grams of dilution, and grams of carrier within it: a carrier is brought into the cup and must be
        shown.

    Raises
    ------
    ValueError
        Where a number is impossible.

    Notes
    -----
    Plain arithmetic.

    Examples
    --------
    >>> dilution(0.2, 10.0)
    Dilution(weighed_g=2.0, carrier_g=1.8)
    """
    grams = not_negative("additive_g", additive_g)
    strength = positive("strength_pct", percent("strength_pct", strength_pct))
    weighed = answer(grams * 100.0 / strength, additive_g=additive_g, strength_pct=strength_pct)
    return Dilution(weighed_g=weighed, carrier_g=weighed - grams)


def half_step_pct(additive_g: float, balance_step_g: float) -> float:
    """Half the step of the balance as a share of the dose: the rounding no care can avoid.

    Parameters
    ----------
    additive_g : float
        Grams to be weighed, above 0.
    balance_step_g : float
        Readability of the balance in grams, above 0.

    Returns
    -------
    float
        Per cent of the dose.

    Raises
    ------
    ValueError
        Where a number is impossible: a blank weighs no additive and has no such share.

    Notes
    -----
    Plain arithmetic.

    Examples
    --------
    >>> round(half_step_pct(0.15, 0.01), 2)
    3.33
    """
    share = positive("balance_step_g", balance_step_g) / 2.0 / positive("additive_g", additive_g)
    return answer(share * 100.0, additive_g=additive_g, balance_step_g=balance_step_g)


def partner_g(
    a_g: float, parts_a: float, parts_b: float, *, additive_g: float = 0.0, additive_counts: bool = False
) -> float:
    """Grams of component B for a weighed A, at the mixing ratio by mass.

    Parameters
    ----------
    a_g : float
        Component A in grams, free of additive; 0 or more.
    parts_a, parts_b : float
        The ratio as sold, by mass; above 0.
    additive_g : float
        Additive already in A, grams; 0 or more.
    additive_counts : bool
        Whether additive counts as A: kept with the number, because both habits exist.

    Returns
    -------
    float
        Grams of B.

    Raises
    ------
    ValueError
        Where a number is impossible.

    Notes
    -----
    Which habit holds is common practice, no source.

    Examples
    --------
    >>> partner_g(1000.0, 100.0, 25.0, additive_g=5.0)
    250.0
    >>> partner_g(1000.0, 100.0, 25.0, additive_g=5.0, additive_counts=True)
    251.25
    """
    a = not_negative("a_g", a_g)
    extra = not_negative("additive_g", additive_g)
    ratio = positive("parts_b", parts_b) / positive("parts_a", parts_a)
    partner = (a + extra if additive_counts else a) * ratio
    return answer(partner, a_g=a_g, parts_a=parts_a, parts_b=parts_b, additive_g=additive_g)


def _active_pct(active_pct: float) -> float:
    return positive("active_pct", percent("active_pct", active_pct))


def _share(name: str, dosage_pct: float, counting: str, active_pct: float) -> float:
    """Additive as supplied over its whole, refused where "within" leaves nothing for the basis."""
    one_of("counting", counting, COUNTINGS)
    share = percent(name, dosage_pct) / _active_pct(active_pct)
    if counting == "within" and share >= 1.0:
        raise ValueError(
            f"{name} counted within must stay below active_pct ({active_pct}), or no room is left"
            f" for the basis; got {dosage_pct}"
        )
    return share


def _binder_solids_g(letter: str, part: ComponentMass) -> float:
    name = f"components[{letter!r}].binder_solids_g"
    if part.binder_solids_g is None:
        raise ValueError(f"{name} must be known for a dosage on binder solids; got None")
    solids = not_negative(name, part.binder_solids_g)
    if solids > not_negative(f"components[{letter!r}].mass_g", part.mass_g):
        raise ValueError(f"{name} must not exceed mass_g ({part.mass_g}); got {part.binder_solids_g}")
    return solids
