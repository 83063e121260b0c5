"""Random floors with random demands, the same in every run: what the solver is asked, as a person would draw it.

All in metres and plain falls. A floor has a work of four edges, an old slab, and facets in plan: one plane, two to a valley, four to a
drain, or facets drawn about a hub.
"""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from typing import Any

import numpy as np
from shapely.geometry import Polygon

import overslab
from overslab.grade import finish_from_facets
from overslab.survey import survey_from_shots
from surface_jobs import APART, Floats, Triangles, heights, scattered, turned

EDGES = ["front", "right", "back", "left"]
PATTERNS = ["plane", "valley", "drain", "drawn"]

# Which column the figure of a demand stands in, and what turns metres and falls into its units.
COLUMN = {
    "least_thickness": ("thickness", 1000.0), "greatest_thickness": ("thickness", 1000.0), "least_fall": ("fall", 100.0),
    "greatest_fall": ("fall", 100.0), "steepest": ("fall", 100.0), "cross_fall": ("fall", 100.0), "level": ("tolerance", 1000.0),
    "at_most": ("elevation", 1.0), "at_least": ("elevation", 1.0), "exactly": ("elevation", 1.0),
}
OF_FALL = {kind for kind, (column, _) in COLUMN.items() if column == "fall"}
OF_HEIGHT = {"at_most", "at_least", "exactly"}
# 1 where a greater figure is the tighter one.
SENSE = {kind: 1.0 if kind in ("least_thickness", "least_fall", "at_least", "exactly") else -1.0 for kind in COLUMN}


@dataclass(frozen=True)
class Demand:
    """One demand: its figure in metres or as a fall; its line is an edge, or one or two places."""

    name: str
    kind: str
    figure: float
    edge: str | None = None
    places: tuple[tuple[float, float], ...] = ()
    facet: str | None = None
    zone: str | None = None
    weight: float = 1.0

    def moved(self, tighter: float) -> Demand:
        """The same tightened by so much."""
        return replace(self, figure=self.figure + SENSE[self.kind] * tighter)


def table(demands: list[Demand]) -> dict[str, list[Any]]:
    """The demands as the engine takes them."""
    columns: dict[str, list[Any]] = {
        "name": [d.name for d in demands], "kind": [d.kind for d in demands], "edge": [d.edge for d in demands],
        "facet": [d.facet for d in demands], "zone": [d.zone for d in demands], "weight": [d.weight for d in demands],
    }
    for column in ["thickness", "fall", "tolerance", "elevation"]:
        columns[column] = [COLUMN[d.kind][1] * d.figure if COLUMN[d.kind][0] == column else None for d in demands]
    for number, name in enumerate(["", "_to"]):
        for axis, letter in enumerate("xy"):
            columns[letter + name] = [d.places[number][axis] if len(d.places) > number else None for d in demands]
    return columns


@dataclass
class Floor:
    """An old slab in its work, and the facets in plan over it: rings of places, none for one plane."""

    seed: int
    outline: Polygon
    survey: overslab.Survey
    triangles: Triangles
    pattern: str
    facets: dict[str, Floats] = field(default_factory=dict)
    layout: overslab.Finish | None = None
    drain: Floats | None = None
    valley: Floats | None = None
    zones: dict[str, Floats] = field(default_factory=dict)

    @property
    def ring(self) -> Floats:
        """The corners of the work."""
        return np.array(self.outline.exterior.coords[:-1])

    def edge(self, name: str) -> tuple[Floats, Floats]:
        """The ends of an edge."""
        ring, number = self.ring, EDGES.index(name)
        return ring[number], ring[(number + 1) % 4]

    def asked(self, demands: list[Demand], margin: float = 0.0, **more: Any) -> dict[str, Any]:
        """The arguments of the engine."""
        asked: dict[str, Any] = {"survey": self.survey, "demands": table(demands), "margin": 1000.0 * margin, "units": "si", **more}
        if self.layout is not None:
            asked["layout"] = self.layout
        used = [name for name in self.zones if any(d.zone == name for d in demands)]
        if used:
            rows = [(name, x, y) for name in used for x, y in self.zones[name]]
            asked["zones"] = {"zone": [row[0] for row in rows], "x": [row[1] for row in rows], "y": [row[2] for row in rows]}
        return asked


def quad(random: np.random.Generator) -> Polygon:
    """A work of four corners, counter-clockwise from the front left one: a rectangle pulled askew, lying any way."""
    wide, deep = random.uniform(4.0, 10.0, 2)
    ring = np.array([[0.0, 0.0], [wide, 0.0], [wide, deep], [0.0, deep]])
    if random.random() < 0.5:
        ring += random.uniform(-0.12, 0.12, (4, 2)) * min(wide, deep)
    return Polygon(turned(ring, random.uniform(0.0, 6.3), random.uniform(-20.0, 20.0, 2)))


def outline_of(outline: Polygon) -> overslab.Outline:
    """The outline with the names of its edges."""
    corners = [{"x": f"{float(x)!r} m", "y": f"{float(y)!r} m"} for x, y in outline.exterior.coords[:-1]]
    return overslab.Outline.from_dict({"corners": corners, "edges": EDGES})


