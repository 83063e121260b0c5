"""The operations of `grade`: made from the table of operations; do not edit."""

from typing import final, overload

import numpy as np
import numpy.typing as npt

from overslab.results import ArrayResult, ScalarResult

from overslab.typing import Errors, Quantities, Quantity, Units

__all__ = [
    "fall",
    "Fall",
    "FallArray",
    "drop",
    "Drop",
    "DropArray",
    "triangular_prism",
    "TriangularPrism",
    "TriangularPrismArray",
]

@overload
def fall(  # type: ignore[overload-overlap]
    drop: Quantity,
    run: Quantity,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> Fall:
    r"""The fall of a surface that loses a height over a run.

    Rule: fall = drop / run.
    Takes for granted: drop and run are measured plumb and level, not along the slope.

    Args:
        drop: height lost [in | mm]; at least 0 in, at most 1200 in (at least 0 mm, at most 30480 mm)
        run: level distance over which it is lost [ft | m]; more than 0 ft, at most 10000 ft (more than
            0 m, at most 3048 m)
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
        errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.

    Returns:
        Fall, with the attributes
            fall_in_per_ft, fall_percent: fall of the surface [in/ft | %]
        and notes; for arrays FallArray, with arrays of that shape, and note_codes, bad, reasons.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE); the unit belongs to another
            quantity (UNIT_WRONG)

    Basis:
        plane and solid geometry: derived

    Example:
        >>> from overslab.grade import fall
        >>> answer = fall(drop="2 in", run="20 ft")
        >>> round(answer.fall_in_per_ft, 4)
        0.1

    Since 0.1.0.
    """

@overload
def fall(
    drop: Quantity | Quantities,
    run: Quantity | Quantities,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> FallArray: ...

@final
class Fall(ScalarResult):
    r"""What `fall` gives."""

    @property
    def fall_in_per_ft(self) -> float:
        r"""fall of the surface [in/ft]."""

    @property
    def fall_percent(self) -> float:
        r"""fall of the surface [%]."""

@final
class FallArray(ArrayResult):
    r"""What `fall` gives for arrays."""

    @property
    def fall_in_per_ft(self) -> npt.NDArray[np.float64]:
        r"""fall of the surface [in/ft]."""

    @property
    def fall_percent(self) -> npt.NDArray[np.float64]:
        r"""fall of the surface [%]."""

@overload
def drop(  # type: ignore[overload-overlap]
    fall: Quantity,
    run: Quantity,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> Drop:
    r"""The height that a surface loses over a run at a fall.

    Rule: drop = fall x run.
    Takes for granted: the run is measured level, not along the slope.

    Args:
        fall: fall of the surface [in/ft | %]; at least 0 in/ft, at most 12 in/ft (at least 0 %, at most
            100 %)
        run: level distance [ft | m]; more than 0 ft, at most 10000 ft (more than 0 m, at most 3048 m)
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
        errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.

    Returns:
        Drop, with the attributes
            drop_in, drop_mm: height lost [in | mm]
        and notes; for arrays DropArray, with arrays of that shape, and note_codes, bad, reasons.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE); a number stands without its unit
            (UNIT_MISSING)

    Basis:
        plane and solid geometry: derived

    Example:
        >>> from overslab.grade import drop
        >>> answer = drop(fall="1/8 in/ft", run="32 ft")
        >>> round(answer.drop_in, 4)
        4.0

    Since 0.1.0.
    """

@overload
def drop(
    fall: Quantity | Quantities,
    run: Quantity | Quantities,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> DropArray: ...

@final
class Drop(ScalarResult):
    r"""What `drop` gives."""

    @property
    def drop_in(self) -> float:
        r"""height lost [in]."""

    @property
    def drop_mm(self) -> float:
        r"""height lost [mm]."""

@final
class DropArray(ArrayResult):
    r"""What `drop` gives for arrays."""

    @property
    def drop_in(self) -> npt.NDArray[np.float64]:
        r"""height lost [in]."""

    @property
    def drop_mm(self) -> npt.NDArray[np.float64]:
        r"""height lost [mm]."""

@overload
def triangular_prism(  # type: ignore[overload-overlap]
    area: Quantity,
    thickness_1: Quantity,
    thickness_2: Quantity,
    thickness_3: Quantity,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> TriangularPrism:
    r"""The volume between old slab and finish over one triangle, split where they meet.

    Rule: net = area (t1 + t2 + t3) / 3; one corner of the other sign: high = (area / 3) t3^3 / ((t3 -
        t1) (t3 - t2)).
    Takes for granted: both surfaces are plane over the triangle.

    Args:
        area: plan area of the triangle [ft2 | m2]; more than 0 ft2, at most 10763910.4167 ft2 (more
            than 0 m2, at most 1000000 m2)
        thickness_1: thickness at the first corner [in | mm]; at least -3937.00787402 in, at most
            3937.00787402 in (at least -100000 mm, at most 100000 mm)
        thickness_2: thickness at the second corner [in | mm]; at least -3937.00787402 in, at most
            3937.00787402 in (at least -100000 mm, at most 100000 mm)
        thickness_3: thickness at the third corner [in | mm]; at least -3937.00787402 in, at most
            3937.00787402 in (at least -100000 mm, at most 100000 mm)
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
        errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.

    Returns:
        TriangularPrism, with the attributes
            net_ft3, net_m3: fill less high spots [ft3 | m3]
            fill_ft3, fill_m3: fill above the old slab [ft3 | m3]
            high_ft3, high_m3: old slab above the finish [ft3 | m3]
        and notes; for arrays TriangularPrismArray, with arrays of that shape, and note_codes, bad, reasons.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE)

    Basis:
        plane and solid geometry: derived

    Example:
        >>> from overslab.grade import triangular_prism
        >>> answer = triangular_prism(
        ...     area="50 ft2",
        ...     thickness_1="3 in",
        ...     thickness_2="4 in",
        ...     thickness_3="5 in",
        ... )
        >>> round(answer.net_ft3, 4)
        16.6667

    Since 0.1.0.
    """

@overload
def triangular_prism(
    area: Quantity | Quantities,
    thickness_1: Quantity | Quantities,
    thickness_2: Quantity | Quantities,
    thickness_3: Quantity | Quantities,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> TriangularPrismArray: ...

@final
class TriangularPrism(ScalarResult):
    r"""What `triangular_prism` gives."""

    @property
    def net_ft3(self) -> float:
        r"""fill less high spots [ft3]."""

    @property
    def net_m3(self) -> float:
        r"""fill less high spots [m3]."""

    @property
    def fill_ft3(self) -> float:
        r"""fill above the old slab [ft3]."""

    @property
    def fill_m3(self) -> float:
        r"""fill above the old slab [m3]."""

    @property
    def high_ft3(self) -> float:
        r"""old slab above the finish [ft3]."""

    @property
    def high_m3(self) -> float:
        r"""old slab above the finish [m3]."""

@final
class TriangularPrismArray(ArrayResult):
    r"""What `triangular_prism` gives for arrays."""

    @property
    def net_ft3(self) -> npt.NDArray[np.float64]:
        r"""fill less high spots [ft3]."""

    @property
    def net_m3(self) -> npt.NDArray[np.float64]:
        r"""fill less high spots [m3]."""

    @property
    def fill_ft3(self) -> npt.NDArray[np.float64]:
        r"""fill above the old slab [ft3]."""

    @property
    def fill_m3(self) -> npt.NDArray[np.float64]:
        r"""fill above the old slab [m3]."""

    @property
    def high_ft3(self) -> npt.NDArray[np.float64]:
        r"""old slab above the finish [ft3]."""

    @property
    def high_m3(self) -> npt.NDArray[np.float64]:
        r"""old slab above the finish [m3]."""
