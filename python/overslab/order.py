"""The operations of `order`: made from the table of operations; do not edit."""

from overslab._overslab import (
    block,
    Block,
    BlockArray,
    prismoid,
    Prismoid,
    PrismoidArray,
    trucks,
    Trucks,
    TrucksArray,
    order,
    Order,
)

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
