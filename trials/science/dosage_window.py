"""From the ladder to a recommendation: the lowest dosage that works, the onset of over-dosing, the window."""

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

import numpy as np

from trials.science._groups import SIDES, as_values
from trials.science._refuse import between, finite_array, one_of, percent, positive
from trials.science.comparison import Difference, against_control

RULES = ("step down", "no worse than best", "target")
Ladder = Mapping[float, Sequence[float]]


@dataclass(frozen=True, slots=True)
class Lowest:
    """``dosage_pct`` is None where no dosage fulfils the rule; ``reason`` says by what it was decided."""

    dosage_pct: float | None
    rule: str
    reason: str


@dataclass(frozen=True, slots=True)
class Onset:
    """``dosage_pct`` is the lowest tested dosage that harms, None where none was seen to.

    ``clear_to_pct`` is the highest dosage up to which a harm worth minding is excluded; between the two the cups
    do not decide.
    """

    dosage_pct: float | None
    reason: str
    clear_to_pct: float | None = None


@dataclass(frozen=True, slots=True)
class Window:
    """All in per cent dosage; all None where there is no window."""

    from_pct: float | None
    to_pct: float | None
    working_pct: float | None
    reason: str


def lowest_effective(
    control: Sequence[float],
    ladder: Ladder,
    *,
    side: str,
    rule: str = "step down",
    target_change_pct: float | None = None,
    worthwhile: float | None = None,
    level: float = 0.95,
) -> Lowest:
    """Lowest dosage that works by a stated rule. Different rules give different dosages: always say which.

    Parameters
    ----------
    control : sequence of float
        One value for each blank, any unit.
    ladder : mapping of float to sequence of float
        Dosage in per cent, above 0, to the values of its cups.
    side : {"less", "greater", "two-sided"}
        Which way is better, as declared beforehand. Two-sided takes the way of the highest dosage.
    rule : {"step down", "no worse than best", "target"}
        "step down": from the highest dosage down as long as each differs from the blank (and, where given, by at
        least ``worthwhile`` on the mean). "no worse than best": lowest dosage that differs from the blank and is
        not shown to be worse than the best one; with ``worthwhile``, that is shown to be less than so much worse.
        "target": lowest dosage that differs from the blank and whose mean changes by ``target_change_pct``.
        All comparisons are Dunnett's, so that they agree with the intervals shown beside them.
    target_change_pct : float, optional
        Wanted change in per cent of the mean of the blanks, above 0; needed by "target".
    worthwhile : float, optional
        Difference worth having, in the unit of the values, above 0.
    level : float
        Confidence, 0.5 to 0.9999.

    Returns
    -------
    Lowest

    Raises
    ------
    ValueError
        For an empty ladder or group, a dosage that is not above 0, an unknown side or rule, a missing or
        impossible target, or values that are not finite.

    Notes
    -----
    "step down" stops at the first dosage that does not differ. Testing each step by Student's t would be
    allowed in that fixed order (closed testing) and is less strict.

    References
    ----------
    R. Marcus, E. Peritz, K. R. Gabriel, Biometrika 63 (1976) 655-660; A. C. Tamhane, Y. Hochberg, C. W. Dunnett,
    Biometrics 52 (1996) 21-37.

    Examples
    --------
    >>> blank = [9.8, 10.4, 9.5, 10.7]
    >>> ladder = {0.1: [8.9, 9.6, 9.1, 9.9], 0.2: [7.0, 6.4, 7.3, 6.8], 0.3: [4.1, 4.6, 3.9, 4.4]}
    >>> lowest_effective(blank, ladder, side="less").dosage_pct
    0.1
    >>> lowest_effective(blank, ladder, side="less", rule="target", target_change_pct=30).dosage_pct
    0.2
    """
    blank = as_values("control", control)
    steps = _ladder(ladder)
    one_of("side", side, SIDES)
    one_of("rule", rule, RULES)
    level = between("level", level, 0.5, 0.9999)
    margin = None if worthwhile is None else positive("worthwhile", worthwhile)
    found = _compare(blank, steps, side, level)
    better = _way(found, side)
    if rule == "target":
        return _by_target(found, better, float(blank.mean()), target_change_pct, level)
    if better == 0:
        return Lowest(None, rule, "The mean at the highest dosage equals that of the blanks.")
    if any(one.p is None for one in found.values()):
        return Lowest(None, rule, found[max(found)].note)
    if rule == "step down":
        return _step_down(found, better, margin, level)
    return _no_worse_than_best(steps, found, better, margin, level)


