"""The operations of `order`: made from the table of operations; do not edit."""

from overslab._overslab import (
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
    "prismoid",
    "Prismoid",
    "PrismoidArray",
    "trucks",
    "Trucks",
    "TrucksArray",
    "order",
    "Order",
]
