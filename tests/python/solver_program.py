"""The program of a floor, asked of HiGHS: the least concrete, what must give way, and how a finish of the engine stands in it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import numpy as np
from scipy.linalg import null_space
from scipy.optimize import linprog

from overslab.grade import finish_facets
from solver_jobs import OF_HEIGHT, SENSE, Demand, Floor
from solver_rows import Plan, Rows, is_exact, together
from surface_jobs import Floats

ROUNDS = 300
# A cone broken by less than this, in metres over the work, is kept: HiGHS holds its planes to 1e-10.
CLOSE = 1.5e-10
TIGHT = {"primal_feasibility_tolerance": 1e-10, "dual_feasibility_tolerance": 1e-10}


@dataclass
class Optimum:
    """What HiGHS answers, and how much of it is the only answer."""

    value: float
    u: Floats
    marginals: Floats
    unique: bool
    priced: bool


class Program(Plan):
    """The program."""

    def all_rows(self, demands: list[Demand], margin: float = 0.0) -> list[Rows]:
        """First that the floor is nowhere below the old slab, then the rows of each demand."""
        return [self.thick(None), *(self.rows(demand, margin) for demand in demands)]

    def least(self, parts: list[Rows], cost: Floats | None = None) -> Optimum | None:
        """The least cost; none where nothing holds it."""
        rows = together(parts)
        cost = self.cost if cost is None else cost
        found = linprog(
            cost, A_ub=-rows.a, b_ub=-rows.b, A_eq=self.meeting, b_eq=np.zeros(len(self.meeting)), bounds=(None, None), method="highs",
            options=TIGHT,
        )
        if found.status in (3, 4):
            return None
        assert found.status == 0, found.message
        marginals = -found.ineqlin.marginals
        # Only what the meeting leaves free counts; places that facets share are one row then.
        free = null_space(self.meeting) if len(self.meeting) else np.eye(self.width)
        count, tied = free.shape[1], rows.a @ found.x - rows.b < 1e-8
        unique = np.linalg.matrix_rank(rows.a[marginals > 1e-7 * np.abs(cost).max()] @ free, 1e-7) == count
        own = np.repeat(np.arange(len(parts)), [len(part.b) for part in parts])
        active = np.unique(np.c_[own, rows.a @ free][tied].round(9), axis=0)
        priced = len(active) == count and unique
        return Optimum(float(found.fun) + self.constant, found.x, marginals, bool(unique), bool(priced))

    def least_with_cones(self, demands: list[Demand], margin: float = 0.0, cost: Floats | None = None) -> Optimum | None:
        """The least cost where steepest falls are cones: planes that touch them are added where the answer breaks them."""
        parts = self.all_rows(demands, margin)
        for _ in range(ROUNDS):
            found = self.least(parts, cost)
            more = [] if found is None else self.touching(demands, found.u)
            if not more:
                return found
            parts += more
        raise AssertionError("cones that do not end")

    def touching(self, demands: list[Demand], u: Floats, room: float = 0.0) -> list[Rows]:
        """The planes that touch the cones where a floor breaks them by more than a room."""
        found = []
        for demand in demands:
            touched = []
            for facet in self.facets_of(demand) if demand.kind == "steepest" else []:
                rise = u[3 * facet + 1 : 3 * facet + 3]
                if np.hypot(*rise) > self.size * demand.figure + room + CLOSE:
                    touched.append((facet, float(np.arctan2(rise[1], rise[0]))))
            if touched:
                found.append(self.cone(demand, touched))
        return found

    def broken(self, demands: list[Demand], margin: float = 0.0) -> float:
        """By how many metres the rows must give way, all alike, until all can be kept; less than none where there is room. Rows that
        hold something exactly have no room: where they can be kept, they are, and the others tell the room."""
        giving = self.least_giving(demands, margin, [False] * (1 + len(demands)))
        firm = [False, *(is_exact(demand) for demand in demands)]
        if giving > 1e-9 or not any(firm):
            return giving
        room = self.least_giving(demands, margin, firm)
        return 0.0 if np.isnan(room) else room

    def least_giving(self, demands: list[Demand], margin: float, firm: list[bool]) -> float:
        """The least amount by which rows give way, but for the firm ones; nan where that does not help."""
        parts = self.all_rows(demands, margin)
        firm = list(firm)
        for _ in range(ROUNDS):
            rows = together(parts)
            by = np.repeat(np.where(firm, 0.0, 1.0), [len(part.b) for part in parts])[:, None]
            found = self.give(rows.a, rows.b, by, np.ones(1), -1.0)
            if np.isnan(found[-1]):
                return float("nan")
            more = self.touching(demands, found[:-1], float(found[-1]))
            if not more:
                return float(found[-1])
            parts, firm = parts + more, firm + [False] * len(more)
        raise AssertionError("cones that do not end")

    def give(self, a: Floats, b: Floats, by: Floats, cost: Floats, least: float = 0.0, most: Floats | None = None) -> Floats:
        """The unknowns, then the amounts of least cost by which rows give way; nan where they cannot."""
        count = by.shape[1]
        bounds = [(None, None)] * self.width + [(least, None if most is None or np.isinf(most[n]) else most[n]) for n in range(count)]
        found = linprog(
            np.r_[np.zeros(self.width), cost], A_ub=-np.c_[a, by], b_ub=-b, A_eq=np.c_[self.meeting, np.zeros((len(self.meeting), count))],
            b_eq=np.zeros(len(self.meeting)), bounds=bounds, method="highs", options=TIGHT,
        )
        if found.status == 2:
            return np.full(self.width + count, np.nan)
        assert found.status == 0, found.message
        return found.x

    def relaxed(self, demands: list[Demand], parts: list[Rows], giving: list[int], cost: Floats) -> Floats:
        """The amounts by which some of the demands give way; `parts` are the rows of `all_rows`."""
        rows = together(parts)
        by = np.zeros((len(rows.b), len(giving)))
        ends = np.cumsum([len(part.b) for part in parts])
        for column, number in enumerate(giving):
            own = slice(ends[number], ends[number + 1])
            by[own, column] = np.abs(rows.share[own])
        room = [np.inf if demands[n].kind in OF_HEIGHT or SENSE[demands[n].kind] < 0.0 else demands[n].figure for n in giving]
        return self.give(rows.a, rows.b, by, cost, 0.0, np.array(room))[self.width :]


def finish_corners(made: Floor, finish: Any) -> tuple[list[str], Floats]:
    """The corners of a finish with their facets: of one plane those of the work."""
    if not made.facets:
        z = finish.elevation_m + made.ring @ [finish.rise_x_percent / 100.0, finish.rise_y_percent / 100.0]
        return ["floor"] * 4, np.c_[made.ring, z]
    listed = finish_facets(finish=finish, units="si").corners
    return list(listed["facet"]), np.c_[listed["x_m"], listed["y_m"], listed["elevation_m"]].astype(float)


def unknowns(program: Program, finish: Any) -> Floats:
    """A finish in the unknowns of the program."""
    names, corners = finish_corners(program.made, finish)
    u = np.zeros(program.width)
    for facet, name in enumerate(program.names):
        own = corners[np.array(names) == name]
        own_rows = program.row(facet, own[:, :2])[:, 3 * facet : 3 * facet + 3]
        u[3 * facet : 3 * facet + 3] = np.linalg.lstsq(own_rows, own[:, 2] - program.datum, rcond=None)[0]
    return u


def slack(program: Program, demands: list[Demand], margin: float, u: Floats) -> float:
    """How far a floor is from breaking a demand, in metres over the work."""
    parts = program.all_rows(demands, margin)
    flat = [float((part.a @ u - part.b).min()) for part in parts]
    for demand in demands:
        if demand.kind == "steepest":
            rises = u.reshape(-1, 3)[program.facets_of(demand), 1:]
            flat.append(program.size * demand.figure - float(np.hypot(*rises.T).max()))
    return min(flat)
