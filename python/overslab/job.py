"""The operations of `job`: made from the table of operations; do not edit."""

from overslab._overslab import (
    Job,
    job_from_text,
    report,
    Report,
)

__all__ = [
    "Job",
    "job_from_text",
    "report",
    "Report",
]
