"""Standing water against a flood on a fine grid, over random slabs with walls, holes and drains.

The grid is flooded by brute force: cells of 2 cm, each as high as the slab at its middle, eight neighbours, the outlets first, the lowest
cell next (a heap). No triangle is known to the flood: heights are looked up for every cell, and which cells are inside is all it knows of
the outline. All corners of the outline lie on the grid's lines, so that cells tile the work.

Error of the grid. A way of water over the slab passes cells whose middles are at most h / sqrt 2 beside it, and the straight step from one
middle to the next is at most h sqrt 2 long; with g the steepest slope of the slab a level of the grid is therefore off by no more than
g h sqrt 2 at a saddle, and as much again at an outlet, whose cells lie along the open edge or hold the drain. A level is asked to agree
within 2 sqrt 2 g h, and all water within that times the area under it. Where two rims are nearly as high as one another the grid may join
ponds that are two, or part one; areas and volumes of single ponds are held against Shapely under the level found instead.
"""

from __future__ import annotations

import heapq
from dataclasses import dataclass

import numpy as np
import numpy.typing as npt
import pytest
import shapely
from shapely.geometry import Polygon

import overslab
from overslab.survey import standing_water, survey_from_shots
from surface_jobs import Triangles

Floats = npt.NDArray[np.float64]
Bools = npt.NDArray[np.bool_]

CELL = 0.02
"""Metres."""

SEEDS = range(24)

SHAPES = [
    Polygon([(0, 0), (4, 0), (4, 3), (0, 3)]),
    Polygon([(0, 0), (5, 0), (5, 2), (3, 2), (3, 4), (0, 4)]),
    Polygon([(0, 0), (4, 0), (4, 3), (0, 3)], [[(1.0, 1.0), (1.4, 1.0), (1.4, 1.5), (1.0, 1.5)]]),
    Polygon([(0, 0), (5, 0), (5, 2), (3, 2), (3, 4), (0, 4)], [[(2.0, 0.6), (2.4, 0.6), (2.4, 1.0), (2.0, 1.0)]]),
]


@dataclass
class Slab:
    """A random slab: its outline, which outer sides and holes are open, and its drains (a place, or the two ends of a line)."""

    outline: Polygon
    survey: overslab.Survey
    open_sides: list[bool]
    hole_open: bool
    drains: list[list[tuple[float, float]]]

    @staticmethod
    def of(seed: int) -> Slab:
        random = np.random.default_rng(seed)
        outline = SHAPES[seed % len(SHAPES)]
        low, high = np.array(outline.bounds[:2]), np.array(outline.bounds[2:])
        places: list[tuple[float, float]] = [c for ring in [outline.exterior, *outline.interiors] for c in ring.coords[:-1]]
        while len(places) < 32:
            x, y = low + (high - low) * random.random(2)
            at = shapely.Point(x, y)
            if outline.contains(at) and min(at.distance(shapely.Point(p)) for p in places) > 0.2:
                places.append((x, y))
        heights = 1.0 + 0.03 * random.random(len(places))
        sides = len(outline.exterior.coords) - 1
        # At least one way out: a side, or a drain.
        open_sides = list(random.random(sides) < 0.4)
        drains: list[list[tuple[float, float]]] = []
        inside = outline.buffer(-0.1)
        for _ in range(int(random.integers(0, 3)) + (not any(open_sides))):
            ends: list[tuple[float, float]] = []
            while len(ends) < int(random.integers(1, 3)):
                x, y = low + (high - low) * random.random(2)
                if inside.contains(shapely.LineString([*ends, (x, y)]) if ends else shapely.Point(x, y)):
                    ends.append((x, y))
            drains.append(ends)
        corners = [{"x": f"{x} m", "y": f"{y} m"} for x, y in outline.exterior.coords[:-1]]
        holes = [
            {"name": "column", "corners": [{"x": f"{x} m", "y": f"{y} m"} for x, y in ring.coords[:-1]]} for ring in outline.interiors
        ]
        record = overslab.Outline.from_dict({"corners": corners, "holes": holes})
        x, y = np.array(places).T
        shots = {"x": x, "y": y, "elevation": heights}
        survey = survey_from_shots(outline=record, shots=shots, units="si")
        return Slab(outline, survey, open_sides, bool(random.random() < 0.3), drains)

    def edges(self) -> list[dict[str, str]]:
        walled = [{"edge": f"side {n + 1}", "state": "walled"} for n, is_open in enumerate(self.open_sides) if not is_open]
        if self.outline.interiors and self.hole_open:
            walled.append({"edge": "column", "state": "drained"})
        return walled

    def drain_rows(self) -> list[dict[str, object]]:
        return [
            {"x": x, "y": y, "name": f"drain {n}"} for n, places in enumerate(self.drains) for x, y in places
        ]

    def open_lines(self) -> list[shapely.Geometry]:
        """Where water leaves: open sides, the hole where it is one, drains."""
        ring = list(self.outline.exterior.coords)
        lines: list[shapely.Geometry] = [
            shapely.LineString(ring[n : n + 2]) for n, is_open in enumerate(self.open_sides) if is_open
        ]
        if self.outline.interiors and self.hole_open:
            lines.append(shapely.LineString(self.outline.interiors[0].coords))
        return lines + [shapely.LineString(places) if len(places) > 1 else shapely.Point(places[0]) for places in self.drains]


