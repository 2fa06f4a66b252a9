"""The outline of a drawn film, and where its marks lie: even, fixed, inside the edge."""

from math import cos, floor, hypot, pi, sin, sqrt

BOX = 48.0
EDGE = 2.5


def outline_of(*, levelling, crawling):
    """Corners of the film's edge, clockwise from the upper left; the lower edge waves, upper corners draw back."""
    low, high = EDGE, BOX - EDGE
    wave = 0.75 * levelling
    left, right = 3.6 * crawling, 2.5 * crawling
    steps = [i / 8 for i in range(9)]
    edge = [(low + left * sin(t * pi / 2), low + left * cos(t * pi / 2)) for t in steps] if left else [(low, low)]
    corner = [(high - right * cos(t * pi / 2), low + right * sin(t * pi / 2)) for t in steps]
    edge += corner if right else [(high, low)]
    if not wave:
        return [*edge, (high, high), (low, high)]
    across = [high - (high - low) * i / 48 for i in range(49)]
    return edge + [(x, high - wave + wave * cos(2 * pi * 3 * (high - x) / (high - low))) for x in across]


def spread(count, outline, *, start, keep_in, clear_of=()):
    """The first ``count`` places of an even sequence that lie on the film, so that more only ever adds.

    The sequence is Martin Roberts' R2 (additive recurrence on the plastic number); a little grain keeps it from
    looking like a lattice.
    """
    places, index = [], 0
    while len(places) < count and index < 4000:
        index += 1
        x = EDGE + (BOX - 2 * EDGE) * ((start + index * 0.7548776662466927 + 0.03 * grain(index)) % 1)
        y = EDGE + (BOX - 2 * EDGE) * ((start + index * 0.5698402909980532 + 0.03 * grain(index + 99)) % 1)
        free = all(hypot(x - cx, y - cy) > gap + 1 for cx, cy, gap in clear_of)
        if free and _holds(outline, x, y, keep_in):
            places.append((x, y))
    return places


def _holds(outline, x, y, margin):
    """Whether a place lies on the film, ``margin`` away from its edge in the four directions."""
    around = [(x - margin, y), (x + margin, y), (x, y - margin), (x, y + margin)]
    return all(sum(cx < px for cx in _crossings(outline, py)) % 2 for px, py in around)


def _crossings(outline, level, *, slope=0.0):
    """Where the outline crosses the line ``y + slope*x = level``, as x in rising order."""
    ends = zip(outline, [*outline[1:], outline[0]], strict=True)
    found = []
    for (x1, y1), (x2, y2) in ends:
        h1, h2 = y1 + slope * x1 - level, y2 + slope * x2 - level
        if (h1 > 0) != (h2 > 0):
            found.append(x1 + (x2 - x1) * h1 / (h1 - h2))
    return sorted(found)


def hatching(grade, outline):
    """Strokes rising to the right, closer together the hazier the film."""
    if not grade:
        return []
    apart = 13.0 - 2.0 * grade
    levels = [2 * EDGE + apart * (i + 0.5) for i in range(floor(2 * (BOX - 2 * EDGE) / apart))]
    strokes = []
    for level in levels:
        xs = _crossings(outline, level, slope=1.0)
        strokes += [((a, level - a), (b, level - b)) for a, b in zip(xs[::2], xs[1::2], strict=True)]
    return strokes


def grain(index):
    """A fixed, even-handed number in [0, 1) for each index."""
    return (sqrt(2) * (index + 1) * 1.618033988749895 * 7.31) % 1
