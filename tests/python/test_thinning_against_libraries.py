"""Thinning, the floor of a scan and the change of axes against NumPy, SciPy and Matplotlib.

The open elevations are those that Matplotlib ships for its examples (`jacksboro_fault_dem.npz`, 344 by 403 whole metres from the
Shuttle Radar Topography Mission, three seconds of arc apart: public domain). They are laid out here on squares of 90 m: hills of 236 to
1076 m over 36 by 31 km, no floor, but 138,632 real heights. Matplotlib itself is used for nothing but this file and as an evaluator of
heights over given triangles.
"""

from __future__ import annotations

from importlib.util import find_spec
from pathlib import Path

import numpy as np
import pytest
import scipy.interpolate
import scipy.spatial
from matplotlib.tri import LinearTriInterpolator, Triangulation
from scipy.spatial.transform import Rotation

import overslab
from overslab.survey import (
    part_strays, points_from_table, points_to_axes, survey_from_points, thin_points,
)
from surface_jobs import Floats, Triangles

SPACING = 90.0
"""Metres from one elevation to the next, as laid out here."""


def elevations() -> Floats:
    """Rows of x, y, z."""
    package = find_spec("matplotlib")
    assert package is not None and package.origin is not None
    with np.load(Path(package.origin).parent / "mpl-data/sample_data/jacksboro_fault_dem.npz") as file:
        z = file["elevation"].astype(float)
    rows, columns = np.indices(z.shape)
    return np.c_[SPACING * columns.ravel(), SPACING * rows.ravel(), z.ravel()]


def record(points: Floats) -> overslab.Points:
    """Points as the engine holds them."""
    x, y, z = points.T
    return points_from_table(points={"x": x, "y": y, "elevation": z}, units="si")


def outline(points: Floats) -> overslab.Outline:
    """The rectangle around points."""
    (left, front), (right, back) = points[:, :2].min(axis=0), points[:, :2].max(axis=0)
    corners = [(left, front), (right, front), (right, back), (left, back)]
    return overslab.Outline.from_dict({"corners": [{"x": f"{float(x)!r} m", "y": f"{float(y)!r} m"} for x, y in corners]})


def over_triangles(corners: Floats, places: Floats) -> Floats:
    """Heights at places over triangles, by Matplotlib."""
    nodes, numbers = np.unique(corners.reshape(-1, 3), axis=0, return_inverse=True)
    assert len(np.unique(nodes[:, :2], axis=0)) == len(nodes), "two heights at one corner"
    triangles = Triangulation(nodes[:, 0], nodes[:, 1], numbers.reshape(-1, 3))
    heights = LinearTriInterpolator(triangles, nodes[:, 2])(places[:, 0], places[:, 1])
    assert not np.ma.getmaskarray(heights).any(), "a place is on no triangle"
    return np.asarray(heights)


@pytest.mark.parametrize("asked", [{"within": 60_000.0}, {"within": 25_000.0}, {"count": 2_000}])
def test_open_elevations_thinned(asked: dict[str, float]) -> None:
    points = elevations()
    edge = outline(points)
    thinned = thin_points(points=record(points), outline=edge, units="si", **asked)
    kept = np.array(thinned.kept["point"]) - 1
    assert thinned.kept_count == len(kept) < len(points) / 10 and thinned.outside_count == 0
    survey = survey_from_points(outline=edge, points=thinned.thinned, units="si")
    corners = Triangles.of(survey).corners
    out = np.setdiff1d(np.arange(len(points)), kept)
    off = np.abs(over_triangles(corners, points[out]) - points[out, 2])
    # Heights of 1,000 m over places of 36 km: 1e-9 of the height is a micrometre.
    assert off.max() == pytest.approx(thinned.error_mm / 1000.0, abs=1e-6)
    assert off[np.searchsorted(out, thinned.worst - 1)] == pytest.approx(off.max(), abs=1e-6)
    if "within" in asked:
        assert off.max() <= asked["within"] / 1000.0 + 1e-6
    else:
        assert thinned.kept_count == asked["count"]
    # The corners of the rectangle are the hull of a grid.
    assert {0, 402, len(points) - 403, len(points) - 1} <= set(kept.tolist())
    agrees_with_scipy(points[kept], corners, points[out])


def agrees_with_scipy(kept: Floats, corners: Floats, places: Floats) -> None:
    """Where one of our triangles is one of SciPy's, heights over it agree; elsewhere places of the grid share a circle."""
    delaunay = scipy.spatial.Delaunay(kept[:, :2])
    theirs = scipy.interpolate.LinearNDInterpolator(delaunay, kept[:, 2])(places[:, :2])
    distance, numbers = scipy.spatial.cKDTree(kept).query(corners.reshape(-1, 3))
    numbers = np.where(distance < 1e-6, numbers, -1).reshape(-1, 3)
    ours = {frozenset(three) for three in numbers.tolist() if -1 not in three}
    common = np.array([frozenset(three) in ours for three in delaunay.simplices.tolist()])
    over_common = common[delaunay.find_simplex(places[:, :2])]
    assert over_common.mean() > 0.5
    assert np.abs(theirs - over_triangles(corners, places))[over_common].max() <= 1e-6


