"""The operations of `job`: made from the table of operations; do not edit."""

from typing import final

from overslab.results import AnswerResult

from overslab.typing import Units

__all__ = [
    "report",
    "Report",
]

def report(
    job: str,
    *,
    units: Units | None = None,
) -> Report:
    r"""The report of a whole job, as text for the site and as JSON for a program.

    Rule: survey, finish, thickness, order, one after the other.
    Takes for granted: what the report lists as taken.

    Args:
        job: the job description, TOML or JSON; a text
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        Report, with the attributes
            ordered_yd3, ordered_m3: concrete to order [yd3 | m3]
            net_yd3, net_m3: volume of the floor, net [yd3 | m3]
            least_in, least_mm: least thickness between the shots [in | mm]
            text: the report for the site
            json: the report as JSON
        and notes, basis and taken.

    Raises:
        FormError: a required value is missing (KEY_MISSING); the text is not valid TOML or JSON
            (SYNTAX)

    Basis:
        height of instrument = elevation + backsight; elevation = height of instrument - sight:
            Surveying textbooks, differential levelling (any), height of instrument
        plane and solid geometry: derived

    Example:
        >>> from overslab.job import report
        >>> answer = report(
        ...     job="schema_version = 1\n[job]\nname = \"Tool shed (invented)\"\n[outline]\nsides = [{ name = \"front\", length = \"10 ft\" }, { name = \"right\", length = \"8 ft\" }, { name = \"back\", length = \"10 ft\" }, { name = \"left\", length = \"8 ft\" }]\n[level]\nbenchmarks = [{ name = \"nail\", elevation = \"100 ft\" }]\ncolumns = [\"1 ft\", \"9 ft\"]\n[[level.setups]]\non = \"nail\"\nrod = \"4' 2\\\"\"\nrows = [{ y = \"1 ft\", rods = [\"5' 1\\\"\", \"5' 1 1/4\\\"\"] }, { y = \"7 ft\", rods = [\"5' 0\\\"\", \"5' 0 1/2\\\"\"] }]\n[finish]\nleast = \"3 in\"\nfalls_to = \"front\"\nfall = \"1/8 in/ft\"\n",
        ... )
        >>> round(answer.ordered_yd3, 4)
        1.0

    Since 0.1.0.
    """

@final
class Report(AnswerResult):
    r"""What `report` gives."""

    @property
    def ordered_yd3(self) -> float:
        r"""concrete to order [yd3]."""

    @property
    def ordered_m3(self) -> float:
        r"""concrete to order [m3]."""

    @property
    def net_yd3(self) -> float:
        r"""volume of the floor, net [yd3]."""

    @property
    def net_m3(self) -> float:
        r"""volume of the floor, net [m3]."""

    @property
    def least_in(self) -> float:
        r"""least thickness between the shots [in]."""

    @property
    def least_mm(self) -> float:
        r"""least thickness between the shots [mm]."""

    @property
    def text(self) -> str:
        r"""the report for the site."""

    @property
    def json(self) -> str:
        r"""the report as JSON."""
