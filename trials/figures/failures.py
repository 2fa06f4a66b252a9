"""A count as a small bar beside its figure, on one scale for the whole table."""

WIDTH, HEIGHT = 60, 10


def count_bar(count: int, most: int) -> str:
    """Draw the bar as SVG in the colour of the text around it; the figure beside it says the same.

    Parameters
    ----------
    count : int
        0 or more, at most ``most``.
    most : int
        The count whose bar is the longest.

    Raises
    ------
    ValueError
        For a count that is negative or above ``most``.

    Examples
    --------
    >>> 'width="30.0" height="10"/>' in count_bar(2, 4), count_bar(0, 4)
    (True, '')
    """
    if not 0 <= count <= most:
        raise ValueError(f"count must be from 0 to {most}; got {count}")
    if count == 0:
        return ""
    return (
        f'<svg class="count-bar" width="{WIDTH}" height="{HEIGHT}" viewBox="0 0 {WIDTH} {HEIGHT}" aria-hidden="true">'
        f'<rect fill="currentColor" width="{WIDTH * count / most:.1f}" height="{HEIGHT}"/></svg>'
    )
