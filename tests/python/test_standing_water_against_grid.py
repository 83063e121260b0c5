"""Standing water against a flood on a fine grid, over random slabs with walls, holes and drains.

The grid is flooded by brute force: cells of 2 cm, each as high as the slab at its middle, eight neighbours, the outlets first, the lowest
cell next (a heap). No triangle is known to the flood: heights are looked up for every cell, and which cells are inside is all it knows of
the outline. All corners of the outline lie on the grid's lines, so that cells tile the work.

Error of the grid. A way of water over the slab passes cells whose middles are at most h / sqrt 2 beside it, and the straight step from one
middle to the next is at most h sqrt 2 long; with g the steepest slope of the slab a level of the grid is therefore off by no more than
g h sqrt 2 at a saddle, and as much again at an outlet, whose cells lie along the open edge or hold the drain. A level is asked to agree
within 2 sqrt 2 g h. A volume is the sum over cells of depth at the middle, which is exact but for cells that a triangle's side or the water's
edge crosses; with the level of the grid it is off by no more than the error of the level times the area under either of both waters.
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

    @staticmethod
    def of(slab: Slab) -> Grid:
        low_x, low_y, high_x, high_y = slab.outline.bounds
        x, y = np.meshgrid(np.arange(low_x + CELL / 2, high_x, CELL), np.arange(low_y + CELL / 2, high_y, CELL))
        inside = shapely.contains_xy(slab.outline, x, y)
        corners = Triangles.of(slab.survey).corners
        height, steepest = np.full(x.shape, np.nan), 0.0
        for triangle in corners:
            a, b, c = triangle
            plane = np.linalg.solve(np.array([b - a, c - a])[:, :2], np.array([b[2] - a[2], c[2] - a[2]]))
            steepest = max(steepest, float(np.hypot(*plane)))
            left, right = (np.clip(np.array([f(triangle[:, 0]) for f in (np.min, np.max)]) / CELL + [-1, 2], 0, x.shape[1])).astype(int)
            front, back = (np.clip(np.array([f(triangle[:, 1]) for f in (np.min, np.max)]) / CELL + [-1, 2], 0, x.shape[0])).astype(int)
            part = np.s_[front:back, left:right]
            within = np.ones(x[part].shape, dtype=bool)
            for p, q in ((a, b), (b, c), (c, a)):
                within &= (q[0] - p[0]) * (y[part] - p[1]) - (q[1] - p[1]) * (x[part] - p[0]) >= -1e-12
            values = a[2] + plane[0] * (x[part] - a[0]) + plane[1] * (y[part] - a[1])
            height[part] = np.where(within, values, height[part])
        assert not np.isnan(height[inside]).any()
        return Grid(x, y, height, inside, steepest)

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


@pytest.mark.parametrize("seed", range(24))
def test_ponds_agree_with_a_flood_on_a_fine_grid(seed: int) -> None:
    slab = Slab.of(seed)
    grid = Grid.of(slab)
    outlets = np.zeros(grid.inside.shape, dtype=bool)
    for line in slab.open_lines():
        outlets |= shapely.dwithin(line, shapely.points(grid.x, grid.y), CELL / np.sqrt(2) + 1e-9)
    level = grid.flooded(outlets)
    off = 2.0 * np.sqrt(2.0) * grid.slope * CELL
    answer = standing_water(
        survey=slab.survey, edges=slab.edges() or None, drains=slab.drain_rows() or None, shallowest=0.0, units="si"
    )
    ponds = answer.ponds
    depth = np.where(grid.inside, level - grid.height, 0.0)
    covered = np.zeros(depth.shape, dtype=bool)
    for n in range(answer.count):
        at = (int(ponds["deepest_y_m"][n] / CELL - 1e-9), int(ponds["deepest_x_m"][n] / CELL - 1e-9))
        near = np.s_[max(at[0] - 1, 0) : at[0] + 2, max(at[1] - 1, 0) : at[1] + 2]
        ours = float(ponds["level_m"][n])
        # The cells round the deepest place stand at the level of the pond, if they are not dry by the error of the grid.
        if float(ponds["depth_mm"][n]) / 1000.0 > 2.0 * off:
            assert abs(np.nanmin(level[near]) - ours) <= off, f"pond {n}"
        wet = under_water(grid, at, ours)
        covered |= wet
        # With our own level the sum over the cells is the volume but for the cells that an edge crosses.
        rim = 4.0 * np.sqrt(wet.sum()) * CELL
        volume = float((ours - grid.height[wet]).sum()) * CELL**2
        assert abs(volume - float(ponds["volume_m3"][n])) <= 0.01 * volume + rim * CELL * grid.slope * CELL + 1e-7, f"pond {n}"
        assert abs(wet.sum() * CELL**2 - float(ponds["area_m2"][n])) <= 0.02 * float(ponds["area_m2"][n]) + 2.0 * rim * CELL, f"pond {n}"
    # Every cell that the grid has deeper under water than its error is in one of our ponds, and all its water is ours but for that error.
    assert not ((depth > 2.0 * off) & ~covered).any()
    wet_area = float(((depth > 0.0) | covered).sum()) * CELL**2
    assert abs(float(depth.sum()) * CELL**2 - answer.volume_m3) <= off * wet_area + 1e-9


def under_water(grid: Grid, at: tuple[int, int], level: float) -> Bools:
    """The cells below a level that hang together with one."""
    below = grid.inside & (grid.height < level)
    wet = np.zeros(below.shape, dtype=bool)
    rows, columns = below.shape
    near = ((r, c) for r in range(at[0] - 2, at[0] + 3) for c in range(at[1] - 2, at[1] + 3))
    pending = [(r, c) for r, c in near if 0 <= r < rows and 0 <= c < columns and below[r, c]][:1]
    for cell in pending:
        wet[cell] = True
    while pending:
        row, column = pending.pop()
        for r in range(max(row - 1, 0), min(row + 2, rows)):
            for c in range(max(column - 1, 0), min(column + 2, columns)):
                if below[r, c] and not wet[r, c]:
                    wet[r, c] = True
                    pending.append((r, c))
    return wet
