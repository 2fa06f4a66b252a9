"""Response over dosage: the curve, whether a line or a curve fits at all, and the window that follows."""

from trials.science.dosage_window import (
    Lowest,
    Onset,
    Window,
    lowest_effective,
    over_dosing_onset,
    window,
)
from trials.science.logistic import Interval, LogisticFit, dosage_for, fit, lack_of_fit_of
from trials.science.pure_error import FTest, lack_of_fit

__all__ = [
    "FTest",
    "Interval",
    "LogisticFit",
    "Lowest",
    "Onset",
    "Window",
    "dosage_for",
    "fit",
    "lack_of_fit",
    "lack_of_fit_of",
    "lowest_effective",
    "over_dosing_onset",
    "window",
]
