"""The operations of `clearance`: made from the table of operations; do not edit."""

from overslab._overslab import (
    approach,
    Approach,
    crest_clearance,
    CrestClearance,
    CrestClearanceArray,
    sag_break,
    SagBreak,
    SagBreakArray,
    clearances,
    Clearances,
)

__all__ = [
    "approach",
    "Approach",
    "crest_clearance",
    "CrestClearance",
    "CrestClearanceArray",
    "sag_break",
    "SagBreak",
    "SagBreakArray",
    "clearances",
    "Clearances",
]
