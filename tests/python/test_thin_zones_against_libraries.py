"""Thin zones and what their choices take against Shapely and NumPy, on the engine's own triangles.

Tolerances. Areas and volumes agree to 1e-9 of the work, as the surface does (see test_surface_against_libraries.py). Shapely overlays
on a grid of 1e-10 m, which moves some hundred metres of edges by half of that: 1e-7 m2. What lies within 1e-6 m of the outline counts
as lying on it, so joints square to it are held against the outline drawn in by that, to 1e-5 m for their ends.
"""

from __future__ import annotations

from typing import Any

import numpy as np
import pytest
import shapely
from shapely.geometry import LineString, Polygon, box

from overslab.grade import grind_high_spots, thin_zones, thickness
from surface_jobs import Floats, SurfaceJob, Triangles, any_job, corners_of, finish_near, heights, scattered

JOBS = range(60)
RELATIVE = 1e-9
GRID = 1e-10
OVERLAY = 1e-7
CONCRETE, BONDING, GRINDING, BREAKING = 210.0, 55.0, 40.0, 95.0
CURES = ["raise", "bond", "grind", "break out"]


def near(found: float, wanted: float, allowed: float) -> None:
    assert abs(found - wanted) <= allowed, f"{found!r}, expected {wanted!r}"


def thick(job: SurfaceJob, survey: Any) -> Floats:
    """The triangles with the thickness as third coordinate."""
    corners = Triangles.of(survey).corners
    corners[:, :, 2] = job.finish_at(corners[:, :, :2]) - corners[:, :, 2]
    return corners


def cut(ring: list[Floats], level: float, sign: float) -> list[Floats]:
    """The part of a polygon where its third coordinate is below a level (sign -1) or above it (sign 1)."""
    kept = []
    for a, b in zip(ring, ring[1:] + ring[:1]):
        over_a, over_b = sign * (a[2] - level), sign * (b[2] - level)
        if over_a >= 0.0:
            kept.append(a)
        if over_a * over_b < 0.0:
            kept.append(a + over_a / (over_a - over_b) * (b - a))
    return kept


def within(ring: list[Floats], x: tuple[float, float], y: tuple[float, float]) -> list[Floats]:
    """The part of a polygon in a box."""
    for axis, level, sign in ((0, x[0], 1.0), (0, x[1], -1.0), (1, y[0], 1.0), (1, y[1], -1.0)):
        kept = []
        for a, b in zip(ring, ring[1:] + ring[:1]):
            over_a, over_b = sign * (a[axis] - level), sign * (b[axis] - level)
            if over_a >= 0.0:
                kept.append(a)
            if over_a * over_b < 0.0:
                kept.append(a + over_a / (over_a - over_b) * (b - a))
        ring = kept
    return ring


def integral(ring: list[Floats]) -> tuple[float, float]:
    """Area, and integral of the third coordinate, which is linear over the polygon: a fan of triangles."""
    area = volume = 0.0
    for b, c in zip(ring[1:], ring[2:]):
        u, v = b - ring[0], c - ring[0]
        part = 0.5 * (u[0] * v[1] - u[1] * v[0])
        area, volume = area + part, volume + part * (ring[0][2] + b[2] + c[2]) / 3.0
    return area, volume


def overlay(t: Floats, rise: float = 0.0) -> float:
    """The volume of the overlay under a finish risen by so much."""
    total = 0.0
    for triangle in t:
        area, volume = integral(cut(list(triangle), -rise, 1.0))
        total += volume + rise * area
    return total


def zones_of(answer: Any) -> dict[int, Polygon]:
    """The polygons of the zones by number."""
    table = answer.corners
    rings: dict[int, dict[int, list[tuple[float, float]]]] = {}
    for zone, ring, x, y in zip(*(table[key] for key in ("zone", "ring", "x_m", "y_m"))):
        rings.setdefault(int(zone), {}).setdefault(int(ring), []).append((x, y))
    return {zone: Polygon(of[1], [ring for number, ring in of.items() if number > 1]) for zone, of in rings.items()}


def asked(job: SurfaceJob, survey: Any) -> tuple[Floats, float, Any]:
    """Zones under a depth that a good part of the work is thinner than, everything given."""
    t = thick(job, survey)
    minimum = max(float(np.quantile(t[:, :, 2], 0.4)), 0.004) + 1e-5
    answer = thin_zones(
        survey=survey, finish=job.finished(), minimum=1000.0 * minimum, bonded_minimum=400.0 * minimum, grind_at_most=500.0 * minimum,
        new_thickness=150.0 + 1000.0 * minimum, concrete_price=CONCRETE, bonding_price=BONDING, grinding_price=GRINDING,
        breaking_out_price=BREAKING, units="si",
    )
    return t, minimum, answer


