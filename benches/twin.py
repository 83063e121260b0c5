"""The same floor of 40 shots through the Python package and in SciPy and NumPy, in one run; what one call costs; and the finish of
least concrete beside a bare call of HiGHS, its arrays ready before the clock starts; slab stresses over a million rows and the
flatness of ten thousand readings beside the same expressions in NumPy, one thread each.

    benches/run

Times are the best of several rounds, ours and the twin's in turn, so that the ratio stands where the machine is noisy. `benches/run` installs
the released wheel in an environment of its own and calls this.
"""

import timeit

import numpy as np
from overslab import Outline, asbuilt, grade, overlay, survey
from scipy.optimize import linprog
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


def named_outline():
    """The outline with a front to fall to."""
    corners = [{"x": f"{x} ft", "y": f"{y} ft"} for x, y in [(0, 0), (20, 0), (20, 32), (0, 32)]]
    return Outline.from_dict({"corners": corners, "edges": ["front", "right", "back", "left"]})


def least_program(points, heights, least, fall):
    """Cost and rows of the plane of least volume with a least thickness and a fall to the front: what `linprog` is handed."""
    rows = np.column_stack([np.ones(len(points)), points - points.mean(axis=0)])
    a = np.vstack([-rows, [[0.0, 0.0, -1.0]]])
    b = np.append(-(heights + least), -fall)
    hull = Delaunay(points)
    corners = points[hull.simplices]
    u, v = corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0]
    areas = 0.5 * np.abs(u[:, 0] * v[:, 1] - u[:, 1] * v[:, 0])
    cost = areas @ np.column_stack([np.ones(len(areas)), corners.mean(axis=1) - points.mean(axis=0)])
    return cost, a, b


def solved(outline, points, heights):
    """The finish of least concrete in several ways, each against one bare call of HiGHS."""
    floor = survey.survey_from_shots(
        outline=outline, shots={"x": points[:, 0], "y": points[:, 1], "elevation": heights}, units="us"
    )
    demands = {"name": ["least", "fall"], "kind": ["least_thickness", "least_fall"], "thickness": [3.0, None], "fall": [None, 0.125],
               "edge": [None, "front"]}
    contrary = {key: [*column, None] for key, column in demands.items()}
    contrary |= {"name": ["least", "fall", "door"], "kind": ["least_thickness", "least_fall", "at_most"], "elevation": [None, None, 99.2],
                 "x": [None, None, 10.0], "y": [None, None, 32.0]}
    cost, a, b = least_program(points, heights, 0.25, 0.125 / 12.0)

    def bare():
        return linprog(cost, A_ub=a, b_ub=b, bounds=(None, None), method="highs").fun

    def planned():
        return grade.finish_solved(survey=floor, demands=demands, margin=0.0, set_out="no", units="us").planned_concrete_yd3

    def built():
        return grade.finish_solved(survey=floor, demands=demands, concrete_price=165.0, units="us").concrete_yd3

    def conflicts():
        return grade.finish_conflicts(survey=floor, demands=contrary, margin=0.0, units="us").said

    assert grade.finish_conflicts(survey=floor, demands=contrary, margin=0.0, units="us").kept == "no"
    for name, ours in [("least concrete with prices", planned), ("the same set out and rounded", built), ("what contradicts", conflicts)]:
        mine, other = (min(times) for times in zip(*((best(ours, 200), best(bare, 200)) for _ in range(15))))
        report(name, mine, other, other / mine)


def interior(load, radius, thickness, modulus, poisson, subgrade):
    """Westergaard's interior stress and deflection of 1926 in NumPy: psi, in."""
    stiffness = (modulus * thickness**3 / (12.0 * (1.0 - poisson**2) * subgrade)) ** 0.25
    small = np.sqrt(1.6 * radius**2 + thickness**2) - 0.675 * thickness
    b = np.where(radius < 1.724 * thickness, small, radius)
    stress = 3.0 * (1.0 + poisson) * load / (2.0 * np.pi * thickness**2) * (np.log(stiffness / b) + 0.6159)
    share = (radius / stiffness) ** 2
    deflection = load / (8.0 * subgrade * stiffness**2) * (1.0 + (np.log(radius / (2.0 * stiffness)) - 0.673) * share / (2.0 * np.pi))
    return stress, deflection


