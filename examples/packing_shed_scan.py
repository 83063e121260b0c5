"""A packing shed (invented) from a scan: bytes of a file, job axes, strays, thinning, and the whole report.

    python examples/packing_shed_scan.py

The scan is invented here with NumPy: an old floor that falls and waves, walls, bench legs, a stack of crates, noise. A scanner's
file would be read the same way: `read_points(file=open(path, "rb").read())`.
"""

import io
import sys

import numpy as np
from overslab import OverslabError, job, survey

WIDTH, DEPTH = 9.0, 14.0  # metres inside the walls
JOB = """
schema_version = 1
[job]
name = "Packing shed (invented): new floor over old, from a scan"
origin = "front left inside corner; y runs from the door to the back"
[finish]
least = "3 in"
falls_to = "front"
fall = "1/8 in/ft"
[water]
edges = [{ edge = "right", state = "walled" }, { edge = "back", state = "walled" }, { edge = "left", state = "walled" }]
"""


def invented_scan(random: np.random.Generator) -> bytes:
    """An XYZ text in the scanner's own axes: turned by 30 degrees about a place of its own, heights from its mirror."""
    floor = random.uniform([0, 0], [WIDTH, DEPTH], (60_000, 2))
    x, y = floor.T
    z = 0.004 * y + 0.006 * np.sin(x) * np.cos(0.7 * y) + random.normal(0, 0.001, x.size)
    wall = np.column_stack([np.zeros(3000), random.uniform(0, DEPTH, 3000), random.uniform(0.1, 2.5, 3000)])
    legs = np.concatenate(
        [
            np.column_stack([np.full(150, a) + random.normal(0, 0.01, 150), np.full(150, b), random.uniform(0.05, 0.8, 150)])
            for a, b in [(2, 3), (2, 5), (4, 3), (4, 5)]
        ]
    )
    crates = np.column_stack([random.uniform(6, 7, 800), random.uniform(9, 10, 800), np.full(800, 1.2)])
    points = np.concatenate([np.column_stack([x, y, z]), wall, legs, crates])
    turn = np.radians(30)
    plan = points[:, :2] @ np.array([[np.cos(turn), np.sin(turn)], [-np.sin(turn), np.cos(turn)]]) + [120.0, -45.0]
    text = io.StringIO()
    np.savetxt(text, np.column_stack([plan, points[:, 2] - 1.634]), fmt="%.4f")
    return text.getvalue().encode()


def known_places() -> dict[str, list[float]]:
    """Two nails that the scanner saw and the tape placed, the nail at the left jamb being 0.3 m above the floor there."""
    turn = np.radians(30)
    axes = np.array([[np.cos(turn), np.sin(turn)], [-np.sin(turn), np.cos(turn)]])
    nails = np.array([[0.05, 0.0], [8.95, 13.9]])
    seen = nails @ axes + [120.0, -45.0]
    return {
        "x": list(seen[:, 0]),
        "y": list(seen[:, 1]),
        "elevation": [0.3 - 1.634, 0.35 - 1.634],
        "job_x": list(nails[:, 0]),
        "job_y": list(nails[:, 1]),
        "job_elevation": [30.3, 30.35],
    }


def main() -> int:
    try:
        read = survey.read_points(file=invented_scan(np.random.default_rng(20261126)), format="xyz", unit="m")
        moved = survey.points_to_axes(points=read.points, known=known_places(), units="si")
        parted = survey.part_strays(points=moved.moved)
        outline = survey.outline_from_sides(
            sides={"length": [WIDTH, DEPTH, WIDTH, DEPTH], "name": ["front", "right", "back", "left"]}, units="si"
        )
        thinned = survey.thin_points(points=parted.floor, within="1/4 in", outline=outline)
        floor = survey.survey_from_points(outline=outline, points=thinned.thinned, outside="leave_out")
        report = job.report(job=job.job_from_text(text=JOB), survey=floor)
    except OverslabError as failure:
        print(failure, file=sys.stderr)
        return 1
    print(report.text)
    return 0


if __name__ == "__main__":
    sys.exit(main())
