"""The old surface and the thickness against NumPy, SciPy, Shapely and Triangle, over random surveys.

Tolerances. The work is some metres wide and 30 m above its datum, so a height is good to 30 m x 2^-53 = 3e-15 m and a volume over
100 m2 to 1e-12 m3 or so at best; 1e-9 relative, the promise of the design, is asked of volumes against fill and high together. Shapely
finds the corners of a cut to about 1e-15 of the coordinates (20 m), which moves a volume by far less than that.
"""

from __future__ import annotations

from fractions import Fraction
from itertools import combinations

import numpy as np
import pytest
import scipy.spatial
import shapely
import triangle as triangle_library
from shapely.geometry import MultiPoint, Polygon

from overslab import Outline
from overslab.grade import finish_level, thickness
from overslab.survey import outline_from_sides, survey_from_grid, survey_from_shots
from surface_jobs import (
    Floats, SurfaceJob, Triangles, any_job, constrained_job, hull_job, signed_areas,
)
from zero_line import cut_by_shapely, cut_exactly

RELATIVE = 1e-9
"""What the design promises of a volume."""

ANY = range(204)
HULL = range(200)
CONSTRAINED = range(80)


def near(found: float, wanted: float, scale: float, relative: float = RELATIVE) -> None:
    """Two numbers agree to a share of a scale."""
    assert abs(found - wanted) <= relative * scale, f"{found!r}, expected {wanted!r}"


# On our own triangles


@pytest.mark.parametrize("seed", ANY)
def test_the_triangles_tile_the_work(seed: int) -> None:
    job = any_job(seed)
    triangles = Triangles.of(job.survey())
    assert triangles.areas.min() > 0.0
    near(triangles.areas.sum(), job.outline.area, job.outline.area, 1e-12)
    # On a grid: without one, Shapely 2.2.0 loses a sliver where cut corners lie a last digit apart (survey 68), though the union of
    # one after the other has it. The grid moves 100 m of edges by up to its half, 5e-11 m, at each of some hundred triangles.
    union = shapely.union_all([Polygon(corners[:, :2]) for corners in triangles.corners], grid_size=1e-10)
    assert abs(union.area - job.outline.area) <= 1e-7
    assert shapely.symmetric_difference(union, job.outline, grid_size=1e-10).area <= 1e-7


@pytest.mark.parametrize("seed", ANY)
def test_volumes_and_extremes_follow_from_the_triangles(seed: int) -> None:
    job = any_job(seed)
    survey = job.survey()
    corners = Triangles.of(survey).corners
    areas = signed_areas(corners)
    t = corners.copy()
    t[:, :, 2] = job.finish_at(corners[:, :, :2]) - corners[:, :, 2]
    depth = float(np.median(t[:, :, 2]))
    answer = thickness(survey=survey, finish=job.finished(), thinner_than=depth * 1000.0, units="si")
    split = cut_by_shapely(t)
    scale = split.fill + split.high
    near(answer.fill_m3, split.fill, scale)
    near(answer.high_m3, split.high, scale)
    near(answer.net_m3, float(areas @ t[:, :, 2].mean(axis=1)), scale)
    near(answer.mean_mm, 1000.0 * answer.net_m3 / job.outline.area, 1000.0)
    thinner = t.copy()
    thinner[:, :, 2] -= depth
    near(answer.thinner_m2, job.outline.area - cut_by_shapely(thinner).above, job.outline.area)
    # A thickness of metres and heights of 30 m: 1e-9 mm is a thousand times what a double resolves.
    near(answer.least_mm, 1000.0 * t[:, :, 2].min(), 1.0)
    near(answer.greatest_mm, 1000.0 * t[:, :, 2].max(), 1.0)


