"""A panic in the engine comes out as an ordinary exception."""

from __future__ import annotations

from typing import Any

import pytest

from overslab import BorderError, _overslab


@pytest.mark.parametrize("argument", [3, [1, 2, 3]], ids=["scalar", "array"])
def test_a_panic_of_a_scalar_row_is_a_fault_of_the_library(argument: Any, capfd: Any) -> None:
    with pytest.raises(BorderError) as caught:
        _overslab._panics_scalar(argument)
    assert (caught.value.name, caught.value.code, caught.value.written) == ("INTERNAL", 99, "on purpose")


def test_a_panic_of_a_record_row_is_a_fault_of_the_library(capfd: Any) -> None:
    with pytest.raises(Exception, match="on purpose") as caught:
        _overslab._panics_record(3)
    assert caught.value.name == "INTERNAL"