@pytest.mark.parametrize("seed", JOBS)
def test_zones_are_the_triangles_cut_at_the_minimum(seed: int) -> None:
    job = any_job(seed)
    survey = job.survey()
    t, minimum, answer = asked(job, survey)
    ground = Triangles.of(survey).ground
    whole = job.outline.area
    thin = [cut(list(triangle), minimum, -1.0) for triangle in t]
    near(answer.area_m2, sum(integral(ring)[0] for ring in thin), RELATIVE * whole)
    shapes = zones_of(answer)
    zones = answer.zones
    assert list(shapes) == [int(zone) for zone in zones["zone"]]
    # Each triangle's thin part lies in one zone: the one that its middle is nearest to.
    totals = np.zeros((len(shapes), 4))
    least, measured = np.full((2, len(shapes)), np.inf)
    for ring, word in zip(thin, ground):
        area, volume = integral(ring)
        if area <= 1e-9:
            continue
        middle = shapely.Point(np.mean([corner[:2] for corner in ring], axis=0))
        own = min(range(len(shapes)), key=lambda n: shapes[n + 1].distance(middle))
        high = -integral(cut(ring, 0.0, -1.0))[1]
        totals[own] += [area, minimum * area - volume, high, area if word == "beyond" else 0.0]
        least[own] = min(least[own], min(corner[2] for corner in ring))
        if word != "beyond":
            measured[own] = min(measured[own], min(corner[2] for corner in ring))
    for n in range(len(shapes)):
        near(zones["area_m2"][n], totals[n, 0], 1e-8 * whole)
        near(zones["lacking_m3"][n], totals[n, 1], RELATIVE * whole)
        near(zones["beyond_m2"][n], totals[n, 3], 1e-8 * whole)
        near(zones["thinnest_mm"][n], 1000.0 * least[n], 1e-6)
        near(zones["deficit_mm"][n], 1000.0 * (minimum - least[n]), 1e-6)
        if np.isfinite(measured[n]):
            near(zones["deficit_measured_mm"][n], 1000.0 * (minimum - measured[n]), 1e-6)
        else:
            assert np.isnan(zones["deficit_measured_mm"][n])
        grind = row(answer, n, "grind")
        near(grind["concrete_m3"], totals[n, 1] - totals[n, 2], RELATIVE * whole)
        near(grind["cost_money"], GRINDING * totals[n, 0] + CONCRETE * (totals[n, 1] - totals[n, 2]), 1e-6 * whole)
        near(grind["depth_mm"], 1000.0 * (minimum - least[n]), 1e-6)
        height = float(job.finish_at(np.array([zones["thinnest_x_m"][n], zones["thinnest_y_m"][n]])))
        assert np.isfinite(height)
        assert shapes[n + 1].distance(shapely.Point(zones["thinnest_x_m"][n], zones["thinnest_y_m"][n])) <= 1e-7


def row(answer: Any, zone: int, cure: str) -> dict[str, Any]:
    """The row of a choice."""
    place = 4 * zone + CURES.index(cure)
    found = {name: column[place] for name, column in answer.choices.items()}
    assert (found["zone"], found["choice"]) == (zone + 1, cure)
    return found


def straight_job(seed: int) -> SurfaceJob:
    """A notched or holed rectangle along the axes: sides of boxes may lie on its runs."""
    random = np.random.default_rng(40_000 + seed)
    w, d = random.uniform(6.0, 12.0, 2)
    u, v = random.uniform(0.35, 0.65, 2) * (w, d)
    notched = Polygon([(0, 0), (w, 0), (w, v), (u, v), (u, d), (0, d)])
    holed = Polygon([(0, 0), (w, 0), (w, d), (0, d)], [[(u, v), (u + 1.0, v), (u + 1.0, v + 0.7), (u, v + 0.7)]])
    outline = [notched, holed][seed % 2]
    given = corners_of(outline) if seed % 4 < 2 else np.zeros((0, 2))
    xy = scattered(random, outline, int(random.integers(8, 45)), given)
    shots = np.c_[xy, heights(random, xy)]
    return SurfaceJob(seed, outline, shots, np.zeros(len(xy), dtype=bool), finish_near(random, shots))


@pytest.mark.parametrize("seed", JOBS)
def test_joints_along_the_runs_are_no_joints(seed: int) -> None:
    job = straight_job(seed)
    _, _, answer = asked(job, job.survey())
    inner = job.outline.buffer(-1e-6, join_style="mitre")
    for n, shape in enumerate(zones_of(answer).values()):
        joint = joint_within(shape, inner)
        near(answer.zones["joint_m"][n], joint, 1e-5)
        assert (answer.zones["reaches_edge"][n] == "yes") == (joint < box(*shape.bounds).length - 1e-5)


def joint_within(shape: Polygon, region: Any) -> float:
    """The length of the sides of the bounding box in a region."""
    corners = list(box(*shape.bounds).exterior.coords)
    return float(sum(LineString(side).intersection(region).length for side in zip(corners, corners[1:])))