def edge(load, radius, thickness, modulus, poisson, subgrade):
    """Westergaard's edge stress and deflection of 1948 under a circle in NumPy: psi, in."""
    stiff = modulus * thickness**3
    wide = radius / (stiff / (12.0 * (1.0 - poisson**2) * subgrade)) ** 0.25
    inner = np.log(stiff / (100.0 * subgrade * radius**4)) + 1.84 - 4.0 * poisson / 3.0 + (1.0 - poisson) / 2.0
    stress = 3.0 * (1.0 + poisson) * load / (np.pi * (3.0 + poisson) * thickness**2) * (inner + 1.18 * (1.0 + 2.0 * poisson) * wide)
    deflection = np.sqrt(2.0 + 1.2 * poisson) * load / np.sqrt(stiff * subgrade) * (1.0 - (0.76 + 0.4 * poisson) * wide)
    return stress, deflection


def corner(load, radius, thickness, modulus, poisson, subgrade):
    """Westergaard's corner stress and deflection of 1926 in NumPy: psi, in."""
    stiffness = (modulus * thickness**3 / (12.0 * (1.0 - poisson**2) * subgrade)) ** 0.25
    reach = radius * np.sqrt(2.0) / stiffness
    stress = 3.0 * load / thickness**2 * (1.0 - reach**0.6)
    deflection = load / (subgrade * stiffness**2) * (1.1 - 0.88 * reach)
    return stress, deflection


def stresses(count=1_000_000):
    """Stress functions over many rows: worked out, and then also stress and deflection read in psi and inches."""
    random = np.random.default_rng(3)
    spans = {"load": (500, 9000), "radius": (2, 4.5), "thickness": (4, 12), "modulus": (3e6, 5e6), "poisson": (0.1, 0.2), "subgrade": (50, 400)}
    rows = {name: random.uniform(*span, count) for name, span in spans.items()}

    for name, work, theirs in [
        ("interior stress", lambda: overlay.interior_load(**rows, units="us"), lambda: interior(**rows)),
        ("edge stress", lambda: overlay.edge_load(**rows, footprint="circle", units="us"), lambda: edge(**rows)),
        ("corner stress", lambda: overlay.corner_load(**rows, formula="Westergaard 1926", units="us"), lambda: corner(**rows)),
    ]:

        def read(work=work):
            found = work()
            return found.stress_psi, found.deflection_in

        for mine, other, near in zip(read(), theirs(), (2e-4, 2e-3)):
            assert np.allclose(mine, other, rtol=near), name
        for what, ours in [("a million rows", work), ("read in psi and in", read)]:
            mine, other = (min(times) for times in zip(*((best(ours, 1), best(theirs, 1)) for _ in range(15))))
            report(f"{name}, {what}", mine, other, other / mine)


def f_numbers(heights):
    """FF and FL in NumPy, inches."""
    q, z = np.diff(heights, 2), heights[10:] - heights[:-10]
    number = lambda factor, values: factor / (3.0 * values.std(ddof=1) + abs(values.mean()))
    return number(4.57, q), number(12.5, z)


def flatness():
    """Flatness of ten thousand readings."""
    heights = 1200.0 + np.random.default_rng(5).normal(0.0, 0.08, 10_000)

    def ours():
        return asbuilt.flatness_line(readings={"elevation": heights}, units="us")

    found, wanted = ours(), f_numbers(heights)
    assert np.isclose(found.ff_ratio, wanted[0], rtol=1e-9) and np.isclose(found.fl_ratio, wanted[1], rtol=1e-9)
    mine, other = (min(times) for times in zip(*((best(ours, 20), best(lambda: f_numbers(heights), 20)) for _ in range(15))))
    report("FF and FL of 10,000 readings", mine, other, other / mine)


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

    solved(named_outline(), loose, heights)
    stresses()
    flatness()

    nothing = best(lambda: None, 200_000)
    numbers = best(lambda: grade.fall(2.0, 20.0, units="us"), 200_000) - nothing
    text = best(lambda: grade.fall("2 in", "20 ft"), 100_000) - nothing
    print(f"{'scalar call with numbers':44} {1e9 * numbers:8.0f} ns")
    print(f"{'scalar call with text':44} {1e9 * text:8.0f} ns")


if __name__ == "__main__":
    main()
