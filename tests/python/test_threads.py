"""Calls from many threads give what one thread gives, from the first call on."""

from __future__ import annotations

import subprocess
import sys
from concurrent.futures import ThreadPoolExecutor
from typing import Any

from table import OPERATIONS, function

ROWS = list(OPERATIONS.values())

FIRST_CALLS = """
import threading
from concurrent.futures import ThreadPoolExecutor
import overslab
from overslab import _overslab
rows = list(overslab.OPERATIONS.values())
start = threading.Barrier(8)
def run(_):
    start.wait()
    answers = [getattr(_overslab, row["name"])(**row["example"]) for row in rows]
    refusals = []
    for row in rows:
        try:
            getattr(_overslab, row["name"])(**{**row["example"], **row["refusals"][0]["change"]})
        except overslab.OverslabError as error:
            refusals.append(str(error))
    return [repr(answer) + str(answer.notes) for answer in answers], refusals
with ThreadPoolExecutor(8) as pool:
    found = list(pool.map(run, range(8)))
assert all(one == found[0] for one in found)
assert len(found[0][1]) == len(rows)
"""


def test_first_calls_from_eight_threads_agree() -> None:
    subprocess.run([sys.executable, "-c", FIRST_CALLS], check=True, timeout=120)


def test_eight_threads_agree_again_and_again() -> None:
    expected = [function(row)(**row["example"]) for row in ROWS]

    def run(turn: int) -> list[Any]:
        # Each thread begins elsewhere, so that all kinds of calls run beside each other.
        order = ROWS[turn % len(ROWS) :] + ROWS[: turn % len(ROWS)]
        return [function(row)(**row["example"]) for row in order]

    with ThreadPoolExecutor(8) as pool:
        for turn, results in enumerate(pool.map(run, range(200))):
            start = turn % len(ROWS)
            assert results == expected[start:] + expected[:start]
