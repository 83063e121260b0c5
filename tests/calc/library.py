"""What the library answers to the request that a cell makes, over the same border as the add-in, and the table of its
operations."""

import ctypes
import json
import os
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
TABLE = json.loads((ROOT / "tests/calc/table.json").read_text(encoding="utf-8"))
SYSTEMS = ("us", "si")

_library = ctypes.CDLL(os.environ.get("OVERSLAB_LIBRARY", str(ROOT / "build/lib/liboverslab.so.0")))


def ask(row, system, want, arguments, result=""):
    """The answer as the border gives it: {"cells": rows} or {"failure": ...}."""
    request = {"operation": row["name"], "system": system, "want": want, "result": result, "arguments": arguments}
    text = json.dumps(request).encode("ascii")
    answer, needed = ctypes.create_string_buffer(1 << 20), ctypes.c_int()
    _library.ovs_sheet(text, len(text), answer, len(answer), ctypes.byref(needed))
    assert needed.value <= len(answer)
    return json.loads(answer.value)


def rows_of(module):
    """The rows of the shipped add-in, or of the test-only one."""
    return [row for row in TABLE if (row["module"] == "specimen") == (module == "specimen")]
