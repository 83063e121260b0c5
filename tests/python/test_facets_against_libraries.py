"""Finishes of facets against exact fractions, Shapely and a million samples, over random surveys.

Tolerances. The design's 1e-9 relative is asked of volumes against fill and high together. Samples scatter: their mean is held to 4.5 of
its own standard errors, which are told in the test and are about a thousandth of the volume; one run in 150,000 would miss by chance, and
the seeds are fixed.
"""

from __future__ import annotations

from fractions import Fraction
from typing import Any

import numpy as np
import pytest
import shapely
from shapely.geometry import LineString, Point, Polygon

import overslab
from overslab.grade import (
    finish_facets, finish_from_facets, finish_raised, finish_to_drain, finish_to_valley, thickness,
)
from surface_jobs import Floats, SurfaceJob, Triangles, any_job, convex_outline, heights, scattered
from zero_line import Corner, cut_exactly

RELATIVE = 1e-9

Facets = list[list[int]]


def near(found: float, wanted: float, scale: float, relative: float = RELATIVE) -> None:
    """Two numbers agree to a share of a scale."""
    assert abs(found - wanted) <= relative * scale, f"{found!r}, expected {wanted!r}"


def floor_over(job: SurfaceJob) -> tuple[Floats, Facets]:
    """Corners and triangles of a floor that reaches beyond the work: a hub, a ring around it and a ring outside."""
    random = np.random.default_rng(50_000 + job.seed)
    low_x, low_y, high_x, high_y = job.outline.bounds
    middle = np.array([0.5 * (low_x + high_x), 0.5 * (low_y + high_y)]) + random.uniform(-0.5, 0.5, 2)
    reach, count = np.hypot(high_x - low_x, high_y - low_y), int(random.integers(4, 8))
    angles = 2.0 * np.pi * (np.arange(count) + random.uniform(-0.15, 0.15, count)) / count
    around = np.c_[np.cos(angles), np.sin(angles)]
    xy = np.vstack([middle, middle + 0.2 * reach * around, middle + 3.0 * reach * around])
    # Near the plane among the shots, so that the floor meets the old slab.
    z = job.finish_at(xy) + random.uniform(-0.03, 0.03, len(xy))
    facets = []
    for i in range(count):
        a, b = 1 + i, 1 + (i + 1) % count
        facets += [[0, a, b], [a, a + count, b + count], [a, b + count, b]]
    return np.c_[xy, z], facets


def finish_of(corners: Floats, facets: Facets) -> overslab.Finish:
    """The floor as the engine takes it."""
    x, y, z = corners.T
    words = [", ".join(str(corner + 1) for corner in facet) for facet in facets]
    return finish_from_facets(
        corners={"x": x, "y": y, "elevation": z}, facets={"corners": words}, units="si"
    )


def exact(row: Floats) -> Corner:
    """A place with a height, in fractions."""
    return tuple(Fraction(float(value)) for value in row)  # type: ignore[return-value]


def left_of(a: Corner, b: Corner, p: Corner) -> Fraction:
    """Twice the area of a triangle, positive where it turns left."""
    return (b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0])


def height_on(triangle: list[Corner], p: Corner) -> Fraction:
    """The height of a triangle's plane at a place."""
    a, b, c = triangle
    return (left_of(b, c, p) * a[2] + left_of(c, a, p) * b[2] + left_of(a, b, p) * c[2]) / left_of(a, b, c)


def common(polygon: list[Corner], other: list[Corner]) -> list[Corner]:
    """The common part of two convex polygons, counter-clockwise (Sutherland and Hodgman 1974)."""
    for a, b in zip(other, other[1:] + other[:1]):
        part: list[Corner] = []
        for here, after in zip(polygon, polygon[1:] + polygon[:1]):
            at, then = left_of(a, b, here), left_of(a, b, after)
            if at >= 0:
                part.append(here)
            if at * then < 0:
                part.append(tuple(p + at / (at - then) * (q - p) for p, q in zip(here, after)))  # type: ignore[arg-type]
        polygon = part
        if len(polygon) < 3:
            return []
    return polygon


def pieces(survey: overslab.Survey, corners: Floats, facets: Facets) -> list[list[Corner]]:
    """The old slab's triangles cut by the facets, as triangles of x, y, thickness, in exact fractions."""
    triangles = Triangles.of(survey).corners
    found = []
    for facet in facets:
        finish = [exact(corners[corner]) for corner in facet]
        box = corners[facet]
        for triangle in triangles:
            if (triangle[:, :2].max(0) < box[:, :2].min(0)).any() or (triangle[:, :2].min(0) > box[:, :2].max(0)).any():
                continue
            ground = [exact(corner) for corner in triangle]
            part = [(x, y, height_on(finish, (x, y, z)) - z) for x, y, z in common(ground, finish)]
            found += [[part[0], b, c] for b, c in zip(part[1:], part[2:])]
    return found


