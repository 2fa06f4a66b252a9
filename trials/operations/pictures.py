"""Photographs as they come in: decoded to prove what they are, turned upright, written anew without metadata."""

import warnings
from dataclasses import dataclass
from io import BytesIO

from PIL import Image, ImageOps, UnidentifiedImageError

from .acting import Refused

FORMATS = ("JPEG", "PNG", "WEBP")
MOST_BYTES = 25 * 1024 * 1024
MOST_PIXELS = 50_000_000
LONG_SIDE_PX, SMALL_SIDE_PX = 2000, 400

# Both belong to the whole process: a picture that unpacks to more than this is refused wherever it is opened.
Image.MAX_IMAGE_PIXELS = MOST_PIXELS
warnings.simplefilter("error", Image.DecompressionBombWarning)


@dataclass(frozen=True, slots=True)
class Picture:
    """Two JPEGs without metadata; ``shrunk`` is how many pixels of the photograph one of ``full`` stands for."""

    full: bytes
    small: bytes
    width_px: int
    height_px: int
    shrunk: float


def derive(content: bytes, name: str) -> Picture:
    """The pictures that may be shown of a photograph.

    Raises
    ------
    Refused
        At the field "photos", naming the file: too large, empty, another kind of file, too many pixels, or broken.
    """
    if len(content) > MOST_BYTES:
        raise _refused(name, f"has {len(content) / 1024**2:.1f} MB; up to {MOST_BYTES // 1024**2} MB are taken")
    if not content:
        raise _refused(name, "is empty")
    try:
        with Image.open(BytesIO(content), formats=FORMATS) as image:
            return _derived(image, name)
    except UnidentifiedImageError as error:
        raise _refused(name, "is not a JPEG, PNG or WebP picture") from error
    except (Image.DecompressionBombWarning, Image.DecompressionBombError) as error:
        raise _refused(name, f"has more than {MOST_PIXELS // 10**6} million pixels") from error
    except (OSError, SyntaxError, ValueError, EOFError) as error:
        # Pillow says a broken file in all of these ways.
        raise _refused(name, f"is broken and cannot be read ({error})") from error


def _derived(image: Image.Image, name: str) -> Picture:
    longest = max(image.size)
    if image.width * image.height > MOST_PIXELS:
        raise _refused(name, f"has more than {MOST_PIXELS // 10**6} million pixels")
    # A JPEG is decoded at half or a quarter where that is enough: a tablet's photograph in a fifth of the time.
    image.draft("RGB", (LONG_SIDE_PX, LONG_SIDE_PX))
    upright = _plain(ImageOps.exif_transpose(image))
    full = _fitted(upright, LONG_SIDE_PX)
    return Picture(
        full=_jpeg(full, quality=88),
        small=_jpeg(_fitted(full, SMALL_SIDE_PX), quality=80),
        width_px=full.width,
        height_px=full.height,
        shrunk=longest / max(full.size),
    )


def _plain(image: Image.Image) -> Image.Image:
    """Colour alone, on white, on a canvas of its own: whatever else the file carried stays behind."""
    if image.mode.startswith("I"):
        image = image.point(lambda level: level / 256).convert("L")
    if image.mode == "P" or image.has_transparency_data:
        image = image.convert("RGBA")
    canvas = Image.new("RGB", image.size, "white")
    canvas.paste(image.convert("RGB"), mask=image.getchannel("A") if image.mode in ("RGBA", "LA") else None)
    return canvas


def _fitted(image: Image.Image, side_px: int) -> Image.Image:
    fitted = image.copy()
    fitted.thumbnail((side_px, side_px), Image.Resampling.LANCZOS)
    return fitted


def _jpeg(image: Image.Image, *, quality: int) -> bytes:
    out = BytesIO()
    image.save(out, "JPEG", quality=quality)
    return out.getvalue()


def _refused(name: str, why: str) -> Refused:
    return Refused(f"“{name}” {why}.", field="photos")
