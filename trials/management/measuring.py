"""How long the judgement takes beside SciPy's own calls, on invented cups that are always the same."""

import time
from collections.abc import Callable
from dataclasses import dataclass

import numpy as np
from scipy import optimize, stats

from trials.science import agreement, comparison, dose_response, steps

CRITERIA = 8
READERS = 3
DOSAGES = (0.05, 0.1, 0.2, 0.3, 0.4, 0.5, 0.8, 1.0)
BLANKS, CUPS = 8, 4


@dataclass(frozen=True, slots=True)
class Measured:
    what: str
    ours_ms: float
    scipy_ms: float


def measure(repeats: int = 5) -> list[Measured]:
    """Best of ``repeats`` for each; the first call of each, which loads libraries, is not counted."""
    few, many = _arms([4] * 6), _arms([4, 3, 4, 5, 4, 4, 2, 4, 6, 4, 1, 4])
    quantities, grades = _series()
    return [
        _pair("Dunnett, 6 arms of 4, with intervals", repeats, _ours(few), _theirs(few)),
        _pair("Dunnett, 12 uneven arms, with intervals", repeats, _ours(many), _theirs(many)),
        _pair(
            f"a series judged: {BLANKS + CUPS * len(DOSAGES)} cups, {CRITERIA} criteria, {READERS} readers",
            repeats,
            lambda: _judge(quantities, grades),
            lambda: _judge_by_scipy(quantities, grades),
        ),
    ]


def _pair(what: str, repeats: int, ours: Callable[[], object], theirs: Callable[[], object]) -> Measured:
    return Measured(what, _best_ms(ours, repeats), _best_ms(theirs, repeats))


def _best_ms(work: Callable[[], object], repeats: int) -> float:
    work()
    times = []
    for _ in range(repeats):
        started = time.perf_counter()
        work()
        times.append(time.perf_counter() - started)
    return 1000.0 * min(times)


def _arms(sizes: list[int]) -> tuple[np.ndarray, list[np.ndarray]]:
    lot = np.random.default_rng(417)
    return lot.normal(10.0, 0.4, 6), [lot.normal(9.6 - 0.2 * i, 0.4, size) for i, size in enumerate(sizes)]


def _ours(arms: tuple[np.ndarray, list[np.ndarray]]) -> Callable[[], object]:
    return lambda: comparison.against_control(*arms)


def _theirs(arms: tuple[np.ndarray, list[np.ndarray]]) -> Callable[[], object]:
    control, treated = arms
    return lambda: stats.dunnett(*treated, control=control, rng=np.random.default_rng(1)).confidence_interval()


def _series() -> tuple[list[list[np.ndarray]], list[list[np.ndarray]]]:
    """Half the criteria are quantities (one value a cup), half grades (readers × cups); the blank is group 0."""
    lot = np.random.default_rng(418)
    sizes = [BLANKS, *[CUPS] * len(DOSAGES)]
    left = [1.0 / (1.0 + (dosage / 0.25) ** 3) for dosage in (0.0, *DOSAGES)]
    half = range(CRITERIA // 2)
    quantities = [[lot.normal(2 + 8 * part, 0.4, size) for part, size in zip(left, sizes, strict=True)] for _ in half]
    grades = [
        [
            np.clip(np.round(lot.normal(5 * part, 0.7, (READERS, n))), 0, 5)
            for part, n in zip(left, sizes, strict=True)
        ]
        for _ in half
    ]
    return quantities, grades


def _judge(quantities: list[list[np.ndarray]], grades: list[list[np.ndarray]]) -> None:
    dosage = np.repeat((0.0, *DOSAGES), [BLANKS, *[CUPS] * len(DOSAGES)])
    for blank, *ladder in quantities:
        comparison.against_control(blank, ladder, side="less")
        comparison.trend([blank, *ladder], side="less")
        curve = dose_response.fit(dosage, np.concatenate([blank, *ladder]))
        dose_response.dosage_for(curve, 50)
        dose_response.lowest_effective(blank, dict(zip(DOSAGES, ladder, strict=True)), side="less")
    for groups in grades:
        blank, *ladder = [np.median(group, axis=0) for group in groups]
        comparison.ordinal_against_control(blank, ladder, side="less", steps=range(6))
        readers = np.concatenate(groups, axis=1)
        agreement.krippendorff_alpha(readers.tolist(), scale="ordinal")
        agreement.weighted_kappa(readers[0].tolist(), readers[1].tolist(), grades=range(6))
        steps.describe(readers.ravel().tolist(), steps=range(6))


def _judge_by_scipy(quantities: list[list[np.ndarray]], grades: list[list[np.ndarray]]) -> None:
    """What SciPy offers for the same questions; agreement it does not have."""
    dosage = np.repeat((0.0, *DOSAGES), [BLANKS, *[CUPS] * len(DOSAGES)])

    def curve(x: np.ndarray, slope: float, lower: float, upper: float, midpoint: float) -> np.ndarray:
        return lower + (upper - lower) / (1 + (x / midpoint) ** slope)

    for blank, *ladder in quantities:
        values = np.concatenate([blank, *ladder])
        found = stats.dunnett(*ladder, control=blank, alternative="less", rng=np.random.default_rng(1))
        found.confidence_interval()
        stats.kendalltau(dosage, values)
        optimize.curve_fit(curve, dosage, values, p0=(2, 2, 10, 0.3), bounds=(0.01, 100))
    for groups in grades:
        blank, *ladder = [np.median(group, axis=0) for group in groups]
        for cups in ladder:
            stats.mannwhitneyu(cups, blank, alternative="less")
