"""Random surveys that are the same in every run: an outline (convex, L-shaped or with holes), shots, and a finish near them.

All in metres. Coordinates are doubles as they come, so nothing here is on a grid unless it says so.
"""

from __future__ import annotations

from dataclasses import dataclass, field

import numpy as np
import numpy.typing as npt
import shapely
from shapely.geometry import MultiPoint, Point, Polygon

import overslab
from overslab.grade import finish_from_points
from overslab.survey import survey_from_shots, survey_triangles

Floats = npt.NDArray[np.float64]

# The engine takes a shot within 1/2 in of an outline run as lying on it, and shots within 1/2 in as one place: shots that are
# to do neither keep this far away.
APART = 0.05


@dataclass
class SurfaceJob:
    """One survey: `shots` has a row of x, y, z for each shot; `outside` marks those outside the outline on purpose."""

    seed: int
    outline: Polygon
    shots: Floats
    outside: npt.NDArray[np.bool_]
    finish: Floats = field(default_factory=lambda: np.zeros(3))

    def record(self) -> overslab.Outline:
        """The outline as the engine holds it."""

        def corners(ring: shapely.LinearRing) -> list[dict[str, str]]:
            return [{"x": f"{x!r} m", "y": f"{y!r} m"} for x, y in (map(float, p) for p in ring.coords[:-1])]

        holes = [{"name": f"hole {n}", "corners": corners(ring)} for n, ring in enumerate(self.outline.interiors)]
        return overslab.Outline.from_dict({"corners": corners(self.outline.exterior), "holes": holes})

    def survey(self) -> overslab.Survey:
        """The survey, reaching as far beyond the shots as it may."""
        x, y, z = self.shots.T
        shots = {"x": x, "y": y, "elevation": z, "outside": ["yes" if out else "no" for out in self.outside]}
        return survey_from_shots(outline=self.record(), shots=shots, beyond_allowed="yes", units="si")

    def finished(self) -> overslab.Finish:
        """The finish: the plane z = a + b x + c y, handed over by three points."""
        a, b, c = self.finish
        points = {"x": [0.0, 8.0, 0.0], "y": [0.0, 0.0, 8.0], "elevation": [a, a + 8.0 * b, a + 8.0 * c]}
        return finish_from_points(points=points, units="si")

    def finish_at(self, xy: Floats) -> Floats:
        """The finish at places."""
        a, b, c = self.finish
        return a + b * xy[..., 0] + c * xy[..., 1]


@dataclass
class Triangles:
    """The engine's triangles: corners by triangle, corner and axis; the word for the ground under each."""

    corners: Floats
    ground: npt.NDArray[np.str_]

    @classmethod
    def of(cls, survey: overslab.Survey) -> Triangles:
        """Those of a survey."""
        table = survey_triangles(survey=survey, units="si").triangles
        columns = [[table[f"{axis}_{n}_m"] for axis in ("x", "y", "elevation")] for n in (1, 2, 3)]
        return cls(np.moveaxis(np.array(columns, dtype=float), -1, 0), np.array(table["ground"]))

    @property
    def areas(self) -> Floats:
        """The signed area of each: counter-clockwise is positive."""
        return signed_areas(self.corners)


def signed_areas(corners: Floats) -> Floats:
    """Areas of triangles, counter-clockwise positive."""
    a, b, c = corners[:, 0, :2], corners[:, 1, :2], corners[:, 2, :2]
    u, v = b - a, c - a
    return 0.5 * (u[:, 0] * v[:, 1] - u[:, 1] * v[:, 0])


def turned(points: Floats, angle: float, shift: Floats) -> Floats:
    """Places turned about the origin and moved."""
    turn = np.array([[np.cos(angle), -np.sin(angle)], [np.sin(angle), np.cos(angle)]])
    return points @ turn.T + shift


def convex_outline(random: np.random.Generator) -> Polygon:
    """A convex polygon of four to nine corners, none nearly straight, no side short."""
    while True:
        corners = int(random.integers(4, 10))
        angles = np.sort(random.uniform(0.0, 2.0 * np.pi, corners))
        axes = random.uniform(3.0, 9.0, 2)
        # Corners on an ellipse are in convex position; a turn makes it lie any way.
        ring = turned(axes * np.c_[np.cos(angles), np.sin(angles)], random.uniform(0.0, 6.3), random.uniform(-20, 20, 2))
        outline = Polygon(ring)
        sides = np.linalg.norm(np.roll(ring, -1, axis=0) - ring, axis=1)
        if outline.area > 8.0 and sides.min() > 0.6 and outline.minimum_rotated_rectangle.area < 6.0 * outline.area:
            return outline


def l_outline(random: np.random.Generator) -> Polygon:
    """A rectangle with a notch, lying any way."""
    w, d = random.uniform(6.0, 12.0, 2)
    u, v = random.uniform(0.35, 0.65, 2) * (w, d)
    ring = np.array([[0, 0], [w, 0], [w, v], [u, v], [u, d], [0, d]])
    return Polygon(turned(ring, random.uniform(0.0, 6.3), random.uniform(-20, 20, 2)))


def holed_outline(random: np.random.Generator) -> Polygon:
    """A rectangle with one or two holes, lying any way."""
    w, d = random.uniform(6.0, 12.0, 2)
    angle, shift = random.uniform(0.0, 6.3), random.uniform(-20, 20, 2)
    holes = []
    for left in [0.15, 0.55][: int(random.integers(1, 3))]:
        x, y = (left + random.uniform(0.0, 0.1)) * w, random.uniform(0.2, 0.5) * d
        a, b = random.uniform(0.3, 0.2 * w), random.uniform(0.3, 0.3 * d)
        holes.append(turned(np.array([[x, y], [x + a, y], [x + a, y + b], [x, y + b]]), angle, shift))
    return Polygon(turned(np.array([[0, 0], [w, 0], [w, d], [0, d]]), angle, shift), holes)


