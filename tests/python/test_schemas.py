"""The examples' jobs and their reports against the published schemas, by a validator that knows nothing of the engine."""

from __future__ import annotations

import copy
import json
import sys
from pathlib import Path
from typing import Any

import jsonschema
import pytest

from overslab.job import job_from_text, report

if sys.version_info >= (3, 11):
    import tomllib
else:
    import tomli as tomllib

ROOT = Path(__file__).parents[2]
JOBS = sorted(path for path in (ROOT / "examples").glob("*.toml") if path.name != "Cargo.toml")


def schema(name: str) -> dict[str, Any]:
    """A published schema."""
    text = (ROOT / "core" / "schema" / f"{name}.schema.json").read_text(encoding="utf-8")
    return json.loads(text)  # type: ignore[no-any-return]


def faults(name: str, document: Any) -> list[str]:
    """What a validator finds wrong with a document."""
    validator = jsonschema.Draft202012Validator(schema(name))
    return [f"{error.json_path}: {error.message}" for error in validator.iter_errors(document)]


def job(path: Path) -> dict[str, Any]:
    """The job of an example as it is written."""
    return tomllib.loads(path.read_text(encoding="utf-8"))


@pytest.mark.parametrize("name", ["job", "report"])
def test_the_schemas_are_schemas(name: str) -> None:
    jsonschema.Draft202012Validator.check_schema(schema(name))
    assert schema(name)["$schema"] == "https://json-schema.org/draft/2020-12/schema"


@pytest.mark.parametrize("path", JOBS, ids=lambda path: path.stem)
def test_examples_are_valid_jobs_with_valid_reports(path: Path) -> None:
    text = path.read_text(encoding="utf-8")
    assert faults("job", job(path)) == []
    record = job_from_text(text=text)
    assert faults("job", record.to_dict()) == []
    assert faults("report", json.loads(report(job=record).json)) == []


def changed(document: dict[str, Any], place: list[Any], value: Any) -> dict[str, Any]:
    """The document with one value put in place; `...` takes it out."""
    document = copy.deepcopy(document)
    inner = document
    for key in place[:-1]:
        inner = inner[key]
    if value is ...:
        del inner[place[-1]]
    else:
        inner[place[-1]] = value
    return document


WRONG_JOBS: list[tuple[list[Any], Any]] = [
    (["finsh"], {}),
    (["finish"], ...),
    (["schema_version"], 7),
    (["schema_version"], "1"),
    (["finish", "least"], 3),
    (["finish", "least"], ""),
    (["order", "extras", 0, "meen"], "4 in"),
    (["outline", "sides", 0, "length"], ...),
    (["level", "instrument"], "lasr"),
    (["level", "setups", 0, "rows", 0, "rods", 0], 5.0),
    (["limits"], {}),
]


@pytest.mark.parametrize(("place", "value"), WRONG_JOBS, ids=lambda part: str(part))
def test_what_the_engine_refuses_for_its_form_the_schema_refuses(place: list[Any], value: Any) -> None:
    wrong = changed(job(JOBS[0]), place, value)
    assert faults("job", wrong)
    with pytest.raises(Exception, match="[A-Z]+_[A-Z]+"):
        job_from_text(text=json.dumps(wrong))


def test_the_report_schema_refuses_what_is_no_report() -> None:
    good = json.loads(report(job=job_from_text(text=JOBS[0].read_text(encoding="utf-8"))).json)
    for place, value in [(["look_again"], ...), (["new_floor", "order"], ...), (["new_floor", "thickness", "net", "us"], "8 yd3"), (["new_floor", "fits"], None), (["schema_version"], 2)]:
        assert faults("report", changed(good, place, value)), place


def test_every_property_of_the_schemas_is_described() -> None:
    def walk(node: Any, path: str) -> None:
        if isinstance(node, dict):
            for name, part in node.get("properties", {}).items():
                assert part.get("description"), f"{path}.{name}"
            for key, part in node.items():
                walk(part, f"{path}.{key}")
        elif isinstance(node, list):
            for part in node:
                walk(part, path)

    walk(schema("job"), "job")
    walk(schema("report"), "report")
