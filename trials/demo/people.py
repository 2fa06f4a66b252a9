"""The invented people. Whoever comes first keeps the notebook."""

from typing import NamedTuple

from .sign_ins import OTHERS_PASSWORD, SIGN_INS

_PASSWORDS = {sign_in: password for _, sign_in, password in SIGN_INS}


class PersonRow(NamedTuple):
    """``left``: may no longer sign in; what they wrote stays theirs."""

    sign_in_name: str
    full_name: str
    initials: str
    role: str
    left: bool = False

    @property
    def password(self) -> str:
        return _PASSWORDS.get(self.sign_in_name, OTHERS_PASSWORD)


PEOPLE = (
    PersonRow("runa", "Runa Ostvik", "RO", "administrator"),
    PersonRow("maren", "Maren Tolvik", "MT", "supervisor"),
    PersonRow("caspar", "Caspar Delwig", "CD", "supervisor"),
    PersonRow("jonna", "Jonna Harrel", "JH", "bench"),
    PersonRow("tibor", "Tibor Larkfield", "TL", "bench"),
    PersonRow("nadia", "Nadia Quennor", "NQ", "bench"),
    PersonRow("ayo", "Ayo Bramwith", "AB", "bench"),
    PersonRow("lena", "Lena Fossgard", "LF", "bench"),
    PersonRow("ruth", "Ruth Ellerdine", "RE", "bench"),
    PersonRow("peer", "Peer Holmquade", "PH", "bench", left=True),
    PersonRow("silas", "Silas Wenmore", "SW", "reader"),
    PersonRow("greta", "Greta Umbach", "GU", "reader"),
)