@pytest.mark.parametrize("seed", ANY)
def test_a_zone_is_the_triangles_cut_by_it(seed: int) -> None:
    job = any_job(seed)
    random = np.random.default_rng(40_000 + seed)
    middle = np.array(job.outline.representative_point().coords[0])
    angles = np.sort(random.uniform(0.0, 2.0 * np.pi, 5))
    ring = MultiPoint(middle + random.uniform(0.5, 3.0) * np.c_[np.cos(angles), np.sin(angles)]).convex_hull
    zone = Outline.from_dict({"corners": [{"x": f"{x!r} m", "y": f"{y!r} m"} for x, y in ring.exterior.coords[:-1]]})
    survey = job.survey()
    answer = thickness(survey=survey, finish=job.finished(), zone=zone, units="si")
    t = Triangles.of(survey).corners
    t[:, :, 2] = job.finish_at(t[:, :, :2]) - t[:, :, 2]
    area, net, size = volume_within(t, ring)
    near(answer.area_m2, area, job.outline.area)
    near(answer.net_m3, net, size)


def volume_within(corners: Floats, region: shapely.Geometry) -> tuple[float, float, float]:
    """Area and integral of the third coordinate over the part of triangles inside a region, and the integral's size."""
    area = net = size = 0.0
    for triangle in corners:
        part = Polygon(triangle[:, :2]).intersection(region)
        if part.area > 0.0:
            gradient = np.linalg.solve(np.c_[triangle[:, :2], np.ones(3)], triangle[:, 2])
            x, y = part.centroid.coords[0]
            area, net = area + part.area, net + part.area * float(gradient @ [x, y, 1.0])
            size += part.area * float(np.abs(triangle[:, 2]).max())
    return area, net, size


@pytest.mark.parametrize("seed", ANY)
def test_the_facts_of_the_old_slab(seed: int) -> None:
    job = any_job(seed)
    survey = job.survey()
    triangles = Triangles.of(survey)
    near(survey.area_m2, job.outline.area, job.outline.area, 1e-12)
    assert survey.shot_count == len(job.shots)
    between = triangles.ground != "beyond"
    hull = MultiPoint(job.shots[:, :2]).convex_hull
    near(survey.beyond_m2, job.outline.difference(hull).area, job.outline.area)
    near(survey.beyond_m2, triangles.areas[~between].sum(), job.outline.area)
    near(survey.unsurveyed_m2, triangles.areas[triangles.ground == "spanning"].sum(), job.outline.area)
    heights = triangles.corners[between][:, :, 2]
    near(survey.highest_m, heights.max(), 1.0)
    near(survey.lowest_m, heights.min(), 1.0)
    near(survey.out_of_level_mm, 1000.0 * np.ptp(heights), 1000.0)
    near(survey.mean_m, float(triangles.areas @ triangles.corners[:, :, 2].mean(axis=1)) / job.outline.area, 1.0)
    middle = job.shots.mean(axis=0)
    off = job.shots - middle
    plane, *_ = np.linalg.lstsq(off[:, :2], off[:, 2], rcond=None)
    # Slopes are some percent; the fit's sums lose a few digits to its condition, a ratio of spreads below 100.
    near(survey.rise_x_percent, 100.0 * plane[0], 1.0)
    near(survey.rise_y_percent, 100.0 * plane[1], 1.0)
    near(survey.unevenness_mm, 1000.0 * np.sqrt(np.mean((off[:, 2] - off[:, :2] @ plane) ** 2)), 1.0)


@pytest.mark.parametrize("seed", ANY)
def test_beyond_the_shots_the_height_goes_on_by_the_fitted_slope(seed: int) -> None:
    """At a corner beyond the shots: the height of the nearest place between them and the fit's slope over the offset."""
    job = any_job(seed)
    survey = job.survey()
    triangles = Triangles.of(survey)
    hull = MultiPoint(job.shots[:, :2]).convex_hull
    delaunay = scipy.spatial.Delaunay(job.shots[:, :2])
    slope = np.array([survey.rise_x_percent, survey.rise_y_percent]) / 100.0
    for x, y, z in triangles.corners[triangles.ground == "beyond"].reshape(-1, 3):
        foot = hull.exterior.interpolate(hull.exterior.project(shapely.Point(x, y)))
        on_hull = height_on_hull(job.shots, delaunay, np.array([foot.x, foot.y]))
        offset = np.array([x - foot.x, y - foot.y])
        # Shapely's foot of the perpendicular is good to 1e-15 of 20 m; a hull edge may be as steep as 30 mm over 50 mm.
        near(z, on_hull + float(slope @ offset), 1.0, 1e-8)


