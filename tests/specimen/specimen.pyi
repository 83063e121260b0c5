"""The operations of `specimen`: made from the table of operations; do not edit."""

from typing import Any, Literal, final, overload

import numpy as np
import numpy.typing as npt

from overslab.results import AnswerResult, ArrayResult, Record, ScalarResult

from overslab.typing import Column, Count, Counts, Errors, File, Quantities, Quantity, RecordLike, Table, Units, Words

__all__ = [
    "Specimen",
    "specimen_scalar",
    "SpecimenScalar",
    "SpecimenScalarArray",
    "specimen_from_table",
    "specimen_every_kind",
    "SpecimenEveryKind",
    "specimen_numbers",
    "SpecimenNumbers",
    "specimen_sum",
    "SpecimenSum",
    "specimen_bytes",
    "SpecimenBytes",
]

@final
class Specimen(Record):
    r"""A test-only record."""

    @property
    def size_in(self) -> float:
        r"""its size [in]."""

    @property
    def size_mm(self) -> float:
        r"""its size [mm]."""

    @property
    def label(self) -> str:
        r"""its label."""

    @property
    def letters(self) -> int:
        r"""letters of the label."""

    @property
    def weights(self) -> dict[str, Column]:
        r"""two shares."""

@overload
def specimen_scalar(  # type: ignore[overload-overlap]
    step: Quantity,
    times: Count,
    colour: Literal["red", "dark blue"],
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> SpecimenScalar:
    r"""Test only: a scalar row with a number, a count and a choice.

    Rule: total = step x times.
    Takes for granted: nothing.

    Args:
        step: one step [in | mm]; at least 0 in, at most 3937.00787402 in (at least 0 mm, at most 100000
            mm)
        times: how often; a whole number from 0 to 1000
        colour: a colour; one of "red", "dark blue"
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
        errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.

    Returns:
        SpecimenScalar, with the attributes
            total_ft, total_m: the sum of the steps [ft | m]
            colour: the same colour: red, dark blue
            count: times and one
        and notes; for arrays SpecimenScalarArray, with arrays of that shape, and note_codes, bad, reasons.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE)
        FormError: a whole number is wanted (NOT_A_COUNT); the word is not one of the choices
            (WORD_UNKNOWN)

    Basis:
        plane and solid geometry: derived

    Example:
        >>> from overslab._overslab import specimen_scalar
        >>> answer = specimen_scalar(step="1 1/2 in", times=4, colour="dark blue")
        >>> round(answer.total_ft, 4)
        0.5

    Since 0.1.0.
    """

@overload
def specimen_scalar(
    step: Quantity | Quantities,
    times: Count | Counts,
    colour: Literal["red", "dark blue"] | Words,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> SpecimenScalarArray: ...

@final
class SpecimenScalar(ScalarResult):
    r"""What `specimen_scalar` gives."""

    @property
    def total_ft(self) -> float:
        r"""the sum of the steps [ft]."""

    @property
    def total_m(self) -> float:
        r"""the sum of the steps [m]."""

    @property
    def colour(self) -> Literal["red", "dark blue"]:
        r"""the same colour."""

    @property
    def count(self) -> int:
        r"""times and one."""

@final
class SpecimenScalarArray(ArrayResult):
    r"""What `specimen_scalar` gives for arrays."""

    @property
    def total_ft(self) -> npt.NDArray[np.float64]:
        r"""the sum of the steps [ft]."""

    @property
    def total_m(self) -> npt.NDArray[np.float64]:
        r"""the sum of the steps [m]."""

    @property
    def colour(self) -> npt.NDArray[Any]:
        r"""the same colour."""

    @property
    def count(self) -> npt.NDArray[np.int64] | npt.NDArray[np.float64]:
        r"""times and one."""

def specimen_from_table(
    rows: Table,
    *,
    label: str | None = None,
    units: Units | None = None,
) -> Specimen:
    r"""Test only: a record made from a table, with optional ports.

    Rule: size = greatest place.
    Takes for granted: nothing.

    Args:
        rows: the rows; a table of at least 1 row, each a place with what was seen, with the columns
            at: place [ft | m]; at least 0 ft, at most 328.083989501 ft (at least 0 m, at most 100 m)
            hits: hits; a whole number from 0 to 100; may be left out
            colour: colour; one of "red", "dark blue"; may be left out
            remark: remark; a text; may be left out
            depth: depth [in | mm]; at least 0 in, at most 3937.00787402 in (at least 0 mm, at most
                100000 mm); may be left out
        label: a label; a text; where it is not given plain is taken: most are
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        Specimen: A test-only record. It has notes, basis and taken besides.

    Raises:
        FormError: the list is empty (EMPTY_LIST); the key is not known (KEY_UNKNOWN)
        QuantityError: the value lies outside its range (OUT_OF_RANGE); an empty cell or a blank where a
            value is wanted (EMPTY_CELL)

    Example:
        >>> from overslab._overslab import specimen_from_table
        >>> answer = specimen_from_table(
        ...     rows=[{"at": "1 ft"}, {"at": "2 ft", "hits": 3, "colour": "red", "remark": "old"}],
        ... )
        >>> round(answer.size_in, 4)
        24.0

    Since 0.1.0.
    """

def specimen_every_kind(
    volume: Quantity,
    times: Count,
    colour: Literal["red", "dark blue"],
    label: str,
    rows: Table,
    specimen: Specimen | RecordLike,
    *,
    waste: Quantity | None = None,
    again: Count | None = None,
    shade: Literal["red", "dark blue"] | None = None,
    remark: str | None = None,
    more: Table | None = None,
    other: Specimen | RecordLike | None = None,
    units: Units | None = None,
) -> SpecimenEveryKind:
    r"""Test only: every kind of port, required and optional, in and out.

    Rule: none.
    Takes for granted: nothing.

    Args:
        volume: a volume [yd3 | m3]; more than 0 yd3 (more than 0 m3)
        times: a count; a whole number from 0 to 1000
        colour: a colour; one of "red", "dark blue"
        label: a text; a text
        rows: a table; a table of at least 1 row, each a place with what was seen, with the columns
            at: place [ft | m]; at least 0 ft, at most 328.083989501 ft (at least 0 m, at most 100 m)
            hits: hits; a whole number from 0 to 100; may be left out
            colour: colour; one of "red", "dark blue"; may be left out
            remark: remark; a text; may be left out
            depth: depth [in | mm]; at least 0 in, at most 3937.00787402 in (at least 0 mm, at most
                100000 mm); may be left out
        specimen: a record; a Specimen
        waste: an optional share [%]; at least 0 %; where it is not given 5 % is taken: usual
        again: an optional count; a whole number from 0 to 1000; may be left out
        shade: an optional colour; one of "red", "dark blue"; where it is not given red is taken: plain
        remark: an optional text; a text; may be left out
        more: an optional table; a table of at least 0 rows, each a share, with the columns; may be left
            out
            share: share [%]; at least 0 %
        other: an optional record; a Specimen; may be left out
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        SpecimenEveryKind, with the attributes
            volume_yd3, volume_m3: the volume with its share [yd3 | m3]
            count: the sum of the counts
            colour: the second colour: red, dark blue
            label: the texts joined
            rows: the same table, a table of rows
            specimen: the last record given
        and notes, basis and taken.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE); a number stands without its unit
            (UNIT_MISSING); the quantity cannot be below zero (NEGATIVE)
        FormError: the value is of another kind than the port takes (KIND_MISMATCH); the key is not
            known (KEY_UNKNOWN); the word is not one of the choices (WORD_UNKNOWN)

    Basis:
        plane and solid geometry: derived

    Example:
        >>> from overslab._overslab import specimen_every_kind
        >>> answer = specimen_every_kind(
        ...     volume="2 yd3",
        ...     times=2,
        ...     colour="red",
        ...     label="a",
        ...     rows={"at": ["1 ft", "2 1/2 ft"], "hits": [None, 3], "depth": ["1/8 in", None]},
        ...     specimen={"size": "2 in", "label": "elm"},
        ... )
        >>> round(answer.volume_yd3, 4)
        2.1

    Since 0.1.0.
    """

@final
class SpecimenEveryKind(AnswerResult):
    r"""What `specimen_every_kind` gives."""

    @property
    def volume_yd3(self) -> float:
        r"""the volume with its share [yd3]."""

    @property
    def volume_m3(self) -> float:
        r"""the volume with its share [m3]."""

    @property
    def count(self) -> int:
        r"""the sum of the counts."""

    @property
    def colour(self) -> Literal["red", "dark blue"]:
        r"""the second colour."""

    @property
    def label(self) -> str:
        r"""the texts joined."""

    @property
    def rows(self) -> dict[str, Column]:
        r"""the same table."""

    @property
    def specimen(self) -> Specimen:
        r"""the last record given."""

def specimen_numbers(
    specimen: Specimen | RecordLike,
    *,
    gap: Quantity | None = None,
    units: Units | None = None,
) -> SpecimenNumbers:
    r"""Test only: numbers, counts and words out of a record and an option.

    Rule: half = size / 2.
    Takes for granted: nothing.

    Args:
        specimen: a record; a Specimen
        gap: an optional length [in | mm]; at least 0 in, at most 3937.00787402 in (at least 0 mm, at
            most 100000 mm); may be left out
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        SpecimenNumbers, with the attributes
            half_in, half_mm: half of its size [in | mm]
            letters: letters of its label
            colour: dark blue with a gap, red without: red, dark blue
            gap_ft, gap_m: the gap, where it was given [ft | m]
        and notes, basis and taken.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE); an empty cell or a blank where a
            value is wanted (EMPTY_CELL)

    Basis:
        plane and solid geometry: derived

    Example:
        >>> from overslab._overslab import specimen_numbers
        >>> answer = specimen_numbers(specimen={"size": "3 in", "label": "ash"}, gap="1/2 in")
        >>> round(answer.half_in, 4)
        1.5

    Since 0.1.0.
    """

@final
class SpecimenNumbers(AnswerResult):
    r"""What `specimen_numbers` gives."""

    @property
    def half_in(self) -> float:
        r"""half of its size [in]."""

    @property
    def half_mm(self) -> float:
        r"""half of its size [mm]."""

    @property
    def letters(self) -> int:
        r"""letters of its label."""

    @property
    def colour(self) -> Literal["red", "dark blue"]:
        r"""dark blue with a gap, red without."""

    @property
    def gap_ft(self) -> float | None:
        r"""the gap, where it was given [ft]."""

    @property
    def gap_m(self) -> float | None:
        r"""the gap, where it was given [m]."""

def specimen_sum(
    readings: Table,
    *,
    units: Units | None = None,
) -> SpecimenSum:
    r"""Test only: the sum of readings, in a table of which no column is required.

    Rule: sum = sum(reading).
    Takes for granted: nothing.

    Args:
        readings: the readings; a table of at least 0 rows, each a reading, or a place that was passed
            over, with the columns
            remark: remark; a text; may be left out
            reading: reading [in | mm]; at least 0 in, at most 3937.00787402 in (at least 0 mm, at most
                100000 mm); may be left out
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        SpecimenSum, with the attributes
            sum_in, sum_mm: their sum [in | mm]
            given: how many were given
        and notes, basis and taken.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE)

    Basis:
        plane and solid geometry: derived

    Example:
        >>> from overslab._overslab import specimen_sum
        >>> answer = specimen_sum(readings={"reading": ["1 in", None, "2 in"]})
        >>> round(answer.sum_in, 4)
        3.0

    Since 0.1.0.
    """

@final
class SpecimenSum(AnswerResult):
    r"""What `specimen_sum` gives."""

    @property
    def sum_in(self) -> float:
        r"""their sum [in]."""

    @property
    def sum_mm(self) -> float:
        r"""their sum [mm]."""

    @property
    def given(self) -> int | None:
        r"""how many were given."""

def specimen_bytes(
    file: File,
    *,
    attached: File | None = None,
    units: Units | None = None,
) -> SpecimenBytes:
    r"""Test only: the bytes of a required and of an optional file.

    Rule: sum = sum(byte x its place).
    Takes for granted: nothing.

    Args:
        file: the bytes of a file; bytes, or a text: its UTF-8, or base64: and the bytes in base64
        attached: the bytes of another file; bytes, or a text: its UTF-8, or base64: and the bytes in
            base64; may be left out
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        SpecimenBytes, with the attributes
            sum: the sum of the bytes of both, each times its place in its file
            size: how many bytes the first has
            attached_size: how many bytes the other has
        and notes, basis and taken.

    Raises:
        FormError: the value is of another kind than the port takes (KIND_MISMATCH); the text behind
            base64: is not base64 (NOT_BASE64)

    Example:
        >>> from overslab._overslab import specimen_bytes
        >>> answer = specimen_bytes(file="x,y\n1,2\n")
        >>> answer.sum
        1550

    Since 0.1.0.
    """

@final
class SpecimenBytes(AnswerResult):
    r"""What `specimen_bytes` gives."""

    @property
    def sum(self) -> int:
        r"""the sum of the bytes of both, each times its place in its file."""

    @property
    def size(self) -> int:
        r"""how many bytes the first has."""

    @property
    def attached_size(self) -> int | None:
        r"""how many bytes the other has."""
