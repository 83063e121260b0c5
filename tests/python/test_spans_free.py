"""Over an old slab that spans free a report tells the added weight and nothing else of a new floor, in figures and in JSON alike."""

from __future__ import annotations

import json
import re
from pathlib import Path
from typing import Any

import pytest

from overslab.job import job_from_text, report

EXAMPLES = Path(__file__).parents[2] / "examples"
FIGURES = [f"{name}_{unit}" for name, unit in [("ordered", "yd3"), ("figured", "yd3"), ("net", "yd3"), ("least", "in"), ("greatest", "in"), ("mean", "in")]]


def spanning(name: str) -> str:
    """An example whose old slab spans free."""
    text = (EXAMPLES / f"{name}.toml").read_text(encoding="utf-8")
    if "[old_slab]" in text:
        return re.sub('rests_on = "[a-z]+"', 'rests_on = "framing"', text)
    return text.replace("[outline]", '[old_slab]\nsuspended = "yes"\n\n[outline]')


def told(text: str) -> dict[str, Any]:
    """The JSON of a report."""
    return json.loads(report(job=job_from_text(text=text)).json)  # type: ignore[no-any-return]


@pytest.mark.parametrize("name", ["boat_store", "settled_patio", "wash_bay", "potting_shed", "seed_shed"])
def test_no_figure_of_a_new_floor_is_told(name: str) -> None:
    answer = report(job=job_from_text(text=spanning(name)))
    assert [getattr(answer, figure) for figure in FIGURES] == [None] * len(FIGURES)
    assert answer.loads is None
    data = json.loads(answer.json)
    assert data["new_floor"] is None
    assert data["old_slab"]["spans"]
    assert data["old_slab"]["added_weight"]["us"] > 0
    assert data["standing_water"]["new_floor"] is None
    assert data["standing_water"]["cured"] is None
    assert data["look_again"]["governing"] == []


def test_the_height_asked_for_shows_in_the_weight_alone() -> None:
    text = spanning("boat_store")
    one, other = told(text), told(text.replace('least = "3 in"', 'least = "4 1/2 in"'))
    weights = [data["old_slab"].pop("added_weight")["us"] for data in (one, other)]
    assert weights[0] + 5 < weights[1]
    assert one == other


def test_on_ground_the_floor_is_told() -> None:
    answer = report(job=job_from_text(text=(EXAMPLES / "boat_store.toml").read_text(encoding="utf-8")))
    assert all(getattr(answer, figure) is not None for figure in FIGURES)
    assert json.loads(answer.json)["new_floor"]["order"]["trucks"] == answer.loads
