"""Who signed a series or trial, and whether the content is still what was signed."""

from dataclasses import dataclass

from trials.models import Series, Signature, Trial
from trials.models.signing import Meaning

from .canonical import canonical, digest


@dataclass(frozen=True, slots=True)
class Signing:
    """The state of signing of one record, in words and with its signatures, oldest first."""

    signatures: tuple[Signature, ...]

    @property
    def performed(self) -> Signature | None:
        return next((s for s in self.signatures if s.meaning == Meaning.PERFORMED), None)

    @property
    def countersigned(self) -> Signature | None:
        return next((s for s in self.signatures if s.meaning == Meaning.COUNTERSIGNED), None)

    @property
    def amended(self) -> tuple[Signature, ...]:
        return tuple(s for s in self.signatures if s.meaning == Meaning.AMENDED)

    @property
    def word(self) -> str:
        """For lists and the head of every printed page."""
        if self.performed is None:
            return "not signed"
        signed = "signed by two" if self.countersigned else "signed"
        return f"{signed}, amended" if self.amended else signed

    @property
    def head(self) -> str:
        """The digest of the newest signature."""
        return self.signatures[-1].digest if self.signatures else ""


def signing_of(record: Series | Trial) -> Signing:
    """Signatures on the record; a trial that has none of its own stands under those of its series."""
    found = _on(record)
    if not found and isinstance(record, Trial):
        found = _on(record.series)
    return Signing(found)


def still_as_signed(signature: Signature) -> bool:
    """Whether content, signer and chain still give the digest that was signed."""
    return bool(signature.digest) and digest(signature) == signature.digest


def live_as_signed(record: Series | Trial, signing: Signing) -> bool:
    """Whether the record as it stands is what its newest signature covers."""
    return bool(signing.signatures) and signing.signatures[-1].canonical == canonical(record)


def _on(record) -> tuple[Signature, ...]:
    of = {"series": record} if isinstance(record, Series) else {"trial": record}
    return tuple(Signature.objects.filter(**of).select_related("person").order_by("pk"))
