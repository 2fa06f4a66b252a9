"""How many cups, what they can show, and in which order to make them."""

import hashlib
import math
from collections.abc import Sequence
from dataclasses import dataclass

import scipy  # its submodules load on first use, so that the web server starts without them

from trials.science import many_to_one
from trials.science._groups import SIDES
from trials.science._refuse import between, finite, one_of, positive, whole

MOST = 1e6
MOST_ARMS = 100
RULES = (
    "random",
    "blanks first, dosage ascending",
    "silicone-free before silicone",
    "blanks first, silicone-free before silicone, dosage ascending",
)
# What is made without additive and so cannot soil the equipment for the others.
WITHOUT_ADDITIVE = ("blank", "vacuum reference")


@dataclass(frozen=True, slots=True)
class Cup:
    """What decides on a cup's place. ``part``: treated, blank, incumbent, vacuum reference or clean check."""

    code: str
    part: str = "treated"
    dosage_pct: float = 0.0
    silicone: bool = False


def power(
    n: float,
    difference: float,
    standard_deviation: float,
    *,
    arms: int = 1,
    alpha: float = 0.05,
    side: str = "two-sided",
) -> float:
    """Probability that one treatment is shown to differ from the control, with n cups in each of them.

    Parameters
    ----------
    n : float
        Cups in each treatment and in the control, 2 to a million.
    difference : float
        True difference of the means, above 0, in the unit of the values.
    standard_deviation : float
        Between cups of one kind, above 0, same unit.
    arms : int
        Treatments compared with the one control, 1 to 100. Above 1 the limit is Dunnett's for so many, and the
        power is that of one named treatment, not of all.
    alpha : float
        Chance of a false alarm, of all comparisons together, 0.0001 to 0.5.
    side : {"two-sided", "less", "greater"}
        "less" and "greater" stand for the side on which the difference lies.

    Returns
    -------
    float
        0 to 1.

    Raises
    ------
    ValueError
        For numbers out of range or an unknown side.

    References
    ----------
    J. Cohen, Statistical Power Analysis for the Behavioral Sciences (1988), chapter 2; C. W. Dunnett, J. Am.
    Stat. Assoc. 50 (1955) 1096-1121.

    Examples
    --------
    >>> round(power(20, 0.5, 1.0), 4)
    0.3379
    """
    n = between("n", n, 2.0, MOST)
    effect = _effect(difference, standard_deviation)
    return _power(n, effect, _arms(arms), _alpha(alpha), one_of("side", side, SIDES))


def trials_per_arm(
    difference: float,
    standard_deviation: float,
    *,
    arms: int = 1,
    power: float = 0.8,
    alpha: float = 0.05,
    side: str = "two-sided",
) -> float:
    """Cups needed in each treatment and in the control to show a difference. Round up.

    Parameters
    ----------
    difference : float
        Difference worth detecting, above 0, in the unit of the values.
    standard_deviation : float
        Between cups of one kind, above 0, same unit: batches count, not panels of one cup.
    arms : int
        Treatments compared with the one control, 1 to 100. Above 1 the limit is Dunnett's for so many comparisons.
    power : float
        Wanted probability to see it, 0.5 to 0.9999.
    alpha : float
        Chance of a false alarm, of all comparisons together, 0.0001 to 0.5.
    side : {"two-sided", "less", "greater"}
        What will be declared.

    Returns
    -------
    float
        At least 2.

    Raises
    ------
    ValueError
        For numbers out of range, an unknown side, or a difference so small that a million cups would not do.

    References
    ----------
    As for `power`.

    Examples
    --------
    >>> round(trials_per_arm(0.5, 1.0), 3)
    63.766
    """
    effect = _effect(difference, standard_deviation)
    arms, alpha = _arms(arms), _alpha(alpha)
    wanted = between("power", power, 0.5, 0.9999)
    one_of("side", side, SIDES)

    def short(log_n: float) -> float:
        return _power(math.exp(log_n), effect, arms, alpha, side) - wanted

    if short(math.log(2.0)) >= 0.0:
        return 2.0
    if short(math.log(MOST)) < 0.0:
        raise ValueError(
            f"difference is too small to be shown by a million cups of standard_deviation {standard_deviation}; "
            f"got {difference}"
        )
    return math.exp(scipy.optimize.brentq(short, math.log(2.0), math.log(MOST), xtol=1e-9))