@pytest.mark.parametrize("seed", range(18))
def test_volumes_under_facets_are_exact(seed: int) -> None:
    job = any_job(seed)
    survey, (corners, facets) = job.survey(), floor_over(job)
    answer = thickness(survey=survey, finish=finish_of(corners, facets), units="si")
    parts = pieces(survey, corners, facets)
    fill, high, _ = (float(value) for value in cut_exactly(parts))
    near(answer.area_m2, job.outline.area, job.outline.area)
    near(answer.fill_m3, fill, fill + high)
    near(answer.high_m3, high, fill + high)
    heights_at = [float(t) for part in parts for _, _, t in part]
    near(answer.least_mm, 1000.0 * min(heights_at), 1.0)
    near(answer.greatest_mm, 1000.0 * max(heights_at), 1.0)
    assert answer.least_facet in [f"facet {number + 1}" for number in range(len(facets))]


@pytest.mark.parametrize("seed", range(3))
def test_volumes_under_facets_agree_with_a_million_samples(seed: int) -> None:
    job = any_job(600 + seed)
    survey, (corners, facets) = job.survey(), floor_over(job)
    answer = thickness(survey=survey, finish=finish_of(corners, facets), units="si")
    random = np.random.default_rng(seed)
    low_x, low_y, high_x, high_y = job.outline.bounds
    xy = random.uniform([low_x, low_y], [high_x, high_y], (1_000_000, 2))
    xy = xy[np.argsort(xy[:, 0])]
    inside = shapely.contains_xy(job.outline, xy[:, 0], xy[:, 1])
    t = heights_over(corners[np.array(facets)], xy) - heights_over(Triangles.of(survey).corners, xy)
    t = np.where(inside, t, 0.0)
    box = (high_x - low_x) * (high_y - low_y)
    for found, samples in [(answer.net_m3, t), (answer.fill_m3, np.maximum(t, 0.0)), (answer.high_m3, np.maximum(-t, 0.0))]:
        assert not np.isnan(samples).any()
        error = box * samples.std() / np.sqrt(len(samples))
        assert abs(found - box * samples.mean()) <= 4.5 * error, f"{found!r}, sampled {box * samples.mean()!r} +- {error!r}"


def heights_over(triangles: Floats, xy: Floats) -> Floats:
    """Heights of triangles at places sorted by x; nan where there is no triangle."""
    z = np.full(len(xy), np.nan)
    for a, b, c in triangles:
        low, high = min(a[0], b[0], c[0]), max(a[0], b[0], c[0])
        start, end = np.searchsorted(xy[:, 0], [low - 1e-9, high + 1e-9])
        at = xy[start:end]
        plane = np.linalg.solve(np.array([[*a[:2], 1.0], [*b[:2], 1.0], [*c[:2], 1.0]]), [a[2], b[2], c[2]])
        on = np.ones(len(at), dtype=bool)
        for p, q in [(a, b), (b, c), (c, a)]:
            on &= (q[0] - p[0]) * (at[:, 1] - p[1]) - (q[1] - p[1]) * (at[:, 0] - p[0]) >= -1e-9
        z[start:end][on] = at[on] @ plane[:2] + plane[2]
    return z


@pytest.mark.parametrize("seed", range(12))
def test_a_raised_floor_just_leaves_the_least_thickness(seed: int) -> None:
    """The corners of all exact pieces of the ground between the shots are looked through; the engine's lift must fit them."""
    job = any_job(2 * seed + 1)  # With their corners shot nothing, or little, lies beyond.
    survey, (corners, facets) = job.survey(), floor_over(job)
    raised = finish_raised(survey=survey, finish=finish_of(corners, facets), least=75.0, units="si")
    again = thickness(survey=survey, finish=raised.finish, units="si")
    near(again.least_measured_mm, 75.0, 1.0)
    if Triangles.of(survey).ground.tolist().count("beyond") == 0:
        least = min(float(t) for part in pieces(survey, corners, facets) for _, _, t in part)
        near(raised.raised_by_mm, 75.0 - 1000.0 * least, 1000.0)


def convex_job(seed: int) -> SurfaceJob:
    """A survey of a convex work."""
    random = np.random.default_rng(70_000 + seed)
    outline = convex_outline(random)
    xy = scattered(random, outline, 12, np.array(outline.exterior.coords[:-1]))
    shots = np.c_[xy, heights(random, xy)]
    return SurfaceJob(seed, outline, shots, np.zeros(len(xy), dtype=bool))


