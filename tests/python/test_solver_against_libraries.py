"""The finish of least concrete against SciPy's HiGHS and its other minimisers, over random floors and demands.

The programs are put up again from the triangles of the old slab (`solver_program.py`); nothing of them is taken from what the solver says.

Tolerances. HiGHS keeps rows to 1e-10 m at best: concrete agrees to 1e-9 of itself, and floors to 1e-6 m where there is one best floor only.
Whether demands can be kept is not asked within 1e-7 m of the border. Minimisers that are no linear programs are held to what they reach.
"""

from __future__ import annotations

import functools
from dataclasses import replace
from typing import Any

import numpy as np
import pytest

from overslab import GradeError
from overslab.grade import finish_solved, finish_sweep
from solver_jobs import (
    COLUMN, OF_FALL, OF_HEIGHT, PATTERNS, Demand, Floor, floor,
)
from solver_draw import drawn_demands
from solver_program import Program, slack, unknowns
from surface_jobs import Floats

BORDER, KEPT, RELATIVE = 1e-7, 1e-8, 1e-9
STEP = {True: 0.001, False: 0.00635}
"""What prices are told by: 0.1 % of a fall, 1/4 in."""


def near(found: float, wanted: float, allowed: float) -> None:
    assert abs(found - wanted) <= allowed, f"{found!r}, expected {wanted!r} within {allowed!r}"


def heights_at(program: Program, u: Floats) -> Floats:
    """The heights of a floor of the program over the corners of the work, by the facets there."""
    return np.array([program.floor_at(u, program.facet_at(at), at)[0] for at in program.made.ring])


Job = tuple[Floor, Program, list[Demand], float]


@functools.cache
def job(seed: int, contrary: float = 0.0) -> Job:
    """A floor with demands and a margin: one plane, two facets, four, and drawn ones in turn."""
    facets = seed % 4 > 0
    made = floor(seed, PATTERNS[seed % 4], corners_shot=True if facets else None, shots=24 if facets else 12)
    program, random = Program(made), np.random.default_rng(seed)
    return made, program, drawn_demands(made, program, random, contrary), float(random.choice([0.0, 0.01]))


def refusal(made: Floor, demands: list[Demand], margin: float) -> str:
    """The code that the solver refuses demands with."""
    with pytest.raises(GradeError) as raised:
        finish_solved(**made.asked(demands, margin, set_out="no"))
    return str(raised.value).split(":")[0]


def has_cones(demands: list[Demand]) -> bool:
    return any(demand.kind == "steepest" for demand in demands)


@pytest.mark.parametrize("seed", range(120))
def test_the_answer_is_that_of_highs(seed: int) -> None:
    made, program, demands, margin = job(seed, 0.15)
    broken = program.broken(demands, margin)
    if abs(broken) < BORDER:
        pytest.skip("too near to the border of what can be kept")
    if broken > 0.0:
        assert refusal(made, demands, margin) == "DEMANDS_CONFLICT"
        return
    wanted = program.least_with_cones(demands, margin)
    if wanted is None:
        assert refusal(made, demands, margin) == "FINISH_UNDETERMINED"
        return
    answer = finish_solved(**made.asked(demands, margin, set_out="no"))
    near(answer.planned_concrete_m3, wanted.value, RELATIVE * wanted.value)
    assert answer.bound_m3 <= answer.planned_concrete_m3 + 1e-12 * wanted.value
    assert answer.bound_m3 <= wanted.value + RELATIVE * wanted.value
    assert answer.gap_ratio < 1e-8
    u = unknowns(program, answer.planned)
    near(program.cost @ u + program.constant, answer.planned_concrete_m3, RELATIVE * wanted.value)
    assert slack(program, demands, margin, u) > -KEPT
    if wanted.unique:
        apart = heights_at(program, u) - heights_at(program, wanted.u)
        # Where a cone is kept to 1e-10 the floor may turn along it by the root of that.
        assert np.abs(apart).max() < (1e-5 if has_cones(demands) else 1e-6)


def cone_free(seed: int, contrary: float = 0.0) -> Job:
    """The same without steepest falls, which no linear program holds."""
    made, program, demands, margin = job(seed, contrary)
    return made, program, [demand for demand in demands if demand.kind != "steepest"], margin


