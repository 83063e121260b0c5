"""The bytes of a file: from everything that holds bytes, and from texts."""

from __future__ import annotations

import base64
import mmap
from array import array
from pathlib import Path
from typing import Any

import numpy as np
import pytest

import overslab
from overslab import _overslab

ALL = bytes(range(256))


def weighed(file: Any, **more: Any) -> int:
    """The sum of the bytes, each times its place, as the test-only operation sees them."""
    return int(_overslab.specimen_bytes(file=file, **more).sum)


def expected(data: bytes) -> int:
    """The same sum."""
    return sum(byte * place for place, byte in enumerate(data, 1))


@pytest.mark.parametrize("data", [ALL, b"", b"x,y\n1,2\n", b"base64:AA==", b"\x00\xff"], ids=repr)
def test_bytes_are_taken_as_they_are(data: bytes, tmp_path: Path) -> None:
    holders: list[Any] = [data, bytearray(data), memoryview(data), array("B", data), np.frombuffer(data, np.uint8)]
    if data:
        path = tmp_path / "file"
        path.write_bytes(data)
        with path.open("rb") as file, mmap.mmap(file.fileno(), 0, access=mmap.ACCESS_READ) as mapped:
            assert weighed(mapped) == expected(data)
    for holder in holders:
        assert weighed(holder) == expected(data), type(holder)
    # A view with gaps, and backwards.
    assert weighed(memoryview(data)[::-2]) == expected(data[::-2])
    assert weighed(b"", attached=data) == expected(data)


def test_a_text_is_its_utf_8_or_base64() -> None:
    assert weighed("1/2 in or \u00bd in") == expected("1/2 in or \u00bd in".encode())
    assert weighed("base64:" + base64.b64encode(ALL).decode()) == expected(ALL)
    assert weighed("base64:\n" + base64.encodebytes(ALL).decode()) == expected(ALL)
    with pytest.raises(overslab.FormError) as raised:
        weighed("base64:AB*D")
    assert (raised.value.name, raised.value.path, raised.value.index) == ("NOT_BASE64", "file", 9)


@pytest.mark.parametrize("wrong", [3, 2.5, [1, 2], {"a": 1}, np.zeros(3), memoryview(array("d", [1.0])), True], ids=repr)
def test_what_holds_no_bytes_is_refused(wrong: Any) -> None:
    with pytest.raises(overslab.FormError) as raised:
        weighed(wrong)
    assert (raised.value.name, raised.value.path) == ("KIND_MISMATCH", "file")
    with pytest.raises(overslab.FormError) as raised:
        weighed(b"", attached=wrong)
    assert (raised.value.name, raised.value.path) == ("KIND_MISMATCH", "attached")


def test_a_buffer_may_change_once_it_was_handed_over() -> None:
    held = bytearray(b"abc")
    given = weighed(held)
    held[:] = b"xyz"
    held.append(1)
    assert given == expected(b"abc")
