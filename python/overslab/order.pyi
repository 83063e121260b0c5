"""The operations of `order`: made from the table of operations; do not edit."""

from typing import final, overload

import numpy as np
import numpy.typing as npt

from overslab.results import AnswerResult, ArrayResult, ScalarResult

from overslab.typing import Column, Errors, Quantities, Quantity, Table, Units

__all__ = [
    "block",
    "Block",
    "BlockArray",
    "prismoid",
    "Prismoid",
    "PrismoidArray",
    "trucks",
    "Trucks",
    "TrucksArray",
    "order",
    "Order",
]

@overload
def block(  # type: ignore[overload-overlap]
    length: Quantity,
    width: Quantity,
    depth: Quantity,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> Block:
    r"""The volume of a slab, a ramp or a step from its length, width and mean depth.

    Rule: volume = length x width x depth.
    Takes for granted: rectangular in plan; the depth is the mean one.

    Args:
        length: length [ft | m]; more than 0 ft, at most 32808.3989501 ft (more than 0 m, at most 10000
            m)
        width: width [ft | m]; more than 0 ft, at most 32808.3989501 ft (more than 0 m, at most 10000 m)
        depth: mean depth [in | mm]; more than 0 in, at most 3937.00787402 in (more than 0 mm, at most
            100000 mm)
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
        errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.

    Returns:
        Block, with the attributes
            volume_yd3, volume_m3: volume [yd3 | m3]
        and notes; for arrays BlockArray, with arrays of that shape, and note_codes, bad, reasons.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE); the unit belongs to another
            quantity (UNIT_WRONG)

    Basis:
        plane and solid geometry: derived

    Example:
        >>> from overslab.order import block
        >>> answer = block(length="60 ft", width="30 ft", depth="4 in")
        >>> round(answer.volume_yd3, 4)
        22.2222

    Since 0.1.0.
    """

@overload
def block(
    length: Quantity | Quantities,
    width: Quantity | Quantities,
    depth: Quantity | Quantities,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> BlockArray: ...

@final
class Block(ScalarResult):
    r"""What `block` gives."""

    @property
    def volume_yd3(self) -> float:
        r"""volume [yd3]."""

    @property
    def volume_m3(self) -> float:
        r"""volume [m3]."""

@final
class BlockArray(ArrayResult):
    r"""What `block` gives for arrays."""

    @property
    def volume_yd3(self) -> npt.NDArray[np.float64]:
        r"""volume [yd3]."""

    @property
    def volume_m3(self) -> npt.NDArray[np.float64]:
        r"""volume [m3]."""

@overload
def prismoid(  # type: ignore[overload-overlap]
    length: Quantity,
    first: Quantity,
    middle: Quantity,
    last: Quantity,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> Prismoid:
    r"""The volume of a body between two end sections with a third half way.

    Rule: volume = length (first + 4 middle + last) / 6.
    Takes for granted: the sides are plane or warped evenly between the sections.

    Args:
        length: length between the end sections [ft | m]; more than 0 ft, at most 32808.3989501 ft (more
            than 0 m, at most 10000 m)
        first: area of the first section [ft2 | m2]; at least 0 ft2, at most 10763910.4167 ft2 (at least
            0 m2, at most 1000000 m2)
        middle: area of the section half way [ft2 | m2]; at least 0 ft2, at most 10763910.4167 ft2 (at
            least 0 m2, at most 1000000 m2)
        last: area of the last section [ft2 | m2]; at least 0 ft2, at most 10763910.4167 ft2 (at least 0
            m2, at most 1000000 m2)
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
        errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.

    Returns:
        Prismoid, with the attributes
            volume_yd3, volume_m3: volume of the body [yd3 | m3]
        and notes; for arrays PrismoidArray, with arrays of that shape, and note_codes, bad, reasons.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE)

    Basis:
        V = L (A1 + 4 Am + A2) / 6: Surveying textbooks, earthwork volumes (any), prismoidal formula

    Example:
        >>> from overslab.order import prismoid
        >>> answer = prismoid(length="12 ft", first="2 ft2", middle="1 ft2", last="0 ft2")
        >>> round(answer.volume_yd3, 4)
        0.4444

    Since 0.1.0.
    """

@overload
def prismoid(
    length: Quantity | Quantities,
    first: Quantity | Quantities,
    middle: Quantity | Quantities,
    last: Quantity | Quantities,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> PrismoidArray: ...

@final
class Prismoid(ScalarResult):
    r"""What `prismoid` gives."""

    @property
    def volume_yd3(self) -> float:
        r"""volume of the body [yd3]."""

    @property
    def volume_m3(self) -> float:
        r"""volume of the body [m3]."""

@final
class PrismoidArray(ArrayResult):
    r"""What `prismoid` gives for arrays."""

    @property
    def volume_yd3(self) -> npt.NDArray[np.float64]:
        r"""volume of the body [yd3]."""

    @property
    def volume_m3(self) -> npt.NDArray[np.float64]:
        r"""volume of the body [m3]."""

@overload
def trucks(  # type: ignore[overload-overlap]
    ordered: Quantity,
    capacity: Quantity,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> Trucks:
    r"""How many truck loads an order takes, and what the last one carries.

    Rule: loads = ordered / capacity, rounded up; last = ordered - (loads - 1) capacity.
    Takes for granted: every truck but the last is full.

    Args:
        ordered: volume ordered [yd3 | m3]; more than 0 yd3, at most 130795.061931 yd3 (more than 0 m3,
            at most 100000 m3)
        capacity: what one truck carries [yd3 | m3]; at least 0.130795061931 yd3, at most 26.1590123863
            yd3 (at least 0.1 m3, at most 20 m3)
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
        errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.

    Returns:
        Trucks, with the attributes
            loads: truck loads
            last_yd3, last_m3: what the last truck carries [yd3 | m3]
        and notes; for arrays TrucksArray, with arrays of that shape, and note_codes, bad, reasons.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE); the unit belongs to another
            quantity (UNIT_WRONG)

    Basis:
        a full truck carries about 10 yd3: NRMCA fleet survey (2017), table 4: typical full load 9.8
            yd3, range 8.2 to 11.8, as quoted elsewhere

    Example:
        >>> from overslab.order import trucks
        >>> answer = trucks(ordered="14 yd3", capacity="9.8 yd3")
        >>> answer.loads
        2

    Since 0.1.0.
    """

@overload
def trucks(
    ordered: Quantity | Quantities,
    capacity: Quantity | Quantities,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> TrucksArray: ...

@final
class Trucks(ScalarResult):
    r"""What `trucks` gives."""

    @property
    def loads(self) -> int:
        r"""truck loads."""

    @property
    def last_yd3(self) -> float:
        r"""what the last truck carries [yd3]."""

    @property
    def last_m3(self) -> float:
        r"""what the last truck carries [m3]."""

@final
class TrucksArray(ArrayResult):
    r"""What `trucks` gives for arrays."""

    @property
    def loads(self) -> npt.NDArray[np.int64] | npt.NDArray[np.float64]:
        r"""truck loads."""

    @property
    def last_yd3(self) -> npt.NDArray[np.float64]:
        r"""what the last truck carries [yd3]."""

    @property
    def last_m3(self) -> npt.NDArray[np.float64]:
        r"""what the last truck carries [m3]."""

def order(
    floor: Quantity,
    *,
    extras: Table | None = None,
    allowances: Table | None = None,
    step: Quantity | None = None,
    capacity: Quantity | None = None,
    units: Units | None = None,
) -> Order:
    r"""What to order: net volume, named allowances, the plant's step, trucks.

    Rule: figured = net + sum(net x share); ordered = figured rounded up to the step.
    Takes for granted: allowances are shares of the net volume and add up.

    Args:
        floor: volume of the floor [yd3 | m3]; at least 0 yd3, at most 130795.061931 yd3 (at least 0 m3,
            at most 100000 m3)
        extras: volumes poured beside the floor; a table of at least 0 rows, each a volume poured beside
            the floor, with the columns; may be left out
            name: what it is for; a text
            volume: how much [yd3 | m3]; at least 0 yd3, at most 130795.061931 yd3 (at least 0 m3, at
                most 100000 m3)
        allowances: shares allowed on top; a table of at least 0 rows, each a share of the net volume
            allowed on top, with the columns; where it is not given [{"name": "waste", "share": "3 %"}]
            is taken: a surveyed floor: what sticks to tools and strike-off
            name: what it is for; a text
            share: share of the net volume [%]; at least 0 %, at most 50 %
        step: the step the plant sells by [yd3 | m3]; at least 0.00130795061931 yd3, at most
            6.53975309657 yd3 (at least 0.001 m3, at most 5 m3); where it is not given 1/4 yd3 is taken:
            plants usually sell by the quarter yard
        capacity: what one truck carries [yd3 | m3]; at least 0.130795061931 yd3, at most 26.1590123863
            yd3 (at least 0.1 m3, at most 20 m3); where it is not given 10 yd3 is taken: a full truck
            carries about so much
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        Order, with the attributes
            net_yd3, net_m3: sum of what is poured [yd3 | m3]
            figured_yd3, figured_m3: net volume and allowances [yd3 | m3]
            ordered_yd3, ordered_m3: figured volume rounded up to the step [yd3 | m3]
            spare_yd3, spare_m3: ordered over figured [yd3 | m3]
            loads: truck loads
            last_yd3, last_m3: what the last truck carries [yd3 | m3]
            allowed: each allowance as a volume, a table of allowed
        and notes, basis and taken.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE); the quantity cannot be below
            zero (NEGATIVE); the unit belongs to another quantity (UNIT_WRONG)

    Basis:
        5 to 10 % for waste and uneven thickness on ground; less where the surface is surveyed:
            Extension lesson on estimating concrete (after Cooper, Agricultural Mechanics), waste and
            uneven thickness
        plants sell in steps of 1/4 yd3: common practice, no source
        a full truck carries about 10 yd3: NRMCA fleet survey (2017), table 4: typical full load 9.8
            yd3, range 8.2 to 11.8, as quoted elsewhere

    Example:
        >>> from overslab.order import order
        >>> answer = order(floor="8.78 yd3", extras=[{"name": "ramp", "volume": "0.59 yd3"}])
        >>> round(answer.net_yd3, 4)
        9.37

    Since 0.1.0.
    """

@final
class Order(AnswerResult):
    r"""What `order` gives."""

    @property
    def net_yd3(self) -> float:
        r"""sum of what is poured [yd3]."""

    @property
    def net_m3(self) -> float:
        r"""sum of what is poured [m3]."""

    @property
    def figured_yd3(self) -> float:
        r"""net volume and allowances [yd3]."""

    @property
    def figured_m3(self) -> float:
        r"""net volume and allowances [m3]."""

    @property
    def ordered_yd3(self) -> float:
        r"""figured volume rounded up to the step [yd3]."""

    @property
    def ordered_m3(self) -> float:
        r"""figured volume rounded up to the step [m3]."""

    @property
    def spare_yd3(self) -> float:
        r"""ordered over figured [yd3]."""

    @property
    def spare_m3(self) -> float:
        r"""ordered over figured [m3]."""

    @property
    def loads(self) -> int:
        r"""truck loads."""

    @property
    def last_yd3(self) -> float:
        r"""what the last truck carries [yd3]."""

    @property
    def last_m3(self) -> float:
        r"""what the last truck carries [m3]."""

    @property
    def allowed(self) -> dict[str, Column]:
        r"""each allowance as a volume."""
