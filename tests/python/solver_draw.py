"""Demands drawn about a floor that is drawn first, so that most of them can be kept."""

from __future__ import annotations

from dataclasses import replace

import numpy as np

from solver_jobs import COLUMN, OF_FALL, OF_HEIGHT, SENSE, Demand, Floor, draft, place_in
from solver_program import Program


def drawn_demands(made: Floor, program: Program, random: np.random.Generator, contrary: float = 0.0, kinds: int = 5) -> list[Demand]:
    """A least thickness and more, with room for a floor that was drawn first; some of them with less than none."""
    drawn = program.least([program.thick(None)], program.cost + random.uniform(0.0, 0.05, program.width))
    u = drawn.u.copy() if drawn is not None else np.zeros(program.width)
    u[::3] += random.uniform(0.05, 0.1)
    chosen = ["least_thickness", *random.choice(list(COLUMN), int(random.integers(2, kinds + 1)))]
    demands = []
    for number, kind in enumerate(chosen):
        name = f"{kind.replace('_', ' ')} {number}"
        demand = draft(made, random, name, str(kind)) if number else Demand(name, str(kind), 0.0)
        room = random.uniform(0.0, 0.006 if kind in OF_FALL else 0.03)
        if random.random() < contrary:
            room = -room
        if kind == "exactly":
            # One place; further ones would fix the floor.
            demand = Demand(name, kind, 0.0, places=(place_in(made, random),))
            at = np.array(demand.places[0])
            figure = float(program.floor_at(u, program.facet_at(at), at)[0]) + (room if contrary else 0.0)
        else:
            figure = SENSE[demand.kind] * (program.rows(demand).tightest(u) - room)
            figure = figure if demand.kind in OF_HEIGHT else max(figure, 0.0)
        demands.append(replace(demand, figure=figure, weight=float(random.uniform(0.5, 3.0))))
    return demands