def over_dosing_onset(
    ladder: Ladder,
    *,
    side: str,
    worthwhile: float,
    control: Sequence[float] | None = None,
    level: float = 0.95,
) -> Onset:
    """Lowest dosage from which a compatibility criterion (haze, craters, crawling) is worse than the reference.

    Parameters
    ----------
    ladder : mapping of float to sequence of float
        Dosage in per cent, above 0, to the values of its cups (for grades: each cup's median).
    side : {"less", "greater"}
        Which way is worse.
    worthwhile : float
        Harm worth minding, in the unit of the values, above 0.
    control : sequence of float, optional
        Values of the blanks. Without them the lowest dosage is the reference.
    level : float
        Confidence, 0.5 to 0.9999.

    Returns
    -------
    Onset
        A dosage harms when its mean is worse by at least ``worthwhile`` and the comparison (Dunnett, one-sided)
        confirms a difference. Where there is no spread to judge by, the means alone decide.

    Raises
    ------
    ValueError
        For an empty ladder or group, a single dosage without control, a dosage that is not above 0, an unknown
        side, or values that are not finite.

    Examples
    --------
    >>> haze = {0.1: [11, 12, 10], 0.2: [13, 12, 14], 0.3: [14, 13, 16], 0.5: [47, 50, 44]}
    >>> found = over_dosing_onset(haze, control=[10, 11, 12], side="greater", worthwhile=10)
    >>> found.dosage_pct, found.clear_to_pct
    (0.5, 0.3)
    """
    steps = _ladder(ladder)
    one_of("side", side, SIDES[1:])
    margin = positive("worthwhile", worthwhile)
    against = "the blank"
    if control is None:
        if len(steps) < 2:
            raise ValueError(f"ladder needs at least 2 dosages where there is no control; got {list(steps)}")
        lowest = min(steps)
        control, against = steps.pop(lowest), f"{lowest:g} %"
    shown = _compare(control, steps, side, level)
    worse = -1 if side == "less" else 1
    harm = next((d for d, one in shown.items() if _harms(one, worse, margin, level)), None)
    clear = _clear_to(_compare(control, steps, "less" if side == "greater" else "greater", level), worse, margin)
    return Onset(harm, _onset_reason(shown, harm, clear, f"{margin:g} against {against}"), clear)


def window(lowest: Lowest, onset: Onset, *, tested_pct: Sequence[float]) -> Window:
    """From the lowest dosage that works to the highest one tested below the onset of over-dosing.

    Parameters
    ----------
    lowest : Lowest
        From `lowest_effective`, after storage where that was tested.
    onset : Onset
        From `over_dosing_onset`, of the most sensitive criterion.
    tested_pct : sequence of float
        All dosages tested, per cent, above 0.

    Returns
    -------
    Window
        ``working_pct`` is the tested dosage nearest to the geometric middle when one lies inside; between two
        neighbouring dosages it is that middle on two digits, and the reason says that it was not tested.

    Raises
    ------
    ValueError
        For no tested dosage, or one that is not above 0 or above 100 per cent.

    Examples
    --------
    >>> found = window(Lowest(0.2, "target", ""), Onset(0.8, "", 0.5), tested_pct=[0.1, 0.2, 0.3, 0.5, 0.8])
    >>> found.from_pct, found.to_pct, found.working_pct
    (0.2, 0.5, 0.3)
    """
    tested = {_dosage("tested_pct", dosage) for dosage in finite_array("tested_pct", tested_pct)}
    if lowest.dosage_pct is None:
        return Window(None, None, None, f"No dosage works: {lowest.reason}")
    start = lowest.dosage_pct
    below = [d for d in sorted(tested | {start}) if d >= start and (onset.dosage_pct is None or d < onset.dosage_pct)]
    if not below:
        reason = f"Over-dosing begins at {onset.dosage_pct:g} %, not above the lowest dosage that works, {start:g} %."
        return Window(None, None, None, reason)
    end = below[-1]
    working, how = _working(start, end, below)
    return Window(start, end, working, f"{_upper_reason(onset, end)} {how}".strip())


def _ladder(ladder: Ladder) -> dict[float, np.ndarray]:
    steps = {_dosage("ladder", dosage): as_values(f"ladder[{dosage}]", ladder[dosage]) for dosage in ladder}
    if not steps:
        raise ValueError(f"ladder needs at least 1 dosage; got {dict(ladder)}")
    return dict(sorted(steps.items()))


def _dosage(name: str, dosage: float) -> float:
    return percent(f"{name} dosage", positive(f"{name} dosage", dosage))


def _compare(
    control: Sequence[float], steps: Mapping[float, np.ndarray], side: str, level: float
) -> dict[float, Difference]:
    return dict(zip(steps, against_control(control, list(steps.values()), side=side, level=level), strict=True))


def _way(found: Mapping[float, Difference], side: str) -> int:
    if side == "two-sided":
        return int(np.sign(found[max(found)].estimate))
    return -1 if side == "less" else 1


def _differs(one: Difference, better: int, level: float) -> bool:
    return one.p is not None and one.p < 1.0 - level and one.estimate * better > 0


def _step_down(found: Mapping[float, Difference], better: int, margin: float | None, level: float) -> Lowest:
    lowest = None
    for dosage in sorted(found, reverse=True):
        one = found[dosage]
        if not _differs(one, better, level):
            stop = f"{dosage:g} % is not shown to differ from the blank ({one.side}, p = {one.p:.2g})."
            return Lowest(lowest, "step down", f"Stepping down stops where {stop}")
        if margin is not None and one.estimate * better < margin:
            stop = f"the difference at {dosage:g} %, {abs(one.estimate):.3g}, is below {margin:g}."
            return Lowest(lowest, "step down", f"Stepping down stops where {stop}")
        lowest = dosage
    sides = next(iter(found.values())).side
    return Lowest(lowest, "step down", f"Every dosage differs from the blank ({sides}): none lower was tested.")


