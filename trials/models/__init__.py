"""The record: fields, named constraints and triggers, and who may see what. No logic in ``save()``, no signals."""

from .bases import Base, BaseShare, Component, Line, Revision
from .candidates import Candidate
from .materials import Lot, Paper, RawMaterial, ReactiveGroup
from .people import Person, Role
from .signing import Seal

__all__ = [
    "Base",
    "BaseShare",
    "Candidate",
    "Component",
    "Line",
    "Lot",
    "Paper",
    "Person",
    "RawMaterial",
    "ReactiveGroup",
    "Revision",
    "Role",
    "Seal",
]