@dataclass
class Grid:
    """Cells with the height of the slab at their middles; `inside` says which are of the work."""

    x: Floats
    y: Floats
    height: Floats
    inside: Bools
    slope: float
    cell: float

    @staticmethod
    def of(slab: Slab, cell: float) -> Grid:
        low_x, low_y, high_x, high_y = slab.outline.bounds
        x, y = np.meshgrid(np.arange(low_x + cell / 2, high_x, cell), np.arange(low_y + cell / 2, high_y, cell))
        inside = shapely.contains_xy(slab.outline, x, y)
        corners = Triangles.of(slab.survey).corners
        height, steepest = np.full(x.shape, np.nan), 0.0
        for triangle in corners:
            a, b, c = triangle
            plane = np.linalg.solve(np.array([b - a, c - a])[:, :2], np.array([b[2] - a[2], c[2] - a[2]]))
            steepest = max(steepest, float(np.hypot(*plane)))
            left, right = (np.clip(np.array([f(triangle[:, 0]) for f in (np.min, np.max)]) / cell + [-1, 2], 0, x.shape[1])).astype(int)
            front, back = (np.clip(np.array([f(triangle[:, 1]) for f in (np.min, np.max)]) / cell + [-1, 2], 0, x.shape[0])).astype(int)
            part = np.s_[front:back, left:right]
            within = np.ones(x[part].shape, dtype=bool)
            for p, q in ((a, b), (b, c), (c, a)):
                within &= (q[0] - p[0]) * (y[part] - p[1]) - (q[1] - p[1]) * (x[part] - p[0]) >= -1e-12
            values = a[2] + plane[0] * (x[part] - a[0]) + plane[1] * (y[part] - a[1])
            height[part] = np.where(within, values, height[part])
        assert not np.isnan(height[inside]).any()
        return Grid(x, y, height, inside, steepest, cell)

    def flooded(self, outlets: Bools) -> Floats:
        """The level at every cell: least over all ways to an outlet of the highest cell on the way."""
        level = np.where(self.inside, np.inf, np.nan)
        heap: list[tuple[float, int, int]] = []
        for row, column in zip(*np.nonzero(outlets & self.inside)):
            level[row, column] = self.height[row, column]
            heap.append((float(self.height[row, column]), int(row), int(column)))
        heapq.heapify(heap)
        rows, columns = level.shape
        while heap:
            at, row, column = heapq.heappop(heap)
            for r in range(max(row - 1, 0), min(row + 2, rows)):
                for c in range(max(column - 1, 0), min(column + 2, columns)):
                    if level[r, c] == np.inf:
                        level[r, c] = max(at, self.height[r, c])
                        heapq.heappush(heap, (float(level[r, c]), r, c))
        return level


@dataclass
class Compared:
    """One slab by both ways: our ponds, and the water of the grid."""

    grid: Grid
    level: Floats
    off: float
    answer: overslab.survey.StandingWater

    @staticmethod
    def of(seed: int, cell: float) -> Compared:
        slab = Slab.of(seed)
        grid = Grid.of(slab, cell)
        outlets = np.zeros(grid.inside.shape, dtype=bool)
        for line in slab.open_lines():
            outlets |= shapely.dwithin(line, shapely.points(grid.x, grid.y), cell / np.sqrt(2) + 1e-9)
        answer = standing_water(
            survey=slab.survey, edges=slab.edges() or None, drains=slab.drain_rows() or None, shallowest=0.0, units="si"
        )
        return Compared(grid, grid.flooded(outlets), 2.0 * np.sqrt(2.0) * grid.slope * cell, answer)

    @property
    def depth(self) -> Floats:
        return np.where(self.grid.inside, self.level - self.grid.height, 0.0)

    @property
    def volume(self) -> float:
        return float(self.depth.sum()) * self.grid.cell**2

    def pond(self, n: int) -> Pond:
        table = self.answer.ponds
        level, depth, x, y = (float(table[name][n]) for name in ("level_m", "depth_mm", "deepest_x_m", "deepest_y_m"))
        return Pond(level, depth / 1000.0, int(y / self.grid.cell - 1e-9), int(x / self.grid.cell - 1e-9))

    def level_at(self, pond: Pond) -> float:
        """The level of the grid's water round the deepest place of a pond."""
        near = np.s_[max(pond.row - 1, 0) : pond.row + 2, max(pond.column - 1, 0) : pond.column + 2]
        return float(self.level[near].flat[int(np.nanargmax(self.depth[near]))])


