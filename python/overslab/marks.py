"""The operations of `marks`: made from the table of operations; do not edit."""

from overslab._overslab import (
    marks,
    Marks,
    morning_check,
    MorningCheck,
)

__all__ = [
    "marks",
    "Marks",
    "morning_check",
    "MorningCheck",
]
