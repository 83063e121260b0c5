"""Areas, contour lines, bands, histogram, zones and sections against Shapely, Matplotlib and NumPy, on the engine's own triangles.

Tolerances. Areas agree to 1e-9 of the work, as the surface does (see test_surface_against_libraries.py). Shapely overlays on a grid of
1e-10 m, which moves some hundred metres of edges by half of that: 1e-7 m2. Matplotlib follows a level through the same triangles in
doubles. What is sampled carries its own error: a share found among n random places is off by less than 5 sqrt(1/4 / n) (five standard
deviations of a binomial share).
"""

from __future__ import annotations

from typing import Any

import numpy as np
import pytest
import shapely
from matplotlib.figure import Figure
from matplotlib.tri import Triangulation
from shapely.geometry import LineString, MultiPoint, Polygon

from overslab.grade import (
    section, survey_contours, thickness, thickness_areas, thickness_bands, thickness_contours, thickness_histogram, thickness_zones,
)
from surface_jobs import Floats, SurfaceJob, Triangles, any_job, signed_areas

JOBS = range(60)
RELATIVE = 1e-9
GRID = 1e-10
OVERLAY = 1e-7


def near(found: float, wanted: float, allowed: float) -> None:
    assert abs(found - wanted) <= allowed, f"{found!r}, expected {wanted!r}"


def thick(job: SurfaceJob, survey: Any) -> Floats:
    """The triangles with the thickness as third coordinate."""
    corners = Triangles.of(survey).corners
    corners[:, :, 2] = job.finish_at(corners[:, :, :2]) - corners[:, :, 2]
    return corners


def depths(t: Floats) -> Floats:
    """Depths across the whole range, none at a corner."""
    return np.quantile(t[:, :, 2], [0.1, 0.35, 0.6, 0.9]) + 1e-5


def between(t: Floats, low: float, high: float) -> list[Polygon]:
    """The part of each triangle where its third coordinate lies between two levels: by NumPy, corner by corner."""
    parts = []
    for triangle in t:
        ring = list(triangle)
        for level, sign in ((low, 1.0), (high, -1.0)):
            kept = []
            for a, b in zip(ring, ring[1:] + ring[:1]):
                over_a, over_b = sign * (a[2] - level), sign * (b[2] - level)
                if over_a >= 0.0:
                    kept.append(a)
                if over_a * over_b < 0.0:
                    kept.append(a + over_a / (over_a - over_b) * (b - a))
            ring = kept
            if not ring:
                break
        if len(ring) >= 3:
            parts.append(Polygon([corner[:2] for corner in ring]))
    return parts


def polygons(corners: Any, keys: list[str]) -> dict[tuple[int, ...], Polygon]:
    """The polygons of a table of ring corners, by the numbers of their parts."""
    rows = zip(*(corners[key] for key in [*keys, "ring", "x_m", "y_m"]))
    rings: dict[tuple[int, ...], dict[int, list[tuple[float, float]]]] = {}
    for *part, ring, x, y in rows:
        rings.setdefault(tuple(map(int, part)), {}).setdefault(int(ring), []).append((x, y))
    return {part: Polygon(of[1], [ring for number, ring in of.items() if number > 1]) for part, of in rings.items()}


def check_same(found: list[Polygon], wanted: list[Polygon]) -> None:
    """Two sets of polygons cover the same ground."""
    ours, theirs = (shapely.union_all(shapes, grid_size=GRID) for shapes in (found, wanted))
    assert shapely.symmetric_difference(ours, theirs, grid_size=GRID).area <= OVERLAY


@pytest.mark.parametrize("seed", JOBS)
def test_areas_are_the_triangles_cut_at_the_depth(seed: int) -> None:
    job = any_job(seed)
    survey, finish = job.survey(), job.finished()
    t = thick(job, survey)
    whole = job.outline.area
    for depth in depths(t):
        for side, (low, high) in {"thinner": (-np.inf, depth), "thicker": (depth, np.inf)}.items():
            answer = thickness_areas(survey=survey, finish=finish, depth=1000.0 * depth, side=side, units="si")
            parts = polygons(answer.corners, ["part"])
            assert all(polygon.is_valid for polygon in parts.values())
            assert all(polygon.exterior.is_ccw for polygon in parts.values())
            assert not any(hole.is_ccw for polygon in parts.values() for hole in polygon.interiors)
            expected = between(t, low, high)
            near(answer.area_m2, sum(polygon.area for polygon in expected), RELATIVE * whole)
            for number, area in zip(answer.parts["part"], answer.parts["area_m2"]):
                near(parts[(int(number),)].area, area, RELATIVE * whole)
            check_same(list(parts.values()), expected)
            fewest, most = connected(expected)
            assert fewest <= len([polygon for polygon in parts.values() if polygon.area > OVERLAY]) <= most


def connected(parts: list[Polygon]) -> tuple[int, int]:
    """How many pieces of ground share more than a corner, as Shapely unites them: at the least, where what lies within two millionths
    of a metre is one, and at the most, where a neck narrower than the grid parts. Crumbs that the grid leaves are no pieces."""
    union = shapely.union_all(parts, grid_size=GRID)
    pieces = [piece for piece in shapely.get_parts(union) if piece.area > OVERLAY]
    return len(shapely.get_parts(shapely.union_all([piece.buffer(1e-6) for piece in pieces]))), len(pieces)