def sides(answer: Any, number: int, demand: Demand) -> list[tuple[float, float, float]]:
    """Tighter and looser: the sign, the price in volume per metre or fall, and how far it holds; nan where it cannot go that way."""
    of_fall = demand.kind in OF_FALL
    column, unit = ("holds_fall_percent", 100.0) if of_fall else ("holds_mm", 1000.0)
    found = []
    for sign, side in [(1.0, "tighter"), (-1.0, "looser")]:
        price, holds = float(answer.kept[f"{side}_m3"][number]), float(answer.kept[f"{side}_{column}"][number])
        found.append((sign, price / STEP[of_fall], np.inf if np.isnan(holds) else holds / unit))
    return found


@pytest.mark.parametrize("seed", range(1000, 1026))
def test_prices_are_the_marginals_of_highs_and_what_solving_again_gives(seed: int) -> None:
    made, program, demands, margin = cone_free(seed)
    parts = program.all_rows(demands, margin)
    wanted = None if program.broken(demands, margin) > -BORDER else program.least(parts)
    if wanted is None:
        pytest.skip("nothing holds it, or too near to the border of what can be kept")
    answer = finish_solved(**made.asked(demands, margin, set_out="no"))
    assert answer.kept["name"] == [demand.name for demand in demands]
    ends = np.cumsum([len(part.b) for part in parts])
    for number, demand in enumerate(demands):
        marginal = float(wanted.marginals[ends[number] : ends[number + 1]] @ parts[number + 1].share)
        for sign, price, holds in sides(answer, number, demand):
            again = functools.partial(at, made, program, demands, margin, number)
            if np.isnan(price):
                assert again(sign * 1e-4) is None
                continue
            if wanted.priced:
                near(price, sign * marginal, 1e-9 / STEP[True])
            most = 0.01 if demand.kind in OF_FALL else 0.03
            for share in (0.3, 0.99):
                by = share * min(holds, most)
                near(again(sign * by) or np.nan, wanted.value + price * by, 2.0 * RELATIVE * wanted.value)
            # Past the range another price holds, or none.
            past = 1.1 * holds + (2e-4 if demand.kind in OF_FALL else 1e-3)
            if past < most:
                beyond = again(sign * past)
                assert beyond is None or beyond - (wanted.value + price * past) > 1e-10


def at(made: Floor, program: Program, demands: list[Demand], margin: float, number: int, tighter: float) -> float | None:
    """The least concrete with one demand tightened; none where that cannot be."""
    moved = demands[number].moved(tighter)
    others = [*demands[:number], moved, *demands[number + 1 :]]
    if moved.figure < 0.0 and moved.kind not in OF_HEIGHT or program.broken(others, margin) > 1e-9:
        return None
    found = program.least(program.all_rows(others, margin))
    return None if found is None else found.value


@pytest.mark.parametrize("seed", range(16))
def test_a_sweep_is_that_of_highs_at_each_value(seed: int) -> None:
    made, program, demands, margin = cone_free(seed)
    random = np.random.default_rng(90_000 + seed)
    number = int(random.integers(0, len(demands)))
    demand = demands[number]
    column, unit = COLUMN[demand.kind]
    reach = 0.01 if demand.kind in OF_FALL else 0.05
    figures = demand.figure + random.uniform(-reach, reach, 8)
    figures = figures if demand.kind in OF_HEIGHT else np.maximum(figures, 0.0)
    swept = [replace(demand, figure=float(figure)) for figure in figures]
    each = [[*demands[:number], one, *demands[number + 1 :]] for one in swept]
    broken = [program.broken(one, margin) for one in each]
    if min(abs(by) for by in broken) < BORDER:
        pytest.skip("too near to the border of what can be kept")
    answer = finish_sweep(
        **made.asked(demands, margin), demand=demand.name.upper(), values={column if column in ("fall", "elevation") else "length": unit * figures}
    )
    for one, by, found in zip(each, broken, np.array(answer.curve["concrete_m3"], dtype=float)):
        assert np.isnan(found) == (by > 0.0)
        if by < 0.0:
            wanted = program.least(program.all_rows(one, margin))
            assert wanted is not None
            near(found, wanted.value, RELATIVE * wanted.value)
