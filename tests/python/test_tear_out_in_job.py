"""Breaking out in a job: the report tells what the operation answers for the same numbers, beside the concrete over the old slab."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import pytest

from overslab.condition import tear_out
from overslab.job import job_from_text, report

PATIO = (Path(__file__).parents[2] / "examples" / "settled_patio.toml").read_text(encoding="utf-8")
NUMBERS = ["in_place", "mass", "loose", "dig_depth", "dig", "base", "base_bought", "concrete"]


def floor(text: str) -> dict[str, Any]:
    """The new floor of a report."""
    return json.loads(report(job=job_from_text(text=text)).json)["new_floor"]  # type: ignore[no-any-return]


def test_the_part_of_the_job_is_the_operation() -> None:
    told = floor(PATIO)["tear_out"]
    alone = tear_out(
        units="us",
        area=told["area"]["us"],
        rise=told["rise"]["us"],
        base=4,
        new_thickness=4,
        breaking_price=3.25,
        load_price=190,
        dump_price=48,
        base_price=42,
        concrete_price=180,
    )
    for name in NUMBERS:
        unit = {"mass": "ton", "dig_depth": "in"}.get(name, "yd3")
        result = "base_in_place" if name == "base" else name
        assert told[name]["us"] == pytest.approx(getattr(alone, f"{result}_{unit}"), rel=1e-9, abs=1e-12), name
    assert told["loads"] == alone.loads
    assert told["total"]["amount"] == pytest.approx(alone.total_money, rel=1e-9)


def test_both_ways_are_told() -> None:
    told = floor(PATIO)
    assert told["tear_out"]["rise"] == told["thickness"]["mean"]
    assert told["tear_out"]["concrete_over"] == told["thickness"]["fill"]
    text = " ".join(report(job=job_from_text(text=PATIO)).text.split())
    assert f"Over the old slab: {told['thickness']['fill']['text']} of concrete. Broken out: " in text


def test_it_is_told_only_where_it_is_asked_for() -> None:
    start = PATIO.index("[tear_out]")
    bare = PATIO[:start] + PATIO[PATIO.index("[thin_zones]") :]
    assert floor(bare)["tear_out"] is None
    settling = floor(bare.replace('settlement = "dormant"', 'settlement = "live"'))["tear_out"]
    assert settling["taken"]
    assert settling["whole"]
    assert settling["costs"] == []
