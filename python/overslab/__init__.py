"""Computation engine for pouring new concrete floors over old ones.

Each module answers one question of the job; `OPERATIONS` is the table of all operations.
Made from the table of operations; do not edit.
"""

from overslab import failures, results, typing
from overslab import grade, order
from overslab._overslab import OPERATIONS, __version__
from overslab.failures import OverslabError, QuantityError, FormError, SurveyError, GradeError, BorderError

__all__ = [
    "OPERATIONS",
    "__version__",
    "failures",
    "results",
    "typing",
    "grade",
    "order",
    "OverslabError",
    "QuantityError",
    "FormError",
    "SurveyError",
    "GradeError",
    "BorderError",
]
