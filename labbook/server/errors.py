class CannotStartError(Exception):
    """The notebook cannot start; the message is one line that says what to do."""
