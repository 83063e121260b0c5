"""The boat store (invented), called from Python: from the job file to the report, and the same floor from arrays.

    python examples/boat_store.py [JOB.toml] [--figures]
"""

import sys
from pathlib import Path

from overslab import OverslabError, grade, job, survey

FIGURES = ["ordered_yd3", "figured_yd3", "loads", "net_yd3", "least_in", "greatest_in", "mean_in"]


def from_arrays() -> str:
    """The same old floor as a notebook would have it: readings in a list, feet and inches as text."""
    outline = survey.outline_from_sides(
        sides={"length": ["20 ft", "32 ft", "20 ft", "32 ft"], "name": ["front", "right", "back", "left"]},
        diagonal="37' 8 7/8\"",
    )
    inches = [
        [60.625, 60.5, 60.375, 60.75],
        [59.875, 60.0, 59.875, 60.125],
        [59.375, 59.375, 59.625, 59.5],
        [58.75, 59.0, 59.25, 58.875],
        [58.0, 58.125, 58.25, 58.25],
    ]
    floor = survey.survey_from_rods(
        outline=outline,
        columns={"x": [0.5, 7.0, 13.0, 19.5]},
        rows={"y": [0.5, 8.0, 16.0, 24.0, 31.5]},
        rods={"rod": [f"{rod} in" for row in inches for rod in row]},
        benchmark="100 ft",
        backsight="4' 2 1/2\"",
        units="us",
    )
    finish = grade.finish_at_least(
        survey=floor, least="3 in", margin="3/8 in", edge="front", fall="1/8 in/ft", round="1/8 in", datum="100 ft"
    )
    found = grade.thickness(survey=floor, finish=finish, thinner_than="4 in")
    return (
        f"The same floor from a list of rods: {found.net_yd3:.2f} yd3, {found.least_measured_in:.2f} to "
        f"{found.greatest_in:.2f} in thick, {found.thinner_ft2:.0f} ft2 under 4 in."
    )


def main() -> int:
    arguments = [argument for argument in sys.argv[1:] if argument != "--figures"]
    path = Path(arguments[0]) if arguments else Path(__file__).with_name("boat_store.toml")
    try:
        report = job.report(job=job.job_from_text(text=path.read_text()))
    except OverslabError as failure:
        print(f"{path}: {failure}", file=sys.stderr)
        return 1
    if "--figures" in sys.argv:
        if report.ordered_yd3 is None:
            print("no figures: the old slab spans free")
            return 0
        for name in FIGURES:
            print(f"{name} {getattr(report, name):.9f}")
        return 0
    print(report.text)
    print(from_arrays())
    return 0


if __name__ == "__main__":
    sys.exit(main())
