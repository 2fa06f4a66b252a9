"""What proves that a report tells what was signed: signatures with their digests, and the head of the seals."""

from dataclasses import dataclass

from trials.models import Seal, Series, Trial
from trials.models.signing import Meaning
from trials.queries.signatures import Signing, live_as_signed, still_as_signed

from .parts import moment


@dataclass(frozen=True, slots=True)
class Signed:
    """One signature; ``holds``: content, signer and chain still give its digest."""

    meaning: str
    who: str
    when: str
    reason: str
    digest: str
    holds: bool


@dataclass(frozen=True, slots=True)
class Proof:
    """``state`` says in a sentence what the signatures cover; ``seal`` is the newest one, "" where there is none."""

    state: str
    signatures: tuple[Signed, ...]
    seal: str
    sealed: str
    covers: str


def proof_of(record: Series | Trial, signing: Signing) -> Proof:
    newest = Seal.objects.order_by("-pk").first()
    return Proof(
        state=_state(record, signing),
        signatures=tuple(
            Signed(
                meaning=Meaning(one.meaning).label,
                who=one.person.full_name,
                when=moment(one.at),
                reason=one.reason,
                digest=one.digest,
                holds=still_as_signed(one),
            )
            for one in signing.signatures
        ),
        seal=newest.digest if newest else "",
        sealed=moment(newest.sealed_at) if newest else "",
        covers=_covers(signing, newest),
    )


def _state(record: Series | Trial, signing: Signing) -> str:
    if not signing.signatures:
        return "Nobody has signed this: it may still change."
    signed, which = record, "this record"
    if isinstance(record, Trial) and signing.signatures[-1].series_id:
        signed, which = record.series, f"series {record.series.number}, to which this cup belongs,"
    if live_as_signed(signed, signing):
        return f"To the letter, {which} is what its newest signature covers."
    return f"As it stands, {which} is not what its newest signature covers: do not rely on this report."


def _covers(signing: Signing, seal: Seal | None) -> str:
    if seal is None:
        return "No seal was made yet."
    if signing.signatures and signing.signatures[-1].xid < seal.to_xid:
        return "It covers every signature above. What was written after it, it does not cover."
    if signing.signatures:
        return "The newest signature above is younger than it, and not covered yet."
    return "What was written after it, it does not cover."
