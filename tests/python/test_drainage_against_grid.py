"""Drainage of random faceted finishes against drops of water that roll down it in small steps, by NumPy.

A drop looks up the facet under it, goes a short step straight down that facet's plane, and looks again. In a valley it goes to and fro over
the line and so drifts along it; at a wall it is put back onto the work; over an open edge it is gone; near a drain it is taken. No line, corner
or catchment is known to it.

Error. A drop is off its true way by no more than a step or two, across a valley or along a wall, until the way passes a ridge or a corner
nearer than that, where its end may be another's. So ends are compared for drops that start more than 5 cm from the edge of a catchment and that
end alike with steps of 5 and of 2 mm; a drain takes drops up to 3 steps beside it, so ways that pass it nearer than twice that are left out.
Ways are compared where those of starts 2 cm beside them, by our own account, stay together.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import numpy as np
import numpy.typing as npt
import pytest
import shapely
from shapely.geometry import LineString, Point, Polygon

import overslab
from overslab.grade import drainage, finish_from_facets
from overslab.survey import survey_from_shots

Floats = npt.NDArray[np.float64]

WIDE, DEEP = 9.0, 6.0
STEP = 0.005
"""Metres."""
TAKEN = 3.0
"""A drain takes drops within so many steps."""
REST = 2_000
"""A drop that is within three steps of where it was so many steps ago is at rest."""
MOST_STEPS = 100_000
SEEDS = range(10)
NEAR = 0.05


@dataclass
class Floor:
    """Three by two bays, each two triangles, inner corners moved; heights fall along a direction and stray."""

    corners: Floats
    triangles: npt.NDArray[np.int64]
    walled: list[bool]
    drain: int | None

    @staticmethod
    def of(seed: int) -> Floor:
        random = np.random.default_rng(seed)
        corners = []
        fall = random.uniform(-0.03, 0.03, 2)
        for row in range(3):
            for column in range(4):
                x = 3.0 * column + (random.uniform(-0.6, 0.6) if 0 < column < 3 else 0.0)
                y = 3.0 * row + (random.uniform(-0.6, 0.6) if row == 1 else 0.0)
                corners.append((x, y, 10.5 + fall[0] * x + fall[1] * y + random.uniform(0.0, 0.08)))
        triangles = []
        for row in range(2):
            for column in range(3):
                a = 4 * row + column
                b, c, d = a + 1, a + 5, a + 4
                triangles += [(a, b, c), (a, c, d)] if random.random() < 0.5 else [(a, b, d), (b, c, d)]
        walled = list(random.random(4) < 0.35)
        drain = 5 if random.random() < 0.5 else None
        return Floor(np.array(corners), np.array(triangles), [bool(w) for w in walled], drain)

    def answer(self, starts: Floats) -> Any:
        ring = [(0.0, 0.0), (WIDE, 0.0), (WIDE, DEEP), (0.0, DEEP)]
        outline = overslab.Outline.from_dict({"corners": [{"x": f"{x} m", "y": f"{y} m"} for x, y in ring]})
        x, y = np.array(ring).T
        survey = survey_from_shots(outline=outline, shots={"x": x, "y": y, "elevation": np.full(4, 10.0)}, units="si")
        names = [str(n + 1) for n in range(len(self.corners))]
        finish = finish_from_facets(
            corners={"name": names, "x": self.corners[:, 0], "y": self.corners[:, 1], "elevation": self.corners[:, 2]},
            facets={"corners": [", ".join(names[n] for n in triangle) for triangle in self.triangles]},
            units="si",
        )
        edges = [{"edge": f"side {n + 1}", "state": "walled"} for n, walled in enumerate(self.walled) if walled]
        drains = None if self.drain is None else [{"x": self.corners[self.drain, 0], "y": self.corners[self.drain, 1], "name": "gully"}]
        return drainage(
            survey=survey, finish=finish, edges=edges or None, drains=drains, starts={"x": starts[:, 0], "y": starts[:, 1]}, units="si"
        )

    def drained(self, way: Floats) -> bool:
        """Whether a way passes the drain so near that a drop on it may be taken."""
        if self.drain is None:
            return False
        line = LineString(way) if len(way) > 1 else Point(way[0])
        return bool(line.distance(Point(self.corners[self.drain, :2])) < 2.0 * TAKEN * STEP)

    def rolled(self, starts: Floats, length: float = STEP) -> tuple[list[str], list[Floats]]:
        """Where drops end, by name (`held` where they come to rest), and the places they passed."""
        corners = self.corners[self.triangles]
        a, b, c = corners[:, 0], corners[:, 1], corners[:, 2]
        slopes = np.array([np.linalg.solve((t[1:] - t[0])[:, :2], (t[1:] - t[0])[:, 2]) for t in corners])
        down = -slopes / np.linalg.norm(slopes, axis=1)[:, None]

        def facet(at: Floats) -> npt.NDArray[np.int64]:
            def left(p: Floats, q: Floats) -> Floats:
                edge = (q - p)[:, :2]
                return edge[None, :, 0] * (at[:, None, 1] - p[None, :, 1]) - edge[None, :, 1] * (at[:, None, 0] - p[None, :, 0])

            return np.asarray(np.argmax(np.minimum(np.minimum(left(a, b), left(b, c)), left(c, a)), axis=1))

        at, ends = starts.copy(), np.full(len(starts), "", dtype=object)
        ways = [[place] for place in starts]
        alive = np.arange(len(starts))
        last = at.copy()
        for step in range(MOST_STEPS):
            here = at[alive]
            moved = here + length * down[facet(here)]
            over = [moved[:, 1] < 0.0, moved[:, 0] > WIDE, moved[:, 1] > DEEP, moved[:, 0] < 0.0]
            for side, out in enumerate(over):
                if not self.walled[side]:
                    ends[alive[out & (ends[alive] == "")]] = f"side {side + 1}"
            # What leaves at a corner of the work goes to the edge that comes first in the outline.
            for first, second, x, y in ((0, 1, WIDE, 0.0), (1, 2, WIDE, DEEP), (2, 3, 0.0, DEEP), (0, 3, 0.0, 0.0)):
                if not self.walled[first]:
                    near = np.hypot(moved[:, 0] - x, moved[:, 1] - y) < 3.0 * length
                    ends[alive[near & (ends[alive] == f"side {second + 1}")]] = f"side {first + 1}"
            at[alive] = np.clip(moved, 0.0, [WIDE, DEEP])
            if self.drain is not None:
                gone = np.hypot(*(at[alive] - self.corners[self.drain, :2]).T) < TAKEN * length
                ends[alive[gone & (ends[alive] == "")]] = "gully"
            if step % 10 == 0:
                for n in alive:
                    ways[n].append(at[n].copy())
            if step % REST == REST - 1:
                rest = np.hypot(*(at[alive] - last[alive]).T) < 3.0 * length
                last[alive] = at[alive]
                ends[alive[rest & (ends[alive] == "")]] = "held"
            alive = alive[ends[alive] == ""]
            if len(alive) == 0:
                break
        assert len(alive) == 0, "drops still on their way"
        return [str(end) for end in ends], [np.array(way) for way in ways]


def lines(answer: Any, count: int) -> list[Floats]:
    """The ways of the starts that were given."""
    path = np.asarray(answer.path_places["path"])
    places = np.column_stack([np.asarray(answer.path_places[axis]) for axis in ("x_m", "y_m")])
    return [places[path == n + 1] for n in range(count)]


def catchments(answer: Any) -> dict[str, list[Polygon]]:
    """The polygons of each end, what holds water under one name."""
    corners, table = answer.catchment_corners, answer.catchments
    found: dict[str, list[Polygon]] = {}
    for part in np.unique(corners["part"]):
        rows = np.asarray(corners["part"]) == part
        rings = [
            np.column_stack([np.asarray(corners["x_m"])[rows & (np.asarray(corners["ring"]) == ring)],
                             np.asarray(corners["y_m"])[rows & (np.asarray(corners["ring"]) == ring)]])
            for ring in np.unique(np.asarray(corners["ring"])[rows])
        ]  # fmt: skip
        number = int(np.asarray(corners["catchment"])[rows][0]) - 1
        name = str(table["name"][number]) if str(table["end"][number]) in ("edge", "drain") else "held"
        found.setdefault(name, []).append(Polygon(rings[0], rings[1:]))
    return found


@pytest.mark.parametrize("seed", SEEDS)
def test_drops_end_in_the_catchment_they_start_in(seed: int) -> None:
    floor = Floor.of(seed)
    x, y = np.meshgrid(np.arange(0.15, WIDE, 0.3), np.arange(0.15, DEEP, 0.3))
    starts = np.column_stack([x.ravel(), y.ravel()])
    answer = floor.answer(starts)
    shapes = {name: shapely.union_all(parts) for name, parts in catchments(answer).items()}
    ends, _ = floor.rolled(starts)
    finer, _ = floor.rolled(starts, 0.4 * STEP)
    ways = lines(answer, len(starts))
    compared = 0
    for start, end, fine, way in zip(starts, ends, finer, ways):
        inside = [name for name, shape in shapes.items() if shape.buffer(-NEAR).contains(Point(start))]
        if inside and end == fine and not (inside != ["gully"] and floor.drained(way)):
            compared += 1
            assert inside == [end], (start, inside, end)
    assert compared > 0.6 * len(starts)
    # Areas: what of the drops ends where, within the strips along the edges of catchments.
    for name, shape in shapes.items():
        share = sum(end == name for end in ends) / len(ends)
        along = shape.intersection(Polygon([(0, 0), (WIDE, 0), (WIDE, DEEP), (0, DEEP)]).buffer(-1e-6)).boundary.length
        assert abs(share * WIDE * DEEP - shape.area) <= 0.15 * along + 1e-9


@pytest.mark.parametrize("seed", SEEDS)
def test_ways_run_where_drops_roll(seed: int) -> None:
    floor = Floor.of(seed)
    random = np.random.default_rng(1000 + seed)
    places = random.uniform([0.3, 0.3], [WIDE - 0.3, DEEP - 0.3], (30, 2))
    beside = np.array([[0.0, 0.0], [0.02, 0.0], [-0.02, 0.0], [0.0, 0.02], [0.0, -0.02]])
    starts = (places[:, None, :] + beside[None]).reshape(-1, 2)
    answer = floor.answer(starts)
    found = lines(answer, len(starts))
    _, ways = floor.rolled(places)
    compared = 0
    for n, way in enumerate(ways):
        five = [LineString(line) for line in found[5 * n : 5 * n + 5] if len(line) > 1]
        if len(five) < 5 or max(five[0].hausdorff_distance(other) for other in five[1:]) > NEAR:
            continue
        compared += 1
        rolled = LineString(way)
        # Both ways: no drop leaves the line, and no part of the line is left out but its last step.
        assert max(five[0].distance(Point(place)) for place in way) <= NEAR
        assert max(rolled.distance(Point(place)) for place in found[5 * n]) <= NEAR + 10 * STEP
        assert float(np.asarray(answer.paths["drop_mm"])[5 * n]) >= 0.0
    assert compared >= 15