def height_on_hull(shots: Floats, delaunay: scipy.spatial.Delaunay, foot: Floats) -> float:
    """The height along the hull at a place on it: linear between the two shots of its edge."""
    best, height = np.inf, np.nan
    for first, second in delaunay.convex_hull:
        a, b = shots[first], shots[second]
        along = b[:2] - a[:2]
        share = float(np.clip((foot - a[:2]) @ along / (along @ along), 0.0, 1.0))
        distance = float(np.linalg.norm(foot - a[:2] - share * along))
        if distance < best:
            best, height = distance, float(a[2] + share * (b[2] - a[2]))
    return height


# Against the triangles of others


def numbered(job: SurfaceJob, corners: Floats) -> set[frozenset[int]]:
    """Triangles by the numbers of their shots."""
    found, places = scipy.spatial.cKDTree(job.shots[:, :2]).query(corners[:, :, :2].reshape(-1, 2))
    # The engine counts from a corner of the outline, which costs a last digit of 20 m.
    assert found.max() <= 1e-13
    return {frozenset(three) for three in places.reshape(-1, 3).tolist()}


@pytest.mark.parametrize("seed", HULL)
def test_convex_surveys_against_scipy_and_triangle(seed: int) -> None:
    job = hull_job(seed)
    survey = job.survey()
    ours = Triangles.of(survey)
    theirs = {
        "scipy": scipy.spatial.Delaunay(job.shots[:, :2]).simplices,
        "triangle": triangle_library.triangulate({"vertices": job.shots[:, :2]}, "Q")["triangles"],
    }
    answer = thickness(survey=survey, finish=job.finished(), units="si")
    for simplices in theirs.values():
        corners = job.shots[simplices]
        if not job.outside.any() and seed % 2 == 0:
            assert numbered(job, ours.corners) == {frozenset(three) for three in simplices.tolist()}
        t = corners.copy()
        t[:, :, 2] = job.finish_at(t[:, :, :2]) - t[:, :, 2]
        area, net, size = volume_within(t, job.outline)
        near(answer.area_m2, area, area)
        near(answer.net_m3, net, size)
        near(survey.mean_m, volume_within(corners, job.outline)[1] / area, 1.0)


def facing_up(corners: Floats) -> Floats:
    """Triangles turned counter-clockwise."""
    turned = corners.copy()
    turned[signed_areas(corners) < 0.0] = turned[signed_areas(corners) < 0.0][:, ::-1]
    return turned


