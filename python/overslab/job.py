"""The operations of `job`: made from the table of operations; do not edit."""

from overslab._overslab import (
    report,
    Report,
)

__all__ = [
    "report",
    "Report",
]