def test_thinning_a_scan_keeps_its_error_by_scipy() -> None:
    """Scattered points, none on one circle: the triangles are SciPy's own."""
    random = np.random.default_rng(7)
    xy = random.uniform(0.0, (12.0, 8.0), (40_000, 2))
    z = 30.0 - 0.01 * xy[:, 0] + 0.01 * np.sin(1.3 * xy[:, 0]) * np.cos(xy[:, 1]) + random.uniform(-5e-4, 5e-4, len(xy))
    thinned = thin_points(points=record(np.c_[xy, z]), within=3.0, units="si")
    kept = np.array(thinned.kept["point"]) - 1
    heights = scipy.interpolate.LinearNDInterpolator(xy[kept], z[kept])(xy)
    # Points on the hull may be a rounding outside SciPy's; those between hull corners are inside.
    known = np.isfinite(heights)
    assert (~known).sum() <= 5 and len(kept) < 2_000
    off = np.abs(heights - z)[known]
    # A chain along the hull is constrained in ours, so a triangle or two there may differ.
    assert np.quantile(off, 0.999) <= 0.003 + 1e-9
    hull = scipy.spatial.ConvexHull(xy)
    assert set(hull.vertices.tolist()) <= set(kept.tolist())
    assert thinned.hull_count == len(hull.vertices)


@pytest.mark.parametrize("seed", range(40))
def test_axes_by_known_points_against_scipy(seed: int) -> None:
    """SciPy's best rotation of vectors (Kabsch), held to the plane by being given plane vectors."""
    random = np.random.default_rng(seed)
    count = int(random.integers(2, 8))
    places = random.uniform(0.0, 20.0, (count, 2))
    while count > 1 and scipy.spatial.distance.pdist(places).min() < 2.0:
        places = random.uniform(0.0, 20.0, (count, 2))
    angle, shift = random.uniform(-3.1, 3.1), random.uniform(-500.0, 500.0, 2)
    turn = np.array([[np.cos(angle), -np.sin(angle)], [np.sin(angle), np.cos(angle)]])
    known = places @ turn.T + shift + random.normal(0.0, 0.001, (count, 2))
    height = random.uniform(0.0, 2.0, count)
    rise = 30.0 + random.normal(0.0, 0.0005, count)
    table = {
        "x": places[:, 0], "y": places[:, 1], "job_x": known[:, 0], "job_y": known[:, 1],
        "elevation": height, "job_elevation": height + rise,
    }
    scan = np.c_[random.uniform(-5.0, 25.0, (100, 2)), random.uniform(0.0, 2.0, 100)]
    answer = points_to_axes(points=record(scan), known=table, tolerance=20.0, height_tolerance=10.0, units="si")
    flat = np.zeros((count, 1))
    centred, aimed = places - places.mean(axis=0), known - known.mean(axis=0)
    # The upright, given to both, keeps the turn in the plane where two places alone would leave it open.
    upright = [0.0, 0.0, 1.0]
    best, _ = Rotation.align_vectors(np.r_[np.c_[aimed, flat], [upright]], np.r_[np.c_[centred, flat], [upright]])
    matrix = best.as_matrix()[:2, :2]
    moved = (scan[:, :2] - places.mean(axis=0)) @ matrix.T + known.mean(axis=0)
    table_out = answer.moved.points
    ours = np.c_[table_out["x_m"], table_out["y_m"], table_out["elevation_m"]]
    # Places of 500 m by a rotation good to 1e-15: the promise of 1e-9 leaves room for the iteration behind Kabsch.
    assert np.abs(ours[:, :2] - moved).max() <= 1e-9
    assert np.abs(ours[:, 2] - scan[:, 2] - rise.mean()).max() <= 1e-12
    left = known - ((places - places.mean(axis=0)) @ matrix.T + known.mean(axis=0))
    assert np.abs(np.array(answer.residuals["x_mm"]) / 1000.0 - left[:, 0]).max() <= 1e-9
    assert np.abs(np.array(answer.residuals["y_mm"]) / 1000.0 - left[:, 1]).max() <= 1e-9


def test_a_tilt_against_least_squares_of_numpy() -> None:
    random = np.random.default_rng(3)
    places = np.array([[0.0, 0.0], [12.0, 0.5], [11.0, 8.0], [0.5, 7.0], [6.0, 4.0]])
    rise = 30.0 + places @ [0.004, -0.007] + random.normal(0.0, 0.0005, 5)
    flat = np.zeros(5)
    table = {"x": places[:, 0], "y": places[:, 1], "job_x": places[:, 0], "job_y": places[:, 1], "elevation": flat, "job_elevation": rise}
    scan = np.c_[random.uniform(0.0, 12.0, (50, 2)), np.zeros(50)]
    answer = points_to_axes(points=record(scan), known=table, levelling="tilt", units="si")
    plane, *_ = np.linalg.lstsq(np.c_[np.ones(5), places], rise, rcond=None)
    assert answer.tilt_x_percent == pytest.approx(100.0 * plane[1], abs=1e-9)
    assert answer.tilt_y_percent == pytest.approx(100.0 * plane[2], abs=1e-9)
    heights = np.array(answer.moved.points["elevation_m"])
    assert np.abs(heights - np.c_[np.ones(50), scan[:, :2]] @ plane).max() <= 1e-11


def test_strays_far_from_others_against_a_tree_of_scipy() -> None:
    """Which points have fewer than three others within a foot: counted by SciPy's tree, one by one."""
    random = np.random.default_rng(11)
    xy = random.uniform(0.0, 10.0, (900, 2))
    answer = part_strays(points=record(np.c_[xy, np.zeros(900)]), units="si", others=3, reach=0.3048)
    near = scipy.spatial.cKDTree(xy).query_ball_point(xy, 0.3048, return_length=True) - 1
    assert answer.alone_count == int((near < 3).sum()) > 20
    alone = [point - 1 for point, kind in zip(answer.strays["point"], answer.strays["kind"]) if kind == "alone"]
    assert alone == np.flatnonzero(near < 3).tolist()