def floor(seed: int, pattern: str = "plane", corners_shot: bool | None = None, shots: int = 12) -> Floor:
    """A random floor."""
    random = np.random.default_rng(300_000 + seed)
    outline = quad(random)
    if corners_shot is None:
        corners_shot = bool(random.integers(0, 2))
    given = np.array(outline.exterior.coords[:-1]) if corners_shot else np.zeros((0, 2))
    xy = scattered(random, outline, shots, given)
    survey = survey_from_shots(
        outline=outline_of(outline), shots={"x": xy[:, 0], "y": xy[:, 1], "elevation": heights(random, xy)},
        beyond_allowed="yes", units="si",
    )
    made = Floor(seed, outline, survey, Triangles.of(survey), pattern)
    draw_facets(made, random)
    draw_zones(made, random)
    return made


def draw_facets(made: Floor, random: np.random.Generator) -> None:
    """Lays the facets of its pattern over the work, shared corners and all."""
    ring = made.ring
    middle = ring.mean(axis=0)
    hub = middle + random.uniform(-0.15, 0.15, 2) * (ring[2] - ring[0])
    if made.pattern == "valley":
        starts = [ring[n] + random.uniform(0.3, 0.7) * (ring[n + 1] - ring[n]) for n in (0, 2)]
        along = (starts[1] - starts[0]) / np.linalg.norm(starts[1] - starts[0])
        made.valley = np.array([starts[0], starts[1]])
        # Drawn well past the work on all sides.
        start, end = starts[0] - 30.0 * along, starts[1] + 30.0 * along
        aside = 40.0 * np.array([-along[1], along[0]])
        corners = [start, end, end + aside, start + aside, start - aside, end - aside]
        drawn = {"left side": [0, 1, 2, 3], "right side": [4, 5, 1, 0]}
    elif made.pattern == "drain":
        made.drain = hub
        corners = [hub, *ring]
        drawn = {name: [1 + n, 1 + (n + 1) % 4, 0] for n, name in enumerate(EDGES)}
    elif made.pattern == "drawn":
        count = int(random.integers(3, 6))
        angles = 2.0 * np.pi * (np.arange(count) + random.uniform(-0.2, 0.2, count)) / count
        corners = [hub, *(hub + 40.0 * np.c_[np.cos(angles), np.sin(angles)])]
        drawn = {f"part {n + 1}": [1 + n, 1 + (n + 1) % count, 0] for n in range(count)}
    else:
        return
    places = np.array(corners)
    made.facets = {name: places[numbers] for name, numbers in drawn.items()}
    made.layout = finish_from_facets(
        corners={"x": places[:, 0], "y": places[:, 1], "elevation": np.full(len(places), 30.0)},
        facets={"name": list(drawn), "corners": [", ".join(str(n + 1) for n in numbers) for numbers in drawn.values()]},
        units="si",
    )


def draw_zones(made: Floor, random: np.random.Generator) -> None:
    """Two zones inside the work: triangles about places in it."""
    middle, ring = made.ring.mean(axis=0), made.ring
    for number in range(2):
        first = int(random.integers(0, 4))
        shares = random.uniform(0.3, 0.9, 3)
        corners = [middle + share * (ring[(first + n) % 4] - middle) for n, share in enumerate(shares)]
        if Polygon(corners).exterior.is_ccw and Polygon(corners).area > 0.5:
            made.zones[f"zone {number}"] = np.array(corners)


def place_in(made: Floor, random: np.random.Generator) -> tuple[float, float]:
    """A place in the work."""
    weights = random.dirichlet(np.ones(4))
    x, y = (1.0 - APART) * (weights @ made.ring) + APART * made.ring.mean(axis=0)
    return float(x), float(y)


def draft(made: Floor, random: np.random.Generator, name: str, kind: str) -> Demand:
    """A demand of a kind, its figure yet to be found."""
    edge = EDGES[int(random.integers(0, 4))]
    facet = list(made.facets)[int(random.integers(0, len(made.facets)))] if made.facets and random.random() < 0.6 else None
    if kind in ("least_thickness", "greatest_thickness"):
        zone = list(made.zones)[0] if made.zones and random.random() < 0.4 else None
        return Demand(name, kind, 0.0, zone=zone)
    if kind in ("least_fall", "greatest_fall"):
        if made.drain is not None:
            return Demand(name, kind, 0.0, places=((float(made.drain[0]), float(made.drain[1])),))
        if made.valley is not None:
            return Demand(name, kind, 0.0, places=tuple((float(x), float(y)) for x, y in made.valley))
        return Demand(name, kind, 0.0, edge=edge, facet=facet)
    if kind == "steepest":
        return Demand(name, kind, 0.0, facet=facet)
    facet = facet if kind == "cross_fall" else None
    if random.random() < 0.5:
        return Demand(name, kind, 0.0, edge=edge, facet=facet)
    places = (place_in(made, random),) if kind in OF_HEIGHT and random.random() < 0.5 else (place_in(made, random), place_in(made, random))
    return Demand(name, kind, 0.0, places=places, facet=facet)