def detectable_difference(
    n: float,
    standard_deviation: float,
    *,
    arms: int = 1,
    power: float = 0.8,
    alpha: float = 0.05,
    side: str = "two-sided",
) -> float:
    """Smallest true difference that n cups in each treatment and in the control will probably show.

    Parameters
    ----------
    n : float
        Cups in each treatment and in the control, 2 to a million.
    standard_deviation, arms, power, alpha, side
        As for `trials_per_arm`.

    Returns
    -------
    float
        In the unit of the standard deviation.

    Raises
    ------
    ValueError
        For numbers out of range or an unknown side.

    Examples
    --------
    >>> round(detectable_difference(64, 1.0), 3)
    0.499
    """
    n = between("n", n, 2.0, MOST)
    s = _standard_deviation(standard_deviation)
    arms, alpha = _arms(arms), _alpha(alpha)
    wanted = between("power", power, 0.5, 0.9999)
    one_of("side", side, SIDES)
    high = 1.0
    while _power(n, high, arms, alpha, side) < wanted:
        high *= 2.0
    low = 0.0 if high == 1.0 else high / 2.0
    return s * scipy.optimize.brentq(
        lambda effect: _power(n, effect, arms, alpha, side) - wanted, low, high, xtol=1e-12
    )


def run_order(trials: Sequence[Cup], seed: int, *, rule: str = "random") -> tuple[Cup, ...]:
    """Order of working: drawn by lot where the rule leaves it open, the same for the same seed and cups.

    Parameters
    ----------
    trials : sequence of Cup
        In any fixed order (the lot depends on it); "random" takes anything. Other rules read ``part``,
        ``dosage_pct`` and ``silicone``.
    seed : int
        Kept with the series, so that the order can be shown to have been drawn.
    rule : str
        "random"; "blanks first, dosage ascending"; "silicone-free before silicone"; or
        "blanks first, silicone-free before silicone, dosage ascending". All but "random" put a clean check last,
        since it is there to prove that the equipment stayed clean.

    Returns
    -------
    tuple
        The same trials.

    Raises
    ------
    ValueError
        For an unknown rule, a seed that is not whole, or a dosage that is not finite or negative.

    References
    ----------
    Order against carry-over: common practice, no source.

    Examples
    --------
    >>> cups = [Cup("3", dosage_pct=0.3), Cup("1", part="blank"), Cup("2", dosage_pct=0.1)]
    >>> [cup.code for cup in run_order(cups, 417, rule="blanks first, dosage ascending")]
    ['1', '2', '3']
    """
    one_of("rule", rule, RULES)
    number = finite("seed", seed)
    if number != int(number):
        raise ValueError(f"seed must be a whole number; got {seed}")
    placed = [(_place(f"trials[{i}]", cup, rule), _lot(int(seed), i), cup) for i, cup in enumerate(trials)]
    return tuple(cup for *_, cup in sorted(placed, key=lambda entry: entry[:2]))


def _place(name: str, cup: Cup, rule: str) -> tuple[float, ...]:
    if rule == "random":
        return ()
    if cup.part == "clean check":
        return (9.0,)
    dosage = between(f"{name}.dosage_pct", cup.dosage_pct, 0.0, 100.0)
    place = [0.0 if cup.part in WITHOUT_ADDITIVE or not rule.startswith("blanks first") else 1.0]
    if "silicone" in rule:
        place.append(float(cup.silicone))
    if "ascending" in rule:
        place.append(dosage)
    return tuple(place)


def _lot(seed: int, index: int) -> bytes:
    # NumPy does not promise the same draw in its next version; a digest does.
    return hashlib.sha256(f"{seed}/{index}".encode()).digest()


def _standard_deviation(value: float) -> float:
    return between("standard_deviation", positive("standard_deviation", value), 1e-100, 1e100)


def _effect(difference: float, standard_deviation: float) -> float:
    apart = between("difference", positive("difference", difference), 1e-100, 1e100)
    # Beyond this two cups are sure to show it, at any limit that can be asked for.
    return min(apart / _standard_deviation(standard_deviation), 1e4)


def _alpha(alpha: float) -> float:
    return between("alpha", alpha, 0.0001, 0.5)


def _arms(arms: int) -> int:
    # The joint probability is worked out arm by arm: beyond a hundred it is no plan, only time and memory.
    found = whole("arms", arms, at_least=1)
    if found > MOST_ARMS:
        raise ValueError(f"arms must be at most {MOST_ARMS}; got {arms!r}")
    return found


def _power(n: float, effect: float, arms: int, alpha: float, side: str) -> float:
    df = (arms + 1) * (n - 1.0)
    shift = effect * math.sqrt(n / 2.0)
    two_sided = side == "two-sided"
    limit = many_to_one.critical_value(1.0 - alpha, [math.sqrt(0.5)] * arms, df, two_sided=two_sided)
    return many_to_one.shown(limit, shift, df, two_sided=two_sided)
