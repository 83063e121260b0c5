"""The golden set of the verdict on the old slab, read as a notebook would: findings as a plain dict, or five answers as keywords."""

from __future__ import annotations

import tomllib
from pathlib import Path
from typing import Any

import pytest

from overslab.condition import condition, condition_quick

GOLDEN = tomllib.loads((Path(__file__).parent.parent / "golden" / "condition.toml").read_text(encoding="utf-8"))
WAYS = ["unbonded", "bonded", "partly_bonded", "break_out_part", "break_out_whole"]


def findings(record: dict[str, Any]) -> dict[str, Any]:
    """The findings of a record: over those of a sound slab, unless it stands alone."""
    found = {} if record.get("bare") else dict(GOLDEN["sound"])
    found |= record["findings"]
    for name in record.get("without", []):
        found.pop(name, None)
    if record.get("judge_partly_bonded"):
        found["judge_partly_bonded"] = True
    return found


@pytest.mark.parametrize("record", GOLDEN["record"], ids=lambda record: record["id"])
def test_every_record_is_judged_as_the_trade_would(record: dict[str, Any]) -> None:
    found = findings(record)
    if "quick" in record:
        verdict: Any = condition_quick(**record["quick"], findings=found)
    else:
        verdict = condition(found)
    assert verdict.take == record["take"]
    assert [getattr(verdict, way) for way in WAYS] == [record.get(way) for way in WAYS]
    rules = dict(zip(verdict.reasons["rule"], verdict.reasons["findings"]))
    weigh = {rule for rule, named in rules.items() if named is not None or rule == "straight_on"}
    assert weigh == set(record["rules"])
    assert set(verdict.stops["rule"]) == set(record.get("stops", []))
    if "asks" in record:
        assert [set(asked.split(", ")) for asked in verdict.asks["findings"]] == [set(asked) for asked in record["asks"]]
    if "taken" in record:
        assert set(verdict.taken_findings["finding"]) == set(record["taken"])
    for way, words in record.get("work", []):
        assert any(words in what for of, what in zip(verdict.work["way"], verdict.work["what"]) if of == way)
