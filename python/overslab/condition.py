"""The operations of `condition`: made from the table of operations; do not edit."""

from overslab._overslab import (
    Findings,
    condition,
    Condition,
    condition_quick,
    ConditionQuick,
    tear_out,
    TearOut,
)

__all__ = [
    "Findings",
    "condition",
    "Condition",
    "condition_quick",
    "ConditionQuick",
    "tear_out",
    "TearOut",
]
