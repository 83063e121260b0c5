"""The operations of `job`: made from the table of operations; do not edit."""

from typing import final

from overslab.results import AnswerResult, Record

from overslab.typing import RecordLike, Units
from overslab.survey import Survey

__all__ = [
    "Job",
    "job_from_text",
    "report",
    "Report",
]

@final
class Job(Record):
    r"""A whole job description."""

    @property
    def name(self) -> str:
        r"""what the job is called."""

def job_from_text(
    text: str,
    *,
    units: Units | None = None,
) -> Job:
    r"""Reads a job description from TOML or JSON.

    Rule: none.
    Takes for granted: a text whose first sign is a brace is JSON, any other TOML.

    Args:
        text: the job description; a text
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        Job: A whole job description. It has notes, basis and taken besides.

    Raises:
        FormError: a required value is missing (KEY_MISSING); the text is not valid TOML or JSON
            (SYNTAX); the key is not known (KEY_UNKNOWN)

    Example:
        >>> from overslab.job import job_from_text
        >>> answer = job_from_text(
        ...     text="schema_version = 1\n[job]\nname = \"Tool shed (invented)\"\n[outline]\nsides = [{ name = \"front\", length = \"10 ft\" }, { name = \"right\", length = \"8 ft\" }, { name = \"back\", length = \"10 ft\" }, { name = \"left\", length = \"8 ft\" }]\n[level]\nbenchmarks = [{ name = \"nail\", elevation = \"100 ft\" }]\ncolumns = [\"1 ft\", \"9 ft\"]\n[[level.setups]]\non = \"nail\"\nrod = \"4' 2\\\"\"\nrows = [{ y = \"1 ft\", rods = [\"5' 1\\\"\", \"5' 1 1/4\\\"\"] }, { y = \"7 ft\", rods = [\"5' 0\\\"\", \"5' 0 1/2\\\"\"] }]\n[finish]\nleast = \"3 in\"\nfalls_to = \"front\"\nfall = \"1/8 in/ft\"\n",
        ... )

    Since 0.1.0.
    """

def report(
    job: Job | RecordLike,
    *,
    survey: Survey | RecordLike | None = None,
    units: Units | None = None,
) -> Report:
    r"""The report of a whole job: its main figures, as text for the site, and as JSON for a program.

    Rule: survey, finish, thickness and order, one after the other.
    Takes for granted: what the report lists as taken; over an old slab that spans free no figure of a
        new floor is told.

    Args:
        job: the job; a Job
        survey: the old slab, for a job that does not describe one itself; a Survey; may be left out
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        Report, with the attributes
            ordered_yd3, ordered_m3: concrete to order [yd3 | m3]
            figured_yd3, figured_m3: net volume of all parts and allowances [yd3 | m3]
            loads: truck loads
            net_yd3, net_m3: volume of the floor, net [yd3 | m3]
            least_in, least_mm: least thickness between the shots [in | mm]
            greatest_in, greatest_mm: greatest thickness [in | mm]
            mean_in, mean_mm: mean thickness [in | mm]
            text: the report for the site
            json: the report as JSON
        and notes, basis and taken.

    Raises:
        FormError: a required value is missing (KEY_MISSING); the value is of another kind than the port
            takes (KIND_MISMATCH); the list is empty (EMPTY_LIST)

    Basis:
        height of instrument = elevation + backsight; elevation = height of instrument - sight:
            Surveying textbooks, differential levelling (any), height of instrument
        plane and solid geometry: derived

    Example:
        >>> from overslab.job import report
        >>> answer = report(
        ...     job={
        ...         "schema_version": 1,
        ...         "job": {"name": "Tool shed (invented)"},
        ...         "outline": {
        ...             "sides": [
        ...                 {"name": "front", "length": "10 ft"},
        ...                 {"name": "right", "length": "8 ft"},
        ...                 {"name": "back", "length": "10 ft"},
        ...                 {"name": "left", "length": "8 ft"},
        ...             ],
        ...         },
        ...         "level": {
        ...             "benchmarks": [{"name": "nail", "elevation": "100 ft"}],
        ...             "columns": ["1 ft", "9 ft"],
        ...             "setups": [
        ...                 {
        ...                     "on": "nail",
        ...                     "rod": "4' 2\"",
        ...                     "rows": [
        ...                         {"y": "1 ft", "rods": ["5' 1\"", "5' 1 1/4\""]},
        ...                         {"y": "7 ft", "rods": ["5' 0\"", "5' 0 1/2\""]},
        ...                     ],
        ...                 },
        ...             ],
        ...         },
        ...         "finish": {"least": "3 in", "falls_to": "front", "fall": "1/8 in/ft"},
        ...     },
        ... )
        >>> round(answer.ordered_yd3, 4)
        1.0

    Since 0.1.0.
    """

@final
class Report(AnswerResult):
    r"""What `report` gives."""

    @property
    def ordered_yd3(self) -> float | None:
        r"""concrete to order [yd3]."""

    @property
    def ordered_m3(self) -> float | None:
        r"""concrete to order [m3]."""

    @property
    def figured_yd3(self) -> float | None:
        r"""net volume of all parts and allowances [yd3]."""

    @property
    def figured_m3(self) -> float | None:
        r"""net volume of all parts and allowances [m3]."""

    @property
    def loads(self) -> int | None:
        r"""truck loads."""

    @property
    def net_yd3(self) -> float | None:
        r"""volume of the floor, net [yd3]."""

    @property
    def net_m3(self) -> float | None:
        r"""volume of the floor, net [m3]."""

    @property
    def least_in(self) -> float | None:
        r"""least thickness between the shots [in]."""

    @property
    def least_mm(self) -> float | None:
        r"""least thickness between the shots [mm]."""

    @property
    def greatest_in(self) -> float | None:
        r"""greatest thickness [in]."""

    @property
    def greatest_mm(self) -> float | None:
        r"""greatest thickness [mm]."""

    @property
    def mean_in(self) -> float | None:
        r"""mean thickness [in]."""

    @property
    def mean_mm(self) -> float | None:
        r"""mean thickness [mm]."""

    @property
    def text(self) -> str:
        r"""the report for the site."""

    @property
    def json(self) -> str:
        r"""the report as JSON."""
