"""The finish in whole steps, against every whole step, and against the demands worked out by NumPy.

Steps are 1/8 in from the datum and 1/16 in per ft, or a half, a quarter, an eighth of both where the solver says that it took those.
"""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import numpy as np
import pytest

from overslab import GradeError
from overslab.grade import finish_solved
from solver_draw import drawn_demands
from solver_jobs import OF_FALL, PATTERNS, Demand, Floor, floor
from solver_program import Program, slack, unknowns
from solver_rows import together
from surface_jobs import Floats

HEIGHT, FALL, DATUM = 0.003175, 1.0 / 192.0, 29.87
KEPT, WHOLE = 1e-8, 1e-5


def inward(made: Floor, edge: str) -> tuple[Floats, Floats]:
    """The start of an edge and the direction square to it into the work."""
    start, end = made.edge(edge)
    return start, np.array([start[1] - end[1], end[0] - start[0]]) / np.linalg.norm(end - start)


def to_a_door(seed: int) -> tuple[Floor, Program, list[Demand]]:
    """One plane that falls to one edge, with other demands."""
    random = np.random.default_rng(500_000 + seed)
    made = floor(seed, "plane", corners_shot=True, shots=8)
    program = Program(made)
    others = [one for one in drawn_demands(made, program, random, 0.0, 3) if one.kind not in ("exactly", "least_fall", "greatest_fall", "steepest")]
    # Level lines and little cross fall leave no room but for one edge; they have their own tests.
    others = [replace(one, figure=one.figure + 0.03) if one.kind in ("level", "cross_fall") else one for one in others]
    return made, program, [*others, Demand("fall", "least_fall", float(random.uniform(0.003, 0.02)), edge="front")]


def solved(made: Floor, demands: list[Demand], margin: float = 0.0) -> Any:
    """With steps."""
    return finish_solved(**made.asked(demands, margin), round=1000.0 * HEIGHT, round_fall=100.0 * FALL, datum=DATUM)


def cheapest(program: Program, demands: list[Demand], margin: float, by: float) -> float | None:
    """The least concrete over all whole falls to the front, each with its lowest whole height; none where no step keeps the demands."""
    made = program.made
    rows = together(program.all_rows(demands, margin))
    start, up = inward(made, "front")
    one = np.array([1.0, 0.0, 0.0])
    best = None
    for steps in range(int(0.3 / FALL / by)):
        fall = steps * by * FALL
        # Level along the front at the datum.
        u = np.array([DATUM - program.datum + fall * (program.origin - start) @ up, *(program.size * fall * up)])
        lack, lift = rows.b - rows.a @ u, rows.a @ one
        if (lack[np.abs(lift) < 1e-12] > KEPT).any():
            continue
        low = (lack / np.where(lift > 1e-12, lift, np.inf)).max(where=lift > 1e-12, initial=-np.inf)
        high = (lack / np.where(lift < -1e-12, lift, np.inf)).min(where=lift < -1e-12, initial=np.inf)
        height = np.ceil((low - KEPT) / (by * HEIGHT)) * by * HEIGHT
        if height <= high + KEPT:
            concrete = float(program.cost @ (u + height * one)) + program.constant
            best = concrete if best is None else min(best, concrete)
    return best


@pytest.mark.parametrize("seed", range(40))
def test_no_whole_step_takes_less(seed: int) -> None:
    made, program, demands = to_a_door(seed)
    margin = 0.0095 * (seed % 2)
    try:
        answer = solved(made, demands, margin)
    except GradeError:
        assert program.broken(demands, margin) > 0.0
        return
    if any("level along" in note.text for note in answer.notes):
        assert cheapest(program, demands, margin, 0.125) is None
        return
    by = answer.round_mm / 1000.0 / HEIGHT
    for finer in [1.0, 0.5, 0.25, 0.125]:
        if finer > by:
            assert cheapest(program, demands, margin, finer) is None
    u = unknowns(program, answer.finish)
    assert slack(program, demands, margin, u) > -KEPT
    if by == 0.0:
        return
    wanted = cheapest(program, demands, margin, by)
    assert wanted is not None
    assert abs(answer.concrete_m3 - wanted) <= 1e-9 * wanted, (answer.concrete_m3, wanted)
    start, up = inward(made, "front")
    whole((float(program.floor_at(u, 0, start)[0]) - DATUM) / (by * HEIGHT))
    whole(float(u[1:] @ up) / program.size / (by * FALL))
    assert abs(u[1:] @ [-up[1], up[0]]) < 1e-9


def whole(steps: float) -> None:
    assert abs(steps - np.round(steps)) < WHOLE, steps


@pytest.mark.parametrize("seed", range(32))
def test_rounding_breaks_no_demand_and_costs_what_it_says(seed: int) -> None:
    random = np.random.default_rng(600_000 + seed)
    pattern = PATTERNS[seed % 4]
    made = floor(seed, pattern, corners_shot=True, shots=16)
    program = Program(made)
    demands = drawn_demands(made, program, random, 0.0, 3)
    try:
        answer = solved(made, demands, 0.005)
    except GradeError:
        assert program.broken(demands, 0.005) > 0.0 or program.least_with_cones(demands, 0.005) is None
        return
    assert answer.bare_concrete_m3 <= answer.planned_concrete_m3 + 1e-9 and answer.planned_concrete_m3 <= answer.concrete_m3 + 1e-9
    bare, built = unknowns(program, answer.bare), unknowns(program, answer.finish)
    assert slack(program, demands, 0.0, bare) > -KEPT
    assert slack(program, demands, 0.005, built) > -KEPT
    # What is told of each demand is what is found.
    for number, demand in enumerate(demands):
        of_fall = demand.kind in OF_FALL
        told = answer.kept["slack_built_fall_percent" if of_fall else "slack_built_mm"][number] / (100.0 if of_fall else 1000.0)
        if demand.kind != "steepest":
            rows = program.rows(demand, 0.005)
            assert abs(told - ((rows.a @ built - rows.b) / np.abs(rows.share)).min()) < 1e-7, demand
    if answer.round_mm > 0.0 and made.valley is not None and any(demand.kind == "least_fall" for demand in demands):
        for end in made.valley:
            whole((float(program.floor_at(built, program.facet_at(end), end)[0]) - DATUM) / (answer.round_mm / 1000.0))
    wanted = program.least_with_cones(demands, 0.0)
    assert wanted is not None
    assert abs(answer.bare_concrete_m3 - wanted.value) <= 1e-9 * wanted.value
