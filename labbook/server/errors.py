class CannotStartError(Exception):
    """The notebook cannot start; the message is one line that says what to do."""


class StoppedError(Exception):
    """The notebook was asked to stop while it was starting."""
