"""Demands as rows, put up again by NumPy from the triangles of the old slab and the facets in plan.

Over facet f the floor is z = h + b (x - x0) + c (y - y0); the unknowns are (h, L b, L c) of every facet, so that all are metres over a work
of size L. A row is A u >= b; tightening its demand by t moves b by share t. Nothing here is taken from what the solver says.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import shapely
from shapely.geometry import LineString, Point, Polygon

from solver_jobs import SENSE, Demand, Floor
from surface_jobs import Floats


@dataclass
class Rows:
    """Rows A u >= b and their shares."""

    a: Floats
    b: Floats
    share: Floats

    def tightest(self, u: Floats) -> float:
        """By how much the demand can be tightened until a floor breaks it."""
        return float(((self.a @ u - self.b) / self.share).min())


def together(parts: list[Rows]) -> Rows:
    """Rows one behind the other."""
    return Rows(*(np.concatenate([getattr(part, key) for part in parts]) for key in ("a", "b", "share")))


def clipped(polygon: Floats, ring: Floats) -> Floats:
    """The part of a convex polygon of x, y, z in a convex counter-clockwise ring."""
    for a, b in zip(ring, np.roll(ring, -1, axis=0)):
        side = (b[0] - a[0]) * (polygon[:, 1] - a[1]) - (b[1] - a[1]) * (polygon[:, 0] - a[0])
        side[np.abs(side) < 1e-12] = 0.0
        if side.min() >= 0.0:
            continue
        kept = []
        for n in range(len(polygon)):
            m = (n + 1) % len(polygon)
            if side[n] >= 0.0:
                kept.append(polygon[n])
            if side[n] * side[m] < 0.0:
                kept.append(polygon[n] + side[n] / (side[n] - side[m]) * (polygon[m] - polygon[n]))
        if len(kept) < 3:
            return np.zeros((0, 3))
        polygon = np.array(kept)
    return polygon


class Plan:
    """The facets in plan with the old slab under them, and what demands say of them."""

    def __init__(self, made: Floor) -> None:
        self.made = made
        ring = made.ring
        self.origin, self.size = ring.mean(axis=0), float(np.linalg.norm(ring[2] - ring[0])) / 2.0
        self.datum = float(made.triangles.corners[:, :, 2].mean())
        self.names: list[str] = list(made.facets) or ["floor"]
        self.rings = [counter_clockwise(ring) for ring in made.facets.values()] or [None]
        self.width = 3 * len(self.names)
        self.pieces = [self.cut(ring) for ring in self.rings]
        self.meeting = self.meet()
        self.cost, self.constant = self.volume()
        self.known: dict[str | None, Rows] = {}

    def cut(self, ring: Floats | None) -> list[tuple[Floats, bool]]:
        """The old slab's triangles under a facet, and whether they lie between the shots."""
        made = self.made.triangles
        found = []
        for corners, ground in zip(made.corners, made.ground):
            part = corners if ring is None else clipped(corners, ring)
            if len(part) > 2 and fan_areas(part).sum() > 1e-12:
                found.append((part, ground != "beyond"))
        return found

    def row(self, facet: int, xy: Floats) -> Floats:
        """The height over places, as rows of the unknowns."""
        xy = np.atleast_2d(xy)
        row = np.zeros((len(xy), self.width))
        row[:, 3 * facet] = 1.0
        row[:, 3 * facet + 1 : 3 * facet + 3] = (xy - self.origin) / self.size
        return row

    def rise(self, facet: int, direction: Floats) -> Floats:
        """The rise in a direction times the size."""
        row = np.zeros(self.width)
        row[3 * facet + 1 : 3 * facet + 3] = direction
        return row

    def meet(self) -> Floats:
        """Facets have one height at the ends of what they share."""
        equal = []
        for second in range(len(self.names)):
            for first in range(second):
                shared = Polygon(self.rings[first]).exterior.intersection(Polygon(self.rings[second]).exterior)
                for line in getattr(shared, "geoms", [shared]):
                    if isinstance(line, LineString) and line.length > 1e-6:
                        ends = np.array(line.coords)[[0, -1]]
                        equal.append(self.row(first, ends) - self.row(second, ends))
        return np.vstack(equal) if equal else np.zeros((0, self.width))

    def volume(self) -> tuple[Floats, float]:
        """The concrete is cost . u + constant."""
        cost, constant = np.zeros(self.width), 0.0
        for facet, pieces in enumerate(self.pieces):
            for part, _ in pieces:
                areas = fan_areas(part)
                middles = (part[0] + part[1:-1] + part[2:]) / 3.0
                cost += areas @ self.row(facet, middles[:, :2])
                constant -= areas @ (middles[:, 2] - self.datum)
        return cost, float(constant)

    def floor_at(self, u: Floats, facet: int, xy: Floats) -> Floats:
        """The heights of a floor."""
        return self.datum + self.row(facet, xy) @ u

    def facet_at(self, at: Floats) -> int:
        """A facet that holds a place; those that share it have one height there."""
        gaps = [0.0 if ring is None else Polygon(ring).distance(Point(at)) for ring in self.rings]
        return int(np.argmin(gaps))

    def facets_of(self, demand: Demand) -> list[int]:
        return [self.names.index(demand.facet)] if demand.facet else list(range(len(self.names)))

    def rows(self, demand: Demand, margin: float = 0.0) -> Rows:
        """The rows of a demand."""
        sense, figure = SENSE[demand.kind], demand.figure
        if demand.kind in ("least_thickness", "greatest_thickness"):
            over = self.thick(demand.zone)
            figure += margin if demand.kind == "least_thickness" else 0.0
            return Rows(sense * over.a, sense * (over.b + figure), over.share)
        if demand.kind in ("least_fall", "greatest_fall"):
            a, run = self.falls(demand)
            return Rows(sense * a, sense * figure * run, run)
        if demand.kind == "steepest":
            angles = np.arange(16) * np.pi / 8.0
            return self.cone(demand, [(facet, angle) for facet in self.facets_of(demand) for angle in angles])
        if demand.kind == "cross_fall":
            start, end = self.line(demand)[[0, -1]]
            rises = np.array([self.rise(facet, (end - start) / np.linalg.norm(end - start)) for facet in self.facets_of(demand)])
            a = np.vstack([rises, -rises])
            return Rows(a, np.full(len(a), -self.size * figure), np.full(len(a), self.size))
        heights = np.vstack([self.row(self.facet_at(at), at) for at in self.places(demand)])
        if demand.kind == "level":
            pairs = [heights[i] - heights[j] for i in range(len(heights)) for j in range(len(heights)) if i != j]
            return Rows(np.array(pairs), np.full(len(pairs), -figure), np.ones(len(pairs)))
        senses = [1.0, -1.0] if demand.kind == "exactly" else [sense]
        a = np.vstack([each * heights for each in senses])
        b = np.repeat(senses, len(heights)) * (figure - self.datum)
        share = np.repeat(senses, len(heights)) if demand.kind == "exactly" else np.ones(len(a))
        return Rows(a, b, share)

    def thick(self, zone: str | None) -> Rows:
        """Thickness at least none at the corners of the old slab's triangles between the shots."""
        if zone not in self.known:
            self.known[zone] = self.at_corners(zone)
        return self.known[zone]

    def at_corners(self, zone: str | None) -> Rows:
        """The rows of `thick`, each place once for each facet."""
        rows = []
        for facet, pieces in enumerate(self.pieces):
            parts = [part for part, measured in pieces if measured]
            if zone is not None:
                parts = [clipped(part, self.made.zones[zone]) for part in parts]
            parts = [part for part in parts if len(part) > 2 and fan_areas(part).sum() > 1e-12]
            if parts:
                corners = np.vstack(parts)
                rows.append(np.c_[self.row(facet, corners[:, :2]), corners[:, 2] - self.datum])
        found = np.vstack(rows)
        _, once = np.unique(found.round(10), axis=0, return_index=True)
        found = found[np.sort(once)]
        return Rows(found[:, :-1], found[:, -1], np.ones(len(found)))

    def falls(self, demand: Demand) -> tuple[Floats, Floats]:
        """The drop toward an outlet and the run that it is over."""
        made, facets = self.made, self.facets_of(demand)
        if demand.edge:
            start, end = made.edge(demand.edge)
            inward = np.array([start[1] - end[1], end[0] - start[0]]) / np.linalg.norm(end - start)
            return np.array([self.rise(facet, inward) for facet in facets]), np.full(len(facets), self.size)
        if len(demand.places) == 2:
            start, end = np.array(demand.places)
            left = np.array([start[1] - end[1], end[0] - start[0]]) / np.linalg.norm(end - start)
            rises = []
            for facet in facets:
                middle = Polygon(self.rings[facet]).intersection(made.outline).centroid.coords[0]
                rises.append(self.rise(facet, left if (np.array(middle) - start) @ left > 0.0 else -left))
            return np.array(rises), np.full(len(facets), self.size)
        drain = np.array(demand.places[0])
        low = self.row(self.facet_at(drain), drain)
        drops, runs = [], []
        for facet in facets:
            own = made.outline if self.rings[facet] is None else Polygon(self.rings[facet]).intersection(made.outline)
            for corner in np.array(own.exterior.coords[:-1]):
                if np.linalg.norm(corner - drain) > 1e-3:
                    drops.append((self.row(facet, corner) - low)[0])
                    runs.append(np.linalg.norm(corner - drain))
        return np.array(drops), np.array(runs)

    def line(self, demand: Demand) -> Floats:
        """The corners of a line."""
        return np.array(self.made.edge(demand.edge) if demand.edge else demand.places)

    def places(self, demand: Demand) -> Floats:
        """Where a line may bind: its corners, and where it passes from one facet to another."""
        line = self.line(demand)
        if len(line) == 1:
            return line
        crossing = [line]
        for ring in self.rings:
            if ring is not None:
                cut = LineString(line).intersection(Polygon(ring).exterior)
                crossing += [np.array(point.coords) for point in getattr(cut, "geoms", [cut]) if not point.is_empty]
        return np.vstack(crossing)

    def cone(self, demand: Demand, touched: list[tuple[int, float]]) -> Rows:
        """Planes that touch the cone of a steepest fall."""
        a = np.array([-self.rise(facet, np.array([np.cos(angle), np.sin(angle)])) for facet, angle in touched])
        return Rows(a, np.full(len(a), -self.size * demand.figure), np.full(len(a), self.size))


def is_exact(demand: Demand) -> bool:
    """Whether it holds something exactly."""
    return demand.kind == "exactly" or demand.kind in ("level", "cross_fall") and demand.figure == 0.0


def counter_clockwise(ring: Floats) -> Floats:
    return np.array(shapely.geometry.polygon.orient(Polygon(ring)).exterior.coords[:-1])


def fan_areas(part: Floats) -> Floats:
    """The areas of the fan from the first corner of a convex polygon."""
    out = part[1:, :2] - part[0, :2]
    return 0.5 * (out[:-1, 0] * out[1:, 1] - out[:-1, 1] * out[1:, 0])