@pytest.mark.parametrize("seed", JOBS)
def test_bands_and_bins_are_the_triangles_cut_at_the_levels(seed: int) -> None:
    job = any_job(seed)
    survey, finish = job.survey(), job.finished()
    t = thick(job, survey)
    whole, levels = job.outline.area, depths(t)
    bands = thickness_bands(survey=survey, finish=finish, levels={"level": 1000.0 * levels}, units="si")
    bins = thickness_histogram(survey=survey, finish=finish, levels={"level": 1000.0 * levels}, units="si").bins
    parts = polygons(bands.corners, ["band", "part"])
    edges = [-np.inf, *levels, np.inf]
    assert len(bands.bands["band"]) == len(edges) - 1
    for band, (low, high) in enumerate(zip(edges, edges[1:])):
        expected = between(t, low, high)
        area = sum(polygon.area for polygon in expected)
        near(bands.bands["area_m2"][band], area, RELATIVE * whole)
        near(bins["area_m2"][band], area, RELATIVE * whole)
        near(bins["share_percent"][band], 100.0 * area / whole, 1e-7)
        check_same([polygon for (of, _), polygon in parts.items() if of == band + 1], expected)
    net = thickness(survey=survey, finish=finish, units="si").net_m3
    near(np.sum(bands.bands["volume_m3"]), net, RELATIVE * whole)
    near(np.sum(bins["volume_m3"]), net, RELATIVE * whole)


@pytest.mark.parametrize("seed", JOBS)
def test_contours_are_those_of_matplotlib(seed: int) -> None:
    job = any_job(seed)
    survey, finish = job.survey(), job.finished()
    t = thick(job, survey)
    levels = depths(t)
    answer = thickness_contours(survey=survey, finish=finish, levels={"level": 1000.0 * levels}, units="si")
    compare_lines(answer, "level_mm", 1000.0, t, levels)
    old = Triangles.of(survey).corners
    levels = depths(old)
    answer = survey_contours(survey=survey, levels={"level": levels}, units="si")
    compare_lines(answer, "level_m", 1.0, old, levels)


def compare_lines(answer: Any, column: str, scale: float, t: Floats, levels: Floats) -> None:
    """Lines level by level: as long as Matplotlib's, and nowhere off them."""
    xy, index = np.unique(t[:, :, :2].reshape(-1, 2).round(9), axis=0, return_inverse=True)
    z = np.zeros(len(xy))
    z[index.ravel()] = t[:, :, 2].ravel()
    mesh = Triangulation(xy[:, 0], xy[:, 1], index.reshape(-1, 3))
    drawn = Figure().subplots().tricontour(mesh, z, levels=levels).allsegs
    lines, points = answer.lines, answer.points
    for level, of_level in zip(levels, drawn):
        theirs = [LineString(line) for line in of_level if len(line) > 1]
        ours = []
        for number, form in zip(lines["line"][np.isclose(lines[column], scale * level)], forms(lines, column, scale * level)):
            places = np.c_[points["x_m"], points["y_m"]][np.asarray(points["line"]) == number]
            assert (form == "closed") == bool(np.all(places[0] == places[-1]))
            ours.append(LineString(places))
        length = sum(line.length for line in theirs)
        # Matplotlib was handed corners rounded to 1e-9 m.
        near(sum(line.length for line in ours), length, 1e-7 * max(length, 1.0))
        assert bool(ours) == bool(theirs)
        if ours:
            assert shapely.MultiLineString(ours).hausdorff_distance(shapely.MultiLineString(theirs)) <= 1e-6


def forms(lines: Any, column: str, level: float) -> list[str]:
    return [form for form, of in zip(lines["form"], lines[column]) if np.isclose(of, level)]


@pytest.mark.parametrize("seed", JOBS)
def test_quantiles_are_those_of_random_places(seed: int) -> None:
    job = any_job(seed)
    survey, finish = job.survey(), job.finished()
    t = thick(job, survey)
    shares = np.array([5.0, 25.0, 50.0, 75.0, 95.0])
    found = thickness_histogram(survey=survey, finish=finish, interval=5.0, shares={"share": shares}, units="si").quantiles
    random = np.random.default_rng(seed)
    count = 200_000
    areas = signed_areas(t)
    of = random.choice(len(t), count, p=areas / areas.sum())
    u, v = random.random((2, count))
    # Even over a triangle (Turk 1990).
    u, v = np.where(u + v > 1.0, 1.0 - u, u), np.where(u + v > 1.0, 1.0 - v, v)
    places = t[of, 0, 2] + u * (t[of, 1, 2] - t[of, 0, 2]) + v * (t[of, 2, 2] - t[of, 0, 2])
    for share, depth in zip(shares, found["thickness_mm"]):
        near(float(np.mean(1000.0 * places < depth)), share / 100.0, 5.0 * np.sqrt(0.25 / count))
        exact = thickness(survey=survey, finish=finish, thinner_than=float(depth), units="si")
        near(exact.thinner_m2, share / 100.0 * job.outline.area, RELATIVE * job.outline.area)


