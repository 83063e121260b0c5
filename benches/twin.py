"""The same floor of 40 shots through the Python package and in SciPy and NumPy, in one run; and what one call costs.

    benches/run

Times are the best of several rounds, ours and the twin's in turn, so that the ratio stands where the machine is noisy. `benches/run` installs
the released wheel in an environment of its own and calls this.
"""

import timeit

import numpy as np
from overslab import grade, survey
from scipy.spatial import Delaunay

FOOT = 0.3048
COLUMNS, ROWS = 5, 8


def job():
    """Outline, places and heights of an invented floor, in feet."""
    random = np.random.default_rng(20261125)
    x = 0.5 + 4.75 * np.arange(COLUMNS)
    y = 0.5 + 4.4 * np.arange(ROWS)
    heights = 99.0 + 0.06 * random.random(COLUMNS * ROWS)
    return x, y, heights


def twin(points, heights, level):
    """SciPy's Delaunay triangles, NumPy's prism volumes; no zero line, no edges past the shots."""
    triangles = Delaunay(points).simplices
    corners = points[triangles]
    a, b = corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0]
    areas = 0.5 * np.abs(a[:, 0] * b[:, 1] - a[:, 1] * b[:, 0])
    thickness = level - heights[triangles]
    return float((areas * thickness.mean(axis=1)).sum()), float(thickness.min()), float(thickness.max())


def best(function, number=2000):
    return min(timeit.repeat(function, number=number, repeat=1)) / number


def in_turn(ours, theirs, rounds=15):
    """The best time of each, run in turn, and the ratio."""
    times = [(best(ours), best(theirs)) for _ in range(rounds)]
    mine, other = min(time[0] for time in times), min(time[1] for time in times)
    return mine, other, other / mine


def report(name, mine, other, ratio):
    print(f"{name:44} {1e6 * mine:8.2f} us   twin {1e6 * other:8.2f} us   ratio {ratio:5.1f}")


def main():
    x, y, heights = job()
    outline = survey.outline_from_corners(
        corners={"x": [0, 20, 20, 0], "y": [0, 0, 32, 32]}, units="us"
    )
    level = grade.finish_level(elevation=99.4, units="us")
    grid = np.array([(cx, cy) for cy in y for cx in x])
    random = np.random.default_rng(7)
    loose = grid + random.uniform(-0.4, 0.4, grid.shape)
    loose_x, loose_y = np.ascontiguousarray(loose[:, 0]), np.ascontiguousarray(loose[:, 1])

    def by_rows():
        floor = survey.survey_from_grid(
            outline=outline, columns={"x": x}, rows={"y": y}, elevations={"elevation": heights}, units="us"
        )
        return grade.thickness(survey=floor, finish=level).net_yd3

    def by_shots():
        floor = survey.survey_from_shots(
            outline=outline, shots={"x": loose_x, "y": loose_y, "elevation": heights}, units="us"
        )
        return grade.thickness(survey=floor, finish=level).net_yd3

    report("40 shots by rows and columns", *in_turn(by_rows, lambda: twin(grid, heights, 99.4)))
    report("40 shots, scattered", *in_turn(by_shots, lambda: twin(loose, heights, 99.4)))

    nothing = best(lambda: None, 200_000)
    numbers = best(lambda: grade.fall(2.0, 20.0, units="us"), 200_000) - nothing
    text = best(lambda: grade.fall("2 in", "20 ft"), 100_000) - nothing
    print(f"{'scalar call with numbers':44} {1e9 * numbers:8.0f} ns")
    print(f"{'scalar call with text':44} {1e9 * text:8.0f} ns")


if __name__ == "__main__":
    main()