def heights_by_facets(finish: Any, xy: Floats) -> Floats:
    """Heights from the listed corners of facets: of each place that of a facet that holds it."""
    table = finish_facets(finish=finish, units="si").corners
    names = np.array(table["facet"])
    found = np.full(len(xy), np.nan)
    for name in dict.fromkeys(names):
        own = names == name
        ring = np.c_[table["x_m"], table["y_m"], table["elevation_m"]][own].astype(float)
        middle = ring.mean(axis=0)
        plane, *_ = np.linalg.lstsq(np.c_[ring[:, :2] - middle[:2], np.ones(len(ring))], ring[:, 2], rcond=None)
        inside = shapely.contains_xy(Polygon(ring[:, :2]), xy[:, 0], xy[:, 1])
        found[inside] = (xy[inside] - middle[:2]) @ plane[:2] + plane[2]
    return found


def places_in(job: SurfaceJob, random: np.random.Generator) -> Floats:
    """Places in the work."""
    low_x, low_y, high_x, high_y = job.outline.bounds
    xy = random.uniform([low_x, low_y], [high_x, high_y], (300, 2))
    return xy[shapely.contains_xy(job.outline.buffer(-1e-3), xy[:, 0], xy[:, 1])]


@pytest.mark.parametrize("seed", range(20))
def test_a_drain_lies_at_the_foot_of_every_ray(seed: int) -> None:
    """From the perimeter to the drain every ray falls evenly, whatever facet it lies on."""
    job = convex_job(seed)
    random = np.random.default_rng(seed)
    centre = np.array(job.outline.centroid.coords[0])
    finish = finish_to_drain(
        survey=job.survey(), x=centre[0], y=centre[1], elevation=30.3, fall=1.5, along="longest", units="si"
    )
    ring = np.array(job.outline.exterior.coords[:-1])
    low = 30.3 - 0.015 * np.linalg.norm(ring - centre, axis=1).max()
    xy = places_in(job, random)
    found = heights_by_facets(finish, xy)
    for place, height in zip(xy, found):
        if np.isnan(height):  # On an edge between facets.
            continue
        way = (place - centre) / np.linalg.norm(place - centre)
        hit = LineString([centre, centre + 100.0 * way]).intersection(job.outline.exterior)
        share = np.linalg.norm(place - centre) / Point(centre).distance(hit)
        near(height, low + (30.3 - low) * share, 1.0)


@pytest.mark.parametrize("rim", [None, 300.0])
@pytest.mark.parametrize("seed", range(20))
def test_facets_to_a_drain_tile_the_work(seed: int, rim: float | None) -> None:
    job = convex_job(seed)
    x, y = job.outline.centroid.coords[0]
    survey = job.survey()
    finish = finish_to_drain(
        survey=survey, x=x, y=y, elevation=30.3, drain_elevation=30.2, rim_x=rim, units="si"
    )
    listed = finish_facets(finish=finish, survey=survey, units="si").facets
    near(float(np.sum(listed["area_m2"])), job.outline.area, job.outline.area)
    answer = thickness(survey=survey, finish=finish, units="si")
    flat = thickness(survey=survey, finish=overslab.Finish.from_dict({"level": "30.3 m"}), units="si")
    if rim is None:
        # A pyramid is a third of its prism (Euclid XII 7).
        near(flat.net_m3 - answer.net_m3, job.outline.area * 0.1 / 3.0, flat.fill_m3 + flat.high_m3)


@pytest.mark.parametrize("seed", range(20))
def test_a_valley_rises_square_to_its_line(seed: int) -> None:
    job = convex_job(seed)
    random = np.random.default_rng(seed)
    centre = np.array(job.outline.centroid.coords[0])
    along = random.normal(size=2)
    along /= np.linalg.norm(along)
    ends = [centre - 2.0 * along, centre + 3.0 * along]
    finish = finish_to_valley(
        survey=job.survey(), valley={"x": [ends[0][0], ends[1][0]], "y": [ends[0][1], ends[1][1]], "elevation": [30.2, 30.1]},
        fall=2.0, right_fall=1.0, units="si",
    )
    xy = places_in(job, random)
    found = heights_by_facets(finish, xy)
    left = (xy - ends[0]) @ np.array([-along[1], along[0]])
    wanted = 30.2 - 0.02 * ((xy - ends[0]) @ along) + np.where(left > 0.0, 0.02 * left, -0.01 * left)
    held = ~np.isnan(found)
    assert held.mean() > 0.99
    assert np.abs(found - wanted)[held].max() < 1e-9
