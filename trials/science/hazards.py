"""Hazards of what is being weighed: pictograms, signal word, and the training that isocyanates ask for.

Meant as a reminder at the bench. It classifies nothing: safety data sheets, local rules and qualified people
take precedence.
"""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from datetime import date, datetime
from decimal import Decimal, InvalidOperation

from trials.science._refuse import between
from trials.science.hazard_statements import STATEMENTS, Statement

SKIN_OR_EYE_IRRITATION = frozenset({"H315", "H319"})
SKIN_SENSITISATION = frozenset({"H317"})

DIISOCYANATE_LIMIT_PCT = Decimal("0.1")
TRAINING_YEARS = 5


@dataclass(frozen=True, slots=True)
class Label:
    """Pictograms by their GHS numbers, in order, and "Danger", "Warning" or nothing."""

    pictograms: tuple[str, ...]
    signal_word: str | None


def statement(code: str) -> Statement:
    """Wording, pictogram and signal word of one hazard statement.

    Parameters
    ----------
    code : str
        As on the safety data sheet: "H317", "H360Fd", "EUH066". Case matters.

    Returns
    -------
    Statement

    Raises
    ------
    ValueError
        Where the code is not in the table.

    Notes
    -----
    UN GHS annex 3 and Regulation (EC) No 1272/2008, see `trials.science.hazard_statements`.

    Examples
    --------
    >>> statement("H317").wording
    'May cause an allergic skin reaction'
    """
    try:
        return STATEMENTS[code]
    except (KeyError, TypeError):
        raise ValueError(f"statements must be known hazard statement codes; got {code!r}") from None


def label(statements: Iterable[str]) -> Label:
    """Pictograms and signal word for a set of hazard statements, with the rules of precedence.

    Parameters
    ----------
    statements : iterable of str
        Codes; combined codes such as "H302+H312" are taken apart. None at all gives an empty label.

    Returns
    -------
    Label

    Raises
    ------
    ValueError
        Where a code is unknown.

    Notes
    -----
    Precedence: Regulation (EC) No 1272/2008, article 26. The skull replaces the exclamation mark; corrosion
    replaces it for irritation of skin and eyes; the health hazard, where it stands for sensitised airways,
    replaces it for irritation and sensitisation of the skin and irritation of the eyes. What the article
    leaves optional is shown.

    Examples
    --------
    >>> label(["H302", "H312", "H314", "H317", "H412"])
    Label(pictograms=('GHS05', 'GHS07'), signal_word='Danger')
    >>> label(["H334", "H317", "H315", "H319"])
    Label(pictograms=('GHS08',), signal_word='Danger')
    """
    codes = {part.strip() for code in statements for part in _text(code).split("+")}
    found = {code: statement(code) for code in codes}
    shown = {entry.pictogram for entry in found.values()} - {None}
    if "GHS07" in shown and not _exclamation_remains(found, shown):
        shown.remove("GHS07")
    words = {entry.signal_word for entry in found.values()}
    signal = "Danger" if "Danger" in words else "Warning" if "Warning" in words else None
    return Label(pictograms=tuple(sorted(shown)), signal_word=signal)


def diisocyanate_training_needed(percentages: Iterable[object] | Mapping[str, object]) -> bool:
    """Whether the European restriction asks for training before the mix is used.

    Parameters
    ----------
    percentages : iterable of number or text, or mapping to them
        Mass share of each monomeric diisocyanate, per cent, 0 to 100. Sums are decimal, so that 0.04 and 0.06
        reach the limit and do not fall short of it by a rounding.

    Returns
    -------
    bool
        Whether all of them together reach 0.1 per cent.

    Raises
    ------
    ValueError
        Where a share is impossible, or they exceed 100 per cent together.

    Notes
    -----
    REACH annex XVII entry 74, Regulation (EU) 2020/1149: free below 0.1 per cent by weight, individually and
    in combination. It holds for industrial and professional use since 24 August 2023. Other jurisdictions
    differ.

    Examples
    --------
    >>> diisocyanate_training_needed(["0.09"]), diisocyanate_training_needed({"HDI": 0.06, "IPDI": 0.05})
    (False, True)
    """
    shares = percentages.values() if isinstance(percentages, Mapping) else percentages
    total = sum((_decimal_percent(f"percentages[{i}]", share) for i, share in enumerate(shares)), Decimal(0))
    between("sum of percentages", total, 0.0, 100.0)
    return total >= DIISOCYANATE_LIMIT_PCT


def training_valid(trained_on: date, on: date) -> bool:
    """Whether a training still covers a day of use.

    Parameters
    ----------
    trained_on : datetime.date
        Day of the training.
    on : datetime.date
        Day of use.

    Returns
    -------
    bool
        From the day of training up to and including the same day five years later.

    Raises
    ------
    ValueError
        Where one of them is no date.

    Notes
    -----
    REACH annex XVII entry 74: renewed at least every five years. A training of 29 February ends on 28
    February.

    Examples
    --------
    >>> training_valid(date(2021, 5, 3), date(2026, 5, 3)), training_valid(date(2021, 5, 3), date(2026, 5, 4))
    (True, False)
    """
    first, day = _day("trained_on", trained_on), _day("on", on)
    return first <= day and (day.year - TRAINING_YEARS, day.month, day.day) <= (
        first.year,
        first.month,
        first.day,
    )


def _exclamation_remains(found: Mapping[str, Statement], shown: set[str]) -> bool:
    if "GHS06" in shown:
        return False
    reasons = {code for code, entry in found.items() if entry.pictogram == "GHS07"}
    if "GHS05" in shown:
        reasons -= SKIN_OR_EYE_IRRITATION
    if "H334" in found:
        reasons -= SKIN_OR_EYE_IRRITATION | SKIN_SENSITISATION
    return bool(reasons)


def _text(code: object) -> str:
    if not isinstance(code, str):
        raise ValueError(f"statements must be known hazard statement codes; got {code!r}")  # noqa: TRY004 - the house refuses by ValueError
    return code


def _decimal_percent(name: str, share: object) -> Decimal:
    try:
        exact = Decimal(str(share))
        possible = 0 <= exact <= 100
    except InvalidOperation:  # raised for "not a number" as well
        raise ValueError(f"{name} must be a number; got {share!r}") from None
    if not possible:
        raise ValueError(f"{name} must be between 0 and 100; got {share}")
    return exact


def _day(name: str, value: object) -> date:
    if isinstance(value, datetime):
        return value.date()
    if not isinstance(value, date):
        raise ValueError(f"{name} must be a date; got {value!r}")  # noqa: TRY004 - the house refuses by ValueError
    return value