@pytest.mark.parametrize("seed", JOBS)
def test_boxes_and_joints_are_those_of_shapely(seed: int) -> None:
    job = any_job(seed)
    survey = job.survey()
    t, minimum, answer = asked(job, survey)
    whole = job.outline.area
    new = 0.15 + minimum
    for n, shape in enumerate(zones_of(answer).values()):
        zones = {name: column[n] for name, column in answer.zones.items()}
        low_x, low_y, high_x, high_y = shape.bounds
        for name, bound in (("x_from_m", low_x), ("x_to_m", high_x), ("y_from_m", low_y), ("y_to_m", high_y)):
            near(zones[name], bound, 1e-9)
        bounds = box(low_x, low_y, high_x, high_y)
        near(zones["boxed_m2"], shapely.intersection(bounds, job.outline, grid_size=GRID).area, OVERLAY)
        # The outline lies askew to the axes: no side lies on it.
        joint = joint_within(shape, job.outline)
        near(zones["joint_m"], joint, 1e-8)
        assert (zones["reaches_edge"] == "yes") == (joint < bounds.length - 1e-5)
        area = lacking = 0.0
        for triangle in t:
            ring = within(list(triangle), (low_x, high_x), (low_y, high_y))
            area += integral(ring)[0]
            thin = integral(cut(cut(ring, 0.0, 1.0), new, -1.0))
            stands = integral(cut(ring, 0.0, -1.0))[0]
            lacking += new * thin[0] - thin[1] + new * stands
        bond, out = row(answer, n, "bond"), row(answer, n, "break out")
        near(bond["area_m2"], area, 1e-8 * whole)
        assert bond["concrete_m3"] == 0.0 and bond["joint_m"] == out["joint_m"] == zones["joint_m"]
        near(bond["cost_money"], BONDING * area, 1e-6 * whole)
        near(out["area_m2"], area, 1e-8 * whole)
        near(out["concrete_m3"], lacking, 1e-8 * whole)
        near(out["cost_money"], BREAKING * area + CONCRETE * lacking, 1e-5 * whole)


@pytest.mark.parametrize("seed", JOBS)
def test_a_rise_takes_the_overlay_it_adds_and_cures(seed: int) -> None:
    job = any_job(seed)
    survey = job.survey()
    t, minimum, answer = asked(job, survey)
    whole, now = job.outline.area, overlay(t)
    for n, deficit in enumerate(answer.zones["deficit_mm"]):
        found = row(answer, n, "raise")
        near(found["concrete_m3"], overlay(t, deficit / 1000.0) - now, RELATIVE * whole)
        near(found["cost_money"], CONCRETE * found["concrete_m3"], 1e-9 * whole * CONCRETE)
        near(found["area_m2"], whole, RELATIVE * whole)
    near(answer.raise_all_mm, max(answer.zones["deficit_mm"]), 1e-9)
    risen = SurfaceJob(job.seed, job.outline, job.shots, job.outside, job.finish + [answer.raise_all_mm / 1000.0 + 1e-9, 0.0, 0.0])
    left = thin_zones(survey=survey, finish=risen.finished(), minimum=1000.0 * minimum, units="si")
    assert (len(left.zones["zone"]), left.area_m2, left.raise_all_mm) == (0, 0.0, None)
    near(thickness(survey=survey, finish=risen.finished(), units="si").fill_m3 - now, answer.raise_all_concrete_m3, 1e-8 * whole)
    ground = grind_high_spots(survey=survey, finish=job.finished(), below=1000.0 * minimum, units="si")
    near(ground.volume_m3, answer.lacking_m3, RELATIVE * whole)


@pytest.mark.parametrize("seed", JOBS)
def test_verdicts_and_the_cheapest(seed: int) -> None:
    job = any_job(seed)
    _, minimum, answer = asked(job, job.survey())
    total = 0.0
    for n in range(len(answer.zones["zone"])):
        thinnest, deficit = answer.zones["thinnest_mm"][n], answer.zones["deficit_mm"][n]
        short = {
            "raise": 0.0, "bond": 400.0 * minimum - thinnest, "grind": deficit - 500.0 * minimum, "break out": 0.0,
        }
        costs = {}
        for cure in CURES:
            found = row(answer, n, cure)
            assert found["verdict"] == ("enough" if short[cure] <= 1e-6 else "not enough")
            if found["verdict"] == "enough":
                costs[cure] = found["cost_money"]
                assert np.isnan(found["short_by_mm"])
            else:
                near(found["short_by_mm"], short[cure], 1e-6)
        assert answer.zones["cheapest"][n] == min(costs, key=lambda cure: costs[cure])
        total += min(cost for cure, cost in costs.items() if cure != "raise")
    near(answer.zone_by_zone_cost_money, total, 1e-9 * max(total, 1.0))
