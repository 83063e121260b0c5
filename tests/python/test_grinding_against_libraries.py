"""Grinding at a price and falls in any direction, where the finish of least concrete is no linear program.

Grinding: SciPy's SLSQP (Kraft 1988) on the exact cost, which NumPy integrates over the triangles in closed form. It comes to within 1e-7 of
the least cost, from either side. Prices change along the way here: those told are held to 1 % as far as they say.
"""

from __future__ import annotations

import functools
from typing import Any

import numpy as np
import pytest
from scipy.linalg import null_space
from scipy.optimize import minimize

from overslab.grade import finish_solved
from solver_draw import drawn_demands
from solver_grinding import Ground
from solver_jobs import OF_FALL, OF_HEIGHT, PATTERNS, Demand, Floor, floor
from solver_program import Program, slack, unknowns
from solver_rows import Rows, together

KEPT, RELATIVE = 1e-8, 1e-9
STEP = {True: 0.001, False: 0.00635}
CONCRETE = 200.0

Job = tuple[Floor, Program, list[Demand], float, float, float]


@functools.cache
def job(seed: int, cones: bool = False) -> Job:
    """A floor, demands, a margin, how deep may be ground, and the price of a ground volume over that of concrete; some have none."""
    random = np.random.default_rng(700_000 + seed)
    facets = seed % 4 > 0
    made = floor(seed, PATTERNS[seed % 4], corners_shot=True if facets else None, shots=16 if facets else 12)
    program = Program(made)
    while True:
        demands = drawn_demands(made, program, random, 0.0, 3)
        if any(demand.kind == "steepest" for demand in demands) == cones and program.broken(demands, 0.005) < -1e-7:
            break
    price = float(random.uniform(0.2, 6.0)) if seed % 3 else 0.0
    return made, program, demands, 0.005, float(random.uniform(0.003, 0.02)), price


def solved(job: Job, demands: list[Demand]) -> Any:
    """What the engine says of it."""
    made, _, _, margin, deep, price = job
    prices = {"concrete_price": CONCRETE, "grinding_price": CONCRETE * price} if price else {}
    return finish_solved(**made.asked(demands, margin), set_out="no", grind_at_most=1000.0 * deep, **prices)


def with_leave_to_grind(job: Job) -> tuple[Ground, Rows]:
    """The exact cost, and the rows, those of least thickness over the whole work loosened by what may be ground."""
    _, program, demands, margin, deep, price = job
    whole = [demand.kind == "least_thickness" and demand.zone is None for demand in demands]
    least = max(demand.figure for demand, is_whole in zip(demands, whole) if is_whole) + margin
    rows = [program.rows(demand, margin) for demand in demands]
    rows = [Rows(part.a, part.b - deep, part.share) if is_whole else part for part, is_whole in zip(rows, whole)]
    return Ground(program, least, price), together(rows)


def least_by_slsqp(program: Program, ground: Ground, rows: Rows) -> float:
    """The least cost as SLSQP finds it, begun at the least volume between the surfaces."""
    start = program.least([rows])
    assert start is not None
    free = null_space(program.meeting) if len(program.meeting) else np.eye(program.width)
    y, a, unit = free.T @ start.u, rows.a @ free, ground.areas.sum() / 100.0
    for _ in range(3):
        y = minimize(
            lambda y: ground.cost(free @ y) / unit, y, jac=lambda y: free.T @ ground.slope(free @ y) / unit, method="SLSQP",
            constraints=[{"type": "ineq", "fun": lambda y: a @ y - rows.b, "jac": lambda y: a}], options={"ftol": 1e-16, "maxiter": 1000},
        ).x
    assert (a @ y - rows.b).min() > -KEPT
    return ground.cost(free @ y)


@pytest.mark.parametrize("seed", range(28))
def test_grinding_costs_the_least(seed: int) -> None:
    made, program, demands, margin, deep, price = job(seed)
    ground, rows = with_leave_to_grind(job(seed))
    answer = solved(job(seed), demands)
    u = unknowns(program, answer.planned)
    concrete, off = ground.volumes(u)
    assert abs(answer.planned_concrete_m3 - concrete) <= RELATIVE * concrete
    assert abs(answer.ground_m3 - off) <= RELATIVE * concrete
    if price:
        assert abs(answer.planned_cost_money - CONCRETE * (concrete + price * off)) <= RELATIVE * CONCRETE * concrete
    assert (rows.a @ u - rows.b).min() > -KEPT
    assert answer.gap_ratio < 1e-8
    cost, wanted = concrete + price * off, least_by_slsqp(program, ground, rows)
    assert abs(cost - wanted) <= 1e-7 * wanted, (cost, wanted)
    assert answer.bound_m3 <= wanted + RELATIVE * wanted


@pytest.mark.parametrize("cones", [False, True])
@pytest.mark.parametrize("seed", range(8))
def test_prices_along_a_curve_hold_as_far_as_told(seed: int, cones: bool) -> None:
    one = job(seed, cones)
    _, program, demands, margin, _, price = one
    if cones:
        one = (*one[:4], 0.0, 0.0)

    def cost(list_of: list[Demand]) -> float:
        if not cones:
            answer = solved(one, list_of)
            return float(answer.planned_concrete_m3 + price * answer.ground_m3)
        found = program.least_with_cones(list_of, margin)
        return np.nan if found is None else found.value

    answer = finish_solved(**one[0].asked(demands, margin), set_out="no") if cones else solved(one, demands)
    now = cost(demands)
    for number, demand in enumerate(demands):
        of_fall = demand.kind in OF_FALL
        column, unit = ("holds_fall_percent", 100.0) if of_fall else ("holds_mm", 1000.0)
        for sign, side in [(1.0, "tighter"), (-1.0, "looser")]:
            told = float(answer.kept[f"{side}_cost_m3"][number]) / STEP[of_fall]
            holds = float(answer.kept[f"{side}_{column}"][number]) / unit
            if np.isnan(told):
                continue
            for share in (0.3, 0.999):
                by = share * min(0.05 if np.isnan(holds) else holds, 0.05)
                moved = demand.moved(sign * by)
                if moved.figure < 0.0 and demand.kind not in OF_HEIGHT:
                    continue
                again = cost([*demands[:number], moved, *demands[number + 1 :]])
                assert abs(again - now - told * by) <= 0.0101 * abs(told) * by + 3e-8 * now, (demand, side, by, again, now, told)


@pytest.mark.parametrize("seed", range(12))
def test_the_slack_of_a_cone_is_to_its_steepest_fall(seed: int) -> None:
    made, program, demands, margin, _, _ = job(seed, True)
    answer = finish_solved(**made.asked(demands, margin), set_out="no")
    u = unknowns(program, answer.planned)
    assert slack(program, demands, margin, u) > -KEPT
    for number, demand in enumerate(demands):
        if demand.kind == "steepest":
            rises = u.reshape(-1, 3)[program.facets_of(demand), 1:] / program.size
            wanted = demand.figure - float(np.hypot(*rises.T).max())
            assert abs(answer.kept["slack_fall_percent"][number] / 100.0 - wanted) < 1e-7
