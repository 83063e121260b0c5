"""Bad input through Python: the inputs of `bad_input.toml` raise the exception of their family with the same code, path and line."""

from __future__ import annotations

import json
import sys
from pathlib import Path
from typing import Any

import pytest

import overslab

if sys.version_info >= (3, 11):
    import tomllib
else:
    import tomli as tomllib

TESTS = Path(__file__).parents[1]
FILE = tomllib.loads((TESTS / "bad_input.toml").read_text(encoding="utf-8"))
BOAT_STORE = (TESTS.parent / "examples" / "boat_store.toml").read_text(encoding="utf-8")

FAMILIES = {
    0: overslab.QuantityError, 1: overslab.QuantityError, 2: overslab.FormError, 3: overslab.FormError,
    4: overslab.SurveyError, 5: overslab.SurveyError, 6: overslab.GradeError, 9: overslab.BorderError,
    10: overslab.FormError, 11: overslab.FormError, 12: overslab.SurveyError, 13: overslab.GradeError, 14: overslab.SurveyError,
    15: overslab.FormError, 16: overslab.SurveyError, 18: overslab.GradeError, 19: overslab.MarksError,
    20: overslab.GradeError, 21: overslab.ClearanceError, 22: overslab.ClearanceError, 23: overslab.AsBuiltError,
    24: overslab.ConditionError, 25: overslab.OverlayError, 26: overslab.OverlayError,
    27: overslab.OverlayError,
}  # fmt: skip
"""The family of a code by its tens."""

OTHERS = dict.fromkeys([106, 107, 115, 116, 117, 118, 119, 153], overslab.SurveyError)
"""The codes of files and points that are of another family than those beside them: what a file holds, not its form."""


def operation(name: str) -> Any:
    """The function of that name, wherever its module is."""
    module = getattr(overslab, overslab.OPERATIONS[name]["module"])
    return getattr(module, name)


def refused(call: Any, case: dict[str, Any], line: int | None = None) -> None:
    """The call raises what the case says."""
    with pytest.raises(overslab.OverslabError) as raised:
        call()
    error = raised.value
    assert (error.name, error.path, error.line, error.index) == (case["code"], case["path"], line, case.get("index"))
    assert type(error) is OTHERS.get(error.code, FAMILIES[error.code // 10])
    assert case["written"] in error.written
    assert case["allowed"] in error.allowed
    assert case["remedy"] in error.remedy
    assert str(error).startswith(f"{error.name}: {error.path}")


@pytest.mark.parametrize("case", FILE["call"], ids=lambda case: case["id"])
def test_every_bad_call_raises_its_own_failure(case: dict[str, Any]) -> None:
    function = operation(case["operation"])
    if "flat" in case:
        ports = overslab.OPERATIONS[case["operation"]]["ports"]
        args = dict(zip([port["name"] for port in ports], case["flat"]))
    else:
        args = json.loads(case["args"])
    if case["id"] in PYTHONS_OWN:
        with pytest.raises(TypeError, match=f"'{case['path']}'"):
            function(**args, units="us")
        return
    refused(lambda: function(**args, units="us"), case, case.get("line"))


PYTHONS_OWN = {"a required value left out", "a port that nobody knows"}
"""What Python itself refuses before the library is asked: arguments of a function. Within a table or a record it is the library."""


def report_on(text: str) -> None:
    """The job as a notebook takes it: read from a text, then reported on."""
    overslab.job.report(job=overslab.job.job_from_text(text=text))


def edited(job: str, edit: dict[str, Any]) -> tuple[str, int]:
    """The job with one text replaced, and the line that the failure must name."""
    if "from" in edit:
        assert job.count(edit["from"]) == 1
        job = job.replace(edit["from"], edit["to"])
    if "line" not in edit:
        return job, 1
    (line,) = [number for number, line in enumerate(job.splitlines(), 1) if edit["line"] in line]
    return job, line + edit.get("line_offset", 0)


@pytest.mark.parametrize("case", FILE["job"], ids=lambda case: case["id"])
def test_every_bad_job_raises_its_own_failure(case: dict[str, Any]) -> None:
    text, line = edited(case.get("whole", BOAT_STORE), case)
    refused(lambda: report_on(text), case, line)


@pytest.mark.parametrize("case", [case for case in FILE["job"] if "json" in case], ids=lambda case: case["id"])
def test_every_bad_job_in_json_raises_its_own_failure(case: dict[str, Any]) -> None:
    job = overslab.job.job_from_text(text=BOAT_STORE).to_dict()
    text, line = edited(json.dumps(job, indent=2), case["json"])
    refused(lambda: report_on(text), case, line)
