"""The place of a drain against SciPy: at every place of a grid the finish of least concrete is a linear program of its own.

The programs here are written from the trade's words, not from the engine's: perimeter h and drop D are the unknowns, the finish over a
place is h less D times 1 - |place - drain| / |way from the drain through the place to the wall|, found by casting a ray, and the old
slab is read from the engine's triangles. Thickness is asked at the triangles' corners and where their sides cross the lines from the
drain to the corners, and at the drain.

Tolerances. HiGHS keeps rows to 1e-9 m here; a share found by a ray is good to 1e-12: concrete agrees to 1e-7 of itself. No place of the
grid may be under the engine's bound, or better than its answer by more than its gap.
"""

from __future__ import annotations

from typing import Any

import numpy as np
import pytest
from scipy.optimize import linprog

from overslab.grade import drain_place, thickness
from overslab.survey import survey_from_shots
from surface_jobs import Floats, Triangles

LEAST, MARGIN, FALL, STEEP = 0.075, 0.01, 0.01, 0.06
CLOSE = 1e-3
RELATIVE = 1e-7
GRID = 9

RECTANGLE = np.array([[0.0, 0.0], [7.0, 0.0], [7.0, 4.5], [0.0, 4.5]])
SKEW = np.array([[0.0, 0.0], [6.0, 0.5], [5.2, 4.8], [0.8, 4.0]])
NOTCHED = np.array([[0.0, 0.0], [6.5, 0.0], [6.5, 3.2], [3.8, 3.2], [3.8, 5.5], [0.0, 5.5]])
JOBS = [(outline, seed) for outline in (RECTANGLE, SKEW, NOTCHED) for seed in range(3)]


def cross(a: Floats, b: Floats) -> Floats:
    return a[..., 0] * b[..., 1] - a[..., 1] * b[..., 0]


def old_slab(outline: Floats, seed: int) -> Any:
    """Shots on all corners, so that nothing is beyond them, and some within; tilted and rough."""
    random = np.random.default_rng(seed)
    low = outline.min(axis=0) + 0.6
    inner = low + random.random((6, 2)) * (np.array([3.0, 2.4]) - low)
    places = np.vstack([outline, inner])
    heights = 10.0 + places @ random.uniform(-0.012, 0.012, 2) + random.uniform(-0.01, 0.01, len(places))
    corners = [{"x": f"{x!r} m", "y": f"{y!r} m"} for x, y in outline.tolist()]
    shots = {"x": places[:, 0], "y": places[:, 1], "elevation": heights}
    return survey_from_shots(outline={"corners": corners}, shots=shots, beyond_allowed="yes", units="si")


def shares(outline: Floats, drain: Floats, places: Floats) -> Floats:
    """Which share of the drop places have, by rays from the drain: 1 at the drain, 0 at the wall."""
    way = places - drain
    a, b = outline, np.roll(outline, -1, axis=0)
    along = b - a
    with np.errstate(divide="ignore", invalid="ignore"):
        across = cross(way[:, None, :], along[None, :, :])
        reach = cross(a[None] - drain, along[None]) / across
        where = cross(a[None] - drain, way[:, None, :]) / across
    hits = (reach > 0.0) & (where >= -1e-9) & (where <= 1.0 + 1e-9)
    nearest = np.where(hits, reach, np.inf).min(axis=1)
    return np.where(np.hypot(*way.T) < 1e-12, 1.0, np.maximum(0.0, 1.0 - 1.0 / nearest))


def binding(outline: Floats, triangles: Floats, drain: Floats) -> Floats:
    """Places with the height of the old slab where the finish can come nearest to it."""
    places = [triangles.reshape(-1, 3)]
    for triangle in triangles:
        for start, end in zip(triangle, np.roll(triangle, -1, axis=0)):
            side = end[:2] - start[:2]
            for corner in outline:
                way = corner - drain
                across = float(cross(side, way))
                if abs(across) > 1e-12:
                    at = float(cross(drain - start[:2], way)) / across
                    on = float(cross(drain - start[:2], side)) / across
                    if 0.0 <= at <= 1.0 and 0.0 <= on <= 1.0:
                        places.append((start + at * (end - start))[None])
        a, p, q = triangle[0], triangle[1] - triangle[0], triangle[2] - triangle[0]
        u, v = np.linalg.solve(np.array([p[:2], q[:2]]).T, drain - a[:2])
        if min(u, v, 1.0 - u - v) >= -1e-12:
            places.append((a + u * p + v * q)[None])
    return np.vstack(places)


def least_concrete(outline: Floats, triangles: Floats, drain: Floats, steepest: float | None) -> float | None:
    """The concrete of the least finish about one place of the drain; none where there is none."""
    places = binding(outline, triangles, drain)
    part = shares(outline, drain, places[:, :2])
    rows = [np.column_stack([-np.ones(len(part)), part])]
    bounds = [-(places[:, 2] + LEAST + MARGIN)]
    rows.append(np.array([[0.0, -1.0]]))
    bounds.append(np.array([-FALL * np.hypot(*(outline - drain).T).max()]))
    if steepest is not None:
        along = np.roll(outline, -1, axis=0) - outline
        inside = cross(along, drain - outline) / np.hypot(*along.T)
        rows.append(np.array([[0.0, 1.0]]))
        bounds.append(np.array([steepest * inside.min()]))
    sides = triangles[:, 1:, :2] - triangles[:, :1, :2]
    areas = 0.5 * np.abs(cross(sides[:, 0], sides[:, 1]))
    area, ground = areas.sum(), (areas * triangles[:, :, 2].mean(axis=1)).sum()
    options = {"primal_feasibility_tolerance": 1e-9, "dual_feasibility_tolerance": 1e-9}
    found = linprog(
        [area, -area / 3.0],
        A_ub=np.vstack(rows),
        b_ub=np.concatenate(bounds),
        bounds=[(None, None), (0.0, None)],
        method="highs",
        options=options,
    )
    return float(found.fun - ground) if found.status == 0 else None


@pytest.mark.parametrize("steepest", [None, STEEP])
@pytest.mark.parametrize(("outline", "seed"), JOBS)
def test_no_place_of_a_grid_is_better(outline: Floats, seed: int, steepest: float | None) -> None:
    survey = old_slab(outline, seed)
    triangles = Triangles.of(survey).corners
    x, y = (0.5, 3.4), (0.6, 2.9)
    found = drain_place(
        survey=survey,
        x_from=x[0],
        x_to=x[1],
        y_from=y[0],
        y_to=y[1],
        least=1000.0 * LEAST,
        margin=1000.0 * MARGIN,
        fall=100.0 * FALL,
        greatest_fall=None if steepest is None else 100.0 * steepest,
        close=100.0 * CLOSE,
        units="si",
    )
    concrete, bound = found.concrete_m3, found.bound_m3
    assert found.ended == "close"
    assert bound <= concrete <= bound + 1.001 * CLOSE * concrete
    drain = np.array([found.x_m, found.y_m])
    there = least_concrete(outline, triangles, drain, steepest)
    assert there is not None and abs(there - concrete) <= RELATIVE * concrete
    assert abs(thickness(survey=survey, finish=found.finish, units="si").net_m3 - concrete) <= RELATIVE * concrete
    tried = 0
    for at_x in np.linspace(*x, GRID):
        for at_y in np.linspace(*y, GRID):
            there = least_concrete(outline, triangles, np.array([at_x, at_y]), steepest)
            if there is not None:
                tried += 1
                assert there >= bound - RELATIVE * concrete
    assert tried >= GRID
