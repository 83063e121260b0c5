"""What contradicts, against HiGHS: a thousand random floors that cannot be had as asked.

A set is right when HiGHS cannot keep it and keeps each part of it that lacks one demand. Cases nearer than 1e-7 m to the border of what can
be kept are drawn again, and so is a part that is. What must give way agrees to 1e-7 m or as a fall; a weighted sum may be had in more than
one way, so that the sums are compared.
"""

from __future__ import annotations

import functools
import itertools
from typing import Any

import numpy as np
import pytest

from overslab.grade import finish_conflicts
from solver_draw import drawn_demands
from solver_jobs import OF_FALL, Demand, Floor, floor
from solver_program import Program

BORDER, AGREE = 1e-7, 1e-7
STEP = {True: 0.001, False: 0.00635}
BATCHES, EACH = 20, 50

Parts = list[Demand]


@functools.cache
def slab(number: int) -> tuple[Floor, Program]:
    """A floor for several lists of demands."""
    made = floor(number, ["plane", "plane", "valley", "drain"][number % 4], corners_shot=True, shots=5)
    return made, Program(made)


def contrary(seed: int, most: int = 6) -> tuple[Floor, Program, Parts]:
    """A floor that cannot be had as asked, clear of the border; facets on some."""
    random = np.random.default_rng(400_000 + seed)
    made, program = slab(seed // 10)
    while True:
        demands = [one for one in drawn_demands(made, program, random, 0.6, most) if one.kind != "steepest"]
        if program.broken(demands) > BORDER:
            return made, program, demands


def by_of(table: Any, row: int) -> float:
    """By how much a demand must give way, in metres or as a fall; nan where that does not help."""
    length, fall = float(table["by_mm"][row]), float(table["by_fall_percent"][row])
    return length / 1000.0 if not np.isnan(length) else fall / 100.0


def sets_of(answer: Any) -> list[dict[str, float]]:
    """The named sets with what mends each."""
    sets: dict[int, dict[str, float]] = {}
    for row, (number, name) in enumerate(zip(answer.sets["set"], answer.sets["demand"])):
        sets.setdefault(int(number), {})[name] = by_of(answer.sets, row)
    return list(sets.values())


def named(demands: Parts, names: Any) -> Parts:
    return [demand for demand in demands if demand.name in names]


@pytest.mark.parametrize("batch", range(BATCHES))
def test_the_first_set_contradicts_and_no_part_of_it(batch: int) -> None:
    near = 0
    for seed in range(batch * EACH, (batch + 1) * EACH):
        made, program, demands = contrary(seed)
        answer = finish_conflicts(**made.asked(demands))
        assert answer.kept == "no"
        first = named(demands, sets_of(answer)[0])
        parts = [list(part) for part in itertools.combinations(first, len(first) - 1)]
        broken, kept = program.broken(first), [program.broken(part) for part in parts]
        if min(abs(by) for by in [broken, *kept]) < BORDER:
            near += 1
            continue
        assert broken > 0.0, (seed, first)
        assert all(by < 0.0 for by in kept), (seed, first, kept)
    assert near <= EACH // 20


@pytest.mark.parametrize("seed", range(2000, 2200, 10))
def test_all_sets_are_told_and_what_mends_them(seed: int) -> None:
    made, program, demands = contrary(seed)
    answer = finish_conflicts(**made.asked(demands))
    wanted: list[frozenset[int]] = []
    for size in range(1, len(demands) + 1):
        for chosen in itertools.combinations(range(len(demands)), size):
            if any(known <= set(chosen) for known in wanted):
                continue
            broken = program.broken([demands[number] for number in chosen])
            if abs(broken) < BORDER:
                pytest.skip("a part is too near to the border of what can be kept")
            if broken > 0.0:
                wanted.append(frozenset(chosen))
    numbers = {demand.name: number for number, demand in enumerate(demands)}
    found = sets_of(answer)
    assert [frozenset(numbers[name] for name in one) for one in found] == sorted(wanted, key=lambda one: (len(one), sorted(one)))
    assert answer.complete == "yes"
    for one in found:
        held = named(demands, one)
        for name, by in one.items():
            agrees(by, alone(program, held, name))
    rows = {name: by_of(answer.alone, row) for row, name in enumerate(answer.alone["demand"])}
    for demand in demands:
        agrees(rows.get(demand.name, np.nan), alone(program, demands, demand.name))
    weights = np.array([demand.weight / STEP[demand.kind in OF_FALL] for demand in demands])
    least = program.relaxed(demands, program.all_rows(demands), list(range(len(demands))), weights / weights.max())
    given = {name: by_of(answer.together, row) for row, name in enumerate(answer.together["demand"])}
    total = sum(weights[numbers[name]] * by for name, by in given.items())
    assert abs(total - weights @ least) <= 1e-6 * max(weights @ least, 1.0)
    # With all these given way the floor can be had.
    relieved = [demand.moved(-given.get(demand.name, 0.0) - 1e-8) for demand in demands if demand.kind != "exactly"]
    assert program.broken(relieved) < 1e-8


def alone(program: Program, held: Parts, name: str) -> float:
    """By how much one demand must give way, the others held."""
    number = [demand.name for demand in held].index(name)
    return float(program.relaxed(held, program.all_rows(held), [number], np.ones(1))[0])


def agrees(found: float, wanted: float) -> None:
    assert np.isnan(found) == np.isnan(wanted), (found, wanted)
    assert np.isnan(found) or abs(found - wanted) <= AGREE, (found, wanted)