@pytest.mark.parametrize("seed", JOBS)
def test_zones_and_the_rest_are_the_triangles_cut_by_them(seed: int) -> None:
    job = any_job(seed)
    survey, finish = job.survey(), job.finished()
    t = thick(job, survey)
    random = np.random.default_rng(70_000 + seed)
    middle = np.array(job.outline.representative_point().coords[0])
    zones = {}
    for name in ("one", "two"):
        angles = np.sort(random.uniform(0.0, 2.0 * np.pi, 6))
        centre = middle + random.uniform(-1.0, 1.0, 2)
        zones[name] = MultiPoint(centre + random.uniform(1.0, 3.0) * np.c_[np.cos(angles), np.sin(angles)]).convex_hull
    rows = [(name, x, y) for name, zone in zones.items() for x, y in zone.exterior.coords[:-1]]
    names, xs, ys = zip(*rows)
    table = {"zone": list(names), "x": np.array(xs), "y": np.array(ys)}
    answer = thickness_zones(survey=survey, finish=finish, zones=table, units="si")
    regions = [zone.intersection(job.outline) for zone in zones.values()]
    rest = job.outline.difference(shapely.union_all(list(zones.values())))
    for number, region in enumerate(regions):
        area, net = within(t, region)
        near(answer.figures["area_m2"][number], area, RELATIVE * job.outline.area)
        near(answer.figures["net_m3"][number], net, RELATIVE * job.outline.area)
    area, net = within(t, rest)
    near(answer.rest["area_m2"][0], area, RELATIVE * job.outline.area)
    near(answer.rest["net_m3"][0], net, RELATIVE * job.outline.area)


def within(t: Floats, region: Any) -> tuple[float, float]:
    """Area, and integral of the third coordinate, over the part of triangles in a region."""
    area = net = 0.0
    for triangle in t:
        part = Polygon(triangle[:, :2]).intersection(region)
        if part.area > 0.0:
            gradient = np.linalg.solve(np.c_[triangle[:, :2], np.ones(3)], triangle[:, 2])
            x, y = part.centroid.coords[0]
            area, net = area + part.area, net + part.area * float(gradient @ [x, y, 1.0])
    return area, net


@pytest.mark.parametrize("seed", JOBS)
def test_a_section_is_the_triangles_along_the_line(seed: int) -> None:
    job = any_job(seed)
    survey, finish = job.survey(), job.finished()
    corners = Triangles.of(survey).corners
    random = np.random.default_rng(90_000 + seed)
    low_x, low_y, high_x, high_y = job.outline.bounds
    middle = np.array(job.outline.representative_point().coords[0])
    ends = random.uniform([low_x - 1.0, low_y - 1.0], [high_x + 1.0, high_y + 1.0], (2, 2))
    places = np.array([ends[0], middle, ends[1]])
    line = LineString(places)
    answer = section(survey=survey, finish=finish, line={"x": places[:, 0], "y": places[:, 1]}, spacing=0.05, units="si")
    near(answer.length_m, line.length, 1e-12 * line.length)
    near(answer.covered_m, line.intersection(job.outline).length, 1e-7)
    gaps = float(np.sum(answer.gaps["end_m"] - answer.gaps["start_m"]))
    near(answer.covered_m + gaps, line.length, 1e-6)
    # Heights of samples and stations: on the plane of a triangle that holds the place, by NumPy.
    for rows in (answer.samples, answer.stations):
        for x, y, old, new in zip(*(rows[name] for name in ("x_m", "y_m", "old_slab_m", "finish_m"))):
            if np.isnan(old):
                assert job.outline.distance(shapely.Point(x, y)) >= 0.0 and not job.outline.buffer(-1e-6).contains(shapely.Point(x, y))
                continue
            near(new, float(job.finish_at(np.array([x, y]))), 1e-10)
            near(old, height(corners, x, y), 1e-8)
    # NumPy interpolates straight between stations: its integral of each run is the area of the section.
    stations = answer.stations
    area = 0.0
    for run in np.unique(stations["run"]):
        on = np.asarray(stations["run"]) == run
        area += float(np.trapezoid(stations["thickness_mm"][on] / 1000.0, stations["distance_m"][on]))
    near(answer.net_m2, area, 1e-9)
    near(answer.fill_m2 - answer.high_m2, answer.net_m2, 1e-12)
    near(answer.least_mm, float(np.min(stations["thickness_mm"])), 1e-6)
    near(answer.greatest_mm, float(np.max(stations["thickness_mm"])), 1e-6)


def height(corners: Floats, x: float, y: float) -> float:
    """The old slab at a place, from the triangle that holds it best."""
    best, found = -np.inf, np.nan
    for triangle in corners:
        weights = np.linalg.solve(np.vstack([triangle[:, :2].T, np.ones(3)]), [x, y, 1.0])
        if weights.min() > best:
            best, found = float(weights.min()), float(weights @ triangle[:, 2])
    return found