def _no_worse_than_best(
    steps: Mapping[float, np.ndarray],
    found: Mapping[float, Difference],
    better: int,
    margin: float | None,
    level: float,
) -> Lowest:
    rule = "no worse than best"
    best = max(steps, key=lambda dosage: better * steps[dosage].mean())
    if not _differs(found[best], better, level):
        return Lowest(None, rule, f"The best dosage, {best:g} %, is not shown to differ from the blank.")
    others = [dosage for dosage in steps if dosage < best]
    if not others:
        return Lowest(best, rule, "The lowest dosage tested is the best.")
    shown, reach = _deficits(steps, best, others, better, level)
    for dosage, p, most in zip(others, shown, reach, strict=True):
        close = p >= 1.0 - level if margin is None else most < margin
        if close and _differs(found[dosage], better, level):
            return Lowest(dosage, rule, f"Best is {best:g} %; {dosage:g} % may still be worse by up to {most:.3g}.")
    return Lowest(best, rule, f"Every lower dosage is, or may be, worse than the best, {best:g} %.")


def _deficits(
    steps: Mapping[float, np.ndarray], best: float, others: Sequence[float], better: int, level: float
) -> tuple[list[float], list[float]]:
    """Is a dosage shown to be worse than the best (p), and by how much may it be worse at most?"""
    worse_way, better_way = ("less", "greater") if better > 0 else ("greater", "less")
    cups = [steps[dosage] for dosage in others]
    shown = against_control(steps[best], cups, side=worse_way, level=level)
    reach = against_control(steps[best], cups, side=better_way, level=level)
    return [one.p for one in shown], [-one.low if better > 0 else one.high for one in reach]


def _by_target(
    found: Mapping[float, Difference], better: int, blank: float, target_change_pct: float | None, level: float
) -> Lowest:
    if target_change_pct is None:
        raise ValueError("target_change_pct must be given for the rule 'target'; got None")
    target = positive("target_change_pct", target_change_pct)
    if blank <= 0.0:
        raise ValueError(f"control must have a mean above 0 for a change in per cent of it; got {blank:g}")
    reached = [d for d, one in found.items() if better * one.estimate >= target / 100.0 * blank]
    sure = [d for d in reached if found[d].p is None or _differs(found[d], better, level)]
    if not sure:
        doubt = " by more than the cups scatter" if reached else ""
        return Lowest(None, "target", f"No dosage tested changes the mean by {target:g} %{doubt}.")
    one = found[sure[0]]
    change = 100.0 * abs(one.estimate) / blank
    how = f"p = {one.p:.2g} ({one.side})." if one.p is not None else f"by the means alone. {one.note}"
    return Lowest(sure[0], "target", f"The mean changes by {change:.1f} % (wanted {target:g} %); {how}")


def _harms(one: Difference, worse: int, margin: float, level: float) -> bool:
    return worse * one.estimate >= margin and (one.p is None or one.p < 1.0 - level)


def _onset_reason(found: Mapping[float, Difference], harm: float | None, clear: float | None, margin: str) -> str:
    if any(one.p is None for one in found.values()):
        basis = f"By the means alone. {next(iter(found.values())).note}"
    elif clear is None:
        basis = f"No dosage excludes a harm of {margin}."
    else:
        basis = f"A harm of {margin} is excluded up to {clear:g} %."
    return f"{f'Worse from {harm:g} %.' if harm is not None else 'No dosage was seen to harm.'} {basis}"


def _clear_to(found: Mapping[float, Difference], worse: int, margin: float) -> float | None:
    """The one-sided bound on the harmful side of each difference, from its opposite comparison."""
    clear = None
    for dosage, one in found.items():
        bound = one.high if worse > 0 else one.low
        if bound is None or worse * bound >= margin:
            break
        clear = dosage
    return clear


def _working(start: float, end: float, tested: Sequence[float]) -> tuple[float, str]:
    middle = math.sqrt(start * end)
    inside = [dosage for dosage in tested if start < dosage < end]
    if inside:
        return min(inside, key=lambda dosage: abs(math.log(dosage / middle))), ""
    if start == end:
        return start, "One dosage only lies in the window."
    rounded = min(max(float(f"{middle:.2g}"), start), end)
    return rounded, f"The working dosage, {rounded:g} %, was not itself tested."


def _upper_reason(onset: Onset, end: float) -> str:
    if onset.dosage_pct is None:
        reason = f"No over-dosing was seen: {end:g} % is the highest dosage tested, not a limit found."
    else:
        reason = f"Over-dosing begins at {onset.dosage_pct:g} %."
    if onset.clear_to_pct is None:
        return f"{reason} The cups exclude it at no dosage."
    if onset.clear_to_pct < end:
        return f"{reason} The cups exclude it up to {onset.clear_to_pct:g} % only."
    return reason
