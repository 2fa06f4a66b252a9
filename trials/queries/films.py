"""The cured film of a cup as it is drawn in every list: its ratings, reduced."""

from collections.abc import Iterable, Mapping

from trials.figures.swatch import Film
from trials.models import Trial
from trials.models.criteria import Better

from .reductions import Reduced, reductions

_GRADES = {
    "bubbles": ("bubbles",),
    "bubble_size": ("bubble-size",),
    # A fish-eye is a crater with a speck in it: the worse of the two is drawn.
    "craters": ("craters", "fish-eyes"),
    "pinholes": ("pinholes",),
    "haze": ("haze",),
    "levelling": ("levelling",),
    "crawling": ("crawling",),
}
_TOP_GRADE = 5


def films(trials: Iterable[Trial | int], *, age_h: float | None = None, stored: bool = False) -> dict[int, Film]:
    """The film of each trial, by its key, in one query; a film that nobody has read yet is an empty one."""
    found = reductions(trials, age_h=age_h, stored=stored)
    return {trial: film_of(reduced) for trial, reduced in found.items()}


def film_of(reduced: Mapping[str, Reduced]) -> Film:
    """The film that the reduced ratings of one cup amount to."""
    grades = {name: _worst(reduced, keys) for name, keys in _GRADES.items()}
    counted = reduced.get("bubble-count")
    return Film(bubbles_per_dm2=counted.value if counted else None, **grades)


def _worst(reduced: Mapping[str, Reduced], keys: tuple[str, ...]) -> float | None:
    grades = [_grade(reduced[key]) for key in keys if key in reduced and reduced[key].high is not None]
    return max(grades, default=None)


def _grade(one: Reduced) -> float:
    """On the scale from 0 to 5 that the swatch draws; the same number where the scale is that one already."""
    share = (one.value - one.low) / (one.high - one.low)
    return _TOP_GRADE * (1 - share if one.better == Better.HIGHER else share)