@dataclass
class Pond:
    """A pond of ours, with the cell of its deepest place."""

    level: float
    depth: float
    row: int
    column: int


@pytest.mark.parametrize("seed", SEEDS)
def test_every_level_agrees_and_no_pond_is_missed(seed: int) -> None:
    both = Compared.of(seed, CELL)
    ponds = [both.pond(n) for n in range(both.answer.count)]
    for pond in ponds:
        # A pond may be dry on the grid if it is no deeper than the error of a level.
        if pond.depth > 2.0 * both.off:
            assert abs(both.level_at(pond) - pond.level) <= both.off, pond
    # Whatever the grid has under water by more than that error stands at the level of one of our ponds.
    deep = np.unique(both.level[both.depth > 2.0 * both.off])
    assert all(min((abs(level - pond.level) for pond in ponds), default=np.inf) <= both.off for level in deep)
    wet = float((both.depth > 0.0).sum()) * CELL**2
    assert abs(both.volume - both.answer.volume_m3) <= both.off * max(wet, both.answer.area_m2) + 1e-9


@pytest.mark.parametrize("seed", SEEDS)
def test_areas_and_volumes_follow_from_the_level(seed: int) -> None:
    """A nanometre under the level of a pond, what of all triangles is lower and hangs together with the deepest place, by Shapely. At the
    level itself both sides of a saddle meet in a point, and Shapely, joining pieces on a grid of 1e-10 m, may take them for one. A nanometre
    of level moves the edge of water on a slope of 1 in 1000 by a micrometre, so over 10 m of edge an area by 1e-5 m2; a volume by
    1e-9 m times the area.
    """
    slab = Slab.of(seed)
    answer = standing_water(
        survey=slab.survey, edges=slab.edges() or None, drains=slab.drain_rows() or None, shallowest=0.0, units="si"
    )
    triangles = Triangles.of(slab.survey).corners
    for n in range(answer.count):
        row = {name: float(answer.ponds[name][n]) for name in ("level_m", "area_m2", "volume_m3", "depth_mm", "deepest_x_m", "deepest_y_m")}
        if row["depth_mm"] < 0.01:
            continue
        level = row["level_m"] - 1e-9
        pieces = [piece for piece in (below(triangle, level) for triangle in triangles) if len(piece) > 2]
        shapes = [Polygon(piece[:, :2]) for piece in pieces]
        joined = shapely.get_parts(shapely.union_all(shapes, grid_size=1e-10))
        deepest = shapely.Point(row["deepest_x_m"], row["deepest_y_m"])
        pond = min(joined, key=lambda part: part.distance(deepest))
        assert pond.distance(deepest) <= 1e-9
        mine = [piece for piece, shape in zip(pieces, shapes) if pond.contains(shape.representative_point())]
        assert abs(pond.area - row["area_m2"]) <= 1e-5
        volume = sum(prism(piece, level) for piece in mine)
        assert abs(volume - row["volume_m3"]) <= 2e-9 * row["area_m2"] + 1e-12


def below(triangle: Floats, level: float) -> Floats:
    """What of a triangle is below a level, as corners."""
    corners = []
    for a, b in zip(triangle, np.roll(triangle, -1, axis=0)):
        if a[2] < level:
            corners.append(a)
        if (a[2] < level) != (b[2] < level):
            corners.append(a + (level - a[2]) / (b[2] - a[2]) * (b - a))
    return np.array(corners)


def prism(piece: Floats, level: float) -> float:
    """The water over a convex piece."""
    first, pairs = piece[0], zip(piece[1:], piece[2:])
    return sum(
        0.5 * float((b[0] - first[0]) * (c[1] - first[1]) - (b[1] - first[1]) * (c[0] - first[0]))
        * (level - float(first[2] + b[2] + c[2]) / 3.0)
        for b, c in pairs
    )


def test_the_finer_the_grid_the_nearer_it_comes() -> None:
    """The error of the grid's water is of the order of its cells: with cells half as wide it is about half."""
    errors = {cell: 0.0 for cell in (2.0 * CELL, CELL)}
    for seed in SEEDS:
        for cell in errors:
            both = Compared.of(seed, cell)
            errors[cell] += abs(both.volume - both.answer.volume_m3)
    assert errors[CELL] <= 0.7 * errors[2.0 * CELL], errors