@pytest.mark.parametrize("seed", HULL)
def test_fill_and_high_of_convex_surveys_against_scipy(seed: int) -> None:
    job = hull_job(2 * (seed // 2))  # the outline is the hull: nothing is to be cut
    answer = thickness(survey=job.survey(), finish=job.finished(), units="si")
    t = facing_up(job.shots[scipy.spatial.Delaunay(job.shots[:, :2]).simplices])
    t[:, :, 2] = job.finish_at(t[:, :, :2]) - t[:, :, 2]
    split = cut_by_shapely(t)
    scale = split.fill + split.high
    near(answer.fill_m3, split.fill, scale)
    near(answer.high_m3, split.high, scale)


@pytest.mark.parametrize("seed", CONSTRAINED)
def test_runs_of_shots_along_the_outline_against_triangle(seed: int) -> None:
    """Every corner shot: the runs are then chains of edges, and Triangle's constrained triangulation is the only one."""
    job = constrained_job(seed)
    survey = job.survey()
    ours = Triangles.of(survey)
    assert set(ours.ground) == {"surveyed"}
    their = triangle_library.triangulate(plan(job), "pQ")
    assert len(their["vertices"]) == len(job.shots), "Triangle added a vertex: the case is not comparable"
    assert within(ours.corners, job.shots[their["triangles"]])
    answer = thickness(survey=survey, finish=job.finished(), units="si")
    t = facing_up(job.shots[their["triangles"]])
    t[:, :, 2] = job.finish_at(t[:, :, :2]) - t[:, :, 2]
    split = cut_by_shapely(t)
    near(answer.fill_m3, split.fill, split.fill + split.high)
    near(answer.high_m3, split.high, split.fill + split.high)


def within(ours: Floats, theirs: Floats) -> bool:
    """Whether each of our triangles lies in one of theirs and in its plane: ours are theirs, cut where the outline is not convex."""
    # The weights of their corners at our places: one system of equations for each of theirs.
    corners_of_theirs = np.concatenate([theirs[:, :, :2], np.ones((len(theirs), 3, 1))], axis=2).transpose(0, 2, 1)
    places = np.concatenate([ours[:, :, :2], np.ones((len(ours), 3, 1))], axis=2).reshape(-1, 3).T
    weights = np.linalg.solve(corners_of_theirs, np.broadcast_to(places, (len(theirs), *places.shape)))
    weights = weights.reshape(len(theirs), 3, len(ours), 3).transpose(2, 0, 3, 1)  # ours, theirs, our corner, their corner
    host = weights.min(axis=(2, 3)).argmax(axis=1)
    chosen = weights[np.arange(len(ours)), host]
    heights = np.einsum("ocw,ow->oc", chosen, theirs[host][:, :, 2])
    # Shares of a triangle with sides of a decimetre and more, of coordinates of 20 m: 1e-12.
    return bool(chosen.min() >= -1e-12 and np.abs(heights - ours[:, :, 2]).max() <= 1e-12)


def plan(job: SurfaceJob) -> dict[str, Floats]:
    """The plan as Triangle takes it: segments between neighbouring shots along the outline, a place in each hole."""
    segments = []
    for ring in [job.outline.exterior, *job.outline.interiors]:
        # Shots on a run are on it to the rounding of a share of its length.
        on = [(ring.project(shapely.Point(p)), n) for n, p in enumerate(job.shots[:, :2]) if ring.distance(shapely.Point(p)) < 1e-9]
        order = [n for _, n in sorted(on)]
        segments += list(zip(order, order[1:] + order[:1]))
    plan = {"vertices": job.shots[:, :2], "segments": np.array(segments)}
    holes = [Polygon(ring).representative_point().coords[0] for ring in job.outline.interiors]
    return {**plan, "holes": np.array(holes)} if holes else plan


# In exact fractions

EXACT = range(60)


@pytest.mark.parametrize("seed", EXACT)
def test_scattered_shots_in_exact_fractions(seed: int) -> None:
    """Three to six shots on sixty-fourths of a metre, so that every number handed over is exact; the triangles are SciPy's."""
    random = np.random.default_rng(50_000 + seed)
    while True:
        shots = [(Fraction(int(x), 64), Fraction(int(y), 64)) for x, y in random.integers(0, 640, (random.integers(3, 7), 2))]
        hull = MultiPoint([(float(x), float(y)) for x, y in shots]).convex_hull
        corners = hull.exterior.coords[:-1] if hull.geom_type == "Polygon" else []
        # The outline is the hull; the inner shots are clear of it, or they would be taken as lying on it.
        inner = [p for p in shots if (float(p[0]), float(p[1])) not in set(corners)]
        clear = all(hull.exterior.distance(shapely.Point(float(x), float(y))) > 0.05 for x, y in inner)
        if hull.area > 4.0 and len(corners) == len(set(corners)) and clear and general(shots):
            break
    z = [Fraction(int(k), 1024) for k in random.integers(0, 64, len(shots))]
    level = Fraction(int(random.integers(8, 56)), 1024)
    simplices = scipy.spatial.Delaunay(np.array([[float(x), float(y)] for x, y in shots])).simplices
    triangles = [[(*shots[n], level - z[n]) for n in three] for three in simplices]
    triangles = [t if ccw(t) > 0 else t[::-1] for t in triangles]
    outline = Outline.from_dict({"corners": [{"x": f"{x!r} m", "y": f"{y!r} m"} for x, y in corners]})
    table = {"x": [float(x) for x, _ in shots], "y": [float(y) for _, y in shots], "elevation": [float(h) for h in z]}
    survey = survey_from_shots(outline=outline, shots=table, beyond_allowed="yes", units="si")
    answers_exactly(survey, level, triangles)


def ccw(t: list[tuple[Fraction, Fraction, Fraction]]) -> Fraction:
    """Twice the signed area."""
    (ax, ay, _), (bx, by, _), (cx, cy, _) = t
    return (bx - ax) * (cy - ay) - (cx - ax) * (by - ay)


def general(shots: list[tuple[Fraction, Fraction]]) -> bool:
    """No four shots on one circle and no three on a line, in exact fractions: the triangulation is unique."""
    rows = [[x, y, x * x + y * y, Fraction(1)] for x, y in shots]
    lines = [[x, y, Fraction(1)] for x, y in shots]
    return all(determinant([lines[n] for n in three]) != 0 for three in combinations(range(len(shots)), 3)) and all(
        determinant([rows[n] for n in four]) != 0 for four in combinations(range(len(shots)), 4)
    )


def determinant(rows: list[list[Fraction]]) -> Fraction:
    """A determinant by its first row."""
    if len(rows) == 1:
        return rows[0][0]
    minors = [[row[:n] + row[n + 1 :] for row in rows[1:]] for n in range(len(rows))]
    return sum(((-1) ** n * rows[0][n] * determinant(minors[n]) for n in range(len(rows))), Fraction(0))


@pytest.mark.parametrize("seed", EXACT)
def test_grids_in_exact_fractions(seed: int) -> None:
    """Each cell is four triangles about its middle at the mean of its corners, as the design says; nothing else is taken over."""
    random = np.random.default_rng(60_000 + seed)
    columns, rows = random.integers(2, 5, 2)
    xs = [Fraction(0), *np.cumsum([Fraction(int(k), 64) for k in random.integers(40, 200, columns - 1)])]
    ys = [Fraction(0), *np.cumsum([Fraction(int(k), 64) for k in random.integers(40, 200, rows - 1)])]
    z = [[Fraction(int(k), 1024) for k in random.integers(0, 64, columns)] for _ in ys]
    level = Fraction(int(random.integers(8, 56)), 1024)
    triangles = []
    for r in range(rows - 1):
        for c in range(columns - 1):
            cell = [(xs[i], ys[j], level - z[j][i]) for i, j in [(c, r), (c + 1, r), (c + 1, r + 1), (c, r + 1)]]
            middle = tuple(sum(part, Fraction(0)) / 4 for part in zip(*cell))
            triangles += [[cell[n], cell[(n + 1) % 4], middle] for n in range(4)]
    width, depth = float(xs[-1]), float(ys[-1])
    survey = survey_from_grid(
        outline=outline_from_sides(sides={"length": [width, depth, width, depth]}, units="si"),
        columns={"x": [float(x) for x in xs]},
        rows={"y": [float(y) for y in ys]},
        elevations={"elevation": [float(h) for row in z for h in row]},
        units="si",
    )
    answers_exactly(survey, level, triangles)


def answers_exactly(survey: object, level: Fraction, triangles: list[list[tuple[Fraction, Fraction, Fraction]]]) -> None:
    """The thickness under a level finish is what exact fractions say, to some last digits of a double."""
    answer = thickness(survey=survey, finish=finish_level(elevation=float(level), units="si"), thinner_than=0.0, units="si")
    fill, high, above = cut_exactly(triangles)
    area = sum((ccw(t) / 2 for t in triangles), Fraction(0))
    scale = float(fill + high)
    # Some dozen triangles, each with a handful of roundings of 1e-16: 1e-13 leaves room for a thousand.
    near(answer.area_m2, float(area), float(area), 1e-13)
    near(answer.fill_m3, float(fill), scale, 1e-13)
    near(answer.high_m3, float(high), scale, 1e-13)
    near(answer.net_m3, float(fill - high), scale, 1e-13)
    near(answer.thinner_m2, float(area - above), float(area), 1e-13)
