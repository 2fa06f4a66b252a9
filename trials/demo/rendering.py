"""A photograph of a film as it is: its bubbles, craters and holes on its colour, in uneven light, with noise."""

from functools import cache
from io import BytesIO

import numpy as np
from PIL import Image

from .bubbles_drawn import HEIGHT_PX, MM_PER_PX, WIDTH_PX, Bubbles
from .chance import chance
from .hidden_film import Seen

TINTS = {
    "grey": (138, 142, 145), "green": (96, 128, 98), "white": (222, 221, 215), "black": (44, 44, 48),
    "red": (136, 62, 50), "clear": (164, 167, 165),
}  # fmt: skip
VEIL = 228
PX_PER_MM = 1 / float(MM_PER_PX)
CRATERS_AT_GRADE = (0, 2, 5, 12, 26, 50)
PINHOLES_AT_GRADE = (0, 4, 14, 40, 90, 160)


def photograph(seen: Seen, bubbles: Bubbles, *, tint: str, rows: bool, name: str) -> bytes:
    """As JPEG. ``rows``: pinholes stand in rows, over the pores of concrete."""
    shade = _light(name) * _orange_peel(seen.levelling, name)
    shade *= _patches(seen.crawling, name)
    _draw_craters(shade, seen, name)
    _draw_pinholes(shade, seen.pinholes, name, rows=rows)
    draw_bubbles(shade, bubbles)
    shade += _noise()
    picture = _coloured(shade, tint, _veil(max(seen.haze, seen.blush), name))
    out = BytesIO()
    Image.fromarray(picture).save(out, "JPEG", quality=90)
    return out.getvalue()


def draw_bubbles(shade: np.ndarray, bubbles: Bubbles) -> None:
    """A dark rim, and a light spot where the lamp is."""
    for (x_mm, y_mm), size in zip(bubbles.xy_mm, bubbles.diameter_mm, strict=True):
        radius = max(size / 2 * PX_PER_MM, 1.3)
        window, r, dx, dy = _around(shade, x_mm, y_mm, radius + 4)
        rim = np.exp(-(((r - 0.85 * radius) / (0.22 * radius + 0.6)) ** 2))
        spot = np.exp(-(((dx + 0.35 * radius) ** 2 + (dy + 0.35 * radius) ** 2) / (0.12 * radius**2 + 0.5)))
        inside = (r < radius) * 0.10
        window *= 1 - 0.42 * rim - inside + 0.45 * spot


def _draw_craters(shade: np.ndarray, seen: Seen, name: str) -> None:
    drawn = chance(name, "craters")
    grade = max(seen.craters if seen.craters > 0.3 else 0.0, seen.fish_eyes)
    for _ in range(round(np.interp(grade, range(6), CRATERS_AT_GRADE))):
        x_mm, y_mm = drawn.uniform(2, 123), drawn.uniform(2, 78)
        radius = drawn.uniform(0.7, 1.9) * PX_PER_MM
        window, r, dx, dy = _around(shade, x_mm, y_mm, radius + 8)
        bowl = np.exp(-((r / (0.75 * radius)) ** 4))
        slope = np.exp(-(((r - radius) / (0.30 * radius)) ** 2)) * (dx + dy) / (1.4 * radius + 1e-6)
        window *= 1 - 0.14 * bowl + 0.30 * slope
        if seen.fish_eyes:
            window *= 1 - 0.75 * np.exp(-((r / 2.2) ** 2))


def _draw_pinholes(shade: np.ndarray, grade: float, name: str, *, rows: bool) -> None:
    drawn = chance(name, "pinholes")
    for place in range(round(np.interp(grade if grade > 0.4 else 0, range(6), PINHOLES_AT_GRADE))):
        y_mm = 6 + 8.5 * (place % 9) + drawn.gauss(0, 0.5) if rows else drawn.uniform(2, 78)
        window, r, _, _ = _around(shade, drawn.uniform(2, 123), y_mm, 5)
        window *= 1 - 0.6 * np.exp(-((r / 1.1) ** 2))


def _around(shade: np.ndarray, x_mm: float, y_mm: float, reach: float):
    """A view of the picture about a point, with the distances of its pixels from it."""
    x, y = x_mm * PX_PER_MM, y_mm * PX_PER_MM
    left, right = max(int(x - reach), 0), min(int(x + reach) + 2, WIDTH_PX)
    top, bottom = max(int(y - reach), 0), min(int(y + reach) + 2, HEIGHT_PX)
    dx = np.arange(left, right, dtype=np.float32) - x
    dy = (np.arange(top, bottom, dtype=np.float32) - y)[:, None]
    return shade[top:bottom, left:right], np.hypot(dx, dy), dx, dy


def _light(name: str) -> np.ndarray:
    """From one side, and a little darker in the corners."""
    drawn = chance(name, "light")
    x, y = np.linspace(-1, 1, WIDTH_PX, dtype=np.float32), np.linspace(-1, 1, HEIGHT_PX, dtype=np.float32)[:, None]
    across, down = drawn.uniform(-0.09, 0.09), drawn.uniform(-0.07, 0.07)
    return 1.0 + across * x + down * y - 0.05 * (x**2 + y**2)


def _orange_peel(levelling: float, name: str) -> np.ndarray:
    return 1 + 0.010 * max(levelling - 0.5, 0) * _waves(name, "peel", step=28)


def _patches(crawling: float, name: str) -> np.ndarray | float:
    """Where the second coat has drawn back, the first one shows, darker."""
    if crawling < 0.5:
        return 1.0
    bare = _waves(name, "crawling", step=130) > np.interp(crawling, (0.5, 5), (1.9, 0.35))
    return 1 - 0.22 * bare


def _veil(grade: float, name: str) -> np.ndarray | None:
    if grade < 0.5:
        return None
    return np.clip(0.10 * grade * (1 + 0.25 * _waves(name, "veil", step=210)), 0, 0.8)


def _coloured(shade: np.ndarray, tint: str, veil: np.ndarray | None) -> np.ndarray:
    """Channel by channel: a third of the memory at a time."""
    colour = TINTS[tint]
    np.clip(shade, 0, 255 / max(colour), out=shade)
    picture = np.empty((HEIGHT_PX, WIDTH_PX, 3), dtype=np.uint8)
    for channel, level in enumerate(colour):
        light = shade * level
        picture[..., channel] = light if veil is None else light + (VEIL - light) * veil
    return picture


def _waves(*name: object, step: int) -> np.ndarray:
    """Smooth random relief about 0 with a spread of about 1, from a coarse grid."""
    drawn = chance(*name)
    high, wide = HEIGHT_PX // step + 3, WIDTH_PX // step + 3
    coarse = np.array([[drawn.gauss(0, 1) for _ in range(wide)] for _ in range(high)], dtype=np.float32)
    image = Image.fromarray(coarse).resize((WIDTH_PX, HEIGHT_PX), Image.Resampling.BICUBIC)
    return np.asarray(image)


@cache
def _noise() -> np.ndarray:
    """The same for every photograph: the sensor is the same."""
    drawn = np.random.Generator(np.random.PCG64(20240229))
    return drawn.normal(0, 0.015, (HEIGHT_PX, WIDTH_PX)).astype(np.float32)
