"""Flatness and levelness redone in NumPy on random profiles, and the straightedge against every pair of readings.

Tolerances. Elevations lie within an inch of the datum, so bends keep all their digits but a few of the last: 1e-12 relative.
"""

from __future__ import annotations

import itertools
from typing import Any

import numpy as np
import numpy.typing as npt
import pytest

from overslab.asbuilt import flatness, flatness_combined, flatness_line, straightedge

Floats = npt.NDArray[np.float64]

RELATIVE = 1e-12
FLATNESS = {"4.57 in": 4.57 * 25.4, "115.8 mm": 115.8}
LEVELNESS = 12.5 * 25.4


def profile(seed: int, count: int) -> Floats:
    """A floor in millimetres: a slow wave, a fast one and some noise."""
    random = np.random.default_rng(70_000 + seed)
    at = np.arange(count)
    wave = random.uniform(1, 6) * np.sin(at / random.uniform(5, 30)) + random.uniform(0, 1) * np.sin(at / 1.7)
    noise: Floats = wave + random.normal(0.0, 0.8, count)
    return noise


def number(readings: Floats, constant: float) -> float:
    """An F-number of bends or rises in millimetres."""
    return float(constant / (3.0 * np.std(readings, ddof=1) + abs(np.mean(readings))))


def bends(heights: Floats) -> Floats:
    """The second differences."""
    return np.diff(heights, n=2)


def rises(heights: Floats) -> Floats:
    """What the line rises over ten spacings."""
    rise: Floats = heights[10:] - heights[:-10]
    return rise


@pytest.mark.parametrize("factor", FLATNESS)
@pytest.mark.parametrize("seed", range(20))
def test_one_line(seed: int, factor: Any) -> None:
    heights = profile(seed, 12 + 40 * seed)
    found = flatness_line({"elevation": heights}, spacing="300 mm", factor=factor, units="si")
    np.testing.assert_allclose(found.q["q_mm"], bends(heights), rtol=0, atol=1e-12)
    np.testing.assert_allclose(found.z["z_mm"], rises(heights), rtol=0, atol=1e-12)
    assert found.ff_ratio == pytest.approx(number(bends(heights), FLATNESS[factor]), rel=RELATIVE)
    assert found.fl_ratio == pytest.approx(number(rises(heights), LEVELNESS), rel=RELATIVE)
    assert found.q_deviation_mm == pytest.approx(np.std(bends(heights), ddof=1), rel=RELATIVE)


@pytest.mark.parametrize("seed", range(10))
def test_a_floor_of_sections(seed: int) -> None:
    random = np.random.default_rng(80_000 + seed)
    lines = [profile(100 * seed + line, int(random.integers(14, 60))) for line in range(9)]
    sections = [f"part {random.integers(0, 3)}" for _ in lines]
    sections[:3] = ["part 0", "part 1", "part 2"]
    areas = {f"part {part}": float(random.uniform(40, 90)) for part in range(3)}
    found = flatness(
        {
            "line": list(itertools.chain.from_iterable([f"line {i}"] * len(line) for i, line in enumerate(lines))),
            "elevation": np.concatenate(lines),
            "section": list(itertools.chain.from_iterable([s] * len(line) for s, line in zip(sections, lines, strict=True))),
        },
        spacing="12 in",
        sections={"section": list(areas), "area": list(areas.values())},
        units="si",
    )

    def over_all(parts: Any, constant: float) -> float:
        by_section = {name: [0.0, 0.0] for name in areas}
        for name, readings in zip(sections, parts, strict=True):
            by_section[name][0] += len(readings)
            by_section[name][1] += len(readings) / number(readings, constant) ** 2
        squares = sum(areas[name] * inverse / count for name, (count, inverse) in by_section.items())
        return float(np.sqrt(sum(areas.values()) / squares))

    assert found.ff_ratio == pytest.approx(over_all([bends(line) for line in lines], FLATNESS["4.57 in"]), rel=RELATIVE)
    assert found.fl_ratio == pytest.approx(over_all([rises(line) for line in lines], LEVELNESS), rel=RELATIVE)
    of_lines = [number(bends(line), FLATNESS["4.57 in"]) for line in lines]
    np.testing.assert_allclose(found.lines["ff_ratio"], of_lines, rtol=RELATIVE)


def test_lines_combined_are_the_floor() -> None:
    lines = [profile(500 + line, 20 + 5 * line) for line in range(4)]
    names = list(itertools.chain.from_iterable([str(i)] * len(line) for i, line in enumerate(lines)))
    floor = flatness({"line": names, "elevation": np.concatenate(lines)}, units="si", spacing="300 mm")
    parts = {"number": floor.lines["ff_ratio"], "readings": floor.lines["q_count"]}
    assert flatness_combined(parts, units="si").number_ratio == pytest.approx(floor.ff_ratio, rel=RELATIVE)


@pytest.mark.parametrize("seed", range(12))
def test_the_straightedge_against_every_pair(seed: int) -> None:
    random = np.random.default_rng(90_000 + seed)
    count = 15 + 6 * seed
    distance = np.cumsum(random.uniform(0.1, 0.5, count))
    heights = profile(600 + seed, count)
    found = straightedge({"distance": distance, "elevation": heights}, length="3 m", units="si")
    worst = 0.0
    for start, end in itertools.combinations(range(count), 2):
        if distance[end] - distance[start] > 3.0:
            continue
        under = slice(start + 1, end)
        chord = np.interp(distance[under], distance[[start, end]], heights[[start, end]])
        gaps = chord - heights[under]
        if gaps.size and gaps.min() >= -1e-9:
            worst = max(worst, float(gaps.max()))
    assert found.gap_mm == pytest.approx(worst, abs=1e-9)
