"""How to sign in to the demonstration, one for each role. The passwords are public: never use them elsewhere."""

SIGN_INS = (
    ("bench", "jonna", "bubbles-rise-slowly"),
    ("supervisor", "maren", "glass-plate-on-the-sill"),
    ("reader", "silas", "read-only-on-sundays"),
    ("administrator", "runa", "keys-hang-by-the-door"),
)

# Everybody else in the demonstration, so that two people can be tried against each other.
OTHERS_PASSWORD = "same-bench-other-hands"  # noqa: S105 - public on purpose
