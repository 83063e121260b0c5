"""What the tests of the wheel share: the C library that is compared with it."""

from __future__ import annotations

import ctypes
import os

import pytest


@pytest.fixture(scope="session")
def library() -> ctypes.CDLL:
    """The C library, by the path in OVERSLAB_LIBRARY."""
    path = os.environ.get("OVERSLAB_LIBRARY")
    if not path:
        pytest.fail("OVERSLAB_LIBRARY does not name the C library; `tests/run python` sets it")
    return ctypes.CDLL(path)