def heights(random: np.random.Generator, xy: Floats) -> Floats:
    """Heights of an old slab: a fall, a hollow, and readings that scatter."""
    slope = random.uniform(-0.02, 0.02, 2)
    middle = xy.mean(axis=0)
    hollow = 0.03 * np.cos(0.7 * np.linalg.norm(xy - middle, axis=1))
    return 30.0 + (xy - middle) @ slope + hollow + random.normal(0.0, 0.004, len(xy))


def scattered(random: np.random.Generator, outline: Polygon, count: int, given: Floats) -> Floats:
    """Places inside an outline, clear of its edges, of one another and of the given ones."""
    clear = outline.buffer(-APART)
    low_x, low_y, high_x, high_y = clear.bounds
    places = [tuple(place) for place in given]
    tries = 0
    while len(places) < len(given) + count and tries < 60 * count:
        tries += 1
        place = (random.uniform(low_x, high_x), random.uniform(low_y, high_y))
        if clear.contains(Point(place)) and all(np.hypot(place[0] - x, place[1] - y) > APART for x, y in places):
            places.append(place)
    return clear_of_hull(np.array(places), len(given))


def clear_of_hull(places: Floats, kept: int) -> Floats:
    """The places without those that lie within 1/2 in of their hull but not on it: the engine takes their slivers for part of the
    edge, which no library does. The first ones are kept."""
    while True:
        hull = MultiPoint(places).convex_hull.exterior
        near = np.array([1e-9 < hull.distance(Point(place)) < APART / 2 for place in places])
        near[:kept] = False
        if not near.any():
            return places
        places = places[~near]


def corners_of(outline: Polygon) -> Floats:
    """The corners of an outline and of its holes."""
    return np.vstack([np.array(ring.coords[:-1]) for ring in [outline.exterior, *outline.interiors]])


def finish_near(random: np.random.Generator, shots: Floats) -> Floats:
    """A plane among the heights of the shots, so that in most surveys it meets the old slab somewhere."""
    b, c = random.uniform(-0.015, 0.015, 2)
    middle = shots.mean(axis=0)
    level = middle[2] + random.uniform(-0.03, 0.09)
    return np.array([level - b * middle[0] - c * middle[1], b, c])


def any_job(seed: int) -> SurfaceJob:
    """A survey of one of the three kinds. Half of them have their corners shot, in the others the edges lie beyond the shots."""
    random = np.random.default_rng(seed)
    outline = [convex_outline, l_outline, holed_outline][seed % 3](random)
    given = corners_of(outline) if seed % 2 else np.zeros((0, 2))
    xy = scattered(random, outline, int(random.integers(5, 45)), given)
    shots = np.c_[xy, heights(random, xy)]
    return SurfaceJob(seed, outline, shots, np.zeros(len(xy), dtype=bool), finish_near(random, shots))


def hull_job(seed: int) -> SurfaceJob:
    """A convex survey whose triangulation is unique: the outline is the hull of the shots, or lies inside it."""
    random = np.random.default_rng(10_000 + seed)
    hull = convex_outline(random)
    xy = scattered(random, hull, int(random.integers(4, 40)), corners_of(hull))
    shots = np.c_[xy, heights(random, xy)]
    outline = hull
    if seed % 2:
        outline = inside(random, hull, xy)
    outside = ~np.array([outline.buffer(1e-6).contains(Point(place)) for place in xy])
    return SurfaceJob(seed, outline, shots, outside, finish_near(random, shots))


def inside(random: np.random.Generator, hull: Polygon, xy: Floats) -> Polygon:
    """A convex outline inside a hull, its edges clear of all shots."""
    places = MultiPoint(xy)
    corners = np.array([[-1.0, -1.0], [1.0, -1.0], [1.0, 1.0], [-1.0, 1.0]])
    size = 0.35 * np.sqrt(hull.area)
    while True:
        middle = np.array(hull.representative_point().coords[0])
        ring = turned(size * random.uniform(0.5, 1.0, 2) * corners, random.uniform(0.0, 6.3), middle)
        outline = Polygon(ring)
        if hull.contains(outline) and outline.exterior.distance(places) > APART / 2:
            return outline
        # Sooner or later it is small enough to lie between the shots.
        size *= 0.97


def constrained_job(seed: int) -> SurfaceJob:
    """A survey whose corners are all shot, with more shots along the runs: every run is a chain of edges between shots."""
    random = np.random.default_rng(20_000 + seed)
    outline = [l_outline, holed_outline][seed % 2](random)
    along = []
    for ring in [outline.exterior, *outline.interiors]:
        for (x0, y0), (x1, y1) in zip(ring.coords[:-1], ring.coords[1:]):
            # One in each third at most, so that no two are one place.
            for share in random.uniform([0.1, 0.6], [0.4, 0.9])[: int(random.integers(0, 3))]:
                along.append((x0 + share * (x1 - x0), y0 + share * (y1 - y0)))
    given = np.vstack([corners_of(outline), np.array(along).reshape(-1, 2)])
    xy = scattered(random, outline, int(random.integers(5, 35)), given)
    shots = np.c_[xy, heights(random, xy)]
    return SurfaceJob(seed, outline, shots, np.zeros(len(xy), dtype=bool), finish_near(random, shots))
