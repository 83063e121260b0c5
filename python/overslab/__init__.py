"""Computation engine for pouring new concrete floors over old ones.

Each module answers one question of the job; `OPERATIONS` is the table of all operations.
Made from the table of operations; do not edit.
"""

from overslab import failures, results, typing
from overslab import survey, condition, grade, marks, overlay, clearance, order, asbuilt, job
from overslab._overslab import OPERATIONS, __version__
from overslab.failures import OverslabError, QuantityError, FormError, SurveyError, GradeError, MarksError, ConditionError, OverlayError, ClearanceError, AsBuiltError, BorderError
from overslab.survey import Outline, Survey, Points, Tin
from overslab.condition import Findings
from overslab.grade import Finish
from overslab.job import Job

__all__ = [
    "OPERATIONS",
    "__version__",
    "failures",
    "results",
    "typing",
    "survey",
    "condition",
    "grade",
    "marks",
    "overlay",
    "clearance",
    "order",
    "asbuilt",
    "job",
    "OverslabError",
    "QuantityError",
    "FormError",
    "SurveyError",
    "GradeError",
    "MarksError",
    "ConditionError",
    "OverlayError",
    "ClearanceError",
    "AsBuiltError",
    "BorderError",
    "Outline",
    "Survey",
    "Points",
    "Tin",
    "Findings",
    "Finish",
    "Job",
]
