"""The record: fields, named constraints and triggers, and who may see what. No logic in ``save()``, no signals."""

from .bases import Base, BaseShare, Component, Line, Revision
from .candidates import Candidate
from .criteria import Criterion, Step
from .enquiries import Enquiry, EnquiryShare, Limit
from .equipment import Balance, Equipment
from .findings import Finding
from .materials import Lot, Paper, RawMaterial, ReactiveGroup
from .panels import Layer, Panel, Photo, Retain, StoredTin
from .people import Person, Role
from .ratings import Rating
from .searching import TrialSearch
from .series import CommonBatch, CommonBatchLot, Series, SeriesCriterion, SeriesShare
from .signing import Seal, Signature
from .trials import Dosage, Failure, Trial, Weighing, WetReading, Working

__all__ = [
    "Balance",
    "Base",
    "BaseShare",
    "Candidate",
    "CommonBatch",
    "CommonBatchLot",
    "Component",
    "Criterion",
    "Dosage",
    "Enquiry",
    "EnquiryShare",
    "Equipment",
    "Failure",
    "Finding",
    "Layer",
    "Limit",
    "Line",
    "Lot",
    "Panel",
    "Paper",
    "Person",
    "Photo",
    "Rating",
    "RawMaterial",
    "ReactiveGroup",
    "Retain",
    "Revision",
    "Role",
    "Seal",
    "Series",
    "SeriesCriterion",
    "SeriesShare",
    "Signature",
    "Step",
    "StoredTin",
    "Trial",
    "TrialSearch",
    "Weighing",
    "WetReading",
    "Working",
]
